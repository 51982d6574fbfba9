//! How long prints may take, in seconds.

use crate::input::Bounds;
use crate::problem::Problem;

const FIX: Bounds = Bounds {
    least: 5,
    most: 7_200,
    words: ("5 s", "2 h"),
};

const RINSE: Bounds = Bounds {
    least: 0,
    most: 3_600,
    words: ("0 min", "1 h"),
};

const WASH_AID: Bounds = Bounds {
    least: 5,
    most: 7_200,
    words: ("5 s", "2 h"),
};

const WASH: Bounds = Bounds {
    least: 30,
    most: 86_400,
    words: ("30 s", "24 h"),
};

/// In a fixing bath, or in all of them.
///
/// # Errors
/// Outside 5 s to 2 h.
pub fn fix(seconds: i64) -> Result<i64, Problem> {
    FIX.hold(seconds)
}

/// The rinse after the fixer.
///
/// # Errors
/// Longer than an hour.
pub fn rinse(seconds: i64) -> Result<i64, Problem> {
    RINSE.hold(seconds)
}

/// In the wash aid.
///
/// # Errors
/// Outside 5 s to 2 h.
pub fn wash_aid(seconds: i64) -> Result<i64, Problem> {
    WASH_AID.hold(seconds)
}

/// In the wash.
///
/// # Errors
/// Outside 30 s to 24 h.
pub fn wash(seconds: i64) -> Result<i64, Problem> {
    WASH.hold(seconds)
}
