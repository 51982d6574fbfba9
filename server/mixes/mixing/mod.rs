//! Mixing, topping up, and entering what stood there already: pages and API.
//!
//! A worksheet is reckoned from what was typed, on the page, while typing and
//! through the API alike; nothing is written before somebody says that it stands
//! there.

pub mod api;
mod form;
mod ground;
mod mix_pages;
mod open_pages;
pub mod questions;
mod sheet;
mod top_up_pages;
/// The pages, as templates want them.
pub mod views;
mod warmth;

pub use api::api;
pub(crate) use sheet::step;

use crate::router::Pages;

/// The routes of these pages.
#[must_use]
pub fn pages() -> Pages {
    mix_pages::pages()
        .and(top_up_pages::pages())
        .and(open_pages::pages())
        .and(super::stock::pages())
}
