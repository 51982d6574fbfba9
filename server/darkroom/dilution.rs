//! Dilution 1+N, by definition one part concentrate and N parts water. "1:N" is read in two
//! ways and never used.
//!
//! Rounding: concentrate is rounded half up to a whole microlitre, once; water is
//! the remainder, so the parts always add up to the volume asked for.

use serde::{Deserialize, Serialize};

use super::quantities::{Microlitres, QuantityError, divide_half_up};

/// Why a dilution cannot be computed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum DilutionError {
    /// More than 10,000 parts of water.
    #[error("a dilution has between 0 and 10,000 parts of water")]
    PartsOfWater,
    /// No volume, or no concentrate, to compute with.
    #[error("there is nothing to dilute")]
    Nothing,
    /// The wanted dilution is as strong as, or stronger than, the present one.
    #[error("adding water only ever makes a solution weaker")]
    NotWeaker,
    /// Beyond what 64 bits hold.
    #[error(transparent)]
    Quantity(#[from] QuantityError),
}

/// 1+N with N in thousandths of a part, 0 (ready to use) to 10,000 parts.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(try_from = "i64", into = "i64")]
pub struct Dilution(i64);

impl TryFrom<i64> for Dilution {
    type Error = DilutionError;

    fn try_from(parts_of_water_thousandths: i64) -> Result<Self, DilutionError> {
        Self::new(parts_of_water_thousandths)
    }
}

impl From<Dilution> for i64 {
    fn from(dilution: Dilution) -> i64 {
        dilution.0
    }
}

/// What goes into the graduate: the two add up to the volume exactly.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Parts {
    /// Concentrate in microlitres.
    #[serde(rename = "concentrate_microlitres")]
    pub concentrate: Microlitres,
    /// Water in microlitres.
    #[serde(rename = "water_microlitres")]
    pub water: Microlitres,
}

impl Dilution {
    /// Undiluted: ready to use.
    pub const NONE: Self = Self(0);

    /// From parts of water in thousandths: 1+9 is 9000; 0 to 10,000,000.
    ///
    /// # Errors
    /// [`DilutionError::PartsOfWater`] outside that range.
    pub fn new(parts_of_water_thousandths: i64) -> Result<Self, DilutionError> {
        if (0..=10_000_000).contains(&parts_of_water_thousandths) {
            Ok(Self(parts_of_water_thousandths))
        } else {
            Err(DilutionError::PartsOfWater)
        }
    }

    /// Parts of water in thousandths.
    #[must_use]
    pub const fn parts_of_water_thousandths(self) -> i64 {
        self.0
    }

    /// All parts together, 1+N, in thousandths.
    fn all_parts(self) -> i128 {
        i128::from(self.0) + 1_000
    }

    /// The dilution two measured parts make: N = water / concentrate, rounded
    /// half up to a thousandth.
    ///
    /// # Errors
    /// [`DilutionError::Nothing`] without concentrate; [`DilutionError::PartsOfWater`] beyond 1+10,000.
    pub fn from_parts(concentrate: Microlitres, water: Microlitres) -> Result<Self, DilutionError> {
        if concentrate == Microlitres::ZERO {
            return Err(DilutionError::Nothing);
        }
        let parts = i128::from(water.get()) * 1_000;
        Self::new(divide_half_up(parts, i128::from(concentrate.get()))?)
    }
}

/// Concentrate and water for a volume V: concentrate V/(1+N) rounded half up to
/// a microlitre, water the remainder. Source: the definition of 1+N.
///
/// # Errors
/// [`DilutionError::Nothing`] for no volume.
pub fn parts_for_volume(dilution: Dilution, volume: Microlitres) -> Result<Parts, DilutionError> {
    if volume == Microlitres::ZERO {
        return Err(DilutionError::Nothing);
    }
    let scaled = i128::from(volume.get()) * 1_000;
    let concentrate = Microlitres::new(divide_half_up(scaled, dilution.all_parts())?)?;
    Ok(Parts {
        concentrate,
        water: volume.minus(concentrate)?,
    })
}

/// The volume c(1+N) all of a concentrate c makes, and its water; the volume is
/// rounded half up to a microlitre. Source: the definition of 1+N.
///
/// # Errors
/// [`DilutionError::Nothing`] without concentrate; [`DilutionError::Quantity`] beyond 64 bits.
pub fn volume_from_concentrate(
    dilution: Dilution,
    concentrate: Microlitres,
) -> Result<Microlitres, DilutionError> {
    if concentrate == Microlitres::ZERO {
        return Err(DilutionError::Nothing);
    }
    let scaled = i128::from(concentrate.get()) * dilution.all_parts();
    Ok(Microlitres::new(divide_half_up(scaled, 1_000)?)?)
}

/// Water to add to a volume V at 1+N for the weaker 1+M: V(1+M)/(1+N) − V,
/// rounded half up to a microlitre. Source: the concentrate in it stays the same.
///
/// # Errors
/// [`DilutionError::NotWeaker`] unless M > N; [`DilutionError::Nothing`] for no volume.
pub fn water_to_weaken(
    volume: Microlitres,
    from: Dilution,
    to: Dilution,
) -> Result<Microlitres, DilutionError> {
    if volume == Microlitres::ZERO {
        return Err(DilutionError::Nothing);
    }
    if to <= from {
        return Err(DilutionError::NotWeaker);
    }
    let added = i128::from(volume.get()) * (to.all_parts() - from.all_parts());
    Ok(Microlitres::new(divide_half_up(added, from.all_parts())?)?)
}
