//! Identity's SQL.

use time::OffsetDateTime;
use uuid::Uuid;

use super::Membership;
use super::cache::Standing;
use crate::database::{InstallationTx, RoomTx};
use crate::error::{Error, Result};
use crate::rights::Role;

/// The person's standing in the room of this short name.
pub(super) async fn standing(
    tx: &mut InstallationTx,
    person: Uuid,
    slug: &str,
) -> Result<Option<Standing>> {
    let found = sqlx::query!(
        r#"
        select n.room_id, n.slug, n.name, n.is_demo, n.closed_at, m.role, h.seq
        from room_name n
        join membership m on m.room_id = n.room_id
        join head h on h.room_id = n.room_id
        where n.slug = $2
            and m.person_id = $1
            and m.suspended_at is null
            and m.ended_at is null
        "#,
        person,
        slug
    )
    .fetch_optional(tx.db())
    .await?;
    found
        .map(|row| {
            Ok(Standing {
                membership: membership(
                    row.room_id,
                    row.slug,
                    row.name,
                    (row.is_demo, row.closed_at),
                    &row.role,
                )?,
                seq: row.seq,
            })
        })
        .transpose()
}

/// The standings of these persons in a room, those that have one.
pub(super) async fn standings(tx: &mut RoomTx, persons: &[Uuid]) -> Result<Vec<(Uuid, Standing)>> {
    let room = tx.room();
    let found = sqlx::query!(
        r#"
        select m.person_id, n.slug, n.name, n.is_demo, n.closed_at, m.role, h.seq
        from membership m
        join room_name n on n.room_id = m.room_id
        join head h on h.room_id = m.room_id
        where m.room_id = $1
            and m.person_id = any($2)
            and m.suspended_at is null
            and m.ended_at is null
        "#,
        room,
        persons
    )
    .fetch_all(tx.db())
    .await?;
    found
        .into_iter()
        .map(|row| {
            let membership = membership(
                room,
                row.slug,
                row.name,
                (row.is_demo, row.closed_at),
                &row.role,
            )?;
            let seq = row.seq;
            Ok((row.person_id, Standing { membership, seq }))
        })
        .collect()
}

/// Every room the person may enter, by name.
pub(super) async fn memberships(tx: &mut InstallationTx, person: Uuid) -> Result<Vec<Membership>> {
    let found = sqlx::query!(
        r#"
        select n.room_id, n.slug, n.name, n.is_demo, n.closed_at, m.role
        from room_name n
        join membership m on m.room_id = n.room_id
        where m.person_id = $1
            and m.suspended_at is null
            and m.ended_at is null
        order by n.name, n.room_id
        limit 200
        "#,
        person
    )
    .fetch_all(tx.db())
    .await?;
    found
        .into_iter()
        .map(|row| {
            membership(
                row.room_id,
                row.slug,
                row.name,
                (row.is_demo, row.closed_at),
                &row.role,
            )
        })
        .collect()
}

/// Every room the person belongs to, by name, and whether they are suspended there.
pub(super) async fn every_room(
    tx: &mut InstallationTx,
    person: Uuid,
) -> Result<Vec<(Membership, bool)>> {
    let found = sqlx::query!(
        r#"
        select n.room_id, n.slug, n.name, n.is_demo, n.closed_at, m.role, m.suspended_at
        from room_name n
        join membership m on m.room_id = n.room_id
        where m.person_id = $1 and m.ended_at is null
        order by n.name, n.room_id
        limit 200
        "#,
        person
    )
    .fetch_all(tx.db())
    .await?;
    found
        .into_iter()
        .map(|row| {
            let flags = (row.is_demo, row.closed_at);
            let membership = membership(row.room_id, row.slug, row.name, flags, &row.role)?;
            Ok((membership, row.suspended_at.is_some()))
        })
        .collect()
}

pub(super) fn membership(
    room: Uuid,
    slug: String,
    room_name: String,
    (is_demo, closed_at): (bool, Option<OffsetDateTime>),
    role: &str,
) -> Result<Membership> {
    Ok(Membership {
        room,
        slug,
        room_name,
        role: Role::parse(role).ok_or_else(|| Error::fault(format!("no such role: {role}")))?,
        is_demo,
        is_closed: closed_at.is_some(),
    })
}

/// A person's name, as others see it.
///
/// # Errors
/// The database's.
pub async fn person_name(tx: &mut RoomTx, person: Uuid) -> Result<Option<String>> {
    let name = sqlx::query_scalar!("select name from person where id = $1", person)
        .fetch_optional(tx.db())
        .await?;
    Ok(name)
}
