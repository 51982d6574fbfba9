//! What bottles may hold.

use crate::input::Bounds;
use crate::problem::Problem;

const VOLUMES: Bounds = Bounds {
    least: 50_000,
    most: 50_000_000,
    words: ("50 ml", "50 L"),
};

/// What a bottle holds up to its stopper, in microlitres.
///
/// # Errors
/// Outside 50 ml to 50 L.
pub fn holds(microlitres: i64) -> Result<i64, Problem> {
    VOLUMES.hold(microlitres)
}
