//! What the board says of a tray, and why.

use crate::clock::moment;
use crate::darkroom::state::CheckKind;
use crate::darkroom::verdict::{Judgement, Measure, Reason, Verdict};
use crate::web::dates::Zone;
use crate::web::drawing::Standing;
use crate::web::numbers::Numbers;

/// How a verdict is drawn.
#[must_use]
pub fn standing(verdict: Verdict) -> Standing {
    match verdict {
        Verdict::Ready => Standing::Ready,
        Verdict::TestFirst => Standing::TestFirst,
        Verdict::Replace => Standing::Replace,
        Verdict::Unknown => Standing::Unknown,
        Verdict::NothingRecorded => Standing::NothingRecorded,
    }
}

/// The verdict's word.
#[must_use]
pub fn word(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::Ready => "Ready",
        Verdict::TestFirst => "Test first",
        Verdict::Replace => "Replace",
        Verdict::Unknown => "Unknown",
        Verdict::NothingRecorded => "Nothing recorded",
    }
}

/// The reason in numbers: what decides first, then the plain figures.
#[must_use]
pub fn reason(judgement: &Judgement, numbers: Numbers, zone: &Zone) -> String {
    let is_figure = |reason: &&Reason| matches!(reason, Reason::Used(..));
    let figures: Vec<String> = judgement
        .reasons
        .iter()
        .filter(is_figure)
        .enumerate()
        .map(|(place, reason)| figure(reason, numbers, place == 0))
        .collect();
    let others = judgement.reasons.iter().filter(|reason| !is_figure(reason));
    let mut sentences: Vec<String> = others
        .map(|reason| sentence(reason, numbers, zone))
        .collect();
    if !figures.is_empty() {
        sentences.push(format!("{}.", figures.join(", ")));
    }
    sentences.join(" ")
}

fn figure(reason: &Reason, numbers: Numbers, is_first: bool) -> String {
    let Reason::Used(measure, used) = reason else {
        return String::new();
    };
    let share = numbers.percent_used(used.get());
    let of = match measure {
        Measure::Capacity => "its capacity",
        Measure::Life => "its life",
        Measure::TotalAge => "the longest life that topping up leaves it",
        Measure::Acid => "its acid",
        Measure::Bromide => "its bromide limit",
    };
    if is_first {
        format!("{share} of {of} used")
    } else {
        format!("{share} of {of}")
    }
}

fn sentence(reason: &Reason, numbers: Numbers, zone: &Zone) -> String {
    let at = |when: i64| zone.clock_and_weekday(moment(when)).words;
    match reason {
        Reason::NothingRecorded => "No mix is recorded here: look before you pour.".to_owned(),
        Reason::UnknownStart => "Liquid of unknown origin or age: do not use it or pour it away, \
            call a steward."
            .to_owned(),
        Reason::Contaminated(when) => {
            format!("Contamination was reported at {}.", at(when.get()))
        }
        Reason::CheckFailed(check) => {
            let (name, when) = (check_name(check.kind), at(check.at.get()));
            format!("The {name} failed at {when}.")
        }
        Reason::SilverMeasured(reading, limit) => format!(
            "Silver was measured at {} mg/L; the limit is {limit} mg/L.",
            reading.milligrams_per_litre
        ),
        Reason::SilverEstimated(estimate, limit) => {
            format!("Silver is estimated at {estimate} mg/L of {limit} mg/L: measure it.")
        }
        Reason::ClearingSlow(ratio) => format!(
            "Clearing takes {} times as long as when fresh.",
            numbers.decimal(ratio.get(), 3)
        ),
        Reason::EmergenceSlow(ratio) => format!(
            "The image takes {} times as long to show as when fresh.",
            numbers.decimal(ratio.get(), 3)
        ),
        Reason::Used(..) => figure(reason, numbers, true),
        Reason::ExtendedUntil(until) => {
            format!("Extended by a steward until {}.", at(until.get()))
        }
        Reason::TemperatureOut(temperature) => format!(
            "It was {} °C at the last reading, outside its range.",
            numbers.decimal(temperature.get().into(), 1)
        ),
        Reason::TemperatureNotTaken(since) => {
            format!("No temperature was taken since {}.", at(since.get()))
        }
        Reason::SheetsUnknown(when) => {
            format!(
                "Sheets of unknown number went through at {}.",
                at(when.get())
            )
        }
        Reason::GuessedStart => "Its age when it was first recorded is a guess.".to_owned(),
        Reason::Tested(kind, when, until) => format!(
            "The {} passed at {}, good until {}.",
            check_name(*kind),
            at(when.get()),
            at(until.get())
        ),
    }
}

fn check_name(kind: CheckKind) -> &'static str {
    match kind {
        CheckKind::TestPrint => "test print",
        CheckKind::Emergence => "emergence check",
        CheckKind::Clearing => "clearing check",
        CheckKind::Ph => "pH check",
        CheckKind::IndicatorColour => "indicator's colour",
        CheckKind::Silver => "silver test",
        CheckKind::ResidualSilver => "test for residual silver",
        CheckKind::ResidualThiosulfate => "test for residual thiosulfate",
    }
}

/// When the verdict changes if nobody prints.
#[must_use]
pub fn change(judgement: &Judgement, zone: &Zone) -> Option<String> {
    let (when, next) = judgement.changes_at?;
    let at = zone.clock_and_weekday(moment(when.get())).words;
    Some(format!("{} from {at} if nobody prints.", word(next)))
}

/// What a mix is called: its product, or that nobody can name it.
#[must_use]
pub fn mix_name(product: Option<&str>) -> String {
    product.unwrap_or("Unknown liquid").to_owned()
}

/// A mix with its dilution; of liquid that nobody can name there is none.
#[must_use]
pub fn mix_and_dilution(product: Option<&str>, parts_thousandths: i64, numbers: Numbers) -> String {
    let name = mix_name(product);
    match product {
        Some(_) => format!("{name} {}", numbers.dilution(parts_thousandths)),
        None => name,
    }
}

/// The left end of the rule of capacity.
pub const FRESH: &str = "fresh";

/// The right end of the rule of capacity.
pub const USED_UP: &str = "used up";

/// The left end of the rule of life.
#[must_use]
pub fn mixed_at(when: &str) -> String {
    format!("mixed {when}")
}

/// What is left of a mix's capacity: both volumes in microlitres.
#[must_use]
pub fn capacity_left(is_worn: bool, left_ul: i64, charged_ul: i64, numbers: Numbers) -> String {
    if !is_worn {
        return "no capacity is entered for it: only its age counts".to_owned();
    }
    let (left, charged) = (numbers.volume(left_ul), numbers.volume(charged_ul));
    format!("{left} of {charged} not used up")
}

/// What is left of a mix's life.
#[must_use]
pub fn life_left(is_good: bool, ends: &str) -> String {
    if is_good {
        format!("good until {ends}")
    } else {
        format!("over since {ends}")
    }
}

/// For everyone in the room: trays of a line not to print through.
#[must_use]
pub fn do_not_use(line: &str, trays: &[&str]) -> String {
    let it = if trays.len() == 1 { "it" } else { "them" };
    format!("{line}, {}: do not print through {it}.", trays.join(", "))
}
