//! The form of a sheet kept on paper: rows read, and shown again as typed.

use time::OffsetDateTime;

use super::views::{CheckCells, NoteCells, PaperForm};
use super::{CheckRow, NewSheet, NoteRow};
use crate::mixes::ReadingKind;
use crate::mixes::readings::input::{Said, taken};
use crate::problem::{Problem, Problems};
use crate::sheets::NewNote;
use crate::sheets::note_pages::count;
use crate::sheets::when;
use crate::web::dates::Zone;
use crate::web::fields::{self, Cell};
use crate::web::forms::read_id;
use crate::web::numbers::Numbers;

/// Rows of sheets that a fresh form has, and that more rows add.
pub(super) const NOTE_ROWS: usize = 6;
/// The same of checks.
pub(super) const CHECK_ROWS: usize = 3;

/// A sheet as read, and which rows of the form it has: blank ones are left out.
pub(super) struct Read {
    pub(super) sheet: NewSheet,
    notes: Vec<usize>,
    checks: Vec<usize>,
}

impl Read {
    /// Beside which field of the form a problem of the action stands.
    pub(super) fn beside(&self, field: &str) -> String {
        let found = field.split_once("].").and_then(|(row, field)| {
            let (kind, place) = row.split_once('[')?;
            let place: usize = place.parse().ok()?;
            let (rows, stem) = match kind {
                "notes" => (&self.notes, "row"),
                _ => (&self.checks, "check"),
            };
            Some(id(stem, *rows.get(place)?, shown_as(field)))
        });
        // What no row is about stands in the summary alone.
        found.unwrap_or_default()
    }
}

/// What the form calls a field of an action.
fn shown_as(field: &str) -> &str {
    match field {
        "happened_at" => "time",
        "temperature" | "seconds" | "ph" | "silver" => "figure",
        "kind" => "check",
        other => other,
    }
}

fn id(stem: &str, row: usize, field: &str) -> String {
    let field = field.replace('_', "-");
    format!("{stem}-{}-{field}", row + 1)
}

fn at(list: &[String], row: usize) -> &str {
    list.get(row).map_or("", |value| value.trim())
}

fn is_ticked(list: &[String], row: usize) -> bool {
    list.iter().any(|value| *value == (row + 1).to_string())
}

impl PaperForm {
    fn note_rows(&self) -> usize {
        self.time.len().max(self.person.len())
    }

    fn check_rows(&self) -> usize {
        self.check_time.len().max(self.check_person.len())
    }

    /// Whether nothing is filled in; a line alone, the only one there is, says nothing.
    fn is_blank_note(&self, row: usize) -> bool {
        let said = [
            &self.time,
            &self.person,
            &self.paper_class,
            &self.sheet_size,
            &self.sheets,
        ];
        let is_empty = |list: &&Vec<String>| at(list, row).is_empty();
        said.iter().all(is_empty) && !is_ticked(&self.uncounted, row)
    }

    fn is_blank_check(&self, row: usize) -> bool {
        let said = [
            &self.check_time,
            &self.check_person,
            &self.tray,
            &self.check,
            &self.outcome,
            &self.figure,
            &self.bath_temperature,
            &self.sample,
        ];
        said.iter().all(|list| at(list, row).is_empty())
    }

    /// Reads every row that is filled in.
    pub(super) fn read(&self, zone: &Zone, numbers: Numbers) -> Result<Read, Problems> {
        let mut problems = Problems::default();
        let mut read = Read {
            sheet: NewSheet::default(),
            notes: (0..self.note_rows())
                .filter(|row| !self.is_blank_note(*row))
                .collect(),
            checks: (0..self.check_rows())
                .filter(|row| !self.is_blank_check(*row))
                .collect(),
        };
        for row in &read.notes {
            read.sheet
                .notes
                .extend(self.read_note(*row, zone, &mut problems));
        }
        for row in &read.checks {
            let check = self.read_check(*row, zone, numbers, &mut problems);
            read.sheet.checks.extend(check);
        }
        match problems.is_empty() {
            true => Ok(read),
            false => Err(problems),
        }
    }

    fn read_note(&self, row: usize, zone: &Zone, problems: &mut Problems) -> Option<NoteRow> {
        let name = |field: &str| id("row", row, field);
        let chosen = |list: &[String]| read_id(at(list, row));
        let time = when::on(zone, &self.day, at(&self.time, row));
        let time = problems.take(name("time"), time);
        let person = problems.take(name("person"), chosen(&self.person));
        let line = problems.take(name("line"), chosen(&self.line));
        let class = problems.take(name("paper_class"), chosen(&self.paper_class));
        let size = problems.take(name("sheet_size"), chosen(&self.sheet_size));
        let sheets = count(at(&self.sheets, row), is_ticked(&self.uncounted, row));
        let sheets = problems.take(name("sheets"), sheets);
        Some(NoteRow {
            person_id: person?,
            note: NewNote {
                line_id: line?,
                paper_class_id: class?,
                sheet_size_id: size?,
                sheets: sheets?,
                is_toned: is_ticked(&self.toned, row),
                is_without_tray: is_ticked(&self.unknown_tray, row),
                happened_at_us: Some(time?.0),
                workshop_id: None,
            },
        })
    }

    fn read_check(
        &self,
        row: usize,
        zone: &Zone,
        numbers: Numbers,
        problems: &mut Problems,
    ) -> Option<CheckRow> {
        let name = |field: &str| id("check", row, field);
        let time = when::on(zone, &self.day, at(&self.check_time, row));
        let time = problems.take(name("time"), time);
        let person = problems.take(name("person"), read_id(at(&self.check_person, row)));
        let tray = problems.take(name("tray"), read_id(at(&self.tray, row)));
        let kind = ReadingKind::parse(at(&self.check, row)).ok_or(Problem::NotAChoice);
        let kind = problems.take(name("check"), kind);
        let mut found = Problems::default();
        let taken = kind.and_then(|kind| taken(self.said(kind, row, numbers), &mut found));
        for (field, problem) in found.iter() {
            problems.add(name(shown_as(field)), problem.clone());
        }
        Some(CheckRow {
            person_id: person?,
            tray_id: tray?,
            taken: taken?,
            remark: String::new(),
            happened_at_us: time?.0,
        })
    }

    fn said(&self, kind: ReadingKind, row: usize, numbers: Numbers) -> Said {
        let figure = at(&self.figure, row);
        let value = match kind {
            ReadingKind::Temperature => numbers.read_celsius(figure),
            ReadingKind::Ph => numbers.read_thousandths(figure),
            _ => numbers.read_count(figure),
        };
        let bath = numbers.read_celsius(at(&self.bath_temperature, row));
        Said {
            kind,
            passed: match at(&self.outcome, row) {
                "good" => Some(true),
                "bad" => Some(false),
                _ => None,
            },
            value: value.map_err(Problem::Number),
            bath: bath.map_err(Problem::Number),
            sample: at(&self.sample, row).to_owned(),
            is_fresh: false,
        }
    }

    /// The rows of sheets, as many as were typed or a fresh form has.
    pub(super) fn note_cells(&self, problems: &fields::Problems) -> Vec<NoteCells> {
        let more = if self.step == "more" { NOTE_ROWS } else { 0 };
        let rows = self.note_rows().max(NOTE_ROWS - more) + more;
        (0..rows)
            .map(|row| self.note_row_cells(row, problems))
            .collect()
    }

    fn note_row_cells(&self, row: usize, problems: &fields::Problems) -> NoteCells {
        let cell = |field: &str, value: &str| cell("row", row, field, value, problems);
        let tick = |field: &str, list: &[String]| {
            cell(field, if is_ticked(list, row) { "yes" } else { "" })
        };
        NoteCells {
            number: row + 1,
            time: cell("time", at(&self.time, row)),
            person: cell("person", at(&self.person, row)),
            line: cell("line", at(&self.line, row)),
            paper_class: cell("paper_class", at(&self.paper_class, row)),
            sheet_size: cell("sheet_size", at(&self.sheet_size, row)),
            sheets: cell("sheets", at(&self.sheets, row)),
            uncounted: tick("uncounted", &self.uncounted),
            toned: tick("toned", &self.toned),
            unknown_tray: tick("unknown_tray", &self.unknown_tray),
            offers_unknown_tray: is_ticked(&self.unknown_tray, row),
        }
    }

    /// The rows of checks.
    pub(super) fn check_cells(&self, problems: &fields::Problems) -> Vec<CheckCells> {
        let more = if self.step == "more" { CHECK_ROWS } else { 0 };
        let rows = self.check_rows().max(CHECK_ROWS - more) + more;
        (0..rows)
            .map(|row| self.check_row_cells(row, problems))
            .collect()
    }

    fn check_row_cells(&self, row: usize, problems: &fields::Problems) -> CheckCells {
        let cell =
            |field: &str, list: &[String]| cell("check", row, field, at(list, row), problems);
        CheckCells {
            number: row + 1,
            time: cell("time", &self.check_time),
            person: cell("person", &self.check_person),
            tray: cell("tray", &self.tray),
            check: cell("check", &self.check),
            outcome: cell("outcome", &self.outcome),
            figure: cell("figure", &self.figure),
            bath_temperature: cell("bath_temperature", &self.bath_temperature),
            sample: cell("sample", &self.sample),
        }
    }
}

fn cell(stem: &str, row: usize, field: &str, value: &str, problems: &fields::Problems) -> Cell {
    Cell::new(id(stem, row, field), value, problems)
}

/// A fresh form of that day.
pub(super) fn fresh(key: String, zone: &Zone, now: OffsetDateTime) -> PaperForm {
    PaperForm {
        key,
        day: zone.date_value(now),
        ..PaperForm::default()
    }
}

/// The rows of sheets whose line held nothing recorded then, by the ids of their lines.
pub(super) fn offered_unknown_tray(problems: &Problems) -> Vec<String> {
    let nothing = problems.iter().filter(|(field, problem)| {
        field.ends_with("-line") && **problem == Problem::NothingStoodThere
    });
    nothing.map(|(field, _)| field.to_owned()).collect()
}
