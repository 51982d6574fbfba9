//! What is said of what a product is made of. A list that nobody called complete is
//! unknown, and the unknown is handled as hazardous.

use crate::products::Concern;
use crate::web::numbers::Numbers;

/// An ingredient's share of the product by mass.
#[must_use]
pub fn content(least: Option<i32>, most: Option<i32>, numbers: Numbers) -> String {
    let percent = |share: i32| format!("{}\u{a0}%", numbers.decimal(share.into(), 4));
    match (least, most) {
        (Some(least), Some(most)) if least == most => percent(least),
        (Some(least), Some(most)) => format!("{} to {}", percent(least), percent(most)),
        (Some(least), None) => format!("{} or more", percent(least)),
        (None, Some(most)) => format!("up to {}", percent(most)),
        (None, None) => "not given".to_owned(),
    }
}

/// Closes whatever is said of a product's concerns.
const SHEET_DECIDES: &str = "The supplier’s data sheet decides.";

/// What a product asks of whoever handles it, at any content.
#[must_use]
pub fn concerns(concerns: &[Concern]) -> String {
    let shown = concerns.iter().filter_map(|concern| treat(*concern));
    let shown: Vec<&str> = shown.collect();
    let treat = match shown.as_slice() {
        [] => String::new(),
        shown => format!("At any content: treat it as {}. ", and(shown)),
    };
    let unknown = match (concerns.contains(&Concern::UnknownComposition), shown.len()) {
        (true, 0) => {
            "What is in it is unknown, so treat it as hazardous in every way: as a sensitiser, \
             as corrosive and as poisonous. "
        }
        (true, _) => {
            "Nobody has said that its list of ingredients is complete, so treat it as hazardous \
             in every other way too. "
        }
        (false, 0) => {
            "None of the codes entered here stands for allergy, burns, poison, cancer or fire. \
             That says nothing for it: gloves and tongs, goggles when pouring, and air. "
        }
        (false, _) => "",
    };
    format!("{treat}{unknown}{SHEET_DECIDES}")
}

/// Liquid that nobody can name, among names of products.
pub const UNNAMED: &str = "liquid that nobody can name";

/// What products that stand in the trays ask for alike, at any content.
#[must_use]
pub fn shared(concern: Concern, products: &[&str]) -> String {
    let names = and(products);
    match concern {
        Concern::Sensitiser => format!(
            "Can cause an allergy, which builds up over many small splashes: {names}. Gloves and \
             tongs, never bare hands."
        ),
        Concern::Corrosive => {
            format!("Corrosive: {names}. Gloves, and goggles when you pour; acid into water.")
        }
        Concern::EyeDamage => format!("Damages eyes for good: {names}. Goggles when you pour."),
        Concern::AcutelyToxic => {
            format!("Poisonous: {names}. No food or drink; wash your hands when you leave.")
        }
        Concern::CancerGenesUnborn => format!(
            "May cause cancer, change genes or harm the unborn: {names}. Keep it off your skin and \
             out of your breath; whoever is or may be pregnant asks a doctor first."
        ),
        Concern::Oxidising => {
            format!("Feeds a fire: {names}. Away from heat and from all that burns.")
        }
        Concern::UnknownComposition => {
            format!("Contents not fully known: {names}. Treat as hazardous in every way.")
        }
    }
}

/// What it is treated as; nothing of what is unknown.
const fn treat(concern: Concern) -> Option<&'static str> {
    match concern {
        Concern::Sensitiser => Some("a sensitiser (an allergy builds up over many small splashes)"),
        Concern::Corrosive => Some("corrosive"),
        Concern::EyeDamage => Some("something that damages eyes for good"),
        Concern::AcutelyToxic => Some("poisonous"),
        Concern::CancerGenesUnborn => {
            Some("something that may cause cancer, change genes or harm the unborn")
        }
        Concern::Oxidising => Some("something that feeds a fire"),
        Concern::UnknownComposition => None,
    }
}

fn and(words: &[&str]) -> String {
    match words {
        [] => String::new(),
        [one] => (*one).to_owned(),
        [all @ .., last] => format!("{} and {last}", all.join(", ")),
    }
}
