//! The pages of power and fan.

use askama::Template;
use serde::Deserialize;

use crate::web::dates::Moment;
use crate::web::fields::{Choice, Problems};
use crate::web::shell::Shell;

/// Something that is off now.
#[derive(Debug, Clone)]
pub struct OffRow {
    /// Its id, for links.
    pub id: String,
    /// What, and since when.
    pub sentence: String,
    /// What it is called, for the buttons: `fan`.
    pub name: &'static str,
    /// Who said so.
    pub said_by: String,
}

/// Something that was off.
#[derive(Debug, Clone)]
pub struct PastRow {
    /// The number of the entry that began it.
    pub seq: i64,
    /// When it began.
    pub at: Moment,
    /// What, from when until when.
    pub sentence: String,
    /// Who said so.
    pub said_by: String,
}

/// What is off, or over, as typed.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct OutageForm {
    /// Idempotency key.
    pub key: String,
    /// `power` or `fan`; nothing where its end is said.
    pub what: String,
    /// `now` or `earlier`.
    pub when: String,
    /// The day, where it was earlier.
    pub day: String,
    /// The time, where it was earlier.
    pub time: String,
}

/// What is off, what was, and the form to say so. Posts to `/outages`, and the end
/// of one to `/outages/{id}/end`.
#[derive(Debug, Clone, Template)]
#[template(path = "outages/outages.html")]
pub struct OutagesPage {
    /// The frame.
    pub shell: Shell,
    /// What is off now.
    pub off: Vec<OffRow>,
    /// What everyone does meanwhile.
    pub advice: &'static str,
    /// What was off, the latest first.
    pub past: Vec<PastRow>,
    /// Leads to what was off before: a query.
    pub older: Option<String>,
    /// What can be off.
    pub whats: Vec<Choice>,
    /// The days that may be named, today first.
    pub days: Vec<Choice>,
    /// As typed.
    pub form: OutageForm,
    /// What to mend.
    pub problems: Problems,
    /// May this reader say so?
    pub may_note: bool,
}

/// Asks when it was on again.
#[derive(Debug, Clone, Template)]
#[template(path = "outages/end.html")]
pub struct EndPage {
    /// The frame.
    pub shell: Shell,
    /// Its id.
    pub id: String,
    /// What it is called: `fan`.
    pub name: &'static str,
    /// What, and since when.
    pub sentence: String,
    /// Is it over already?
    pub is_over: bool,
    /// The days that may be named, today first.
    pub days: Vec<Choice>,
    /// As typed.
    pub form: OutageForm,
    /// What to mend.
    pub problems: Problems,
}
