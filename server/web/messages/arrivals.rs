//! Words for who is in the room.

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
