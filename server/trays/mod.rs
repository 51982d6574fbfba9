//! Trays, one by one: what stands there, why it is judged so, what happened.

mod pages;
mod sums;
/// Its page, as the template wants it.
pub mod views;
mod wear;

pub use pages::pages;
