//! The bench set-up: lines and the trays on them.

/// Its pages.
pub mod views;
