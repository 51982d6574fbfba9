//! The bench: lines of trays in the order prints travel, each tray with its
//! inside measurements.

pub mod actions;
pub mod api;
mod entries;
pub mod input;
pub mod starter;
mod store;
/// Its pages, as templates want them.
pub mod views;

pub use api::api;
pub use entries::{LineSet, TraySet};
pub use store::{Line, Tray, line, lines, tray, trays};
