//! The room's book: entries, their hash chain, checkpoints and verification.
//!
//! Everything people do is one entry in their room's book, and every row a page
//! shows is what the entries so far have made of it, written in the same
//! transaction. Entries are numbered without gaps under the lock on the room's
//! head, chained by hash over the bytes as first written, and never changed.

use sha2::{Digest, Sha256};

use crate::error::Result;

mod ask;
/// Personal text beside entries, which can be erased.
pub mod beside;
mod book;
/// The hash chain and the walk that verifies it.
pub mod chain;
/// Signed marks outside the database.
pub mod checkpoint;
mod entry;
/// The book as a file for anyone outside.
pub mod export;
/// The installation's key file.
pub mod keys;
/// Whole books, as they are stored.
pub mod reading;
/// What the entries make, made once more.
pub mod replay;
mod scribe;
/// The chain compared with its checkpoints.
pub mod seals;
mod store;
/// What is kept outside the database.
pub mod vault;
/// Verifying a book.
pub mod verify;
/// What verifying found.
pub mod verify_report;

pub use ask::{Author, Composed, Done, Grouped};
pub use book::{Asked, Book, Draft, Fingerprint, Head, Key, Recording};
pub use entry::{About, Entry, Kind, Kinds, Placed, SeenBy, Written, through_screen};
pub use scribe::{OnCommit, Scribes};
pub use store::{hash_at, head, heads};

/// What a key was used for: the SHA-256 of an action's name and its input as read.
///
/// # Errors
/// Input that JSON cannot hold.
pub fn fingerprint(action: &str, input: &impl serde::Serialize) -> Result<Fingerprint> {
    let mut hasher = Sha256::new();
    hasher.update(action.as_bytes());
    hasher.update([0]);
    hasher.update(serde_json::to_vec(input)?);
    Ok(hasher.finalize().into())
}
