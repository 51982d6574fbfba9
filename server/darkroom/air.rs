//! Room air: how often an hour it changes, how long until what was given off has
//! gone, how much exhaust is wanted, and which baths may not start without any.
//!
//! Nothing here calls air good. Clearing times assume that nothing gives off any more:
//! they hold after the trays are covered or emptied. Sources: CDC 2003 environmental
//! infection control guidelines, Table B.1 (decay, and a mixing factor of 1 to 10);
//! International Mechanical Code 2018, Table 403.3.1.1 (exhaust of darkrooms).

use serde::{Deserialize, Serialize};

use super::incompatibility::{Group, Groups};
use super::quantities::{
    Area, Flow, Microlitres, QuantityError, Seconds, TenthsMm, Thousandths, divide_down,
    divide_half_up,
};

/// Exhaust of a darkroom for each square metre of floor: 1.0 cfm/ft², which is
/// 5.08 L/s·m² exactly. Source: IMC 2018, Table 403.3.1.1.
pub const IMC_2018_PER_M2: Flow = Flow::of(5_080_000);

/// The same by ASHRAE 62.1, 5.0 L/s·m²: from memory.
pub const ASHRAE_62_1_PER_M2: Flow = Flow::of(5_000_000);

/// The natural logarithm of ten, in parts per billion.
const LN_10_PPB: i128 = 2_302_585_093;

/// A square metre in hundredths of a square millimetre.
const SQUARE_METRE: i128 = 100_000_000;

/// Why there is no figure.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum AirError {
    /// A space of no volume.
    #[error("a space has some volume")]
    NoVolume,
    /// Air that does not move clears nothing.
    #[error("air that does not move clears nothing")]
    NoFlow,
    /// A mixing factor below 1 or above 10.
    #[error("a mixing factor lies between 1 and 10")]
    Mixing,
    /// No time over which an average could be taken.
    #[error("an average is taken over some time")]
    NoTime,
    /// Beyond what 64 bits hold.
    #[error(transparent)]
    Quantity(#[from] QuantityError),
}

/// By how much clearing takes longer than where the air mixes perfectly: 1 to 10, in
/// tenths. Source of the range: CDC 2003, Table B.1.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(try_from = "i64", into = "i64")]
pub struct MixingFactor(u8);

impl MixingFactor {
    /// Where nobody said: 3, from memory.
    pub const USUAL: Self = Self(30);

    /// From tenths, 10 to 100.
    ///
    /// # Errors
    /// [`AirError::Mixing`] outside.
    pub fn new(tenths: i64) -> Result<Self, AirError> {
        let tenths = u8::try_from(tenths).map_err(|_| AirError::Mixing)?;
        match tenths {
            10..=100 => Ok(Self(tenths)),
            _ => Err(AirError::Mixing),
        }
    }

    /// In tenths.
    #[must_use]
    pub const fn tenths(self) -> u8 {
        self.0
    }
}

impl TryFrom<i64> for MixingFactor {
    type Error = AirError;

    fn try_from(tenths: i64) -> Result<Self, AirError> {
        Self::new(tenths)
    }
}

impl From<MixingFactor> for i64 {
    fn from(factor: MixingFactor) -> i64 {
        i64::from(factor.0)
    }
}

/// How much of what was in the air has gone.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Cleared {
    /// 90 %.
    Ninety,
    /// 99 %.
    NinetyNine,
    /// 99.9 %.
    NinetyNinePointNine,
}

impl Cleared {
    /// All of them, the least first.
    pub const ALL: [Self; 3] = [Self::Ninety, Self::NinetyNine, Self::NinetyNinePointNine];

    /// To a tenth how many times over: 99 % is a tenth of a tenth.
    #[must_use]
    pub const fn tenfolds(self) -> u8 {
        match self {
            Self::Ninety => 1,
            Self::NinetyNine => 2,
            Self::NinetyNinePointNine => 3,
        }
    }
}

/// The volume of a space of this floor and height, rounded half up to a microlitre.
///
/// # Errors
/// [`QuantityError::TooLarge`] beyond 64 bits.
pub fn space_volume(floor: Area, height: TenthsMm) -> Result<Microlitres, QuantityError> {
    // Hundredths of mm² by tenths of mm are thousandths of mm³, and a mm³ is a µl.
    let thousandths = i128::from(floor.get()) * i128::from(height.get());
    Microlitres::new(divide_half_up(thousandths, 1_000)?)
}

/// Air changes an hour, n = Q/V, in thousandths, rounded half up.
///
/// # Errors
/// [`AirError::NoVolume`]; beyond 64 bits.
pub fn air_changes(flow: Flow, volume: Microlitres) -> Result<Thousandths, AirError> {
    if volume == Microlitres::ZERO {
        return Err(AirError::NoVolume);
    }
    let an_hour = i128::from(flow.get()) * 3_600 * 1_000;
    let changes = divide_half_up(an_hour, i128::from(volume.get()))?;
    Ok(Thousandths::new(changes)?)
}

/// How long until so much has gone, t = −ln(f)/n × mixing factor, in whole seconds
/// rounded up: from the moment on at which nothing gives off any more. Source: CDC
/// 2003, Table B.1.
///
/// # Errors
/// [`AirError::NoFlow`], [`AirError::NoVolume`]; beyond 64 bits.
pub fn clearing_time(
    flow: Flow,
    volume: Microlitres,
    cleared: Cleared,
    mixing: MixingFactor,
) -> Result<Seconds, AirError> {
    if flow == Flow::ZERO {
        return Err(AirError::NoFlow);
    }
    if volume == Microlitres::ZERO {
        return Err(AirError::NoVolume);
    }
    let folds = i128::from(cleared.tenfolds()) * LN_10_PPB * i128::from(mixing.tenths());
    let above = folds * i128::from(volume.get());
    // Parts per billion, and tenths of the mixing factor.
    let below = i128::from(flow.get()) * 10_000_000_000;
    let seconds = divide_down(above + below - 1, below)?;
    Ok(Seconds::new(seconds)?)
}

/// The exhaust a floor wants at so much a square metre, rounded half up.
///
/// # Errors
/// [`QuantityError::TooLarge`] beyond 64 bits.
pub fn exhaust_wanted(floor: Area, per_m2: Flow) -> Result<Flow, QuantityError> {
    let scaled = i128::from(floor.get()) * i128::from(per_m2.get());
    Flow::new(divide_half_up(scaled, SQUARE_METRE)?)
}

/// What is known of a space's exhaust.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Exhaust {
    /// Nobody measured it, or what was measured is nothing.
    Unmeasured,
    /// Measured, and nobody knows how much is wanted.
    Measured,
    /// Measured, and less than is wanted: by so much.
    Short(Flow),
    /// Measured, and no less than is wanted. That does not make the air good.
    AsWanted,
}

/// Holds measured exhaust against what is wanted. Nothing measured is unmeasured.
#[must_use]
pub fn judge_exhaust(measured: Option<Flow>, wanted: Option<Flow>) -> Exhaust {
    let moving = measured.filter(|flow| *flow > Flow::ZERO);
    match (moving, wanted) {
        (None, _) => Exhaust::Unmeasured,
        (Some(_), None) => Exhaust::Measured,
        (Some(measured), Some(wanted)) => wanted
            .minus(measured)
            .ok()
            .filter(|missing| *missing > Flow::ZERO)
            .map_or(Exhaust::AsWanted, Exhaust::Short),
    }
}

/// Air changes an hour on average where a space is aired for a part of the time only,
/// in thousandths, rounded down. It never counts as exhaust.
///
/// # Errors
/// [`AirError::NoTime`] for an average over nothing; beyond 64 bits.
pub fn average_air_changes(
    while_aired: Thousandths,
    aired: Seconds,
    over: Seconds,
) -> Result<Thousandths, AirError> {
    if over == Seconds::ZERO {
        return Err(AirError::NoTime);
    }
    let scaled = i128::from(while_aired.get()) * i128::from(aired.min(over).get());
    Ok(Thousandths::new(divide_down(
        scaled,
        i128::from(over.get()),
    )?)?)
}

/// What may not start without measured exhaust.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum NeedsExhaust {
    /// A toner.
    Toner,
    /// Glacial acid.
    GlacialAcid,
    /// Ammonia.
    Ammonia,
}

/// Codes of what gives off something caustic: of ammonia and its solutions, from memory.
const CAUSTIC_VAPOUR: [&str; 3] = ["H314", "H331", "H335"];

/// Whether a product may not start without measured exhaust, by its kind, its groups and
/// the H codes it is supplied with, never by its name.
///
/// Of the acids at this bench only one near pure is both corrosive (H314) and flammable
/// (H226): acetic acid in CLP Annex VI, H codes as shown by INRS. Ammonia is alkaline, or
/// says H314, H331 or H335; an ammonium salt in acid gives off none: from memory.
#[must_use]
pub fn needs_exhaust(is_toner: bool, groups: Groups, h_codes: &[String]) -> Option<NeedsExhaust> {
    let says = |code: &str| h_codes.iter().any(|each| each == code);
    let is_acid = groups.has(Group::Acid) || groups.has(Group::StopBath);
    let is_alkaline = groups.has(Group::Alkali) || groups.has(Group::StrongAlkali);
    if is_toner {
        Some(NeedsExhaust::Toner)
    } else if is_acid {
        (says("H314") && says("H226")).then_some(NeedsExhaust::GlacialAcid)
    } else {
        let gives_off = is_alkaline || CAUSTIC_VAPOUR.into_iter().any(says);
        (groups.has(Group::Ammonium) && gives_off).then_some(NeedsExhaust::Ammonia)
    }
}
