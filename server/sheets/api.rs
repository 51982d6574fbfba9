//! Notes of sheets as JSON.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;
use uuid::Uuid;

use super::actions::{self, Undo};
use super::{NewNote, Pass, input, pass, passes};
use crate::api::{By, Input, Made, Page, Paging, Route, Writing, moment_text};
use crate::clock::micros;
use crate::error::{Error, Result};
use crate::input::moment;
use crate::problem::Problems;
use crate::rights::{NoteSheets, ReadBook, UndoNote};

const NOTES: &str = "/rooms/{room}/notes";
const NOTE: &str = "/rooms/{room}/notes/{id}";
const UNDO: &str = "/rooms/{room}/notes/{id}/undo";

/// The routes.
#[must_use]
pub fn api() -> Vec<Route> {
    vec![
        Route::list(NOTES, "Notes of sheets, newest first.", list),
        Route::one(NOTE, "One note.", one),
        Route::add(NOTES, "Note sheets that went down a line.", add),
        Route::act(UNDO, "Take a note back.", undo),
    ]
}

/// A note as it now is.
#[derive(Debug, Serialize, ToSchema)]
pub struct NoteOut {
    /// Which.
    pub id: Uuid,
    /// The number of its entry.
    pub seq: i64,
    /// The line.
    pub line_id: Uuid,
    /// The line's name.
    pub line_name: String,
    /// Who printed.
    pub person_id: Uuid,
    /// The paper class's name, nothing for film.
    pub paper_class: Option<String>,
    /// The sheet size's name, nothing for film.
    pub sheet_size: Option<String>,
    /// How many sheets, or rolls of film.
    pub sheets: i32,
    /// Whether it was film.
    pub is_film: bool,
    /// Whether nobody counted and the number is the usual one.
    pub is_estimated: bool,
    /// When.
    #[schema(format = DateTime)]
    pub happened_at: String,
    /// When it was written.
    #[schema(format = DateTime)]
    pub recorded_at: String,
    /// The number of the entry that took it back.
    pub reversed_by: Option<i64>,
}

impl NoteOut {
    fn of(pass: Pass) -> Result<Self> {
        Ok(Self {
            id: pass.id,
            seq: pass.seq,
            line_id: pass.line_id,
            line_name: pass.line_name,
            person_id: pass.person_id,
            paper_class: pass.paper_class,
            sheet_size: pass.sheet_size,
            sheets: pass.sheets,
            is_film: pass.is_film,
            is_estimated: pass.is_estimated,
            happened_at: moment_text(pass.happened_at)?,
            recorded_at: moment_text(pass.recorded_at)?,
            reversed_by: pass.reversed_by,
        })
    }
}

async fn list(by: By<ReadBook>, paging: Paging) -> Result<Page<NoteOut>> {
    let (before, limit) = (paging.after_seq()?, paging.limit);
    let found = by.app.database().reading(by.permit.scope(), move |tx| {
        Box::pin(passes(tx, before, limit + 1))
    });
    let page = paging.first_of(found.await?, |pass| pass.seq.to_string());
    page.map(NoteOut::of)
}

async fn one(by: By<ReadBook>, id: Uuid) -> Result<NoteOut> {
    let database = by.app.database();
    let found = database.reading(by.permit.scope(), move |tx| Box::pin(pass(tx, id)));
    NoteOut::of(found.await?.ok_or(Error::NotFound)?)
}

/// Sheets to note.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct NoteIn {
    /// The line they went down.
    pub line_id: Uuid,
    /// What class of paper.
    pub paper_class_id: Uuid,
    /// What size.
    pub sheet_size_id: Uuid,
    /// How many.
    #[schema(minimum = 1, maximum = 999)]
    pub sheets: i64,
    /// When, where that was not just now.
    #[schema(format = DateTime)]
    pub happened_at: Option<String>,
}

impl Input for NoteIn {
    const NAMES: &'static [(&'static str, &'static str)] = &[
        ("line", "line_id"),
        ("paper_class", "paper_class_id"),
        ("sheet_size", "sheet_size_id"),
    ];
}

impl NoteIn {
    fn read(self) -> Result<NewNote> {
        let mut problems = Problems::default();
        let sheets = problems.take("sheets", input::sheets(self.sheets));
        let at = self.happened_at.as_deref().map(moment).transpose();
        let at = problems.take("happened_at", at);
        match (sheets, at) {
            (Some(sheets), Some(at)) => Ok(NewNote {
                line_id: self.line_id,
                paper_class_id: self.paper_class_id,
                sheet_size_id: self.sheet_size_id,
                sheets: Some(sheets),
                is_toned: false,
                is_without_tray: false,
                happened_at_us: at.map(micros),
            }),
            _ => Err(Error::Invalid(problems)),
        }
    }
}

async fn add(by: Writing<NoteSheets>, note: NoteIn) -> Result<Made> {
    let done = actions::note_sheets(&by.app, &by.permit, by.key, note.read()?).await?;
    by.made(&done, "pass", "notes")
}

/// Why a note is taken back.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct UndoIn {
    /// Why; a steward who corrects somebody must say.
    #[schema(max_length = 300)]
    #[serde(default)]
    pub reason: String,
}

impl Input for UndoIn {}

async fn undo(by: Writing<UndoNote>, id: Uuid, undo: UndoIn) -> Result<Made> {
    let reason = input::reason(&undo.reason).map_err(|problem| Error::field("reason", problem))?;
    let undo = Undo {
        pass_id: id,
        reason,
    };
    let done = actions::undo(&by.app, &by.permit, by.key, undo).await?;
    by.made(&done, "pass", "notes")
}
