//! Who gets in, and what a steward may do to whom.

#![expect(
    clippy::unwrap_used,
    clippy::panic,
    reason = "what fails here fails the test"
)]

mod helpers;
mod links;
mod log_in;
mod pages;
mod sessions;
mod stewards;
mod tokens;
