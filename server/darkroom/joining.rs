//! What may join a mix. Dead solution is never laundered: neither topping up nor
//! pouring together may turn a mix that should be replaced into a good one. Common
//! practice, no source.

use super::quantities::{Moment, Ppb, QuantityError};
use super::state::{MixState, Origin};
use super::verdict::{Measure, fractions, readings_say_replace};

/// Which of two mixes is meant.
#[derive(Clone, Copy, Debug, PartialEq, Eq, serde::Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Side {
    /// The mix that is poured into, or topped up.
    Receiving,
    /// The mix that is poured.
    Poured,
}

/// Why nothing may be added.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum JoinRefused {
    /// They are different products.
    #[error("different products are not poured together")]
    OtherProduct,
    /// They have different dilutions.
    #[error("different dilutions are not poured together")]
    OtherDilution,
    /// This fraction of that side is used up.
    #[error("a mix that is used up is not made good by adding to it")]
    UsedUp(Side, Measure),
    /// That side is flagged as contaminated.
    #[error("a contaminated mix is not added to or poured into another")]
    Contaminated(Side),
    /// A check of that side failed.
    #[error("a mix that failed a check is not added to or poured into another")]
    CheckFailed(Side),
    /// A reading of that side says Replace: clearing, emergence or measured silver.
    #[error("a mix whose readings say replace is not added to or poured into another")]
    ReadingOver(Side),
    /// Nobody knows how that side began.
    #[error("a mix of unknown origin or age is not added to or poured into another")]
    UnknownStart(Side),
    /// A fraction lies beyond 64 bits.
    #[error(transparent)]
    Quantity(#[from] QuantityError),
}

fn sound(mix: &MixState, side: Side, now: Moment) -> Result<(), JoinRefused> {
    if mix.origin == Origin::Unknown {
        return Err(JoinRefused::UnknownStart(side));
    }
    if mix.contaminated.is_some() {
        return Err(JoinRefused::Contaminated(side));
    }
    if mix.failed_check.is_some() {
        return Err(JoinRefused::CheckFailed(side));
    }
    if readings_say_replace(mix) {
        return Err(JoinRefused::ReadingOver(side));
    }
    let full = fractions(mix, now)?
        .into_iter()
        .find(|(_, used)| *used >= Ppb::LIMIT);
    full.map_or(Ok(()), |(measure, _)| {
        Err(JoinRefused::UsedUp(side, measure))
    })
}

/// Whether fresh solution may be added to a mix. An extension does not change that.
///
/// # Errors
/// [`JoinRefused`] says why not.
pub fn may_top_up(
    mix: &MixState,
    same_product: bool,
    same_dilution: bool,
    now: Moment,
) -> Result<(), JoinRefused> {
    if !same_product {
        return Err(JoinRefused::OtherProduct);
    }
    if !same_dilution {
        return Err(JoinRefused::OtherDilution);
    }
    sound(mix, Side::Receiving, now)
}

/// Whether one mix may be poured into another. An extension does not change that.
///
/// # Errors
/// [`JoinRefused`] says why not.
pub fn may_pour_together(
    receiving: &MixState,
    poured: &MixState,
    same_product: bool,
    same_dilution: bool,
    now: Moment,
) -> Result<(), JoinRefused> {
    may_top_up(receiving, same_product, same_dilution, now)?;
    sound(poured, Side::Poured, now)
}
