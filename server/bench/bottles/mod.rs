//! Bottles: what mixes are kept in between sessions.

/// What a steward does with them.
pub mod actions;
/// The same as JSON.
pub mod api;
mod entries;
/// What they may hold.
pub mod input;
mod pages;
mod store;
/// Their pages, as templates want them.
pub mod views;

pub use api::api;
pub use entries::BottleSet;
pub use pages::pages;
pub use store::{Bottle, bottle, bottles};
