//! One module a command.

/// `wetside book`
pub mod book;
/// `wetside cluster`
pub mod cluster;
/// `wetside demo`
pub mod demo;
/// Reaching an installation.
pub mod installation;
/// `wetside member`
pub mod member;
/// `wetside migrate`
pub mod migrate;
/// `wetside reckon`
pub mod reckon;
/// `wetside room`
pub mod room;
/// `wetside serve`
pub mod serve;
/// `wetside verify`
pub mod verify;
