//! The pages of inductions.

use askama::Template;
use serde::Deserialize;

use super::scans::views::ScanShown;
use crate::web::dates::Moment;
use crate::web::fields::{Choice, Problems};
use crate::web::shell::Shell;

/// Somebody in the overview.
#[derive(Debug, Clone)]
pub struct PersonRow {
    /// The person's id, for links.
    pub id: String,
    /// Their number in the room.
    pub number: i32,
    /// Their name.
    pub name: String,
    /// How much of what is asked for now is in force.
    pub in_force: String,
    /// What of that is missing, by title.
    pub missing: Vec<String>,
    /// What ends within thirty days, each in words.
    pub ends: Vec<String>,
    /// How many records wait for their confirmation.
    pub waiting: usize,
}

/// What to tell before a product is opened.
#[derive(Debug, Clone)]
pub struct SupplementRow {
    /// The product's id.
    pub id: String,
    /// Its name.
    pub product: String,
    /// What to tell, and whom, one sentence a topic.
    pub sentences: Vec<String>,
}

/// A number and a PIN as typed.
#[derive(Clone, Default, Deserialize)]
#[serde(default)]
pub struct BesideForm {
    /// Idempotency key.
    pub key: String,
    /// The member number.
    pub number: String,
    /// The PIN.
    pub pin: String,
}

impl std::fmt::Debug for BesideForm {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str("BesideForm")
    }
}

/// Everybody and what they know; number and PIN are sent to `/inductions/confirm`.
#[derive(Debug, Clone, Template)]
#[template(path = "inductions/inductions.html")]
pub struct InductionsPage {
    /// The frame.
    pub shell: Shell,
    /// Everybody who may enter, by number.
    pub people: Vec<PersonRow>,
    /// The titles of what is asked for now.
    pub required: Vec<String>,
    /// What to tell before a product is opened.
    pub supplements: Vec<SupplementRow>,
    /// As typed.
    pub form: BesideForm,
    /// What to mend.
    pub problems: Problems,
}

/// A topic and what somebody's records say of it.
#[derive(Debug, Clone)]
pub struct StandingRow {
    /// The topic's id.
    pub topic: String,
    /// Its title.
    pub title: String,
    /// Is it asked for now?
    pub is_required: bool,
    /// What the records say.
    pub standing: String,
    /// Is it in force?
    pub holds: bool,
    /// Does it end within thirty days?
    pub ends_soon: bool,
}

/// A topic as a record covers it.
#[derive(Debug, Clone)]
pub struct CoveredRow {
    /// The topic's id.
    pub topic: String,
    /// The version of its text.
    pub version: i32,
    /// Title, version and how long, in words.
    pub words: String,
}

/// A record as a page shows it.
#[derive(Debug, Clone)]
pub struct RecordShown {
    /// Its id.
    pub id: String,
    /// The number of its entry.
    pub seq: i64,
    /// Whose it is.
    pub person_id: String,
    /// By name.
    pub person: String,
    /// When, by whom, and what it stands on.
    pub basis: String,
    /// How it was confirmed, or that it waits.
    pub confirmed: String,
    /// That it was withdrawn, and why.
    pub withdrawn: Option<String>,
    /// What was told.
    pub topics: Vec<CoveredRow>,
    /// Anything else; may be empty.
    pub remark: String,
    /// The record it renews.
    pub renews: Option<String>,
}

/// One person: what is in force and every record. One's own at `/inductions/own`, where
/// all that waits is confirmed by `POST /inductions/own`.
#[derive(Debug, Clone, Template)]
#[template(path = "inductions/person.html")]
pub struct PersonPage {
    /// The frame.
    pub shell: Shell,
    /// The person's id.
    pub id: String,
    /// Their name.
    pub name: String,
    /// Is it the reader's own page?
    pub is_own: bool,
    /// Every topic in use.
    pub standings: Vec<StandingRow>,
    /// Every record, the latest first.
    pub records: Vec<RecordShown>,
    /// How many wait for confirmation.
    pub waiting: usize,
    /// As typed: its key serves one's own confirmation too.
    pub form: BesideForm,
    /// What to mend.
    pub problems: Problems,
}

/// One record, to read or to print.
#[derive(Debug, Clone, Template)]
#[template(path = "inductions/record.html")]
pub struct RecordPage {
    /// The frame.
    pub shell: Shell,
    /// The record.
    pub record: RecordShown,
    /// When it was read.
    pub as_of: Moment,
    /// Scans of its paper, in the order they were added.
    pub scans: Vec<ScanShown>,
    /// May this reader withdraw and renew it?
    pub may_keep: bool,
}

/// What is in force of one person.
#[derive(Debug, Clone)]
pub struct InForceRow {
    /// Their number in the room.
    pub number: i32,
    /// Their name.
    pub name: String,
    /// Topics with how long, each in words.
    pub topics: Vec<String>,
}

/// All that is in force, to print.
#[derive(Debug, Clone, Template)]
#[template(path = "inductions/in_force.html")]
pub struct InForcePage {
    /// The frame.
    pub shell: Shell,
    /// When it was read.
    pub as_of: Moment,
    /// Everybody of whom something is in force.
    pub people: Vec<InForceRow>,
}

/// An induction as typed.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct InductionForm {
    /// Idempotency key.
    pub key: String,
    /// The ids of everybody who was told.
    pub people: Vec<String>,
    /// The ids of what was told.
    pub topics: Vec<String>,
    /// The day.
    pub on: String,
    /// `given` or `on_paper`.
    pub basis: String,
    /// Anything else.
    pub remark: String,
    /// The id of the record it renews; may be empty.
    pub renews: String,
}

/// Records an induction: posts to `/inductions`.
#[derive(Debug, Clone, Template)]
#[template(path = "inductions/new.html")]
pub struct InductionFormPage {
    /// The frame.
    pub shell: Shell,
    /// Everybody who may be chosen.
    pub people: Vec<Choice>,
    /// Every topic in use.
    pub topics: Vec<Choice>,
    /// What a record may stand on.
    pub bases: Vec<Choice>,
    /// As typed.
    pub form: InductionForm,
    /// What to mend.
    pub problems: Problems,
}

/// Why a record is withdrawn, as typed.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct WithdrawForm {
    /// Idempotency key.
    pub key: String,
    /// Why.
    pub reason: String,
}

/// Asks why a record is withdrawn: posts to `/inductions/records/{id}/withdraw`.
#[derive(Debug, Clone, Template)]
#[template(path = "inductions/withdraw.html")]
pub struct WithdrawPage {
    /// The frame.
    pub shell: Shell,
    /// The record.
    pub record: RecordShown,
    /// As typed.
    pub form: WithdrawForm,
    /// What to mend.
    pub problems: Problems,
}
