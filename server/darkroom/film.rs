//! Film in a fixer that allows it, and clearing time. Film is noted in rolls with
//! its own capacity; frame area is never used for chemistry. Source: the definition
//! of capacity; that twice the fresh clearing time means exhausted is common
//! practice, no source.

use super::quantities::{
    Nanolitres, QuantityError, Seconds, TenthsCelsius, Thousandths, divide_half_up,
};

/// Two clearing times compare only within this difference: 2 °C.
pub const COMPARABLE_TENTHS_CELSIUS: i32 = 20;

/// Why film cannot be computed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum FilmError {
    /// The product is for paper only.
    #[error("this fixer takes paper only")]
    PaperOnly,
    /// No rolls.
    #[error("at least one roll goes through")]
    NoRolls,
    /// A clearing time of nothing.
    #[error("a clearing time is longer than nothing")]
    NoTime,
    /// The two were taken more than 2 °C apart.
    #[error("clearing times more than 2 °C apart do not compare")]
    OtherTemperature,
    /// Beyond what 64 bits hold.
    #[error(transparent)]
    Quantity(#[from] QuantityError),
}

/// Fresh fixer rolls of film spend: n/K litres, in nanolitres, rounded half up
/// once. `capacity` is rolls a litre in thousandths; none for a product that
/// takes paper only.
///
/// # Errors
/// [`FilmError::PaperOnly`] without a capacity, [`FilmError::NoRolls`] for none.
pub fn wear_of_rolls(rolls: u32, capacity: Option<Thousandths>) -> Result<Nanolitres, FilmError> {
    let capacity = capacity
        .filter(|k| *k > Thousandths::ZERO)
        .ok_or(FilmError::PaperOnly)?;
    if rolls == 0 {
        return Err(FilmError::NoRolls);
    }
    let scaled = i128::from(rolls) * 1_000_000_000 * 1_000;
    Ok(Nanolitres::new(divide_half_up(
        scaled,
        i128::from(capacity.get()),
    )?)?)
}

/// A clearing time and the temperature of the fixer.
#[derive(Clone, Copy, Debug, PartialEq, Eq, serde::Serialize, serde::Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Clearing {
    /// Seconds until the film is clear.
    #[serde(rename = "clear_after_seconds")]
    pub time: Seconds,
    /// In tenths of a degree Celsius.
    #[serde(rename = "tenths_celsius")]
    pub temperature: TenthsCelsius,
}

/// Clearing time now against fresh, of the same film, in thousandths, rounded
/// half up; 2000 and more means exhausted (common practice, no source).
///
/// # Errors
/// [`FilmError::NoTime`] for a time of nothing; [`FilmError::OtherTemperature`]
/// more than 2 °C apart.
pub fn clearing_ratio(fresh: Clearing, now: Clearing) -> Result<Thousandths, FilmError> {
    if fresh.time == Seconds::ZERO || now.time == Seconds::ZERO {
        return Err(FilmError::NoTime);
    }
    let apart = (fresh.temperature.get() - now.temperature.get()).abs();
    if apart > COMPARABLE_TENTHS_CELSIUS {
        return Err(FilmError::OtherTemperature);
    }
    let scaled = i128::from(now.time.get()) * 1_000;
    Ok(Thousandths::new(divide_half_up(
        scaled,
        i128::from(fresh.time.get()),
    )?)?)
}
