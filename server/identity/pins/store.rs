//! The PINs' SQL.

use time::OffsetDateTime;
use uuid::Uuid;

use crate::database::RoomTx;
use crate::error::Result;
use crate::identity::Person;

/// Somebody who may enter the room, and what is kept of their PIN.
pub(super) struct AtNumber {
    pub(super) person: Person,
    pub(super) hash: Option<String>,
}

pub(super) async fn at_number(tx: &mut RoomTx, number: i32) -> Result<Option<AtNumber>> {
    let room = tx.room();
    let found = sqlx::query!(
        r#"
        select p.id, p.name, p.is_operator, i.hash as "hash?"
        from membership m
        join person p on p.id = m.person_id
        left join pin i on i.room_id = m.room_id and i.person_id = m.person_id
        where m.room_id = $1
            and m.member_number = $2
            and m.suspended_at is null
            and m.ended_at is null
            and p.suspended_at is null
        "#,
        room,
        number
    )
    .fetch_optional(tx.db())
    .await?;
    Ok(found.map(|row| AtNumber {
        person: Person {
            id: row.id,
            name: row.name,
            session: None,
            is_operator: row.is_operator,
        },
        hash: row.hash,
    }))
}

pub(super) async fn set(
    tx: &mut RoomTx,
    person: Uuid,
    hash: &str,
    now: OffsetDateTime,
) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        r#"
        insert into pin (room_id, person_id, hash, set_at)
        values ($1, $2, $3, $4)
        on conflict (room_id, person_id) do update
        set hash = excluded.hash, set_at = excluded.set_at
        "#,
        room,
        person,
        hash,
        now
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

pub(super) async fn remove(tx: &mut RoomTx, person: Uuid) -> Result<bool> {
    let room = tx.room();
    let removed = sqlx::query!(
        "delete from pin where room_id = $1 and person_id = $2",
        room,
        person
    )
    .execute(tx.db())
    .await?;
    Ok(removed.rows_affected() > 0)
}

pub(super) async fn set_at(tx: &mut RoomTx, person: Uuid) -> Result<Option<OffsetDateTime>> {
    let room = tx.room();
    let found = sqlx::query_scalar!(
        "select set_at from pin where room_id = $1 and person_id = $2",
        room,
        person
    )
    .fetch_optional(tx.db())
    .await?;
    Ok(found)
}
