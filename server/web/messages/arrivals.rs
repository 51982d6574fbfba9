//! Words for who is in the room.

use super::entries::{Sentence, Telling, say};
use crate::arrivals::{Arrived, Expected, LeavingExpected, Left, NotConfirmedLeft};
use crate::logbook::Entry;
use crate::web::desk::Question;

/// A tray, where the line is not told otherwise.
#[must_use]
pub fn tray(line: &str, tray: &str) -> String {
    format!("{line}, {tray}")
}

/// What is asked before a presence is ended for somebody.
#[must_use]
pub fn close_question(name: &str) -> Question {
    Question {
        question: format!("Has {name} left?"),
        consequence: format!(
            "The room then counts {name} no more, and the roll reads “not confirmed left”. Look \
             first: in an emergency people are searched for by this list. {name} can say again at \
             any time that they are here."
        ),
        verb: "End the presence".to_owned(),
    }
}

/// A time to leave that is offered: in so many hours, or when the presence is over.
#[must_use]
pub fn offered(hours: i64, clock: &str) -> String {
    match hours {
        0 => clock.to_owned(),
        hours => format!("{clock}, in {hours}\u{a0}h"),
    }
}

/// The choice beside those offered.
pub const ANOTHER_TIME: &str = "Another time";

/// What is known of when somebody leaves; nothing where nobody asks.
#[must_use]
pub fn stays(expected: Option<&str>, is_overdue: bool, is_alone: bool) -> Option<String> {
    match (expected, is_overdue, is_alone) {
        (Some(clock), true, _) => Some(format!("expected to have left at {clock}, not confirmed")),
        (Some(clock), false, true) => Some(format!("alone, expected until {clock}")),
        (Some(clock), false, false) => Some(format!("expected until {clock}")),
        (None, _, true) => Some("alone, gave no time to leave".to_owned()),
        (None, _, false) => None,
    }
}

/// Asks somebody whether they are still there.
#[must_use]
pub fn still_there(expected: &str) -> String {
    format!(
        "You said that you would leave at {expected}. Are you still there? Say until when, or \
         that you have left."
    )
}

/// Tells a contact of somebody who was alone.
#[must_use]
pub fn nothing_heard_of(name: &str, expected: &str) -> String {
    format!(
        "{name} was alone in the room, said that they would leave at {expected}, and has not said \
         since that they have left or are still there. Call them, or have somebody look."
    )
}

/// The sentences of these entries, by kind.
pub const SENTENCES: &[(&str, Sentence)] = &[
    (Arrived::KIND, |text, telling| say(text, telling, arrived)),
    (LeavingExpected::KIND, |text, telling| {
        say(text, telling, leaving_expected)
    }),
    (Left::KIND, |text, telling| say(text, telling, left)),
    (NotConfirmedLeft::KIND, |text, telling| {
        say(text, telling, not_confirmed_left)
    }),
];

fn arrived(entry: &Arrived, telling: Telling<'_>) -> String {
    let name = telling.name(entry.person_id);
    let by = entry.supervisor_id.map_or_else(String::new, |by| {
        format!(", supervised by {}", telling.name(by))
    });
    let until = entry.expected.as_ref().map_or_else(String::new, until);
    format!("{name} arrived{by}{until}.")
}

fn until(expected: &Expected) -> String {
    format!(", expected until {}", expected.clock)
}

fn leaving_expected(entry: &LeavingExpected, telling: Telling<'_>) -> String {
    let name = telling.name(entry.person_id);
    format!("{name} is here still{}.", until(&entry.expected))
}

fn left(entry: &Left, telling: Telling<'_>) -> String {
    format!("{} left.", telling.name(entry.person_id))
}

fn not_confirmed_left(entry: &NotConfirmedLeft, telling: Telling<'_>) -> String {
    format!(
        "{}: not confirmed left, {}.",
        telling.name(entry.person_id),
        entry.local_date
    )
}
