//! Other people's units, exactly. Each is a ratio of whole numbers, so a
//! conversion is rounded once, at its end. Source: NIST SP 811 App. B and
//! Handbook 44 App. C, as computed with an independent unit library.

use serde::{Deserialize, Serialize};

use super::quantities::{Micrograms, Microlitres, QuantityError, divide_half_up};

/// A unit of volume.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum VolumeUnit {
    /// 1 ml.
    Millilitre,
    /// 1 l.
    Litre,
    /// 3.785411784 l.
    UsGallon,
    /// 946.352946 ml.
    UsQuart,
    /// 473.176473 ml.
    UsPint,
    /// 29.5735295625 ml.
    UsFluidOunce,
    /// 4.54609 l.
    ImperialGallon,
    /// 568.26125 ml.
    ImperialPint,
    /// 28.4130625 ml.
    ImperialFluidOunce,
}

impl VolumeUnit {
    /// One of it in ten-millionths of a microlitre, exact.
    const fn ten_millionths_of_a_microlitre(self) -> i128 {
        match self {
            Self::Millilitre => 10_000_000_000,
            Self::Litre => 10_000_000_000_000,
            Self::UsGallon => 37_854_117_840_000,
            Self::UsQuart => 9_463_529_460_000,
            Self::UsPint => 4_731_764_730_000,
            Self::UsFluidOunce => 295_735_295_625,
            Self::ImperialGallon => 45_460_900_000_000,
            Self::ImperialPint => 5_682_612_500_000,
            Self::ImperialFluidOunce => 284_130_625_000,
        }
    }
}

/// A volume in microlitres, rounded half up, from thousandths of another unit.
///
/// # Errors
/// [`QuantityError`] below 0 or beyond 64 bits.
pub fn volume_in_microlitres(
    thousandths: i64,
    unit: VolumeUnit,
) -> Result<Microlitres, QuantityError> {
    let scaled = i128::from(thousandths) * unit.ten_millionths_of_a_microlitre();
    Microlitres::new(divide_half_up(scaled, 10_000_000_000)?)
}

/// A volume in thousandths of a unit, rounded half up.
///
/// # Errors
/// None in practice: no unit is smaller than a microlitre.
pub fn volume_in_unit_thousandths(
    volume: Microlitres,
    unit: VolumeUnit,
) -> Result<i64, QuantityError> {
    let scaled = i128::from(volume.get()) * 10_000_000_000;
    divide_half_up(scaled, unit.ten_millionths_of_a_microlitre())
}

/// A unit of mass.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum MassUnit {
    /// 1 mg.
    Milligram,
    /// 1 g.
    Gram,
    /// 1 kg.
    Kilogram,
    /// 64.79891 mg.
    Grain,
    /// 28.349523125 g (avoirdupois).
    Ounce,
    /// 453.59237 g (avoirdupois).
    Pound,
}

impl MassUnit {
    /// One of it in thousandths of a microgram, exact.
    const fn nanograms(self) -> i128 {
        match self {
            Self::Milligram => 1_000_000,
            Self::Gram => 1_000_000_000,
            Self::Kilogram => 1_000_000_000_000,
            Self::Grain => 64_798_910,
            Self::Ounce => 28_349_523_125,
            Self::Pound => 453_592_370_000,
        }
    }
}

/// A mass in micrograms, rounded half up, from thousandths of another unit.
///
/// # Errors
/// [`QuantityError`] below 0 or beyond 64 bits.
pub fn mass_in_micrograms(thousandths: i64, unit: MassUnit) -> Result<Micrograms, QuantityError> {
    let scaled = i128::from(thousandths) * unit.nanograms();
    Micrograms::new(divide_half_up(scaled, 1_000_000)?)
}
