//! The notices' SQL. A policy holds each reader to their own.

use time::OffsetDateTime;
use uuid::Uuid;

use super::{Kept, Told};
use crate::database::RoomTx;
use crate::error::Result;

pub(super) async fn insert(
    tx: &mut RoomTx,
    at: OffsetDateTime,
    person: Uuid,
    kind: &str,
    parameters: &str,
) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        r#"
        insert into notice (room_id, id, person_id, kind, parameters, made_at)
        values ($1, $2, $3, $4, $5, $6)
        "#,
        room,
        Uuid::now_v7(),
        person,
        kind,
        parameters,
        at
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

pub(super) async fn stewards(tx: &mut RoomTx) -> Result<Vec<Uuid>> {
    let room = tx.room();
    let found = sqlx::query_scalar!(
        r#"
        select person_id
        from membership
        where room_id = $1
            and role = 'steward'
            and suspended_at is null
            and ended_at is null
        order by member_number
        "#,
        room
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found)
}

pub(super) async fn list(
    tx: &mut RoomTx,
    before: Option<OffsetDateTime>,
    most: i64,
) -> Result<Vec<Kept>> {
    let room = tx.room();
    let found = sqlx::query!(
        r#"
        select id, kind, parameters, made_at, read_at
        from notice
        where room_id = $1
            and person_id = (select current_person())
            and ($2::timestamptz is null or made_at < $2)
        order by made_at desc, id desc
        limit $3
        "#,
        room,
        before,
        most
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found
        .into_iter()
        .map(|row| Kept {
            id: row.id,
            told: Told::of(row.kind, &row.parameters),
            made_at: row.made_at,
            read_at: row.read_at,
        })
        .collect())
}

pub(super) async fn unread(tx: &mut RoomTx) -> Result<i64> {
    let room = tx.room();
    let count = sqlx::query_scalar!(
        r#"
        select count(*) as "count!"
        from notice
        where room_id = $1
            and person_id = (select current_person())
            and read_at is null
        "#,
        room
    )
    .fetch_one(tx.db())
    .await?;
    Ok(count)
}

pub(super) async fn mark_read(tx: &mut RoomTx, now: OffsetDateTime) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        r#"
        update notice
        set read_at = $2
        where room_id = $1
            and person_id = (select current_person())
            and read_at is null
        "#,
        room,
        now
    )
    .execute(tx.db())
    .await?;
    Ok(())
}
