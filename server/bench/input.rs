//! What trays may measure.

use crate::input::Bounds;
use crate::problem::Problem;

const SIDES: Bounds = Bounds {
    least: 500,
    most: 30_000,
    words: ("50 mm", "3000 mm"),
};

const DEPTHS: Bounds = Bounds {
    least: 100,
    most: 5_000,
    words: ("10 mm", "500 mm"),
};

const COVERS: Bounds = Bounds {
    least: 10,
    most: 5_000,
    words: ("1 mm", "500 mm"),
};

/// A side of a tray's floor, in tenths of a millimetre.
///
/// # Errors
/// Outside 50 to 3000 mm.
pub fn side(tenths_mm: i64) -> Result<i32, Problem> {
    SIDES.hold_as(tenths_mm)
}

/// From a tray's floor to its rim, in tenths of a millimetre.
///
/// # Errors
/// Outside 10 to 500 mm.
pub fn depth(tenths_mm: i64) -> Result<i32, Problem> {
    DEPTHS.hold_as(tenths_mm)
}

/// How deep a bath must stand to cover a print, in tenths of a millimetre.
///
/// # Errors
/// Outside 1 to 500 mm.
pub fn least_depth(tenths_mm: i64) -> Result<i32, Problem> {
    COVERS.hold_as(tenths_mm)
}

/// Both sides of a floor: the long one first.
///
/// # Errors
/// The short one first.
pub fn in_order(long_tenths_mm: i32, short_tenths_mm: i32) -> Result<(), Problem> {
    match long_tenths_mm < short_tenths_mm {
        true => Err(Problem::SidesSwapped),
        false => Ok(()),
    }
}

/// What covers a print stands below the rim.
///
/// # Errors
/// A tray that could never be filled.
pub fn below_the_rim(least_tenths_mm: i32, depth_tenths_mm: i32) -> Result<(), Problem> {
    match least_tenths_mm > depth_tenths_mm {
        true => Err(Problem::DeeperThanTheTray),
        false => Ok(()),
    }
}
