//! What a note may say.

use crate::input::Bounds;
use crate::problem::Problem;

const SHEETS: Bounds = Bounds {
    least: 1,
    most: 999,
    words: ("1", "999"),
};

/// How many sheets one note covers.
///
/// # Errors
/// Outside 1 to 999.
pub fn sheets(count: i64) -> Result<u32, Problem> {
    SHEETS.hold_as(count)
}
