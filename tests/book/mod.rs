//! The reading side of the book: verifying under tampering, who sees what,
//! jobs, notices.

#![expect(
    clippy::panic,
    clippy::unwrap_used,
    reason = "what fails here fails the test"
)]

mod bench;
mod catalogue;
mod helpers;
mod incidents;
mod inductions;
mod jobs;
mod knife;
mod mixes;
mod reading;
mod taken_away;
mod tampering;
mod the_room;
mod workshops;
