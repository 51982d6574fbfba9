//! A steward sets somebody's note of sheets right.

use serde::Serialize;
use time::OffsetDateTime;
use uuid::Uuid;

use super::actions::{take_back, writer};
use super::compose::{Item, compose};
use super::store::{self, Pass};
use super::{NewNote, Noted};
use crate::app::App;
use crate::clock::micros;
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::{Book, Composed, Done, Key};
use crate::notices::{self, Notice};
use crate::problem::Problem;
use crate::rights::CorrectNote;

/// A note as it should have been.
#[derive(Clone, Debug, Serialize)]
pub struct Correction {
    /// The note.
    pub corrected_pass_id: Uuid,
    /// What class of paper.
    pub paper_class_id: Uuid,
    /// What size.
    pub sheet_size_id: Uuid,
    /// How many.
    pub sheets: u32,
    /// Why.
    pub reason: String,
}

/// Corrects somebody's note of sheets: takes it back and notes the right figures
/// for the same person, line and time. The person is told, with the reason.
///
/// # Errors
/// None of that id, a note of film, one taken back before; no reason; nothing
/// that would change.
pub async fn correct(
    app: &App,
    permit: &Permit<CorrectNote>,
    key: Key,
    wanted: Correction,
) -> Result<Done> {
    permit
        .write(app, key, &wanted.clone(), move |book| {
            Box::pin(async move { write(book, wanted).await })
        })
        .await
}

/// The note that a correction would write, as things stand now.
///
/// # Errors
/// As [`correct`], but for the reason.
pub(super) async fn proposed(
    tx: &mut RoomTx,
    now: OffsetDateTime,
    pass: &Pass,
    wanted: &Correction,
) -> Result<Noted> {
    must_change(pass, wanted)?;
    let composed = composed(tx, now, (pass, Uuid::nil()), wanted).await?;
    Ok(composed.entry)
}

fn must_change(pass: &Pass, wanted: &Correction) -> Result<()> {
    let is_same = pass.paper_class_id == Some(wanted.paper_class_id)
        && pass.sheet_size_id == Some(wanted.sheet_size_id)
        && u32::try_from(pass.sheets) == Ok(wanted.sheets)
        && !pass.is_estimated;
    if is_same {
        return Err(Error::Refused(Problem::Unchanged));
    }
    if pass.reversed_by.is_some() {
        return Err(Error::Refused(Problem::AlreadyUndone));
    }
    Ok(())
}

async fn composed(
    tx: &mut RoomTx,
    now: OffsetDateTime,
    (pass, pass_id): (&Pass, Uuid),
    wanted: &Correction,
) -> Result<Composed<Noted>> {
    let note = NewNote {
        line_id: pass.line_id,
        paper_class_id: wanted.paper_class_id,
        sheet_size_id: wanted.sheet_size_id,
        sheets: Some(wanted.sheets),
        is_toned: store::was_toned(tx, pass.seq).await?,
        is_without_tray: true,
        happened_at_us: Some(micros(pass.happened_at)),
        workshop_id: pass.workshop_id,
    };
    let item = Item {
        note: &note,
        person_id: pass.person_id,
        pass_id,
        sheets: wanted.sheets,
        corrects_seq: Some(pass.seq),
    };
    let composed = compose(tx, now, &[item]).await?.pop();
    composed.ok_or_else(|| Error::fault("no entry for a note"))?
}

async fn write(book: &mut Book<'_>, wanted: Correction) -> Result<()> {
    if wanted.reason.is_empty() {
        return Err(Error::field("reason", Problem::Missing));
    }
    let pass = store::pass(book.tx(), wanted.corrected_pass_id).await?;
    let pass = pass.filter(|pass| !pass.is_film).ok_or(Error::NotFound)?;
    must_change(&pass, &wanted)?;
    take_back(book, &pass, wanted.reason.clone()).await?;
    let (now, pass_id) = (book.now(), book.new_id());
    let composed = composed(book.tx(), now, (&pass, pass_id), &wanted).await?;
    let seq = book
        .append_at(composed.happened_at, &composed.entry)
        .await?;
    if book.actor() != Some(pass.person_id) {
        let notice = Notice::NoteCorrected {
            note: pass.seq,
            corrected: seq,
            by: writer(book).await?,
            reason: wanted.reason,
        };
        notices::tell(book.tx(), now, pass.person_id, &notice).await?;
    }
    Ok(())
}
