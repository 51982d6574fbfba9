//! The people of a room: their numbers, roles and invitations.

/// Its pages.
pub mod views;
