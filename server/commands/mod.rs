//! One module a command.

/// `wetside book`
pub mod book;
/// `wetside cluster`
pub mod cluster;
/// `wetside reckon`
pub mod reckon;
/// `wetside verify`
pub mod verify;
/// Reaching an installation.
pub mod installation;
/// `wetside serve`
pub mod serve;
/// `wetside migrate`
pub mod migrate;
/// `wetside demo`
pub mod demo;
