//! A folder of one's own, the program as a process, and waiting for a condition.

use std::fs::{self, DirBuilder};
use std::os::unix::fs::DirBuilderExt;
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Output, Stdio};
use std::sync::atomic::{AtomicU32, Ordering};
use std::time::{Duration, Instant};

use wetside::database::cluster::{
    Account, Cluster, DATABASE, Folders, OWNER_ROLE, Programs, StartOptions, is_root,
};

static COUNT: AtomicU32 = AtomicU32::new(0);

/// A folder under the system's temporary one, gone with this value.
pub(crate) struct Place {
    pub(crate) path: PathBuf,
}

impl Place {
    pub(crate) fn new() -> Self {
        let name = format!(
            "ws-{}-{}",
            std::process::id(),
            COUNT.fetch_add(1, Ordering::Relaxed)
        );
        let path = std::env::temp_dir().join(name);
        // The account the database runs as has to pass through.
        DirBuilder::new().mode(0o711).create(&path).unwrap();
        Self { path }
    }

    pub(crate) fn data(&self) -> PathBuf {
        self.path.join("data")
    }

    pub(crate) fn cluster(&self) -> PathBuf {
        self.data().join("postgres")
    }

    pub(crate) fn folders(&self) -> Folders {
        Folders::choose(Some(&self.data())).unwrap()
    }

    pub(crate) async fn start(&self) -> Cluster {
        Cluster::start(&self.folders(), &quick()).await.unwrap()
    }

    /// Starts the program's own `cluster run` and waits until it says it is up.
    pub(crate) async fn run_program(&self) -> Program {
        let program = Program::spawn(&self.data());
        until("the program's cluster is up", || {
            server_of(&self.cluster()).is_some()
        })
        .await;
        program
    }
}

impl Drop for Place {
    fn drop(&mut self) {
        if let Some(pid) = server_of(&self.cluster()) {
            send(pid, "QUIT");
        }
        let began = Instant::now();
        while fs::remove_dir_all(&self.path).is_err() && began.elapsed() < Duration::from_secs(5) {
            std::thread::yield_now();
        }
    }
}

/// The program as a process of its own, killed with this value.
pub(crate) struct Program {
    pub(crate) child: Child,
}

impl Program {
    pub(crate) fn spawn(data: &Path) -> Self {
        let child = program()
            .args(["cluster", "run", "--data"])
            .arg(data)
            .stdin(Stdio::null())
            .stdout(Stdio::null())
            .spawn()
            .unwrap();
        Self { child }
    }

    pub(crate) fn kill(&mut self) {
        self.child.kill().unwrap();
        self.child.wait().unwrap();
    }
}

impl Drop for Program {
    fn drop(&mut self) {
        if self.child.try_wait().unwrap().is_none() {
            self.kill();
        }
    }
}

pub(crate) fn program() -> Command {
    let path = std::env::var_os("WETSIDE_TEST_PROGRAM")
        .unwrap_or_else(|| env!("CARGO_BIN_EXE_wetside").into());
    Command::new(path)
}

/// Not durable, but otherwise as it is used.
pub(crate) fn quick() -> StartOptions {
    StartOptions {
        fsync: false,
        ..StartOptions::default()
    }
}

/// Waits until a condition holds, and fails where it does not come about.
pub(crate) async fn until(what: &str, mut holds: impl FnMut() -> bool) {
    let began = Instant::now();
    while !holds() {
        assert!(
            began.elapsed() < Duration::from_secs(30),
            "within 30 seconds: {what}"
        );
        tokio::time::sleep(Duration::from_millis(5)).await;
    }
}

/// The process that PostgreSQL's own note says serves a cluster and is ready.
pub(crate) fn server_of(cluster: &Path) -> Option<i32> {
    let note = fs::read_to_string(cluster.join("postmaster.pid")).ok()?;
    let lines: Vec<&str> = note.lines().collect();
    let pid = lines.first()?.parse().ok()?;
    (lines.get(7)?.trim() == "ready" && is_alive(pid)).then_some(pid)
}

pub(crate) fn is_alive(pid: i32) -> bool {
    fs::read_to_string(format!("/proc/{pid}/stat")).is_ok_and(|stat| {
        !stat
            .rsplit(')')
            .next()
            .unwrap()
            .trim_start()
            .starts_with(['Z', 'X'])
    })
}

/// Every live process whose working folder is this one.
pub(crate) fn processes_in(folder: &Path) -> Vec<i32> {
    let folder = folder.canonicalize().unwrap();
    let all = fs::read_dir("/proc").unwrap().flatten();
    all.filter_map(|entry| entry.file_name().to_str()?.parse().ok())
        .filter(|pid| fs::read_link(format!("/proc/{pid}/cwd")).is_ok_and(|cwd| cwd == folder))
        .filter(|pid| is_alive(*pid))
        .collect()
}

pub(crate) fn send(pid: i32, signal: &str) {
    let sent = Command::new("kill")
        .arg(format!("-{signal}"))
        .arg(pid.to_string())
        .status();
    assert!(
        sent.unwrap().success() || !is_alive(pid),
        "process {pid} took no {signal}"
    );
}

/// A `psql` of this process's user, ready for further arguments.
pub(crate) fn psql(socket: &Path, role: &str, database: &str) -> Command {
    let account = Account::for_folder(Path::new("/nonexistent")).unwrap();
    let programs = Programs::preferred(&account).unwrap();
    let own = programs.path("psql");
    let mut command = Command::new(if own.exists() { own } else { "psql".into() });
    command
        .args([
            "-X",
            "-A",
            "-t",
            "-q",
            "-w",
            "-v",
            "ON_ERROR_STOP=1",
            "-p",
            "5432",
            "-h",
        ])
        .arg(socket)
        .args(["-U", role, "-d", database]);
    command
}

pub(crate) fn ask(socket: &Path, role: &str, statement: &str) -> Output {
    psql(socket, role, DATABASE)
        .args(["-c", statement])
        .output()
        .unwrap()
}

/// The owner's answer, which must be one.
pub(crate) fn answer(socket: &Path, statement: &str) -> String {
    let output = ask(socket, OWNER_ROLE, statement);
    assert!(
        output.status.success(),
        "{statement}: {}",
        String::from_utf8_lossy(&output.stderr)
    );
    String::from_utf8(output.stdout).unwrap().trim().to_owned()
}

/// Whether the server can be asked; right after a crash it may not yet.
pub(crate) fn answers(socket: &Path) -> bool {
    ask(socket, OWNER_ROLE, "select 1").status.success()
}

/// Starts a query that keeps a processor busy for ever, and returns its backend.
pub(crate) async fn keep_busy(socket: &Path) -> (Busy, i32) {
    let endless = "select count(*) from generate_series(1, 9000000000000000)";
    let child = psql(socket, OWNER_ROLE, DATABASE)
        .args(["-c", endless])
        .stdout(Stdio::null())
        .stderr(Stdio::null())
        .spawn()
        .unwrap();
    let find = "select pid from pg_stat_activity \
                where state = 'active' and query like '%generate_series%' and pid <> pg_backend_pid()";
    let mut found = String::new();
    until("the endless query runs", || {
        found = answer(socket, find);
        !found.is_empty()
    })
    .await;
    (Busy { child }, found.parse().unwrap())
}

pub(crate) struct Busy {
    child: Child,
}

impl Drop for Busy {
    fn drop(&mut self) {
        self.child.kill().unwrap();
        self.child.wait().unwrap();
    }
}

/// A command run as a local user without any rights, which only root can arrange.
pub(crate) fn as_stranger(program: &str) -> Option<Command> {
    let uid = Command::new("id").args(["-u", "daemon"]).output().unwrap();
    let uid = String::from_utf8(uid.stdout).unwrap();
    is_root().then(|| as_user(uid.trim().parse().unwrap(), program))
}

/// A command run as this user, which may be another one only for root.
pub(crate) fn as_user(uid: u32, program: &str) -> Command {
    if !is_root() {
        return Command::new(program);
    }
    let mut command = Command::new("setpriv");
    command
        .arg(format!("--reuid={uid}"))
        .args(["--clear-groups", "--", program]);
    command
}
