//! Lives and times as typed: a number with or without a unit of time.

use super::input;
use crate::problem::Problem;
use crate::web::numbers::{NumberProblem, Numbers};

const HOUR_S: i64 = 3_600;

/// A life in seconds, from hours or the unit typed behind the number; rounded
/// half up to the second.
pub(super) fn read_life(typed: &str, numbers: Numbers) -> Result<i64, Problem> {
    input::life(read_span(typed, numbers, HOUR_S)?)
}

/// A life that need not be said.
pub(super) fn read_life_if_any(typed: &str, numbers: Numbers) -> Result<Option<i64>, Problem> {
    if_any(typed, |typed| read_life(typed, numbers))
}

/// Seconds, from seconds or the unit typed behind the number.
pub(super) fn read_time(typed: &str, numbers: Numbers) -> Result<i64, Problem> {
    read_span(typed, numbers, 1)
}

/// What is read where something was typed.
pub(super) fn if_any<T>(
    typed: &str,
    read: impl FnOnce(&str) -> Result<T, Problem>,
) -> Result<Option<T>, Problem> {
    match typed.trim() {
        "" => Ok(None),
        typed => read(typed).map(Some),
    }
}

fn read_span(typed: &str, numbers: Numbers, bare_s: i64) -> Result<i64, Problem> {
    let typed = typed.trim();
    let unit_at = typed.find(char::is_alphabetic).unwrap_or(typed.len());
    let (number, unit) = typed.split_at(unit_at);
    let unit_s = match unit.to_lowercase().as_str() {
        "" => bare_s,
        "h" | "hour" | "hours" => HOUR_S,
        "s" | "second" | "seconds" => 1,
        "min" | "minute" | "minutes" => 60,
        "d" | "day" | "days" => 24 * HOUR_S,
        "week" | "weeks" => 7 * 24 * HOUR_S,
        _ => return Err(Problem::Number(NumberProblem::UnknownUnit)),
    };
    let read = numbers.read_thousandths(number).map_err(Problem::Number)?;
    let seconds = read.checked_mul(unit_s);
    let seconds = seconds.ok_or(Problem::Number(NumberProblem::TooLarge))?;
    Ok(seconds.saturating_add(500) / 1_000)
}

/// A life for its field: in hours where they are exact, so that it is read back
/// as the same.
pub(super) fn write_life(seconds: i64, numbers: Numbers) -> String {
    match (seconds * 1_000 % HOUR_S, seconds % 60) {
        (0, _) => numbers.decimal(seconds * 1_000 / HOUR_S, 3),
        (_, 0) => format!("{}\u{a0}min", seconds / 60),
        (_, _) => format!("{seconds}\u{a0}s"),
    }
}

/// A life for its field, where there is one.
pub(super) fn write_life_if_any(seconds: Option<i64>, numbers: Numbers) -> String {
    seconds.map_or_else(String::new, |seconds| write_life(seconds, numbers))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn a_life_is_hours_unless_it_says_otherwise() {
        let point = Numbers::with_mark(".");
        assert_eq!(read_life("8", point), Ok(28_800));
        assert_eq!(read_life("7.5 h", point), Ok(27_000));
        assert_eq!(read_life("45 min", point), Ok(2_700));
        assert_eq!(read_life("6 weeks", point), Ok(3_628_800));
        let unit = Problem::Number(NumberProblem::UnknownUnit);
        assert_eq!(read_life("3 moons", point), Err(unit));
        assert!(matches!(
            read_life("0", point),
            Err(Problem::OutOfRange { .. })
        ));
        assert_eq!(read_life_if_any(" ", point), Ok(None));
    }

    #[test]
    fn a_time_is_seconds_unless_it_says_otherwise() {
        let point = Numbers::with_mark(".");
        assert_eq!(read_time("90", point), Ok(90));
        assert_eq!(read_time("1.5 min", point), Ok(90));
    }

    proptest! {
        #[test]
        fn a_life_in_its_field_is_read_back(seconds in 60_i64..157_680_000, comma: bool) {
            let numbers = Numbers::with_mark(if comma { "," } else { "." });
            prop_assert_eq!(read_life(&write_life(seconds, numbers), numbers), Ok(seconds));
        }
    }
}
