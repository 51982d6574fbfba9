//! What stands on paper: labels and the bench sheet.

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
