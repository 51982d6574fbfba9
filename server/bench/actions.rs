//! What a steward does with lines and trays.

use serde::Serialize;
use uuid::Uuid;

use super::store;
use super::{LineSet, Step, Tray, TraySet, spaces};
use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::{Book, Done, Key};
use crate::problem::Problem;
use crate::rights::KeepBench;

/// So many lines, and so many trays in each, a room keeps at most.
const MOST: usize = 40;

/// A line as somebody wants it.
#[derive(Clone, Debug, Serialize)]
pub struct NewLine {
    /// The one to change; nothing for a new one.
    pub id: Option<Uuid>,
    /// What people call it.
    pub name: String,
    /// Its place on the bench; nothing for the end.
    pub position: Option<i32>,
    /// The space it stands in; nothing is the room itself.
    pub space_id: Option<Uuid>,
    /// Whether it is used no more.
    pub is_retired: bool,
}

/// A tray as somebody wants it. Measurements are inside, in tenths of a millimetre.
#[derive(Clone, Debug, Serialize)]
pub struct NewTray {
    /// The one to change; nothing for a new one.
    pub id: Option<Uuid>,
    /// The line it stands in.
    pub line_id: Uuid,
    /// What people call it.
    pub name: String,
    /// Its place in the line; nothing for the end.
    pub position: Option<i32>,
    /// What prints do in it; nothing for what they do, in a new one whatever stands there.
    pub step: Option<Step>,
    /// Long side of the floor.
    pub inside_long_tenths_mm: i32,
    /// Short side of the floor.
    pub inside_short_tenths_mm: i32,
    /// From the floor to the rim.
    pub inside_depth_tenths_mm: i32,
    /// What covers a print.
    pub least_depth_tenths_mm: i32,
    /// Whether it is used no more.
    pub is_retired: bool,
}

/// Adds or changes a line.
///
/// # Errors
/// A name that is taken; a line with full trays that would be retired.
pub async fn set_line(
    app: &App,
    permit: &Permit<KeepBench>,
    key: Key,
    new: NewLine,
) -> Result<Done> {
    permit
        .write(app, key, &new.clone(), move |book| {
            Box::pin(async move { write_line(book, new).await })
        })
        .await
}

async fn write_line(book: &mut Book<'_>, new: NewLine) -> Result<()> {
    let there = store::lines(book.tx()).await?;
    if there
        .iter()
        .any(|other| Some(other.id) != new.id && other.name == new.name)
    {
        return Err(Error::field("name", Problem::NameTaken));
    }
    let old = new.id.map(|id| there.iter().find(|line| line.id == id));
    let old = match old {
        Some(found) => Some(found.ok_or(Error::NotFound)?),
        None if there.len() >= MOST => return Err(Error::Refused(Problem::TooMany(MOST))),
        None => None,
    };
    if let Some(space) = new.space_id {
        let space = spaces::space(book.tx(), space).await?;
        if space.is_none_or(|space| space.is_retired && !new.is_retired) {
            return Err(Error::field("space", Problem::NotAChoice));
        }
    }
    if new.is_retired
        && let Some(line) = old
    {
        refuse_full_trays(book, line.id).await?;
    }
    let last = there.iter().map(|line| line.position).max().unwrap_or(0);
    let entry = LineSet {
        id: old.map_or_else(|| book.new_id(), |line| line.id),
        name: new.name,
        position: new
            .position
            .or(old.map(|line| line.position))
            .unwrap_or(last + 1),
        space_id: new.space_id,
        is_retired: new.is_retired,
    };
    book.append(&entry).await?;
    Ok(())
}

async fn refuse_full_trays(book: &mut Book<'_>, line: Uuid) -> Result<()> {
    let trays = store::trays(book.tx()).await?;
    for tray in trays.iter().filter(|tray| tray.line_id == line) {
        if store::is_full(book.tx(), tray.id).await? {
            return Err(Error::Refused(Problem::LineFull));
        }
    }
    Ok(())
}

/// Adds or changes a tray. A full one is neither moved to another line nor retired,
/// and keeps its step.
///
/// # Errors
/// A name that is taken in its line; a line that is not there; a full tray.
pub async fn set_tray(
    app: &App,
    permit: &Permit<KeepBench>,
    key: Key,
    new: NewTray,
) -> Result<Done> {
    permit
        .write(app, key, &new.clone(), move |book| {
            Box::pin(async move { write_tray(book, new).await })
        })
        .await
}

async fn write_tray(book: &mut Book<'_>, new: NewTray) -> Result<()> {
    let line = store::line(book.tx(), new.line_id).await?;
    if line.is_none_or(|line| line.is_retired && !new.is_retired) {
        return Err(Error::field("line", Problem::NotAChoice));
    }
    let there = store::trays(book.tx()).await?;
    let mut others = there
        .iter()
        .filter(|other| Some(other.id) != new.id && other.line_id == new.line_id);
    if others.clone().any(|other| other.name == new.name) {
        return Err(Error::field("name", Problem::NameTaken));
    }
    let old = new.id.map(|id| there.iter().find(|tray| tray.id == id));
    let old = match old {
        Some(found) => Some(found.ok_or(Error::NotFound)?),
        None if others.clone().count() >= MOST => {
            return Err(Error::Refused(Problem::TooMany(MOST)));
        }
        None => None,
    };
    let step = new.step.or(old.map(|tray| tray.step)).unwrap_or_default();
    if let Some(tray) = old {
        refuse_full(book, tray, &new, step).await?;
    }
    let last = others.by_ref().map(|tray| tray.position).max().unwrap_or(0);
    let entry = TraySet {
        id: old.map_or_else(|| book.new_id(), |tray| tray.id),
        line_id: new.line_id,
        name: new.name,
        position: new
            .position
            .or(old.map(|tray| tray.position))
            .unwrap_or(last + 1),
        step,
        inside_long_tenths_mm: new.inside_long_tenths_mm,
        inside_short_tenths_mm: new.inside_short_tenths_mm,
        inside_depth_tenths_mm: new.inside_depth_tenths_mm,
        least_depth_tenths_mm: new.least_depth_tenths_mm,
        is_retired: new.is_retired,
    };
    book.append(&entry).await?;
    Ok(())
}

/// What a full tray does not do: leave its line, be retired, take another step.
async fn refuse_full(book: &mut Book<'_>, tray: &Tray, new: &NewTray, step: Step) -> Result<()> {
    let (leaves, steps) = (
        new.is_retired || tray.line_id != new.line_id,
        step != tray.step,
    );
    if !(leaves || steps) || !store::is_full(book.tx(), tray.id).await? {
        return Ok(());
    }
    Err(match leaves {
        true => Error::Refused(Problem::TrayFull),
        false => Error::field("step", Problem::TrayFull),
    })
}

/// A tray that changes places with its neighbour.
#[derive(Clone, Copy, Debug, Serialize)]
pub struct TrayMove {
    /// Which.
    pub moved_tray_id: Uuid,
    /// Whether prints meet it earlier, or later.
    pub is_earlier: bool,
}

/// Moves a tray one place in its line.
///
/// # Errors
/// None of that id; one that is retired, or that is first or last already.
pub async fn move_tray(
    app: &App,
    permit: &Permit<KeepBench>,
    key: Key,
    wanted: TrayMove,
) -> Result<Done> {
    permit
        .write(app, key, &wanted, move |book| {
            Box::pin(async move { write_move(book, wanted).await })
        })
        .await
}

async fn write_move(book: &mut Book<'_>, wanted: TrayMove) -> Result<()> {
    let there = store::trays(book.tx()).await?;
    let tray = there.iter().find(|tray| tray.id == wanted.moved_tray_id);
    let line = tray.ok_or(Error::NotFound)?.line_id;
    let in_use = there
        .into_iter()
        .filter(|tray| tray.line_id == line && !tray.is_retired);
    let mut row: Vec<Tray> = in_use.collect();
    let from = row.iter().position(|tray| tray.id == wanted.moved_tray_id);
    let from = from.ok_or(Error::Refused(Problem::Retired))?;
    let to = match wanted.is_earlier {
        true => from.checked_sub(1),
        false => Some(from + 1).filter(|to| *to < row.len()),
    };
    row.swap(from, to.ok_or(Error::Refused(Problem::Unchanged))?);
    for (position, mut tray) in (1..).zip(row) {
        if tray.position != position {
            tray.position = position;
            book.append(&tray).await?;
        }
    }
    Ok(())
}
