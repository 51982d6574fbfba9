//! Finishing: how long each paper class takes in the baths of a line, and the wash
//! that all prints of a line share.

mod entries;
mod store;

pub use entries::{FinishingSet, WashEmptied, WashJoined};
pub use store::{Finishing, Wash, finishings, wash};
