//! Checks that a steward may copy in with one press, in words of our own. Each number of
//! days says where it comes from; the supplier's instructions, local rules and whoever is
//! answerable for the house come first.

use super::actions::NewCheck;
use super::{Measure, RoomCheck};

const COMMON_PRACTICE: &str = "common practice, no source";

/// A starter check; what is measured is its unit, without a limit.
struct Starter {
    name: &'static str,
    how: &'static str,
    every_days: i32,
    basis: &'static str,
    on_failure: &'static str,
    is_on_board: bool,
    unit: Option<&'static str>,
}

const STARTERS: &[Starter] = &[
    Starter {
        name: "Eyewash",
        how: "Clear the way to it. Let both streams run until the water is clear and runs \
            evenly, and see that it starts with one push and stays on by itself. The caps lie \
            on the nozzles afterwards.",
        every_days: 7,
        basis: "activated weekly: ANSI/ISEA Z358.1",
        on_failure: "Nobody pours concentrate until it runs again. Tell a steward now.",
        is_on_board: true,
        unit: None,
    },
    Starter {
        name: "Eyewash, yearly",
        how: "Go through its maker’s sheet: flow, height, warmth and reach of the water, and \
            the sign above it. Someone who knows the sheet does this.",
        every_days: 365,
        basis: "inspected yearly: ANSI/ISEA Z358.1, from memory",
        on_failure: "Have it set right. Until then pour concentrate only where another eyewash \
            is within reach.",
        is_on_board: false,
        unit: None,
    },
    Starter {
        name: "Fan flow",
        how: "Run the fan as on any evening and hold the meter to the grille as its sheet says. \
            Without a meter, note that nothing was measured and do not pass it.",
        every_days: 90,
        basis: COMMON_PRACTICE,
        on_failure: "Air through the door, cover the trays, and start no toner. Tell a steward.",
        is_on_board: true,
        unit: Some("L/s"),
    },
    Starter {
        name: "Spill kit",
        how: "Open it: absorbent, gloves, goggles, bags and a dustpan are all there, and nothing \
            stands before it.",
        every_days: 30,
        basis: COMMON_PRACTICE,
        on_failure: "Fill what is missing. Until then nobody carries open concentrate through \
            the room.",
        is_on_board: false,
        unit: None,
    },
    Starter {
        name: "Gloves, goggles and tongs",
        how: "Count gloves of every size, and look through goggles and aprons. A pair of tongs \
            hangs at each tray.",
        every_days: 14,
        basis: COMMON_PRACTICE,
        on_failure: "Order today. Whoever finds no gloves that fit does not touch chemistry.",
        is_on_board: true,
        unit: None,
    },
    Starter {
        name: "First aid box",
        how: "Go through the list in its lid. Replace what was used, and what is past its date.",
        every_days: 90,
        basis: COMMON_PRACTICE,
        on_failure: "Tell a steward what is missing, and where the nearest other box is.",
        is_on_board: false,
        unit: None,
    },
    Starter {
        name: "Fire extinguisher",
        how: "It hangs in its place and is free to reach, its seal is whole, its pointer stands \
            in the green, and the date of its service has not passed.",
        every_days: 30,
        basis: "looked at monthly: 29 CFR 1910.157(e)(2), from memory",
        on_failure: "Tell a steward now: it is to be replaced before the next session.",
        is_on_board: true,
        unit: None,
    },
    Starter {
        name: "Ways out and emergency light",
        how: "Walk both ways out in the dark: nothing stands in them, doors open by hand, and \
            the light or the torch by the door burns.",
        every_days: 30,
        basis: COMMON_PRACTICE,
        on_failure: "Clear the way before anyone begins. Without a light nobody works alone.",
        is_on_board: true,
        unit: None,
    },
    Starter {
        name: "Data sheets",
        how: "A sheet of every bottle on the shelf lies in the folder, and every bottle can be \
            read. Look for newer ones at the suppliers.",
        every_days: 365,
        basis: COMMON_PRACTICE,
        on_failure: "Set aside what has no sheet or no label: nobody mixes from it.",
        is_on_board: false,
        unit: None,
    },
];

impl Starter {
    fn check(&self) -> NewCheck {
        NewCheck {
            id: None,
            name: self.name.to_owned(),
            how: self.how.to_owned(),
            every_days: self.every_days,
            basis: self.basis.to_owned(),
            on_failure: self.on_failure.to_owned(),
            is_on_board: self.is_on_board,
            space_id: None,
            measure: self.unit.map(|unit| Measure {
                unit: unit.to_owned(),
                least_thousandths: None,
                most_thousandths: None,
            }),
            is_retired: false,
        }
    }
}

/// The starter checks whose names a room does not have.
pub(super) fn missing(there: &[RoomCheck]) -> Vec<NewCheck> {
    let is_new = |each: &&Starter| there.iter().all(|check| check.name != each.name);
    let missing = STARTERS.iter().filter(is_new);
    missing.map(Starter::check).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::input::{name, needed_note, remark};

    #[test]
    fn every_starter_could_have_been_typed_and_says_where_its_days_come_from() {
        let all = missing(&[]);
        assert!(all.len() >= 8);
        for check in all {
            name(&check.name).unwrap();
            needed_note(&check.basis).unwrap();
            for text in [&check.how, &check.on_failure] {
                assert!(!text.is_empty());
                remark(text).unwrap_or_else(|_| panic!("{} says too much", check.name));
            }
        }
    }
}
