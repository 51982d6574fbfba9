//! What pages and the book say of checks, temperatures and contamination.

use crate::darkroom::incompatibility::Group;
use crate::mixes::readings::Kept;
use crate::mixes::{Outcome, ReadingKind};
use crate::products::parse_group;
use crate::web::numbers::Numbers;

/// What was looked at.
#[must_use]
pub const fn kind(kind: ReadingKind) -> &'static str {
    match kind {
        ReadingKind::Temperature => "Temperature",
        ReadingKind::TestPrint => "Test print",
        ReadingKind::Emergence => "Emergence time",
        ReadingKind::Clearing => "Clearing time",
        ReadingKind::Ph => "pH",
        ReadingKind::IndicatorColour => "Indicator’s colour",
        ReadingKind::Silver => "Silver test",
        ReadingKind::ResidualSilver => "Spot test for residual silver",
        ReadingKind::ResidualThiosulfate => "Spot test for residual thiosulfate",
        ReadingKind::Contamination => "Contamination",
    }
}

/// A reading's figure with its unit.
#[must_use]
pub fn figure(kind: ReadingKind, value: i64, numbers: Numbers) -> String {
    match kind {
        ReadingKind::Temperature => format!("{}\u{a0}°C", numbers.decimal(value, 1)),
        ReadingKind::Emergence | ReadingKind::Clearing => format!("{value}\u{a0}s"),
        ReadingKind::Ph => numbers.decimal(value, 3),
        ReadingKind::Silver => format!("{value}\u{a0}mg/L"),
        _ => value.to_string(),
    }
}

/// What somebody found of a mix, in one sentence.
#[must_use]
pub fn found(kept: &Kept, numbers: Numbers) -> String {
    if kept.kind == ReadingKind::Contamination {
        return because(&contaminated(&kept.contaminants), &kept.remark);
    }
    let mut said = self::kind(kept.kind).to_owned();
    if let Some(value) = kept.value {
        said = format!("{said}: {}", figure(kept.kind, value, numbers));
    }
    if let Some(tenths) = kept.tenths_celsius {
        said = format!("{said} at {}", numbers.celsius(tenths.into()));
    }
    if !kept.sample.is_empty() {
        said = format!("{said} with {}", kept.sample);
    }
    match (kept.ratio_thousandths, is_timed(kept.kind), kept.is_fresh) {
        (Some(ratio), ..) => {
            let ratio = numbers.rounded(ratio, 3, 2);
            said = format!("{said}, {ratio} times the fresh time");
        }
        (None, true, false) => said.push_str(", with no fresh time to compare"),
        _ => {}
    }
    match kept.outcome {
        Outcome::Read => {}
        Outcome::Passed if kept.is_fresh => said.push_str(", taken fresh"),
        Outcome::Passed => said.push_str(": passed"),
        Outcome::Failed => said.push_str(": failed"),
    }
    because(&said, &kept.remark)
}

const fn is_timed(kind: ReadingKind) -> bool {
    matches!(kind, ReadingKind::Emergence | ReadingKind::Clearing)
}

/// A sentence with the finder's words behind it, where there are any.
fn because(said: &str, remark: &str) -> String {
    match remark.trim() {
        "" => format!("{said}."),
        remark => format!("{said}. {}.", remark.trim_end_matches('.')),
    }
}

/// What is known to have come into a mix.
#[must_use]
pub fn contaminated(names: &[String]) -> String {
    let known: Vec<Group> = names
        .iter()
        .filter_map(|name| parse_group(name).ok())
        .collect();
    match known.is_empty() {
        true => "Contamination: nobody can say what came into it".to_owned(),
        false => format!("Contamination: {} came into it", groups(&known)),
    }
}

/// What somebody says came into a mix.
fn contaminant(group: Group) -> String {
    let name = match group {
        Group::Fixer => "fixer",
        Group::StopBath => "stop bath",
        Group::Developer => "developer",
        other => super::products::group(other).0,
    };
    let mut letters = name.chars();
    let first = letters
        .next()
        .map(|letter| letter.to_lowercase().to_string());
    first.unwrap_or_default() + letters.as_str()
}

/// What came into a mix, in words.
#[must_use]
pub fn groups(groups: &[Group]) -> String {
    let names: Vec<String> = groups.iter().map(|each| contaminant(*each)).collect();
    names.join(", ")
}
