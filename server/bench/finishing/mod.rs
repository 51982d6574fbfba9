//! Finishing: how long each paper class takes in the baths of a line, and the wash
//! that all prints of a line share.

/// What stewards and members do with times and the wash.
pub mod actions;
/// The same as JSON.
pub mod api;
mod entries;
mod form;
/// How long prints may take.
pub mod input;
mod line_page;
mod pages;
mod store;
/// Its pages, as templates want them.
pub mod views;
mod wash;

pub use api::api;
pub use entries::{FinishingSet, WashEmptied, WashJoined};
pub use pages::pages;
pub use store::{Finishing, Wash, finishings, wash};
