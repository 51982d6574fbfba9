//! The bench: lines of trays in the order prints travel, each tray with its
//! inside measurements.

pub mod actions;
mod entries;
pub mod starter;
mod store;
/// Its pages, as templates want them.
pub mod views;

pub use entries::{LineSet, TraySet};
pub use store::{Line, Tray, line, lines, tray, trays};
