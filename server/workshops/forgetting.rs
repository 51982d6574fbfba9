//! What becomes of a workshop that nobody ends.

use time::Duration;
use uuid::Uuid;

use super::store::{self, Workshop};
use super::{Guest, WorkshopNotEnded};
use crate::app::App;
use crate::database::Scope;
use crate::error::{Error, Result};
use crate::logbook::{Asked, Author, Book, fingerprint};
use crate::problem::Problem;
use crate::rooms;

/// Writes down which workshops have run out, if any has.
///
/// # Errors
/// The database's.
pub async fn close_forgotten(app: &App, room: Uuid) -> Result<()> {
    let now = app.clock().now();
    let scope = Scope { room, person: None };
    let run_out = app
        .database()
        .reading(scope, move |tx| Box::pin(store::run_out(tx, now)))
        .await?;
    if run_out.is_empty() {
        return Ok(());
    }
    let asked = Asked {
        actor: None,
        key: None,
        fingerprint: fingerprint("close_forgotten_workshops", &room)?,
    };
    let written = app
        .scribes()
        .write(room, Author::Unchecked, asked, |book| {
            Box::pin(write_run_out(book))
        })
        .await;
    match written {
        // Another instance was quicker.
        Err(Error::Refused(Problem::Unchanged)) => Ok(()),
        other => other.map(drop),
    }
}

async fn write_run_out(book: &mut Book<'_>) -> Result<()> {
    let now = book.now();
    let run_out = store::run_out(book.tx(), now).await?;
    if run_out.is_empty() {
        return Err(Error::Refused(Problem::Unchanged));
    }
    for workshop in &run_out {
        write_not_ended(book, workshop).await?;
    }
    Ok(())
}

async fn write_not_ended(book: &mut Book<'_>, workshop: &Workshop) -> Result<()> {
    let zone = rooms::settings(book.tx()).await?.time_zone()?;
    let over_at = workshop.over_at.unwrap_or(workshop.ends_at);
    // What ends at midnight ends the day that was.
    let last = over_at - Duration::microseconds(1);
    let entry = WorkshopNotEnded {
        workshop_id: workshop.id,
        guest_ids: still_there(book, workshop.id).await?,
        local_date: zone.date_value(last),
    };
    book.append_at(Some(over_at), &entry).await?;
    Ok(())
}

/// The guests of a workshop who were not signed out.
pub(super) async fn still_there(book: &mut Book<'_>, workshop: Uuid) -> Result<Vec<Uuid>> {
    let guests = store::guests(book.tx(), workshop).await?.into_iter();
    let there = guests.filter(|guest: &Guest| guest.left_at.is_none());
    Ok(there.map(|guest| guest.id).collect())
}
