//! Erasing the names of guests once the room's time for them is over.

use time::{Duration, OffsetDateTime};
use uuid::Uuid;

use super::{GuestNamesErased, store};
use crate::app::App;
use crate::database::{RoomTx, Scope};
use crate::error::{Error, Result};
use crate::logbook::beside::erase_beside;
use crate::logbook::{Asked, Author, Book, fingerprint};
use crate::problem::Problem;
use crate::rooms;

/// Erases the names of guests who were signed in so many days ago as the room keeps them,
/// at workshops that are over. Each list is an entry.
///
/// # Errors
/// The database's.
pub async fn erase_names(app: &App, room: Uuid) -> Result<()> {
    let now = app.clock().now();
    let scope = Scope { room, person: None };
    let due = app
        .database()
        .reading(scope, move |tx| Box::pin(due(tx, now)))
        .await?;
    if due.is_empty() {
        return Ok(());
    }
    let asked = Asked {
        actor: None,
        key: None,
        fingerprint: fingerprint("erase_guest_names", &room)?,
    };
    let written = app
        .scribes()
        .write(room, Author::Unchecked, asked, |book| {
            Box::pin(write_erasing(book))
        })
        .await;
    match written {
        // Another instance was quicker.
        Err(Error::Refused(Problem::Unchanged)) => Ok(()),
        other => other.map(drop),
    }
}

/// The entries beside which names lie for too long, each with its workshop.
async fn due(tx: &mut RoomTx, now: OffsetDateTime) -> Result<Vec<(i64, Uuid)>> {
    let settings = match rooms::settings(tx).await {
        // A room that nobody opened yet has no guests.
        Err(Error::NotFound) => return Ok(Vec::new()),
        settings => settings?,
    };
    let kept = Duration::days(settings.guest_days.into());
    store::named_before(tx, now - kept).await
}

async fn write_erasing(book: &mut Book<'_>) -> Result<()> {
    let now = book.now();
    let due = due(book.tx(), now).await?;
    if due.is_empty() {
        return Err(Error::Refused(Problem::Unchanged));
    }
    for (erases_beside_seq, workshop_id) in due {
        let erased = GuestNamesErased {
            workshop_id,
            erases_beside_seq,
        };
        let by = book.append(&erased).await?;
        erase_beside(book.tx(), erases_beside_seq, by).await?;
    }
    Ok(())
}
