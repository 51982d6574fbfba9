//! Reading whole books, as they are stored.

pub(super) mod store;

pub use store::EntryRow;

use uuid::Uuid;

use super::chain::Head;
use super::store::hash_of;
use crate::database::{Owner, RoomTx};
use crate::error::{Error, Result};

/// Entries read at a time.
pub(super) const PAGE: i64 = 500;

/// The room of a short name.
///
/// # Errors
/// [`Error::NotFound`] where there is none.
pub async fn room_of(owner: &Owner, slug: &str) -> Result<Uuid> {
    let slug = slug.to_owned();
    owner
        .reading(move |tx| Box::pin(async move { store::room_of(tx, &slug).await }))
        .await?
        .ok_or(Error::NotFound)
}

/// Where a room's book ends.
///
/// # Errors
/// [`Error::NotFound`] for a room without a book.
pub async fn head(tx: &mut RoomTx) -> Result<Head> {
    let head = store::head(tx).await?.ok_or(Error::NotFound)?;
    Ok(Head {
        seq: head.seq,
        hash: hash_of(head.hash)?,
    })
}

/// The next entries in the order of their numbers, at most `most`.
///
/// # Errors
/// That the database is away.
pub async fn rows_after(tx: &mut RoomTx, after: i64, most: i64) -> Result<Vec<EntryRow>> {
    store::rows_after(tx, after, most).await
}
