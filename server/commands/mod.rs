//! One module a command.

/// `wetside book`
pub mod book;
/// `wetside cluster`
pub mod cluster;
/// `wetside member`
pub mod member;
/// `wetside reckon`
pub mod reckon;
/// `wetside room`
pub mod room;
/// `wetside verify`
pub mod verify;
