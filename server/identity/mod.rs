//! Who somebody is, and what that lets them do.
//!
//! * `Person` and `Permit` are extractors and proofs: an action demands a
//!   permit of its right, and only this module can make one.
//! * A session's secret is a cookie bound to this host; the database keeps its hash.
//! * A log-in costs one Argon2id verification or none, whoever asks and whatever
//!   is wrong, and says the same in every case.

pub mod accounts;
mod cache;
pub mod client;
mod easy;
mod entrance;
mod lasting;
pub mod links;
pub mod memberships;
pub mod names;
pub mod pages;
pub mod passwords;
mod permit;
pub mod secret;
pub mod sessions;
mod store;
pub mod throttle;
pub mod token_pages;
pub mod tokens;
/// Its pages, as templates want them.
pub mod views;

pub use client::Client;
pub use entrance::Entrance;
pub use lasting::Lasting;

pub use permit::{Membership, Permit, Person, Skin, permit_for};
pub use store::person_name;
