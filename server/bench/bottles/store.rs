//! The bottles' SQL.

use uuid::Uuid;

use super::BottleSet;
use crate::database::RoomTx;
use crate::error::Result;
use crate::logbook::Placed;

/// A bottle of the room.
pub type Bottle = BottleSet;

/// Every bottle by its name, retired ones last.
///
/// # Errors
/// The database's.
pub async fn bottles(tx: &mut RoomTx) -> Result<Vec<Bottle>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        Bottle,
        r#"
        select id, name, holds_ul, retired_at is not null as "is_retired!"
        from bottle
        where room_id = $1
        order by retired_at is not null, name, id
        limit 500
        "#,
        room
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found)
}

/// One bottle.
///
/// # Errors
/// The database's.
pub async fn bottle(tx: &mut RoomTx, id: Uuid) -> Result<Option<Bottle>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        Bottle,
        r#"
        select id, name, holds_ul, retired_at is not null as "is_retired!"
        from bottle
        where room_id = $1 and id = $2
        "#,
        room,
        id
    )
    .fetch_optional(tx.db())
    .await?;
    Ok(found)
}

pub(super) async fn set_bottle(tx: &mut RoomTx, placed: &Placed<BottleSet>) -> Result<()> {
    let room = tx.room();
    let bottle = &placed.entry;
    sqlx::query!(
        r#"
        insert into bottle (room_id, id, name, holds_ul, retired_at)
        values ($1, $2, $3, $4, $5)
        on conflict (room_id, id) do update set
            name = excluded.name,
            holds_ul = excluded.holds_ul,
            retired_at = excluded.retired_at
        "#,
        room,
        bottle.id,
        bottle.name,
        bottle.holds_ul,
        bottle.is_retired.then_some(placed.recorded_at)
    )
    .execute(tx.db())
    .await?;
    Ok(())
}
