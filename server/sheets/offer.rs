//! What a form to note sheets offers, for a page that knows nobody: a door's.

use time::OffsetDateTime;

use super::NewNote;
use super::lines::lines_for;
use super::note_pages::{class_choices, count, size_choices};
use crate::database::RoomTx;
use crate::error::Result;
use crate::papers;
use crate::problem::Problems;
use crate::web::fields::Choice;
use crate::web::forms::read_id;

/// The choices.
#[derive(Clone, Debug)]
pub struct Offer {
    /// The lines in use.
    pub lines: Vec<Choice>,
    /// The paper classes in use.
    pub paper_classes: Vec<Choice>,
    /// The sheet sizes in use.
    pub sheet_sizes: Vec<Choice>,
}

impl Offer {
    /// Reads what the room offers now.
    ///
    /// # Errors
    /// The database's.
    pub async fn read(tx: &mut RoomTx, now: OffsetDateTime) -> Result<Self> {
        let lines = lines_for(tx, now).await?;
        Ok(Self {
            lines: lines
                .iter()
                .map(|line| Choice::new(line.id, &line.name))
                .collect(),
            paper_classes: class_choices(&papers::paper_classes(tx).await?),
            sheet_sizes: size_choices(&papers::sheet_sizes(tx).await?),
        })
    }
}

/// A note of counted sheets of just now, as typed: line, class, size, count.
///
/// # Errors
/// What is wrong with each.
pub fn read_counted([line, class, size, sheets]: [&str; 4]) -> Result<NewNote, Problems> {
    let mut problems = Problems::default();
    let line = problems.take("line", read_id(line));
    let class = problems.take("paper_class", read_id(class));
    let size = problems.take("sheet_size", read_id(size));
    let sheets = problems.take("sheets", count(sheets, false));
    match (line, class, size, sheets) {
        (Some(line_id), Some(paper_class_id), Some(sheet_size_id), Some(sheets)) => Ok(NewNote {
            line_id,
            paper_class_id,
            sheet_size_id,
            sheets,
            is_toned: false,
            is_without_tray: false,
            happened_at_us: None,
            workshop_id: None,
        }),
        _ => Err(problems),
    }
}
