//! The board: every tray's verdict, reason and next change, true for everyone in the room.

/// Its pages.
pub mod views;
