//! Sheet sizes and paper classes.

/// Its pages.
pub mod views;
