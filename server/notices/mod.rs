//! What a person should know, kept until read.

/// Its pages.
pub mod views;
