//! Room air, space by space: what is known of it, what was measured, when it was aired,
//! and which baths may not start where nobody measured any exhaust.
//!
//! A *place* is a space of the room, or the room itself, by its own id. Nothing here
//! calls the air good: a figure is shown with its arithmetic, or that nobody measured.

pub mod actions;
mod airing_pages;
pub mod api;
pub mod api_airings;
mod due;
mod entries;
mod form;
pub mod input;
mod keep_pages;
mod measuring_pages;
mod pages;
mod showing;
mod standing;
mod start;
mod store;
/// Its pages, as templates want them.
pub mod views;

pub use api::api;
pub use due::{due, handed_over};
pub use entries::{
    Air, AirSet, Aired, AiringBegan, AiringEnded, ExhaustRule, ExhaustWaiverSet, FlowMeasured,
    FlowOf, FlowTakenBack,
};
pub use pages::pages;
pub use standing::{AirNow, Place, air_now};
pub use start::{LineAir, may_start_in};
pub use store::{Airing, Measurement};
