//! One module a command.

/// `wetside cluster`
pub mod cluster;
