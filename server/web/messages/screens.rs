//! Words of screens, and of what people do at a door.

use crate::web::desk::Question;

/// What was done at a door, by the name its address has for it.
#[must_use]
pub fn done(what: &str) -> &'static str {
    match what {
        "arrived" => "You are here.",
        "left" => "You have left.",
        "noted" => "Your sheets are noted.",
        "flagged" => "The tray is flagged.",
        "reported" => "It is reported.",
        _ => "Done.",
    }
}

/// What to mind after flagging: the mix, or liquid that nobody can name.
pub const LEAVE_IT: &str = "Nobody prints through it now. Leave it where it is; a steward takes it \
    from here.";

/// What is flagged where a known mix stands.
pub const CAME_INTO_IT: &str = "Something came into it";
/// What is reported where nothing is recorded.
pub const NOT_RECORDED: &str = "Nothing is recorded here: liquid nobody can name";

/// When a screen was paired, and by whom.
#[must_use]
pub fn paired(at: &str, by: Option<&str>) -> String {
    match by {
        Some(by) => format!("Paired {at} by {by}"),
        None => format!("Paired {at}"),
    }
}

/// When a screen was last seen.
#[must_use]
pub fn last_seen(at: Option<&str>) -> String {
    at.map_or_else(
        || "Its pairing has ended".to_owned(),
        |at| format!("Last seen {at}"),
    )
}

/// What is asked before a pairing is ended.
#[must_use]
pub fn end_question(name: &str) -> Question {
    Question {
        question: format!("End the pairing of “{name}”?"),
        consequence:
            "It shows a new code within seconds and nothing of this room any more. It can \
            be paired again at any time."
                .to_owned(),
        verb: "End the pairing".to_owned(),
    }
}
