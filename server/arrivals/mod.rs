//! Who is in the room: people arrive, and leave again.
//!
//! A place is taken under the lock on the room's head, so that of two at the last
//! one exactly one gets it. Who forgets to leave is taken for gone at a moment that
//! their arrival fixed (`rule`); from then on nobody counts on it, whether a job has
//! written so yet or not. Whoever is alone says until when, and is asked after (`alone`).

pub mod actions;
mod alone;
/// Its routes of the API.
pub mod api;
mod entries;
mod pages;
mod roll_pages;
mod rule;
mod store;
mod supervised_pages;
mod until;
/// Its pages, as templates want them.
pub mod views;

pub use actions::close_forgotten;
pub use alone::{ask_after, next_turn};
pub use api::api;
pub use entries::{Arrived, Expected, LeavingExpected, Left, NotConfirmedLeft};
pub use pages::{cautions_now, open_baths, pages};
pub use rule::over_at;
pub use store::{Presence, people_in, present};
pub use until::{asks_of_who_comes, until_typed};
