//! What sizes and classes may be.

use crate::input::Bounds;
use crate::problem::Problem;

const SIDES: Bounds = Bounds {
    least: 100,
    most: 20_000,
    words: ("10 mm", "2000 mm"),
};

/// A side of a sheet, in tenths of a millimetre.
///
/// # Errors
/// Outside 10 to 2000 mm.
pub fn side(tenths_mm: i64) -> Result<i32, Problem> {
    SIDES.hold_as(tenths_mm)
}

/// Both sides of a sheet: the long one first.
///
/// # Errors
/// The short one first.
pub fn in_order(long_tenths_mm: i32, short_tenths_mm: i32) -> Result<(), Problem> {
    match long_tenths_mm < short_tenths_mm {
        true => Err(Problem::SidesSwapped),
        false => Ok(()),
    }
}
