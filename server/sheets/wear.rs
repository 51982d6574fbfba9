//! What sheets use up of a mix: the trade's arithmetic over an entry's figures.

use crate::darkroom::quantities::TenthsMm;
use crate::darkroom::wear::{SheetsPerLitre, wear_of};
use crate::error::{Error, Result};

/// The wear of so many sheets with these sides, in tenths of a millimetre, at a
/// capacity in thousandths of a sheet a litre: nanolitres.
///
/// # Errors
/// Figures that no arithmetic holds; they were checked when they came in.
pub(super) fn spent_nl(
    sheets: u32,
    (long, short): (i32, i32),
    sheets_per_litre_thousandths: i64,
) -> Result<i64> {
    let long = TenthsMm::new(long.into()).map_err(Error::fault)?;
    let short = TenthsMm::new(short.into()).map_err(Error::fault)?;
    let area = long.by(short).map_err(Error::fault)?;
    let capacity = SheetsPerLitre::new(sheets_per_litre_thousandths).map_err(Error::fault)?;
    Ok(wear_of(sheets, area, capacity).map_err(Error::fault)?.get())
}
