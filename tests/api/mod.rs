//! The API through the whole router, against a database of its own.

#![expect(clippy::unwrap_used, reason = "what fails here fails the test")]

mod bench;
mod chemistry;
mod document;
mod envelope;
mod feed;
mod figures;
mod keys;
mod notes;
mod people;
mod readings;
pub(crate) mod room;
mod tokens;
mod walk;
