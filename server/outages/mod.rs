//! Power or fan off: said once, shown on every page of the room until it is over.
//!
//! While something is off nobody should be at the trays: the room's pages say to
//! leave and let air in. What stands in the trays ages on, so nothing here
//! touches a mix.

pub mod actions;
pub mod api;
mod entries;
mod pages;
mod store;
/// Its pages, as templates want them.
pub mod views;

pub use api::api;
pub use entries::{OutageBegan, OutageEnded, What};
pub use pages::pages;
pub use store::{Outage, open};
