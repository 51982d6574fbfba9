//! What people print of an evening, and how it comes into the book.

use time::OffsetDateTime;
use uuid::Uuid;

use super::Cellar;
use super::bench::Row;
use super::papers::is_fibre;
use super::people::Who;
use super::stage::Stage;
use crate::bench::finishing::actions::{Joining, join_wash};
use crate::clock::micros;
use crate::error::Result;
use crate::sheets::NewNote;
use crate::sheets::actions::{NewFilm, note_film, note_sheets};

/// What somebody has put through a line.
#[derive(Clone, Copy, Debug)]
pub(super) struct Prints {
    /// The line.
    pub(super) row: Row,
    /// The paper class, by place in the list.
    pub(super) class: usize,
    /// The sheet size, by place in the list.
    pub(super) size: usize,
    /// How many; nothing where nobody counted.
    pub(super) sheets: Option<u32>,
    /// Whether they were toned.
    pub(super) is_toned: bool,
}

impl Prints {
    /// The same as the form asks for it.
    pub(super) fn note(self, cellar: &Cellar, at: Option<OffsetDateTime>) -> Result<NewNote> {
        Ok(NewNote {
            line_id: cellar.bench.line(self.row)?,
            paper_class_id: cellar.papers.class(self.class)?,
            sheet_size_id: cellar.papers.size(self.size)?,
            sheets: self.sheets,
            is_toned: self.is_toned,
            is_without_tray: false,
            happened_at_us: at.map(micros),
            workshop_id: None,
        })
    }
}

/// Somebody notes sheets, of just now or of earlier.
pub(super) async fn notes(
    stage: &mut Stage,
    cellar: &Cellar,
    who: Who,
    (prints, at): (Prints, Option<OffsetDateTime>),
) -> Result<Uuid> {
    let note = prints.note(cellar, at)?;
    stage.act(who, note_sheets, note).await?.id("pass")
}

/// Somebody notes rolls of film.
pub(super) async fn films(
    stage: &mut Stage,
    cellar: &Cellar,
    who: Who,
    (row, rolls): (Row, u32),
) -> Result<()> {
    let new = NewFilm {
        line_id: cellar.bench.line(row)?,
        rolls,
        happened_at_us: None,
    };
    stage.act(who, note_film, new).await?;
    Ok(())
}

/// Somebody puts prints into a line's wash.
pub(super) async fn washes(
    stage: &mut Stage,
    cellar: &Cellar,
    who: Who,
    (row, class): (Row, usize),
) -> Result<()> {
    let is_slow = cellar.papers.classes.get(class).is_some_and(is_fibre);
    let new = Joining {
        line_id: cellar.bench.line(row)?,
        paper_class_id: cellar.papers.class(class)?,
        had_wash_aid: is_slow && row == Row::Fibre,
    };
    stage.act(who, join_wash, new).await?;
    Ok(())
}
