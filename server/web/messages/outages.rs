//! What pages say while power or fan is off.

use crate::outages::What;

/// What is off, in the middle of a sentence.
#[must_use]
pub const fn name(what: What) -> &'static str {
    match what {
        What::Power => "power",
        What::Fan => "fan",
    }
}

/// The choice of what is off.
#[must_use]
pub const fn choice(what: What) -> &'static str {
    match what {
        What::Power => "The power",
        What::Fan => "The fan",
    }
}

/// What the choice means.
#[must_use]
pub const fn choice_hint(what: What) -> &'static str {
    match what {
        What::Power => "Lamps, pumps and whatever moves the air",
        What::Fan => "What moves the air of this room",
    }
}

/// What is off, and since when.
#[must_use]
pub fn off_since(what: What, since: &str) -> String {
    format!("The {} has been off since {since}.", name(what))
}

/// What everyone does while it is off.
pub const ADVICE: &str = "Leave the room, let air in, and come back when it is over. What stands in \
    the trays ages on meanwhile.";

/// What was off, and until when.
#[must_use]
pub fn off_until(what: What, from: &str, until: &str) -> String {
    format!("The {} was off from {from} until {until}.", name(what))
}

/// Who said so, where that is told.
#[must_use]
pub fn said_by(began: Option<&str>, ended: Option<&str>) -> String {
    match (began, ended) {
        (Some(began), Some(ended)) if began == ended => format!("Said by {began}."),
        (Some(began), Some(ended)) => format!("Said by {began}, its end by {ended}."),
        (Some(one), None) | (None, Some(one)) => format!("Said by {one}."),
        (None, None) => String::new(),
    }
}
