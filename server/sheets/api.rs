//! Notes of sheets as JSON.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;
use uuid::Uuid;

use super::actions::{self, NewFilm, Undo};
use super::correction::{self, Correction};
use super::{NewNote, Pass, Wear, by_hand, input, pass, passes, store};
use crate::api::{By, Input, Made, Page, Paging, Route, Writing, moment_text};
use crate::clock::micros;
use crate::error::{Error, Result};
use crate::input::moment;
use crate::problem::{Problem, Problems};
use crate::rights::{CorrectNote, NoteSheets, ReadBook, UndoNote};

const NOTES: &str = "/rooms/{room}/notes";
const NOTE: &str = "/rooms/{room}/notes/{id}";
const UNDO: &str = "/rooms/{room}/notes/{id}/undo";
const CORRECT: &str = "/rooms/{room}/notes/{id}/correct";
const FILM: &str = "/rooms/{room}/notes/film";

/// The routes.
#[must_use]
pub fn api() -> Vec<Route> {
    vec![
        Route::list(NOTES, "Notes of sheets, newest first.", list),
        Route::one(NOTE, "One note, with what it did to each bath.", one),
        Route::add(NOTES, "Note sheets that went down a line.", add),
        Route::add(FILM, "Note rolls of film that went through a fixer.", film),
        Route::act(UNDO, "Take a note back.", undo),
        Route::act(
            CORRECT,
            "Set a note of sheets right: it is taken back, and the entry after that is the note \
             that holds.",
            correct,
        ),
        by_hand::api::route(),
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
    /// For which workshop.
    pub workshop_id: Option<Uuid>,
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
            workshop_id: pass.workshop_id,
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

/// A note with what it did.
#[derive(Debug, Serialize, ToSchema)]
pub struct NoteInFullOut {
    /// The note.
    #[serde(flatten)]
    pub note: NoteOut,
    /// What it did to each bath it went through.
    pub baths: Vec<WornOut>,
}

/// What a note did to a bath.
#[derive(Debug, Serialize, ToSchema)]
pub struct WornOut {
    /// The mix.
    pub mix_id: Uuid,
    /// The tray it stood in.
    pub tray_id: Uuid,
    /// What was used up, in nanolitres of fresh solution.
    pub spent_nl: i64,
    /// The share that counts here, in parts per billion, in the second of two fixing baths.
    pub share_ppb: Option<i64>,
    /// Silver it gained by estimate, in micrograms: least, usual, most.
    pub silver_ug: Option<[i64; 3]>,
    /// Bromide that developing set free by estimate, in micrograms.
    pub bromide_ug: Option<i64>,
    /// Alkali carried in by estimate, in nano-equivalents.
    pub alkali_neq: Option<i64>,
    /// What prints took along by estimate, in microlitres.
    pub carried_out_ul: Option<i64>,
    /// What they brought of the bath before by estimate, in microlitres.
    pub received_ul: Option<i64>,
}

impl From<Wear> for WornOut {
    fn from(wear: Wear) -> Self {
        let brought = wear.brought;
        Self {
            mix_id: wear.mix_id,
            tray_id: wear.tray_id,
            spent_nl: wear.spent_nl,
            share_ppb: wear.share_ppb,
            silver_ug: brought.map(|brought| brought.silver_ug),
            bromide_ug: brought.map(|brought| brought.bromide_ug),
            alkali_neq: brought.map(|brought| brought.alkali_neq),
            carried_out_ul: brought.map(|brought| brought.carried_out_ul),
            received_ul: brought.map(|brought| brought.received_ul),
        }
    }
}

async fn one(by: By<ReadBook>, id: Uuid) -> Result<NoteInFullOut> {
    let database = by.app.database();
    let found = database.reading(by.permit.scope(), move |tx| {
        Box::pin(async move {
            let pass = pass(tx, id).await?.ok_or(Error::NotFound)?;
            let wear = store::wear_of(tx, pass.seq).await?;
            Ok((pass, wear))
        })
    });
    let (pass, wear) = found.await?;
    Ok(NoteInFullOut {
        note: NoteOut::of(pass)?,
        baths: wear.into_iter().map(WornOut::from).collect(),
    })
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
    /// How many; left out where nobody counted.
    #[schema(minimum = 1, maximum = 999)]
    pub sheets: Option<i64>,
    /// Whether nobody counted: the usual number is taken, and the baths ask for a
    /// test first.
    #[serde(default)]
    pub is_uncounted: bool,
    /// Whether they went through the toner of the line.
    #[serde(default)]
    pub is_toned: bool,
    /// Whether it is noted even where nothing recorded stood in the line then.
    #[serde(default)]
    pub is_unknown_tray: bool,
    /// When, where that was not just now.
    #[schema(format = DateTime)]
    pub happened_at: Option<String>,
    /// For which workshop, of those that one leads and that was going on then.
    pub workshop_id: Option<Uuid>,
}

/// A count, or that nobody counted: one of the two.
pub(super) fn counted(sheets: Option<i64>, is_uncounted: bool) -> Result<Option<u32>, Problem> {
    match (sheets, is_uncounted) {
        (Some(sheets), false) => input::sheets(sheets).map(Some),
        (None, true) => Ok(None),
        _ => Err(Problem::CountedOrNot),
    }
}

impl Input for NoteIn {
    const NAMES: &'static [(&'static str, &'static str)] = &[
        ("line", "line_id"),
        ("paper_class", "paper_class_id"),
        ("sheet_size", "sheet_size_id"),
        ("toned", "is_toned"),
        ("workshop", "workshop_id"),
    ];
}

impl NoteIn {
    fn read(self) -> Result<NewNote> {
        let mut problems = Problems::default();
        let sheets = problems.take("sheets", counted(self.sheets, self.is_uncounted));
        let at = self.happened_at.as_deref().map(moment).transpose();
        let at = problems.take("happened_at", at);
        match (sheets, at) {
            (Some(sheets), Some(at)) => Ok(NewNote {
                line_id: self.line_id,
                paper_class_id: self.paper_class_id,
                sheet_size_id: self.sheet_size_id,
                sheets,
                is_toned: self.is_toned,
                is_without_tray: self.is_unknown_tray,
                happened_at_us: at.map(micros),
                workshop_id: self.workshop_id,
            }),
            _ => Err(Error::Invalid(problems)),
        }
    }
}

async fn add(by: Writing<NoteSheets>, note: NoteIn) -> Result<Made> {
    let done = actions::note_sheets(&by.app, &by.permit, by.key, note.read()?).await?;
    by.made(&done, "pass", "notes")
}

/// Rolls of film to note.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct FilmIn {
    /// The line whose fixer they went through.
    pub line_id: Uuid,
    /// How many rolls.
    #[schema(minimum = 1, maximum = 99)]
    pub rolls: i64,
    /// When, where that was not just now.
    #[schema(format = DateTime)]
    pub happened_at: Option<String>,
}

impl Input for FilmIn {
    const NAMES: &'static [(&'static str, &'static str)] = &[("line", "line_id")];
}

async fn film(by: Writing<NoteSheets>, film: FilmIn) -> Result<Made> {
    let mut problems = Problems::default();
    let rolls = problems.take("rolls", input::rolls(film.rolls));
    let at = film.happened_at.as_deref().map(moment).transpose();
    let at = problems.take("happened_at", at);
    let (Some(rolls), Some(at)) = (rolls, at) else {
        return Err(Error::Invalid(problems));
    };
    let new = NewFilm {
        line_id: film.line_id,
        rolls,
        happened_at_us: at.map(micros),
    };
    let done = actions::note_film(&by.app, &by.permit, by.key, new).await?;
    by.made(&done, "pass", "notes")
}

/// A note as it should have been.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct CorrectionIn {
    /// What class of paper.
    pub paper_class_id: Uuid,
    /// What size.
    pub sheet_size_id: Uuid,
    /// How many.
    #[schema(minimum = 1, maximum = 999)]
    pub sheets: i64,
    /// Why; the person reads it.
    #[schema(max_length = 300)]
    pub reason: String,
}

impl Input for CorrectionIn {
    const NAMES: &'static [(&'static str, &'static str)] = &[
        ("paper_class", "paper_class_id"),
        ("sheet_size", "sheet_size_id"),
    ];
}

async fn correct(by: Writing<CorrectNote>, id: Uuid, wanted: CorrectionIn) -> Result<Made> {
    let mut problems = Problems::default();
    let sheets = problems.take("sheets", input::sheets(wanted.sheets));
    let reason = problems.take("reason", input::reason(&wanted.reason));
    let (Some(sheets), Some(reason)) = (sheets, reason) else {
        return Err(Error::Invalid(problems));
    };
    let wanted = Correction {
        corrected_pass_id: id,
        paper_class_id: wanted.paper_class_id,
        sheet_size_id: wanted.sheet_size_id,
        sheets,
        reason,
    };
    let done = correction::correct(&by.app, &by.permit, by.key, wanted).await?;
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
