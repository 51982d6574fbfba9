//! The presences' SQL.

use time::OffsetDateTime;
use uuid::Uuid;

use super::Arrived;
use crate::clock::moment;
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::logbook::Placed;
use crate::workshops;

/// So many a list holds; no room is set to more people.
const MOST: i64 = 1_000;

/// A time of being there.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct Presence {
    /// Which.
    pub id: Uuid,
    /// Who.
    pub person_id: Uuid,
    /// Their name.
    pub name: String,
    /// The steward who answers for them, where they are not inducted.
    pub supervisor_id: Option<Uuid>,
    /// By name.
    pub supervisor: Option<String>,
    /// Since when.
    pub arrived_at: OffsetDateTime,
    /// When it is over by itself.
    pub over_at: OffsetDateTime,
    /// Until when they said that they stay, if they did.
    pub expected_at: Option<OffsetDateTime>,
    /// When it ended, if it did.
    pub ended_at: Option<OffsetDateTime>,
    /// Whether whoever left said so.
    pub is_confirmed: bool,
}

impl Presence {
    /// Whether somebody is there now, as far as the room knows.
    #[must_use]
    pub fn is_there(&self, now: OffsetDateTime) -> bool {
        self.ended_at.is_none() && now < self.over_at
    }

    /// Whether the time until when they stay has passed.
    #[must_use]
    pub fn is_overdue(&self, now: OffsetDateTime) -> bool {
        self.expected_at.is_some_and(|at| at <= now)
    }
}

/// Who is there now, the longest first.
///
/// # Errors
/// The database's.
pub async fn present(tx: &mut RoomTx, now: OffsetDateTime) -> Result<Vec<Presence>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        Presence,
        r#"
        select
            s.id, s.person_id, p.name, s.supervisor_id, v.name as "supervisor?", s.arrived_at,
            s.over_at, s.expected_at, s.ended_at, s.is_confirmed
        from presence s
        join person p on p.id = s.person_id
        left join person v on v.id = s.supervisor_id
        where s.room_id = $1 and s.ended_seq is null and s.over_at > $2
        order by s.arrived_at, s.arrived_seq
        limit $3
        "#,
        room,
        now,
        MOST
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found)
}

/// How many people are there now: those present, and guests.
///
/// # Errors
/// The database's.
pub async fn people_in(tx: &mut RoomTx, now: OffsetDateTime) -> Result<usize> {
    let guests: i64 = workshops::here(tx, now)
        .await?
        .iter()
        .map(|group| group.count)
        .sum();
    let guests = usize::try_from(guests).map_err(Error::fault)?;
    Ok(present(tx, now).await?.len() + guests)
}

/// Those whose presence is over since then without a word from them, the last
/// first: ended by somebody, or run out.
pub(super) async fn not_confirmed(
    tx: &mut RoomTx,
    since: OffsetDateTime,
    now: OffsetDateTime,
) -> Result<Vec<Presence>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        Presence,
        r#"
        select
            s.id, s.person_id, p.name, s.supervisor_id, v.name as "supervisor?", s.arrived_at,
            s.over_at, s.expected_at, s.ended_at, s.is_confirmed
        from presence s
        join person p on p.id = s.person_id
        left join person v on v.id = s.supervisor_id
        where s.room_id = $1
            and (
                (s.ended_at > $2 and not s.is_confirmed)
                or (s.ended_seq is null and s.over_at > $2 and s.over_at <= $3)
            )
        order by coalesce(s.ended_at, s.over_at) desc, s.arrived_seq desc
        limit $4
        "#,
        room,
        since,
        now,
        MOST
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found)
}

/// What has run out and was not written yet, in the order of running out.
pub(super) async fn run_out(tx: &mut RoomTx, now: OffsetDateTime) -> Result<Vec<Presence>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        Presence,
        r#"
        select
            s.id, s.person_id, p.name, s.supervisor_id, v.name as "supervisor?", s.arrived_at,
            s.over_at, s.expected_at, s.ended_at, s.is_confirmed
        from presence s
        join person p on p.id = s.person_id
        left join person v on v.id = s.supervisor_id
        where s.room_id = $1 and s.ended_seq is null and s.over_at <= $2
        order by s.over_at, s.arrived_seq
        limit $3
        "#,
        room,
        now,
        MOST
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found)
}

pub(super) async fn presence(tx: &mut RoomTx, id: Uuid) -> Result<Option<Presence>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        Presence,
        r#"
        select
            s.id, s.person_id, p.name, s.supervisor_id, v.name as "supervisor?", s.arrived_at,
            s.over_at, s.expected_at, s.ended_at, s.is_confirmed
        from presence s
        join person p on p.id = s.person_id
        left join person v on v.id = s.supervisor_id
        where s.room_id = $1 and s.id = $2
        "#,
        room,
        id
    )
    .fetch_optional(tx.db())
    .await?;
    Ok(found)
}

/// A person's presence that has not ended, run out or not.
pub(super) async fn open_of(tx: &mut RoomTx, person: Uuid) -> Result<Option<Presence>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        Presence,
        r#"
        select
            s.id, s.person_id, p.name, s.supervisor_id, v.name as "supervisor?", s.arrived_at,
            s.over_at, s.expected_at, s.ended_at, s.is_confirmed
        from presence s
        join person p on p.id = s.person_id
        left join person v on v.id = s.supervisor_id
        where s.room_id = $1 and s.person_id = $2 and s.ended_seq is null
        "#,
        room,
        person
    )
    .fetch_optional(tx.db())
    .await?;
    Ok(found)
}

pub(super) async fn begin(tx: &mut RoomTx, placed: &Placed<Arrived>) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        r#"
        insert into presence (
            room_id, id, person_id, arrived_at, arrived_seq, over_at, ended_at, ended_seq,
            is_confirmed, supervisor_id, expected_at
        )
        values ($1, $2, $3, $4, $5, $6, null, null, false, $7, $8)
        "#,
        room,
        placed.entry.presence_id,
        placed.entry.person_id,
        placed.happened_at,
        placed.seq,
        moment(placed.entry.over_at_us),
        placed.entry.supervisor_id,
        placed
            .entry
            .expected
            .as_ref()
            .map(|expected| moment(expected.at_us))
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

pub(super) async fn end(
    tx: &mut RoomTx,
    id: Uuid,
    (at, seq): (OffsetDateTime, i64),
    is_confirmed: bool,
) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        r#"
        update presence
        set ended_at = $3, ended_seq = $4, is_confirmed = $5
        where room_id = $1 and id = $2
        "#,
        room,
        id,
        at,
        seq,
        is_confirmed
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

pub(super) async fn expect(tx: &mut RoomTx, id: Uuid, at: OffsetDateTime) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        "update presence set expected_at = $3 where room_id = $1 and id = $2",
        room,
        id,
        at
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

/// Those expected to leave later than `since` of whom nothing was heard: still there, or
/// taken for gone without a word, and not back since.
pub(super) async fn unheard_of(tx: &mut RoomTx, since: OffsetDateTime) -> Result<Vec<Presence>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        Presence,
        r#"
        select
            s.id, s.person_id, p.name, s.supervisor_id, v.name as "supervisor?", s.arrived_at,
            s.over_at, s.expected_at, s.ended_at, s.is_confirmed
        from presence s
        join person p on p.id = s.person_id
        left join person v on v.id = s.supervisor_id
        where s.room_id = $1
            and s.expected_at > $2
            and (s.ended_seq is null or (s.ended_at = s.over_at and not s.is_confirmed))
            and not exists (
                select from presence later
                where later.room_id = s.room_id
                    and later.person_id = s.person_id
                    and later.arrived_seq > s.arrived_seq
            )
        order by s.expected_at, s.arrived_seq
        limit $3
        "#,
        room,
        since,
        MOST
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found)
}

/// Remembers whom an expected time is told to; whether it is for the first time.
pub(super) async fn first_told(
    tx: &mut RoomTx,
    (presence, expected_at): (Uuid, OffsetDateTime),
    person: Uuid,
    now: OffsetDateTime,
) -> Result<bool> {
    let room = tx.room();
    let done = sqlx::query!(
        r#"
        insert into expected_told (room_id, presence_id, expected_at, person_id, told_at)
        values ($1, $2, $3, $4, $5)
        on conflict do nothing
        "#,
        room,
        presence,
        expected_at,
        person,
        now
    )
    .execute(tx.db())
    .await?;
    Ok(done.rows_affected() > 0)
}
