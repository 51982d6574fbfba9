//! The book's pages: entries, filters, checkpoints.

pub mod checkpoints;
/// Its pages.
pub mod views;
