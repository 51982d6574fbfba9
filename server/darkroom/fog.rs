//! How long paper may lie in the light of a lamp or a screen. Source: ANSI
//! IT2.26-1998, *Photographic Materials - Determination of Safelight Conditions*:
//! at most half the geometric mean of the longest exposure that does nothing
//! detectable to the paper and the shortest one that does. What is said where only
//! one of the two was found is common practice, no source.

use super::quantities::{QuantityError, Seconds};

/// Why an exposure in steps says nothing.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum FogError {
    /// Neither a clean step nor a fogged one.
    #[error("at least one step was exposed")]
    NoStep,
    /// A step of less than a second.
    #[error("a step is at least a second long")]
    NoTime,
    /// The fogged step is not the longer one.
    #[error("the step that fogged is longer than the one that stayed clean")]
    OutOfOrder,
    /// Beyond what 64 bits hold.
    #[error(transparent)]
    Quantity(#[from] QuantityError),
}

/// What was found on a sheet that lay in the light step by step.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Steps {
    /// The longest step that shows nothing, in seconds; none where the shortest one
    /// fogged already.
    pub longest_clean: Option<Seconds>,
    /// The shortest step that shows fog, in seconds; none where nothing fogged.
    pub shortest_fogged: Option<Seconds>,
}

/// How long paper may lie there: whole seconds, rounded down.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SafeTime {
    /// From a clean and a fogged step.
    Reckoned(Seconds),
    /// From the longest step alone, for nothing fogged: half of it. The true time is
    /// longer, nobody knows by how much.
    NothingFogged(Seconds),
    /// None at all: the shortest step fogged already.
    AllFogged,
}

impl SafeTime {
    /// The time, where there is one.
    #[must_use]
    pub const fn seconds(self) -> Option<Seconds> {
        match self {
            Self::Reckoned(time) | Self::NothingFogged(time) => Some(time),
            Self::AllFogged => None,
        }
    }
}

/// The time that steps allow: ½·√(t0·t1), rounded down to the second, from the
/// longest clean step t0 and the shortest fogged one t1, both at least 1 s and t1 the
/// longer; t0/2 where nothing fogged; none where everything did. It is at least
/// t0/2 and at most t1/2, each rounded down. The root is taken of whole numbers, so
/// nothing is approximate. Source: ANSI IT2.26-1998.
///
/// # Errors
/// [`FogError`]: no step at all, one of no time, or steps out of order.
pub fn safe_time(steps: Steps) -> Result<SafeTime, FogError> {
    let given = [steps.longest_clean, steps.shortest_fogged];
    if given.iter().flatten().any(|step| *step == Seconds::ZERO) {
        return Err(FogError::NoTime);
    }
    match given {
        [None, None] => Err(FogError::NoStep),
        [None, Some(_)] => Ok(SafeTime::AllFogged),
        [Some(clean), None] => Ok(SafeTime::NothingFogged(half(clean.get().into())?)),
        [Some(clean), Some(fogged)] if clean >= fogged => Err(FogError::OutOfOrder),
        [Some(clean), Some(fogged)] => {
            let product = i128::from(clean.get()) * i128::from(fogged.get());
            Ok(SafeTime::Reckoned(half(product.isqrt())?))
        }
    }
}

fn half(seconds: i128) -> Result<Seconds, QuantityError> {
    let half = i64::try_from(seconds / 2).map_err(|_| QuantityError::TooLarge)?;
    Seconds::new(half)
}
