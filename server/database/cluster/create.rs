//! Making a cluster: once, whole or not at all.
//!
//! Everything happens in a folder with a passing name that becomes `postgres`
//! by one rename at the end, so a crash in the middle leaves nothing that looks
//! like a cluster. The bootstrap superuser makes the two roles without any
//! server running and can never log in afterwards.

use std::fs;
use std::io::{self, Write};
use std::os::unix::fs::OpenOptionsExt;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

use super::account::Account;
use super::error::ClusterError;
use super::folders::Open;
use super::programs::Programs;
use super::{DATABASE, OWNER_ROLE, StartOptions, WEB_ROLE};

/// How the passing names of unfinished clusters begin.
pub(super) const UNFINISHED: &str = "postgres.new-";

/// Makes a cluster in a folder with a passing name and returns that folder.
pub(super) fn create(
    open: &Open,
    programs: &Programs,
    options: &StartOptions,
) -> Result<PathBuf, ClusterError> {
    clear_unfinished(open)?;
    let folder = open
        .data
        .join(format!("{UNFINISHED}{}", std::process::id()));
    let mut initdb = open.account.command(&programs.path("initdb"));
    initdb
        .arg("--pgdata")
        .arg(&folder)
        .args(["--username=postgres", "--encoding=UTF8", "--locale=C.UTF-8"])
        .args(["--data-checksums", "--auth=reject", "--no-instructions"])
        .current_dir(&open.data);
    if !options.fsync {
        initdb.arg("--no-sync");
    }
    run(&mut initdb, "initdb", "")?;
    write_access(&folder, &open.account, open.by_root)?;
    make_roles(&folder, open, programs, options)?;
    Ok(folder)
}

/// Puts a finished cluster in its place, durably.
pub(super) fn put_in_place(made: &Path, open: &Open) -> Result<(), ClusterError> {
    let place = open.cluster();
    open.account
        .act(|| {
            fs::rename(made, &place)?;
            fs::File::open(&open.data)?.sync_all()
        })
        .map_err(ClusterError::io("Moving", made))
}

fn clear_unfinished(open: &Open) -> Result<(), ClusterError> {
    let clear = || {
        for entry in fs::read_dir(&open.data)? {
            let entry = entry?;
            if entry.file_name().to_string_lossy().starts_with(UNFINISHED) {
                fs::remove_dir_all(entry.path())?;
            }
        }
        Ok(())
    };
    open.account
        .act(clear)
        .map_err(ClusterError::io("Clearing", &open.data))
}

/// Writes who may connect: the two roles, by the kernel's word on who asks.
/// Returns whether anything changed.
pub(super) fn write_access(
    cluster: &Path,
    account: &Account,
    by_root: bool,
) -> Result<bool, ClusterError> {
    let hba = format!(
        "# Written by Wetside at every start.\n\
         local  all  {OWNER_ROLE},{WEB_ROLE}  peer map=wetside\n\
         local  all  all  reject\n\
         host   all  all  all  reject\n"
    );
    let mut ident = String::from("# Written by Wetside at every start.\n");
    let mut users = vec![account.name.as_str()];
    if by_root {
        users.push("root");
    }
    for user in users {
        let quoted = user.replace('"', "\"\"");
        for role in [OWNER_ROLE, WEB_ROLE] {
            ident.push_str(&format!("wetside  \"{quoted}\"  {role}\n"));
        }
    }
    let hba_changed = replace(&cluster.join("pg_hba.conf"), &hba, account)?;
    let ident_changed = replace(&cluster.join("pg_ident.conf"), &ident, account)?;
    Ok(hba_changed || ident_changed)
}

fn replace(path: &Path, text: &str, account: &Account) -> Result<bool, ClusterError> {
    let write = || {
        if fs::read_to_string(path).is_ok_and(|present| present == text) {
            return Ok(false);
        }
        let passing = path.with_extension("conf.new");
        let mut file = fs::OpenOptions::new()
            .write(true)
            .create(true)
            .truncate(true)
            .mode(0o600)
            .open(&passing)?;
        file.write_all(text.as_bytes())?;
        file.sync_all()?;
        fs::rename(&passing, path)?;
        Ok(true)
    };
    account
        .act(write)
        .map_err(ClusterError::io("Writing", path))
}

fn make_roles(
    cluster: &Path,
    open: &Open,
    programs: &Programs,
    options: &StartOptions,
) -> Result<(), ClusterError> {
    let create_databases = if options.may_create_databases {
        "createdb"
    } else {
        "nocreatedb"
    };
    let limits = "nosuperuser nocreaterole noreplication nobypassrls";
    let statements = [
        format!("create role {OWNER_ROLE} login {create_databases} {limits}"),
        format!("create role {WEB_ROLE} login nocreatedb {limits}"),
        format!("grant {WEB_ROLE} to {OWNER_ROLE}"),
        format!("create database {DATABASE} owner {OWNER_ROLE}"),
        format!("revoke all on database {DATABASE} from public"),
        format!("grant connect on database {DATABASE} to {WEB_ROLE}"),
        "revoke all on database postgres from public".to_owned(),
        "revoke all on database template1 from public".to_owned(),
    ];
    let mut single = open.account.command(&programs.path("postgres"));
    single
        .arg("--single")
        .arg("-D")
        .arg(cluster)
        .args(["-c", "exit_on_error=true"]);
    if !options.fsync {
        single.args(["-c", "fsync=off"]);
    }
    single.arg("postgres").current_dir(&open.data);
    // One statement a line is what the single-user mode reads.
    run(
        &mut single,
        "postgres --single",
        &format!("{}\n", statements.join("\n")),
    )
}

/// Runs a program to its end, feeding it `input`; its complaint becomes the error.
pub(super) fn run(command: &mut Command, name: &str, input: &str) -> Result<(), ClusterError> {
    let failed = |said: String| ClusterError::ProgramFailed {
        program: name.to_owned(),
        said,
    };
    let mut child = command
        .stdin(Stdio::piped())
        .stdout(Stdio::null())
        .stderr(Stdio::piped())
        .spawn()
        .map_err(|e| failed(e.to_string()))?;
    if let Some(mut stdin) = child.stdin.take() {
        match stdin.write_all(input.as_bytes()) {
            // What it has to say about ending early is in its own words below.
            Err(e) if e.kind() != io::ErrorKind::BrokenPipe => return Err(failed(e.to_string())),
            _ => {}
        }
    }
    let output = child
        .wait_with_output()
        .map_err(|e| failed(e.to_string()))?;
    if output.status.success() {
        return Ok(());
    }
    let said = String::from_utf8_lossy(&output.stderr).trim().to_owned();
    Err(failed(if said.is_empty() {
        output.status.to_string()
    } else {
        said
    }))
}
