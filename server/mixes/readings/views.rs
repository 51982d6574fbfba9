//! Checks, reports of contamination, extensions and what takes them back.

use askama::Template;
use serde::Deserialize;

use crate::web::dates::Moment;
use crate::web::fields::{Choice, Problems};
use crate::web::shell::Shell;

/// Which mix a page is about.
#[derive(Debug, Clone)]
pub struct OfMix {
    /// Its id.
    pub id: String,
    /// `Plain print developer 1+9`.
    pub title: String,
    /// The tray or bottle it stands in.
    pub vessel: String,
    /// That one's page, below the room.
    pub path: String,
}

/// A check as it was typed.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct CheckForm {
    /// Idempotency key.
    pub key: String,
    /// What was looked at.
    pub kind: String,
    /// `good` or `bad`, where it is judged by eye.
    pub outcome: String,
    /// A temperature, in degrees Celsius.
    pub temperature: String,
    /// Seconds until it showed or cleared.
    pub seconds: String,
    /// How warm the bath was then.
    pub bath_temperature: String,
    /// The paper or film.
    pub sample: String,
    /// `yes` where the mix was fresh.
    pub fresh: String,
    /// pH.
    pub ph: String,
    /// Silver, in milligrams a litre.
    pub silver: String,
    /// In the finder's words.
    pub remark: String,
    /// `now` or `earlier`.
    pub when: String,
    /// The day of an earlier check.
    pub day: String,
    /// Its time.
    pub time: String,
}

/// One check that fits the bath.
#[derive(Debug, Clone)]
pub struct KindLink {
    /// What the address says.
    pub value: String,
    /// What people read.
    pub label: String,
    /// Is it the one on the page?
    pub is_chosen: bool,
}

/// A figure that a check asks for.
#[derive(Debug, Clone)]
pub struct Figure {
    /// The input's name.
    pub name: &'static str,
    /// Its label.
    pub label: &'static str,
    /// Its unit.
    pub unit: &'static str,
    /// As typed.
    pub value: String,
}

/// The form of one check, with the others of that bath a link away.
#[derive(Debug, Clone, Template)]
#[template(path = "mixes/check.html")]
pub struct CheckPage {
    /// The frame.
    pub shell: Shell,
    /// The mix.
    pub of: OfMix,
    /// Every check that fits it.
    pub kinds: Vec<KindLink>,
    /// The check's name.
    pub name: String,
    /// How it is made.
    pub how: String,
    /// Good and not good, where it is judged by eye; else nothing.
    pub outcomes: Vec<Choice>,
    /// The figure, where there is one.
    pub figure: Option<Figure>,
    /// The label of paper or film, where a time is taken with it.
    pub sample_label: Option<&'static str>,
    /// With what fresh times were taken.
    pub sample_hint: String,
    /// As typed.
    pub form: CheckForm,
    /// What to mend.
    pub problems: Problems,
    /// The days an earlier check may name, today first.
    pub days: Vec<Choice>,
}

/// A report of contamination as it was typed.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct FlagForm {
    /// Idempotency key.
    pub key: String,
    /// What came into it.
    pub groups: Vec<String>,
    /// `yes` where nobody can say.
    pub unknown: String,
    /// In the finder's words.
    pub remark: String,
}

/// The form to flag a mix as contaminated.
#[derive(Debug, Clone, Template)]
#[template(path = "mixes/flag.html")]
pub struct FlagPage {
    /// The frame.
    pub shell: Shell,
    /// The mix.
    pub of: OfMix,
    /// What may have come into it.
    pub groups: Vec<Choice>,
    /// As typed.
    pub form: FlagForm,
    /// What to mend.
    pub problems: Problems,
}

/// An extension as it was typed.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct ExtendForm {
    /// Idempotency key.
    pub key: String,
    /// How long.
    pub hours: String,
    /// Why.
    pub reason: String,
}

/// The form to let a mix be used a little longer.
#[derive(Debug, Clone, Template)]
#[template(path = "mixes/extend.html")]
pub struct ExtendPage {
    /// The frame.
    pub shell: Shell,
    /// The mix.
    pub of: OfMix,
    /// As typed.
    pub form: ExtendForm,
    /// What to mend.
    pub problems: Problems,
}

/// Why a reading is taken back.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct TakeBackForm {
    /// Idempotency key.
    pub key: String,
    /// Why.
    pub reason: String,
}

/// Asks before a reading is taken back.
#[derive(Debug, Clone, Template)]
#[template(path = "mixes/take_back.html")]
pub struct TakeBackPage {
    /// The frame.
    pub shell: Shell,
    /// The reading's id.
    pub id: String,
    /// What was found.
    pub found: String,
    /// When.
    pub at: Moment,
    /// Its entry, or the page of what it was about, below the room.
    pub path: String,
    /// As typed.
    pub form: TakeBackForm,
    /// What to mend.
    pub problems: Problems,
}
