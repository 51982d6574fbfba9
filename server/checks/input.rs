//! What may be said of room checks and of what was found.

use super::Measure;
use crate::identity::names::text;
use crate::input::Bounds;
use crate::problem::{Problem, Problems};

/// The longest unit.
const UNIT_LENGTH: usize = 20;

const DAYS: Bounds = Bounds {
    least: 1,
    most: 1_830,
    words: ("1", "1830"),
};

const FIGURES: Bounds = Bounds {
    least: 0,
    most: 1_000_000_000,
    words: ("0", "1000000"),
};

/// Days until a check is due again.
///
/// # Errors
/// Outside 1 to 1830.
pub fn days(count: i64) -> Result<i32, Problem> {
    DAYS.hold_as(count)
}

/// What was measured, or an end of what passes, in thousandths of the unit.
///
/// # Errors
/// Outside 0 to a million.
pub fn figure(thousandths: i64) -> Result<i64, Problem> {
    FIGURES.hold(thousandths)
}

/// What is measured, from its unit and the ends of what passes; nothing without any.
///
/// # Errors
/// `unit` missing or too long; `most` below `least`.
pub fn measure(
    unit: &str,
    least_thousandths: Option<i64>,
    most_thousandths: Option<i64>,
) -> Result<Option<Measure>, Problems> {
    let unit = text(unit, UNIT_LENGTH).map_err(|problem| Problems::one("unit", problem))?;
    let ends = (least_thousandths, most_thousandths);
    match (unit.is_empty(), ends) {
        (true, (None, None)) => Ok(None),
        (true, _) => Err(Problems::one("unit", Problem::Missing)),
        (false, (Some(least), Some(most))) if least > most => {
            Err(Problems::one("most", Problem::LeastAboveMost))
        }
        (false, _) => Ok(Some(Measure {
            unit,
            least_thousandths,
            most_thousandths,
        })),
    }
}
