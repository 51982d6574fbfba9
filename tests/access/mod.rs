//! Who may do what: every route asked by everyone, and no right without a way to
//! use it, in either skin.

#![expect(
    clippy::unwrap_used,
    clippy::panic,
    reason = "what fails here fails the test"
)]

mod air;
mod api;
mod checks;
mod fittings;
pub(crate) mod house;
mod incidents;
mod inductions;
mod ingredients;
mod lamps;
mod matrix;
mod rights;
pub(crate) mod screens;
pub(crate) mod tables;
mod words;
mod workshops;
