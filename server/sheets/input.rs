//! What may be asked of notes, for pages and API alike.

/// A steward's reason, trimmed; may be empty.
pub use crate::input::remark as reason;
use crate::problem::Problem;

/// So many sheets one note holds at most.
pub const MOST_SHEETS: u32 = 999;

/// A count of sheets.
///
/// # Errors
/// None at all, or more than a note holds.
pub fn sheets(count: i64) -> Result<u32, Problem> {
    let wrong = Problem::OutOfRange {
        least: "1".to_owned(),
        most: MOST_SHEETS.to_string(),
    };
    match u32::try_from(count) {
        Ok(count @ 1..=MOST_SHEETS) => Ok(count),
        _ => Err(wrong),
    }
}

/// So many rolls one note holds at most.
pub const MOST_ROLLS: u32 = 99;

/// A count of rolls of film.
///
/// # Errors
/// None at all, or more than a note holds.
pub fn rolls(count: i64) -> Result<u32, Problem> {
    let wrong = Problem::OutOfRange {
        least: "1".to_owned(),
        most: MOST_ROLLS.to_string(),
    };
    match u32::try_from(count) {
        Ok(count @ 1..=MOST_ROLLS) => Ok(count),
        _ => Err(wrong),
    }
}
