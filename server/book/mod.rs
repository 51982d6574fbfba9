//! The book's pages: entries, filters, checkpoints.

/// Its pages.
pub mod views;
