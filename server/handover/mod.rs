//! Handing a room over from one steward to another.
//!
//! It takes two people. The one who goes opens a handover that names the one who
//! comes; the entry holds the list of what is open in the room, as lines of text.
//! The one who comes is shown that list and confirms it by an entry of their own,
//! which holds the list's digest. Nobody's role changes by it.

pub mod actions;
pub mod api;
mod entries;
mod pages;
mod sheet;
mod store;
/// Its pages, as templates want them.
pub mod views;

pub use api::api;
pub use entries::{HandedOver, HandoverOpened, HandoverWithdrawn, Part};
pub use pages::pages;
pub use sheet::digest;
