//! The screens' SQL.

use time::OffsetDateTime;
use uuid::Uuid;

use super::DeviceRoom;
use crate::database::{InstallationTx, RoomTx};
use crate::error::Result;

/// A browser that waits or was paired.
pub(super) struct Found {
    pub(super) shown_at: OffsetDateTime,
    pub(super) last_seen_at: OffsetDateTime,
    pub(super) room: Option<DeviceRoom>,
    pub(super) screen: Option<Uuid>,
}

pub(super) async fn find(tx: &mut InstallationTx, secret_hash: &[u8]) -> Result<Option<Found>> {
    let found = sqlx::query!(
        r#"
        select
            g.shown_at, g.last_seen_at, g.room_id, g.screen_id, n.slug as "slug?",
            n.name as "name?", n.is_demo as "is_demo?"
        from pairing g
        left join room_name n on n.room_id = g.room_id
        where g.secret_hash = $1
        "#,
        secret_hash
    )
    .fetch_optional(tx.db())
    .await?;
    Ok(found.map(|row| Found {
        shown_at: row.shown_at,
        last_seen_at: row.last_seen_at,
        room: row.room_id.map(|id| DeviceRoom {
            id,
            slug: row.slug.unwrap_or_default(),
            name: row.name.unwrap_or_default(),
            is_demo: row.is_demo.unwrap_or_default(),
        }),
        screen: row.screen_id,
    }))
}

/// Kind and display of a screen that is still paired.
pub(super) async fn screen(tx: &mut RoomTx, id: Uuid) -> Result<Option<(String, String)>> {
    let room = tx.room();
    let found = sqlx::query!(
        "select kind, display from screen where room_id = $1 and id = $2 and ended_seq is null",
        room,
        id
    )
    .fetch_optional(tx.db())
    .await?;
    Ok(found.map(|row| (row.kind, row.display)))
}

pub(super) async fn seen(
    tx: &mut InstallationTx,
    secret_hash: &[u8],
    now: OffsetDateTime,
    before: OffsetDateTime,
) -> Result<()> {
    sqlx::query!(
        "update pairing set last_seen_at = $2 where secret_hash = $1 and last_seen_at <= $3",
        secret_hash,
        now,
        before
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

/// Forgets a browser that waits; whether it is no screen by now.
pub(super) async fn forget(tx: &mut InstallationTx, secret_hash: &[u8]) -> Result<bool> {
    sqlx::query!(
        "delete from pairing where secret_hash = $1 and screen_id is null",
        secret_hash
    )
    .execute(tx.db())
    .await?;
    let is_screen = sqlx::query_scalar!(
        r#"select exists (select from pairing where secret_hash = $1) as "is_screen!""#,
        secret_hash
    )
    .fetch_one(tx.db())
    .await?;
    Ok(!is_screen)
}

pub(super) async fn wait(
    tx: &mut InstallationTx,
    secret_hash: &[u8],
    code_hash: &[u8],
    now: OffsetDateTime,
) -> Result<()> {
    sqlx::query!(
        r#"
        insert into pairing (secret_hash, code_hash, shown_at, last_seen_at)
        values ($1, $2, $3, $3)
        "#,
        secret_hash,
        code_hash,
        now
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

/// Takes the browser that shows a code; whether there was one.
pub(super) async fn claim(
    tx: &mut RoomTx,
    code_hash: &[u8],
    screen: Uuid,
    now: OffsetDateTime,
    shown_after: OffsetDateTime,
) -> Result<bool> {
    let room = tx.room();
    let claimed = sqlx::query!(
        r#"
        update pairing
        set code_hash = null, room_id = $2, screen_id = $3, last_seen_at = $4
        where code_hash = $1 and shown_at > $5
        "#,
        code_hash,
        room,
        screen,
        now,
        shown_after
    )
    .execute(tx.db())
    .await?;
    Ok(claimed.rows_affected() == 1)
}

pub(super) async fn release(tx: &mut RoomTx, screen: Uuid) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        "delete from pairing where room_id = $1 and screen_id = $2",
        room,
        screen
    )
    .execute(tx.db())
    .await?;
    Ok(())
}
