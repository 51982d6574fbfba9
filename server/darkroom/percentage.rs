//! Percentage solutions by Pearson's square, all in one unit (weight in weight):
//! parts strong = target − weak, parts weak = strong − target. Source: mass balance.

use serde::{Deserialize, Serialize};

use super::quantities::{Micrograms, QuantityError, divide_half_up};

/// Why a target cannot be mixed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum PercentageError {
    /// Not between 0 and 100 %.
    #[error("a percentage is between 0 and 100")]
    Percent,
    /// The strong solution is no stronger than the weak one.
    #[error("the strong solution must be stronger than the weak one")]
    NotStronger,
    /// The target lies outside the two.
    #[error("the target lies between the two solutions")]
    TargetOutside,
    /// Beyond what 64 bits hold.
    #[error(transparent)]
    Quantity(#[from] QuantityError),
}

/// A percentage by weight in thousandths of a percent: 28 % is 28,000; 0 to 100 %.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(try_from = "i64", into = "i64")]
pub struct Percent(u32);

impl Percent {
    /// From thousandths of a percent.
    ///
    /// # Errors
    /// [`PercentageError::Percent`] outside 0 to 100,000.
    pub fn new(thousandths: i64) -> Result<Self, PercentageError> {
        match u32::try_from(thousandths) {
            Ok(value) if value <= 100_000 => Ok(Self(value)),
            _ => Err(PercentageError::Percent),
        }
    }

    /// Thousandths of a percent.
    #[must_use]
    pub const fn get(self) -> u32 {
        self.0
    }
}

impl TryFrom<i64> for Percent {
    type Error = PercentageError;

    fn try_from(thousandths: i64) -> Result<Self, PercentageError> {
        Self::new(thousandths)
    }
}

impl From<Percent> for i64 {
    fn from(percent: Percent) -> i64 {
        i64::from(percent.0)
    }
}

/// What Pearson's square says: parts by weight, in thousandths.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Square {
    /// Parts of the strong solution.
    pub strong_parts_thousandths: u32,
    /// Parts of the weak one.
    pub weak_parts_thousandths: u32,
}

/// Pearson's square for a target between a strong and a weak solution. The
/// weighted mean of the parts is the target exactly. Source: mass balance.
///
/// # Errors
/// [`PercentageError::NotStronger`] unless strong > weak;
/// [`PercentageError::TargetOutside`] for a target outside the two.
pub fn pearson(strong: Percent, weak: Percent, target: Percent) -> Result<Square, PercentageError> {
    if strong <= weak {
        return Err(PercentageError::NotStronger);
    }
    if target < weak || target > strong {
        return Err(PercentageError::TargetOutside);
    }
    Ok(Square {
        strong_parts_thousandths: target.0 - weak.0,
        weak_parts_thousandths: strong.0 - target.0,
    })
}

/// Weights to take for a total.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Weights {
    /// Of the strong solution, in micrograms.
    #[serde(rename = "strong_micrograms")]
    pub strong: Micrograms,
    /// Of the weak one, in micrograms.
    #[serde(rename = "weak_micrograms")]
    pub weak: Micrograms,
}

/// The weights of both solutions for a total: strong rounded half up to a
/// microgram, weak the remainder, so they add up exactly.
///
/// # Errors
/// None in practice: a square of [`pearson`] has at least one part.
pub fn weights_for(square: Square, total: Micrograms) -> Result<Weights, PercentageError> {
    let strong_parts = i128::from(square.strong_parts_thousandths);
    let all = strong_parts + i128::from(square.weak_parts_thousandths);
    let strong = divide_half_up(i128::from(total.get()) * strong_parts, all)?;
    let strong = Micrograms::new(strong)?;
    Ok(Weights {
        strong,
        weak: total.minus(strong)?,
    })
}
