//! What may be said of a place's air.

use crate::input::Bounds;
use crate::problem::Problem;

/// The usual mixing factor, in tenths: [`crate::darkroom::air::MixingFactor::USUAL`],
/// from memory.
pub const MIXING_TENTHS: i32 = 30;

const FLOORS: Bounds = Bounds {
    least: 50_000_000,
    most: 1_000_000_000_000,
    words: ("0.5 m²", "10000 m²"),
};

const HEIGHTS: Bounds = Bounds {
    least: 10_000,
    most: 300_000,
    words: ("1 m", "30 m"),
};

/// CDC 2003, Table B.1.
const MIXINGS: Bounds = Bounds {
    least: 10,
    most: 100,
    words: ("1", "10"),
};

const WANTED: Bounds = Bounds {
    least: 1_000_000,
    most: 100_000_000_000,
    words: ("1 L/s", "100000 L/s"),
};

/// Nothing moved is a finding too.
const MEASURED: Bounds = Bounds {
    least: 0,
    most: 100_000_000_000,
    words: ("0", "100000 L/s"),
};

const AIRED: Bounds = Bounds {
    least: 60,
    most: 12 * 3_600,
    words: ("1 min", "12 h"),
};

/// A floor, in hundredths of a square millimetre.
///
/// # Errors
/// Outside 0.5 to 10000 m².
pub fn floor(hundredths_mm2: i64) -> Result<i64, Problem> {
    FLOORS.hold(hundredths_mm2)
}

/// A height, in tenths of a millimetre.
///
/// # Errors
/// Outside 1 to 30 m.
pub fn height(tenths_mm: i64) -> Result<i32, Problem> {
    HEIGHTS.hold_as(tenths_mm)
}

/// A mixing factor, in tenths.
///
/// # Errors
/// Outside 1 to 10.
pub fn mixing(tenths: i64) -> Result<i32, Problem> {
    MIXINGS.hold_as(tenths)
}

/// The exhaust that a steward wants, in microlitres a second.
///
/// # Errors
/// Outside 1 to 100000 L/s.
pub fn wanted(ul_per_s: i64) -> Result<i64, Problem> {
    WANTED.hold(ul_per_s)
}

/// A flow that was measured, in microlitres a second.
///
/// # Errors
/// Outside 0 to 100000 L/s.
pub fn measured(ul_per_s: i64) -> Result<i64, Problem> {
    MEASURED.hold(ul_per_s)
}

/// How long a place was aired, in seconds.
///
/// # Errors
/// Outside one minute to twelve hours.
pub fn aired(seconds: i64) -> Result<i64, Problem> {
    AIRED.hold(seconds)
}
