//! Noting sheets and undoing a note.

use askama::Template;
use serde::Deserialize;

use crate::web::dates::Moment;
use crate::web::fields::{Choice, Problems};
use crate::web::shell::Shell;

/// The note as it was typed.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct NoteSheetsForm {
    /// Idempotency key.
    pub key: String,
    /// The line's id.
    pub line: String,
    /// The paper class's id.
    pub paper_class: String,
    /// The sheet size's id.
    pub sheet_size: String,
    /// How many sheets.
    pub sheets: String,
    /// `now` or `earlier`.
    pub when: String,
    /// The day of an earlier print, `2026-11-25`.
    pub day: String,
    /// Its time, `18:05`.
    pub time: String,
}

/// The form to note sheets.
#[derive(Debug, Clone, Template)]
#[template(path = "sheets/note.html")]
pub struct NoteSheetsPage {
    /// The frame.
    pub shell: Shell,
    /// As typed, or the last choice.
    pub form: NoteSheetsForm,
    /// What to mend.
    pub problems: Problems,
    /// The lines; with one the question is not asked.
    pub lines: Vec<Choice>,
    /// The paper classes.
    pub paper_classes: Vec<Choice>,
    /// The sheet sizes.
    pub sheet_sizes: Vec<Choice>,
    /// The days a late note may name, today first.
    pub days: Vec<Choice>,
}

/// After noting: what it did, and Undo.
#[derive(Debug, Clone, Template)]
#[template(path = "sheets/noted.html")]
pub struct SheetsNotedPage {
    /// The frame.
    pub shell: Shell,
    /// The entry's number.
    pub seq: i64,
    /// How many sheets.
    pub sheets: String,
    /// `8×10 in, RC`.
    pub paper: String,
    /// The line.
    pub line: String,
    /// The line's id, for the next note.
    pub line_id: String,
    /// When they went through.
    pub at: Moment,
    /// What the note did to each tray, one sentence each.
    pub effects: Vec<String>,
    /// What the rule for local times did to the time typed, where it did anything.
    pub time_note: Option<String>,
    /// Until when this reader may undo it; none when it is too late or undone.
    pub undo_until: Option<Moment>,
    /// May this reader, a steward, undo somebody else's note?
    pub may_correct: bool,
    /// Was it undone?
    pub is_undone: bool,
}

/// The answer to whether a note is undone.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct UndoForm {
    /// Idempotency key.
    pub key: String,
    /// Why, where it is somebody else's note.
    pub reason: String,
}

/// Asks before a note is undone.
#[derive(Debug, Clone, Template)]
#[template(path = "sheets/undo.html")]
pub struct UndoNotePage {
    /// The frame.
    pub shell: Shell,
    /// The entry's number.
    pub seq: i64,
    /// As typed.
    pub form: UndoForm,
    /// What to mend.
    pub problems: Problems,
    /// Is it somebody else's note, so that a reason is due?
    pub asks_reason: bool,
    /// `6 sheets of 8×10 in, RC, on Line A`.
    pub note: String,
    /// When they went through.
    pub at: Moment,
    /// What undoing gives back to each tray.
    pub effects: Vec<String>,
}
