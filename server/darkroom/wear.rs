//! Wear: how much of a mix is used up. A mix has been charged with a volume V
//! (fill, top-ups, what was poured in) and has spent a volume W of it, litres of
//! fresh solution; W/V is the used fraction of its capacity. Both are whole
//! numbers, so that the book folds to the same state on every machine.
//!
//! Laws: topping up never raises the used fraction; pouring together adds both V
//! and W; what leaves takes its share of W; a reversal takes back exactly what
//! was stored. Source: `used = sheets / (capacity × litres)`, the definition of capacity.

use serde::{Deserialize, Serialize};

use super::quantities::{Area, Microlitres, Nanolitres, Ppb, QuantityError, divide_half_up};

/// Why wear cannot be computed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum WearError {
    /// A capacity is above 0 and at most a million sheets a litre.
    #[error("a capacity is above 0 and at most a million sheets of 8×10 in a litre")]
    Capacity,
    /// No sheets, or sheets of no area.
    #[error("a pass has at least one sheet, and a sheet has an area")]
    NoSheets,
    /// A mix of no volume has no used fraction.
    #[error("a mix without volume has no used fraction")]
    NoVolume,
    /// More leaves, or is taken back, than is there.
    #[error("more is taken than there is")]
    MoreThanThereIs,
    /// Beyond what 64 bits hold.
    #[error(transparent)]
    Quantity(#[from] QuantityError),
}

/// Capacity: sheets of 8×10 in one litre of working solution may take, in
/// thousandths, per paper class, dilution and place; 0.001 to 1,000,000 sheets.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(try_from = "i64", into = "i64")]
pub struct SheetsPerLitre(i64);

impl SheetsPerLitre {
    /// From thousandths of a sheet of 8×10 in a litre: 100 sheets are 100,000.
    ///
    /// # Errors
    /// [`WearError::Capacity`] outside 1 to 1,000,000,000.
    pub fn new(thousandths: i64) -> Result<Self, WearError> {
        if (1..=1_000_000_000).contains(&thousandths) {
            Ok(Self(thousandths))
        } else {
            Err(WearError::Capacity)
        }
    }

    /// Thousandths of a sheet of 8×10 in a litre.
    #[must_use]
    pub const fn get(self) -> i64 {
        self.0
    }
}

impl TryFrom<i64> for SheetsPerLitre {
    type Error = WearError;

    fn try_from(thousandths: i64) -> Result<Self, WearError> {
        Self::new(thousandths)
    }
}

impl From<SheetsPerLitre> for i64 {
    fn from(capacity: SheetsPerLitre) -> i64 {
        capacity.0
    }
}

/// Fresh solution one pass spends: ΔW = n·A/(K·A₀) litres, in nanolitres,
/// rounded half up once. The entry stores it; nothing computes it anew.
///
/// # Errors
/// [`WearError::NoSheets`] for no sheets or no area; [`WearError::Quantity`] beyond 64 bits.
pub fn wear_of(sheets: u32, area: Area, capacity: SheetsPerLitre) -> Result<Nanolitres, WearError> {
    if sheets == 0 || area == Area::ZERO {
        return Err(WearError::NoSheets);
    }
    // Nanolitres a litre times thousandths of a sheet.
    let scale: i128 = 1_000_000_000 * 1_000;
    let numerator = i128::from(sheets)
        .checked_mul(i128::from(area.get()))
        .and_then(|total| total.checked_mul(scale))
        .ok_or(QuantityError::TooLarge)?;
    let denominator = i128::from(capacity.get()) * i128::from(Area::SHEET_8X10.get());
    Ok(Nanolitres::new(divide_half_up(numerator, denominator)?)?)
}

/// The used fraction of capacity, W/V, in parts per billion, rounded down; it may pass 1.
///
/// # Errors
/// [`WearError::NoVolume`] for V = 0.
pub fn used_fraction(spent: Nanolitres, charged: Microlitres) -> Result<Ppb, WearError> {
    if charged == Microlitres::ZERO {
        return Err(WearError::NoVolume);
    }
    Ok(Ppb::of_whole(
        i128::from(spent.get()),
        i128::from(charged.get()) * 1_000,
    )?)
}

/// What a mix has been charged with and has spent of it.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Charge {
    /// V: volume charged, in microlitres.
    #[serde(rename = "charged_microlitres")]
    pub charged: Microlitres,
    /// W: fresh solution spent, in nanolitres.
    #[serde(rename = "spent_nanolitres")]
    pub spent: Nanolitres,
}

impl Charge {
    /// A fresh fill of this many microlitres, nothing spent.
    #[must_use]
    pub const fn fresh(charged: Microlitres) -> Self {
        Self {
            charged,
            spent: Nanolitres::ZERO,
        }
    }

    /// The used fraction of capacity, as [`used_fraction`].
    ///
    /// # Errors
    /// [`WearError::NoVolume`] for V = 0.
    pub fn used(self) -> Result<Ppb, WearError> {
        used_fraction(self.spent, self.charged)
    }

    /// After a pass that spent ΔW nanolitres.
    ///
    /// # Errors
    /// [`WearError::Quantity`] beyond 64 bits.
    pub fn worn_by(self, wear: Nanolitres) -> Result<Self, WearError> {
        Ok(Self {
            spent: self.spent.plus(wear)?,
            ..self
        })
    }

    /// With the stored ΔW of a pass taken back, to the nanolitre.
    ///
    /// # Errors
    /// [`WearError::MoreThanThereIs`] where less than ΔW was spent.
    pub fn reversed(self, wear: Nanolitres) -> Result<Self, WearError> {
        let spent = self
            .spent
            .minus(wear)
            .map_err(|_| WearError::MoreThanThereIs)?;
        Ok(Self { spent, ..self })
    }

    /// After v microlitres of fresh solution were added: V grows, W stays.
    ///
    /// # Errors
    /// [`WearError::Quantity`] beyond 64 bits.
    pub fn topped_up(self, fresh: Microlitres) -> Result<Self, WearError> {
        Ok(Self {
            charged: self.charged.plus(fresh)?,
            ..self
        })
    }

    /// Two mixes of one product and dilution poured together: V and W add up.
    ///
    /// # Errors
    /// [`WearError::Quantity`] beyond 64 bits.
    pub fn poured_together(self, other: Self) -> Result<Self, WearError> {
        Ok(Self {
            charged: self.charged.plus(other.charged)?,
            spent: self.spent.plus(other.spent)?,
        })
    }

    /// Splits off the liquid that leaves, with its share of W (rounded half up):
    /// (what leaves, what stays). The two add up to what was there.
    ///
    /// # Errors
    /// [`WearError::MoreThanThereIs`] where more leaves than was charged.
    pub fn poured_off(self, leaving: Microlitres) -> Result<(Self, Self), WearError> {
        let left = self
            .charged
            .minus(leaving)
            .map_err(|_| WearError::MoreThanThereIs)?;
        let taken = Nanolitres::new(share_leaving(self.spent.get(), self.charged, leaving)?)?;
        let gone = Self {
            charged: leaving,
            spent: taken,
        };
        let stays = Self {
            charged: left,
            spent: self.spent.minus(taken)?,
        };
        Ok((gone, stays))
    }
}

/// What of an amount dissolved in a volume leaves with a part of it: silver,
/// bromide and alkali as W does. In the amount's own unit, rounded half up;
/// nothing leaves a volume of nothing.
///
/// # Errors
/// [`WearError::MoreThanThereIs`] where more leaves than there is;
/// [`WearError::Quantity`] for an amount below 0.
pub fn share_leaving(
    amount: i64,
    volume: Microlitres,
    leaving: Microlitres,
) -> Result<i64, WearError> {
    if leaving > volume {
        return Err(WearError::MoreThanThereIs);
    }
    if volume == Microlitres::ZERO {
        return Ok(0);
    }
    let share = i128::from(amount) * i128::from(leaving.get());
    Ok(divide_half_up(share, i128::from(volume.get()))?)
}

/// What a pass counts in the second of two fixing baths: β of its ΔW, rounded
/// half up; in the first it counts in full.
///
/// # Errors
/// [`WearError::MoreThanThereIs`] for β above 1.
pub fn second_bath_wear(wear: Nanolitres, share: Ppb) -> Result<Nanolitres, WearError> {
    if share > Ppb::ONE {
        return Err(WearError::MoreThanThereIs);
    }
    let part = i128::from(wear.get()) * i128::from(share.get());
    Ok(Nanolitres::new(divide_half_up(
        part,
        i128::from(Ppb::ONE.get()),
    )?)?)
}

/// How many more sheets of this area a mix takes before its capacity is used:
/// whole sheets, rounded down, 0 where it is used up.
///
/// # Errors
/// [`WearError::NoSheets`] for no area; [`WearError::NoVolume`] for V = 0.
pub fn sheets_left(charge: Charge, area: Area, capacity: SheetsPerLitre) -> Result<u32, WearError> {
    if area == Area::ZERO {
        return Err(WearError::NoSheets);
    }
    if charge.charged == Microlitres::ZERO {
        return Err(WearError::NoVolume);
    }
    let left = i128::from(charge.charged.get()) * 1_000 - i128::from(charge.spent.get());
    let room = left.max(0) * i128::from(capacity.get()) * i128::from(Area::SHEET_8X10.get());
    let each = i128::from(area.get()) * 1_000_000_000 * 1_000;
    Ok(u32::try_from(room / each).unwrap_or(u32::MAX))
}
