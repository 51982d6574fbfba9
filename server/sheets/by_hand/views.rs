//! Entering a bench sheet that was kept on paper.

use askama::Template;
use serde::Deserialize;

use crate::web::dates::Moment;
use crate::web::fields::{Cell, Choice, Problems};
use crate::web::shell::Shell;

/// The sheet as it was typed: lists of one value a row, in the order of the rows;
/// ticks carry the number of their row.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct PaperForm {
    /// Idempotency key: of the whole form.
    pub key: String,
    /// `enter`, or `more` for more rows.
    pub step: String,
    /// The day of every row, `2026-11-25`.
    pub day: String,
    /// Times of rows of sheets, `18:05`.
    pub time: Vec<String>,
    /// Who printed.
    pub person: Vec<String>,
    /// Ids of lines.
    pub line: Vec<String>,
    /// Ids of paper classes.
    pub paper_class: Vec<String>,
    /// Ids of sheet sizes.
    pub sheet_size: Vec<String>,
    /// Counts.
    pub sheets: Vec<String>,
    /// The rows that nobody counted.
    pub uncounted: Vec<String>,
    /// The rows that went through the toner.
    pub toned: Vec<String>,
    /// The rows that are noted though nothing recorded stood there.
    pub unknown_tray: Vec<String>,
    /// Times of rows of checks.
    pub check_time: Vec<String>,
    /// Who looked.
    pub check_person: Vec<String>,
    /// Ids of trays.
    pub tray: Vec<String>,
    /// Which checks.
    pub check: Vec<String>,
    /// `good` or `bad`, by eye.
    pub outcome: Vec<String>,
    /// Figures.
    pub figure: Vec<String>,
    /// Of times: the bath's temperature.
    pub bath_temperature: Vec<String>,
    /// Of times: paper or film.
    pub sample: Vec<String>,
}

/// A row of sheets.
#[derive(Debug, Clone)]
pub struct NoteCells {
    /// Its number, from 1.
    pub number: usize,
    /// When.
    pub time: Cell,
    /// Who printed.
    pub person: Cell,
    /// Down which line.
    pub line: Cell,
    /// On what class of paper.
    pub paper_class: Cell,
    /// Of what size.
    pub sheet_size: Cell,
    /// How many.
    pub sheets: Cell,
    /// `yes` where nobody counted.
    pub uncounted: Cell,
    /// `yes` where they were toned.
    pub toned: Cell,
    /// `yes` where it is noted as an unknown tray.
    pub unknown_tray: Cell,
    /// Is that offered? Only after a refusal.
    pub offers_unknown_tray: bool,
}

/// A row of a check or a temperature.
#[derive(Debug, Clone)]
pub struct CheckCells {
    /// Its number, from 1.
    pub number: usize,
    /// When.
    pub time: Cell,
    /// Who looked.
    pub person: Cell,
    /// In which tray.
    pub tray: Cell,
    /// Which check.
    pub check: Cell,
    /// Good or not.
    pub outcome: Cell,
    /// The figure.
    pub figure: Cell,
    /// The bath's temperature.
    pub bath_temperature: Cell,
    /// The paper or film.
    pub sample: Cell,
}

/// The form of a whole sheet.
#[derive(Debug, Clone, Template)]
#[template(path = "sheets/paper.html")]
pub struct PaperPage {
    /// The frame.
    pub shell: Shell,
    /// Idempotency key.
    pub key: String,
    /// The day as chosen.
    pub day: String,
    /// What to mend, for the summary and for what belongs to no row.
    pub problems: Problems,
    /// Rows of sheets.
    pub notes: Vec<NoteCells>,
    /// Rows of checks and temperatures.
    pub checks: Vec<CheckCells>,
    /// The days that can be entered, today first.
    pub days: Vec<Choice>,
    /// Everyone who prints here.
    pub people: Vec<Choice>,
    /// The lines.
    pub lines: Vec<Choice>,
    /// The paper classes.
    pub paper_classes: Vec<Choice>,
    /// The sheet sizes.
    pub sheet_sizes: Vec<Choice>,
    /// The trays.
    pub trays: Vec<Choice>,
    /// The checks.
    pub kinds: Vec<Choice>,
    /// Good or not.
    pub outcomes: Vec<Choice>,
    /// Does a line have a toner?
    pub has_toner: bool,
}

/// A row as the book has it now.
#[derive(Debug, Clone)]
pub struct EnteredRow {
    /// The number of its entry.
    pub seq: i64,
    /// Where more of it is said, below the room.
    pub path: String,
    /// When it happened.
    pub at: Moment,
    /// What, one sentence.
    pub sentence: String,
}

/// After a sheet was entered.
#[derive(Debug, Clone, Template)]
#[template(path = "sheets/entered.html")]
pub struct EnteredPage {
    /// The frame.
    pub shell: Shell,
    /// The rows in the order they happened.
    pub rows: Vec<EnteredRow>,
}
