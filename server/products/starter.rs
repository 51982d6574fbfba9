//! The developer a new room starts with.

use super::{CapacityFigure, DilutionFigures, Kind, ProductSet};
use crate::darkroom::incompatibility::Group;
use crate::error::Result;
use crate::logbook::Book;
use crate::papers;

/// What every figure here is.
pub const COMMON_PRACTICE: &str = "common practice, no source";

const HOUR_S: i64 = 3_600;

/// N of 1+N, then 8×10 in sheets a litre by class: RC, FB, RC cool tone; nothing
/// where practice gives none.
const FIGURES: &[(i64, [Option<i64>; 3])] = &[
    (9, [Some(100), Some(50), Some(50)]),
    (14, [Some(70), Some(40), None]),
];

/// Writes a neutral liquid paper developer into a new room's book, after its
/// papers. It has no safety data: the steward copies that from the sheet of
/// what the room really bought, and until then nobody mixes it.
///
/// # Errors
/// The database's.
pub async fn write(book: &mut Book<'_>) -> Result<()> {
    let classes = papers::paper_classes(book.tx()).await?;
    let mut dilutions = Vec::new();
    for (parts, sheets) in FIGURES {
        let capacities = classes.iter().zip(sheets).filter_map(|(class, sheets)| {
            sheets.map(|sheets| CapacityFigure {
                paper_class_id: class.id,
                sheets_per_litre_thousandths: sheets * 1_000,
                basis: COMMON_PRACTICE.to_owned(),
            })
        });
        dilutions.push(DilutionFigures {
            id: book.new_id(),
            parts_thousandths: parts * 1_000,
            // Seven to eight hours in an open tray, no more than a day in a bottle.
            tray_life_s: 8 * HOUR_S,
            bottle_life_s: 24 * HOUR_S,
            life_basis: COMMON_PRACTICE.to_owned(),
            capacities: capacities.collect(),
        });
    }
    let entry = ProductSet {
        id: book.new_id(),
        version: 1,
        name: "Neutral paper developer".to_owned(),
        kind: Kind::Developer,
        groups: vec![
            Group::Developer,
            Group::Alkali,
            Group::Sulfite,
            Group::Organic,
        ],
        oxidises: true,
        depth_reference_tenths_mm: 80,
        steward_only: false,
        hazard_codes: Vec::new(),
        precaution_codes: Vec::new(),
        data_sheet_on: None,
        is_retired: false,
        dilutions,
    };
    book.append(&entry).await?;
    Ok(())
}
