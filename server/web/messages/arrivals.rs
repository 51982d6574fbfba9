//! Words for who is in the room.

use super::entries::{Sentence, Telling, say};
use crate::arrivals::{Arrived, Left, NotConfirmedLeft};
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

/// The sentences of these entries, by kind.
pub const SENTENCES: &[(&str, Sentence)] = &[
    (Arrived::KIND, |text, telling| say(text, telling, arrived)),
    (Left::KIND, |text, telling| say(text, telling, left)),
    (NotConfirmedLeft::KIND, |text, telling| {
        say(text, telling, not_confirmed_left)
    }),
];

fn arrived(entry: &Arrived, telling: Telling<'_>) -> String {
    let name = telling.name(entry.person_id);
    match entry.supervisor_id {
        None => format!("{name} arrived."),
        Some(by) => format!("{name} arrived, supervised by {}.", telling.name(by)),
    }
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
