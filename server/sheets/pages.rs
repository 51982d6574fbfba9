//! The routes of the pages of notes.

use super::{by_hand, correct_pages, film_pages, note_pages, noted_pages};
use crate::router::Pages;

/// The routes of these pages.
#[must_use]
pub fn pages() -> Pages {
    note_pages::pages()
        .and(film_pages::pages())
        .and(noted_pages::pages())
        .and(correct_pages::pages())
        .and(by_hand::pages::pages())
}
