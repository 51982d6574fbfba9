//! The Emergency page: with or without a room, with or without a log-in.

use axum::extract::{Path, State};
use axum::response::Response;

use super::statements;
use super::store;
use super::views::{EmergencyPage, Precaution, RoomHelp};
use crate::app::App;
use crate::database::{RoomTx, Scope};
use crate::error::{Error, Result};
use crate::identity::devices::MayBeScreen;
use crate::outages;
use crate::rooms::{self, Settings};
use crate::web::around;
use crate::web::forms::page;
use crate::web::frame::Frame;
use crate::web::shell::{Off, RoomName, Shell};

/// What to do first, where no room is known.
///
/// # Errors
/// A fault of the template.
pub async fn for_everyone(MayBeScreen(on_screen): MayBeScreen, frame: Frame) -> Result<Response> {
    page(&EmergencyPage {
        shell: Shell {
            on_screen,
            ..frame.shell()
        },
        room: None,
        precautions: Vec::new(),
    })
}

/// What to do first in a room. A room that nobody can find, or a database that
/// is away, still gives the page without one.
///
/// # Errors
/// A fault of the template.
pub async fn of_room(
    State(app): State<App>,
    MayBeScreen(on_screen): MayBeScreen,
    frame: Frame,
    Path(slug): Path<String>,
) -> Result<Response> {
    match help(&app, slug).await {
        Ok(found) => page(&EmergencyPage {
            shell: Shell {
                room: Some(found.name),
                off: found.off,
                on_screen,
                ..frame.shell()
            },
            room: Some(found.help),
            precautions: found.precautions,
        }),
        Err(cause) => {
            tracing::warn!(%cause, "the emergency page was shown without its room");
            for_everyone(MayBeScreen(on_screen), frame).await
        }
    }
}

/// What the page says of a room.
struct Found {
    name: RoomName,
    off: Vec<Off>,
    help: RoomHelp,
    precautions: Vec<Precaution>,
}

async fn help(app: &App, slug: String) -> Result<Found> {
    let room = app
        .database()
        .installation(move |tx| Box::pin(async move { rooms::by_slug(tx, &slug).await }))
        .await?
        .ok_or(Error::NotFound)?;
    let scope = Scope {
        room: room.id,
        person: None,
    };
    let (settings, help, precautions, open) = app
        .database()
        .reading(scope, |tx| {
            Box::pin(async move {
                let (settings, help, precautions) = on_file(tx).await?;
                Ok((settings, help, precautions, outages::open(tx).await?))
            })
        })
        .await?;
    let off = around::off(&open, &settings.time_zone()?);
    let name = RoomName {
        slug: room.slug,
        name: settings.name,
    };
    Ok(Found {
        name,
        off,
        help,
        precautions,
    })
}

/// A room's settings, and what they and its products say for Emergency.
///
/// # Errors
/// The database's.
pub async fn on_file(tx: &mut RoomTx) -> Result<(Settings, RoomHelp, Vec<Precaution>)> {
    let settings = rooms::settings(tx).await?;
    let codes = store::precautions(tx).await?;
    let file = settings.emergency.clone();
    let help = RoomHelp {
        emergency_number: file.number,
        poison_centre: file.poison_centre,
        address: file.address,
        contacts: file.contacts,
        eyewash: file.eyewash,
        data_sheets: file.data_sheets,
    };
    let precautions = codes.into_iter().flat_map(responses).collect();
    Ok((settings, help, precautions))
}

/// The statements that say what to do: P3xx, as the product's sheet lists them.
fn responses((product, codes): (String, Vec<String>)) -> Vec<Precaution> {
    let responses = codes.into_iter().filter(|code| code.starts_with("P3"));
    responses
        .map(|code| Precaution {
            product: product.clone(),
            text: statements::response(&code),
            code,
        })
        .collect()
}
