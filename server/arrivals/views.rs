//! The pages of who is in the room.

use askama::Template;
use serde::Deserialize;

use crate::web::dates::Moment;
use crate::web::fields::{Choice, Problems};
use crate::web::shell::Shell;

/// Who is there, and how many more may come: a part of the board.
#[derive(Debug, Clone, Default)]
pub struct WhoIsHere {
    /// The people, the longest first.
    pub people: Vec<PersonHere>,
    /// Guests, workshop by workshop.
    pub guests: Vec<GuestsHere>,
    /// The room's places.
    pub places: usize,
}

impl WhoIsHere {
    /// How many places are taken.
    #[must_use]
    pub fn taken(&self) -> usize {
        let guests: usize = self.guests.iter().map(|group| group.count).sum();
        self.people.len() + guests
    }

    /// Are all places taken?
    #[must_use]
    pub fn is_full(&self) -> bool {
        self.taken() >= self.places
    }
}

/// Guests of a workshop who are there.
#[derive(Debug, Clone)]
pub struct GuestsHere {
    /// How many.
    pub count: usize,
    /// How many, and whose.
    pub said: String,
}

/// A guest on the roll.
#[derive(Debug, Clone)]
pub struct GuestOnRoll {
    /// The name.
    pub name: String,
    /// Since when.
    pub since: Moment,
}

/// Guests of a workshop on the roll.
#[derive(Debug, Clone)]
pub struct GroupOnRoll {
    /// The workshop's id, for its page.
    pub workshop: String,
    /// How many, and whose.
    pub said: String,
    /// Each of them, for whoever may read the names.
    pub guests: Vec<GuestOnRoll>,
}

/// Somebody who is there.
#[derive(Debug, Clone)]
pub struct PersonHere {
    /// This presence, for links.
    pub id: String,
    /// The name.
    pub name: String,
    /// Since when.
    pub since: Moment,
    /// The steward who answers for them, where they are not inducted.
    pub supervised_by: Option<String>,
    /// Until when they are expected to stay, where that is known or they are alone.
    pub stays: Option<String>,
}

/// Until when somebody stays, as typed.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct UntilForm {
    /// One of the times offered, in microseconds since 1970, or `typed`.
    pub until: String,
    /// Another time of the room's day, as `21:30`.
    pub time: String,
}

/// Asks until when somebody stays.
#[derive(Debug, Clone)]
pub struct AsksUntil {
    /// The times offered, and another one.
    pub choices: Vec<Choice>,
    /// The one chosen.
    pub until: String,
    /// The other one, as typed.
    pub time: String,
}

/// What the reader is asked while they are alone, or once they have said until when they
/// stay.
#[derive(Debug, Clone)]
pub struct StayShown {
    /// Is no other member there?
    pub is_alone: bool,
    /// Are guests there? They are no company.
    pub has_guests: bool,
    /// Until when they stay.
    pub expected: Option<Moment>,
    /// Has that passed?
    pub is_overdue: bool,
    /// Asks for it, or for a later time.
    pub asks: AsksUntil,
}

/// Somebody comes in, as typed.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct ArriveForm {
    /// Idempotency key.
    pub key: String,
    /// Until when, where nobody else is there.
    #[serde(flatten)]
    pub stay: UntilForm,
}

/// Something that the reader must know to come in, and was not told.
#[derive(Debug, Clone)]
pub struct LackShown {
    /// The topic's id, for its text.
    pub topic: String,
    /// Its title.
    pub title: String,
    /// What their records say of it.
    pub why: String,
}

/// What keeps the reader out, and who can help.
#[derive(Debug, Clone)]
pub struct NotYet {
    /// What they lack, by title.
    pub lacks: Vec<LackShown>,
    /// Who can induct, by name.
    pub stewards: Vec<String>,
    /// Does a record wait for the reader's own confirmation?
    pub waits: bool,
    /// The reader's id, where they are the room's only steward.
    pub alone: Option<String>,
}

/// A tray that stands open and could stand covered.
#[derive(Debug, Clone)]
pub struct OpenTray {
    /// The line and the tray.
    pub name: String,
    /// What stands in it.
    pub mix: String,
    /// The mix's id, for the page to keep it.
    pub mix_id: String,
}

/// Asks whether one is there, or says that one is. Posts to `/arrive` and `/present/until`.
#[derive(Debug, Clone, Template)]
#[template(path = "arrivals/arrive.html")]
pub struct ArrivePage {
    /// The frame.
    pub shell: Shell,
    /// Idempotency key.
    pub key: String,
    /// What to mend.
    pub problems: Problems,
    /// Who is there.
    pub here: WhoIsHere,
    /// Since when the reader is there, if they are, and until when that holds.
    pub since: Option<(Moment, Moment)>,
    /// What keeps the reader out, where something does.
    pub not_yet: Option<NotYet>,
    /// What stands in the trays that the reader wants to avoid; nobody else is told.
    pub avoid: Vec<String>,
    /// Asks until when the reader stays, where nobody else is there.
    pub asks: Option<AsksUntil>,
    /// What a reader who is there is asked.
    pub stay: Option<StayShown>,
    /// Who is told when nothing is heard of the reader, by name and in turn.
    pub told: Vec<String>,
    /// What stands in the trays asks for, one sentence a product.
    pub cautions: Vec<String>,
    /// May this reader note sheets?
    pub may_note: bool,
}

/// What to do before one leaves, and that one has. Posts to `/leave`.
#[derive(Debug, Clone, Template)]
#[template(path = "arrivals/leave.html")]
pub struct LeavePage {
    /// The frame.
    pub shell: Shell,
    /// Idempotency key.
    pub key: String,
    /// What to mend.
    pub problems: Problems,
    /// Is the reader there?
    pub is_here: bool,
    /// Are others there?
    pub are_others: bool,
    /// For whom the reader answers, by name.
    pub answers_for: Vec<String>,
    /// The workshop that the reader leads and whose guests are there, and how many.
    pub leads: Option<(String, String)>,
    /// Trays that stand open.
    pub open: Vec<OpenTray>,
    /// May this reader note sheets, and cover trays?
    pub may_note: bool,
}

/// Somebody who did not say that they left.
#[derive(Debug, Clone)]
pub struct NotConfirmed {
    /// The name.
    pub name: String,
    /// From when.
    pub from: Moment,
    /// When they were taken for gone.
    pub until: Moment,
}

/// The roll: who is there, to be called or printed.
#[derive(Debug, Clone, Template)]
#[template(path = "arrivals/roll.html")]
pub struct RollPage {
    /// The frame.
    pub shell: Shell,
    /// When it was read.
    pub as_of: Moment,
    /// Who is there.
    pub here: WhoIsHere,
    /// Guests who are there.
    pub groups: Vec<GroupOnRoll>,
    /// Who was there in the last day and did not say that they left.
    pub not_confirmed: Vec<NotConfirmed>,
    /// May this reader say that they are there?
    pub may_arrive: bool,
    /// May this reader end a presence for somebody?
    pub may_close: bool,
    /// May this reader let somebody in, supervised?
    pub may_supervise: bool,
}

/// Whom to let in, as chosen.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct SupervisedForm {
    /// Idempotency key.
    pub key: String,
    /// The person's id.
    pub person: String,
    /// Until when, where nobody else is there.
    #[serde(flatten)]
    pub stay: UntilForm,
}

/// Asks whom to let in, supervised by the reader. Posts to `/present/supervised`.
#[derive(Debug, Clone, Template)]
#[template(path = "arrivals/supervised.html")]
pub struct SupervisedPage {
    /// The frame.
    pub shell: Shell,
    /// Who may be let in: members who are not there, with what they lack.
    pub people: Vec<Choice>,
    /// Asks until when they stay, where nobody else is there.
    pub asks: Option<AsksUntil>,
    /// As chosen.
    pub form: SupervisedForm,
    /// What to mend.
    pub problems: Problems,
}
