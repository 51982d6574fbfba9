//! The pages of room checks.

use askama::Template;
use serde::Deserialize;

use crate::web::dates::Moment;
use crate::web::desk::RetiredRow;
use crate::web::fields::{Choice, Problems};
use crate::web::shell::Shell;

/// A check as pages show it.
#[derive(Debug, Clone)]
pub struct CheckShown {
    /// Its id, for links.
    pub id: String,
    /// What is looked at.
    pub name: String,
    /// The space it is about, where the room has several.
    pub space: Option<String>,
    /// `Failed` or `Overdue`; nothing where neither is so.
    pub loud: Option<&'static str>,
    /// When it is due.
    pub due: String,
    /// What was found the last time.
    pub last: String,
    /// What to do now, where it failed.
    pub to_do: Option<String>,
    /// How often it is done.
    pub every: String,
}

/// A lamp and when its fog tests are due: they are on a page of their own.
#[derive(Debug, Clone)]
pub struct FogTestLine {
    /// The lamp's id.
    pub lamp: String,
    /// The lamp's name.
    pub name: String,
    /// What is to be done, or when.
    pub said: String,
}

/// The room's checks. A new one is asked for at `/checks/new`.
#[derive(Debug, Clone, Template)]
#[template(path = "checks/checks.html")]
pub struct ChecksPage {
    /// The frame.
    pub shell: Shell,
    /// Those that failed or are due.
    pub to_do: Vec<CheckShown>,
    /// Those that are due later, the next one first.
    pub later: Vec<CheckShown>,
    /// Lamps with the days of their fog tests.
    pub fog_tests: Vec<FogTestLine>,
    /// Those that are done no more.
    pub retired: Vec<RetiredRow>,
    /// Does the room lack one of the starter checks?
    pub offers_starters: bool,
    /// Idempotency key of the buttons.
    pub key: String,
    /// May this reader record a check?
    pub may_record: bool,
    /// May this reader change checks?
    pub may_keep: bool,
}

/// A result in its check's history.
#[derive(Debug, Clone)]
pub struct ResultRow {
    /// The number of its entry.
    pub seq: i64,
    /// Its id, to take it back.
    pub id: String,
    /// When.
    pub at: Moment,
    /// What was found.
    pub found: String,
    /// Who found it, and when it was due again.
    pub more: String,
    /// The entry that took it back.
    pub undone_by: Option<i64>,
}

/// One check and its results.
#[derive(Debug, Clone, Template)]
#[template(path = "checks/check.html")]
pub struct CheckPage {
    /// The frame.
    pub shell: Shell,
    /// The check.
    pub check: CheckShown,
    /// How it is done.
    pub how: String,
    /// What to do where it fails.
    pub on_failure: String,
    /// What passes, where something is measured.
    pub limit: Option<String>,
    /// Where the number of days comes from.
    pub basis: String,
    /// Does the board speak of it?
    pub is_on_board: bool,
    /// Is it done no more?
    pub is_retired: bool,
    /// Its results, the latest written first.
    pub results: Vec<ResultRow>,
    /// Leads to those before: a query.
    pub older: Option<String>,
    /// May this reader record it?
    pub may_record: bool,
    /// May this reader change it?
    pub may_keep: bool,
    /// May this reader take a result back?
    pub may_take_back: bool,
}

/// A check as typed.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct CheckForm {
    /// Idempotency key.
    pub key: String,
    /// What is looked at.
    pub name: String,
    /// How.
    pub how: String,
    /// Days until it is due again.
    pub days: String,
    /// Where they come from.
    pub basis: String,
    /// What to do where it fails.
    pub on_failure: String,
    /// `yes` where the board speaks of it.
    pub is_on_board: String,
    /// The id of its space; empty for the room itself.
    pub space: String,
    /// The unit of what is measured; empty where nothing is.
    pub unit: String,
    /// The least that passes.
    pub least: String,
    /// The most that passes.
    pub most: String,
}

/// A check to be added or changed: posts to `/checks` or `/checks/{id}/change`.
#[derive(Debug, Clone, Template)]
#[template(path = "checks/change.html")]
pub struct CheckFormPage {
    /// The frame.
    pub shell: Shell,
    /// Its id; nothing for a new one.
    pub id: Option<String>,
    /// What it may be about; empty where the room is one space.
    pub spaces: Vec<Choice>,
    /// As typed.
    pub form: CheckForm,
    /// What to mend.
    pub problems: Problems,
}

/// A result as typed.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct ResultForm {
    /// Idempotency key.
    pub key: String,
    /// `passed` or `failed`.
    pub outcome: String,
    /// What was measured.
    pub measured: String,
    /// What was found.
    pub remark: String,
    /// `now` or `earlier`.
    pub when: String,
    /// The day, where it was earlier.
    pub day: String,
    /// The time, where it was earlier.
    pub time: String,
}

/// The form of a result: posts to `/checks/{id}/record`.
#[derive(Debug, Clone, Template)]
#[template(path = "checks/record.html")]
pub struct RecordPage {
    /// The frame.
    pub shell: Shell,
    /// The check's id.
    pub id: String,
    /// What is looked at.
    pub name: String,
    /// How.
    pub how: String,
    /// What to do where it fails.
    pub on_failure: String,
    /// The unit, where something is measured.
    pub unit: Option<String>,
    /// What passes then.
    pub limit: String,
    /// All is well, or it failed.
    pub outcomes: Vec<Choice>,
    /// The days that may be named, today first.
    pub days: Vec<Choice>,
    /// As typed.
    pub form: ResultForm,
    /// What to mend.
    pub problems: Problems,
}
