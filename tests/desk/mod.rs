//! The steward's desk: papers, products and the bench, by their pages. Every form
//! is sent as it was served, filled in as somebody fills it in.

#![expect(
    clippy::unwrap_used,
    clippy::panic,
    reason = "a helper of a test fails with it"
)]

mod bench;
mod dilutions;
mod finishing;
mod ingredients;
mod papers;
mod products;
mod rights;
mod settings;
mod spaces;

use crate::harness::{Answer, Visitor as Desk};

/// What stands beside the fields, by their names.
fn beside(answer: &Answer) -> Vec<String> {
    let problems = answer.page().problems();
    problems.into_iter().map(|(field, _)| field).collect()
}

/// The sentence beside one field.
fn sentence(answer: &Answer, field: &str) -> String {
    let problems = answer.page().problems();
    let found = problems.iter().find(|(name, _)| name == field);
    let (_, said) = found.unwrap_or_else(|| panic!("nothing beside {field:?} in {problems:?}"));
    said.clone()
}
