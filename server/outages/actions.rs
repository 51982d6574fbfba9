//! What people say about power and fan.

use serde::Serialize;
use time::OffsetDateTime;
use uuid::Uuid;

use super::store::{self, Outage};
use super::{OutageBegan, OutageEnded, What};
use crate::app::App;
use crate::clock::moment;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::input;
use crate::logbook::{Book, Done, Key};
use crate::problem::Problem;
use crate::rights::{LookAtBoard, NoteOutages};
use crate::rooms;

/// Something that went off, as somebody says it.
#[derive(Clone, Debug, Serialize)]
pub struct NewOutage {
    /// What.
    pub what: What,
    /// The part of the room it is about; nothing for the whole room.
    pub space_id: Option<Uuid>,
    /// When, where that was not just now: microseconds since 1970.
    pub happened_at_us: Option<i64>,
}

/// The end of one, as somebody says it.
#[derive(Clone, Debug, Serialize)]
pub struct OutageOver {
    /// Which.
    pub ended_outage_id: Uuid,
    /// When, where that was not just now: microseconds since 1970.
    pub happened_at_us: Option<i64>,
}

/// Says that something is off.
///
/// # Errors
/// A time too far off; what is off already.
pub async fn begin(
    app: &App,
    permit: &Permit<NoteOutages>,
    key: Key,
    new: NewOutage,
) -> Result<Done> {
    permit
        .write(app, key, &new.clone(), move |book| {
            Box::pin(async move { write_beginning(book, &new).await })
        })
        .await
}

async fn write_beginning(book: &mut Book<'_>, new: &NewOutage) -> Result<()> {
    let happened_at = happened(book, new.happened_at_us).await?;
    let off = store::open(book.tx()).await?;
    let is_off = |off: &Outage| off.what == new.what && off.space_id == new.space_id;
    if off.iter().any(is_off) {
        return Err(Error::field("what", Problem::OffAlready));
    }
    let entry = OutageBegan {
        outage_id: book.new_id(),
        what: new.what,
        space_id: new.space_id,
    };
    book.append_at(happened_at, &entry).await?;
    Ok(())
}

/// Says that it is over.
///
/// # Errors
/// None of that id; a time too far off, or before it began; what is over already.
pub async fn end(
    app: &App,
    permit: &Permit<NoteOutages>,
    key: Key,
    over: OutageOver,
) -> Result<Done> {
    permit
        .write(app, key, &over.clone(), move |book| {
            Box::pin(async move { write_end(book, &over).await })
        })
        .await
}

async fn write_end(book: &mut Book<'_>, over: &OutageOver) -> Result<()> {
    let outage = store::outage(book.tx(), over.ended_outage_id).await?;
    let outage = outage.ok_or(Error::NotFound)?;
    if outage.ended_at.is_some() {
        return Err(Error::Refused(Problem::OnAgainAlready));
    }
    let happened_at = happened(book, over.happened_at_us).await?;
    if happened_at.unwrap_or(book.now()) < outage.began_at {
        return Err(Error::field("happened_at", Problem::EndsBeforeItBegan));
    }
    let entry = OutageEnded {
        outage_id: outage.id,
        what: outage.what,
        space_id: outage.space_id,
    };
    book.append_at(happened_at, &entry).await?;
    Ok(())
}

/// A moment that somebody gave, held to the room's rule for late notes.
async fn happened(book: &mut Book<'_>, at_us: Option<i64>) -> Result<Option<OffsetDateTime>> {
    let Some(at) = at_us.map(moment) else {
        return Ok(None);
    };
    let (now, settings) = (book.now(), rooms::settings(book.tx()).await?);
    input::happened(at, now, settings.late_note_minutes)
        .map_err(|problem| Error::field("happened_at", problem))?;
    Ok(Some(at))
}

/// What is and was off, the latest said first, before the entry of this number.
///
/// # Errors
/// The database's.
pub async fn list(
    app: &App,
    permit: &Permit<LookAtBoard>,
    before: Option<i64>,
    most: i64,
) -> Result<Vec<Outage>> {
    app.database()
        .reading(permit.scope(), move |tx| {
            Box::pin(store::list(tx, before, most))
        })
        .await
}
