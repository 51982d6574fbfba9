//! Bottles: what mixes are kept in between sessions.

mod entries;
mod store;

pub use entries::BottleSet;
pub use store::{Bottle, bottle, bottles};
