//! What may be mixed and poured off at once.

use crate::input::Bounds;
use crate::problem::Problem;

const MIXED: Bounds = Bounds {
    least: 1_000,
    most: 1_000_000_000,
    words: ("1 mL", "1000 L"),
};

const POURED_OFF: Bounds = Bounds {
    least: 0,
    most: 1_000_000_000,
    words: ("0", "1000 L"),
};

/// A volume to mix, in microlitres. The tray decides the rest.
///
/// # Errors
/// Outside 1 mL to 1000 L.
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
