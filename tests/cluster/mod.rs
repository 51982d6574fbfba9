//! The private cluster: its making, its privacy, and its life under fire.
//!
//! What PostgreSQL itself promises (recovery, signals, `pg_hba.conf`) is in its
//! manual; here it is checked that the program makes use of it.

#![expect(clippy::unwrap_used, reason = "what fails here fails the test")]

mod choice;
pub(crate) mod helpers;
mod life;
mod privacy;
mod upgrade;
