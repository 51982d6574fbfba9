//! The pages of handing over.

use askama::Template;
use serde::Deserialize;

use super::Part;
use crate::web::dates::Moment;
use crate::web::fields::{Choice, Problems};
use crate::web::shell::Shell;

/// A handover as typed.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct HandoverForm {
    /// Idempotency key.
    pub key: String,
    /// The id of who takes over.
    pub successor: String,
}

/// One handover of the list.
#[derive(Debug, Clone)]
pub struct HandoverRow {
    /// Its id, for links.
    pub id: String,
    /// When it was opened.
    pub at: Moment,
    /// Between whom, and how it stands.
    pub sentence: String,
}

/// What is open in the room now, and the form to hand it over. Posts to `/handover`.
#[derive(Debug, Clone, Template)]
#[template(path = "handover/sheet.html")]
pub struct SheetPage {
    /// The frame.
    pub shell: Shell,
    /// When the list was so.
    pub as_of: Moment,
    /// The list.
    pub parts: Vec<Part>,
    /// Who may take over.
    pub successors: Vec<Choice>,
    /// Handovers so far, the latest first.
    pub handovers: Vec<HandoverRow>,
    /// Leads to earlier ones: a query.
    pub older: Option<String>,
    /// As typed.
    pub form: HandoverForm,
    /// What to mend.
    pub problems: Problems,
}

/// How a handover stands, for one who looks at it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Stands {
    /// It waits for this reader to confirm it.
    ForYou,
    /// It waits for somebody else.
    ForAnother,
    /// It was confirmed, and this reader handed over.
    YouHandedOver,
    /// It has ended.
    Ended,
}

/// One handover. Posts, each with `key`: `/handovers/{id}/confirm`,
/// `/handovers/{id}/withdraw`.
#[derive(Debug, Clone, Template)]
#[template(path = "handover/handover.html")]
pub struct HandoverPage {
    /// The frame.
    pub shell: Shell,
    /// Its id.
    pub id: String,
    /// Between whom, and how it stands.
    pub sentence: String,
    /// How it stands for this reader.
    pub stands: Stands,
    /// When it was opened.
    pub opened: Moment,
    /// The number of the entry that opened it.
    pub opened_seq: i64,
    /// The number of the entry that confirmed it.
    pub confirmed_seq: Option<i64>,
    /// The list as it was opened with.
    pub parts: Vec<Part>,
    /// What is open now and does not stand in the list; only while it waits.
    pub come: Vec<Part>,
    /// What stands in the list and is not open any more; only while it waits.
    pub gone: Vec<Part>,
    /// This reader's own page as a member: a whole link.
    pub own_page: String,
    /// Idempotency key of the buttons.
    pub key: String,
    /// What is in the way.
    pub problems: Problems,
}
