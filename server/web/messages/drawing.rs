//! What stands beside drawings and on paper: the chart of wear, labels, the bench sheet.

use crate::web::numbers::Numbers;

/// The chart's first event.
#[must_use]
pub fn mixed(charged_ul: i64, numbers: Numbers) -> String {
    format!("{} mixed.", numbers.volume(charged_ul))
}

/// A note, as the chart tells it.
#[must_use]
pub fn noted(sheets: i32, size: &str, class: &str) -> String {
    let noun = if sheets == 1 { "sheet" } else { "sheets" };
    format!("{sheets}\u{a0}{noun} of {size}, {class}, noted.")
}

/// A note that was taken back, as the chart tells it.
#[must_use]
pub fn undone(sheets: i32, size: &str, class: &str) -> String {
    let noun = if sheets == 1 { "sheet" } else { "sheets" };
    format!("The note of {sheets}\u{a0}{noun} of {size}, {class}, undone.")
}

/// What is on file of a product's hazards, on the bench sheet.
#[must_use]
pub fn caution(product: &str, codes: &[String]) -> String {
    match codes {
        [] => format!(
            "{product}: no hazard codes are on file. That says nothing about it: read the \
             supplier’s safety data sheet."
        ),
        codes => format!(
            "{product}, concentrate as supplied: {}. Read the supplier’s safety data sheet before \
             you pour.",
            codes.join(", ")
        ),
    }
}
