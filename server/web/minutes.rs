//! Times in the dark as typed: minutes, minutes and seconds with a colon between, or
//! the unit behind the number.

use super::numbers::{NumberProblem, Numbers};
use crate::problem::Problem;

/// A time in seconds, rounded half up: `2`, `1.5 min`, `4:30`, `45 s`, `1 h`.
///
/// # Errors
/// What is no time, and units of another quantity.
pub fn read_minutes(typed: &str, numbers: Numbers) -> Result<i64, Problem> {
    let typed = typed.trim();
    let unit_at = typed.find(char::is_alphabetic).unwrap_or(typed.len());
    let (number, unit) = typed.split_at(unit_at);
    let unit_s = match unit.to_lowercase().as_str() {
        "" | "min" | "minute" | "minutes" => 60,
        "s" | "sec" | "second" | "seconds" => 1,
        "h" | "hour" | "hours" => 3_600,
        _ => return Err(Problem::Number(NumberProblem::UnknownUnit)),
    };
    if let Some((minutes, seconds)) = number.split_once(':') {
        return match unit_s {
            60 => read_clock(minutes, seconds.trim_end(), numbers),
            _ => Err(Problem::Number(NumberProblem::UnknownUnit)),
        };
    }
    let read = numbers.read_thousandths(number).map_err(Problem::Number)?;
    let seconds = read.checked_mul(unit_s);
    let seconds = seconds.ok_or(Problem::Number(NumberProblem::TooLarge))?;
    Ok(seconds.saturating_add(500) / 1_000)
}

/// Minutes and seconds, as a timer shows them.
fn read_clock(minutes: &str, seconds: &str, numbers: Numbers) -> Result<i64, Problem> {
    let count = |text: &str| numbers.read_count(text).map_err(Problem::Number);
    let (minutes, read) = (count(minutes)?, count(seconds)?);
    if seconds.len() != 2 || read > 59 {
        return Err(Problem::Number(NumberProblem::NotANumber));
    }
    let whole = minutes
        .checked_mul(60)
        .and_then(|all| all.checked_add(read));
    whole.ok_or(Problem::Number(NumberProblem::TooLarge))
}

/// A time for its field, so that it is read back as the same.
#[must_use]
pub fn write_minutes(seconds: i64, numbers: Numbers) -> String {
    match seconds % 6 {
        0 => numbers.decimal(seconds / 6, 1),
        _ => format!("{seconds}\u{a0}s"),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn a_time_is_minutes_unless_it_says_otherwise() {
        let point = Numbers::with_mark(".");
        for (typed, seconds) in [
            ("2", 120),
            ("1.5 min", 90),
            ("45 s", 45),
            ("1 h", 3_600),
            ("4:30", 270),
            (" 0:05 min ", 5),
        ] {
            assert_eq!(read_minutes(typed, point), Ok(seconds), "{typed}");
        }
        let unit = Problem::Number(NumberProblem::UnknownUnit);
        assert_eq!(read_minutes("2 days", point), Err(unit.clone()));
        assert_eq!(read_minutes("4:30 h", point), Err(unit));
        let none = Problem::Number(NumberProblem::NotANumber);
        for typed in ["4:60", "4:5", "4:005", "4:-1", "a:30"] {
            assert!(read_minutes(typed, point).is_err(), "{typed}");
        }
        assert_eq!(read_minutes("4:60", point), Err(none));
    }

    proptest! {
        #[test]
        fn a_time_in_its_field_is_read_back(seconds in 0_i64..86_400, comma: bool) {
            let numbers = Numbers::with_mark(if comma { "," } else { "." });
            prop_assert_eq!(read_minutes(&write_minutes(seconds, numbers), numbers), Ok(seconds));
        }

        #[test]
        fn a_timers_time_is_read_as_it_shows(seconds in 0_i64..86_400) {
            let shown = format!("{}:{:02}", seconds / 60, seconds % 60);
            prop_assert_eq!(read_minutes(&shown, Numbers::default()), Ok(seconds));
        }
    }
}
