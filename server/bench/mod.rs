//! The bench: lines of trays in the order prints travel, each tray with its
//! inside measurements and what prints do in it; the bottles beside it, the
//! spaces it stands in, and how prints are finished on it.

pub mod actions;
pub mod api;
/// What mixes are kept in.
pub mod bottles;
mod entries;
/// Times in each bath, and the wash.
pub mod finishing;
mod form;
pub mod input;
mod pages;
/// The rooms of a room.
pub mod spaces;
pub mod starter;
mod store;
mod tray_pages;
/// Its pages, as templates want them.
pub mod views;

pub use api::api;
pub use bottles::BottleSet;
pub use entries::{LineSet, Step, TraySet};
pub use finishing::{FinishingSet, WashEmptied, WashJoined};
pub use pages::pages;
pub use spaces::SpaceSet;
pub use store::{Line, Tray, line, lines, tray, trays};
