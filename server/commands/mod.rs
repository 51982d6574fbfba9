//! One module a command.

/// `wetside book`
pub mod book;
/// `wetside cluster`
pub mod cluster;
/// `wetside verify`
pub mod verify;
