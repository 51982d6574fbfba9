//! The papers' SQL.

use uuid::Uuid;

use super::{PaperClassSet, SheetSizeSet, SilverFigures};
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
    /// What is known of its silver.
    pub silver: Option<SilverFigures>,
    /// What a square metre carries into the next bath, in microlitres.
    pub carry_over_ul_per_m2: Option<i64>,
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
    let rows = sqlx::query!(
        r#"
        select
            id, name, position, retired_at is not null as "is_retired!",
            silver_least_mg_per_m2, silver_usual_mg_per_m2, silver_most_mg_per_m2,
            silver_least_kept_ppb, silver_usual_kept_ppb, silver_most_kept_ppb,
            silver_basis, carry_over_ul_per_m2
        from paper_class
        where room_id = $1
        order by retired_at is not null, position, name, id
        limit 500
        "#,
        room
    )
    .fetch_all(tx.db())
    .await?;
    let classes = rows.into_iter().map(|row| PaperClass {
        id: row.id,
        name: row.name,
        position: row.position,
        is_retired: row.is_retired,
        // All of them or none, as the table holds them.
        silver: row.silver_basis.and_then(|basis| {
            Some(SilverFigures {
                least_mg_per_m2: row.silver_least_mg_per_m2?,
                usual_mg_per_m2: row.silver_usual_mg_per_m2?,
                most_mg_per_m2: row.silver_most_mg_per_m2?,
                least_kept_ppb: row.silver_least_kept_ppb?,
                usual_kept_ppb: row.silver_usual_kept_ppb?,
                most_kept_ppb: row.silver_most_kept_ppb?,
                basis,
            })
        }),
        carry_over_ul_per_m2: row.carry_over_ul_per_m2,
    });
    Ok(classes.collect())
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
    let silver = class.silver.as_ref();
    sqlx::query!(
        r#"
        insert into paper_class (
            room_id, id, name, position, retired_at,
            silver_least_mg_per_m2, silver_usual_mg_per_m2, silver_most_mg_per_m2,
            silver_least_kept_ppb, silver_usual_kept_ppb, silver_most_kept_ppb,
            silver_basis, carry_over_ul_per_m2
        )
        values ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10, $11, $12, $13)
        on conflict (room_id, id) do update set
            name = excluded.name,
            position = excluded.position,
            retired_at = excluded.retired_at,
            silver_least_mg_per_m2 = excluded.silver_least_mg_per_m2,
            silver_usual_mg_per_m2 = excluded.silver_usual_mg_per_m2,
            silver_most_mg_per_m2 = excluded.silver_most_mg_per_m2,
            silver_least_kept_ppb = excluded.silver_least_kept_ppb,
            silver_usual_kept_ppb = excluded.silver_usual_kept_ppb,
            silver_most_kept_ppb = excluded.silver_most_kept_ppb,
            silver_basis = excluded.silver_basis,
            carry_over_ul_per_m2 = excluded.carry_over_ul_per_m2
        "#,
        room,
        class.id,
        class.name,
        class.position,
        class.is_retired.then_some(placed.recorded_at),
        silver.map(|silver| silver.least_mg_per_m2),
        silver.map(|silver| silver.usual_mg_per_m2),
        silver.map(|silver| silver.most_mg_per_m2),
        silver.map(|silver| silver.least_kept_ppb),
        silver.map(|silver| silver.usual_kept_ppb),
        silver.map(|silver| silver.most_kept_ppb),
        silver.map(|silver| silver.basis.as_str()),
        class.carry_over_ul_per_m2
    )
    .execute(tx.db())
    .await?;
    Ok(())
}
