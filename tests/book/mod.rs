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
mod inductions;
mod jobs;
mod knife;
mod mixes;
mod reading;
mod tampering;
mod the_room;
mod workshops;
