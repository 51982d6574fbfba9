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
    /// `yes` where nobody counted.
    pub uncounted: String,
    /// `yes` where they went through the toner.
    pub toned: String,
    /// `yes` where nothing recorded stood there and it is noted all the same.
    pub unknown_tray: String,
    /// The workshop's id; nothing for oneself.
    pub workshop: String,
    /// `now` or `earlier`.
    pub when: String,
    /// The day of an earlier print, `2026-11-25`.
    pub day: String,
    /// Its time, `18:05`.
    pub time: String,
    /// Whose form it is; nothing where that was not said.
    pub person: String,
    /// When it was noted by the phone's clock: milliseconds since 1970.
    pub noted_at: String,
    /// What that clock said when it was sent.
    pub sent_at: String,
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
    /// Whom it may be for; empty where that is no question.
    pub whom: Vec<Choice>,
    /// The days a late note may name, today first.
    pub days: Vec<Choice>,
    /// The room's time zone, by its IANA name.
    pub zone: String,
    /// Is the tick for an unknown tray offered? Only after a refusal.
    pub offers_unknown_tray: bool,
    /// What stands beside the tick for toned prints; no tick without a toner.
    pub toned_hint: Option<String>,
    /// Does a line take rolls of film now?
    pub takes_film: bool,
    /// May this reader enter a bench sheet that was kept on paper?
    pub may_enter_paper: bool,
}

/// Rolls of film as they were typed.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct NoteFilmForm {
    /// Idempotency key.
    pub key: String,
    /// The line's id.
    pub line: String,
    /// How many rolls.
    pub rolls: String,
    /// `now` or `earlier`.
    pub when: String,
    /// The day, `2026-11-25`.
    pub day: String,
    /// The time, `18:05`.
    pub time: String,
}

/// The form to note rolls of film.
#[derive(Debug, Clone, Template)]
#[template(path = "sheets/film.html")]
pub struct NoteFilmPage {
    /// The frame.
    pub shell: Shell,
    /// As typed.
    pub form: NoteFilmForm,
    /// What to mend.
    pub problems: Problems,
    /// The lines whose fixer takes film; none: there is no form.
    pub lines: Vec<Choice>,
    /// Why the others take none, a sentence each.
    pub paper_only: Vec<String>,
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
    /// How many sheets, or rolls.
    pub count: String,
    /// `sheets` or `rolls`, as the count wants it.
    pub noun: &'static str,
    /// `8×10 in, RC`.
    pub paper: String,
    /// Is it a note of film?
    pub is_film: bool,
    /// The line.
    pub line: String,
    /// The workshop it is for: its id and what it is called.
    pub workshop: Option<(String, String)>,
    /// The line's id, for the next note.
    pub line_id: String,
    /// When they went through.
    pub at: Moment,
    /// Whose note it is, where it is not the reader's.
    pub person: Option<String>,
    /// Who wrote it, where that was not whose note it is.
    pub written_by: Option<String>,
    /// What is taken, where nobody counted.
    pub not_counted: Option<String>,
    /// The note this one stands in place of.
    pub replaced: Option<NoteReplaced>,
    /// How it was taken back.
    pub end: Option<NoteEnd>,
    /// What the note did to each tray, some sentences each.
    pub effects: Vec<String>,
    /// What the rule for local times did to the time typed, where it did anything.
    pub time_note: Option<String>,
    /// Until when this reader may undo it; none when it is too late or undone.
    pub undo_until: Option<Moment>,
    /// May this reader, a steward, undo somebody else's note?
    pub may_correct: bool,
    /// May this reader, a steward, set it right?
    pub may_set_right: bool,
    /// Was it undone?
    pub is_undone: bool,
}

/// The note that another one stands in place of.
#[derive(Debug, Clone)]
pub struct NoteReplaced {
    /// The number of its entry.
    pub seq: i64,
    /// Who set it right, and why.
    pub said: String,
    /// Old beside new.
    pub rows: Vec<Compared>,
}

/// How a note was taken back.
#[derive(Debug, Clone)]
pub struct NoteEnd {
    /// By whom and why, a sentence.
    pub said: String,
    /// The number of the note that holds in its place.
    pub corrected_by: Option<i64>,
}

/// A figure of two notes.
#[derive(Debug, Clone)]
pub struct Compared {
    /// What it is.
    pub what: String,
    /// As it was noted.
    pub old: String,
    /// As it should have been.
    pub new: String,
    /// Are they not the same?
    pub is_changed: bool,
}

/// The note as it should have been, as typed.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct CorrectForm {
    /// Idempotency key.
    pub key: String,
    /// The paper class's id.
    pub paper_class: String,
    /// The sheet size's id.
    pub sheet_size: String,
    /// How many sheets.
    pub sheets: String,
    /// Why.
    pub reason: String,
    /// `show` or `correct`.
    pub step: String,
}

/// A steward sets a note right.
#[derive(Debug, Clone, Template)]
#[template(path = "sheets/correct.html")]
pub struct CorrectNotePage {
    /// The frame.
    pub shell: Shell,
    /// The entry's number.
    pub seq: i64,
    /// `6 sheets of 8×10 in, RC, on Line A`.
    pub note: String,
    /// Whose note it is.
    pub person: String,
    /// When they went through.
    pub at: Moment,
    /// As typed.
    pub form: CorrectForm,
    /// What to mend.
    pub problems: Problems,
    /// The paper classes.
    pub paper_classes: Vec<Choice>,
    /// The sheet sizes.
    pub sheet_sizes: Vec<Choice>,
    /// Old beside new, once asked for.
    pub rows: Vec<Compared>,
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
