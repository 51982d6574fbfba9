//! What pages and the book say of checks, temperatures and contamination.

use crate::darkroom::incompatibility::Group;
use crate::mixes::ReadingKind;
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
