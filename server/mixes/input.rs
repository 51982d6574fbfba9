//! What may be asked of mixes, for pages and API alike.

use crate::problem::Problem;

/// A container's name, trimmed.
///
/// # Errors
/// An empty or endless name.
pub fn container(text: &str) -> Result<String, Problem> {
    let name = text.trim();
    match name.chars().count() {
        0 => Err(Problem::Missing),
        1..=60 => Ok(name.to_owned()),
        _ => Err(Problem::TooLong(60)),
    }
}
