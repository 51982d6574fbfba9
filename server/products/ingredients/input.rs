//! What may be said of an ingredient.

use crate::darkroom::cas::{CasError, CasNumber};
use crate::input::Bounds;
use crate::problem::Problem;

/// So many ingredients of one product.
pub const MOST: usize = 40;

const SHARES: Bounds = Bounds {
    least: 0,
    most: 1_000_000,
    words: ("0 %", "100 %"),
};

/// A CAS number as sheets print it; empty where the sheet has none.
///
/// # Errors
/// Another shape; a last digit that does not go with the others.
pub fn cas(text: &str) -> Result<Option<String>, Problem> {
    if text.trim().is_empty() {
        return Ok(None);
    }
    match CasNumber::parse(text) {
        Ok(number) => Ok(Some(number.to_string())),
        Err(CasError::Shape) => Err(Problem::NotACas),
        Err(CasError::CheckDigit) => Err(Problem::CasMiscopied),
    }
}

/// A share of the product by mass, in millionths.
///
/// # Errors
/// More than the whole.
pub fn share(millionths: i64) -> Result<i32, Problem> {
    SHARES.hold_as(millionths)
}

/// Both ends of a range, each of which may be open.
///
/// # Errors
/// The lower one above the upper one.
pub fn range(least: Option<i32>, most: Option<i32>) -> Result<(), Problem> {
    match least.zip(most).is_some_and(|(least, most)| least > most) {
        true => Err(Problem::LeastAboveMost),
        false => Ok(()),
    }
}

/// No more than a product may have.
///
/// # Errors
/// Too many.
pub fn count(count: usize) -> Result<(), Problem> {
    match count > MOST {
        true => Err(Problem::TooMany(MOST)),
        false => Ok(()),
    }
}
