//! One tray: what stands in it, the arithmetic behind its verdict, and its events.

/// Its pages.
pub mod views;
