//! `wetside member`: rescue for people and rooms that have locked themselves out.

use std::io::{self, Write};
use std::process::ExitCode;

use clap::{Args, Subcommand};

use super::room::{room_of, said};
use crate::app::App;
use crate::identity::sessions;
use crate::members::{self, Account};
use crate::rights::Role;

/// What `wetside member` is asked.
#[derive(Args, Clone, Debug)]
pub struct MemberArgs {
    /// What to do.
    #[command(subcommand)]
    pub action: MemberAction,
}

/// What can be done to people on the machine.
#[derive(Clone, Debug, Subcommand)]
pub enum MemberAction {
    /// List the accounts and their rooms
    List {
        /// Only those of the room with this short name
        #[arg(long)]
        room: Option<String>,
    },
    /// Make a link for a new password; it stands in the books of the person's rooms
    Reset {
        /// The log-in name
        log_in_name: String,
    },
    /// End every log-in of a person
    EndSessions {
        /// The log-in name
        log_in_name: String,
    },
    /// Make a person steward of a room that has lost its own
    MakeSteward {
        /// The log-in name
        log_in_name: String,
        /// The room's short name
        #[arg(long)]
        room: String,
    },
    /// Suspend an account everywhere: it cannot log in
    Suspend {
        /// The log-in name
        log_in_name: String,
    },
    /// Let a suspended account log in again
    Restore {
        /// The log-in name
        log_in_name: String,
    },
}

/// Does what was asked.
///
/// # Errors
/// A name nobody has, or a sentence that says why it was not done.
pub async fn run(args: MemberArgs, app: &App) -> anyhow::Result<ExitCode> {
    let mut out = io::stdout();
    match args.action {
        MemberAction::List { room } => list(app, room.as_deref(), &mut out).await?,
        MemberAction::Reset { log_in_name } => {
            let account = account_of(app, &log_in_name).await?;
            let address = members::reset(app, &account).await.map_err(said)?;
            writeln!(
                out,
                "{address}\nWhoever opens this within 24 hours sets a new password for {}. It works once.",
                account.log_in_name
            )?;
        }
        MemberAction::EndSessions { log_in_name } => {
            let account = account_of(app, &log_in_name).await?;
            let ended = sessions::end_all(app, account.id).await.map_err(said)?;
            writeln!(out, "Ended: {ended}.")?;
        }
        MemberAction::MakeSteward { log_in_name, room } => {
            let account = account_of(app, &log_in_name).await?;
            let room = room_of(app, &room).await?;
            members::make_steward(app, room.id, account.id)
                .await
                .map_err(said)?;
            writeln!(out, "{} is a steward of {}.", account.name, room.name)?;
        }
        MemberAction::Suspend { log_in_name } => suspend(app, &log_in_name, true, &mut out).await?,
        MemberAction::Restore { log_in_name } => {
            suspend(app, &log_in_name, false, &mut out).await?
        }
    }
    Ok(ExitCode::SUCCESS)
}

async fn suspend(
    app: &App,
    log_in_name: &str,
    suspended: bool,
    out: &mut impl Write,
) -> anyhow::Result<()> {
    let account = account_of(app, log_in_name).await?;
    members::set_suspended(app, account.id, suspended)
        .await
        .map_err(said)?;
    let can = if suspended { "cannot" } else { "can" };
    writeln!(out, "{} {can} log in.", account.log_in_name)?;
    Ok(())
}

async fn account_of(app: &App, log_in_name: &str) -> anyhow::Result<Account> {
    match members::account(app, log_in_name).await {
        Err(crate::error::Error::NotFound) => {
            anyhow::bail!(
                "Nobody logs in as {log_in_name:?}. `wetside member list` shows who does."
            )
        }
        other => other.map_err(said),
    }
}

async fn list(app: &App, room: Option<&str>, out: &mut impl Write) -> anyhow::Result<()> {
    let only = match room {
        Some(slug) => Some(room_of(app, slug).await?.id),
        None => None,
    };
    for account in members::accounts(app).await.map_err(said)? {
        let is_in = |id| account.rooms.iter().any(|(room, ..)| *room == id);
        if only.is_none_or(is_in) {
            writeln!(out, "{}", line_of(&account))?;
        }
    }
    Ok(())
}

fn line_of(account: &Account) -> String {
    let rooms: Vec<String> = account
        .rooms
        .iter()
        .map(|(_, slug, role, _)| format!("{slug} ({})", Role::as_str(*role)))
        .collect();
    let marks = [
        account.is_operator.then_some("operator"),
        account.suspended_at.map(|_| "suspended"),
    ];
    let marks: Vec<&str> = marks.into_iter().flatten().collect();
    let columns = [
        account.log_in_name.as_str(),
        account.name.as_str(),
        &marks.join(", "),
        &rooms.join(", "),
    ];
    columns.join("\t")
}
