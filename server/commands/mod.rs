//! One module a command.

/// `wetside cluster`
pub mod cluster;
/// `wetside reckon`
pub mod reckon;
