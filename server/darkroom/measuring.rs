//! What a measuring cylinder can show: the concentrate rounded to its graduation,
//! and the dilution that results ("1+9.3, 3 % weaker"). Common practice, no source.

use serde::Serialize;

use super::dilution::{Dilution, DilutionError, Parts, parts_for_volume};
use super::quantities::{Microlitres, QuantityError, divide_half_up};

/// Why a cylinder does not do.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum MeasuringError {
    /// A cylinder has graduations.
    #[error("a cylinder has graduations")]
    NoGraduation,
    /// The concentrate is less than half a graduation.
    #[error("this cylinder is too coarse for so little concentrate; take a finer one")]
    TooCoarse,
    /// Rounded up, the concentrate would be more than the volume.
    #[error("this cylinder is too coarse for so small a volume; take a finer one")]
    MoreThanTheVolume,
    /// The dilution itself.
    #[error(transparent)]
    Dilution(#[from] DilutionError),
    /// Beyond what 64 bits hold.
    #[error(transparent)]
    Quantity(#[from] QuantityError),
}

/// What is measured, and what that makes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Measured {
    /// Concentrate at a graduation and water for the rest of the volume.
    #[serde(flatten)]
    pub parts: Parts,
    /// The dilution that results.
    #[serde(rename = "parts_of_water_thousandths")]
    pub dilution: Dilution,
    /// How much stronger (above 0) or weaker (below 0) than asked, in
    /// thousandths of the asked strength, rounded half away from 0.
    pub strength_change_thousandths: i64,
}

/// Concentrate for a volume rounded half up to a graduation of the cylinder,
/// water for the rest of the volume. Common practice, no source.
///
/// # Errors
/// [`MeasuringError::TooCoarse`] where nothing would be measured,
/// [`MeasuringError::MoreThanTheVolume`] where it would not fit.
pub fn measure(
    dilution: Dilution,
    volume: Microlitres,
    graduation: Microlitres,
) -> Result<Measured, MeasuringError> {
    if graduation == Microlitres::ZERO {
        return Err(MeasuringError::NoGraduation);
    }
    let asked = parts_for_volume(dilution, volume)?;
    let marks = divide_half_up(
        i128::from(asked.concentrate.get()),
        i128::from(graduation.get()),
    )?;
    if marks == 0 {
        return Err(MeasuringError::TooCoarse);
    }
    let marks = u32::try_from(marks).map_err(|_| QuantityError::TooLarge)?;
    let concentrate = graduation.times(marks)?;
    let water = volume
        .minus(concentrate)
        .map_err(|_| MeasuringError::MoreThanTheVolume)?;
    // Asked strength is 1/(1+N), measured c/V: c·(1+N)/V − 1, whatever c was rounded to before.
    let whole = i128::from(volume.get()) * 1_000;
    let all = i128::from(dilution.parts_of_water_thousandths()) + 1_000;
    let over = i128::from(concentrate.get()) * all - whole;
    let magnitude = divide_half_up(over.abs() * 1_000, whole)?;
    Ok(Measured {
        parts: Parts { concentrate, water },
        dilution: Dilution::from_parts(concentrate, water)?,
        strength_change_thousandths: if over < 0 { -magnitude } else { magnitude },
    })
}
