//! The incidents' SQL.

use time::OffsetDateTime;
use uuid::Uuid;

use super::{AvoidNote, IncidentLookedAt, IncidentReported};
use crate::database::RoomTx;
use crate::error::Result;
use crate::logbook::Placed;

/// An incident, as far as the book knows it.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct Incident {
    /// Which.
    pub id: Uuid,
    /// Its number in the room.
    pub number: i64,
    /// To whom it happened.
    pub person_id: Uuid,
    /// By name.
    pub person: String,
    /// Who reported it, by name.
    pub reported_by: Option<String>,
    /// When.
    pub reported_at: OffsetDateTime,
    /// The number of its entry.
    pub reported_seq: i64,
    /// The entry that says that it is dealt with.
    pub finished_seq: Option<i64>,
    /// The entry that says that it was erased.
    pub erased_seq: Option<i64>,
}

/// Somebody who looked at it.
#[derive(Clone, Debug, Eq, PartialEq)]
pub(super) struct Look {
    /// Who, by name.
    pub(super) person: Option<String>,
    /// When.
    pub(super) looked_at: OffsetDateTime,
}

/// Incidents of one person, or of all; the latest first.
pub(super) async fn incidents(
    tx: &mut RoomTx,
    (id, person): (Option<Uuid>, Option<Uuid>),
    most: i64,
) -> Result<Vec<Incident>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        Incident,
        r#"
        select
            i.id, i.number, i.person_id, p.name as person, r.name as "reported_by?",
            i.reported_at, i.reported_seq, i.finished_seq, i.erased_seq
        from incident i
        join person p on p.id = i.person_id
        left join person r on r.id = i.reported_by
        where i.room_id = $1
            and ($2::uuid is null or i.id = $2)
            and ($3::uuid is null or i.person_id = $3)
        order by i.number desc
        limit $4
        "#,
        room,
        id,
        person,
        most
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found)
}

pub(super) async fn incident(tx: &mut RoomTx, id: Uuid) -> Result<Option<Incident>> {
    Ok(incidents(tx, (Some(id), None), 1).await?.pop())
}

/// The numbers of those that are not dealt with.
///
/// # Errors
/// The database's.
pub async fn unfinished(tx: &mut RoomTx) -> Result<Vec<i64>> {
    let room = tx.room();
    let found = sqlx::query_scalar!(
        r#"
        select number
        from incident
        where room_id = $1 and finished_seq is null
        order by number
        limit 1000
        "#,
        room
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found)
}

/// How many incidents a period had.
#[derive(Clone, Copy, Debug, Eq, PartialEq)]
pub(super) struct Counted {
    /// Reported in it.
    pub(super) reported: i64,
    /// Of those: not dealt with.
    pub(super) unfinished: i64,
}

pub(super) async fn counted(
    tx: &mut RoomTx,
    (from, before): (OffsetDateTime, OffsetDateTime),
) -> Result<Counted> {
    let room = tx.room();
    let found = sqlx::query_as!(
        Counted,
        r#"
        select
            count(*) as "reported!",
            count(*) filter (where finished_seq is null) as "unfinished!"
        from incident
        where room_id = $1 and reported_at >= $2 and reported_at < $3
        "#,
        room,
        from,
        before
    )
    .fetch_one(tx.db())
    .await?;
    Ok(found)
}

/// The name of somebody who is or was in the room.
pub(super) async fn name_of(tx: &mut RoomTx, person: Uuid) -> Result<Option<String>> {
    let room = tx.room();
    let name = sqlx::query_scalar!(
        r#"
        select p.name
        from membership m
        join person p on p.id = m.person_id
        where m.room_id = $1 and m.person_id = $2
        "#,
        room,
        person
    )
    .fetch_optional(tx.db())
    .await?;
    Ok(name)
}

/// Everyone who is in the room, by name.
pub(super) async fn people(tx: &mut RoomTx) -> Result<Vec<(Uuid, String)>> {
    let room = tx.room();
    let rows = sqlx::query!(
        r#"
        select p.id, p.name
        from membership m
        join person p on p.id = m.person_id
        where m.room_id = $1 and m.ended_at is null
        order by p.name, p.id
        limit 2000
        "#,
        room
    )
    .fetch_all(tx.db())
    .await?;
    Ok(rows.into_iter().map(|row| (row.id, row.name)).collect())
}

pub(super) async fn next_number(tx: &mut RoomTx) -> Result<i64> {
    let room = tx.room();
    let last = sqlx::query_scalar!(
        r#"select coalesce(max(number), 0) as "last!" from incident where room_id = $1"#,
        room
    )
    .fetch_one(tx.db())
    .await?;
    Ok(last + 1)
}

pub(super) async fn looks(tx: &mut RoomTx, incident: Uuid) -> Result<Vec<Look>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        Look,
        r#"
        select p.name as "person?", l.looked_at
        from incident_look l
        left join person p on p.id = l.person_id
        where l.room_id = $1 and l.incident_id = $2
        order by l.seq
        limit 500
        "#,
        room,
        incident
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found)
}

pub(super) async fn insert(tx: &mut RoomTx, placed: &Placed<IncidentReported>) -> Result<()> {
    let room = tx.room();
    let entry = &placed.entry;
    sqlx::query!(
        r#"
        insert into incident (
            room_id, id, number, person_id, reported_by, reported_at, reported_seq,
            finished_seq, erased_seq
        )
        values ($1, $2, $3, $4, $5, $6, $7, null, null)
        "#,
        room,
        entry.incident_id,
        entry.number,
        entry.person_id,
        placed.actor,
        placed.recorded_at,
        placed.seq
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

pub(super) async fn insert_look(tx: &mut RoomTx, placed: &Placed<IncidentLookedAt>) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        r#"
        insert into incident_look (room_id, seq, incident_id, person_id, looked_at)
        values ($1, $2, $3, $4, $5)
        "#,
        room,
        placed.seq,
        placed.entry.incident_id,
        placed.actor,
        placed.recorded_at
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

pub(super) async fn finish(tx: &mut RoomTx, id: Uuid, seq: i64) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        "update incident set finished_seq = $3 where room_id = $1 and id = $2",
        room,
        id,
        seq
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

pub(super) async fn erase(tx: &mut RoomTx, id: Uuid, seq: i64) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        "update incident set erased_seq = $3 where room_id = $1 and id = $2",
        room,
        id,
        seq
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

/// What the person of the transaction wants to avoid. A policy holds each to their own.
pub(super) async fn avoid_notes(tx: &mut RoomTx) -> Result<Vec<AvoidNote>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        AvoidNote,
        r#"
        select a.id, a.product_id, p.name as "product?", a.words
        from avoid_note a
        left join product p on p.room_id = a.room_id and p.id = a.product_id
        where a.room_id = $1 and a.person_id = (select current_person())
        order by a.made_at, a.id
        limit 100
        "#,
        room
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found)
}

pub(super) async fn add_avoid_note(
    tx: &mut RoomTx,
    note: &AvoidNote,
    now: OffsetDateTime,
) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        r#"
        insert into avoid_note (room_id, id, person_id, product_id, words, made_at)
        values ($1, $2, (select current_person()), $3, $4, $5)
        "#,
        room,
        note.id,
        note.product_id,
        note.words,
        now
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

pub(super) async fn remove_avoid_note(tx: &mut RoomTx, id: Uuid) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        r#"
        delete from avoid_note
        where room_id = $1 and id = $2 and person_id = (select current_person())
        "#,
        room,
        id
    )
    .execute(tx.db())
    .await?;
    Ok(())
}
