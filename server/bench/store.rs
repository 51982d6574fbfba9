//! The bench's SQL.

use uuid::Uuid;

use super::{LineSet, Step, TraySet};
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::logbook::Placed;

/// A line of the bench.
pub type Line = LineSet;

/// A tray of the bench.
pub type Tray = TraySet;

struct TrayRow {
    id: Uuid,
    line_id: Uuid,
    name: String,
    position: i32,
    step: String,
    inside_long_tenths_mm: i32,
    inside_short_tenths_mm: i32,
    inside_depth_tenths_mm: i32,
    least_depth_tenths_mm: i32,
    is_retired: bool,
}

impl TrayRow {
    fn tray(self) -> Result<Tray> {
        let step = Step::parse(&self.step);
        Ok(Tray {
            id: self.id,
            line_id: self.line_id,
            name: self.name,
            position: self.position,
            step: step.ok_or_else(|| Error::fault(format!("no such step: {}", self.step)))?,
            inside_long_tenths_mm: self.inside_long_tenths_mm,
            inside_short_tenths_mm: self.inside_short_tenths_mm,
            inside_depth_tenths_mm: self.inside_depth_tenths_mm,
            least_depth_tenths_mm: self.least_depth_tenths_mm,
            is_retired: self.is_retired,
        })
    }
}

/// Every line, retired ones last.
///
/// # Errors
/// The database's.
pub async fn lines(tx: &mut RoomTx) -> Result<Vec<Line>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        Line,
        r#"
        select id, name, position, space_id, retired_at is not null as "is_retired!"
        from line
        where room_id = $1
        order by retired_at is not null, position, id
        limit 200
        "#,
        room
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found)
}

/// One line.
///
/// # Errors
/// The database's.
pub async fn line(tx: &mut RoomTx, id: Uuid) -> Result<Option<Line>> {
    let all = lines(tx).await?;
    Ok(all.into_iter().find(|line| line.id == id))
}

/// Every tray, line by line in the order prints travel, retired ones last.
///
/// # Errors
/// The database's.
pub async fn trays(tx: &mut RoomTx) -> Result<Vec<Tray>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        TrayRow,
        r#"
        select
            t.id, t.line_id, t.name, t.position, t.step, t.inside_long_tenths_mm,
            t.inside_short_tenths_mm, t.inside_depth_tenths_mm, t.least_depth_tenths_mm,
            t.retired_at is not null as "is_retired!"
        from tray t
        join line l on l.room_id = t.room_id and l.id = t.line_id
        where t.room_id = $1
        order by t.retired_at is not null, l.position, l.id, t.position, t.id
        limit 1000
        "#,
        room
    )
    .fetch_all(tx.db())
    .await?;
    found.into_iter().map(TrayRow::tray).collect()
}

/// One tray.
///
/// # Errors
/// The database's.
pub async fn tray(tx: &mut RoomTx, id: Uuid) -> Result<Option<Tray>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        TrayRow,
        r#"
        select
            id, line_id, name, position, step, inside_long_tenths_mm, inside_short_tenths_mm,
            inside_depth_tenths_mm, least_depth_tenths_mm,
            retired_at is not null as "is_retired!"
        from tray
        where room_id = $1 and id = $2
        "#,
        room,
        id
    )
    .fetch_optional(tx.db())
    .await?;
    found.map(TrayRow::tray).transpose()
}

/// Whether a mix stands in the tray.
pub(super) async fn is_full(tx: &mut RoomTx, tray: Uuid) -> Result<bool> {
    let room = tx.room();
    let full = sqlx::query_scalar!(
        r#"select exists (select from mix where room_id = $1 and tray_id = $2) as "full!""#,
        room,
        tray
    )
    .fetch_one(tx.db())
    .await?;
    Ok(full)
}

pub(super) async fn set_line(tx: &mut RoomTx, placed: &Placed<LineSet>) -> Result<()> {
    let room = tx.room();
    let line = &placed.entry;
    sqlx::query!(
        r#"
        insert into line (room_id, id, name, position, space_id, retired_at)
        values ($1, $2, $3, $4, $5, $6)
        on conflict (room_id, id) do update set
            name = excluded.name,
            position = excluded.position,
            space_id = excluded.space_id,
            retired_at = excluded.retired_at
        "#,
        room,
        line.id,
        line.name,
        line.position,
        line.space_id,
        line.is_retired.then_some(placed.recorded_at)
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

pub(super) async fn set_tray(tx: &mut RoomTx, placed: &Placed<TraySet>) -> Result<()> {
    let room = tx.room();
    let tray = &placed.entry;
    sqlx::query!(
        r#"
        insert into tray (
            room_id, id, line_id, name, position, step, inside_long_tenths_mm,
            inside_short_tenths_mm, inside_depth_tenths_mm, least_depth_tenths_mm, retired_at
        )
        values ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10, $11)
        on conflict (room_id, id) do update set
            line_id = excluded.line_id,
            name = excluded.name,
            position = excluded.position,
            step = excluded.step,
            inside_long_tenths_mm = excluded.inside_long_tenths_mm,
            inside_short_tenths_mm = excluded.inside_short_tenths_mm,
            inside_depth_tenths_mm = excluded.inside_depth_tenths_mm,
            least_depth_tenths_mm = excluded.least_depth_tenths_mm,
            retired_at = excluded.retired_at
        "#,
        room,
        tray.id,
        tray.line_id,
        tray.name,
        tray.position,
        tray.step.as_str(),
        tray.inside_long_tenths_mm,
        tray.inside_short_tenths_mm,
        tray.inside_depth_tenths_mm,
        tray.least_depth_tenths_mm,
        tray.is_retired.then_some(placed.recorded_at)
    )
    .execute(tx.db())
    .await?;
    Ok(())
}
