//! A line's page, and its finishing times set up by a steward.

use askama::Template;
use serde::Deserialize;

use crate::web::dates::Moment;
use crate::web::fields::Problems;
use crate::web::shell::Shell;

/// A tray of the line, in the order prints travel.
#[derive(Debug, Clone)]
pub struct StepRow {
    /// Its id, for `/trays/{id}`.
    pub id: String,
    /// Its name.
    pub name: String,
    /// What prints do in it; empty where nobody said.
    pub step: String,
}

/// The times of one paper class, or that there are none.
#[derive(Debug, Clone)]
pub struct TimesRow {
    /// The class, for `/lines/{line}/finishing/{class}`.
    pub class_id: String,
    /// The class's name.
    pub class: String,
    /// Its times, once entered.
    pub times: Option<Times>,
}

/// Times in words.
#[derive(Debug, Clone)]
pub struct Times {
    /// In each fixing bath.
    pub fix: String,
    /// The longest in all of them.
    pub longest_fix: String,
    /// The rinse after them.
    pub rinse: String,
    /// In the wash aid.
    pub wash_aid: String,
    /// The wash after it.
    pub wash_with_aid: String,
    /// The wash without it.
    pub wash_without_aid: String,
    /// Where they come from.
    pub basis: String,
}

/// How a wash stands.
#[derive(Debug, Clone)]
pub enum WashShown {
    /// Nothing was noted in it.
    Empty,
    /// It goes on.
    Until {
        /// When it ends.
        ends: Moment,
        /// How it came to that.
        why: String,
    },
    /// Its time is over and nobody noted that the prints are out.
    OverSince(Moment),
}

impl WashShown {
    /// Is there nothing to take out?
    #[must_use]
    pub fn is_empty(&self) -> bool {
        matches!(self, Self::Empty)
    }
}

/// A way a print may join the wash: one press.
#[derive(Debug, Clone)]
pub struct JoinButton {
    /// Idempotency key of its form.
    pub key: String,
    /// The class.
    pub class_id: String,
    /// `yes` after the wash aid, or empty.
    pub had_wash_aid: &'static str,
    /// What stands on it, after the words of all.
    pub label: String,
    /// How long such a print washes.
    pub time: String,
}

/// A line: its steps, its times and its wash. Joining posts to `/lines/{id}/wash`
/// with `key`, `paper_class` and `had_wash_aid`; `/lines/{id}/wash/empty` takes `key`.
#[derive(Debug, Clone, Template)]
#[template(path = "bench/line_page.html")]
pub struct LineShownPage {
    /// The frame.
    pub shell: Shell,
    /// Its id.
    pub id: String,
    /// Its name.
    pub name: String,
    /// The space it stands in, where the room has several.
    pub space: Option<String>,
    /// Whether it is used no more.
    pub is_retired: bool,
    /// Its trays.
    pub steps: Vec<StepRow>,
    /// Its times, a row for each class in use.
    pub times: Vec<TimesRow>,
    /// Its wash.
    pub wash: WashShown,
    /// The ways to join it, for those who may.
    pub joins: Vec<JoinButton>,
    /// Idempotency key of the form that empties it.
    pub key: String,
    /// What to mend.
    pub problems: Problems,
    /// May this reader note prints?
    pub may_note: bool,
    /// May this reader change times?
    pub may_change: bool,
}

impl LineShownPage {
    /// Is there a class in use without times?
    #[must_use]
    pub fn lacks_times(&self) -> bool {
        self.times.iter().any(|row| row.times.is_none())
    }
}

/// Times as typed: minutes or the unit behind the number.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct FinishingForm {
    /// Idempotency key.
    pub key: String,
    /// In each fixing bath.
    pub fix: String,
    /// The longest in all of them.
    pub longest_fix: String,
    /// The rinse after them.
    pub rinse: String,
    /// In the wash aid, or empty.
    pub wash_aid: String,
    /// The wash after it, or empty.
    pub wash_with_aid: String,
    /// The wash without it.
    pub wash_without_aid: String,
    /// Where they come from.
    pub basis: String,
}

/// The times of a class in a line: posts to `/lines/{line}/finishing/{class}`.
#[derive(Debug, Clone, Template)]
#[template(path = "bench/finishing.html")]
pub struct FinishingPage {
    /// The frame.
    pub shell: Shell,
    /// The line's id.
    pub line_id: String,
    /// The line's name.
    pub line: String,
    /// The class's id.
    pub class_id: String,
    /// The class's name.
    pub class: String,
    /// As typed.
    pub form: FinishingForm,
    /// What to mend.
    pub problems: Problems,
}
