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

const CELSIUS: Bounds = Bounds {
    least: 0,
    most: 1_000,
    words: ("0 °C", "100 °C"),
};

const GRADUATION: Bounds = Bounds {
    least: 10,
    most: 1_000_000,
    words: ("0.01 ml", "1000 ml"),
};

const GUESS: Bounds = Bounds {
    least: 0,
    most: 1_000_000_000,
    words: ("0 %", "100 %"),
};

/// A temperature of water, taps or concentrate, in tenths of a degree.
///
/// # Errors
/// Outside 0 to 100 °C.
pub fn celsius(tenths: i64) -> Result<i64, Problem> {
    CELSIUS.hold(tenths)
}

/// The graduation of a cylinder, in microlitres.
///
/// # Errors
/// Outside 0.01 to 1000 ml.
pub fn graduation(microlitres: i64) -> Result<i64, Problem> {
    GRADUATION.hold(microlitres)
}

/// A guessed part of capacity or life, in parts per billion.
///
/// # Errors
/// Outside nothing to all.
pub fn guess(ppb: i64) -> Result<i64, Problem> {
    GUESS.hold(ppb)
}
