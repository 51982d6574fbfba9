//! Trays, one by one: what stands there, why it is judged so, what happened.

mod course;
mod facts;
mod history;
mod next;
mod pages;
mod sums;
mod times;
/// Its page, as the template wants it.
pub mod views;
mod wear;

pub use history::history;
pub use pages::pages;
