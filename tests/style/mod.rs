//! The rules of the tree, each with its checker.

#![expect(
    clippy::unwrap_used,
    clippy::panic,
    reason = "what fails here fails the test"
)]

mod database;
mod documents;
mod handlers;
mod layers;
mod source;
mod sql;
mod templates;
mod tree;
mod words;
