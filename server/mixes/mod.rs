//! Mixes: mixing at 1+N into a tray, and discarding what stands there.

/// Its pages.
pub mod views;
