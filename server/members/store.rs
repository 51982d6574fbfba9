//! The members' SQL.

use time::OffsetDateTime;
use uuid::Uuid;

use super::Joined;
use crate::database::{InstallationTx, RoomTx};
use crate::error::{Error, Result};
use crate::logbook::Placed;
use crate::rights::Role;

/// How many members a part of the list holds.
pub(super) const PART: usize = 500;

/// A member, former ones too.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct Member {
    /// Who.
    pub person: Uuid,
    /// The name others see.
    pub name: String,
    /// The name typed to log in.
    pub log_in_name: String,
    /// Their number in this room.
    pub member_number: i32,
    /// What they are.
    pub role: Role,
    /// Since when.
    pub joined_at: OffsetDateTime,
    /// Since when they may not enter, if they may not.
    pub suspended_at: Option<OffsetDateTime>,
    /// When their access ended, if it did.
    pub ended_at: Option<OffsetDateTime>,
}

impl Member {
    /// Whether they may enter.
    #[must_use]
    pub fn is_active(&self) -> bool {
        self.suspended_at.is_none() && self.ended_at.is_none()
    }
}

fn role_of(text: &str) -> Result<Role> {
    Role::parse(text).ok_or_else(|| Error::fault(format!("no such role: {text}")))
}

/// The room's members by number, after this one.
///
/// # Errors
/// The database's.
pub async fn members(tx: &mut RoomTx, after_number: i32) -> Result<Vec<Member>> {
    let room = tx.room();
    let rows = sqlx::query!(
        r#"
        select
            m.person_id, p.name, p.log_in_name, m.member_number, m.role,
            m.joined_at, m.suspended_at, m.ended_at
        from membership m
        join person p on p.id = m.person_id
        where m.room_id = $1 and m.member_number > $2
        order by m.member_number
        limit $3
        "#,
        room,
        after_number,
        i64::try_from(PART).unwrap_or(i64::MAX)
    )
    .fetch_all(tx.db())
    .await?;
    rows.into_iter()
        .map(|row| {
            Ok(Member {
                person: row.person_id,
                name: row.name,
                log_in_name: row.log_in_name,
                member_number: row.member_number,
                role: role_of(&row.role)?,
                joined_at: row.joined_at,
                suspended_at: row.suspended_at,
                ended_at: row.ended_at,
            })
        })
        .collect()
}

/// Everybody who ever was a member, by number.
///
/// # Errors
/// The database's.
pub async fn everyone(tx: &mut RoomTx) -> Result<Vec<Member>> {
    let mut all: Vec<Member> = Vec::new();
    loop {
        let after = all.last().map_or(0, |member| member.member_number);
        let more = members(tx, after).await?;
        if more.is_empty() {
            return Ok(all);
        }
        all.extend(more);
    }
}

pub(super) async fn member(tx: &mut RoomTx, person: Uuid) -> Result<Option<Member>> {
    let room = tx.room();
    let row = sqlx::query!(
        r#"
        select
            p.name, p.log_in_name, m.member_number, m.role,
            m.joined_at, m.suspended_at, m.ended_at
        from membership m
        join person p on p.id = m.person_id
        where m.room_id = $1 and m.person_id = $2
        "#,
        room,
        person
    )
    .fetch_optional(tx.db())
    .await?;
    row.map(|row| {
        Ok(Member {
            person,
            name: row.name,
            log_in_name: row.log_in_name,
            member_number: row.member_number,
            role: role_of(&row.role)?,
            joined_at: row.joined_at,
            suspended_at: row.suspended_at,
            ended_at: row.ended_at,
        })
    })
    .transpose()
}

/// How many stewards may enter, without this person.
pub(super) async fn other_stewards(tx: &mut RoomTx, person: Uuid) -> Result<i64> {
    let room = tx.room();
    let count = sqlx::query_scalar!(
        r#"
        select count(*) as "count!"
        from membership
        where room_id = $1
            and person_id <> $2
            and role = 'steward'
            and suspended_at is null
            and ended_at is null
        "#,
        room,
        person
    )
    .fetch_one(tx.db())
    .await?;
    Ok(count)
}

/// The number of the room's next member. Only under the lock on its head.
pub(super) async fn next_number(tx: &mut RoomTx) -> Result<i32> {
    let room = tx.room();
    let last = sqlx::query_scalar!(
        "select max(member_number) from membership where room_id = $1",
        room
    )
    .fetch_one(tx.db())
    .await?;
    Ok(last.unwrap_or(0) + 1)
}

pub(super) async fn join(tx: &mut RoomTx, placed: &Placed<Joined>) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        r#"
        insert into membership (room_id, person_id, member_number, role, joined_at)
        values ($1, $2, $3, $4, $5)
        on conflict (room_id, person_id) do update
        set member_number = excluded.member_number,
            role = excluded.role,
            joined_at = excluded.joined_at,
            suspended_at = null,
            ended_at = null
        "#,
        room,
        placed.entry.person,
        placed.entry.member_number,
        placed.entry.role.as_str(),
        placed.recorded_at
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

pub(super) async fn set_role(tx: &mut RoomTx, person: Uuid, role: Role) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        "update membership set role = $3 where room_id = $1 and person_id = $2",
        room,
        person,
        role.as_str()
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

pub(super) async fn set_suspended(
    tx: &mut RoomTx,
    person: Uuid,
    at: Option<OffsetDateTime>,
) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        "update membership set suspended_at = $3 where room_id = $1 and person_id = $2",
        room,
        person,
        at
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

pub(super) async fn end(tx: &mut RoomTx, person: Uuid, at: OffsetDateTime) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        "update membership set ended_at = $3 where room_id = $1 and person_id = $2",
        room,
        person,
        at
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

/// Revokes all of a person's tokens of the room.
pub(super) async fn revoke_tokens(
    tx: &mut RoomTx,
    person: Uuid,
    now: OffsetDateTime,
) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        r#"
        update token
        set revoked_at = $3
        where room_id = $1 and person_id = $2 and revoked_at is null
        "#,
        room,
        person,
        now
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

/// An account, as the machine sees it.
pub(super) struct AccountRow {
    pub(super) id: Uuid,
    pub(super) name: String,
    pub(super) log_in_name: String,
    pub(super) is_operator: bool,
    pub(super) suspended_at: Option<OffsetDateTime>,
}

pub(super) async fn accounts(tx: &mut InstallationTx) -> Result<Vec<AccountRow>> {
    let rows = sqlx::query_as!(
        AccountRow,
        r#"
        select id, name, log_in_name, is_operator, suspended_at
        from person
        order by log_in_name
        limit 10000
        "#
    )
    .fetch_all(tx.db())
    .await?;
    Ok(rows)
}

pub(super) async fn account(
    tx: &mut InstallationTx,
    log_in_name: &str,
) -> Result<Option<AccountRow>> {
    let row = sqlx::query_as!(
        AccountRow,
        r#"
        select id, name, log_in_name, is_operator, suspended_at
        from person
        where log_in_name = $1
        "#,
        log_in_name
    )
    .fetch_optional(tx.db())
    .await?;
    Ok(row)
}

/// The rooms a person's access to has not ended, by short name, closed ones too.
pub(super) async fn rooms_of(
    tx: &mut InstallationTx,
    person: Uuid,
) -> Result<Vec<(Uuid, String, Role, bool)>> {
    let rows = sqlx::query!(
        r#"
        select n.room_id, n.slug, n.closed_at, m.role
        from membership m
        join room_name n on n.room_id = m.room_id
        where m.person_id = $1 and m.ended_at is null
        order by n.slug
        limit 1000
        "#,
        person
    )
    .fetch_all(tx.db())
    .await?;
    rows.into_iter()
        .map(|row| {
            let is_closed = row.closed_at.is_some();
            Ok((row.room_id, row.slug, role_of(&row.role)?, is_closed))
        })
        .collect()
}

/// Suspends an account or lets it log in again.
pub(super) async fn set_account_suspended(
    tx: &mut InstallationTx,
    person: Uuid,
    at: Option<OffsetDateTime>,
) -> Result<()> {
    sqlx::query!(
        "update person set suspended_at = $2 where id = $1",
        person,
        at
    )
    .execute(tx.db())
    .await?;
    Ok(())
}
