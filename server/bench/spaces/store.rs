//! The spaces' SQL.

use uuid::Uuid;

use super::SpaceSet;
use crate::database::RoomTx;
use crate::error::Result;
use crate::logbook::Placed;

/// A space of the room.
pub type Space = SpaceSet;

/// Every space in its order, retired ones last.
///
/// # Errors
/// The database's.
pub async fn spaces(tx: &mut RoomTx) -> Result<Vec<Space>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        Space,
        r#"
        select id, name, position, retired_at is not null as "is_retired!"
        from space
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

/// One space.
///
/// # Errors
/// The database's.
pub async fn space(tx: &mut RoomTx, id: Uuid) -> Result<Option<Space>> {
    let all = spaces(tx).await?;
    Ok(all.into_iter().find(|space| space.id == id))
}

pub(super) async fn set_space(tx: &mut RoomTx, placed: &Placed<SpaceSet>) -> Result<()> {
    let room = tx.room();
    let space = &placed.entry;
    sqlx::query!(
        r#"
        insert into space (room_id, id, name, position, retired_at)
        values ($1, $2, $3, $4, $5)
        on conflict (room_id, id) do update set
            name = excluded.name,
            position = excluded.position,
            retired_at = excluded.retired_at
        "#,
        room,
        space.id,
        space.name,
        space.position,
        space.is_retired.then_some(placed.recorded_at)
    )
    .execute(tx.db())
    .await?;
    Ok(())
}
