//! The SQL of inductions.

use std::collections::BTreeMap;

use time::{Date, OffsetDateTime};
use uuid::Uuid;

use super::{Basis, Covered, Inducted, InductionConfirmed, InductionWithdrawn, Means};
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::logbook::Placed;

/// So many rows of what people hold are read at most.
const MOST_HELD: i64 = 100_000;

/// An induction as it was kept.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct Induction {
    /// The number of its entry.
    pub seq: i64,
    /// Which.
    pub id: Uuid,
    /// Who was told.
    pub person_id: Uuid,
    /// By name.
    pub person: String,
    /// Who inducted.
    pub inducer_id: Option<Uuid>,
    /// By name.
    pub inducer: Option<String>,
    /// What the record stands on.
    pub basis: Basis,
    /// The day it was given, as `2026-11-26`.
    pub given_on: String,
    /// Anything else that was said; may be empty.
    pub remark: String,
    /// The record it renews.
    pub renews_id: Option<Uuid>,
    /// When the person confirmed, and by what.
    pub confirmed: Option<(OffsetDateTime, Means)>,
    /// The entry that withdrew it, and why.
    pub withdrawn: Option<(i64, String)>,
    /// What was told, in the order of ids.
    pub topics: Vec<Covered>,
}

impl Induction {
    /// Whether the person has still to confirm it.
    #[must_use]
    pub fn waits(&self) -> bool {
        self.confirmed.is_none() && self.withdrawn.is_none()
    }
}

struct InductionRow {
    seq: i64,
    id: Uuid,
    person_id: Uuid,
    person: String,
    inducer_id: Option<Uuid>,
    inducer: Option<String>,
    basis: String,
    given_on: Date,
    remark: String,
    renews_id: Option<Uuid>,
    confirmed_at: Option<OffsetDateTime>,
    confirmed_by: Option<String>,
    withdrawn_seq: Option<i64>,
    withdrawn_reason: Option<String>,
}

impl InductionRow {
    fn read(self, topics: Vec<Covered>) -> Result<Induction> {
        let unknown = |word: &str| Error::fault(format!("no induction is {word}"));
        let by = self.confirmed_by.as_deref();
        let by = by.map(|text| Means::parse(text).ok_or_else(|| unknown(text)));
        Ok(Induction {
            seq: self.seq,
            id: self.id,
            person_id: self.person_id,
            person: self.person,
            inducer_id: self.inducer_id,
            inducer: self.inducer,
            basis: Basis::parse(&self.basis).ok_or_else(|| unknown(&self.basis))?,
            given_on: self.given_on.to_string(),
            remark: self.remark,
            renews_id: self.renews_id,
            confirmed: self.confirmed_at.zip(by.transpose()?),
            withdrawn: self.withdrawn_seq.zip(self.withdrawn_reason),
            topics,
        })
    }
}

/// Which inductions are asked for; each part that is given narrows it.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Asked {
    /// This one.
    pub(super) id: Option<Uuid>,
    /// Of this person.
    pub(super) person: Option<Uuid>,
    /// Only those that the person has still to confirm.
    pub(super) waiting: bool,
    /// Written before the entry of this number.
    pub(super) before: Option<i64>,
}

/// Inductions, the latest written first.
pub(super) async fn inductions(tx: &mut RoomTx, asked: Asked, most: i64) -> Result<Vec<Induction>> {
    let room = tx.room();
    let rows = sqlx::query_as!(
        InductionRow,
        r#"
        select
            i.seq, i.id, i.person_id, p.name as person, i.inducer_id, b.name as "inducer?",
            i.basis, i.given_on, i.remark, i.renews_id, i.confirmed_at, i.confirmed_by,
            i.withdrawn_seq, i.withdrawn_reason
        from induction i
        join person p on p.id = i.person_id
        left join person b on b.id = i.inducer_id
        where i.room_id = $1
            and ($2::uuid is null or i.id = $2)
            and ($3::uuid is null or i.person_id = $3)
            and (not $4 or (i.confirmed_seq is null and i.withdrawn_seq is null))
            and ($5::bigint is null or i.seq < $5)
        order by i.seq desc
        limit $6
        "#,
        room,
        asked.id,
        asked.person,
        asked.waiting,
        asked.before,
        most
    )
    .fetch_all(tx.db())
    .await?;
    let ids: Vec<Uuid> = rows.iter().map(|row| row.id).collect();
    let mut topics = topics_of(tx, &ids).await?;
    let mut read = |row: InductionRow| {
        let covered = topics.remove(&row.id).unwrap_or_default();
        row.read(covered)
    };
    rows.into_iter().map(&mut read).collect()
}

async fn topics_of(tx: &mut RoomTx, ids: &[Uuid]) -> Result<BTreeMap<Uuid, Vec<Covered>>> {
    let room = tx.room();
    let rows = sqlx::query!(
        r#"
        select induction_id, topic_id, version, good_until
        from induction_topic
        where room_id = $1 and induction_id = any($2)
        order by induction_id, topic_id
        "#,
        room,
        ids
    )
    .fetch_all(tx.db())
    .await?;
    let mut topics: BTreeMap<Uuid, Vec<Covered>> = BTreeMap::new();
    for row in rows {
        let covered = Covered {
            topic_id: row.topic_id,
            version: row.version,
            good_until: row.good_until.map(|day| day.to_string()),
        };
        topics.entry(row.induction_id).or_default().push(covered);
    }
    Ok(topics)
}

pub(super) async fn induction(tx: &mut RoomTx, id: Uuid) -> Result<Option<Induction>> {
    let asked = Asked {
        id: Some(id),
        ..Asked::default()
    };
    Ok(inductions(tx, asked, 1).await?.pop())
}

/// What somebody was told once, of what was not withdrawn.
#[derive(Clone, Debug)]
pub(super) struct Held {
    /// Who.
    pub(super) person_id: Uuid,
    /// What.
    pub(super) topic_id: Uuid,
    /// In which version.
    pub(super) version: i32,
    /// The last day it holds.
    pub(super) good_until: Option<String>,
    /// Whether both sides confirmed it.
    pub(super) is_confirmed: bool,
}

/// What everybody, or one person, holds.
pub(super) async fn held(tx: &mut RoomTx, person: Option<Uuid>) -> Result<Vec<Held>> {
    let room = tx.room();
    let rows = sqlx::query!(
        r#"
        select
            i.person_id, t.topic_id, t.version, t.good_until,
            i.confirmed_seq is not null as "is_confirmed!"
        from induction i
        join induction_topic t on t.room_id = i.room_id and t.induction_id = i.id
        where i.room_id = $1
            and i.withdrawn_seq is null
            and ($2::uuid is null or i.person_id = $2)
        order by i.seq, t.topic_id
        limit $3
        "#,
        room,
        person,
        MOST_HELD
    )
    .fetch_all(tx.db())
    .await?;
    let read = rows.into_iter().map(|row| Held {
        person_id: row.person_id,
        topic_id: row.topic_id,
        version: row.version,
        good_until: row.good_until.map(|day| day.to_string()),
        is_confirmed: row.is_confirmed,
    });
    Ok(read.collect())
}

pub(super) async fn insert(tx: &mut RoomTx, placed: &Placed<Inducted>) -> Result<()> {
    let room = tx.room();
    let entry = &placed.entry;
    let confirmed = entry.basis.confirms();
    sqlx::query!(
        r#"
        insert into induction (
            room_id, id, seq, person_id, inducer_id, basis, given_on, remark, renews_id,
            confirmed_seq, confirmed_at, confirmed_by, withdrawn_seq, withdrawn_reason
        )
        values ($1, $2, $3, $4, $5, $6, $7::text::date, $8, $9, $10, $11, $12, null, null)
        "#,
        room,
        entry.induction_id,
        placed.seq,
        entry.person_id,
        placed.actor,
        entry.basis.as_str(),
        entry.given_on,
        entry.remark,
        entry.renews_id,
        confirmed.map(|_| placed.seq),
        confirmed.map(|_| placed.recorded_at),
        confirmed.map(Means::as_str)
    )
    .execute(tx.db())
    .await?;
    for covered in &entry.topics {
        insert_topic(tx, entry.induction_id, covered).await?;
    }
    Ok(())
}

async fn insert_topic(tx: &mut RoomTx, induction: Uuid, covered: &Covered) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        r#"
        insert into induction_topic (room_id, induction_id, topic_id, version, good_until)
        values ($1, $2, $3, $4, $5::text::date)
        "#,
        room,
        induction,
        covered.topic_id,
        covered.version,
        covered.good_until
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

pub(super) async fn confirm(tx: &mut RoomTx, placed: &Placed<InductionConfirmed>) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        r#"
        update induction
        set confirmed_seq = $3, confirmed_at = $4, confirmed_by = $5
        where room_id = $1 and id = $2
        "#,
        room,
        placed.entry.induction_id,
        placed.seq,
        placed.recorded_at,
        placed.entry.means.as_str()
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

pub(super) async fn withdraw(tx: &mut RoomTx, placed: &Placed<InductionWithdrawn>) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        r#"
        update induction
        set withdrawn_seq = $3, withdrawn_reason = $4
        where room_id = $1 and id = $2
        "#,
        room,
        placed.entry.induction_id,
        placed.seq,
        placed.entry.reason
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

/// Keeps that people are told that what somebody holds ends; whether they were not told
/// before.
pub(super) async fn first_told_end(
    tx: &mut RoomTx,
    (person, topic): (Uuid, Uuid),
    good_until: &str,
    now: OffsetDateTime,
) -> Result<bool> {
    let room = tx.room();
    let done = sqlx::query!(
        r#"
        insert into induction_told (room_id, person_id, topic_id, good_until, told_at)
        values ($1, $2, $3, $4::text::date, $5)
        on conflict do nothing
        "#,
        room,
        person,
        topic,
        good_until,
        now
    )
    .execute(tx.db())
    .await?;
    Ok(done.rows_affected() == 1)
}

/// Keeps that stewards are told of a supplement; whether they were not told before.
pub(super) async fn first_told_supplement(
    tx: &mut RoomTx,
    product: Uuid,
    (topic, counts_from_version): (Uuid, i32),
    now: OffsetDateTime,
) -> Result<bool> {
    let room = tx.room();
    let done = sqlx::query!(
        r#"
        insert into supplement_told (
            room_id, product_id, topic_id, counts_from_version, told_at
        )
        values ($1, $2, $3, $4, $5)
        on conflict do nothing
        "#,
        room,
        product,
        topic,
        counts_from_version,
        now
    )
    .execute(tx.db())
    .await?;
    Ok(done.rows_affected() == 1)
}
