//! The jobs' SQL.

use time::OffsetDateTime;
use uuid::Uuid;

use super::{Claim, Job};
use crate::database::{InstallationTx, RoomTx};
use crate::error::{Error, Result};
use crate::identity::devices::GOOD_FOR;
use crate::identity::sessions::DEVICE_KEPT;

fn kinds(of_rooms: bool) -> Vec<String> {
    let all = Job::ALL.iter().filter(|job| job.is_of_a_room() == of_rooms);
    all.map(|job| job.kind().to_owned()).collect()
}

/// Jobs that are not on the list, each with its room.
pub(super) async fn missing(tx: &mut InstallationTx) -> Result<Vec<(Job, Uuid)>> {
    let found = sqlx::query!(
        r#"
        select p.room_id as "room_id!", p.kind as "kind!"
        from (
            select h.room_id, k.kind
            from head h
            join room_name n on n.room_id = h.room_id
            cross join unnest($1::text[]) k (kind)
            where n.closed_at is null
            union all
            select '00000000-0000-0000-0000-000000000000'::uuid, k.kind
            from unnest($2::text[]) k (kind)
        ) p
        where not exists (
            select from work w where w.room_id = p.room_id and w.kind = p.kind
        )
        limit 1000
        "#,
        &kinds(true),
        &kinds(false)
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found
        .into_iter()
        .filter_map(|row| Some((Job::parse(&row.kind)?, row.room_id)))
        .collect())
}

/// Puts a job of the transaction's room on the list, once.
pub(super) async fn plan(tx: &mut RoomTx, job: Job, due_at: OffsetDateTime) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        r#"
        insert into work (room_id, kind, due_at)
        values ($1, $2, $3)
        on conflict do nothing
        "#,
        room,
        job.kind(),
        due_at
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

/// Takes the job that is due longest and that nobody holds.
pub(super) async fn claim(
    tx: &mut InstallationTx,
    now: OffsetDateTime,
    lease_until: OffsetDateTime,
) -> Result<Option<Claim>> {
    let mut known = kinds(true);
    known.extend(kinds(false));
    let found = sqlx::query!(
        r#"
        update work w
        set lease_until = $2, attempts = w.attempts + 1
        from (
            select room_id, kind, due_at
            from work
            where due_at <= $1
                and (lease_until is null or lease_until <= $1)
                and kind = any($3)
            order by due_at, room_id, kind
            limit 1
            for update skip locked
        ) due
        where w.room_id = due.room_id and w.kind = due.kind and w.due_at = due.due_at
        returning w.room_id, w.kind, w.due_at, w.attempts
        "#,
        now,
        lease_until,
        &known
    )
    .fetch_optional(tx.db())
    .await?;
    found
        .map(|row| {
            let job = Job::parse(&row.kind)
                .ok_or_else(|| Error::fault(format!("no such job: {}", row.kind)))?;
            Ok(Claim {
                job,
                room: row.room_id,
                due_at: row.due_at,
                attempts: row.attempts,
                lease_until,
            })
        })
        .transpose()
}

/// Lets a held job rest until then.
pub(super) async fn put_off(
    tx: &mut InstallationTx,
    claim: Claim,
    until: OffsetDateTime,
) -> Result<()> {
    sqlx::query!(
        r#"
        update work
        set lease_until = $5
        where room_id = $1
            and kind = $2
            and due_at = $3
            and lease_until = $4
        "#,
        claim.room,
        claim.job.kind(),
        claim.due_at,
        claim.lease_until,
        until
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

/// Takes a held job off the list; whether it was still held.
pub(super) async fn take_off(tx: &mut RoomTx, claim: Claim) -> Result<bool> {
    let room = tx.room();
    let done = sqlx::query!(
        r#"
        delete from work
        where room_id = $1
            and kind = $2
            and due_at = $3
            and lease_until = $4
        "#,
        room,
        claim.job.kind(),
        claim.due_at,
        claim.lease_until
    )
    .execute(tx.db())
    .await?;
    Ok(done.rows_affected() == 1)
}

/// What verifying a book came to.
#[derive(Clone, Copy, Debug)]
pub(super) struct Outcome {
    pub(super) at: OffsetDateTime,
    pub(super) entries: i64,
    pub(super) sealed_seq: Option<i64>,
    pub(super) findings: i64,
}

pub(super) async fn insert_verification(tx: &mut RoomTx, outcome: Outcome) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        r#"
        insert into verification (room_id, at, entries, sealed_seq, findings)
        values ($1, $2, $3, $4, $5)
        on conflict do nothing
        "#,
        room,
        outcome.at,
        outcome.entries,
        outcome.sealed_seq,
        outcome.findings
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

/// Takes away log-ins that are over and tries that no longer count, and closes
/// links that were never used.
pub(super) async fn expire(tx: &mut RoomTx, now: OffsetDateTime) -> Result<(u64, u64, u64)> {
    let sessions = sqlx::query!("delete from session where expires_at <= $1", now)
        .execute(tx.db())
        .await?;
    sqlx::query!(
        "delete from known_device where seen_at <= $1",
        now - DEVICE_KEPT
    )
    .execute(tx.db())
    .await?;
    // Nobody types a code that old any more.
    sqlx::query!(
        "delete from pairing where screen_id is null and shown_at <= $1",
        now - GOOD_FOR
    )
    .execute(tx.db())
    .await?;
    let tries = sqlx::query!("delete from throttle where window_ends_at <= $1", now)
        .execute(tx.db())
        .await?;
    let links = sqlx::query!(
        r#"
        update invitation
        set revoked_at = expires_at
        where expires_at <= $1
            and used_at is null
            and revoked_at is null
        "#,
        now
    )
    .execute(tx.db())
    .await?;
    Ok((
        sessions.rows_affected(),
        tries.rows_affected(),
        links.rows_affected(),
    ))
}
