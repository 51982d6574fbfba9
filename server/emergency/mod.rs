//! What to do first, open to everyone without log-in.

/// Its pages.
pub mod views;
