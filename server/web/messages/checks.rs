//! What is said of room checks.

use super::entries::{Sentence, Telling, say, set};
use crate::checks::{CheckResult, DueWhen, Measure, RoomCheckSet, RoomCheckTakenBack, RoomChecked};
use crate::logbook::Entry;
use crate::web::days;
use crate::web::desk::Question;
use crate::web::numbers::Numbers;
use crate::web::views::TakeBackWords;

/// The large word of a check that nobody may rely on.
#[must_use]
pub const fn loud(has_failed: bool, due: DueWhen) -> Option<&'static str> {
    match (has_failed, due) {
        (true, _) => Some("Failed"),
        (false, DueWhen::Overdue) => Some("Overdue"),
        (false, DueWhen::Today | DueWhen::Later) => None,
    }
}

/// How often a check is done.
#[must_use]
pub fn every(days: i32) -> String {
    match days {
        1 => "Every day".to_owned(),
        7 => "Every week".to_owned(),
        days => format!("Every {days} days"),
    }
}

/// When a check is due.
#[must_use]
pub fn due(due: DueWhen, due_on: &str) -> String {
    let day = days::words(due_on).replace(' ', "\u{a0}");
    match due {
        DueWhen::Overdue => format!("Overdue since {day}."),
        DueWhen::Today => "Due today.".to_owned(),
        DueWhen::Later => format!("Due by {day}."),
    }
}

/// What passes, where something is measured.
#[must_use]
pub fn limit(measure: &Measure, numbers: Numbers) -> String {
    let figure = |thousandths| figure(thousandths, &measure.unit, numbers);
    match (measure.least_thousandths, measure.most_thousandths) {
        (Some(least), Some(most)) => format!("From {} to {} passes.", figure(least), figure(most)),
        (Some(least), None) => format!("{} or more passes.", figure(least)),
        (None, Some(most)) => format!("Up to {} passes.", figure(most)),
        (None, None) => format!("Measured in {}; no limit is set.", measure.unit),
    }
}

fn figure(thousandths: i64, unit: &str, numbers: Numbers) -> String {
    format!("{}\u{a0}{unit}", numbers.decimal(thousandths, 3))
}

/// What a result says.
#[must_use]
pub fn found(result: &CheckResult, numbers: Numbers) -> String {
    let measured = result.measured_thousandths.zip(result.unit.as_deref());
    said(result.has_passed, measured, &result.remark, numbers)
}

fn said(has_passed: bool, measured: Option<(i64, &str)>, remark: &str, numbers: Numbers) -> String {
    let word = if has_passed { "Passed" } else { "Failed" };
    let measured = measured.map_or_else(String::new, |(thousandths, unit)| {
        format!(", {}", figure(thousandths, unit, numbers))
    });
    match remark.trim_end_matches('.') {
        "" => format!("{word}{measured}."),
        remark => format!("{word}{measured}: {remark}."),
    }
}

/// Who found it, and when it was due again.
#[must_use]
pub fn by(person: Option<&str>, due_on: &str) -> String {
    let due = days::words(due_on);
    match person {
        Some(person) => format!("By {person}; due again by {due}."),
        None => format!("Due again by {due}."),
    }
}

/// Of a check that nobody has done yet.
pub const NEVER: &str = "Never done here.";

/// What was found the last time.
#[must_use]
pub fn last(day: &str, found: &str) -> String {
    format!("Last on {day}. {found}")
}

/// What everyone should know of a check that failed; `overdue` since that day too.
#[must_use]
pub fn failed(check: &str, failed_on: &str, on_failure: &str, overdue: Option<&str>) -> String {
    let overdue = overdue.map_or_else(String::new, |since| {
        format!(" The next check is overdue since {}.", days::words(since))
    });
    format!(
        "{check}: its check of {failed_on} failed. {}.{overdue}",
        on_failure.trim_end_matches('.')
    )
}

/// What everyone should know of a check that is overdue.
#[must_use]
pub fn overdue(check: &str, since: &str) -> String {
    format!(
        "{check}: its check is overdue since {}. Do it before you rely on it.",
        days::words(since)
    )
}

/// Of a check about which nothing is to be done yet.
#[must_use]
pub fn due_by(check: &str, due_on: &str) -> String {
    format!("{check}: due by {}.", days::words(due_on))
}

/// What stewards are told once a check is overdue.
#[must_use]
pub fn told_overdue(check: &str, due_on: &str) -> String {
    format!(
        "The room check {check} is overdue since {}.",
        days::words(due_on)
    )
}

/// What stewards are told of a check that failed.
#[must_use]
pub fn told_failed(check: &str, remark: &str) -> String {
    format!(
        "The room check {check} failed: {}.",
        remark.trim_end_matches('.')
    )
}

/// The answers of the form of a result.
pub const PASSED: (&str, &str) = ("All is well", "Everything is as it says above");
/// The other one.
pub const FAILED: (&str, &str) = ("It failed", "Anything is not; say what below");

/// Before a result is taken back.
pub const TAKE_BACK: TakeBackWords = TakeBackWords {
    title: "Take a check back",
    question: "Take this check back?",
    consequence: "What the check before it said then holds again, and so does its day.",
};

/// Before a check is retired.
#[must_use]
pub fn retire(name: &str) -> Question {
    Question {
        question: format!("Retire {name}?"),
        consequence: "Nobody can record this check any more, it is never due, and the board says \
            nothing of it. Its results stay in the book, and it can be brought back on the page of \
            room checks."
            .to_owned(),
        verb: "Retire it".to_owned(),
    }
}

/// The sentences of these entries, by kind.
pub const SENTENCES: &[(&str, Sentence)] = &[
    (RoomCheckSet::KIND, |text, telling| {
        say(text, telling, check_set)
    }),
    (RoomChecked::KIND, |text, telling| {
        say(text, telling, checked)
    }),
    (RoomCheckTakenBack::KIND, |text, telling| {
        say(text, telling, taken_back)
    }),
];

fn check_set(entry: &RoomCheckSet, _: Telling<'_>) -> String {
    if entry.is_retired {
        return set("Room check", &entry.name, true);
    }
    let every = every(entry.every_days).to_lowercase();
    format!("Room check {} was set: {every}.", entry.name)
}

fn checked(entry: &RoomChecked, telling: Telling<'_>) -> String {
    let check = telling.name(entry.room_check_id);
    let unit = entry.measure.as_ref().map(|measure| measure.unit.as_str());
    let measured = entry.measured_thousandths.zip(unit);
    let said = said(entry.has_passed, measured, &entry.remark, telling.numbers);
    format!("Room check {check}. {said}")
}

fn taken_back(entry: &RoomCheckTakenBack, telling: Telling<'_>) -> String {
    format!(
        "The room check of entry {}, {}, was taken back: {}.",
        entry.result_seq,
        telling.name(entry.room_check_id),
        entry.reason.trim_end_matches('.')
    )
}
