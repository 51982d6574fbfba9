//! Spaces: the rooms of a room that has more than one, each with its own lines.

mod entries;
mod store;

pub use entries::SpaceSet;
pub use store::{Space, space, spaces};
