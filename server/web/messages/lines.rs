//! What the pages of lines say: steps, times, the wash.

use crate::bench::Step;

/// What prints do in a tray, as a choice.
#[must_use]
pub const fn step(step: Step) -> &'static str {
    match step {
        Step::Any => "Not said",
        Step::Developer => "Developer",
        Step::StopBath => "Stop bath",
        Step::Fixer => "Fixer, the only one",
        Step::FirstFixer => "First fixer of two",
        Step::SecondFixer => "Second fixer of two",
        Step::HoldingWater => "Holding water",
        Step::WashAid => "Wash aid",
        Step::Toner => "Toner",
        Step::Wash => "Wash",
    }
}

/// The same beside the name of a tray: nothing where nobody said.
#[must_use]
pub const fn step_shown(of: Step) -> &'static str {
    match of {
        Step::Any => "",
        of => step(of),
    }
}

/// The choice of a line that stands in no space.
pub const NO_SPACE: &str = "The room itself";

/// Where a class has no such time.
pub const NO_TIME: &str = "none";

/// Whose time counts, where its class is used no more.
pub const A_RETIRED_CLASS: &str = "A class used no more";

/// A time in the dark: `45 s`, `1 min 30 s`, `20 min`, `1 h`.
#[must_use]
pub fn time(seconds: i64) -> String {
    let (hours, minutes, rest) = (seconds / 3_600, seconds / 60 % 60, seconds % 60);
    let parts = [(hours, "h"), (minutes, "min"), (rest, "s")];
    let parts: Vec<String> = parts
        .iter()
        .filter(|(count, _)| *count > 0)
        .map(|(count, unit)| format!("{count}\u{a0}{unit}"))
        .collect();
    match parts.is_empty() {
        true => NO_TIME.to_owned(),
        false => parts.join(" "),
    }
}

/// Since when a wash runs.
#[must_use]
pub fn since(at: &str) -> String {
    format!("Running since {at}")
}

/// What restarted a wash.
#[must_use]
pub fn restarted(at: &str) -> String {
    format!("Restarted {at} by a print that joined")
}

/// Why a wash ends when it does.
#[must_use]
pub fn why(since: &str, class: &str, time: &str) -> String {
    format!("{since}. {class} needs the longest: {time}.")
}

/// What stands on the button of a print that joins a wash.
#[must_use]
pub fn join(class: &str, had_wash_aid: bool, has_wash_aid: bool) -> String {
    match (had_wash_aid, has_wash_aid) {
        (true, _) => format!("{class}, after the wash aid"),
        (false, true) => format!("{class}, no wash aid"),
        (false, false) => class.to_owned(),
    }
}

/// How long a print washes.
#[must_use]
pub fn washes(time: &str) -> String {
    format!("washes {time}")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_time_says_its_units_and_no_more() {
        assert_eq!(time(45), "45\u{a0}s");
        assert_eq!(time(90), "1\u{a0}min 30\u{a0}s");
        assert_eq!(time(1_200), "20\u{a0}min");
        assert_eq!(time(5_400), "1\u{a0}h 30\u{a0}min");
        assert_eq!(time(0), "none");
    }
}
