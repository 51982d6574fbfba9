//! Trays, one by one: what stands there, why it is judged so, what happened.

mod course;
mod facts;
mod next;
mod pages;
mod sums;
mod times;
/// Its page, as the template wants it.
pub mod views;
mod wear;

pub use pages::pages;
