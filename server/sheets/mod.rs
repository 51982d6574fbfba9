//! Notes of sheets and film: what went down a line, by whom, and how much of each
//! mix in it that used up.
//!
//! A note wears every mix that stood in the line when it happened. Its entry
//! stores the wear it computed; a reversal takes exactly that off again.

pub mod actions;
pub mod api;
mod brought;
/// A bench sheet that was kept on paper, entered later.
pub mod by_hand;
mod compose;
mod correct_pages;
pub mod correction;
mod effects;
mod entries;
mod film_pages;
pub mod input;
mod kept;
mod lines;
mod note_pages;
mod noted_pages;
mod offer;
mod pages;
mod store;
mod story;
/// Its pages, as templates want them.
pub mod views;
mod wear;
mod when;

pub use api::api;
pub use compose::NewNote;
pub use entries::{Brought, FilmNoted, NoteUndone, Noted, Wear};
pub use offer::{Offer, read_counted};
pub use pages::pages;
pub use store::{Pass, WornByClass, pass, pass_at, passes, passes_for, worn_by_class};
