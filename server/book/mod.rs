//! The book's pages: entries, filters, checkpoints, the book as a file.
//!
//! A kind of entry that is not shown to somebody still has its number: the
//! numbering stays whole, and nothing else of it leaves the database.

pub mod checkpoints;
/// An entry's text as a table.
pub mod figures;
/// The book as a table for other programs, and whole.
pub mod files;
/// What is asked for, and by whom.
pub mod filter;
/// Names for ids.
pub mod names;
pub mod reading;
mod store;
/// Its pages.
pub mod views;

pub use store::{Line, Sealed, Shown};
