//! What the pages of products say. Nothing here calls a substance safe: a group
//! that is not ticked is unknown, and the unknown goes with nothing.

use super::bench::span;
use crate::darkroom::incompatibility::Group;
use crate::darkroom::stop_bath::StopAcid;
use crate::products::{Form, Kind, Place};
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

/// What a product is before it is mixed.
#[must_use]
pub const fn made_of(form: Form) -> &'static str {
    match form {
        Form::Liquid => "One liquid concentrate.",
        Form::Kit => "A kit of several parts.",
        Form::Powder => "A powder, made up into a stock solution first.",
        Form::ReadyToUse => "Ready to use: it goes into the tray as it is.",
    }
}

/// What the water of a dilution is added to.
#[must_use]
pub const fn parts_of(form: Form) -> &'static str {
    match form {
        Form::Liquid => "concentrate",
        Form::Kit => "all parts of the kit together",
        Form::Powder => "stock solution",
        Form::ReadyToUse => "what is ready to use",
    }
}

/// Where a bath stands among its like.
#[must_use]
pub const fn place(place: Place) -> &'static str {
    match place {
        Place::Single => "A single bath",
        Place::First => "The first of two baths",
        Place::Second => "The second of two baths",
    }
}

/// The acid of a stop bath.
#[must_use]
pub const fn acid(acid: StopAcid) -> &'static str {
    match acid {
        StopAcid::Acetic => "acetic acid",
        StopAcid::Citric => "citric acid",
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

/// The row of the paper of one class that a litre takes.
#[must_use]
pub fn a_litre(class: &str) -> String {
    format!("A litre, {class}")
}

/// Above what holds wherever a fixer stands.
pub const ANY_PLACE: &str = "In any place";

/// The row of the film that a litre of fixer takes.
pub const FILM: &str = "A litre, film";
/// For a fixer without a capacity for film.
pub const PAPER_ONLY: &str = "paper only";

/// How much film a litre takes.
#[must_use]
pub fn rolls(rolls_per_litre_thousandths: i64, numbers: Numbers) -> String {
    format!("{} rolls", numbers.decimal(rolls_per_litre_thousandths, 3))
}

/// The rows of how long it keeps.
pub const OPEN_TRAY: &str = "In the open tray";
/// The same under a cover.
pub const COVERED_TRAY: &str = "In the covered tray";
/// The same in a bottle.
pub const STOPPERED_BOTTLE: &str = "In a stoppered bottle";
/// The same in a bottle with air in it.
pub const PART_BOTTLE: &str = "In a part-filled bottle";
/// The age that no top-up moves.
pub const LONGEST_LIFE: &str = "At most, however often it is topped up";
/// The parts of a kit.
pub const KIT_PARTS: &str = "Parts of the kit";
/// What a packet of powder makes.
pub const PACKET_MAKES: &str = "A packet makes";
/// How long stock solution keeps.
pub const STOCK_FULL_LIFE: &str = "Stock solution in a full bottle";
/// The same from the first draw on.
pub const STOCK_PART_LIFE: &str = "Stock solution in a part-filled bottle";
/// The temperatures it works at.
pub const WORKS_AT: &str = "It works at";
/// The warmest water it is mixed with.
pub const WATER_WARMEST: &str = "The warmest water to mix it with";
/// Two points of the sheet.
pub const TIME_POINTS: &str = "Times of its sheet";
/// The bromide at which a developer is used up.
pub const BROMIDE_LIMIT: &str = "Used up from a bromide of";
/// The silver at which a fixer is used up.
pub const SILVER_LIMIT: &str = "Used up from a silver of";
/// The acid of a fresh stop bath.
pub const ACID: &str = "Acid when fresh";
/// Where the limit of a stop bath comes from where the product sets none.
pub const USUAL_LIMIT_PH: &str =
    "where the usual indicator leaves yellow: common practice, no source";

/// What a packet makes, and whether it is taken whole.
#[must_use]
pub fn packet(litres: &str, may_be_divided: bool) -> String {
    match may_be_divided {
        true => format!("{litres}, or a part of it"),
        false => format!("{litres}, whole packets only"),
    }
}

/// A range of temperatures that may be open at one end.
#[must_use]
pub fn range(coldest: Option<String>, warmest: Option<String>) -> String {
    match (coldest, warmest) {
        (Some(coldest), Some(warmest)) => format!("{coldest} to {warmest}"),
        (Some(coldest), None) => format!("{coldest} or warmer"),
        (None, Some(warmest)) => format!("{warmest} or colder"),
        (None, None) => String::new(),
    }
}

/// One point of a sheet.
#[must_use]
pub fn point(seconds: i64, degrees: &str) -> String {
    format!("{seconds}\u{a0}s at {degrees}")
}

/// The row of a stop bath's limit.
#[must_use]
pub fn limit_ph(acid: StopAcid) -> String {
    format!("Used up, by its {}, from a pH of", self::acid(acid))
}

/// `2000 mg/L`.
#[must_use]
pub fn mg_per_litre(value: i64, numbers: Numbers) -> String {
    format!("{}\u{a0}mg/L", numbers.decimal(value, 0))
}

/// `250 mmol/L`.
#[must_use]
pub fn mmol_per_litre(value: i64, numbers: Numbers) -> String {
    format!("{}\u{a0}mmol/L", numbers.decimal(value, 0))
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
