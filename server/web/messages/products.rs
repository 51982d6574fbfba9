//! What the pages of products say. Nothing here calls a substance safe: a group
//! that is not ticked is unknown, and the unknown goes with nothing.

use super::bench::span;
use crate::darkroom::incompatibility::Group;
use crate::products::Kind;
use crate::web::numbers::Numbers;

/// A kind of product.
#[must_use]
pub const fn kind(kind: Kind) -> &'static str {
    match kind {
        Kind::Developer => "Developer",
        Kind::StopBath => "Stop bath",
        Kind::Fixer => "Fixer",
        Kind::WashAid => "Wash aid",
        Kind::Toner => "Toner",
        Kind::HoldingWater => "Holding water",
    }
}

/// A group, and what it is recognised by.
#[must_use]
pub const fn group(group: Group) -> (&'static str, &'static str) {
    match group {
        Group::Acid => ("An acid", "Any: acetic, citric, an acid fixer."),
        Group::Alkali => ("An alkali", "Carbonate, borax, of any strength."),
        Group::StrongAlkali => ("A strong alkali", "Hydroxide; pH 11.5 or more."),
        Group::Hypochlorite => ("Hypochlorite", "Household bleach and its like."),
        Group::Ammonium => (
            "Ammonia or an ammonium salt",
            "Rapid fixers hold ammonium thiosulfate.",
        ),
        Group::Sulfite => ("A sulfite", "Bisulfite and metabisulfite too."),
        Group::Thiosulfate => ("A thiosulfate", "Every usual fixer."),
        Group::Fixer => ("It is a fixer", ""),
        Group::StopBath => ("It is a stop bath", ""),
        Group::Sulfide => ("A sulfide", "Sepia and polysulfide toners."),
        Group::Developer => ("It is a developer", ""),
        Group::Ferricyanide => (
            "A ferricyanide or ferrocyanide",
            "Bleach of a sepia toner, print reducer.",
        ),
        Group::OxidisingBleach => (
            "An oxidising bleach",
            "Permanganate, dichromate, persulfate, peroxide.",
        ),
        Group::Organic => (
            "Another organic substance",
            "Solvents, wetting agents, developing agents, dyes.",
        ),
        Group::Sensitiser => (
            "Something that can cause an allergy",
            "H317 or H334. It says nothing about pouring.",
        ),
    }
}

/// How much paper a litre takes, in sheets of 8×10 in.
#[must_use]
pub fn takes(sheets_per_litre_thousandths: i64, numbers: Numbers) -> String {
    let sheets = numbers.decimal(sheets_per_litre_thousandths, 3);
    format!("{sheets} sheets")
}

/// How long a working solution keeps: `8 h`, from three days on `30 days`.
#[must_use]
pub fn life(seconds: i64) -> String {
    const DAY_S: i64 = 24 * 3_600;
    if seconds >= 3 * DAY_S && seconds % DAY_S == 0 {
        return format!("{}\u{a0}days", seconds / DAY_S);
    }
    span(seconds)
}

/// The depth that a tray life holds for.
#[must_use]
pub fn at_depth(depth: &str) -> String {
    format!("for a depth of {depth}")
}

/// For a product that has no dilution.
pub const NO_DILUTION: &str = "no dilution yet";

/// The text of a statement that is not on file here.
pub const NO_TEXT: &str = "Its text stands in the supplier’s safety data sheet.";
