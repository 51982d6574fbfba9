//! Room checks: what a room looks at on a schedule, what is found, and what to do where
//! it fails.
//!
//! A check is due by a day of the room's own calendar, so many days after it was last
//! done, whatever the clock did in between. Fog tests of lamps are due in the same way
//! and have a noun of their own; the page of checks links to them.

pub mod actions;
pub mod api;
pub mod api_checks;
mod due;
mod entries;
mod form;
pub mod input;
mod keep_pages;
mod pages;
mod record_pages;
mod showing;
mod standing;
pub mod starter;
mod store;
/// Its pages, as templates want them.
pub mod views;

pub use api::api;
pub use due::{due, handed_over, tell_due};
pub use entries::{Measure, RoomCheckSet, RoomCheckTakenBack, RoomChecked};
pub use pages::pages;
pub use standing::{CheckNow, DueWhen, checks_now};
pub use store::{CheckResult, RoomCheck, room_checks};
