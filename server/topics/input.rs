//! What may be said of topics.

use crate::input::Bounds;
use crate::problem::Problem;

/// An induction is good for so many months where nobody says otherwise: from memory, no
/// source.
pub const GOOD_MONTHS: i32 = 24;

/// The longest text of a topic.
pub const BODY_LENGTH: usize = 6_000;

const MONTHS: Bounds = Bounds {
    least: 1,
    most: 120,
    words: ("1", "120"),
};

/// Months an induction is good.
///
/// # Errors
/// Outside 1 to 120.
pub fn months(count: i64) -> Result<i32, Problem> {
    MONTHS.hold_as(count)
}

/// A topic's text: paragraphs with one empty line between them.
///
/// # Errors
/// None at all, or too long.
pub fn body(text: &str) -> Result<String, Problem> {
    let text = text.replace("\r\n", "\n");
    let paragraphs: Vec<&str> = paragraphs(&text).collect();
    let body = paragraphs.join("\n\n");
    match body.chars().count() {
        0 => Err(Problem::Missing),
        length if length > BODY_LENGTH => Err(Problem::TooLong(BODY_LENGTH)),
        _ => Ok(body),
    }
}

/// The paragraphs of a text.
pub fn paragraphs(text: &str) -> impl Iterator<Item = &str> {
    let all = text.split("\n\n").map(str::trim);
    all.filter(|paragraph| !paragraph.is_empty())
}
