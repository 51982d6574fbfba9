//! What runs on a cluster now, read from `/proc` and from PostgreSQL's own note
//! of itself, `postmaster.pid`.

use std::fs;
use std::io;
use std::path::{Path, PathBuf};
use std::thread;
use std::time::{Duration, Instant};

use nix::sys::signal::{Signal, kill};
use nix::unistd::Pid;

use super::account::Account;

/// How long the remains of a dead server are given to end on request.
const PATIENCE_WITH_ORPHANS: Duration = Duration::from_secs(5);

/// How often a condition outside our reach is looked at again.
pub(super) const LOOK_AGAIN: Duration = Duration::from_millis(5);

/// A live server of a cluster.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Postmaster {
    pub(super) pid: i32,
    pub(super) socket: PathBuf,
    pub(super) phase: Phase,
}

/// How far a server says it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Phase {
    Starting,
    Ready,
    Stopping,
}

/// The live server of a cluster, if there is one. A note left by a dead server,
/// or whose number now belongs to another process, does not count.
pub(super) fn postmaster(cluster: &Path, account: &Account) -> Option<Postmaster> {
    let note = cluster.join("postmaster.pid");
    let text = account.act(|| fs::read_to_string(&note)).ok()?;
    let lines: Vec<&str> = text.lines().collect();
    let pid: i32 = lines.first()?.trim().parse().ok()?;
    if !is_server_of(pid, cluster) {
        return None;
    }
    let phase = match lines.get(7).map(|line| line.trim()) {
        Some("ready" | "standby") => Phase::Ready,
        Some("stopping") => Phase::Stopping,
        _ => Phase::Starting,
    };
    let socket = PathBuf::from(lines.get(4).copied().unwrap_or_default());
    Some(Postmaster { pid, socket, phase })
}

/// Whether a process lives and is a PostgreSQL process of this cluster.
pub(super) fn is_server_of(pid: i32, cluster: &Path) -> bool {
    is_alive(pid) && name_is(pid, "postgres") && cwd(pid).is_some_and(|folder| folder == cluster)
}

/// Ends what a dead server, or a creation broken off, left running. Asks with
/// SIGQUIT, which PostgreSQL's processes obey at once, and insists after a while. Returns
/// whether nothing is left.
pub(super) fn end_orphans(data: &Path, cluster: &Path) -> bool {
    let orphans = || -> Vec<i32> {
        pids()
            .into_iter()
            .filter(|pid| is_orphan(*pid, data, cluster))
            .collect()
    };
    let began = Instant::now();
    let mut asked = Vec::new();
    loop {
        let left = orphans();
        if left.is_empty() {
            return true;
        }
        let insisting = began.elapsed() > PATIENCE_WITH_ORPHANS;
        for pid in left {
            if insisting {
                signal(pid, Signal::SIGKILL);
            } else if !asked.contains(&pid) {
                signal(pid, Signal::SIGQUIT);
                asked.push(pid);
            }
        }
        if began.elapsed() > 2 * PATIENCE_WITH_ORPHANS {
            return false;
        }
        thread::sleep(LOOK_AGAIN);
    }
}

/// Removes a dead server's note whose number exists as a process again: after a
/// restart of a container, say, or where the dead one was not yet waited for.
/// PostgreSQL would take it for alive. Only for a cluster on which nothing runs;
/// a note whose number does not exist PostgreSQL sees through itself.
pub(super) fn clear_note(note: &Path, account: &Account) -> io::Result<()> {
    account.act(|| {
        let Ok(text) = fs::read_to_string(note) else {
            return Ok(());
        };
        let number = text
            .lines()
            .next()
            .and_then(|line| line.trim().parse::<i32>().ok());
        match number {
            Some(pid)
                if Path::new("/proc")
                    .join(pid.unsigned_abs().to_string())
                    .exists() =>
            {
                fs::remove_file(note)
            }
            _ => Ok(()),
        }
    })
}

fn is_orphan(pid: i32, data: &Path, cluster: &Path) -> bool {
    let Some(folder) = cwd(pid) else { return false };
    let unfinished = folder.parent() == Some(data)
        && folder.file_name().is_some_and(|name| {
            name.to_string_lossy()
                .starts_with(super::create::UNFINISHED)
        });
    let ours = ((folder == cluster || unfinished) && name_is(pid, "postgres"))
        || (folder == data && name_is(pid, "initdb"));
    ours && is_alive(pid)
}

/// Sends a signal; that the process is gone already is no failure.
pub(super) fn signal(pid: i32, signal: Signal) {
    if let Err(reason) = kill(Pid::from_raw(pid), signal)
        && reason != nix::errno::Errno::ESRCH
    {
        tracing::warn!(pid, %signal, %reason, "a PostgreSQL process could not be signalled");
    }
}

/// Whether a process runs; one that ended and waits for its parent does not.
pub(super) fn is_alive(pid: i32) -> bool {
    let Ok(stat) = fs::read_to_string(format!("/proc/{pid}/stat")) else {
        return false;
    };
    // proc(5): the state follows the name, which may itself hold brackets.
    let state = stat
        .rsplit_once(')')
        .and_then(|(_, rest)| rest.trim_start().chars().next());
    state.is_some_and(|state| !matches!(state, 'Z' | 'X'))
}

fn name_is(pid: i32, name: &str) -> bool {
    fs::read_to_string(format!("/proc/{pid}/comm")).is_ok_and(|text| text.trim() == name)
}

fn cwd(pid: i32) -> Option<PathBuf> {
    fs::read_link(format!("/proc/{pid}/cwd")).ok()
}

fn pids() -> Vec<i32> {
    let Ok(entries) = fs::read_dir("/proc") else {
        return Vec::new();
    };
    entries
        .flatten()
        .filter_map(|entry| entry.file_name().to_str()?.parse().ok())
        .collect()
}
