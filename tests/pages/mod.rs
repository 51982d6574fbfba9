//! Every page, visited by everyone who may, over the links that pages give them.

#![expect(
    clippy::unwrap_used,
    clippy::panic,
    reason = "what fails here fails the test"
)]

mod board_tags;
pub(crate) mod checks;
mod errors;
pub(crate) mod links;
mod walk;
