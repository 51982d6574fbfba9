//! Carrying the data over to another version of PostgreSQL.
//!
//! A dump of the old database is restored into a new cluster beside it, and only
//! the finished copy takes the old one's place. The old cluster is kept. The
//! finished copy has a name of its own for the moment between the two renames,
//! so a crash there is put right at the next start.

use std::fs::{self, DirBuilder, File};
use std::os::unix::fs::DirBuilderExt;
use std::path::{Path, PathBuf};
use std::time::{SystemTime, UNIX_EPOCH};

use super::create::{create, run};
use super::error::ClusterError;
use super::folders::{Folders, Open};
use super::keeper::{Keeper, Plan};
use super::programs::{Programs, version_of};
use super::{DATABASE, OWNER_ROLE, StartOptions, processes};

/// The name of a finished copy that has not yet taken the old cluster's place.
const FINISHED: &str = "postgres.upgraded";

/// What an upgrade did.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Upgraded {
    /// The data is of that version already.
    Already {
        /// The version.
        version: String,
    },
    /// The data was carried over.
    From {
        /// The version it was.
        from: String,
        /// The version it is.
        to: u32,
        /// The dump it went through.
        dump: PathBuf,
        /// Whether the dump was made now; else it is the newest there was, and
        /// what was written after it stands only in the kept folder.
        is_current: bool,
        /// Where the old cluster is kept.
        kept: PathBuf,
    },
}

/// Carries a cluster over to the newest programs at hand.
///
/// # Errors
/// Where nothing can be read from, or a step fails; the old cluster stays in its
/// place then.
pub async fn upgrade(folders: &Folders) -> Result<Upgraded, ClusterError> {
    let taken = folders.take()?;
    let open = &taken.open;
    finish(open)?;
    let Some(from) = version_of(&open.cluster(), &open.account)? else {
        return Err(ClusterError::NothingThere {
            data: open.data.clone(),
        });
    };
    let programs = Programs::all(&open.account);
    let target = programs
        .iter()
        .rev()
        .max_by_key(|p| p.major)
        .ok_or(ClusterError::NoPrograms)?;
    if target.major.to_string() == from {
        return Ok(Upgraded::Already { version: from });
    }
    if from.parse().is_ok_and(|major: u32| major > target.major) {
        Programs::for_version(&from, &open.data, &open.account)?;
    }
    let (dump, is_current) = match dump_now(open, &from, &programs, target).await? {
        Some(dump) => (dump, true),
        None => (newest_dump(open, &from)?, false),
    };
    let made = create(open, target, &StartOptions::default())?;
    restore(open, target, &made, &dump).await?;
    let kept = swap(open, &made, &from)?;
    Ok(Upgraded::From {
        from,
        to: target.major,
        dump,
        is_current,
        kept,
    })
}

/// Puts right what a crash between the two renames left, and clears a copy that
/// never took its place.
pub(super) fn finish(open: &Open) -> Result<(), ClusterError> {
    let (place, finished) = (open.cluster(), open.data.join(FINISHED));
    let tidy = || match (place.exists(), finished.exists()) {
        (false, true) => fs::rename(&finished, &place),
        (true, true) => fs::remove_dir_all(&finished),
        _ => Ok(()),
    };
    open.account
        .act(tidy)
        .map_err(ClusterError::io("Tidying", &open.data))
}

fn plan(open: &Open, programs: &Programs, cluster: PathBuf) -> Plan {
    Plan {
        programs: programs.clone(),
        data: open.data.clone(),
        cluster,
        socket: open.socket.clone(),
        account: open.account.clone(),
        by_root: open.by_root,
        options: StartOptions::default(),
    }
}

/// Dumps the old database where it runs or can be run; the newer `pg_dump` is
/// the one PostgreSQL's manual asks for.
async fn dump_now(
    open: &Open,
    from: &str,
    programs: &[Programs],
    target: &Programs,
) -> Result<Option<PathBuf>, ClusterError> {
    let old = programs.iter().find(|p| p.major.to_string() == from);
    let is_running = processes::postmaster(&open.cluster(), &open.account).is_some();
    let Some(runner) = old.or(is_running.then_some(target)) else {
        return Ok(None);
    };
    let folder = open.data.join("dumps");
    let seconds = SystemTime::now()
        .duration_since(UNIX_EPOCH)
        .map_or(0, |since| since.as_secs());
    let file = folder.join(format!("{from}-to-{}-{seconds}.dump", target.major));
    open.account
        .act(|| {
            DirBuilder::new()
                .mode(0o700)
                .recursive(true)
                .create(&folder)
        })
        .map_err(ClusterError::io("Making", &folder))?;
    let (mut keeper, socket) = Keeper::start(plan(open, runner, open.cluster())).await?;
    let mut pg_dump = open.account.command(&target.path("pg_dump"));
    pg_dump.args(["--format=custom", "--file"]).arg(&file);
    let dumped = run(log_in(&mut pg_dump, &socket), "pg_dump", "");
    keeper.stop().await;
    dumped.map(|()| Some(file))
}

async fn restore(
    open: &Open,
    target: &Programs,
    made: &Path,
    dump: &Path,
) -> Result<(), ClusterError> {
    let (mut keeper, socket) = Keeper::start(plan(open, target, made.to_path_buf())).await?;
    let mut pg_restore = open.account.command(&target.path("pg_restore"));
    log_in(&mut pg_restore, &socket)
        .args(["--single-transaction", "--exit-on-error", "--no-owner"])
        .arg(dump);
    let restored = run(&mut pg_restore, "pg_restore", "");
    keeper.stop().await;
    restored
}

fn log_in<'a>(
    command: &'a mut std::process::Command,
    socket: &Path,
) -> &'a mut std::process::Command {
    command.arg("--host").arg(socket).args([
        "--port=5432",
        "--no-password",
        "--username",
        OWNER_ROLE,
        "--dbname",
        DATABASE,
    ])
}

fn newest_dump(open: &Open, from: &str) -> Result<PathBuf, ClusterError> {
    let folder = open.data.join("dumps");
    let newest = open.account.act(|| {
        let entries = fs::read_dir(&folder)?.flatten().map(|entry| entry.path());
        let dumps = entries.filter(|path| path.extension().is_some_and(|e| e == "dump"));
        Ok(dumps.max_by_key(|path| path.metadata().and_then(|m| m.modified()).ok()))
    });
    newest
        .ok()
        .flatten()
        .ok_or_else(|| ClusterError::NothingToUpgradeFrom {
            data: open.data.clone(),
            found: from.to_owned(),
            dumps: folder,
        })
}

fn swap(open: &Open, made: &Path, from: &str) -> Result<PathBuf, ClusterError> {
    let (place, finished) = (open.cluster(), open.data.join(FINISHED));
    let kept = (1..)
        .map(|n| open.data.join(format!("postgres-{from}-kept-{n}")))
        .find(|path| !path.exists())
        .unwrap_or_else(|| open.data.join("postgres-kept"));
    let swap = || {
        fs::rename(made, &finished)?;
        File::open(&open.data)?.sync_all()?;
        fs::rename(&place, &kept)?;
        fs::rename(&finished, &place)?;
        File::open(&open.data)?.sync_all()
    };
    open.account
        .act(swap)
        .map_err(ClusterError::io("Moving", made))?;
    Ok(kept)
}
