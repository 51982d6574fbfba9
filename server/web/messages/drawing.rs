//! What stands beside drawings and on paper: the chart of wear, labels, the bench sheet.

use crate::web::numbers::Numbers;

/// The chart's first event.
#[must_use]
pub fn mixed(charged_ul: i64, numbers: Numbers) -> String {
    format!("{} mixed.", numbers.volume(charged_ul))
}

/// What went through: `6 sheets of 8×10 in, RC`; without size and class it is film.
#[must_use]
pub fn what_went_through(count: i32, paper: Option<(&str, &str)>) -> String {
    match (paper, count) {
        (Some((size, class)), 1) => format!("1\u{a0}sheet of {size}, {class}"),
        (Some((size, class)), _) => format!("{count}\u{a0}sheets of {size}, {class}"),
        (None, 1) => "1\u{a0}roll of film".to_owned(),
        (None, _) => format!("{count}\u{a0}rolls of film"),
    }
}

/// A note, as the chart tells it.
#[must_use]
pub fn noted(what: &str) -> String {
    format!("{what}, noted.")
}

/// A note that was taken back, as the chart tells it.
#[must_use]
pub fn undone(what: &str) -> String {
    format!("The note of {what}, undone.")
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
