//! A mix is covered, bottled, poured back, poured together, moved up, discarded,
//! and brought back where that was a mistake: pages and API over `mixes::actions`.
//!
//! Every page says what will come of it before anybody pours, by the same rules
//! that the book will fold it by, and what may not be done, with the reason.

/// Its routes of the API.
pub mod api;
mod bottle_pages;
mod containers;
mod discard_pages;
mod keep_pages;
mod outlook;
mod pour_pages;
mod shift_pages;
mod store;
mod undo_pages;
/// Its pages, as templates want them.
pub mod views;

pub use api::api;
pub use bottle_pages::undoable;

use crate::router::Pages;

/// The routes of these pages.
#[must_use]
pub fn pages() -> Pages {
    keep_pages::pages()
        .and(pour_pages::pages())
        .and(shift_pages::pages())
        .and(discard_pages::pages())
        .and(undo_pages::pages())
        .and(bottle_pages::pages())
}
