//! The pages of room air.

use askama::Template;
use serde::Deserialize;

use crate::trays::views::Step;
use crate::web::fields::{Choice, Problems};
use crate::web::shell::Shell;

/// A place as a page shows it.
#[derive(Debug, Clone)]
pub struct AirShown {
    /// Its id, for `/air/{id}`.
    pub id: String,
    /// Its name.
    pub name: String,
    /// What is known of its exhaust, in large words.
    pub word: &'static str,
    /// The same in small ones.
    pub said: String,
    /// Volume, air changes, what is wanted and what is missing, each with its
    /// arithmetic.
    pub steps: Vec<Step>,
    /// How long until so much has gone; empty where nothing can be said.
    pub clearing: Vec<Step>,
    /// What those hold for, or why there are none.
    pub clearing_said: String,
    /// What may start here.
    pub starts: String,
    /// How it is aired.
    pub airing: AiringShown,
}

/// How a place is aired.
#[derive(Debug, Clone)]
pub struct AiringShown {
    /// What everyone does without a fan; nothing where there is one.
    pub reminder: Option<&'static str>,
    /// The airing that is not over: its id, and since when.
    pub now: Option<(String, String)>,
    /// When it was last aired.
    pub last: String,
    /// What it came to within the hour; nothing where it was not aired.
    pub average: Option<String>,
}

/// The places of the room.
#[derive(Debug, Clone, Template)]
#[template(path = "air/air.html")]
pub struct AirPage {
    /// The frame.
    pub shell: Shell,
    /// The room itself first.
    pub places: Vec<AirShown>,
    /// Idempotency key of the buttons.
    pub key: String,
    /// May this reader say that a place is aired?
    pub may_air: bool,
}

/// Something in the history of a place.
#[derive(Debug, Clone)]
pub struct PastRow {
    /// The number of its entry.
    pub seq: i64,
    /// The day it was measured, or when it began.
    pub at: String,
    /// What was found, or what was done.
    pub said: String,
    /// How, by whom; may be empty.
    pub more: String,
    /// Its id, to take it back; nothing for what is not taken back.
    pub id: Option<String>,
    /// The entry that took it back.
    pub undone_by: Option<i64>,
}

/// One place: what is known, what was measured, how it was aired.
#[derive(Debug, Clone, Template)]
#[template(path = "air/place.html")]
pub struct PlacePage {
    /// The frame.
    pub shell: Shell,
    /// The place.
    pub place: AirShown,
    /// Its measurements, the latest written first.
    pub measured: Vec<PastRow>,
    /// Its airings, the latest written first.
    pub aired: Vec<PastRow>,
    /// Leads to the entries before: a query.
    pub older: Option<String>,
    /// Idempotency key of the buttons.
    pub key: String,
    /// May this reader say that a place is aired?
    pub may_air: bool,
    /// May this reader keep the record?
    pub may_keep: bool,
    /// May this reader take a measurement back?
    pub may_take_back: bool,
}

/// What is known of a place, as typed.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct AirForm {
    /// Idempotency key.
    pub key: String,
    /// Its floor.
    pub floor: String,
    /// From floor to ceiling.
    pub height: String,
    /// The mixing factor.
    pub mixing: String,
    /// `yes` or `no`.
    pub fan: String,
    /// The rule by which exhaust is wanted.
    pub rule: String,
    /// A figure of one's own.
    pub own: String,
    /// Where that comes from.
    pub basis: String,
}

/// What is known of a place, to be set: posts to `/air/{id}/change`.
#[derive(Debug, Clone, Template)]
#[template(path = "air/change.html")]
pub struct AirFormPage {
    /// The frame.
    pub shell: Shell,
    /// The place.
    pub id: String,
    /// Its name.
    pub name: String,
    /// The rules.
    pub rules: Vec<Choice>,
    /// What a bare area is.
    pub area_unit: &'static str,
    /// What a bare height is.
    pub height_unit: &'static str,
    /// What a bare flow is.
    pub flow_unit: &'static str,
    /// As typed.
    pub form: AirForm,
    /// What to mend.
    pub problems: Problems,
}

/// A measurement as typed.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct MeasureForm {
    /// Idempotency key.
    pub key: String,
    /// `exhaust` or `airing`.
    pub of: String,
    /// How much.
    pub flow: String,
    /// On which day.
    pub measured_on: String,
    /// Who measured.
    pub measured_by: String,
    /// With what, and where.
    pub how: String,
}

/// A measurement to be recorded: posts to `/air/{id}/measure`.
#[derive(Debug, Clone, Template)]
#[template(path = "air/measure.html")]
pub struct MeasurePage {
    /// The frame.
    pub shell: Shell,
    /// The place.
    pub id: String,
    /// Its name.
    pub name: String,
    /// Which flows can be measured.
    pub flows: Vec<Choice>,
    /// What a bare flow is.
    pub flow_unit: &'static str,
    /// As typed.
    pub form: MeasureForm,
    /// What to mend.
    pub problems: Problems,
}

/// Who agreed, or why something is taken back, as typed.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct WordsForm {
    /// Idempotency key.
    pub key: String,
    /// The words.
    pub words: String,
}

/// Whether baths start without measured exhaust: posts to `/air/{id}/waiver`; without
/// words, exhaust is needed again.
#[derive(Debug, Clone, Template)]
#[template(path = "air/waiver.html")]
pub struct WaiverPage {
    /// The frame.
    pub shell: Shell,
    /// The place.
    pub id: String,
    /// Its name.
    pub name: String,
    /// What may start here now.
    pub starts: String,
    /// Whether somebody agreed already.
    pub is_given: bool,
    /// As typed.
    pub form: WordsForm,
    /// What to mend.
    pub problems: Problems,
}

/// Asks why a measurement is taken back: posts to `/air-measurements/{id}/take-back`.
#[derive(Debug, Clone, Template)]
#[template(path = "air/take_back.html")]
pub struct TakeBackPage {
    /// The frame.
    pub shell: Shell,
    /// Its id.
    pub id: String,
    /// The page of its place, below the room.
    pub back: String,
    /// The place's name.
    pub name: String,
    /// What was found, and when.
    pub found: String,
    /// Whether it was taken back before.
    pub is_undone: bool,
    /// As typed.
    pub form: WordsForm,
    /// What to mend.
    pub problems: Problems,
}

/// An airing as typed.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct AiringForm {
    /// Idempotency key.
    pub key: String,
    /// For how long; nothing where it only begins or ends.
    pub minutes: String,
    /// `now` or `earlier`.
    pub when: String,
    /// The day, where it was earlier.
    pub day: String,
    /// The time, where it was earlier.
    pub time: String,
}

/// An airing that is over, to be noted: posts to `/air/{id}/aired`.
#[derive(Debug, Clone, Template)]
#[template(path = "air/aired.html")]
pub struct AiredPage {
    /// The frame.
    pub shell: Shell,
    /// The place.
    pub id: String,
    /// Its name.
    pub name: String,
    /// The days that may be named, today first.
    pub days: Vec<Choice>,
    /// As typed.
    pub form: AiringForm,
    /// What to mend.
    pub problems: Problems,
}

/// Asks when an airing was over: posts to `/airings/{id}/end`.
#[derive(Debug, Clone, Template)]
#[template(path = "air/end.html")]
pub struct AiringEndPage {
    /// The frame.
    pub shell: Shell,
    /// Its id.
    pub id: String,
    /// The page of its place, below the room.
    pub back: String,
    /// The place's name.
    pub name: String,
    /// From when until when.
    pub sentence: String,
    /// Is it over already?
    pub is_over: bool,
    /// The days that may be named, today first.
    pub days: Vec<Choice>,
    /// As typed.
    pub form: AiringForm,
    /// What to mend.
    pub problems: Problems,
}
