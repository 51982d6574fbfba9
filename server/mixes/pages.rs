//! The pages of mixes, and what each says of the product it is about.

use super::{keeping, mixing, readings};
use crate::router::Pages;
use crate::web::messages::bench as words;

/// The routes of these pages.
#[must_use]
pub fn pages() -> Pages {
    mixing::pages()
        .and(keeping::pages())
        .and(readings::pages::pages())
}

/// What the product's own sheet says of it, as far as it is on file.
pub(crate) fn cautions(hazard_codes: &[String]) -> Vec<String> {
    vec![match hazard_codes.is_empty() {
        true => words::NO_CODES.to_owned(),
        false => words::as_supplied(hazard_codes),
    }]
}
