//! Spaces: the rooms of a room that has more than one, each with its own lines.

/// What a steward does with them.
pub mod actions;
/// The same as JSON.
pub mod api;
mod entries;
mod pages;
mod store;
/// Their pages, as templates want them.
pub mod views;

pub use api::api;
pub use entries::SpaceSet;
pub use pages::pages;
pub use store::{Space, space, spaces};
pub use views::choices;
