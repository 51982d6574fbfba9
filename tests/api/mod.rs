//! The API through the whole router, against a database of its own.

mod document;
mod envelope;
mod figures;
mod keys;
pub(crate) mod room;
mod tokens;
mod walk;
