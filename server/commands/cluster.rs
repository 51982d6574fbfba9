//! `wetside cluster`: looking after the private database by hand.

use std::io::{self, Write};
use std::process::ExitCode;
use std::thread;

use clap::{Args, Subcommand};
use tokio::signal::unix::{SignalKind, signal};
use tokio::sync::oneshot;

use super::installation::Where;
use crate::database::cluster::{
    self, Cluster, DATABASE, Folders, OWNER_ROLE, StartOptions, Upgraded, WEB_ROLE,
};

/// What `wetside cluster` is asked.
#[derive(Args, Clone, Debug)]
pub struct ClusterArgs {
    /// What to do.
    #[command(subcommand)]
    pub action: ClusterAction,
}

/// The three things to do with a private database.
#[derive(Clone, Debug, Subcommand)]
pub enum ClusterAction {
    /// Keep the private database up, without serving, until interrupted
    Run {
        /// Also stop when standard input ends
        #[arg(long)]
        until_input_ends: bool,
    },
    /// Carry the data over to the newest PostgreSQL on this machine
    Upgrade,
    /// Say what is there and whether it is up
    Status,
}

/// Does what was asked.
///
/// # Errors
/// Where the private database cannot be reached; the error is a sentence.
pub async fn run(args: ClusterArgs, place: &Where) -> anyhow::Result<ExitCode> {
    let folders = Folders::choose(place.data.as_deref())?;
    match args.action {
        ClusterAction::Run { until_input_ends } => keep_up(&folders, until_input_ends).await,
        ClusterAction::Upgrade => upgrade(&folders).await,
        ClusterAction::Status => status(&folders),
    }
}

async fn keep_up(folders: &Folders, until_input_ends: bool) -> anyhow::Result<ExitCode> {
    let mut interrupted = signal(SignalKind::interrupt())?;
    let mut hung_up = signal(SignalKind::hangup())?;
    let mut terminated = signal(SignalKind::terminate())?;
    let cluster = Cluster::start(folders, &StartOptions::default()).await?;
    cluster.account().drop_to()?;
    let mut out = io::stdout();
    writeln!(
        out,
        "The private database in {} is up. To look inside:",
        cluster.data().display()
    )?;
    for role in [OWNER_ROLE, WEB_ROLE] {
        writeln!(
            out,
            "  psql -h {} -U {role} {DATABASE}",
            cluster.socket().display()
        )?;
    }
    writeln!(
        out,
        "Run psql as {} or, where root started this, as root.",
        cluster.account().name
    )?;
    writeln!(out, "Ctrl-C stops it.")?;
    out.flush()?;
    let gone = tokio::select! {
        _ = interrupted.recv() => false,
        _ = terminated.recv() => false,
        _ = hung_up.recv() => false,
        () = input_ends(), if until_input_ends => false,
        () = cluster.ended() => true,
    };
    cluster.stop().await;
    if gone {
        writeln!(
            out,
            "The private database ended by itself; see postgres.log in the data folder."
        )?;
        return Ok(ExitCode::FAILURE);
    }
    writeln!(out, "The private database has stopped.")?;
    Ok(ExitCode::SUCCESS)
}

/// Waits on a thread of its own, which does not keep the process from ending.
/// An input that cannot be read any more has ended too.
async fn input_ends() {
    let (end, ended) = oneshot::channel();
    thread::spawn(move || {
        let _rest = io::copy(&mut io::stdin().lock(), &mut io::sink());
        // Nobody listens any more where something else was the end.
        let _heard = end.send(());
    });
    let _ended = ended.await;
}

async fn upgrade(folders: &Folders) -> anyhow::Result<ExitCode> {
    let mut out = io::stdout();
    match cluster::upgrade(folders).await? {
        Upgraded::Already { version } => {
            writeln!(
                out,
                "The data is of PostgreSQL {version}, the newest on this machine."
            )?;
        }
        Upgraded::From {
            from,
            to,
            dump,
            is_current,
            kept,
        } => {
            writeln!(out, "The data is now of PostgreSQL {to}; it was of {from}.")?;
            writeln!(out, "It went through {}.", dump.display())?;
            if !is_current {
                writeln!(
                    out,
                    "That was the newest dump there was: what was written after it is only in \
                     the kept folder, for which PostgreSQL {from} is needed."
                )?;
            }
            writeln!(
                out,
                "The old data is kept in {}; delete it when all is well.",
                kept.display()
            )?;
        }
    }
    Ok(ExitCode::SUCCESS)
}

fn status(folders: &Folders) -> anyhow::Result<ExitCode> {
    let found = cluster::look(folders)?;
    let mut out = io::stdout();
    let data = folders.data().display();
    let Some(version) = found.version else {
        writeln!(out, "There is no private database in {data}.")?;
        return Ok(ExitCode::FAILURE);
    };
    writeln!(
        out,
        "{data} holds a database of PostgreSQL {version}, of the user {}.",
        found.account.name
    )?;
    let Some((pid, socket)) = found.server else {
        writeln!(out, "It is not running.")?;
        return Ok(ExitCode::FAILURE);
    };
    writeln!(out, "It is running as process {pid}. To look inside:")?;
    writeln!(
        out,
        "  psql -h {} -U {OWNER_ROLE} {DATABASE}",
        socket.display()
    )?;
    Ok(ExitCode::SUCCESS)
}
