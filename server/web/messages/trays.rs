//! What the page of a tray says beside its verdict.

use super::readings;
use crate::mixes::{ReadingKind, Storage};

/// Next to a tray that is ready.
pub const READY: &str = "Print. Note your sheets when you have a dry hand.";
/// Next to a retired tray.
pub const RETIRED: &str = "This tray is not used any more.";
/// Next to a tray that held household bleach.
pub const RINSE_FIRST: &str = "This tray held household bleach. Rinse it well with water and record that before anything \
     goes into it.";

/// Notes sheets.
pub const NOTE: &str = "Note sheets";
/// Discards the mix.
pub const DISCARD: &str = "Discard";
/// Mixes into the tray.
pub const MIX: &str = "Mix into this tray";
/// Records a check.
pub const CHECK: &str = "Record a check";
/// Flags it.
pub const FLAG: &str = "Something came into it";
/// Covers its tray.
pub const COVER: &str = "Cover it";
/// Takes the cover off.
pub const UNCOVER: &str = "Take the cover off";
/// Pours it into a bottle.
pub const BOTTLE: &str = "Pour it into a bottle";
/// Pours together.
pub const POUR: &str = "Pour it into another";
/// Moves the second bath up.
pub const SHIFT: &str = "Move the second bath up";
/// Fresh solution is added.
pub const TOP_UP: &str = "Top it up";
/// Liquid stands in the tray, and nobody knows what it is.
pub const UNKNOWN: &str = "Liquid stands here, and nobody knows what it is";
/// A known mix stood there before the book began.
pub const OPEN: &str = "A known mix stood here already";
/// Prints a label for it.
pub const LABEL: &str = "Label";
/// Extends it.
pub const EXTEND: &str = "Let it be used a little longer";
/// Rinses the tray.
pub const RINSED: &str = "It was rinsed";
/// Takes a discard back.
pub const UNDO_DISCARD: &str = "The last discard was a mistake";

/// The group of looking.
pub const LOOK: &str = "Look at it";
/// The group of caring.
pub const CARE: &str = "Look after it";
/// The group of ending.
pub const END: &str = "Its end";
/// The group of an empty tray.
pub const STANDS_HERE: &str = "If it is otherwise";

/// Next to a tray to be replaced.
#[must_use]
pub const fn replace(may_discard: bool) -> &'static str {
    match may_discard {
        true => "Do not print through it. Discard it, then mix a fresh one.",
        false => {
            "Do not print through it. A trained member or a steward discards it and mixes a \
             fresh one."
        }
    }
}

/// Next to liquid that nobody can name.
#[must_use]
pub const fn unknown(is_steward: bool) -> &'static str {
    match is_steward {
        true => {
            "Nobody may use it. Find out what it is before anything is poured; if nobody can, \
             it goes into a container of its own."
        }
        false => "Do not use it and do not pour it away: call a steward.",
    }
}

/// Next to a tray in which nothing is recorded.
#[must_use]
pub const fn empty(may_mix: bool) -> &'static str {
    match may_mix {
        true => "Look before you pour. If the tray is empty, mix into it.",
        false => {
            "Look before you use it. If the tray is empty, a trained member or a steward mixes \
             into it."
        }
    }
}

/// Makes a test.
#[must_use]
pub fn make(kind: ReadingKind) -> String {
    match kind {
        ReadingKind::Temperature => "Take the temperature".to_owned(),
        other => format!("Make the test: {}", lower(readings::kind(other))),
    }
}

/// Which tests answer the doubts, and who may make them.
#[must_use]
pub fn tests(kinds: &[ReadingKind]) -> String {
    let names: Vec<String> = kinds
        .iter()
        .map(|kind| lower(readings::kind(*kind)))
        .collect();
    match names.as_slice() {
        [] => "No test tells how good this bath still is. Use it with care while it reads so, or \
               have a trained member or a steward mix a fresh one."
            .to_owned(),
        names => format!(
            "Before anybody prints: {}. Every member, trained member and steward may test and \
             record it.",
            names.join(" and ")
        ),
    }
}

/// A name in the middle of a sentence; abbreviations stay as they are.
fn lower(name: &str) -> String {
    let mut letters = name.chars();
    let (first, second) = (letters.next(), letters.next());
    match (first, second) {
        (Some(first), Some(second)) if second.is_lowercase() && first.is_uppercase() => {
            let rest: String = name.chars().skip(1).collect();
            format!("{}{rest}", first.to_lowercase())
        }
        _ => name.to_owned(),
    }
}

/// What somebody said came into it, and what that can do.
#[must_use]
pub fn alarm(clash: &str) -> String {
    format!("Stop and look: {clash} If it fumes or smells sharp, leave, let air in, and go out.")
}

/// How a mix is kept.
pub const KEPT: &str = "Kept";
/// What stands in it by reckoning.
pub const LEVEL: &str = "Level";
/// What prints brought in.
pub const RECEIVED: &str = "Carried in";
/// Its silver.
pub const SILVER: &str = "Silver, by estimate";
/// When the oldest part was mixed.
pub const OLDEST: &str = "Oldest part mixed";
/// How often it moved up.
pub const SHIFTS: &str = "Moved up";

/// How a mix is kept.
#[must_use]
pub const fn storage(storage: Storage) -> &'static str {
    match storage {
        Storage::OpenTray => "in the open tray",
        Storage::CoveredTray => "in the tray, covered",
        Storage::FullBottle => "in a full bottle",
        Storage::PartBottle => "in a bottle with air above it",
    }
}

/// What is left in the tray.
#[must_use]
pub fn carried_out(level: &str, carried: &str) -> String {
    format!("{level} by reckoning: prints carried {carried} out")
}

/// What the trays before brought.
#[must_use]
pub fn received(received: &str) -> String {
    format!("{received} with prints from the tray before")
}

/// How often something happened.
#[must_use]
pub fn times(count: i32) -> String {
    match count {
        1 => "once".to_owned(),
        count => format!("{count} times"),
    }
}

/// Silver with its range and its limit.
#[must_use]
pub fn silver([least, usual, most]: [u32; 3], limit: Option<i64>) -> String {
    let limit = match limit {
        Some(limit) => format!("; the limit is {limit}\u{a0}mg/L"),
        None => "; no limit is set here".to_owned(),
    };
    format!("{usual}\u{a0}mg/L, somewhere from {least} to {most}{limit}")
}

/// An extension, who gave it, and why.
#[must_use]
pub fn extended(until: &str, by: Option<&str>, reason: &str) -> String {
    let by = by.map_or_else(String::new, |by| format!(" by {by}"));
    format!(
        "Extended{by} until {until}: {}.",
        reason.trim_end_matches('.')
    )
}

/// Where the product's sheet has no two points.
pub const NO_POINTS: &str = "Two development times at two temperatures are not on file for it, \
    so no time is reckoned: develop as its data sheet says.";

/// Where nobody took the temperature.
pub const NO_TEMPERATURE: &str = "Nobody took its temperature yet. Record it, or type one here.";

/// A time in minutes and seconds.
#[must_use]
pub fn time(seconds: i64) -> String {
    match (seconds / 60, seconds % 60) {
        (0, seconds) => format!("{seconds}\u{a0}s"),
        (minutes, 0) => format!("{minutes}\u{a0}min"),
        (minutes, seconds) => format!("{minutes}\u{a0}min {seconds}\u{a0}s"),
    }
}

/// A development time at a temperature.
#[must_use]
pub fn time_at(time: &str, at: &str) -> String {
    format!("{time} at {at}")
}

/// Where a time comes from.
#[must_use]
pub fn from_points([one, other]: &[String; 2]) -> String {
    format!("Reckoned from its data sheet: {one} and {other}. The sheet itself always wins.")
}

/// Outside the working range.
#[must_use]
pub fn outside(at: &str, lowest: &str, highest: &str) -> String {
    format!(
        "{at} is outside its range of {lowest} to {highest}, so there is no time: bring the bath \
         into the range first, with the tray in warm or cool water."
    )
}

/// Development by the factor.
#[must_use]
pub fn by_factor(times: &str, shown: &str, factor: &str, time: &str) -> String {
    format!(
        "The image takes {times} times as long to show as when fresh. Develop by the factor: \
         {shown} until it showed × {factor} = {time}."
    )
}

/// The same without a development time on file.
#[must_use]
pub fn by_factor_without_time(times: &str) -> String {
    format!(
        "The image takes {times} times as long to show as when fresh. Develop that many times \
         as long as you did in the fresh bath."
    )
}

/// In a tray where prints wash.
pub const WASH: &str = "Prints wash here, so no mix stands in it and it has no verdict. How long \
    they wash is on the page of the line.";
