//! No right without a way to use it, in either skin.

#![expect(clippy::unwrap_used, reason = "what fails here fails the test")]

mod api;
mod rights;
mod words;
