//! A room's own rules, the rooms of a person, and a room that is closed.

/// Its pages.
pub mod views;
