//! A bench sheet kept on paper, as JSON.

use serde::Deserialize;
use utoipa::ToSchema;
use uuid::Uuid;

use super::{CheckRow, NewSheet, NoteRow, enter};
use crate::api::{Input, Made, Route, Writing};
use crate::clock::micros;
use crate::error::{Error, Result};
use crate::input::moment;
use crate::mixes::ReadingKind;
use crate::mixes::readings::input::{self as checks, Said};
use crate::problem::{Problem, Problems};
use crate::rights::EnterBenchSheet;
use crate::sheets::NewNote;
use crate::sheets::api::counted;

/// The route.
#[must_use]
pub fn route() -> Route {
    Route::add(
        "/rooms/{room}/bench-sheet",
        "Enter a bench sheet that was kept on paper: every row of it, or none. The answer names \
         the first entry; those of the other rows follow it in the order they happened.",
        add,
    )
}

/// A bench sheet to enter: at most 50 rows.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct BenchSheetIn {
    /// Sheets that went down a line.
    #[serde(default)]
    pub notes: Vec<PaperNoteIn>,
    /// Checks and temperatures.
    #[serde(default)]
    pub checks: Vec<PaperCheckIn>,
}

/// A row of sheets.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct PaperNoteIn {
    /// Who printed.
    pub person_id: Uuid,
    /// The line they went down.
    pub line_id: Uuid,
    /// What class of paper.
    pub paper_class_id: Uuid,
    /// What size.
    pub sheet_size_id: Uuid,
    /// How many; left out where nobody counted.
    #[schema(minimum = 1, maximum = 999)]
    pub sheets: Option<i64>,
    /// Whether nobody counted.
    #[serde(default)]
    pub is_uncounted: bool,
    /// Whether they went through the toner of the line.
    #[serde(default)]
    pub is_toned: bool,
    /// Whether it is noted even where nothing recorded stood in the line then.
    #[serde(default)]
    pub is_unknown_tray: bool,
    /// When.
    #[schema(format = DateTime)]
    pub happened_at: String,
}

/// A row of a check or a temperature.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct PaperCheckIn {
    /// Who looked.
    pub person_id: Uuid,
    /// In which tray.
    pub tray_id: Uuid,
    /// At what; contamination is flagged.
    pub kind: ReadingKind,
    /// Of a check by eye: whether it was good.
    pub passed: Option<bool>,
    /// The figure: tenths of a degree, seconds, thousandths of pH or mg/L, as the kind says.
    pub value: Option<i64>,
    /// Of emergence and clearing: the bath's temperature, in tenths of a degree Celsius.
    #[schema(minimum = 0, maximum = 600)]
    pub tenths_celsius: Option<i64>,
    /// Of emergence and clearing: the paper or film.
    #[schema(max_length = 80)]
    #[serde(default)]
    pub sample: String,
    /// In the finder's words.
    #[schema(max_length = 300)]
    #[serde(default)]
    pub remark: String,
    /// When.
    #[schema(format = DateTime)]
    pub happened_at: String,
}

impl Input for BenchSheetIn {
    const NAMES: &'static [(&'static str, &'static str)] = &[
        ("person", "person_id"),
        ("line", "line_id"),
        ("paper_class", "paper_class_id"),
        ("sheet_size", "sheet_size_id"),
        ("toned", "is_toned"),
        ("tray", "tray_id"),
        ("outcome", "passed"),
        ("temperature", "value"),
        ("seconds", "value"),
        ("ph", "value"),
        ("silver", "value"),
        ("bath_temperature", "tenths_celsius"),
    ];

    /// Fields of rows: `notes[0].line` is `notes[0].line_id` here.
    fn rename(error: Error) -> Error {
        let Error::Invalid(problems) = error else {
            return error;
        };
        let mut renamed = Problems::default();
        for (path, problem) in problems.iter() {
            let path = match path.rsplit_once('.') {
                Some((row, field)) => {
                    let ours = Self::NAMES.iter().find(|(theirs, _)| *theirs == field);
                    format!("{row}.{}", ours.map_or(field, |(_, ours)| ours))
                }
                None => path.to_owned(),
            };
            renamed.add(path, problem.clone());
        }
        Error::Invalid(renamed)
    }
}

impl BenchSheetIn {
    fn read(self) -> Result<NewSheet> {
        let mut problems = Problems::default();
        let mut sheet = NewSheet::default();
        for (place, note) in self.notes.into_iter().enumerate() {
            let row = |field: &str| format!("notes[{place}].{field}");
            sheet.notes.extend(note.read(&row, &mut problems));
        }
        for (place, check) in self.checks.into_iter().enumerate() {
            let row = |field: &str| format!("checks[{place}].{field}");
            sheet.checks.extend(check.read(&row, &mut problems));
        }
        match problems.is_empty() {
            true => Ok(sheet),
            false => Err(Error::Invalid(problems)),
        }
    }
}

impl PaperNoteIn {
    fn read(self, row: &impl Fn(&str) -> String, problems: &mut Problems) -> Option<NoteRow> {
        let sheets = problems.take(row("sheets"), counted(self.sheets, self.is_uncounted));
        let at = problems.take(row("happened_at"), moment(&self.happened_at));
        Some(NoteRow {
            person_id: self.person_id,
            note: NewNote {
                line_id: self.line_id,
                paper_class_id: self.paper_class_id,
                sheet_size_id: self.sheet_size_id,
                sheets: sheets?,
                is_toned: self.is_toned,
                is_without_tray: self.is_unknown_tray,
                happened_at_us: Some(micros(at?)),
                workshop_id: None,
            },
        })
    }
}

impl PaperCheckIn {
    fn read(self, row: &impl Fn(&str) -> String, problems: &mut Problems) -> Option<CheckRow> {
        let said = Said {
            kind: self.kind,
            passed: self.passed,
            value: self.value.ok_or(Problem::Missing),
            bath: self.tenths_celsius.ok_or(Problem::Missing),
            sample: self.sample,
            is_fresh: false,
        };
        let mut found = Problems::default();
        let taken = checks::taken(said, &mut found);
        for (field, problem) in found.iter() {
            problems.add(row(field), problem.clone());
        }
        let remark = problems.take(row("remark"), checks::remark(&self.remark));
        let at = problems.take(row("happened_at"), moment(&self.happened_at));
        Some(CheckRow {
            person_id: self.person_id,
            tray_id: self.tray_id,
            taken: taken?,
            remark: remark?,
            happened_at_us: micros(at?),
        })
    }
}

async fn add(by: Writing<EnterBenchSheet>, sheet: BenchSheetIn) -> Result<Made> {
    let done = enter(&by.app, &by.permit, by.key, sheet.read()?).await?;
    match done.id("pass") {
        Ok(id) => Ok(by.made_at(&done, id, &format!("notes/{id}"))),
        Err(_) => by.made(&done, "reading", "readings"),
    }
}
