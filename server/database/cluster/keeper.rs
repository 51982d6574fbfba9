//! The thread that keeps the server running.
//!
//! One long-lived thread starts PostgreSQL (or adopts one that is running
//! already), waits for its end, and starts it again where nobody asked for that
//! end. A child's fate is known from the kernel, an adopted server's from
//! `/proc`.

use std::fs::{self, File, OpenOptions};
use std::io::{self, Read, Seek, SeekFrom};
use std::os::unix::fs::OpenOptionsExt;
use std::os::unix::process::CommandExt;
use std::path::{Path, PathBuf};
use std::process::{Child, Stdio};
use std::sync::{Arc, Mutex, PoisonError};
use std::thread;
use std::time::{Duration, Instant};

use nix::sys::signal::Signal;
use nix::sys::wait::{Id, WaitPidFlag, waitid};
use nix::unistd::Pid;
use tokio::sync::{oneshot, watch};

use super::StartOptions;
use super::account::Account;
use super::create::write_access;
use super::error::ClusterError;
use super::folders::SOCKET_NAME;
use super::processes::{self, LOOK_AGAIN, Phase, Postmaster};
use super::programs::Programs;

/// A start that fails is tried again this long.
const START_TRIES: Duration = Duration::from_secs(15);

/// A server that lives but repairs itself after a crash is waited for this long.
const RECOVERY: Duration = Duration::from_secs(600);

/// How long a stop may take before it is forced.
const STOP: Duration = Duration::from_secs(30);

/// How long a forced stop may take.
const FORCED_STOP: Duration = Duration::from_secs(5);

/// A server that ends by itself this often within a minute is given up.
const MOST_RESTARTS_A_MINUTE: usize = 5;

/// A larger log is begun anew, the old one kept beside it.
const LARGEST_LOG_BYTES: u64 = 10_000_000;

/// Everything needed to run the server of one cluster.
#[derive(Clone, Debug)]
pub(super) struct Plan {
    pub(super) programs: Programs,
    pub(super) data: PathBuf,
    pub(super) cluster: PathBuf,
    pub(super) socket: PathBuf,
    pub(super) account: Account,
    /// Whether root started it; asked once, for this process may become another user.
    pub(super) by_root: bool,
    pub(super) options: StartOptions,
}

/// A handle on the thread.
#[derive(Debug)]
pub(super) struct Keeper {
    control: Arc<Mutex<Control>>,
    ended: watch::Receiver<bool>,
}

#[derive(Debug, Default)]
struct Control {
    /// The server's number while it is certain to be the server's.
    pid: Option<i32>,
    stopping: bool,
}

/// A server that is up.
enum Running {
    Child(Child),
    Adopted(i32),
}

impl Keeper {
    /// Starts the thread and waits until the server is ready. Returns the folder
    /// its socket is in, which an adopted server may have elsewhere.
    pub(super) async fn start(plan: Plan) -> Result<(Self, PathBuf), ClusterError> {
        let control = Arc::new(Mutex::new(Control::default()));
        let (ready, is_ready) = oneshot::channel();
        let (end, ended) = watch::channel(false);
        let shared = Arc::clone(&control);
        let keeper = Self { control, ended };
        let data = plan.data.clone();
        thread::Builder::new()
            .name("cluster-keeper".into())
            .spawn(move || {
                keep(&plan, &shared, ready);
                end.send_replace(true);
            })
            .map_err(ClusterError::io("Starting a thread for", &data))?;
        let socket = is_ready.await.map_err(|_| ClusterError::Stopped)??;
        Ok((keeper, socket))
    }

    /// Stops the server: first so that it ends its sessions and writes all down,
    /// and where that takes too long, at once, to be recovered at the next start.
    pub(super) async fn stop(&mut self) {
        for (signal, patience) in [(Signal::SIGINT, STOP), (Signal::SIGQUIT, FORCED_STOP)] {
            self.ask_to_stop(signal);
            if tokio::time::timeout(patience, self.ended.wait_for(|ended| *ended))
                .await
                .is_ok()
            {
                return;
            }
            tracing::warn!(%signal, "PostgreSQL has not stopped yet");
        }
    }

    /// Whether the server ended and will not be started again.
    pub(super) async fn ended(&self) {
        let mut ended = self.ended.clone();
        // A keeper that is gone without a word has ended too.
        let _gone = ended.wait_for(|ended| *ended).await;
    }

    /// The server's number, while it is up.
    pub(super) fn pid(&self) -> Option<i32> {
        lock(&self.control).pid
    }

    fn ask_to_stop(&self, signal: Signal) {
        let mut control = lock(&self.control);
        control.stopping = true;
        if let Some(pid) = control.pid {
            processes::signal(pid, signal);
        }
    }
}

impl Drop for Keeper {
    fn drop(&mut self) {
        self.ask_to_stop(Signal::SIGINT);
    }
}

fn lock(control: &Mutex<Control>) -> std::sync::MutexGuard<'_, Control> {
    control.lock().unwrap_or_else(PoisonError::into_inner)
}

fn keep(
    plan: &Plan,
    control: &Mutex<Control>,
    ready: oneshot::Sender<Result<PathBuf, ClusterError>>,
) {
    let mut running = match bring_up(plan, control) {
        Ok((running, socket)) => {
            // The caller may have given up waiting; then the handle's end stops the server.
            let _heard = ready.send(Ok(socket));
            running
        }
        Err(error) => {
            let _heard = ready.send(Err(error));
            return;
        }
    };
    let mut restarts: Vec<Instant> = Vec::new();
    loop {
        running.wait_for_end(plan, control);
        if lock(control).stopping {
            return;
        }
        restarts.retain(|at| at.elapsed() < Duration::from_secs(60));
        restarts.push(Instant::now());
        if restarts.len() > MOST_RESTARTS_A_MINUTE {
            tracing::error!("PostgreSQL keeps ending by itself and is not started again");
            return;
        }
        tracing::error!("PostgreSQL ended by itself and is started again");
        running = match bring_up(plan, control) {
            Ok((running, _)) => running,
            Err(error) => {
                tracing::error!(%error, "PostgreSQL could not be started again");
                return;
            }
        };
    }
}

/// Adopts the live server or starts one, until one is ready.
fn bring_up(plan: &Plan, control: &Mutex<Control>) -> Result<(Running, PathBuf), ClusterError> {
    let began = Instant::now();
    loop {
        if lock(control).stopping {
            return Err(ClusterError::Stopped);
        }
        let attempt = match processes::postmaster(&plan.cluster, &plan.account) {
            Some(Postmaster {
                phase: Phase::Stopping,
                ..
            }) => None,
            Some(found) => adopt(plan, control, found.pid)?,
            None => start_child(plan, control)?,
        };
        if let Some((running, socket)) = attempt {
            let mut control = lock(control);
            control.pid = Some(running.pid());
            if control.stopping {
                // Asked in the moment before there was a number to signal.
                processes::signal(running.pid(), Signal::SIGINT);
            }
            return Ok((running, socket));
        }
        if began.elapsed() > START_TRIES {
            let log = plan.log();
            let said = plan
                .account
                .act(|| end_of(&log))
                .unwrap_or_else(|e| e.to_string());
            return Err(ClusterError::DidNotStart { log, said });
        }
        thread::sleep(20 * LOOK_AGAIN);
    }
}

fn adopt(
    plan: &Plan,
    control: &Mutex<Control>,
    pid: i32,
) -> Result<Option<(Running, PathBuf)>, ClusterError> {
    let socket = wait_until_ready(plan, control, pid, || {
        Ok(!processes::is_server_of(pid, &plan.cluster))
    })?;
    if socket.is_some() && write_access(&plan.cluster, &plan.account, plan.by_root)? {
        processes::signal(pid, Signal::SIGHUP);
    }
    Ok(socket.map(|socket| (Running::Adopted(pid), socket)))
}

fn start_child(
    plan: &Plan,
    control: &Mutex<Control>,
) -> Result<Option<(Running, PathBuf)>, ClusterError> {
    if processes::end_orphans(&plan.data, &plan.cluster) {
        let socket_note = plan.socket.join(format!("{SOCKET_NAME}.lock"));
        for note in [plan.cluster.join("postmaster.pid"), socket_note] {
            processes::clear_note(&note, &plan.account)
                .map_err(ClusterError::io("Clearing", &note))?;
        }
    }
    write_access(&plan.cluster, &plan.account, plan.by_root)?;
    let program = plan.programs.path("postgres");
    let mut child = plan
        .spawn()
        .map_err(ClusterError::io("Starting", &program))?;
    let pid = child.id().cast_signed();
    let socket = wait_until_ready(plan, control, pid, || Ok(child.try_wait()?.is_some()));
    match socket {
        Ok(Some(socket)) => Ok(Some((Running::Child(child), socket))),
        Ok(None) => Ok(None),
        Err(error) => {
            processes::signal(pid, Signal::SIGQUIT);
            child.wait().map_err(ClusterError::io("Ending", &program))?;
            Err(error)
        }
    }
}

/// Waits until the server says it is ready, and returns its socket's folder; or
/// nothing where it ended first.
fn wait_until_ready(
    plan: &Plan,
    control: &Mutex<Control>,
    pid: i32,
    mut has_ended: impl FnMut() -> io::Result<bool>,
) -> Result<Option<PathBuf>, ClusterError> {
    let began = Instant::now();
    while began.elapsed() < RECOVERY {
        if has_ended().map_err(ClusterError::io("Watching over", &plan.cluster))? {
            return Ok(None);
        }
        if let Some(found) = processes::postmaster(&plan.cluster, &plan.account)
            && found.pid == pid
            && found.phase == Phase::Ready
        {
            return Ok(Some(found.socket));
        }
        if lock(control).stopping {
            return Err(ClusterError::Stopped);
        }
        thread::sleep(LOOK_AGAIN);
    }
    Ok(None)
}

impl Running {
    fn pid(&self) -> i32 {
        match self {
            Self::Child(child) => child.id().cast_signed(),
            Self::Adopted(pid) => *pid,
        }
    }

    fn wait_for_end(&mut self, plan: &Plan, control: &Mutex<Control>) {
        let pid = self.pid();
        match self {
            Self::Child(child) => {
                // The number stays the server's until it is waited for in earnest,
                // so it is forgotten in between and never signalled afterwards.
                let id = Id::Pid(Pid::from_raw(pid));
                let looked = waitid(id, WaitPidFlag::WEXITED | WaitPidFlag::WNOWAIT);
                lock(control).pid = None;
                if let Err(error) = child.wait() {
                    tracing::error!(%error, ?looked, "PostgreSQL could not be waited for");
                }
            }
            Self::Adopted(_) => {
                while processes::is_server_of(pid, &plan.cluster) {
                    thread::sleep(4 * LOOK_AGAIN);
                }
                lock(control).pid = None;
            }
        }
    }
}

impl Plan {
    fn log(&self) -> PathBuf {
        self.data.join("postgres.log")
    }

    fn spawn(&self) -> io::Result<Child> {
        let log = self.account.act(|| open_log(&self.log()))?;
        let mut command = self.account.command(&self.programs.path("postgres"));
        // Ctrl-C reaches a whole process group, and the order of stopping is ours.
        command.process_group(0);
        command.arg("-D").arg(&self.cluster);
        command.arg("-k").arg(as_one_directory(&self.socket));
        for setting in [
            "listen_addresses=",
            "port=5432",
            "unix_socket_permissions=0700",
            "cluster_name=wetside",
            "log_destination=stderr",
            "logging_collector=off",
            "log_line_prefix=%m [%p] ",
            "log_timezone=UTC",
            "timezone=UTC",
        ] {
            command.arg("-c").arg(setting);
        }
        if !self.options.fsync {
            for setting in ["fsync=off", "full_page_writes=off"] {
                command.arg("-c").arg(setting);
            }
        }
        command
            .stdin(Stdio::null())
            .stdout(log.try_clone()?)
            .stderr(log);
        command.spawn()
    }
}

/// The setting is a list; quoted, a path with a comma in it is one entry.
fn as_one_directory(folder: &Path) -> String {
    format!("\"{}\"", folder.to_string_lossy().replace('"', "\"\""))
}

/// A file, not a pipe: an adopted server must be able to go on writing.
fn open_log(path: &Path) -> io::Result<File> {
    if fs::metadata(path).is_ok_and(|log| log.len() > LARGEST_LOG_BYTES) {
        fs::rename(path, path.with_extension("log.old"))?;
    }
    OpenOptions::new()
        .append(true)
        .create(true)
        .mode(0o600)
        .open(path)
}

fn end_of(log: &Path) -> io::Result<String> {
    let mut file = File::open(log)?;
    let length = file.metadata()?.len();
    file.seek(SeekFrom::Start(length.saturating_sub(2_000)))?;
    let mut bytes = Vec::new();
    file.read_to_end(&mut bytes)?;
    let text = String::from_utf8_lossy(&bytes);
    let mut lines: Vec<&str> = text.lines().rev().take(5).collect();
    lines.reverse();
    Ok(lines.join("\n"))
}
