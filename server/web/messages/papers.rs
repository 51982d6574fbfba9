//! What the pages of papers say of their classes.

use crate::web::numbers::Numbers;

/// For a figure that nobody entered.
#[must_use]
pub fn nothing() -> String {
    "not on file".to_owned()
}

/// The coating in mg/m² and the share of it that the image keeps in parts per
/// billion: each least, usual, most.
#[must_use]
pub fn silver(coating: [i64; 3], kept: [i64; 3], numbers: Numbers) -> String {
    let [least, usual, most] = coating;
    let [least_kept, usual_kept, most_kept] = kept;
    let grams = |milligrams| numbers.decimal(milligrams, 3);
    let percent = |ppb| numbers.decimal(ppb, 7);
    format!(
        "{}\u{a0}g/m² ({} to {}), of which {}\u{a0}% ({} to {}) stay in the image",
        grams(usual),
        grams(least),
        grams(most),
        percent(usual_kept),
        percent(least_kept),
        percent(most_kept),
    )
}

/// What a square metre carries into the next bath.
#[must_use]
pub fn carry_over(microlitres: i64, numbers: Numbers) -> String {
    format!("{}/m²", numbers.millilitres(microlitres))
}
