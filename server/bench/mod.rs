//! The bench: lines of trays in the order prints travel, each tray with its
//! inside measurements.

pub mod actions;
pub mod api;
mod entries;
mod form;
pub mod input;
mod pages;
pub mod starter;
mod store;
mod tray_pages;
/// Its pages, as templates want them.
pub mod views;

pub use api::api;
pub use entries::{LineSet, TraySet};
pub use pages::pages;
pub use store::{Line, Tray, line, lines, tray, trays};
