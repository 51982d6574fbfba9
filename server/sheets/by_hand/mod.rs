//! A bench sheet kept on paper while the power was out, entered afterwards in one
//! form: whoever types it is the writer, each row names who printed or looked.
//!
//! All rows are written in one transaction, in the order they happened, or none.

/// What is asked of it as JSON.
pub mod api;
mod entered_pages;
mod form;
pub mod pages;
mod store;
/// Its pages, as templates want them.
pub mod views;

use serde::Serialize;
use time::OffsetDateTime;
use uuid::Uuid;

use super::NewNote;
use super::compose::{Item, compose, store::usual_sheets};
use crate::app::App;
use crate::clock::{micros, moment};
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::{Book, Done, Key};
use crate::mixes::readings::{NewReading, Taken, record};
use crate::problem::{Problem, Problems};
use crate::rights::EnterBenchSheet;

/// So many rows one form holds at most.
pub const MOST_ROWS: usize = 50;

/// A bench sheet as somebody copied it.
#[derive(Clone, Debug, Default, Serialize)]
pub struct NewSheet {
    /// Sheets that went down a line.
    pub notes: Vec<NoteRow>,
    /// Checks and temperatures.
    pub checks: Vec<CheckRow>,
}

/// A row of sheets.
#[derive(Clone, Debug, Serialize)]
pub struct NoteRow {
    /// Who printed.
    pub person_id: Uuid,
    /// What.
    pub note: NewNote,
}

/// A row of a check or a temperature.
#[derive(Clone, Debug, Serialize)]
pub struct CheckRow {
    /// Who looked.
    pub person_id: Uuid,
    /// In which tray.
    pub tray_id: Uuid,
    /// At what, and what came of it.
    pub taken: Taken,
    /// In their words; may be empty.
    pub remark: String,
    /// When, in microseconds since 1970.
    pub happened_at_us: i64,
}

/// Enters a bench sheet: every row of it, or none.
///
/// # Errors
/// No row at all, or too many; what is wrong with each row, as a note or a check by
/// itself would be refused; somebody who does not print in this room.
pub async fn enter(
    app: &App,
    permit: &Permit<EnterBenchSheet>,
    key: Key,
    sheet: NewSheet,
) -> Result<Done> {
    permit
        .write(app, key, &sheet.clone(), move |book| {
            Box::pin(async move { write(book, sheet).await })
        })
        .await
}

/// A row by its kind and its place among those.
enum Row {
    Note(usize, NoteRow),
    Check(usize, CheckRow),
}

impl Row {
    fn happened_at_us(&self, now: OffsetDateTime) -> i64 {
        match self {
            Self::Note(_, row) => row.note.happened_at_us.unwrap_or_else(|| micros(now)),
            Self::Check(_, row) => row.happened_at_us,
        }
    }
}

async fn write(book: &mut Book<'_>, sheet: NewSheet) -> Result<()> {
    match sheet.notes.len() + sheet.checks.len() {
        0 => return Err(Error::field("notes", Problem::NothingEntered)),
        1..=MOST_ROWS => {}
        _ => return Err(Error::field("notes", Problem::TooMany(MOST_ROWS))),
    }
    let notes = sheet.notes.into_iter().enumerate();
    let checks = sheet.checks.into_iter().enumerate();
    let mut rows: Vec<Row> = notes
        .map(|(place, row)| Row::Note(place, row))
        .chain(checks.map(|(place, row)| Row::Check(place, row)))
        .collect();
    let now = book.now();
    rows.sort_by_key(|row| row.happened_at_us(now));
    let printers = store::printers(book.tx()).await?;
    let prints = |person: Uuid| printers.iter().any(|(id, _)| *id == person);
    let mut problems = Problems::default();
    for row in rows {
        let (place, main, written) = match row {
            Row::Note(place, row) => {
                let written = match prints(row.person_id) {
                    true => write_note(book, &row).await,
                    false => Err(Error::field("person", Problem::NotAChoice)),
                };
                (format!("notes[{place}]"), "line", written)
            }
            Row::Check(place, row) => {
                let written = match prints(row.person_id) {
                    true => write_check(book, row).await,
                    false => Err(Error::field("person", Problem::NotAChoice)),
                };
                (format!("checks[{place}]"), "tray", written)
            }
        };
        if let Err(error) = written {
            collect(&mut problems, &place, main, error)?;
        }
    }
    match problems.is_empty() {
        true => Ok(()),
        // Nothing of the form stays written.
        false => Err(Error::Invalid(problems)),
    }
}

/// What is wrong with a row, beside its field; what no field is about, beside the
/// row's main one.
fn collect(problems: &mut Problems, row: &str, main: &str, error: Error) -> Result<()> {
    match error {
        Error::Invalid(found) => {
            for (field, problem) in found.iter() {
                problems.add(format!("{row}.{field}"), problem.clone());
            }
        }
        Error::Refused(problem) => problems.add(format!("{row}.{main}"), problem),
        other => return Err(other),
    }
    Ok(())
}

async fn write_note(book: &mut Book<'_>, row: &NoteRow) -> Result<()> {
    let sheets = match row.note.sheets {
        Some(sheets) => sheets,
        None => usual_sheets(book.tx(), row.person_id).await?,
    };
    let item = Item {
        note: &row.note,
        person_id: row.person_id,
        pass_id: book.new_id(),
        sheets,
        corrects_seq: None,
    };
    let now = book.now();
    let composed = compose(book.tx(), now, &[item]).await?.pop();
    let composed = composed.ok_or_else(|| Error::fault("no entry for a note"))??;
    book.append_at(composed.happened_at, &composed.entry)
        .await?;
    Ok(())
}

async fn write_check(book: &mut Book<'_>, row: CheckRow) -> Result<()> {
    let at = moment(row.happened_at_us);
    let mix = store::stood_in(book.tx(), row.tray_id, at).await?;
    let new = NewReading {
        mix_id: mix.ok_or_else(|| Error::field("tray", Problem::NothingInTray))?,
        taken: row.taken,
        remark: row.remark,
        happened_at_us: Some(row.happened_at_us),
    };
    record(book, new, Some(row.person_id))
        .await
        .map_err(|error| match error {
            Error::Refused(Problem::MixGone) => Error::field("tray", Problem::GoneSince),
            other => other,
        })
}
