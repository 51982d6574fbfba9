//! What notes, their corrections and sheets kept on paper say.

use crate::problem::Problem;

/// What is wrong with a note; nothing where it is no such problem.
#[must_use]
pub fn about_sheets(problem: &Problem) -> Option<String> {
    let sentence = match problem {
        Problem::NoTonerStood => {
            "No toner stood in this line then. Take the mark off, or choose another line or time."
        }
        Problem::NothingInTray => {
            "Nothing recorded stood in this tray then. Look at the tray and the time again."
        }
        Problem::GoneSince => {
            "What stood in this tray then is gone since, so nothing can be recorded of it any \
             more. Empty this row to enter the others."
        }
        Problem::CountedOrNot => "Give a count, or say that nobody counted: one of the two.",
        Problem::NothingEntered => {
            "Nothing is filled in. Copy one row of the paper sheet at least."
        }
        _ => return None,
    };
    Some(sentence.to_owned())
}

/// A bath in its tray: `Developer: Neutral paper developer`.
#[must_use]
pub fn bath(product: Option<&str>, tray: &str) -> String {
    let product = product.unwrap_or("liquid nobody can name");
    format!("{tray}: {product}")
}

/// What a note did to a bath.
#[must_use]
pub fn effect(bath: &str, spent: &str, used: &str) -> String {
    format!("{bath}, {spent} used up; now {used} of its capacity is used.")
}

/// A bath whose product has no figure of capacity.
#[must_use]
pub fn no_capacity(bath: &str) -> String {
    format!("{bath}, without a figure for its capacity, so nothing was used up.")
}

/// What the second of two fixing baths counts.
#[must_use]
pub fn second_of_two(share: &str) -> String {
    format!("As the second of two fixing baths it counts {share} of them.")
}

/// What prints brought in from the bath before.
#[must_use]
pub fn received(volume: &str) -> String {
    format!("By estimate {volume} of the bath before came in with the prints.")
}

/// What prints took along.
#[must_use]
pub fn carried_out(volume: &str) -> String {
    format!("By estimate {volume} of it went along with the prints.")
}

/// What silver a fixer gained, where no range is known.
#[must_use]
pub fn silver(usual: &str, now: &str) -> String {
    format!("By estimate it gained {usual} of silver; now about {now}.")
}

/// What silver a fixer gained: least, usual, most.
#[must_use]
pub fn silver_between((least, usual, most): (&str, &str, &str), now: &str) -> String {
    format!("By estimate it gained {usual} of silver, between {least} and {most}; now about {now}.")
}

/// What alkali prints carried into a stop bath.
#[must_use]
pub fn alkali(milli_equivalents: &str) -> String {
    format!("By estimate the prints carried in {milli_equivalents} of alkali.")
}

/// What bromide developing set free.
#[must_use]
pub fn bromide(milligrams: &str) -> String {
    format!("By estimate developing set {milligrams} of bromide free.")
}

/// What a note of a time at which nothing recorded stood there did.
pub const UNKNOWN_TRAY: &str = "Nothing recorded stood in this line then, so no bath was counted \
    as used. A steward finds out what these prints went through.";

/// What is taken where nobody counted.
#[must_use]
pub fn nobody_counted(count: &str) -> String {
    format!(
        "Nobody counted: {count} are taken, the usual number. Every bath they went through asks \
         for a test first, until somebody tests it."
    )
}

/// `6 sheets`, `1 sheet`.
#[must_use]
pub fn sheets(count: i64) -> String {
    match count {
        1 => "1 sheet".to_owned(),
        count => format!("{count} sheets"),
    }
}

/// `sheets` or `sheet`, `rolls` or `roll`: what stands behind a large number.
#[must_use]
pub const fn noun(count: i64, is_film: bool) -> &'static str {
    match (is_film, count) {
        (true, 1) => "roll",
        (true, _) => "rolls",
        (false, 1) => "sheet",
        (false, _) => "sheets",
    }
}

/// How a note was taken back.
#[must_use]
pub fn taken_back(by: &str, reason: &str) -> String {
    told(&format!("Taken back by {by}"), reason)
}

/// What a note stands in place of.
#[must_use]
pub fn set_right(by: &str, old: i64, reason: &str) -> String {
    told(&format!("{by} set the note of entry {old} right"), reason)
}

/// A notice of what a steward did to somebody's note.
#[must_use]
pub fn told(what: &str, reason: &str) -> String {
    match reason.trim() {
        "" => format!("{what}."),
        reason => format!("{what}: {}.", reason.trim_end_matches('.')),
    }
}

/// Beside the tick for toned prints, where only some lines have a toner.
#[must_use]
pub fn toned_on(lines: &[String]) -> String {
    let lines = lines.join(", ");
    format!("Only prints that went through the toner, on {lines}.")
}

/// Beside the same tick, where the line has a toner.
pub const TONED_HERE: &str = "Only prints that went through the toner of this line.";

/// Which fixer takes film, and how much.
#[must_use]
pub fn takes_film(fixers: &[(String, String)]) -> String {
    let mut each: Vec<String> = fixers
        .iter()
        .map(|(product, rolls)| format!("{product} takes {rolls} rolls a litre"))
        .collect();
    each.dedup();
    each.join("; ")
}

/// Why no film is noted on a line.
#[must_use]
pub fn takes_paper_only(line: &str, fixers: &[String]) -> String {
    match fixers.is_empty() {
        true => format!("{line}: no fixer stands there now."),
        false => format!(
            "{line}: {} takes paper only, for it has no figure for film.",
            fixers.join(", ")
        ),
    }
}

/// Stands in a list of a row where nothing is chosen.
pub const NOT_CHOSEN: &str = "–";

/// Good or not, by eye: value and label.
pub const OUTCOMES: &[(&str, &str)] = &[("good", "Good"), ("bad", "Not good")];

/// A tray, where several lines have trays.
#[must_use]
pub fn tray_of(tray: &str, line: &str) -> String {
    format!("{tray}, {line}")
}

/// The rows of old beside new.
pub mod compared {
    /// How many.
    pub const COUNT: &str = "Sheets";
    /// What class.
    pub const PAPER: &str = "Paper";
    /// What size.
    pub const SIZE: &str = "Size";

    /// What was used up of a bath.
    #[must_use]
    pub fn used_up(bath: &str) -> String {
        format!("Used up of {bath}")
    }

    /// A bath that one of the two did not wear.
    pub const NOTHING: &str = "nothing";

    /// A count that nobody made.
    #[must_use]
    pub fn not_counted(count: &str) -> String {
        format!("{count}, not counted")
    }
}
