//! Steady replenishment and the bromide developing releases. Source: mass balance
//! and stoichiometry, one bromide for each silver. Questions for a
//! printer's own sums; the bench shows bromide only where a product sets a limit.

use super::quantities::{
    Area, Micrograms, Microlitres, Nanolitres, Ppb, QuantityError, divide_half_up,
};
use super::wear::SheetsPerLitre;

/// Atomic weights in ten-thousandths, IUPAC abridged values: silver 107.8682,
/// bromine 79.904 (conventional), potassium 39.0983.
const SILVER: i128 = 1_078_682;
const BROMINE: i128 = 799_040;
const POTASSIUM: i128 = 390_983;

/// Why nothing can be computed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum ReplenishmentError {
    /// A steady state is above 0 and at most 1.
    #[error("a steady used fraction is above 0 and at most 1")]
    Fraction,
    /// A share above 1.
    #[error("a share is between 0 and 1")]
    Share,
    /// A limit, or a bath, of nothing.
    #[error("a limit and a bath are more than nothing")]
    Nothing,
    /// Beyond what 64 bits hold.
    #[error(transparent)]
    Quantity(#[from] QuantityError),
}

/// Fresh solution to add per sheet of 8×10 in so that a bath stays at the used
/// fraction u*: r = 1/(K·u*) litres, in nanolitres, rounded half up. Source: at
/// the steady state what comes in equals what is spent.
///
/// # Errors
/// [`ReplenishmentError::Fraction`] for u* outside (0, 1].
pub fn replenishment(
    capacity: SheetsPerLitre,
    steady: Ppb,
) -> Result<Nanolitres, ReplenishmentError> {
    if steady == Ppb::ZERO || steady > Ppb::ONE {
        return Err(ReplenishmentError::Fraction);
    }
    let scaled: i128 = 1_000_000_000 * 1_000 * 1_000_000_000;
    let divisor = i128::from(capacity.get()) * i128::from(steady.get());
    Ok(Nanolitres::new(divide_half_up(scaled, divisor)?)?)
}

/// Silver developed in sheets: n·A·s·f in micrograms, rounded half up, f the
/// share kept in the image.
///
/// # Errors
/// [`ReplenishmentError::Share`] for f above 1.
pub fn silver_developed(
    sheets: u32,
    area: Area,
    coating_mg_per_m2: u32,
    kept: Ppb,
) -> Result<Micrograms, ReplenishmentError> {
    if kept > Ppb::ONE {
        return Err(ReplenishmentError::Share);
    }
    let developed = i128::from(sheets)
        .checked_mul(i128::from(area.get()))
        .and_then(|total| total.checked_mul(i128::from(coating_mg_per_m2)))
        .and_then(|total| total.checked_mul(i128::from(kept.get())))
        .ok_or(QuantityError::TooLarge)?;
    Ok(Micrograms::new(divide_half_up(
        developed,
        100_000 * 1_000_000_000,
    )?)?)
}

/// Bromide that developing releases, as bromine, in micrograms, rounded half up:
/// one atom for each atom of silver reduced (0.7408 g a gram). An upper bound:
/// the coating counts as pure silver bromide.
///
/// # Errors
/// [`QuantityError::TooLarge`] beyond 64 bits.
pub fn bromide_released(developed: Micrograms) -> Result<Micrograms, QuantityError> {
    Micrograms::new(divide_half_up(
        i128::from(developed.get()) * BROMINE,
        SILVER,
    )?)
}

/// The same bromide as potassium bromide (1.1032 g a gram of silver).
///
/// # Errors
/// [`QuantityError::TooLarge`] beyond 64 bits.
pub fn potassium_bromide_released(developed: Micrograms) -> Result<Micrograms, QuantityError> {
    Micrograms::new(divide_half_up(
        i128::from(developed.get()) * (BROMINE + POTASSIUM),
        SILVER,
    )?)
}

/// The reached share of a product's bromide limit (milligrams of bromide per
/// litre) in a bath, in parts per billion, rounded down.
///
/// # Errors
/// [`ReplenishmentError::Nothing`] for a limit or a volume of nothing.
pub fn bromide_used(
    bromide: Micrograms,
    volume: Microlitres,
    limit_mg_per_litre: u32,
) -> Result<Ppb, ReplenishmentError> {
    let limit = i128::from(volume.get()) * i128::from(limit_mg_per_litre);
    if limit == 0 {
        return Err(ReplenishmentError::Nothing);
    }
    Ok(Ppb::of_whole(i128::from(bromide.get()) * 1_000, limit)?)
}
