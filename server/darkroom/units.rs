//! Other people's units, exactly. Each is a ratio of whole numbers, so a
//! conversion is rounded once, at its end. Source: NIST SP 811 App. B and
//! Handbook 44 App. C, as computed with an independent unit library.

use serde::{Deserialize, Serialize};

use super::quantities::{Area, Flow, Micrograms, Microlitres, QuantityError, divide_half_up};

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
    /// 1000 l.
    CubicMetre,
    /// 28.316846592 l.
    CubicFoot,
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
            Self::CubicMetre => 10_000_000_000_000_000,
            Self::CubicFoot => 283_168_465_920_000,
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

/// A unit of area.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum AreaUnit {
    /// 1 m².
    SquareMetre,
    /// 0.09290304 m².
    SquareFoot,
}

impl AreaUnit {
    /// One of it in hundredths of a square millimetre, exact.
    const fn hundredths_mm2(self) -> i128 {
        match self {
            Self::SquareMetre => 100_000_000,
            Self::SquareFoot => 9_290_304,
        }
    }
}

/// An area from thousandths of another unit, rounded half up.
///
/// # Errors
/// [`QuantityError`] below 0 or beyond 64 bits.
pub fn area_of_unit(thousandths: i64, unit: AreaUnit) -> Result<Area, QuantityError> {
    let scaled = i128::from(thousandths) * unit.hundredths_mm2();
    Area::new(divide_half_up(scaled, 1_000)?)
}

/// An area in thousandths of a unit, rounded half up.
///
/// # Errors
/// None in practice: both units are larger than what is held.
pub fn area_in_unit_thousandths(area: Area, unit: AreaUnit) -> Result<i64, QuantityError> {
    divide_half_up(i128::from(area.get()) * 1_000, unit.hundredths_mm2())
}

/// A unit of flow.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum FlowUnit {
    /// 1 l/s.
    LitrePerSecond,
    /// 1 m³/h, 0.2777… l/s.
    CubicMetrePerHour,
    /// 1 ft³/min (cfm), 0.4719474432 l/s.
    CubicFootPerMinute,
}

impl FlowUnit {
    /// One of it in microlitres a second as a fraction, exact.
    const fn microlitres_a_second(self) -> (i128, i128) {
        match self {
            Self::LitrePerSecond => (1_000_000, 1),
            Self::CubicMetrePerHour => (2_500_000, 9),
            Self::CubicFootPerMinute => (4_719_474_432, 10_000),
        }
    }
}

/// A flow from thousandths of another unit, rounded half up.
///
/// # Errors
/// [`QuantityError`] below 0 or beyond 64 bits.
pub fn flow_of_unit(thousandths: i64, unit: FlowUnit) -> Result<Flow, QuantityError> {
    let (above, below) = unit.microlitres_a_second();
    let scaled = i128::from(thousandths) * above;
    Flow::new(divide_half_up(scaled, below * 1_000)?)
}

/// A flow in thousandths of a unit, rounded half up.
///
/// # Errors
/// None in practice: no unit is smaller than a microlitre a second.
pub fn flow_in_unit_thousandths(flow: Flow, unit: FlowUnit) -> Result<i64, QuantityError> {
    let (above, below) = unit.microlitres_a_second();
    divide_half_up(i128::from(flow.get()) * below * 1_000, above)
}
