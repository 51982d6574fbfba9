//! What the pages say of keeping, joining, moving up and discarding mixes.

use super::bench::span;
use super::problems::clash;
use crate::problem::Problem;
use crate::web::numbers::Numbers;

/// Kept in an open tray.
pub const OPEN: &str = "open to the air";

/// Kept in a covered tray.
pub const COVERED: &str = "under a cover";

/// Kept in a full bottle.
pub const FULL: &str = "a full bottle";

/// Kept in a bottle that is not full.
pub const PART: &str = "a part bottle with air above it";

/// How a mix stands in its tray or bottle; no depth in a bottle.
#[must_use]
pub fn stands(kept: &str, level: &str, holds: &str, depth: &str) -> String {
    match depth {
        "" => format!("{level} of {holds}, {kept}"),
        depth => format!("{level} of {holds}, {depth} deep, {kept}"),
    }
}

/// How long a mix lives as it is kept then, and until when; whether it is still
/// good stands before the end.
#[must_use]
pub fn lives(life_s: i64, ends: Option<&(bool, String)>) -> String {
    match ends {
        None => "Nobody knows how long it lives.".to_owned(),
        Some((true, ends)) => {
            format!(
                "A fresh one lives {} there: this one is good until {ends}.",
                span(life_s)
            )
        }
        Some((false, ends)) => {
            format!(
                "A fresh one lives {} there: this one is over since {ends}.",
                span(life_s)
            )
        }
    }
}

/// What the verdict is then, and why.
#[must_use]
pub fn then(verdict: &str, reason: &str) -> String {
    format!("Then {verdict}: {reason}")
}

/// A tray in its line.
#[must_use]
pub fn tray_of_line(tray: &str, line: &str) -> String {
    format!("{tray}, {line}")
}

/// What does not cover a print.
#[must_use]
pub fn too_shallow(least: &str) -> String {
    format!("That does not cover a print here: it takes {least}.")
}

/// What two mixes come to.
#[must_use]
pub fn sum(poured: &str, there: &str, level: &str, holds: &str) -> String {
    format!("{there} there and {poured} poured in make {level} of {holds}.")
}

/// So much of a mix.
#[must_use]
pub fn volume_of(volume: &str, title: &str) -> String {
    format!("{volume} of {title}")
}

/// A mix in its tray or bottle.
#[must_use]
pub fn mix_in(title: &str, vessel: &str) -> String {
    format!("{title} in {vessel}")
}

/// How often a pair of fixing baths moved up.
#[must_use]
pub fn shift_number(number: i32, allowed: i32) -> String {
    format!("This is move {number} of the {allowed} that this room allows a pair of baths.")
}

/// What stands in a container: how many mixes of a product, and what else was in them.
#[must_use]
pub fn part(product: Option<&str>, mixes: i64, contaminants: &[String]) -> String {
    let product = product.unwrap_or("liquid that nobody can name");
    let count = match mixes {
        1 => String::new(),
        count => format!(" ({count} mixes)"),
    };
    match contaminants {
        [] => format!("{product}{count}"),
        all => format!("{product}{count}, with {} in it", all.join(", ")),
    }
}

/// What no rule keeps out of a container.
pub const NO_RULE: &str = "No rule here keeps this bath out of it. Read its label and the safety \
    data sheets all the same.";

/// What a container holds, and what follows from it.
#[must_use]
pub fn holds(holds: &str, so: &str) -> String {
    format!("Holds {holds} {so}")
}

/// Offered beside the containers that the book knows.
pub const ANOTHER: &str = "Another container";

/// What a container nobody used yet must be.
pub const ANOTHER_HINT: &str = "An empty one, named and labelled; never a drink bottle.";

/// When something went into a container last.
#[must_use]
pub fn last_put(at: &str) -> String {
    format!("Last used {at}.")
}

/// Before a vessel is rinsed.
#[must_use]
pub fn rinse_question(vessel: &str) -> String {
    format!("Was {vessel} rinsed?")
}

/// What a rinse means.
pub const RINSE_CONSEQUENCE: &str = "It held a mix that household bleach came into. Rinse it with \
    plenty of running water, gloves and eye protection on, and put nothing but water into it. \
    Once this is recorded, a mix may go into it again.";

/// The button that records a rinse.
pub const RINSED: &str = "It is rinsed with water";

/// Why something may not be done, where a list says it rather than a form.
#[must_use]
pub fn why_not(problem: &Problem, numbers: Numbers) -> Option<String> {
    Some(match problem {
        Problem::MustNotMeet(found) => {
            format!("Never pour these together: {}", clash(*found))
        }
        Problem::NotInOneContainer(found) => format!("Keep these apart: {}", clash(*found)),
        Problem::UnknownGroups => {
            "Nobody recorded what one of the two is, and the unknown goes with nothing.".to_owned()
        }
        Problem::TrayFull => "Something stands in it.".to_owned(),
        Problem::OverTheRim { holds_ul } => {
            let room = numbers.litres(holds_ul.div_euclid(1_000) * 1_000);
            format!("There is room for {room} only.")
        }
        Problem::OtherStep => "Prints meet another bath in it.".to_owned(),
        _ => return None,
    })
}
