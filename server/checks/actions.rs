//! What a steward does with room checks, and what whoever does one finds.

use serde::Serialize;
use uuid::Uuid;

use super::{Measure, RoomCheck, RoomCheckSet, RoomCheckTakenBack, RoomChecked, starter, store};
use crate::app::App;
use crate::bench::spaces;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::{Book, Done, Key};
use crate::mixes::actions::happened;
use crate::notices::{self, Notice};
use crate::problem::Problem;
use crate::rights::{KeepChecks, RecordCheck, TakeBack};
use crate::rooms;
use crate::web::days;

/// So many checks a room keeps at most.
const MOST: usize = 100;

/// A check as somebody wants it.
#[derive(Clone, Debug, Serialize)]
pub struct NewCheck {
    /// The one to change; nothing for a new one.
    pub id: Option<Uuid>,
    /// What is looked at.
    pub name: String,
    /// How.
    pub how: String,
    /// So many days after it was done it is due again.
    pub every_days: i32,
    /// Where the number of days comes from.
    pub basis: String,
    /// What to do where it fails.
    pub on_failure: String,
    /// Whether the board says so while it is overdue or has failed.
    pub is_on_board: bool,
    /// The space it is about; nothing for the room itself.
    pub space_id: Option<Uuid>,
    /// What is measured; nothing where nothing is.
    pub measure: Option<Measure>,
    /// Whether it is done no more.
    pub is_retired: bool,
}

impl NewCheck {
    /// A check as it is, done no more or again.
    #[must_use]
    pub fn like(check: &RoomCheck, is_retired: bool) -> Self {
        let check = check.clone();
        Self {
            id: Some(check.id),
            name: check.name,
            how: check.how,
            every_days: check.every_days,
            basis: check.basis,
            on_failure: check.on_failure,
            is_on_board: check.is_on_board,
            space_id: check.space_id,
            measure: check.measure,
            is_retired,
        }
    }

    /// The check as it is from now on.
    fn settled(self, id: Uuid, first_due_on: String) -> RoomCheckSet {
        RoomCheckSet {
            id,
            name: self.name,
            how: self.how,
            every_days: self.every_days,
            basis: self.basis,
            on_failure: self.on_failure,
            is_on_board: self.is_on_board,
            space_id: self.space_id,
            measure: self.measure,
            first_due_on,
            is_retired: self.is_retired,
        }
    }
}

/// Asks for the starter checks.
#[derive(Clone, Copy, Debug, Serialize)]
pub struct CopyStarters {}

/// What somebody found.
#[derive(Clone, Debug, Serialize)]
pub struct NewResult {
    /// The check.
    pub room_check_id: Uuid,
    /// Whether all was well.
    pub has_passed: bool,
    /// What was measured, in thousandths of the check's unit.
    pub measured_thousandths: Option<i64>,
    /// What was found; a failure needs it.
    pub remark: String,
    /// When, where that was not just now: microseconds since 1970.
    pub happened_at_us: Option<i64>,
}

/// A result to take back.
#[derive(Clone, Debug, Serialize)]
pub struct UndoResult {
    /// Which.
    pub result_id: Uuid,
    /// Why.
    pub reason: String,
}

/// Adds or changes a check. A new one is due today: nobody knows when it was done last.
///
/// # Errors
/// A name that is taken; a space that is none; too many of them.
pub async fn set_check(
    app: &App,
    permit: &Permit<KeepChecks>,
    key: Key,
    new: NewCheck,
) -> Result<Done> {
    permit
        .write(app, key, &new.clone(), move |book| {
            Box::pin(async move { write_check(book, new).await })
        })
        .await
}

async fn write_check(book: &mut Book<'_>, new: NewCheck) -> Result<()> {
    let there = store::room_checks(book.tx()).await?;
    let mut others = there.iter().filter(|other| Some(other.id) != new.id);
    if others.any(|other| other.name == new.name) {
        return Err(Error::field("name", Problem::NameTaken));
    }
    let old = new.id.map(|id| there.iter().find(|check| check.id == id));
    let old = match old {
        Some(found) => Some(found.ok_or(Error::NotFound)?),
        None if there.len() >= MOST => return Err(Error::Refused(Problem::TooMany(MOST))),
        None => None,
    };
    let stays = old.is_some_and(|old| old.space_id == new.space_id);
    if let Some(space) = new.space_id
        && !stays
    {
        let space = spaces::space(book.tx(), space).await?;
        if space.is_none_or(|space| space.is_retired) {
            return Err(Error::field("space", Problem::NotAChoice));
        }
    }
    let entry = match old {
        Some(old) => new.settled(old.id, old.first_due_on.clone()),
        None => new.settled(book.new_id(), today(book).await?),
    };
    book.append(&entry).await?;
    Ok(())
}

/// Today where the room is.
async fn today(book: &mut Book<'_>) -> Result<String> {
    let zone = rooms::settings(book.tx()).await?.time_zone()?;
    Ok(zone.date_value(book.now()))
}

/// Copies the starter checks whose names the room does not have yet; each is due today.
///
/// # Errors
/// All of them are there already; too many.
pub async fn copy_starters(
    app: &App,
    permit: &Permit<KeepChecks>,
    key: Key,
    wanted: CopyStarters,
) -> Result<Done> {
    permit
        .write(app, key, &wanted, move |book| {
            Box::pin(async move { write_starters(book).await })
        })
        .await
}

async fn write_starters(book: &mut Book<'_>) -> Result<()> {
    let there = store::room_checks(book.tx()).await?;
    let missing = starter::missing(&there);
    if missing.is_empty() {
        return Err(Error::Refused(Problem::Unchanged));
    }
    if there.len() + missing.len() > MOST {
        return Err(Error::Refused(Problem::TooMany(MOST)));
    }
    let today = today(book).await?;
    for new in missing {
        let entry = new.settled(book.new_id(), today.clone());
        book.append(&entry).await?;
    }
    Ok(())
}

/// Records what was found at a check, with the day by which it is due again, and tells
/// stewards where it failed.
///
/// # Errors
/// None of that id; a check that is done no more; a failure without a remark; a figure
/// that is missing, that nobody asked for, or that is no pass; a time too far off.
pub async fn record(
    app: &App,
    permit: &Permit<RecordCheck>,
    key: Key,
    new: NewResult,
) -> Result<Done> {
    permit
        .write(app, key, &new.clone(), move |book| {
            Box::pin(async move { write_result(book, new).await })
        })
        .await
}

async fn write_result(book: &mut Book<'_>, new: NewResult) -> Result<()> {
    let check = store::room_check(book.tx(), new.room_check_id).await?;
    let check = check.ok_or(Error::NotFound)?;
    if check.is_retired {
        return Err(Error::Refused(Problem::Retired));
    }
    is_consistent(&new, check.measure.as_ref())?;
    let (now, settings) = (book.now(), rooms::settings(book.tx()).await?);
    let at = happened(now, new.happened_at_us, &settings)?;
    let due_on = days::days_later(&settings.time_zone()?, at.unwrap_or(now), check.every_days);
    let entry = RoomChecked {
        result_id: book.new_id(),
        room_check_id: check.id,
        has_passed: new.has_passed,
        remark: new.remark,
        measured_thousandths: new.measured_thousandths,
        measure: check.measure,
        due_on: due_on.map_err(Error::fault)?,
    };
    book.append_at(at, &entry).await?;
    if !entry.has_passed {
        let notice = Notice::RoomCheckFailed {
            check: check.id,
            name: check.name,
            remark: entry.remark,
        };
        notices::tell_stewards(book.tx(), now, &notice).await?;
    }
    Ok(())
}

/// Whether the parts of a result go together, and with what is measured.
fn is_consistent(new: &NewResult, measure: Option<&Measure>) -> Result<()> {
    let wrong = match (measure, new.measured_thousandths) {
        (None, Some(_)) => Some(Problem::NothingMeasured),
        (Some(_), None) if new.has_passed => Some(Problem::Missing),
        (Some(measure), Some(found)) if new.has_passed && !measure.allows(found) => {
            Some(Problem::OutsideLimit)
        }
        _ => None,
    };
    match wrong {
        Some(problem) => Err(Error::field("measured", problem)),
        None if !new.has_passed && new.remark.is_empty() => {
            Err(Error::field("remark", Problem::Missing))
        }
        None => Ok(()),
    }
}

/// Takes a result back: it was mistaken. What the one before it said holds again.
///
/// # Errors
/// None of that id; taken back before; no reason.
pub async fn take_back(
    app: &App,
    permit: &Permit<TakeBack>,
    key: Key,
    undo: UndoResult,
) -> Result<Done> {
    permit
        .write(app, key, &undo.clone(), move |book| {
            Box::pin(async move { write_taking_back(book, undo).await })
        })
        .await
}

async fn write_taking_back(book: &mut Book<'_>, undo: UndoResult) -> Result<()> {
    if undo.reason.is_empty() {
        return Err(Error::field("reason", Problem::Missing));
    }
    let result = store::result(book.tx(), undo.result_id).await?;
    let result = result.ok_or(Error::NotFound)?;
    if result.undone_by.is_some() {
        return Err(Error::Refused(Problem::AlreadyUndone));
    }
    let entry = RoomCheckTakenBack {
        result_id: result.id,
        result_seq: result.seq,
        room_check_id: result.room_check_id,
        reason: undo.reason,
    };
    book.append(&entry).await?;
    Ok(())
}
