//! The book pages' SQL. What is not shown to the reader never leaves the database.

use time::OffsetDateTime;
use uuid::Uuid;

use super::filter::{Filter, Reader};
use crate::database::RoomTx;
use crate::error::Result;

/// An entry as its reader may see it: of one that is not shown, the number.
#[derive(Clone, Debug)]
pub struct Line {
    /// Its number.
    pub seq: i64,
    /// Its content, where it is shown.
    pub shown: Option<Shown>,
}

/// What is shown of an entry.
#[derive(Clone, Debug)]
pub struct Shown {
    /// Its kind.
    pub kind: String,
    /// Who wrote it; nobody for the program itself.
    pub actor: Option<Uuid>,
    /// When it happened.
    pub happened_at: OffsetDateTime,
    /// When it was written.
    pub recorded_at: OffsetDateTime,
    /// What it says.
    pub payload: Vec<u8>,
}

struct LineRow {
    seq: i64,
    kind: Option<String>,
    actor: Option<Uuid>,
    happened_at: Option<OffsetDateTime>,
    recorded_at: Option<OffsetDateTime>,
    payload: Option<Vec<u8>>,
}

impl LineRow {
    fn line(self) -> Line {
        let shown = match (self.kind, self.happened_at, self.recorded_at, self.payload) {
            (Some(kind), Some(happened_at), Some(recorded_at), Some(payload)) => Some(Shown {
                kind,
                actor: self.actor,
                happened_at,
                recorded_at,
                payload,
            }),
            _ => None,
        };
        Line {
            seq: self.seq,
            shown,
        }
    }
}

/// Entries before a number, newest first.
pub(super) async fn before(
    tx: &mut RoomTx,
    reader: &Reader,
    filter: &Filter,
    before: i64,
    most: i64,
) -> Result<Vec<Line>> {
    let found = sqlx::query_as!(
        LineRow,
        r#"
        select
            e.seq,
            case when s.shown then e.kind end as kind,
            case when s.shown then e.actor end as actor,
            case when s.shown then e.happened_at end as happened_at,
            case when s.shown then e.recorded_at end as recorded_at,
            case when s.shown then e.payload end as payload
        from entry e
        cross join lateral (
            select $2 or e.kind = any($3) or e.kind = any($4) and exists (
                select from entry_about a
                where a.room_id = e.room_id and a.seq = e.seq and a.noun = 'person' and a.id = $5
            ) as shown
        ) s
        where e.room_id = $1
            and e.seq < $6
            and (s.shown or not $7)
            and ($8::text is null or e.kind = $8)
            and ($9::text is null and $10::uuid is null or exists (
                select from entry_about a
                where a.room_id = e.room_id and a.seq = e.seq
                    and ($9 is null or a.noun = $9) and ($10 is null or a.id = $10)
            ))
            and ($11::uuid is null or e.actor = $11 or exists (
                select from entry_about a
                where a.room_id = e.room_id and a.seq = e.seq and a.noun = 'person' and a.id = $11
            ))
            and e.happened_at >= coalesce($12::timestamptz, '-infinity')
            and e.happened_at < coalesce($13::timestamptz, 'infinity')
            and e.recorded_at >= coalesce($14::timestamptz, '-infinity')
            and e.recorded_at < coalesce($15::timestamptz, 'infinity')
        order by e.seq desc
        limit $16
        "#,
        tx.room(),
        reader.sees_all,
        &reader.open,
        &reader.own,
        reader.person,
        before,
        filter.asks_about_content(),
        filter.kind,
        filter.noun,
        filter.id,
        filter.person,
        filter.happened_from,
        filter.happened_before,
        filter.recorded_from,
        filter.recorded_before,
        most
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found.into_iter().map(LineRow::line).collect())
}

/// Entries after a number, oldest first: nothing is left out.
pub(super) async fn after(
    tx: &mut RoomTx,
    reader: &Reader,
    after: i64,
    most: i64,
) -> Result<Vec<Line>> {
    let found = sqlx::query_as!(
        LineRow,
        r#"
        select
            e.seq,
            case when s.shown then e.kind end as kind,
            case when s.shown then e.actor end as actor,
            case when s.shown then e.happened_at end as happened_at,
            case when s.shown then e.recorded_at end as recorded_at,
            case when s.shown then e.payload end as payload
        from entry e
        cross join lateral (
            select $2 or e.kind = any($3) or e.kind = any($4) and exists (
                select from entry_about a
                where a.room_id = e.room_id and a.seq = e.seq and a.noun = 'person' and a.id = $5
            ) as shown
        ) s
        where e.room_id = $1 and e.seq > $6
        order by e.seq
        limit $7
        "#,
        tx.room(),
        reader.sees_all,
        &reader.open,
        &reader.own,
        reader.person,
        after,
        most
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found.into_iter().map(LineRow::line).collect())
}

/// What the chain keeps of an entry.
#[derive(Clone, Debug)]
pub struct Sealed {
    /// Version of its hash.
    pub version: i16,
    /// Its hash.
    pub hash: Vec<u8>,
    /// Hash of the entry before.
    pub prev: Vec<u8>,
    /// The request's key.
    pub key: Option<Vec<u8>>,
    /// What the key was used for.
    pub fingerprint: Vec<u8>,
}

pub(super) async fn sealed(tx: &mut RoomTx, seq: i64) -> Result<Option<Sealed>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        Sealed,
        r#"
        select version, hash, prev, key, fingerprint
        from entry
        where room_id = $1 and seq = $2
        "#,
        room,
        seq
    )
    .fetch_optional(tx.db())
    .await?;
    Ok(found)
}

/// What entries are about.
pub(super) async fn about(tx: &mut RoomTx, seqs: &[i64]) -> Result<Vec<(i64, String, Uuid)>> {
    let room = tx.room();
    let found = sqlx::query!(
        r#"
        select seq, noun, id
        from entry_about
        where room_id = $1 and seq = any($2)
        order by seq, noun, id
        "#,
        room,
        seqs
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found
        .into_iter()
        .map(|row| (row.seq, row.noun, row.id))
        .collect())
}

/// Which entries were reversed, each with the number of the entry that did it:
/// notes are what can be reversed.
pub(super) async fn reversals(tx: &mut RoomTx, seqs: &[i64]) -> Result<Vec<(i64, i64)>> {
    let room = tx.room();
    let found = sqlx::query!(
        r#"
        select seq, reversed_by as "reversed_by!"
        from pass
        where room_id = $1
            and reversed_by is not null
            and (seq = any($2) or reversed_by = any($2))
        "#,
        room,
        seqs
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found
        .into_iter()
        .map(|row| (row.seq, row.reversed_by))
        .collect())
}

/// The names of whatever is named in this room, by id.
pub(super) async fn names(tx: &mut RoomTx, ids: &[Uuid]) -> Result<Vec<(Uuid, String)>> {
    let room = tx.room();
    let found = sqlx::query!(
        r#"
        select id as "id!", name as "name!"
        from (
            select id, name from person where id = any($2)
            union all
            select id, name from line where room_id = $1 and id = any($2)
            union all
            select id, name from tray where room_id = $1 and id = any($2)
            union all
            select id, name from space where room_id = $1 and id = any($2)
            union all
            select id, title from workshop where room_id = $1 and id = any($2)
            union all
            select id, name from bottle where room_id = $1 and id = any($2)
            union all
            select id, name from lamp where room_id = $1 and id = any($2)
            union all
            select t.id, v.title
            from topic t
            join topic_version v
                on v.room_id = t.room_id and v.topic_id = t.id and v.version = t.version
            where t.room_id = $1 and t.id = any($2)
            union all
            select id, name from room_check where room_id = $1 and id = any($2)
            union all
            select id, name from product where room_id = $1 and id = any($2)
            union all
            select s.id, 'Stock solution of ' || p.name
            from stock_solution s
            join product p on p.room_id = s.room_id and p.id = s.product_id
            where s.room_id = $1 and s.id = any($2)
            union all
            select id, name from screen where room_id = $1 and id = any($2)
            union all
            select id, name from sheet_size where room_id = $1 and id = any($2)
            union all
            select id, name from paper_class where room_id = $1 and id = any($2)
        ) named
        "#,
        room,
        ids
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found.into_iter().map(|row| (row.id, row.name)).collect())
}

/// The people of the room, by name: for a steward's filter.
pub(super) async fn people(tx: &mut RoomTx) -> Result<Vec<(Uuid, String)>> {
    let room = tx.room();
    let found = sqlx::query!(
        r#"
        select p.id, p.name
        from membership m
        join person p on p.id = m.person_id
        where m.room_id = $1
        order by p.name, p.id
        limit 2000
        "#,
        room
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found.into_iter().map(|row| (row.id, row.name)).collect())
}

/// What verifying the book came to, the last time.
#[derive(Clone, Copy, Debug)]
pub struct Verified {
    /// When.
    pub at: OffsetDateTime,
    /// How many entries there were.
    pub entries: i64,
    /// How much did not agree.
    pub findings: i64,
}

/// The last look at the whole book.
///
/// # Errors
/// The database's.
pub async fn last_verified(tx: &mut RoomTx) -> Result<Option<Verified>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        Verified,
        r#"
        select at, entries, findings
        from verification
        where room_id = $1
        order by at desc
        limit 1
        "#,
        room
    )
    .fetch_optional(tx.db())
    .await?;
    Ok(found)
}
