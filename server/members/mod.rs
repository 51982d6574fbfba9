//! Members: who is in a room and as what.
//!
//! A steward acts on a membership, never on a person's credential: the one
//! exception, a link for a new password, is narrow, stands in the book and is
//! shown to its person.

pub mod actions;
/// Its routes of the API.
pub mod api;
mod entries;
pub mod join_pages;
mod joining;
mod machine;
pub mod pages;
mod store;
/// Its pages, as templates want them.
pub mod views;

pub use api::api;
pub use entries::{
    AccessEnded, InvitationRevoked, Invited, Joined, ResetLinkMade, Restored, RoleChanged,
    Suspended,
};
pub use joining::{Joiner, accept, add_account, join, write_invitation};
pub use machine::{Account, account, accounts, make_steward, reset, set_suspended};
pub use store::{Member, everyone, members};
