//! What may be asked of mixes, for pages and API alike.

use crate::input::Bounds;
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

const MIXED: Bounds = Bounds {
    least: 1_000,
    most: 1_000_000_000,
    words: ("1 ml", "1000 L"),
};

const POURED_OFF: Bounds = Bounds {
    least: 0,
    most: 1_000_000_000,
    words: ("0", "1000 L"),
};

/// A volume to mix, in microlitres. The tray decides the rest.
///
/// # Errors
/// Outside 1 ml to 1000 L.
pub fn mixed(microlitres: i64) -> Result<i64, Problem> {
    MIXED.hold(microlitres)
}

/// A volume poured off, in microlitres; nothing where it dried out.
///
/// # Errors
/// Outside 0 to 1000 L.
pub fn poured_off(microlitres: i64) -> Result<i64, Problem> {
    POURED_OFF.hold(microlitres)
}
