//! Screens of the room that are no person's: on the wall and at the door.
//!
//! A steward pairs a browser by the code it shows; what it is for is fixed then. A
//! board shows the bench and nothing else. A door shows how the trays are and takes
//! four acts, each by a person's number and PIN, through the same actions as that
//! person's own pages. What lets either in is a secret outside the book; that it was
//! paired, renamed and ended is an entry.

pub mod actions;
/// Its routes of the API.
pub mod api;
mod door_pages;
mod entries;
mod flag_pages;
mod pages;
mod pin_pages;
pub mod rows;
mod screen_pages;
mod store;
/// Its pages, as templates want them.
pub mod views;
mod wall;

pub use api::api;
pub use entries::{PinRemoved, PinSet, ScreenEnded, ScreenPaired, ScreenRenamed};
pub use store::{Screen, member_number, paired};
pub use wall::{Walls, kept};

use crate::router::Pages;

/// The routes of all its pages.
#[must_use]
pub fn pages() -> Pages {
    screen_pages::pages()
        .and(door_pages::pages())
        .and(flag_pages::pages())
        .and(pages::pages())
        .and(pin_pages::pages())
}
