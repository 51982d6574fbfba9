//! The SQL of reading whole books: for verifying and for taking them away.

use uuid::Uuid;

use crate::database::{InstallationTx, RoomTx};
use crate::error::Result;
use crate::logbook::chain::Stored;

/// An entry as its row has it, nothing believed. Times are microseconds since
/// 1970; one outside every calendar is the largest number.
#[derive(Clone, Debug)]
pub struct EntryRow {
    /// Whose book.
    pub room_id: Uuid,
    /// Its number.
    pub seq: i64,
    /// Hash of the entry before.
    pub prev: Vec<u8>,
    /// Its hash.
    pub hash: Vec<u8>,
    /// Version of the hash.
    pub version: i16,
    /// Its kind.
    pub kind: String,
    /// Who wrote it.
    pub actor: Option<Uuid>,
    /// The request's key.
    pub key: Option<Vec<u8>>,
    /// What the key was used for.
    pub fingerprint: Vec<u8>,
    /// When it happened.
    pub happened_at_us: i64,
    /// When it was written.
    pub recorded_at_us: i64,
    /// What it says.
    pub payload: Vec<u8>,
}

impl EntryRow {
    /// The row as the chain reads it.
    #[must_use]
    pub fn stored(&self) -> Stored<'_> {
        Stored {
            room: self.room_id,
            seq: self.seq,
            version: self.version,
            prev: &self.prev,
            hash: &self.hash,
            kind: &self.kind,
            actor: self.actor,
            key: self.key.as_deref(),
            fingerprint: &self.fingerprint,
            happened_at_us: self.happened_at_us,
            recorded_at_us: self.recorded_at_us,
            payload: &self.payload,
        }
    }
}

/// The next entries in the order of their numbers, at most `most`.
pub(in crate::logbook) async fn rows_after(
    tx: &mut RoomTx,
    after: i64,
    most: i64,
) -> Result<Vec<EntryRow>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        EntryRow,
        r#"
        select
            room_id, seq, prev, hash, version, kind, actor, key, fingerprint,
            case when isfinite(happened_at)
                then (extract(epoch from happened_at) * 1000000)::bigint
                else 9223372036854775807 end as "happened_at_us!",
            case when isfinite(recorded_at)
                then (extract(epoch from recorded_at) * 1000000)::bigint
                else 9223372036854775807 end as "recorded_at_us!",
            payload
        from entry
        where room_id = $1 and seq > $2
        order by seq
        limit $3
        "#,
        room,
        after,
        most
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found)
}

/// What is written beside entries after one number, up to another.
pub(in crate::logbook) async fn about_between(
    tx: &mut RoomTx,
    after: i64,
    last: i64,
) -> Result<Vec<(i64, String, Uuid)>> {
    let room = tx.room();
    let found = sqlx::query!(
        r#"
        select seq, noun, id
        from entry_about
        where room_id = $1 and seq > $2 and seq <= $3
        order by seq, noun, id
        "#,
        room,
        after,
        last
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found
        .into_iter()
        .map(|row| (row.seq, row.noun, row.id))
        .collect())
}

/// The database's own note of where the book ends.
#[derive(Clone, Debug)]
pub(in crate::logbook) struct HeadRow {
    pub(in crate::logbook) seq: i64,
    pub(in crate::logbook) hash: Vec<u8>,
    pub(in crate::logbook) recorded_at_us: i64,
}

pub(in crate::logbook) async fn head(tx: &mut RoomTx) -> Result<Option<HeadRow>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        HeadRow,
        r#"
        select
            seq, hash,
            case when isfinite(recorded_at)
                then (extract(epoch from recorded_at) * 1000000)::bigint
                else 9223372036854775807 end as "recorded_at_us!"
        from head
        where room_id = $1
        "#,
        room
    )
    .fetch_optional(tx.db())
    .await?;
    Ok(found)
}

/// The room's short name in addresses, as kept: a rehearsal shadows the table.
pub(in crate::logbook) async fn slug(tx: &mut RoomTx) -> Result<Option<String>> {
    let room = tx.room();
    let found = sqlx::query_scalar!("select slug from public.room_name where room_id = $1", room)
        .fetch_optional(tx.db())
        .await?;
    Ok(found)
}

/// The room of a short name.
pub(in crate::logbook) async fn room_of(
    tx: &mut InstallationTx,
    slug: &str,
) -> Result<Option<Uuid>> {
    let found = sqlx::query_scalar!("select room_id from room_name where slug = $1", slug)
        .fetch_optional(tx.db())
        .await?;
    Ok(found)
}
