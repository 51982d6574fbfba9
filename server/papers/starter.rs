//! The papers a new room starts with.

use super::{PaperClassSet, SheetSizeSet};
use crate::error::Result;
use crate::logbook::Book;

/// Sheet sizes as the trade names them: name, long and short side in tenths of a
/// millimetre. Inch sizes are exact (1 in = 25.4 mm); the others are the metric
/// sizes in their names. ISO 216 for the A sizes.
const SIZES: &[(&str, i32, i32)] = &[
    ("5×7 in", 1778, 1270),
    ("8×10 in", 2540, 2032),
    ("9.5×12 in (24×30.5 cm)", 3048, 2413),
    ("11×14 in", 3556, 2794),
    ("12×16 in", 4064, 3048),
    ("16×20 in", 5080, 4064),
    ("A5", 2100, 1480),
    ("A4", 2970, 2100),
    ("A3", 4200, 2970),
];

/// Paper classes that use a developer up at different paces.
const CLASSES: &[&str] = &["RC", "FB", "RC, cool tone"];

/// Writes them into a new room's book.
///
/// # Errors
/// The database's.
pub async fn write(book: &mut Book<'_>) -> Result<()> {
    for (position, (name, long, short)) in (1..).zip(SIZES) {
        let entry = SheetSizeSet {
            id: book.new_id(),
            name: (*name).to_owned(),
            long_tenths_mm: *long,
            short_tenths_mm: *short,
            position,
            is_retired: false,
        };
        book.append(&entry).await?;
    }
    for (position, name) in (1..).zip(CLASSES) {
        let entry = PaperClassSet {
            id: book.new_id(),
            name: (*name).to_owned(),
            position,
            is_retired: false,
            silver: None,
            carry_over_ul_per_m2: None,
        };
        book.append(&entry).await?;
    }
    Ok(())
}
