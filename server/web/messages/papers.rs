//! What the pages of papers say of their classes.

use crate::papers::SilverFigures;
use crate::web::numbers::Numbers;

/// For a figure that nobody entered.
#[must_use]
pub fn nothing() -> String {
    "not on file".to_owned()
}

/// The coating with its range.
#[must_use]
pub fn silver(silver: &SilverFigures, numbers: Numbers) -> String {
    let grams = |milligrams| numbers.decimal(milligrams, 3);
    let percent = |ppb| numbers.decimal(ppb, 7);
    format!(
        "{}\u{a0}g/m² ({} to {}), of which {}\u{a0}% ({} to {}) stay in the image",
        grams(silver.usual_mg_per_m2),
        grams(silver.least_mg_per_m2),
        grams(silver.most_mg_per_m2),
        percent(silver.usual_kept_ppb),
        percent(silver.least_kept_ppb),
        percent(silver.most_kept_ppb),
    )
}

/// What a square metre carries into the next bath.
#[must_use]
pub fn carry_over(microlitres: i64, numbers: Numbers) -> String {
    format!("{}/m²", numbers.millilitres(microlitres))
}
