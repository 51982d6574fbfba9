//! What the pages of the bench say about mixing, discarding and notes.

use crate::web::numbers::Numbers;

/// A span of whole seconds as people say it: `8 h`, `7 h 30 min`, `45 min`.
#[must_use]
pub fn span(seconds: i64) -> String {
    let minutes = seconds.max(0) / 60;
    match (minutes / 60, minutes % 60) {
        (0, minutes) => format!("{minutes}\u{a0}min"),
        (hours, 0) => format!("{hours}\u{a0}h"),
        (hours, minutes) => format!("{hours}\u{a0}h {minutes}\u{a0}min"),
    }
}

/// How much covers a print in this tray, and how much it holds.
#[must_use]
pub fn volume_hint(least_ul: i64, holds_ul: i64, numbers: Numbers) -> String {
    let (least, holds) = (numbers.volume(least_ul), numbers.volume(holds_ul));
    format!("{least} covers a print here; the tray holds {holds} to the rim.")
}

/// One part and so many: the first step of a recipe.
#[must_use]
pub fn parts(parts_thousandths: i64, numbers: Numbers) -> (String, String, String) {
    let parts = numbers.decimal(parts_thousandths, 3);
    let all = numbers.decimal(parts_thousandths + 1_000, 3);
    (
        format!("1 part concentrate and {parts} parts water"),
        format!("1 + {parts}"),
        format!("{all} parts"),
    )
}

/// `10 parts`.
#[must_use]
pub fn count_of_parts(all: &str) -> String {
    format!("{all} parts")
}

/// `1 L of Larch developer 1+9`.
#[must_use]
pub fn volume_of(volume: &str, product: Option<&str>, dilution: &str) -> String {
    match product {
        Some(product) => format!("{volume} of {product} {dilution}"),
        None => format!("about {volume} of liquid that nobody can name"),
    }
}

/// The step that gives the concentrate.
pub const CONCENTRATE: &str = "Concentrate";

/// The step that gives the water.
pub const WATER: &str = "Water";

/// The step that gives the depth.
pub const DEPTH: &str = "Depth in the tray";

/// `1 L ÷ (300 mm × 250 mm)`.
#[must_use]
pub fn over_floor(total: &str, long: &str, short: &str) -> String {
    format!("{total} ÷ ({long} × {short})")
}

/// How many sheets a mix takes, first or among others.
#[must_use]
pub fn takes(is_first: bool, sheets: &str, class: &str) -> String {
    let or = if is_first { "" } else { "or " };
    format!("{or}{sheets} sheets of 8×10\u{a0}in, {class}")
}

/// How long a mix keeps, and until when.
#[must_use]
pub fn keeps(life_s: i64, until: &str) -> String {
    let life = span(life_s);
    format!("Open in this tray {life}: good until {until} if nobody prints.")
}

/// Where the figures of a dilution come from.
#[must_use]
pub fn basis(bases: &[&str]) -> String {
    let bases = bases.join("; ");
    format!(
        "Where these figures come from: {bases}. The maker’s data sheet always wins; a steward may change them."
    )
}

/// A hazard code as supplied, without its text.
#[must_use]
pub fn as_supplied(codes: &[String]) -> String {
    let codes = codes.join(", ");
    format!("As supplied: {codes}. Read the supplier’s safety data sheet before you pour.")
}

/// For a product without hazard codes on file.
pub const NO_CODES: &str = "No hazard codes of the product as supplied are on file. That says \
    nothing about it: read the supplier’s safety data sheet before you pour.";

/// What must not share a container.
pub const CONTAINERS: &str = "Never pour acid or stop bath together with fixer, sulfite or \
    developer, and nothing together with household bleach. What is not known goes with nothing.";

/// What a note did to a tray.
#[must_use]
pub fn effect(product: &str, spent: &str, used: &str) -> String {
    format!("{product}: {spent} used up; now {used} of its capacity is used.")
}

/// What undoing a note gives back to a tray.
#[must_use]
pub fn gives_back(product: &str, spent: &str) -> String {
    format!("{product}: {spent} come back.")
}

/// A note that wore nothing.
pub const WORE_NOTHING: &str =
    "No bath in this line has a capacity entered, so nothing was used up.";

/// `6 sheets of 8×10 in, RC, on First line`.
#[must_use]
pub fn note(sheets: i32, paper: Option<&str>, line: &str) -> String {
    let Some(paper) = paper else {
        return format!("{} of film, {line}", rolls(sheets.into()));
    };
    let noun = if sheets == 1 { "sheet" } else { "sheets" };
    format!("{sheets} {noun} of {paper}, on {line}")
}

/// What the rule for local times did.
#[must_use]
pub fn moved_forward() -> String {
    "The clocks skipped the time you wrote; it was moved forward by what they skipped.".to_owned()
}

/// What the rule for local times did.
#[must_use]
pub fn first_of_two() -> String {
    "The time you wrote happened twice that night; the first was taken.".to_owned()
}

/// A tray's inside.
#[must_use]
pub fn inside(long: &str, short: &str, depth: &str, least: &str) -> String {
    format!("{long} × {short}, {depth} deep; least depth {least}")
}

/// The first step of the sum of capacity.
pub const CHARGED: &str = "Charged with fresh solution";

/// The last step of the sum of capacity.
pub const CAPACITY_USED: &str = "Used of its capacity";

/// The last step of the sum of life.
pub const LIFE_USED: &str = "Used of its life";

/// The first step of the sum of life.
pub const LIFE_HERE: &str = "Life in this tray, at this depth";

/// `24 sheets of 8×10 in ÷ 100 sheets a litre`.
#[must_use]
pub fn worn(equivalents: &str, per_litre: &str) -> String {
    format!("{equivalents} sheets of 8×10\u{a0}in ÷ {per_litre} sheets a litre")
}

/// What stands for a paper class where it was film.
pub const FILM: &str = "Film";

/// `3 rolls`.
#[must_use]
pub fn rolls(count: i64) -> String {
    match count {
        1 => "1 roll".to_owned(),
        count => format!("{count} rolls"),
    }
}

/// `In this tray since 13:10`.
#[must_use]
pub fn stands_since(since: &str) -> String {
    format!("Standing since {since}")
}
