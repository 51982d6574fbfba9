//! What may be asked of workshops, for pages and API alike.

use crate::input::{Bounds, name};
use crate::problem::Problem;

/// So many names one list holds at most.
pub const MOST_NAMES: usize = 100;

const GUESTS: Bounds = Bounds {
    least: 1,
    most: 999,
    words: ("1", "999"),
};

/// A number of guests.
///
/// # Errors
/// None at all, or more than 999.
pub fn most_guests(count: i64) -> Result<i32, Problem> {
    GUESTS.hold_as(count)
}

/// Names of guests, one or more.
///
/// # Errors
/// None at all, too many, or one that is too long.
pub fn names<'t>(typed: impl Iterator<Item = &'t str>) -> Result<Vec<String>, Problem> {
    let written = typed.filter(|line| !line.trim().is_empty());
    let names: Vec<String> = written.map(name).collect::<Result<_, _>>()?;
    match names.len() {
        0 => Err(Problem::Missing),
        1..=MOST_NAMES => Ok(names),
        _ => Err(Problem::TooMany(MOST_NAMES)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_list_is_one_name_a_line() {
        let typed = " Ilka Brandt \n\n\tJonas\u{a0}Reh\r\n   \n";
        let read = names(typed.lines()).unwrap();
        assert_eq!(read.len(), 2, "{read:?}");
        assert_eq!(read[0], "Ilka Brandt");
        assert_eq!(names("\n \n".lines()), Err(Problem::Missing));
        let many = "A\n".repeat(MOST_NAMES + 1);
        assert_eq!(names(many.lines()), Err(Problem::TooMany(MOST_NAMES)));
        assert!(names("A\n".repeat(MOST_NAMES).lines()).is_ok());
        let long = "a".repeat(200);
        assert!(names([long.as_str()].into_iter()).is_err());
    }
}
