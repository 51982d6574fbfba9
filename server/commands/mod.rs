//! One module a command.

/// `wetside book`
pub mod book;
/// `wetside cluster`
pub mod cluster;
/// `wetside reckon`
pub mod reckon;
/// `wetside verify`
pub mod verify;
