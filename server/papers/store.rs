//! The papers' SQL.

use uuid::Uuid;

use super::{PaperClassSet, SheetSizeSet};
use crate::database::RoomTx;
use crate::error::Result;
use crate::logbook::Placed;

/// A sheet size of the room.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct SheetSize {
    /// Which.
    pub id: Uuid,
    /// What people call it.
    pub name: String,
    /// Long side in tenths of a millimetre.
    pub long_tenths_mm: i32,
    /// Short side in tenths of a millimetre.
    pub short_tenths_mm: i32,
    /// Its place in lists.
    pub position: i32,
    /// Whether it is offered no more.
    pub is_retired: bool,
}

/// A paper class of the room.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct PaperClass {
    /// Which.
    pub id: Uuid,
    /// What people call it.
    pub name: String,
    /// Its place in lists.
    pub position: i32,
    /// Whether it is offered no more.
    pub is_retired: bool,
}

/// Every sheet size, retired ones last.
///
/// # Errors
/// The database's.
pub async fn sheet_sizes(tx: &mut RoomTx) -> Result<Vec<SheetSize>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        SheetSize,
        r#"
        select
            id, name, long_tenths_mm, short_tenths_mm, position,
            retired_at is not null as "is_retired!"
        from sheet_size
        where room_id = $1
        order by retired_at is not null, position, name, id
        limit 500
        "#,
        room
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found)
}

/// Every paper class, retired ones last.
///
/// # Errors
/// The database's.
pub async fn paper_classes(tx: &mut RoomTx) -> Result<Vec<PaperClass>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        PaperClass,
        r#"
        select id, name, position, retired_at is not null as "is_retired!"
        from paper_class
        where room_id = $1
        order by retired_at is not null, position, name, id
        limit 500
        "#,
        room
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found)
}

pub(super) async fn set_sheet_size(tx: &mut RoomTx, placed: &Placed<SheetSizeSet>) -> Result<()> {
    let room = tx.room();
    let size = &placed.entry;
    sqlx::query!(
        r#"
        insert into sheet_size (
            room_id, id, name, long_tenths_mm, short_tenths_mm, position, retired_at
        )
        values ($1, $2, $3, $4, $5, $6, $7)
        on conflict (room_id, id) do update set
            name = excluded.name,
            long_tenths_mm = excluded.long_tenths_mm,
            short_tenths_mm = excluded.short_tenths_mm,
            position = excluded.position,
            retired_at = excluded.retired_at
        "#,
        room,
        size.id,
        size.name,
        size.long_tenths_mm,
        size.short_tenths_mm,
        size.position,
        size.is_retired.then_some(placed.recorded_at)
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

pub(super) async fn set_paper_class(tx: &mut RoomTx, placed: &Placed<PaperClassSet>) -> Result<()> {
    let room = tx.room();
    let class = &placed.entry;
    sqlx::query!(
        r#"
        insert into paper_class (room_id, id, name, position, retired_at)
        values ($1, $2, $3, $4, $5)
        on conflict (room_id, id) do update set
            name = excluded.name,
            position = excluded.position,
            retired_at = excluded.retired_at
        "#,
        room,
        class.id,
        class.name,
        class.position,
        class.is_retired.then_some(placed.recorded_at)
    )
    .execute(tx.db())
    .await?;
    Ok(())
}
