//! Reading whole books, as they are stored.

use std::io::Write;

use uuid::Uuid;

use super::chain::{DEMO_KIND, Head};
use super::checkpoint::Checkpoint;
use super::export;
use super::store::hash_of;
use super::vault::Vault;
use crate::database::{Owner, RoomTx};
use crate::error::{Error, Result};

pub(super) mod store;

pub use store::EntryRow;

/// Entries read at a time.
pub const PAGE: i64 = 500;

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

/// Whether the room is a demo of invented people.
///
/// # Errors
/// That the database is away.
pub async fn is_demo(tx: &mut RoomTx) -> Result<bool> {
    let first = super::store::first_kind(tx).await?;
    Ok(first.as_deref() == Some(DEMO_KIND))
}

/// Writes a room's whole book and its checkpoints out; answers how many entries.
///
/// # Errors
/// That the database is away, or that `out` refuses.
pub async fn write_out(
    owner: &Owner,
    vault: &Vault,
    room: Uuid,
    mut out: impl Write + Send + 'static,
) -> Result<i64> {
    // Read first: every entry they seal is then in what is read after.
    let shelf = vault
        .shelf(room)
        .map_err(|cause| Error::Internal(cause.into()))?;
    owner
        .reading_room(room, |tx| {
            Box::pin(async move {
                let entries = write_entries(tx, &mut out).await?;
                write_checkpoints(&mut out, &shelf.checkpoints)?;
                out.flush().map_err(refused)?;
                Ok(entries)
            })
        })
        .await
}

async fn write_entries(tx: &mut RoomTx, out: &mut (impl Write + Send)) -> Result<i64> {
    write_header(tx, out).await?;
    let (mut after, mut entries) = (i64::MIN, 0);
    while let Some((last, count)) = write_page(tx, out, after, &|_| true).await? {
        after = last;
        entries += count;
    }
    Ok(entries)
}

/// Writes a book's first line.
///
/// # Errors
/// That the database is away, or that `out` refuses.
pub async fn write_header(tx: &mut RoomTx, out: &mut (impl Write + Send)) -> Result<()> {
    export::write_header(out, tx.room(), is_demo(tx).await?).map_err(refused)
}

/// Writes the next entries, of those that are not shown their place alone; answers
/// the last one's number and how many they are, or nothing at the end of the book.
///
/// # Errors
/// That the database is away, or that `out` refuses.
pub async fn write_page(
    tx: &mut RoomTx,
    out: &mut (impl Write + Send),
    after: i64,
    is_shown: &(dyn Fn(i64) -> bool + Sync),
) -> Result<Option<(i64, i64)>> {
    let rows = store::rows_after(tx, after, PAGE).await?;
    let mut count = 0;
    for row in &rows {
        let written = match is_shown(row.seq) {
            true => export::write_entry(out, &row.stored()),
            false => export::write_withheld(out, &row.stored()),
        };
        written.map_err(refused)?;
        count += 1;
    }
    Ok(rows.last().map(|last| (last.seq, count)))
}

/// Writes checkpoints behind a book's last entry.
///
/// # Errors
/// That `out` refuses.
pub fn write_checkpoints(out: &mut impl Write, checkpoints: &[Checkpoint]) -> Result<()> {
    for checkpoint in checkpoints {
        export::write_checkpoint(out, checkpoint).map_err(refused)?;
    }
    Ok(())
}

fn refused(cause: std::io::Error) -> Error {
    Error::Internal(cause.into())
}
