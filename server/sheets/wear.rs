//! What sheets and film use up of a mix: the trade's arithmetic over an entry's figures.

use crate::darkroom::film::wear_of_rolls;
use crate::darkroom::quantities::{Area, Nanolitres, Ppb, TenthsMm, Thousandths};
use crate::darkroom::wear::{SheetsPerLitre, second_bath_wear, wear_of};
use crate::error::{Error, Result};

/// The wear of so many sheets with these sides, in tenths of a millimetre, at a
/// capacity in thousandths of a sheet a litre: nanolitres.
///
/// # Errors
/// Figures that no arithmetic holds; they were checked when they came in.
pub(super) fn of_sheets(
    sheets: u32,
    sides: (i32, i32),
    sheets_per_litre_thousandths: i64,
) -> Result<i64> {
    let capacity = SheetsPerLitre::new(sheets_per_litre_thousandths).map_err(Error::fault)?;
    let wear = wear_of(sheets, area(sides)?, capacity);
    Ok(wear.map_err(Error::fault)?.get())
}

/// The area of a sheet with these sides.
pub(super) fn area((long, short): (i32, i32)) -> Result<Area> {
    let long = TenthsMm::new(long.into()).map_err(Error::fault)?;
    let short = TenthsMm::new(short.into()).map_err(Error::fault)?;
    long.by(short).map_err(Error::fault)
}

/// The wear of rolls of film at a capacity in thousandths of a roll a litre: nanolitres.
///
/// # Errors
/// As [`of_sheets`].
pub(super) fn of_rolls(rolls: u32, rolls_per_litre_thousandths: i64) -> Result<i64> {
    let capacity = Thousandths::new(rolls_per_litre_thousandths).map_err(Error::fault)?;
    let wear = wear_of_rolls(rolls, Some(capacity));
    Ok(wear.map_err(Error::fault)?.get())
}

/// The part of a pass's wear that counts in a bath: all of it, or the share of
/// the second of two.
///
/// # Errors
/// A share above 1.
pub(super) fn share(spent_nl: i64, share_ppb: Option<i64>) -> Result<i64> {
    let Some(share) = share_ppb else {
        return Ok(spent_nl);
    };
    let spent = Nanolitres::new(spent_nl).map_err(Error::fault)?;
    let share = Ppb::new(share).map_err(Error::fault)?;
    let part = second_bath_wear(spent, share);
    Ok(part.map_err(Error::fault)?.get())
}
