//! The book's SQL.

use time::OffsetDateTime;
use uuid::Uuid;

use super::book::{Fingerprint, Head};
use super::chain::{self, Link};
use super::entry::About;
use crate::clock::moment;
use crate::database::{InstallationTx, RoomTx};
use crate::error::{Error, Result};

/// Locks the room's head: the first statement of every write, alone.
pub(super) async fn lock_head(tx: &mut RoomTx) -> Result<Option<Head>> {
    let room = tx.room();
    let found = sqlx::query!(
        "select seq, hash, recorded_at from head where room_id = $1 for update",
        room
    )
    .fetch_optional(tx.db())
    .await?;
    found
        .map(|row| {
            Ok(Head {
                seq: row.seq,
                hash: hash_of(row.hash)?,
                recorded_at: row.recorded_at,
            })
        })
        .transpose()
}

/// Where the room's book ends, as this transaction sees it.
///
/// # Errors
/// [`Error::NotFound`] for a room without a book.
pub async fn head(tx: &mut RoomTx) -> Result<Head> {
    let room = tx.room();
    let found = sqlx::query!(
        "select seq, hash, recorded_at from head where room_id = $1",
        room
    )
    .fetch_optional(tx.db())
    .await?
    .ok_or(Error::NotFound)?;
    Ok(Head {
        seq: found.seq,
        hash: hash_of(found.hash)?,
        recorded_at: found.recorded_at,
    })
}

/// The hash of an entry, where the book has it.
///
/// # Errors
/// The database's.
pub async fn hash_at(tx: &mut RoomTx, seq: i64) -> Result<Option<[u8; 32]>> {
    let room = tx.room();
    let found = sqlx::query_scalar!(
        "select hash from entry where room_id = $1 and seq = $2",
        room,
        seq
    )
    .fetch_optional(tx.db())
    .await?;
    found.map(hash_of).transpose()
}

/// Where the books of these rooms end.
///
/// # Errors
/// The database's.
pub async fn heads(tx: &mut InstallationTx, rooms: &[Uuid]) -> Result<Vec<(Uuid, Head)>> {
    if rooms.is_empty() {
        return Ok(Vec::new());
    }
    let found = sqlx::query!(
        "select room_id, seq, hash, recorded_at from head where room_id = any($1)",
        rooms
    )
    .fetch_all(tx.db())
    .await?;
    found
        .into_iter()
        .map(|row| {
            let head = Head {
                seq: row.seq,
                hash: hash_of(row.hash)?,
                recorded_at: row.recorded_at,
            };
            Ok((row.room_id, head))
        })
        .collect()
}

/// Reads 32 bytes from a column.
pub(super) fn hash_of(bytes: Vec<u8>) -> Result<[u8; 32]> {
    bytes
        .try_into()
        .map_err(|_| Error::fault("a hash of the book is not 32 bytes long"))
}

/// Starts a room's book, empty.
pub(super) async fn insert_head(tx: &mut RoomTx, head: &Head) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        "insert into head (room_id, seq, hash, recorded_at) values ($1, $2, $3, $4)",
        room,
        head.seq,
        &head.hash,
        head.recorded_at
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

pub(super) async fn first_kind(tx: &mut RoomTx) -> Result<Option<String>> {
    let room = tx.room();
    let kind = sqlx::query_scalar!(
        "select kind from entry where room_id = $1 and seq = 1",
        room
    )
    .fetch_optional(tx.db())
    .await?;
    Ok(kind)
}

/// Entries to insert, column by column.
#[derive(Debug, Default)]
pub(super) struct EntryRows {
    seq: Vec<i64>,
    prev: Vec<Vec<u8>>,
    hash: Vec<Vec<u8>>,
    kind: Vec<String>,
    actor: Vec<Option<Uuid>>,
    key: Vec<Option<Vec<u8>>>,
    fingerprint: Vec<Vec<u8>>,
    happened_at: Vec<OffsetDateTime>,
    recorded_at: Vec<OffsetDateTime>,
    payload: Vec<Vec<u8>>,
    about_seq: Vec<i64>,
    about_noun: Vec<String>,
    about_id: Vec<Uuid>,
}

impl EntryRows {
    pub(super) fn push(&mut self, link: &Link<'_>, hash: &[u8; 32], about: &[About]) {
        self.seq.push(link.seq);
        self.prev.push(link.prev.to_vec());
        self.hash.push(hash.to_vec());
        self.kind.push(link.kind.to_owned());
        self.actor.push(link.actor);
        self.key.push(link.key.map(|key| key.to_vec()));
        self.fingerprint.push(link.fingerprint.to_vec());
        self.happened_at.push(moment(link.happened_at_us));
        self.recorded_at.push(moment(link.recorded_at_us));
        self.payload.push(link.payload.to_vec());
        for thing in about {
            self.about_seq.push(link.seq);
            self.about_noun.push(thing.noun.to_owned());
            self.about_id.push(thing.id);
        }
    }
}

/// Writes entries, what each is about, and where the book now ends.
pub(super) async fn insert_entries(tx: &mut RoomTx, rows: EntryRows, head: &Head) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        r#"
        with written as (
            insert into entry (
                room_id, version, seq, prev, hash, kind, actor, key, fingerprint, happened_at,
                recorded_at, payload
            )
            select $1, $2::smallint, t.*
            from unnest(
                $3::bigint[], $4::bytea[], $5::bytea[], $6::text[], $7::uuid[], $8::bytea[],
                $9::bytea[], $10::timestamptz[], $11::timestamptz[], $12::bytea[]
            ) t
        ), told as (
            insert into entry_about (room_id, seq, noun, id)
            select $1, t.*
            from unnest($13::bigint[], $14::text[], $15::uuid[]) t
        )
        update head set seq = $16, hash = $17, recorded_at = $18 where room_id = $1
        "#,
        room,
        i16::from(chain::VERSION),
        &rows.seq,
        &rows.prev,
        &rows.hash,
        &rows.kind,
        &rows.actor as &[Option<Uuid>],
        &rows.key as &[Option<Vec<u8>>],
        &rows.fingerprint,
        &rows.happened_at,
        &rows.recorded_at,
        &rows.payload,
        &rows.about_seq,
        &rows.about_noun,
        &rows.about_id,
        head.seq,
        &head.hash,
        head.recorded_at
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

/// What an entry is about, as written beside it.
pub(super) async fn about(tx: &mut RoomTx, seq: i64) -> Result<Vec<(String, Uuid)>> {
    let room = tx.room();
    let found = sqlx::query!(
        "select noun, id from entry_about where room_id = $1 and seq = $2 order by noun, id",
        room,
        seq
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found.into_iter().map(|row| (row.noun, row.id)).collect())
}

/// What stands already under a request's key, and who asks.
#[derive(Debug)]
pub(super) struct Asking {
    /// The number of the entry under the key.
    seq: Option<i64>,
    actor: Option<Uuid>,
    fingerprint: Option<Vec<u8>>,
    /// What the writer is in the room now; nothing for whoever may not act there.
    pub(super) role: Option<String>,
    pub(super) is_closed: bool,
}

impl Asking {
    /// The entry under the key, with whether it is of this actor and for this thing.
    pub(super) fn keyed(&self, by: Option<Uuid>, fingerprint: &Fingerprint) -> Option<(i64, bool)> {
        let same_thing = self.fingerprint.as_deref() == Some(fingerprint.as_slice());
        self.seq.map(|seq| (seq, self.actor == by && same_thing))
    }
}

/// One row for each request, in their order. Each thing is looked up by its key, as
/// in every statement of a note: a plan that was made while the tables were small,
/// which joined whole rooms, would be kept when they have grown.
pub(super) async fn asking(
    tx: &mut RoomTx,
    keys: &[Option<Vec<u8>>],
    writers: &[Option<Uuid>],
) -> Result<Vec<Asking>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        Asking,
        r#"
        select
            e.seq as "seq?",
            e.actor as "actor?",
            e.fingerprint as "fingerprint?",
            m.role as "role?",
            n.closed_at is not null as "is_closed!"
        from unnest($2::bytea[], $3::uuid[]) with ordinality as i (key, writer, item)
        join room_name n on n.room_id = $1
        left join lateral (
            select seq, actor, fingerprint from entry where room_id = $1 and key = i.key limit 1
        ) e on true
        left join lateral (
            select role
            from membership
            where room_id = $1 and person_id = i.writer and suspended_at is null and ended_at is null
            limit 1
        ) m on true
        order by i.item
        "#,
        room,
        keys as &[Option<Vec<u8>>],
        writers as &[Option<Uuid>]
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found)
}

/// Text beside an entry; none once it was erased.
#[derive(Debug)]
pub(super) struct BesideRow {
    pub(super) seq: i64,
    pub(super) words: Option<String>,
}

/// What lies beside an entry, by its salted hash; none once it was erased.
#[derive(Debug)]
pub(super) struct BesideHash {
    pub(super) seq: i64,
    pub(super) sha256: Option<String>,
    pub(super) erased_seq: Option<i64>,
}

pub(super) async fn lay_beside(
    tx: &mut RoomTx,
    seq: i64,
    salt: &[u8],
    (words, file): (Option<&str>, Option<&[u8]>),
) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        r#"
        insert into beside (room_id, seq, salt, words, file, erased_seq)
        values ($1, $2, $3, $4, $5, null)
        "#,
        room,
        seq,
        salt,
        words,
        file
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

pub(super) async fn beside(tx: &mut RoomTx, seqs: &[i64]) -> Result<Vec<BesideRow>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        BesideRow,
        "select seq, words from beside where room_id = $1 and seq = any($2)",
        room,
        seqs
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found)
}

pub(super) async fn file_beside(tx: &mut RoomTx, seq: i64) -> Result<Option<Vec<u8>>> {
    let room = tx.room();
    let found = sqlx::query_scalar!(
        "select file from beside where room_id = $1 and seq = $2",
        room,
        seq
    )
    .fetch_optional(tx.db())
    .await?;
    Ok(found.flatten())
}

/// All of a room, for verifying its book: the database hashes, so that no file travels.
pub(super) async fn all_beside(tx: &mut RoomTx) -> Result<Vec<BesideHash>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        BesideHash,
        r#"
        select
            seq,
            encode(sha256(salt || coalesce(convert_to(words, 'UTF8'), file)), 'hex') as sha256,
            erased_seq
        from beside
        where room_id = $1
        order by seq
        "#,
        room
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found)
}

pub(super) async fn erase_beside(tx: &mut RoomTx, seq: i64, by: i64) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        r#"
        update beside
        set salt = null, words = null, file = null, erased_seq = $3
        where room_id = $1 and seq = $2
        "#,
        room,
        seq,
        by
    )
    .execute(tx.db())
    .await?;
    Ok(())
}
