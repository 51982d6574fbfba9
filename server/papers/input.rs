//! What sizes and classes may be.

use super::SilverFigures;
use crate::input::Bounds;
use crate::problem::{Problem, Problems};

const SIDES: Bounds = Bounds {
    least: 100,
    most: 20_000,
    words: ("10 mm", "2000 mm"),
};

const COATINGS: Bounds = Bounds {
    least: 1,
    most: 10_000,
    words: ("0.001 g/m²", "10 g/m²"),
};

const SHARES: Bounds = Bounds {
    least: 0,
    most: 1_000_000_000,
    words: ("0 %", "100 %"),
};

const CARRIED: Bounds = Bounds {
    least: 1_000,
    most: 2_000_000,
    words: ("1 ml/m²", "2000 ml/m²"),
};

/// What a square metre carries into the next bath, in microlitres.
///
/// # Errors
/// Outside 1 to 2000 ml.
pub fn carry_over(microlitres: i64) -> Result<i64, Problem> {
    CARRIED.hold(microlitres)
}

/// What is known of a paper's silver: in bounds, and rising from least to most.
/// The fields are called as the struct calls them.
#[must_use]
pub fn silver(figures: &SilverFigures) -> Problems {
    let mut problems = Problems::default();
    let coating = [
        ("least_mg_per_m2", figures.least_mg_per_m2),
        ("usual_mg_per_m2", figures.usual_mg_per_m2),
        ("most_mg_per_m2", figures.most_mg_per_m2),
    ];
    let kept = [
        ("least_kept_ppb", figures.least_kept_ppb),
        ("usual_kept_ppb", figures.usual_kept_ppb),
        ("most_kept_ppb", figures.most_kept_ppb),
    ];
    for (figures, bounds) in [(coating, COATINGS), (kept, SHARES)] {
        for (field, figure) in figures {
            problems.take(field, bounds.hold(figure));
        }
        let [(field, least), (_, usual), (_, most)] = figures;
        if least > usual || usual > most {
            problems.add(field, Problem::NotRising);
        }
    }
    problems
}

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
