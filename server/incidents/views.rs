//! The pages of incidents.

use askama::Template;
use serde::Deserialize;

use crate::emergency::views::RoomHelp;
use crate::web::fields::{Choice, Problems};
use crate::web::shell::Shell;

/// An incident in a list: its number and its state.
#[derive(Debug, Clone)]
pub struct IncidentRow {
    /// Its id, for `/incidents/{id}`.
    pub id: String,
    /// Its number.
    pub number: i64,
    /// To whom it happened, by name.
    pub person: String,
    /// When it was reported, and whether it is dealt with or erased.
    pub said: String,
}

/// A note of what to avoid.
#[derive(Debug, Clone)]
pub struct AvoidRow {
    /// Its id, to take it away.
    pub id: String,
    /// What it is.
    pub words: String,
}

/// One's own incidents and notes; a steward's list of the others'.
#[derive(Debug, Clone, Template)]
#[template(path = "incidents/incidents.html")]
pub struct IncidentsPage {
    /// The frame.
    pub shell: Shell,
    /// Those of the reader.
    pub own: Vec<IncidentRow>,
    /// Those of others; empty for everyone but stewards.
    pub others: Vec<IncidentRow>,
    /// Does the reader keep the room?
    pub is_steward: bool,
    /// How many a period had, for stewards.
    pub counted: Option<String>,
    /// That period.
    pub period: PeriodForm,
    /// What the reader wants to avoid.
    pub avoids: Vec<AvoidRow>,
    /// The products, to choose from.
    pub products: Vec<Choice>,
    /// A new note, as typed.
    pub form: AvoidForm,
    /// What to mend.
    pub problems: Problems,
}

/// Days from which and until which incidents are counted, as typed.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct PeriodForm {
    /// The first, as `2026-01-01`.
    pub from: String,
    /// The last.
    pub until: String,
}

/// A note of what to avoid, as typed.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct AvoidForm {
    /// The product's id; empty for none.
    pub product: String,
    /// In words.
    pub words: String,
}

/// An incident as typed.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct IncidentForm {
    /// Idempotency key.
    pub key: String,
    /// To whom; empty for oneself.
    pub person: String,
    /// What sort.
    pub what: String,
    /// The line's id; empty for elsewhere.
    pub line: String,
    /// The product's id; empty for none.
    pub product: String,
    /// Which part of the body.
    pub part: String,
    /// What was done first.
    pub first: Vec<String>,
    /// What happened.
    pub words: String,
    /// `now` or `earlier`.
    pub when: String,
    /// The day, where it was earlier.
    pub day: String,
    /// The time, where it was earlier.
    pub time: String,
}

/// The form to report one: posts to `/incidents`.
#[derive(Debug, Clone, Template)]
#[template(path = "incidents/new.html")]
pub struct ReportPage {
    /// The frame.
    pub shell: Shell,
    /// The people, for a steward; empty for everyone else.
    pub people: Vec<Choice>,
    /// What sorts there are.
    pub whats: Vec<Choice>,
    /// The lines.
    pub lines: Vec<Choice>,
    /// The products.
    pub products: Vec<Choice>,
    /// Parts of the body.
    pub parts: Vec<Choice>,
    /// What can have been done first.
    pub deeds: Vec<Choice>,
    /// As typed.
    pub form: IncidentForm,
    /// What to mend.
    pub problems: Problems,
}

/// What is known of an incident, a line each: what it is called, and what it says.
pub type Fact = (&'static str, String);

/// An incident, for the person and for a steward who opened it.
#[derive(Debug, Clone, Template)]
#[template(path = "incidents/incident.html")]
pub struct IncidentPage {
    /// The frame.
    pub shell: Shell,
    /// Its id.
    pub id: String,
    /// Its number.
    pub number: i64,
    /// What comes before everything else; nothing where no water is wanted.
    pub room: Option<RoomHelp>,
    /// Does the page begin with what to do first?
    pub leads_with_help: bool,
    /// What is known; empty where it was erased.
    pub facts: Vec<Fact>,
    /// What happened, in words; may be empty.
    pub words: String,
    /// Who looked at it, and when.
    pub looks: Vec<String>,
    /// Is it dealt with?
    pub is_finished: bool,
    /// Was it erased?
    pub is_erased: bool,
    /// May the reader say that it is dealt with?
    pub may_finish: bool,
    /// Idempotency key of the buttons.
    pub key: String,
}

/// What a steward sees of somebody's incident before opening it: posts to
/// `/incidents/{id}/open`.
#[derive(Debug, Clone, Template)]
#[template(path = "incidents/closed.html")]
pub struct ClosedPage {
    /// The frame.
    pub shell: Shell,
    /// Which, whose, and how it stands.
    pub row: IncidentRow,
    /// Idempotency key of the button.
    pub key: String,
}
