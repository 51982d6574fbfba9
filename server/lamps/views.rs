//! The pages of lamps and screens.

use askama::Template;
use serde::Deserialize;

use crate::web::dates::Moment;
use crate::web::desk::RetiredRow;
use crate::web::fields::{Choice, Problems};
use crate::web::shell::Shell;

/// A lamp as a page shows it.
#[derive(Debug, Clone)]
pub struct LampShown {
    /// Its id, for links.
    pub id: String,
    /// Its name.
    pub name: String,
    /// What it is and how it hangs, one line.
    pub about: String,
    /// What is known of every paper in use.
    pub papers: Vec<PaperShown>,
}

/// What is known of one paper under a lamp.
#[derive(Debug, Clone)]
pub struct PaperShown {
    /// The paper.
    pub name: String,
    /// The time, or that there is none, in large words.
    pub word: &'static str,
    /// The time, where it holds.
    pub time: Option<String>,
    /// Since when, until when, and what to do.
    pub said: String,
}

/// The record of the room. A new lamp is asked for at `/lamps/new`.
#[derive(Debug, Clone, Template)]
#[template(path = "lamps/lamps.html")]
pub struct LampsPage {
    /// The frame.
    pub shell: Shell,
    /// Those in use.
    pub lamps: Vec<LampShown>,
    /// Those that are not.
    pub retired: Vec<RetiredRow>,
    /// Idempotency key of the buttons.
    pub key: String,
    /// May this reader record a test?
    pub may_test: bool,
    /// May this reader change lamps?
    pub may_keep: bool,
}

/// A test in a lamp's history.
#[derive(Debug, Clone)]
pub struct TestRow {
    /// The number of its entry.
    pub seq: i64,
    /// Its id, to take it back.
    pub id: String,
    /// When.
    pub at: Moment,
    /// What was found.
    pub found: String,
    /// How the lamp hung then, when the test is due again, and who made it.
    pub more: String,
    /// The entry that took it back.
    pub undone_by: Option<i64>,
}

/// One lamp and its tests.
#[derive(Debug, Clone, Template)]
#[template(path = "lamps/lamp.html")]
pub struct LampPage {
    /// The frame.
    pub shell: Shell,
    /// The lamp.
    pub lamp: LampShown,
    /// Whether it is used no more.
    pub is_retired: bool,
    /// Its tests, the latest written first.
    pub tests: Vec<TestRow>,
    /// Leads to those before: a query.
    pub older: Option<String>,
    /// May this reader record a test?
    pub may_test: bool,
    /// May this reader change the lamp?
    pub may_keep: bool,
    /// May this reader take a test back?
    pub may_take_back: bool,
}

/// A lamp as typed.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct LampForm {
    /// Idempotency key.
    pub key: String,
    /// Its name.
    pub name: String,
    /// `safelight` or `screen`.
    pub kind: String,
    /// Bulb and filter, or how bright it is.
    pub light: String,
    /// To the nearest paper.
    pub distance: String,
    /// The id of its space; empty for the room itself.
    pub space: String,
    /// Months until the next test.
    pub months: String,
}

/// A lamp to be added or changed: posts to `/lamps` or `/lamps/{id}/change`.
#[derive(Debug, Clone, Template)]
#[template(path = "lamps/change.html")]
pub struct LampFormPage {
    /// The frame.
    pub shell: Shell,
    /// Its id; nothing for a new one.
    pub id: Option<String>,
    /// What shines.
    pub kinds: Vec<Choice>,
    /// What it may hang in; empty where the room is one space.
    pub spaces: Vec<Choice>,
    /// The unit of a bare length.
    pub unit: &'static str,
    /// As typed.
    pub form: LampForm,
    /// What to mend.
    pub problems: Problems,
}

/// A test as typed.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct FogTestForm {
    /// Idempotency key.
    pub key: String,
    /// The paper's id.
    pub paper_class: String,
    /// The longest step without fog.
    pub clean: String,
    /// The shortest step with fog.
    pub fogged: String,
    /// `now` or `earlier`.
    pub when: String,
    /// The day, where it was earlier.
    pub day: String,
    /// The time, where it was earlier.
    pub time: String,
}

/// The form of a fog test: posts to `/lamps/{id}/test`.
#[derive(Debug, Clone, Template)]
#[template(path = "lamps/test.html")]
pub struct FogTestPage {
    /// The frame.
    pub shell: Shell,
    /// The lamp's id.
    pub id: String,
    /// The lamp's name.
    pub name: String,
    /// What it is and how it hangs, one line.
    pub about: String,
    /// The papers in use.
    pub classes: Vec<Choice>,
    /// The days that may be named, today first.
    pub days: Vec<Choice>,
    /// As typed.
    pub form: FogTestForm,
    /// What to mend.
    pub problems: Problems,
    /// May this reader change the lamp?
    pub may_keep: bool,
}
