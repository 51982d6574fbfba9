//! Who somebody is, and what that lets them do.
//!
//! * [`Person`] and [`Permit`] are extractors and proofs: an action demands a
//!   permit of its right, and only this module can make one.
//! * A session's secret is a cookie bound to this host; the database keeps its hash.
//! * A log-in costs one Argon2id verification or none, whoever asks and whatever
//!   is wrong, and says the same in every case.

pub mod memberships;
mod permit;
pub mod secret;
pub mod sessions;
mod store;
pub mod tokens;

pub use permit::{Membership, Permit, Person, Skin};
pub use store::person_name;
