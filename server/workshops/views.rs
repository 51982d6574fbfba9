//! The pages of workshops.

use askama::Template;
use serde::Deserialize;

use crate::arrivals::views::OpenTray;
use crate::web::dates::Moment;
use crate::web::fields::{Choice, Problems};
use crate::web::shell::Shell;

/// A workshop in the list, and what its own page begins with.
#[derive(Debug, Clone)]
pub struct WorkshopShown {
    /// Its id, for links.
    pub id: String,
    /// What it is called.
    pub title: String,
    /// How it stands, in a word or two.
    pub word: &'static str,
    /// The day.
    pub day: String,
    /// From when to when.
    pub hours: String,
    /// Leader, most guests, where.
    pub about: String,
}

/// The workshops. Reached by `/workshops`.
#[derive(Debug, Clone, Template)]
#[template(path = "workshops/workshops.html")]
pub struct WorkshopsPage {
    /// The frame.
    pub shell: Shell,
    /// What is going on and what is to come, the next first.
    pub coming: Vec<WorkshopShown>,
    /// The rest, the latest first.
    pub past: Vec<WorkshopShown>,
    /// May this reader plan one?
    pub may_plan: bool,
}

/// A guest on the page of their workshop.
#[derive(Debug, Clone)]
pub struct GuestShown {
    /// Their id, for the form.
    pub id: String,
    /// The name, or that it was erased.
    pub name: String,
    /// Since when.
    pub since: Moment,
    /// Until when, and whether that is confirmed; nothing for who is there.
    pub until: Option<String>,
}

/// A note for a workshop.
#[derive(Debug, Clone)]
pub struct NoteForIt {
    /// The number of its entry.
    pub seq: i64,
    /// How much of what.
    pub said: String,
    /// When.
    pub at: Moment,
}

/// What a reader may do with a workshop as it stands.
#[derive(Debug, Clone, Copy, Default)]
pub struct MayDo {
    /// Change it, or call it off.
    pub plan: bool,
    /// Open it.
    pub open: bool,
    /// Sign guests in and out, and end it.
    pub lead: bool,
    /// Note sheets for it.
    pub note: bool,
    /// Lead it from now on.
    pub take_over: bool,
}

/// A workshop. Reached by `/workshops/{workshop}`.
#[derive(Debug, Clone, Template)]
#[template(path = "workshops/workshop.html")]
pub struct WorkshopPage {
    /// The frame.
    pub shell: Shell,
    /// The workshop.
    pub workshop: WorkshopShown,
    /// Why it was called off.
    pub called_off: Option<String>,
    /// The entry that says what was read to the group.
    pub opened_seq: Option<i64>,
    /// Who pays.
    pub paid_by: String,
    /// How many guests came, or are there; nothing before it was opened.
    pub count: Option<String>,
    /// The guests who are there, for whoever may read names.
    pub there: Vec<GuestShown>,
    /// Those who left.
    pub left: Vec<GuestShown>,
    /// May this reader read names?
    pub is_named: bool,
    /// For so many days names are kept.
    pub kept_days: i32,
    /// What was noted for it.
    pub notes: Vec<NoteForIt>,
    /// All of that.
    pub noted: String,
    /// What this reader may do.
    pub may: MayDo,
    /// Idempotency key of the forms to sign out.
    pub key: String,
}

/// A workshop as typed.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct PlanForm {
    /// Idempotency key.
    pub key: String,
    /// What it is called.
    pub title: String,
    /// Who leads it.
    pub leader: String,
    /// Where; empty for the room itself.
    pub space: String,
    /// The day, as `2026-11-26`.
    pub day: String,
    /// From when, as `14:00`.
    pub begins: String,
    /// Until when, as `17:00`.
    pub ends: String,
    /// The most guests at once.
    pub most: String,
    /// The lines it prints on.
    pub lines: Vec<String>,
    /// The member who pays; empty for the room.
    pub paid_by: String,
}

/// The form of a workshop. Posts to `/workshops` or `/workshops/{workshop}/change`.
#[derive(Debug, Clone, Template)]
#[template(path = "workshops/plan.html")]
pub struct PlanPage {
    /// The frame.
    pub shell: Shell,
    /// The one to change; nothing for a new one.
    pub id: Option<String>,
    /// Who may lead it.
    pub leaders: Vec<Choice>,
    /// Where it may be; empty where the room has no spaces.
    pub spaces: Vec<Choice>,
    /// The lines.
    pub lines: Vec<Choice>,
    /// Who may pay.
    pub payers: Vec<Choice>,
    /// As typed.
    pub form: PlanForm,
    /// What to mend.
    pub problems: Problems,
}

/// Why a workshop is called off, as typed.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct CallOffForm {
    /// Idempotency key.
    pub key: String,
    /// Why.
    pub reason: String,
}

/// Asks why a workshop is called off. Posts to `/workshops/{workshop}/call-off`.
#[derive(Debug, Clone, Template)]
#[template(path = "workshops/call_off.html")]
pub struct CallOffPage {
    /// The frame.
    pub shell: Shell,
    /// The workshop.
    pub workshop: WorkshopShown,
    /// As typed.
    pub form: CallOffForm,
    /// What to mend.
    pub problems: Problems,
}

/// A topic that is read to the group.
#[derive(Debug, Clone)]
pub struct TopicToRead {
    /// Its title.
    pub title: String,
    /// The paragraphs of its text.
    pub paragraphs: Vec<String>,
}

/// That the cautions were read, as sent.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct OpenForm {
    /// Idempotency key.
    pub key: String,
    /// Names what the page showed.
    pub read: String,
    /// Whether that was read out: `yes`.
    pub was_read: String,
}

/// What is read to the group before the workshop begins. Posts to
/// `/workshops/{workshop}/open`.
#[derive(Debug, Clone, Template)]
#[template(path = "workshops/open.html")]
pub struct OpenPage {
    /// The frame.
    pub shell: Shell,
    /// The workshop.
    pub workshop: WorkshopShown,
    /// Of what stands in the trays.
    pub in_trays: Vec<String>,
    /// Of the concentrates in no tray.
    pub concentrates: Vec<String>,
    /// The topics.
    pub topics: Vec<TopicToRead>,
    /// Idempotency key.
    pub key: String,
    /// Names what is shown.
    pub read: String,
    /// What to mend.
    pub problems: Problems,
}

/// Guests who come in, as typed.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct GuestsForm {
    /// Idempotency key.
    pub key: String,
    /// One name a line.
    pub names: String,
}

/// Asks who comes in. Posts to `/workshops/{workshop}/guests`.
#[derive(Debug, Clone, Template)]
#[template(path = "workshops/guests.html")]
pub struct GuestsPage {
    /// The frame.
    pub shell: Shell,
    /// The workshop.
    pub workshop: WorkshopShown,
    /// For so many days names are kept.
    pub kept_days: i32,
    /// As typed.
    pub form: GuestsForm,
    /// What to mend.
    pub problems: Problems,
}

/// Who leaves, as sent.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct SignOutForm {
    /// Idempotency key.
    pub key: String,
    /// The guest's id; empty for all who are there.
    pub guest: String,
}

/// What to do before a workshop ends, and that it has. Posts to
/// `/workshops/{workshop}/end`.
#[derive(Debug, Clone, Template)]
#[template(path = "workshops/end.html")]
pub struct EndPage {
    /// The frame.
    pub shell: Shell,
    /// The workshop.
    pub workshop: WorkshopShown,
    /// How many guests are there still.
    pub there: String,
    /// What was noted for it.
    pub noted: Option<String>,
    /// Trays that stand open.
    pub open: Vec<OpenTray>,
    /// Does the reader lead it, who may note for it?
    pub may_note: bool,
    /// Idempotency key.
    pub key: String,
    /// What to mend.
    pub problems: Problems,
}
