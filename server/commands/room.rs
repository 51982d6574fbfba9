//! `wetside room`: opening, closing and listing rooms. No look into their books.

use std::io::{self, Write};
use std::process::ExitCode;

use clap::{Args, Subcommand};

use crate::app::App;
use crate::error::Error;
use crate::identity::links::{self, Kind};
use crate::identity::secret::Secret;
use crate::logbook::Recording;
use crate::members;
use crate::rooms::actions::{Founder, NewRoom, open_room, set_closed};
use crate::rooms::{self, Room, Settings};
use crate::starters::STARTERS;
use crate::web::messages;
use crate::web::numbers::Numbers;

/// What `wetside room` is asked.
#[derive(Args, Clone, Debug)]
pub struct RoomArgs {
    /// What to do.
    #[command(subcommand)]
    pub action: RoomAction,
}

/// What can be done to rooms on the machine.
#[derive(Clone, Debug, Subcommand)]
pub enum RoomAction {
    /// Open a room
    Add {
        /// Its name
        name: String,
        /// Its short name in addresses [default: made of its name]
        #[arg(long)]
        short_name: Option<String>,
        /// Its time zone
        #[arg(long, default_value = "UTC")]
        zone: String,
        /// Its currency
        #[arg(long, default_value = "EUR")]
        currency: String,
        /// Log-in name of its first steward [default: whoever opens the link that is printed]
        #[arg(long)]
        steward: Option<String>,
    },
    /// Close a room: it is read, not written in
    Close {
        /// Its short name
        short_name: String,
    },
    /// Open a closed room again
    Reopen {
        /// Its short name
        short_name: String,
    },
    /// List the rooms
    List,
}

/// Does what was asked.
///
/// # Errors
/// A sentence that says why it was not done.
pub async fn run(args: RoomArgs, app: &App) -> anyhow::Result<ExitCode> {
    let mut out = io::stdout();
    match args.action {
        RoomAction::Add {
            name,
            short_name,
            zone,
            currency,
            steward,
        } => {
            let mut new = NewRoom::new(Settings::starting(name, zone, currency));
            new.slug = short_name.unwrap_or(new.slug);
            add(app, new, steward.as_deref(), &mut out).await?;
        }
        RoomAction::Close { short_name } => {
            let room = room_of(app, &short_name).await?;
            set_closed(app, room.id, true).await.map_err(said)?;
            writeln!(out, "{} is closed: it is read, not written in.", room.name)?;
        }
        RoomAction::Reopen { short_name } => {
            let room = room_of(app, &short_name).await?;
            set_closed(app, room.id, false).await.map_err(said)?;
            writeln!(out, "{} is open.", room.name)?;
        }
        RoomAction::List => {
            for room in all(app).await? {
                let closed = room.closed_at.map_or("", |_| "closed");
                writeln!(out, "{}\t{}\t{closed}", room.slug, room.name)?;
            }
        }
    }
    Ok(ExitCode::SUCCESS)
}

async fn add(
    app: &App,
    new: NewRoom,
    steward: Option<&str>,
    out: &mut impl Write,
) -> anyhow::Result<()> {
    let secret = Secret::new().map_err(said)?;
    let founder = match steward {
        Some(log_in_name) => {
            let account = members::account(app, log_in_name).await.map_err(said)?;
            Founder::Known(account.id)
        }
        None => Founder::Invited(secret.clone()),
    };
    let is_invited = matches!(founder, Founder::Invited(_));
    let recording = Recording::ByClock(app.clock().clone());
    let opened = open_room(app, new, founder, recording, STARTERS)
        .await
        .map_err(said)?;
    let path = format!("/rooms/{}", opened.slug);
    writeln!(out, "{}", app.address().absolute(&path))?;
    if is_invited {
        let address = links::address(app, Kind::Join, &secret);
        writeln!(
            out,
            "{address}\nWhoever opens this within 24 hours becomes its first steward. It works once."
        )?;
    }
    Ok(())
}

async fn all(app: &App) -> anyhow::Result<Vec<Room>> {
    app.database()
        .installation(|tx| Box::pin(async move { rooms::all(tx).await }))
        .await
        .map_err(said)
}

/// The room of a short name.
///
/// # Errors
/// A sentence where there is none.
pub(super) async fn room_of(app: &App, slug: &str) -> anyhow::Result<Room> {
    let wanted = slug.to_owned();
    app.database()
        .installation(move |tx| Box::pin(async move { rooms::by_slug(tx, &wanted).await }))
        .await
        .map_err(said)?
        .ok_or_else(|| {
            anyhow::anyhow!("There is no room {slug:?}. `wetside room list` shows the short names.")
        })
}

/// An error as a sentence for the terminal.
pub(super) fn said(error: Error) -> anyhow::Error {
    let numbers = Numbers::with_mark(".");
    match error {
        Error::Internal(cause) => cause,
        Error::Invalid(problems) => {
            let sentences: Vec<String> = problems
                .iter()
                .map(|(field, problem)| format!("{field}: {}", messages::problem(problem, numbers)))
                .collect();
            anyhow::anyhow!(sentences.join("\n"))
        }
        other => anyhow::anyhow!(messages::failure(&other, numbers)),
    }
}
