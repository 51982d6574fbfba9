//! The room's book.

/// The hash chain and the walk that verifies it.
pub mod chain;
/// Signed marks outside the database.
pub mod checkpoint;
/// The book as a file for anyone outside.
pub mod export;
/// The installation's key file.
pub mod keys;
/// The chain compared with its checkpoints.
pub mod seals;
