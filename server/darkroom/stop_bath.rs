//! Stop bath: how much of its acid carried-in developer has neutralised, and the
//! pH that leaves. Source: the charge balance with the acid's pKa values.
//!
//! pH is approximate (no activities, 25 °C), so it is computed in floating point;
//! what the book adds up, carried volume and alkali, is in whole numbers.

use serde::{Deserialize, Serialize};

use super::quantities::{Area, Microlitres, Ppb, QuantityError, divide_half_up};

/// pH from which a stop bath counts as used up: 5.2, where bromocresol purple
/// leaves yellow.
pub const LIMIT_PH: f64 = 5.2;
/// [`LIMIT_PH`] in thousandths, as entries keep it.
pub const LIMIT_PH_THOUSANDTHS: i64 = 5_200;

/// Acids a stop bath is made of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum StopAcid {
    /// pKa 4.76 (a university's table of ionisation constants at 298 K).
    Acetic,
    /// pKa 3.13, 4.76 and 6.40 (from memory).
    Citric,
}

impl StopAcid {
    const fn pka(self) -> &'static [f64] {
        match self {
            Self::Acetic => &[4.76],
            Self::Citric => &[3.13, 4.76, 6.40],
        }
    }

    /// Acid groups a molecule, as a number.
    fn groups(self) -> f64 {
        self.pka().iter().map(|_| 1.0).sum()
    }

    /// Charges a molecule has lost on average at a pH.
    fn dissociated(self, ph: f64) -> f64 {
        let mut term = 1.0;
        let (mut sum, mut charges, mut lost) = (1.0, 0.0, 0.0);
        for pka in self.pka() {
            term *= 10_f64.powf(ph - pka);
            lost += 1.0;
            sum += term;
            charges += lost * term;
        }
        charges / sum
    }
}

/// Why a stop bath cannot be computed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum StopBathError {
    /// A concentration outside 0.001 to 5 mol/l.
    #[error("the acid of a stop bath is between 0.001 and 5 mol/l")]
    Concentration,
    /// A pH outside 0 to 14.
    #[error("a pH lies between 0 and 14")]
    Ph,
    /// More alkali than 0 to 10 eq/l.
    #[error("the alkali lies between 0 and 10 eq/l")]
    Alkali,
    /// A bath without volume.
    #[error("a bath has a volume")]
    NoVolume,
    /// The bath is past the limit when fresh.
    #[error("this bath would be past its limit pH when fresh")]
    FreshPastLimit,
    /// Beyond what 64 bits hold.
    #[error(transparent)]
    Quantity(#[from] QuantityError),
}

/// A fresh stop bath: its acid and how much, 0.001 to 5 mol/l.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct StopBath {
    acid: StopAcid,
    mol_per_litre: f64,
}

impl StopBath {
    /// From an acid and its concentration.
    ///
    /// # Errors
    /// [`StopBathError::Concentration`] outside 0.001 to 5 mol/l.
    pub fn new(acid: StopAcid, mol_per_litre: f64) -> Result<Self, StopBathError> {
        if (0.001..=5.0).contains(&mol_per_litre) {
            Ok(Self {
                acid,
                mol_per_litre,
            })
        } else {
            Err(StopBathError::Concentration)
        }
    }

    /// Alkali (eq/l) that brings this bath to a pH: b = [OH⁻] − [H⁺] + C·Σ i·αᵢ;
    /// below 0 where it is more acid than that when fresh. Source: charge balance, pKw 14.
    ///
    /// # Errors
    /// [`StopBathError::Ph`] outside 0 to 14.
    pub fn alkali_at_ph(self, ph: f64) -> Result<f64, StopBathError> {
        if (0.0..=14.0).contains(&ph) {
            Ok(self.balance(ph))
        } else {
            Err(StopBathError::Ph)
        }
    }

    fn balance(self, ph: f64) -> f64 {
        10_f64.powf(ph - 14.0) - 10_f64.powf(-ph) + self.mol_per_litre * self.acid.dissociated(ph)
    }

    /// pH after this much alkali (eq/l, 0 to 10) was carried in; within 10⁻⁹.
    ///
    /// # Errors
    /// [`StopBathError::Alkali`] outside 0 to 10.
    pub fn ph_with(self, alkali_eq_per_litre: f64) -> Result<f64, StopBathError> {
        if !(0.0..=10.0).contains(&alkali_eq_per_litre) {
            return Err(StopBathError::Alkali);
        }
        // The balance rises with pH throughout; −1 and 15.5 bracket all allowed inputs.
        let (mut low, mut high) = (-1.0, 15.5);
        for _ in 0..60 {
            let middle = f64::midpoint(low, high);
            if self.balance(middle) < alkali_eq_per_litre {
                low = middle;
            } else {
                high = middle;
            }
        }
        Ok(f64::midpoint(low, high))
    }

    /// Share x of the acid's equivalents that this much alkali (eq/l) neutralises.
    ///
    /// # Errors
    /// [`StopBathError::Alkali`] outside 0 to 10.
    pub fn neutralised(self, alkali_eq_per_litre: f64) -> Result<f64, StopBathError> {
        if (0.0..=10.0).contains(&alkali_eq_per_litre) {
            Ok(alkali_eq_per_litre / (self.mol_per_litre * self.acid.groups()))
        } else {
            Err(StopBathError::Alkali)
        }
    }

    /// The used fraction x / x(limit pH) of a bath of this volume after alkali
    /// in nano-equivalents was carried in, in parts per billion.
    ///
    /// # Errors
    /// [`StopBathError::NoVolume`] for a bath of nothing, [`StopBathError::FreshPastLimit`]
    /// where the limit lies at or below the fresh pH, [`StopBathError::Ph`] outside 0 to 14.
    pub fn used(
        self,
        volume: Microlitres,
        alkali_nanoequivalents: i64,
        limit_ph: f64,
    ) -> Result<Ppb, StopBathError> {
        if volume == Microlitres::ZERO {
            return Err(StopBathError::NoVolume);
        }
        let at_limit = self.alkali_at_ph(limit_ph)?;
        if at_limit <= 0.0 {
            return Err(StopBathError::FreshPastLimit);
        }
        // neq/µl is meq/ml, which is eq/l, a thousandth at a time.
        let carried = to_f64(alkali_nanoequivalents) / to_f64(volume.get()) / 1_000.0;
        let ppb = (carried / at_limit * 1e9).round();
        if (0.0..1e18).contains(&ppb) {
            #[expect(
                clippy::cast_possible_truncation,
                reason = "its range was just checked"
            )]
            Ok(Ppb::new(ppb as i64)?)
        } else {
            Err(StopBathError::Alkali)
        }
    }
}

#[expect(
    clippy::cast_precision_loss,
    reason = "pH is approximate far above 2^-53"
)]
fn to_f64(value: i64) -> f64 {
    value as f64
}

/// Liquid that sheets carry out of a bath: n·A·q, rounded half up to a
/// microlitre. `per_square_metre` is the room's setting for the paper class; any
/// default is doubtful (20 to 50 ml/m² RC and 100 to 300 ml/m² FB are guesses).
///
/// # Errors
/// [`QuantityError::TooLarge`] beyond 64 bits.
pub fn carried_over(
    sheets: u32,
    area: Area,
    per_square_metre: Microlitres,
) -> Result<Microlitres, QuantityError> {
    let total = i128::from(sheets)
        .checked_mul(i128::from(area.get()))
        .and_then(|total| total.checked_mul(i128::from(per_square_metre.get())))
        .ok_or(QuantityError::TooLarge)?;
    Microlitres::new(divide_half_up(total, 100_000_000)?)
}

/// Alkali in a carried volume, in nano-equivalents: µl times meq/l, exact. The
/// room sets the strength; where it is unset only capacity counts.
///
/// # Errors
/// [`QuantityError::TooLarge`] beyond 64 bits.
pub fn alkali_carried(
    carried: Microlitres,
    milliequivalents_per_litre: u32,
) -> Result<i64, QuantityError> {
    carried
        .times(milliequivalents_per_litre)
        .map(Microlitres::get)
}

/// What a tray holds after prints carried liquid out; never below nothing.
#[must_use]
pub fn level_after(level: Microlitres, carried: Microlitres) -> Microlitres {
    level.minus(carried).unwrap_or(Microlitres::ZERO)
}
