//! Silver in fixing baths: an estimate, shown with its range. What a pass brings
//! is the coating's silver that is not kept in the image: m = n·A·s·(1 − f). Of
//! two baths the first gains m(1 − β) and the second mβ and what the prints carry
//! over; each loses with the prints what they carry out.
//!
//! Source: mass balance; what a paper holds and keeps is weak evidence.
//!
//! Whole micrograms, every share's rest kept, so that nothing is lost: silver
//! brought in = what the baths gained + what was carried out, to the microgram.

use serde::{Deserialize, Serialize};

use super::quantities::{Area, Micrograms, Microlitres, Ppb, QuantityError, divide_half_up};

/// The first of two fixing baths is used up at 2 g/l. Source: a public teaching
/// site; its handbook origin from memory.
pub const FIRST_BATH_LIMIT_MG_PER_LITRE: u32 = 2_000;
/// A single bath for archival keeping, 0.5 g/l. Same source. No room has it by
/// default: the steward chooses.
pub const ARCHIVAL_LIMIT_MG_PER_LITRE: u32 = 500;
/// β, the share of a pass that the second bath gains: 0.1, from memory.
pub const SECOND_BATH_SHARE: Ppb = Ppb::of(100_000_000);
/// How often a second bath moves up before both are replaced: 3, from memory.
pub const SHIFTS: u32 = 3;

/// Why silver cannot be estimated.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum SilverError {
    /// A share above 1.
    #[error("a share is between 0 and 1")]
    Share,
    /// A bath without volume.
    #[error("a bath has a volume")]
    NoVolume,
    /// The prints would carry over more than the bath holds.
    #[error("prints cannot carry over more than the bath holds")]
    CarriesTooMuch,
    /// A lower end above its upper end.
    #[error("a range runs from its lower end to its upper end")]
    Range,
    /// Beyond what 64 bits hold.
    #[error(transparent)]
    Quantity(#[from] QuantityError),
}

/// A fixing bath's volume and the silver in it.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SilverBath {
    /// In microlitres.
    #[serde(rename = "volume_microlitres")]
    pub volume: Microlitres,
    /// In micrograms.
    #[serde(rename = "silver_micrograms")]
    pub silver: Micrograms,
}

impl SilverBath {
    /// Silver in milligrams per litre, rounded half up.
    ///
    /// # Errors
    /// [`SilverError::NoVolume`] for a bath of nothing.
    pub fn milligrams_per_litre(self) -> Result<u32, SilverError> {
        if self.volume == Microlitres::ZERO {
            return Err(SilverError::NoVolume);
        }
        // 1 µg/µl is 1 g/l.
        let scaled = i128::from(self.silver.get()) * 1_000;
        let value = divide_half_up(scaled, i128::from(self.volume.get()))?;
        Ok(u32::try_from(value).map_err(|_| QuantityError::TooLarge)?)
    }

    /// After fresh solution was added: the silver stays, the volume grows.
    ///
    /// # Errors
    /// [`SilverError::Quantity`] beyond 64 bits.
    pub fn topped_up(self, fresh: Microlitres) -> Result<Self, SilverError> {
        Ok(Self {
            volume: self.volume.plus(fresh)?,
            ..self
        })
    }

    /// Two baths poured together: volume and silver add up.
    ///
    /// # Errors
    /// [`SilverError::Quantity`] beyond 64 bits.
    pub fn poured_together(self, other: Self) -> Result<Self, SilverError> {
        let volume = self.volume.plus(other.volume)?;
        Ok(Self {
            volume,
            silver: self.silver.plus(other.silver)?,
        })
    }

    /// What prints carry out: q·g, rounded half up; and the bath without it.
    fn carried_out(self, carried: Microlitres) -> Result<(Micrograms, Self), SilverError> {
        if self.volume == Microlitres::ZERO {
            return Err(SilverError::NoVolume);
        }
        if carried > self.volume {
            return Err(SilverError::CarriesTooMuch);
        }
        let share = i128::from(self.silver.get()) * i128::from(carried.get());
        let out = Micrograms::new(divide_half_up(share, i128::from(self.volume.get()))?)?;
        Ok((
            out,
            Self {
                silver: self.silver.minus(out)?,
                ..self
            },
        ))
    }

    fn gains(self, silver: Micrograms) -> Result<Self, SilverError> {
        Ok(Self {
            silver: self.silver.plus(silver)?,
            ..self
        })
    }
}

/// Silver dissolved from sheets: n·A·s·(1 − f) in micrograms, rounded half up.
/// `coating_mg_per_m2` is the paper's coating weight (0.5 to 1.6 g/m² and more:
/// weak evidence), `kept` the share f that stays in the image (about half to a fifth).
///
/// # Errors
/// [`SilverError::Share`] for f above 1.
pub fn silver_dissolved(
    sheets: u32,
    area: Area,
    coating_mg_per_m2: u32,
    kept: Ppb,
) -> Result<Micrograms, SilverError> {
    if kept > Ppb::ONE {
        return Err(SilverError::Share);
    }
    // 1/100 mm² · mg/m² = 10⁻⁸ mg = 10⁻⁵ µg; a share adds nine more decimals.
    let coated = i128::from(sheets)
        .checked_mul(i128::from(area.get()))
        .and_then(|total| total.checked_mul(i128::from(coating_mg_per_m2)))
        .and_then(|total| total.checked_mul(i128::from(kept.rest().get())))
        .ok_or(QuantityError::TooLarge)?;
    Ok(Micrograms::new(divide_half_up(
        coated,
        100_000 * 1_000_000_000,
    )?)?)
}

/// What is not known exactly about a paper.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CoatingRange {
    /// The lightest coating, in milligrams of silver per square metre.
    pub lowest_mg_per_m2: u32,
    /// The heaviest.
    pub highest_mg_per_m2: u32,
    /// The least share kept in the image.
    pub least_kept_ppb: Ppb,
    /// The largest.
    pub most_kept_ppb: Ppb,
}

/// From least to most.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct SilverRange {
    /// Light coating, much of it kept.
    #[serde(rename = "least_micrograms")]
    pub least: Micrograms,
    /// Heavy coating, little of it kept.
    #[serde(rename = "most_micrograms")]
    pub most: Micrograms,
}

/// The range to show beside [`silver_dissolved`].
///
/// # Errors
/// [`SilverError::Range`] where an end lies beyond the other; [`SilverError::Share`] above 1.
pub fn silver_range(
    sheets: u32,
    area: Area,
    coating: CoatingRange,
) -> Result<SilverRange, SilverError> {
    if coating.lowest_mg_per_m2 > coating.highest_mg_per_m2
        || coating.least_kept_ppb > coating.most_kept_ppb
    {
        return Err(SilverError::Range);
    }
    Ok(SilverRange {
        least: silver_dissolved(
            sheets,
            area,
            coating.lowest_mg_per_m2,
            coating.most_kept_ppb,
        )?,
        most: silver_dissolved(
            sheets,
            area,
            coating.highest_mg_per_m2,
            coating.least_kept_ppb,
        )?,
    })
}

/// Silver dissolved from rolls of film: rolls · silver a roll · (1 − f), rounded half up.
///
/// # Errors
/// [`SilverError::Share`] for f above 1.
pub fn silver_from_rolls(
    rolls: u32,
    silver_per_roll: Micrograms,
    kept: Ppb,
) -> Result<Micrograms, SilverError> {
    if kept > Ppb::ONE {
        return Err(SilverError::Share);
    }
    let coated = i128::from(rolls)
        .checked_mul(i128::from(silver_per_roll.get()))
        .and_then(|total| total.checked_mul(i128::from(kept.rest().get())))
        .ok_or(QuantityError::TooLarge)?;
    Ok(Micrograms::new(divide_half_up(coated, 1_000_000_000)?)?)
}

/// A single bath after a pass.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct OneBath {
    /// The bath.
    pub bath: SilverBath,
    /// Carried out with the prints.
    #[serde(rename = "carried_out_micrograms")]
    pub carried_out: Micrograms,
}

/// A pass through a single bath: it gains all, then loses what `carried`
/// microlitres of it hold.
///
/// # Errors
/// [`SilverError::NoVolume`] or [`SilverError::CarriesTooMuch`].
pub fn pass_one_bath(
    bath: SilverBath,
    dissolved: Micrograms,
    carried: Microlitres,
) -> Result<OneBath, SilverError> {
    let (carried_out, bath) = bath.gains(dissolved)?.carried_out(carried)?;
    Ok(OneBath { bath, carried_out })
}

/// Two baths in series.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SilverPair {
    /// The bath prints meet first.
    pub first: SilverBath,
    /// The bath they meet next.
    pub second: SilverBath,
}

/// Two baths after a pass.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct TwoBaths {
    /// The baths.
    #[serde(flatten)]
    pub baths: SilverPair,
    /// Carried out of the second with the prints.
    #[serde(rename = "carried_out_micrograms")]
    pub carried_out: Micrograms,
}

/// A pass through two baths: the first gains m(1 − β) and loses q·g₁ to the
/// second; the second gains mβ and that, and loses q·g₂ with the prints.
///
/// # Errors
/// [`SilverError::Share`] for β above 1; [`SilverError::NoVolume`] or [`SilverError::CarriesTooMuch`].
pub fn pass_two_baths(
    baths: SilverPair,
    dissolved: Micrograms,
    second_share: Ppb,
    carried: Microlitres,
) -> Result<TwoBaths, SilverError> {
    if second_share > Ppb::ONE {
        return Err(SilverError::Share);
    }
    let share = i128::from(dissolved.get()) * i128::from(second_share.get());
    let late = Micrograms::new(divide_half_up(share, 1_000_000_000)?)?;
    let (over, first) = baths
        .first
        .gains(dissolved.minus(late)?)?
        .carried_out(carried)?;
    let (carried_out, second) = baths
        .second
        .gains(late)?
        .gains(over)?
        .carried_out(carried)?;
    Ok(TwoBaths {
        baths: SilverPair { first, second },
        carried_out,
    })
}

/// Whole sheets a bath still takes until its silver reaches a limit in
/// milligrams per litre, rounded down, carry-over left out.
///
/// # Errors
/// [`SilverError::Share`] for f above 1; [`SilverError::Range`] where a sheet brings nothing.
pub fn sheets_until_silver(
    bath: SilverBath,
    limit_mg_per_litre: u32,
    area: Area,
    coating_mg_per_m2: u32,
    kept: Ppb,
) -> Result<u32, SilverError> {
    if kept > Ppb::ONE {
        return Err(SilverError::Share);
    }
    let room = i128::from(limit_mg_per_litre) * i128::from(bath.volume.get())
        - i128::from(bath.silver.get()) * 1_000;
    let each = i128::from(area.get())
        .checked_mul(i128::from(coating_mg_per_m2))
        .and_then(|coated| coated.checked_mul(i128::from(kept.rest().get())))
        .filter(|each| *each > 0)
        .ok_or(SilverError::Range)?;
    let scaled = room
        .max(0)
        .checked_mul(100_000_000_000)
        .ok_or(QuantityError::TooLarge)?;
    Ok(u32::try_from(scaled / each).unwrap_or(u32::MAX))
}

/// What a shift does.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Shift {
    /// The first bath goes to waste, the second takes its place with all it has
    /// spent, and a fresh second is mixed.
    MoveUp,
    /// The second has moved up often enough or is used up itself: both are replaced.
    ReplaceBoth,
}

/// What to do when the first of two baths is used up. Source: two-bath fixing as
/// the trade teaches it; the number of shifts is the room's.
#[must_use]
pub fn shift(shifts_done: u32, shifts_allowed: u32, second_is_used_up: bool) -> Shift {
    if second_is_used_up || shifts_done >= shifts_allowed {
        Shift::ReplaceBoth
    } else {
        Shift::MoveUp
    }
}
