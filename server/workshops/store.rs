//! The SQL of workshops and their guests.

use time::OffsetDateTime;
use uuid::Uuid;

use super::{GuestsSignedIn, WorkshopCalledOff, WorkshopOpened, WorkshopSet, WorkshopTakenOver};
use crate::clock::moment;
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::logbook::Placed;

/// So many a list holds at most.
const MOST: i64 = 1_000;

/// A workshop as it now is.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct Workshop {
    /// Which.
    pub id: Uuid,
    /// What it is called.
    pub title: String,
    /// Who leads it.
    pub leader_id: Uuid,
    /// By name.
    pub leader: String,
    /// Where; nothing for the room itself.
    pub space_id: Option<Uuid>,
    /// By name.
    pub space: Option<String>,
    /// When it begins.
    pub begins_at: OffsetDateTime,
    /// When it ends.
    pub ends_at: OffsetDateTime,
    /// The most guests at once.
    pub most_guests: i32,
    /// The lines it prints on.
    pub line_ids: Vec<Uuid>,
    /// By name, in the bench's order.
    pub lines: Vec<String>,
    /// The member who pays; nobody where the room does.
    pub paid_by_id: Option<Uuid>,
    /// By name.
    pub paid_by: Option<String>,
    /// The entry that planned it last.
    pub planned_seq: i64,
    /// The entry that called it off.
    pub called_off_seq: Option<i64>,
    /// Why.
    pub called_off_reason: Option<String>,
    /// When it was opened.
    pub opened_at: Option<OffsetDateTime>,
    /// The entry that opened it, and says what was read out.
    pub opened_seq: Option<i64>,
    /// When it is over by itself.
    pub over_at: Option<OffsetDateTime>,
    /// When it was over, where that is on record.
    pub ended_at: Option<OffsetDateTime>,
    /// Whether whoever led it said so.
    pub is_confirmed: bool,
}

/// Somebody at a workshop.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct Guest {
    /// Which.
    pub id: Uuid,
    /// Of which workshop.
    pub workshop_id: Uuid,
    /// The place of their name in the list beside the entry that signed them in.
    pub place: i32,
    /// Since when.
    pub signed_in_at: OffsetDateTime,
    /// By which entry.
    pub signed_in_seq: i64,
    /// When they left.
    pub left_at: Option<OffsetDateTime>,
    /// Whether they were signed out.
    pub is_confirmed: bool,
}

/// Guests who are there now, of one workshop.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct Group {
    /// Which workshop.
    pub workshop_id: Uuid,
    /// Who leads it.
    pub leader_id: Uuid,
    /// By name.
    pub leader: String,
    /// How many.
    pub count: i64,
    /// When they are taken for gone.
    pub over_at: OffsetDateTime,
}

/// Which workshops are asked for.
#[derive(Clone, Copy, Debug, Default)]
struct Asked {
    id: Option<Uuid>,
    /// Those that are going on at this moment, or are to come.
    coming: Option<OffsetDateTime>,
    /// Those that have run out by then, and no entry says so.
    run_out: Option<OffsetDateTime>,
}

async fn found(tx: &mut RoomTx, asked: Asked) -> Result<Vec<Workshop>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        Workshop,
        r#"
        select
            w.id, w.title, w.leader_id, p.name as leader, w.space_id, s.name as "space?",
            w.begins_at, w.ends_at, w.most_guests, w.line_ids,
            array(
                select l.name
                from line l
                where l.room_id = w.room_id and l.id = any(w.line_ids)
                order by l.position, l.name
            ) as "lines!",
            w.paid_by_id, y.name as "paid_by?", w.planned_seq, w.called_off_seq,
            w.called_off_reason, w.opened_at, w.opened_seq, w.over_at, w.ended_at, w.is_confirmed
        from workshop w
        join person p on p.id = w.leader_id
        left join space s on s.room_id = w.room_id and s.id = w.space_id
        left join person y on y.id = w.paid_by_id
        where w.room_id = $1
            and ($2::uuid is null or w.id = $2)
            and (
                $3::timestamptz is null
                or (
                    w.called_off_seq is null
                    and w.ended_seq is null
                    and coalesce(w.over_at, w.ends_at) > $3
                )
            )
            and ($4::timestamptz is null or (w.ended_seq is null and w.over_at <= $4))
        order by w.begins_at desc, w.id desc
        limit $5
        "#,
        room,
        asked.id,
        asked.coming,
        asked.run_out,
        MOST
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found)
}

/// Workshops, the latest first.
///
/// # Errors
/// The database's.
pub async fn workshops(tx: &mut RoomTx) -> Result<Vec<Workshop>> {
    found(tx, Asked::default()).await
}

/// One workshop.
///
/// # Errors
/// The database's.
pub async fn workshop(tx: &mut RoomTx, id: Uuid) -> Result<Option<Workshop>> {
    let id = Some(id);
    let asked = Asked {
        id,
        ..Asked::default()
    };
    Ok(found(tx, asked).await?.pop())
}

/// What is going on and what is to come, the next first.
///
/// # Errors
/// The database's.
pub async fn coming(tx: &mut RoomTx, now: OffsetDateTime) -> Result<Vec<Workshop>> {
    let coming = Some(now);
    let asked = Asked {
        coming,
        ..Asked::default()
    };
    let mut all = found(tx, asked).await?;
    all.reverse();
    Ok(all)
}

/// What is going on and led by this person.
///
/// # Errors
/// The database's.
pub async fn led_by(tx: &mut RoomTx, person: Uuid, now: OffsetDateTime) -> Result<Vec<Workshop>> {
    let mut all = coming(tx, now).await?;
    all.retain(|it| it.leader_id == person && it.opened_at.is_some());
    Ok(all)
}

/// What has run out and was not written yet.
pub(super) async fn run_out(tx: &mut RoomTx, now: OffsetDateTime) -> Result<Vec<Workshop>> {
    let run_out = Some(now);
    let asked = Asked {
        run_out,
        ..Asked::default()
    };
    found(tx, asked).await
}

/// The guests of a workshop, in the order they came.
///
/// # Errors
/// The database's.
pub async fn guests(tx: &mut RoomTx, workshop: Uuid) -> Result<Vec<Guest>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        Guest,
        r#"
        select
            id, workshop_id, place, signed_in_at, signed_in_seq, left_at, is_confirmed
        from guest
        where room_id = $1 and workshop_id = $2
        order by signed_in_seq, place
        "#,
        room,
        workshop
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found)
}

/// How many guests are there now, workshop by workshop.
///
/// # Errors
/// The database's.
pub async fn here(tx: &mut RoomTx, now: OffsetDateTime) -> Result<Vec<Group>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        Group,
        r#"
        select
            w.id as workshop_id, w.leader_id, p.name as leader, count(*) as "count!",
            w.over_at as "over_at!"
        from workshop w
        join person p on p.id = w.leader_id
        join guest g on g.room_id = w.room_id and g.workshop_id = w.id
        where w.room_id = $1 and w.ended_seq is null and w.over_at > $2 and g.left_seq is null
        group by w.id, w.leader_id, p.name, w.over_at, w.opened_seq
        order by w.opened_seq
        "#,
        room,
        now
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found)
}

/// The entries beside which names lie that were signed in by then, each with its workshop;
/// of workshops that are over.
pub(super) async fn named_before(
    tx: &mut RoomTx,
    until: OffsetDateTime,
) -> Result<Vec<(i64, Uuid)>> {
    let room = tx.room();
    let found = sqlx::query!(
        r#"
        select distinct g.signed_in_seq, g.workshop_id
        from guest g
        join workshop w on w.room_id = g.room_id and w.id = g.workshop_id
        where g.room_id = $1
            and g.signed_in_at <= $2
            and g.erased_seq is null
            and w.ended_seq is not null
        order by g.signed_in_seq
        limit $3
        "#,
        room,
        until,
        MOST
    )
    .fetch_all(tx.db())
    .await?;
    let found = found.into_iter();
    Ok(found
        .map(|row| (row.signed_in_seq, row.workshop_id))
        .collect())
}

pub(super) async fn set_workshop(tx: &mut RoomTx, placed: &Placed<WorkshopSet>) -> Result<()> {
    let room = tx.room();
    let set = &placed.entry;
    sqlx::query!(
        r#"
        insert into workshop (
            room_id, id, title, leader_id, space_id, begins_at, ends_at, most_guests, line_ids,
            paid_by_id, planned_seq, is_confirmed
        )
        values ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10, $11, false)
        on conflict (room_id, id) do update
        set title = excluded.title,
            leader_id = excluded.leader_id,
            space_id = excluded.space_id,
            begins_at = excluded.begins_at,
            ends_at = excluded.ends_at,
            most_guests = excluded.most_guests,
            line_ids = excluded.line_ids,
            paid_by_id = excluded.paid_by_id,
            planned_seq = excluded.planned_seq
        "#,
        room,
        set.workshop_id,
        set.title,
        set.leader_id,
        set.space_id,
        moment(set.begins_at_us),
        moment(set.ends_at_us),
        set.most_guests,
        &set.line_ids,
        set.paid_by_id,
        placed.seq
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

pub(super) async fn call_off(tx: &mut RoomTx, placed: &Placed<WorkshopCalledOff>) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        r#"
        update workshop
        set called_off_seq = $3, called_off_reason = $4
        where room_id = $1 and id = $2
        "#,
        room,
        placed.entry.workshop_id,
        placed.seq,
        placed.entry.reason
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

pub(super) async fn open(tx: &mut RoomTx, placed: &Placed<WorkshopOpened>) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        r#"
        update workshop
        set opened_at = $3, opened_seq = $4, over_at = $5
        where room_id = $1 and id = $2
        "#,
        room,
        placed.entry.workshop_id,
        placed.happened_at,
        placed.seq,
        moment(placed.entry.over_at_us)
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

pub(super) async fn take_over(tx: &mut RoomTx, taken: &WorkshopTakenOver) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        "update workshop set leader_id = $3, over_at = $4 where room_id = $1 and id = $2",
        room,
        taken.workshop_id,
        taken.leader_id,
        moment(taken.over_at_us)
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

pub(super) async fn sign_in(tx: &mut RoomTx, placed: &Placed<GuestsSignedIn>) -> Result<()> {
    let room = tx.room();
    let ids = &placed.entry.guest_ids;
    let places: Vec<i32> = (0..i32::try_from(ids.len()).map_err(Error::fault)?).collect();
    sqlx::query!(
        r#"
        insert into guest (
            room_id, id, workshop_id, place, signed_in_at, signed_in_seq, is_confirmed
        )
        select $1, t.id, $2, t.place, $3, $4, false
        from unnest($5::uuid[], $6::integer[]) as t (id, place)
        "#,
        room,
        placed.entry.workshop_id,
        placed.happened_at,
        placed.seq,
        ids,
        &places
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

pub(super) async fn sign_out(
    tx: &mut RoomTx,
    ids: &[Uuid],
    (at, seq, is_confirmed): (OffsetDateTime, i64, bool),
) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        r#"
        update guest
        set left_at = $3, left_seq = $4, is_confirmed = $5
        where room_id = $1 and id = any($2)
        "#,
        room,
        ids,
        at,
        seq,
        is_confirmed
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

pub(super) async fn end(
    tx: &mut RoomTx,
    id: Uuid,
    (at, seq, is_confirmed): (OffsetDateTime, i64, bool),
) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        r#"
        update workshop
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

/// Remembers that the names beside an entry were erased.
pub(super) async fn forget_names(tx: &mut RoomTx, beside_seq: i64, by: i64) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        "update guest set erased_seq = $3 where room_id = $1 and signed_in_seq = $2",
        room,
        beside_seq,
        by
    )
    .execute(tx.db())
    .await?;
    Ok(())
}
