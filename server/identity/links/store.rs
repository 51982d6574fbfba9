//! The links' SQL.

use time::OffsetDateTime;
use uuid::Uuid;

use super::{Kind, Link, NewLink, OpenLink};
use crate::database::{InstallationTx, RoomTx};
use crate::error::{Error, Result};
use crate::rights::Role;

fn role_of(text: Option<String>) -> Result<Option<Role>> {
    text.map(|role| Role::parse(&role).ok_or_else(|| Error::fault(format!("no such role: {role}"))))
        .transpose()
}

pub(super) async fn find(
    tx: &mut InstallationTx,
    kind: Kind,
    secret_hash: &[u8],
    now: OffsetDateTime,
) -> Result<Option<Link>> {
    let found = sqlx::query!(
        r#"
        select
            i.id, i.room_id, i.role, i.person_id, i.made_by, i.expires_at,
            n.name as "room_name?", n.slug as "slug?",
            p.name as "person_name?", p.log_in_name as "log_in_name?"
        from invitation i
        left join room_name n on n.room_id = i.room_id
        left join person p on p.id = i.person_id
        where i.secret_hash = $1
            and i.kind = $2
            and i.used_at is null
            and i.revoked_at is null
            and (i.expires_at is null or i.expires_at > $3)
            and (i.kind <> 'set_up' or not exists (select from room_name))
        "#,
        secret_hash,
        kind.as_str(),
        now
    )
    .fetch_optional(tx.db())
    .await?;
    found
        .map(|row| {
            Ok(Link {
                id: row.id,
                room: row.room_id,
                room_name: row.room_name,
                slug: row.slug,
                role: role_of(row.role)?,
                person: row.person_id,
                person_name: row.person_name,
                log_in_name: row.log_in_name,
                made_by: row.made_by,
                expires_at: row.expires_at,
            })
        })
        .transpose()
}

pub(super) async fn use_up(
    tx: &mut InstallationTx,
    link: Uuid,
    now: OffsetDateTime,
) -> Result<bool> {
    let used = sqlx::query!(
        r#"
        update invitation
        set used_at = $2
        where id = $1
            and used_at is null
            and revoked_at is null
            and (expires_at is null or expires_at > $2)
        "#,
        link,
        now
    )
    .execute(tx.db())
    .await?;
    Ok(used.rows_affected() > 0)
}

pub(super) async fn use_up_in_room(
    tx: &mut RoomTx,
    link: Uuid,
    now: OffsetDateTime,
) -> Result<bool> {
    let used = sqlx::query!(
        r#"
        update invitation
        set used_at = $2
        where id = $1
            and used_at is null
            and revoked_at is null
            and (expires_at is null or expires_at > $2)
        "#,
        link,
        now
    )
    .execute(tx.db())
    .await?;
    Ok(used.rows_affected() > 0)
}

pub(super) async fn has_room(tx: &mut RoomTx) -> Result<bool> {
    let has = sqlx::query_scalar!(r#"select exists (select from room_name) as "has!""#)
        .fetch_one(tx.db())
        .await?;
    Ok(has)
}

pub(super) async fn insert_in_room(
    tx: &mut RoomTx,
    new: &NewLink,
    secret_hash: &[u8],
    now: OffsetDateTime,
) -> Result<()> {
    sqlx::query!(
        r#"
        insert into invitation (
            id, secret_hash, kind, room_id, role, person_id, made_by, made_at, expires_at
        )
        values ($1, $2, $3, $4, $5, $6, $7, $8, $9)
        "#,
        new.id,
        secret_hash,
        new.kind.as_str(),
        new.room,
        new.role.map(Role::as_str),
        new.person,
        new.made_by,
        now,
        new.expires_at
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

/// As [`insert_in_room`], for a link that belongs to no room.
pub(in crate::identity) async fn insert(
    tx: &mut InstallationTx,
    new: &NewLink,
    secret_hash: &[u8],
    now: OffsetDateTime,
) -> Result<()> {
    sqlx::query!(
        r#"
        insert into invitation (
            id, secret_hash, kind, room_id, role, person_id, made_by, made_at, expires_at
        )
        values ($1, $2, $3, $4, $5, $6, $7, $8, $9)
        "#,
        new.id,
        secret_hash,
        new.kind.as_str(),
        new.room,
        new.role.map(Role::as_str),
        new.person,
        new.made_by,
        now,
        new.expires_at
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

/// Revokes every set-up link and, where there is no room yet, makes one.
pub(super) async fn renew_set_up(
    tx: &mut InstallationTx,
    id: Uuid,
    secret_hash: &[u8],
    now: OffsetDateTime,
) -> Result<bool> {
    sqlx::query!(
        r#"
        update invitation
        set revoked_at = $1
        where kind = 'set_up' and used_at is null and revoked_at is null
        "#,
        now
    )
    .execute(tx.db())
    .await?;
    let made = sqlx::query!(
        r#"
        insert into invitation (id, secret_hash, kind, made_at)
        select $1, $2, 'set_up', $3
        where not exists (select from room_name)
        "#,
        id,
        secret_hash,
        now
    )
    .execute(tx.db())
    .await?;
    Ok(made.rows_affected() > 0)
}

/// The rooms a person is steward of now.
pub(super) async fn stewarded(tx: &mut InstallationTx, person: Uuid) -> Result<Vec<Uuid>> {
    let rooms = sqlx::query_scalar!(
        r#"
        select room_id
        from membership
        where person_id = $1
            and role = 'steward'
            and suspended_at is null
            and ended_at is null
        "#,
        person
    )
    .fetch_all(tx.db())
    .await?;
    Ok(rooms)
}

/// All a person ever was.
pub(super) struct Everything {
    pub(super) is_operator: bool,
    pub(super) memberships: Vec<(Uuid, Role)>,
}

pub(super) async fn every_membership(tx: &mut InstallationTx, person: Uuid) -> Result<Everything> {
    let is_operator = sqlx::query_scalar!("select is_operator from person where id = $1", person)
        .fetch_optional(tx.db())
        .await?
        .ok_or(Error::NotFound)?;
    let rows = sqlx::query!(
        "select room_id, role from membership where person_id = $1",
        person
    )
    .fetch_all(tx.db())
    .await?;
    let memberships = rows
        .into_iter()
        .map(|row| {
            let role = Role::parse(&row.role);
            let role = role.ok_or_else(|| Error::fault(format!("no such role: {}", row.role)))?;
            Ok((row.room_id, role))
        })
        .collect::<Result<_>>()?;
    Ok(Everything {
        is_operator,
        memberships,
    })
}

pub(super) async fn set_password(
    tx: &mut InstallationTx,
    person: Uuid,
    password_hash: &str,
) -> Result<()> {
    sqlx::query!(
        "update person set password_hash = $2 where id = $1",
        person,
        password_hash
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

pub(super) async fn revoke_resets(
    tx: &mut InstallationTx,
    person: Uuid,
    now: OffsetDateTime,
) -> Result<()> {
    sqlx::query!(
        r#"
        update invitation
        set revoked_at = $2
        where person_id = $1
            and kind = 'reset'
            and used_at is null
            and revoked_at is null
        "#,
        person,
        now
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

/// The open links of a room, the newest first.
pub(crate) async fn open_links(tx: &mut RoomTx, now: OffsetDateTime) -> Result<Vec<OpenLink>> {
    let room = tx.room();
    let found = sqlx::query!(
        r#"
        select
            i.id, i.kind, i.role, i.made_at, i.expires_at,
            p.name as "person_name?", maker.name as "made_by?"
        from invitation i
        left join person p on p.id = i.person_id
        left join person maker on maker.id = i.made_by
        where i.room_id = $1
            and i.used_at is null
            and i.revoked_at is null
            and i.expires_at > $2
        order by i.made_at desc, i.id
        limit 500
        "#,
        room,
        now
    )
    .fetch_all(tx.db())
    .await?;
    found
        .into_iter()
        .map(|row| {
            Ok(OpenLink {
                id: row.id,
                is_reset: row.kind == Kind::Reset.as_str(),
                role: role_of(row.role)?,
                person_name: row.person_name,
                made_by: row.made_by,
                made_at: row.made_at,
                expires_at: row.expires_at,
            })
        })
        .collect()
}

/// Revokes a link of the room; where it did, answers whose password it was for.
pub(super) async fn revoke(
    tx: &mut RoomTx,
    link: Uuid,
    now: OffsetDateTime,
) -> Result<Option<Option<Uuid>>> {
    let room = tx.room();
    let person = sqlx::query_scalar!(
        r#"
        update invitation
        set revoked_at = $3
        where room_id = $1
            and id = $2
            and used_at is null
            and revoked_at is null
        returning person_id
        "#,
        room,
        link,
        now
    )
    .fetch_optional(tx.db())
    .await?;
    Ok(person)
}

pub(super) async fn is_of_room(tx: &mut RoomTx, link: Uuid) -> Result<bool> {
    let room = tx.room();
    let is = sqlx::query_scalar!(
        r#"select exists (select from invitation where room_id = $1 and id = $2) as "is!""#,
        room,
        link
    )
    .fetch_one(tx.db())
    .await?;
    Ok(is)
}

pub(super) async fn open_of(
    tx: &mut RoomTx,
    maker: Uuid,
    now: OffsetDateTime,
) -> Result<Vec<Uuid>> {
    let room = tx.room();
    let links = sqlx::query_scalar!(
        r#"
        select id
        from invitation
        where room_id = $1
            and made_by = $2
            and used_at is null
            and revoked_at is null
            and expires_at > $3
        order by id
        "#,
        room,
        maker,
        now
    )
    .fetch_all(tx.db())
    .await?;
    Ok(links)
}
