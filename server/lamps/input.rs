//! What may be said of lamps and of their tests.

use crate::input::Bounds;
use crate::problem::Problem;

/// A lamp is tested again after so many months where nobody says otherwise: from
/// memory, no source.
pub const TEST_MONTHS: i32 = 12;

const DISTANCES: Bounds = Bounds {
    least: 500,
    most: 100_000,
    words: ("50 mm", "10 m"),
};

const MONTHS: Bounds = Bounds {
    least: 1,
    most: 60,
    words: ("1", "60"),
};

/// Half of a step of two seconds is a whole one.
const STEPS: Bounds = Bounds {
    least: 2,
    most: 86_400,
    words: ("2 s", "24 h"),
};

/// From a lamp to the nearest paper, in tenths of a millimetre.
///
/// # Errors
/// Outside 50 mm to 10 m.
pub fn distance(tenths_mm: i64) -> Result<i32, Problem> {
    DISTANCES.hold_as(tenths_mm)
}

/// Months until the next test.
///
/// # Errors
/// Outside 1 to 60.
pub fn months(count: i64) -> Result<i32, Problem> {
    MONTHS.hold_as(count)
}

/// How long a strip of the paper lay in the light, in seconds.
///
/// # Errors
/// Outside 2 s to 24 h.
pub fn step(seconds: i64) -> Result<i64, Problem> {
    STEPS.hold(seconds)
}
