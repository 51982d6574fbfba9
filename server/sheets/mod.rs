//! Notes of sheets that went down a line, and their undoing.

/// Its pages.
pub mod views;
