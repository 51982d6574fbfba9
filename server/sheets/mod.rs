//! Notes of sheets: what went down a line, by whom, and how much of each mix in
//! it that used up.
//!
//! A note wears every mix that stood in the line when it happened. Its entry
//! stores the wear it computed; a reversal takes exactly that off again.

pub mod actions;
pub mod api;
mod brought;
mod compose;
mod entries;
pub mod input;
mod pages;
mod store;
/// Its pages, as templates want them.
pub mod views;
mod wear;

pub use api::api;
pub use compose::NewNote;
pub use entries::{Brought, FilmNoted, NoteUndone, Noted, Wear};
pub use pages::pages;
pub use store::{Pass, WornByClass, pass, pass_at, passes, worn_by_class};
