//! Workshops: a leader, a day, and guests who own no account.
//!
//! A steward plans one. On its day the leader reads the cautions to the group, signs
//! guests in by name and out again, notes sheets for the workshop, and ends it. Guests
//! count for the room's places and stand on the roll, and can do nothing themselves.
//! Their names lie beside the entry and are erased when the room's time for that is over.

pub mod actions;
pub mod api;
pub mod api_leading;
mod cautions;
mod due;
mod entries;
mod erasing;
mod forgetting;
mod form;
mod guests;
pub mod input;
mod lead_pages;
pub mod leading;
mod pages;
mod plan_pages;
mod showing;
mod standing;
mod store;
/// Its pages, as templates want them.
pub mod views;

pub use api::api;
pub use cautions::{Cautions, cautions};
pub use due::{due, handed_over};
pub use entries::{
    GuestNamesErased, GuestsSignedIn, GuestsSignedOut, ProductRead, TopicRead, WorkshopCalledOff,
    WorkshopEnded, WorkshopNotEnded, WorkshopOpened, WorkshopSet, WorkshopTakenOver,
};
pub use erasing::erase_names;
pub use forgetting::close_forgotten;
pub use guests::{GuestHere, check_leaving, guests_here};
pub use pages::pages;
pub use standing::Standing;
pub use store::{Group, Guest, Workshop, coming, guests, here, led_by, workshop, workshops};
