//! The SQL of room checks.

use time::{Date, OffsetDateTime};
use uuid::Uuid;

use super::{Measure, RoomCheckSet, RoomCheckTakenBack, RoomChecked};
use crate::database::RoomTx;
use crate::error::Result;
use crate::logbook::Placed;

/// A check of the room.
pub type RoomCheck = RoomCheckSet;

/// A result as it was kept.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct CheckResult {
    /// The number of its entry.
    pub seq: i64,
    /// Which.
    pub id: Uuid,
    /// Of which check.
    pub room_check_id: Uuid,
    /// Who did it.
    pub person_id: Option<Uuid>,
    /// By name.
    pub person: Option<String>,
    /// Whether all was well.
    pub has_passed: bool,
    /// What was found.
    pub remark: String,
    /// What was measured, in thousandths of the unit.
    pub measured_thousandths: Option<i64>,
    /// The unit of then.
    pub unit: Option<String>,
    /// The day by which it is due again, as `2026-11-10`.
    pub due_on: String,
    /// When.
    pub happened_at: OffsetDateTime,
    /// The entry that took it back.
    pub undone_by: Option<i64>,
}

struct ResultRow {
    seq: i64,
    id: Uuid,
    room_check_id: Uuid,
    person_id: Option<Uuid>,
    person: Option<String>,
    has_passed: bool,
    remark: String,
    measured_thousandths: Option<i64>,
    unit: Option<String>,
    due_on: Date,
    happened_at: OffsetDateTime,
    undone_by: Option<i64>,
}

impl From<ResultRow> for CheckResult {
    fn from(row: ResultRow) -> Self {
        Self {
            seq: row.seq,
            id: row.id,
            room_check_id: row.room_check_id,
            person_id: row.person_id,
            person: row.person,
            has_passed: row.has_passed,
            remark: row.remark,
            measured_thousandths: row.measured_thousandths,
            unit: row.unit,
            due_on: row.due_on.to_string(),
            happened_at: row.happened_at,
            undone_by: row.undone_by,
        }
    }
}

/// Every check by its name, retired ones last.
///
/// # Errors
/// The database's.
pub async fn room_checks(tx: &mut RoomTx) -> Result<Vec<RoomCheck>> {
    let room = tx.room();
    let rows = sqlx::query!(
        r#"
        select
            id, name, how, every_days, basis, on_failure, is_on_board, space_id, unit,
            least_thousandths, most_thousandths, first_due_on,
            retired_at is not null as "is_retired!"
        from room_check
        where room_id = $1
        order by retired_at is not null, name, id
        limit 500
        "#,
        room
    )
    .fetch_all(tx.db())
    .await?;
    let check = rows.into_iter().map(|row| RoomCheck {
        id: row.id,
        name: row.name,
        how: row.how,
        every_days: row.every_days,
        basis: row.basis,
        on_failure: row.on_failure,
        is_on_board: row.is_on_board,
        space_id: row.space_id,
        measure: row.unit.map(|unit| Measure {
            unit,
            least_thousandths: row.least_thousandths,
            most_thousandths: row.most_thousandths,
        }),
        first_due_on: row.first_due_on.to_string(),
        is_retired: row.is_retired,
    });
    Ok(check.collect())
}

/// One check.
pub(super) async fn room_check(tx: &mut RoomTx, id: Uuid) -> Result<Option<RoomCheck>> {
    let all = room_checks(tx).await?;
    Ok(all.into_iter().find(|check| check.id == id))
}

/// The last result of each check, those taken back left out.
pub(super) async fn latest(tx: &mut RoomTx) -> Result<Vec<CheckResult>> {
    let room = tx.room();
    let rows = sqlx::query_as!(
        ResultRow,
        r#"
        select distinct on (r.room_check_id)
            r.seq, r.id, r.room_check_id, r.person_id, p.name as "person?", r.has_passed,
            r.remark, r.measured_thousandths, r.unit, r.due_on, r.happened_at, r.undone_by
        from room_check_result r
        left join person p on p.id = r.person_id
        where r.room_id = $1 and r.undone_by is null
        order by r.room_check_id, r.happened_at desc, r.seq desc
        "#,
        room
    )
    .fetch_all(tx.db())
    .await?;
    Ok(rows.into_iter().map(CheckResult::from).collect())
}

/// Which results are asked for; each part that is given narrows it.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Asked {
    /// This one.
    pub(super) id: Option<Uuid>,
    /// Of this check.
    pub(super) check: Option<Uuid>,
    /// Written before the entry of this number.
    pub(super) before: Option<i64>,
}

/// Results, the latest written first.
pub(super) async fn results(tx: &mut RoomTx, asked: Asked, most: i64) -> Result<Vec<CheckResult>> {
    let room = tx.room();
    let rows = sqlx::query_as!(
        ResultRow,
        r#"
        select
            r.seq, r.id, r.room_check_id, r.person_id, p.name as "person?", r.has_passed,
            r.remark, r.measured_thousandths, r.unit, r.due_on, r.happened_at, r.undone_by
        from room_check_result r
        left join person p on p.id = r.person_id
        where r.room_id = $1
            and ($2::uuid is null or r.id = $2)
            and ($3::uuid is null or r.room_check_id = $3)
            and ($4::bigint is null or r.seq < $4)
        order by r.seq desc
        limit $5
        "#,
        room,
        asked.id,
        asked.check,
        asked.before,
        most
    )
    .fetch_all(tx.db())
    .await?;
    Ok(rows.into_iter().map(CheckResult::from).collect())
}

pub(super) async fn result(tx: &mut RoomTx, id: Uuid) -> Result<Option<CheckResult>> {
    let asked = Asked {
        id: Some(id),
        ..Asked::default()
    };
    Ok(results(tx, asked, 1).await?.pop())
}

pub(super) async fn set_check(tx: &mut RoomTx, placed: &Placed<RoomCheckSet>) -> Result<()> {
    let room = tx.room();
    let check = &placed.entry;
    let measure = check.measure.as_ref();
    sqlx::query!(
        r#"
        insert into room_check (
            room_id, id, name, how, every_days, basis, on_failure, is_on_board, space_id, unit,
            least_thousandths, most_thousandths, first_due_on, retired_at
        )
        values (
            $1, $2, $3, $4, $5, $6, $7, $8, $9, $10, $11, $12, $13::text::date, $14
        )
        on conflict (room_id, id) do update set
            name = excluded.name,
            how = excluded.how,
            every_days = excluded.every_days,
            basis = excluded.basis,
            on_failure = excluded.on_failure,
            is_on_board = excluded.is_on_board,
            space_id = excluded.space_id,
            unit = excluded.unit,
            least_thousandths = excluded.least_thousandths,
            most_thousandths = excluded.most_thousandths,
            first_due_on = excluded.first_due_on,
            retired_at = excluded.retired_at
        "#,
        room,
        check.id,
        check.name,
        check.how,
        check.every_days,
        check.basis,
        check.on_failure,
        check.is_on_board,
        check.space_id,
        measure.map(|measure| measure.unit.as_str()),
        measure.and_then(|measure| measure.least_thousandths),
        measure.and_then(|measure| measure.most_thousandths),
        check.first_due_on,
        check.is_retired.then_some(placed.recorded_at)
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

pub(super) async fn insert_result(tx: &mut RoomTx, placed: &Placed<RoomChecked>) -> Result<()> {
    let room = tx.room();
    let result = &placed.entry;
    let unit = result.measure.as_ref().map(|measure| measure.unit.as_str());
    sqlx::query!(
        r#"
        insert into room_check_result (
            room_id, seq, id, room_check_id, person_id, has_passed, remark,
            measured_thousandths, unit, due_on, happened_at, undone_by
        )
        values ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10::text::date, $11, null)
        "#,
        room,
        placed.seq,
        result.result_id,
        result.room_check_id,
        placed.actor,
        result.has_passed,
        result.remark,
        result.measured_thousandths,
        unit.filter(|_| result.measured_thousandths.is_some()),
        result.due_on,
        placed.happened_at
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

pub(super) async fn take_back(tx: &mut RoomTx, placed: &Placed<RoomCheckTakenBack>) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        "update room_check_result set undone_by = $3 where room_id = $1 and seq = $2",
        room,
        placed.entry.result_seq,
        placed.seq
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

/// Keeps that stewards are told of a check that was due by a day; whether they were not
/// told before.
pub(super) async fn first_told(
    tx: &mut RoomTx,
    check: Uuid,
    due_on: &str,
    now: OffsetDateTime,
) -> Result<bool> {
    let room = tx.room();
    let done = sqlx::query!(
        r#"
        insert into room_check_told (room_id, room_check_id, due_on, told_at)
        values ($1, $2, $3::text::date, $4)
        on conflict do nothing
        "#,
        room,
        check,
        due_on,
        now
    )
    .execute(tx.db())
    .await?;
    Ok(done.rows_affected() == 1)
}
