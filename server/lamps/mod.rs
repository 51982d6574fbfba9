//! Lamps and screens that shine while paper is out, and the fog tests that say how
//! long paper may lie in their light.
//!
//! Nothing here calls a lamp safe. There is a time, found by a test of one paper
//! under the lamp as it hung then, or there is none. Hung otherwise since, or tested
//! longer ago than the lamp's own interval, the test holds no more.

pub mod actions;
pub mod api;
mod due;
mod entries;
mod form;
pub mod input;
mod keep_pages;
mod pages;
mod showing;
mod standing;
mod store;
/// Its pages, as templates want them.
pub mod views;

pub use api::api;
pub use due::{Due, due, handed_over, next_tests, tell_due};
pub use entries::{FogTestTakenBack, FogTested, Hanging, LampKind, LampSet, RULES};
pub use pages::pages;
pub use standing::{LampNow, PaperNow, Standing, lamps_now};
pub use store::{FogTest, Lamp, lamp, lamps};
