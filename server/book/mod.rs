//! The book's pages: entries, filters, checkpoints.

/// Its routes of the API.
pub mod api;
pub mod checkpoints;
/// Its pages.
pub mod views;

pub use api::api;
