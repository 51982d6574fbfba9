//! The book's pages: entries, filters, checkpoints, the book as a file.
//!
//! A kind of entry that is not shown to somebody still has its number: the
//! numbering stays whole, and nothing else of it leaves the database.

/// The book as JSON.
pub mod api;
mod ask;
mod checkpoint_pages;
pub mod checkpoints;
/// An entry's text as a table.
pub mod figures;
/// The book as a table for other programs, and whole.
pub mod files;
/// What is asked for, and by whom.
pub mod filter;
/// Names for ids.
pub mod names;
mod pages;
pub mod reading;
mod store;
/// Its pages.
pub mod views;

pub use api::api;
pub use pages::pages;
pub use store::{Line, Sealed, Shown, Verified, last_verified};
