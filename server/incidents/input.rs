//! What may be said of an incident.

use crate::problem::Problem;

/// So much is written of one at most.
pub const WORDS_LENGTH: usize = 2_000;

/// So many notes of what to avoid a person keeps at most.
pub(super) const MOST_NOTES: usize = 50;

/// An incident may be reported so long afterwards: a year.
pub const LATE_MINUTES: i32 = 366 * 24 * 60;

/// What happened, in the words of the person.
///
/// # Errors
/// Too long.
pub fn words(text: &str) -> Result<String, Problem> {
    let text = text.trim();
    match text.chars().count() <= WORDS_LENGTH {
        true => Ok(text.to_owned()),
        false => Err(Problem::TooLong(WORDS_LENGTH)),
    }
}
