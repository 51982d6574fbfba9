//! Identity's SQL.

use time::OffsetDateTime;
use uuid::Uuid;

use super::{Membership, Person};
use crate::database::{InstallationTx, RoomTx};
use crate::error::{Error, Result};
use crate::rights::Role;

/// The person of a session that is still good.
pub(super) async fn session(
    tx: &mut InstallationTx,
    secret_hash: &[u8],
    now: OffsetDateTime,
) -> Result<Option<Person>> {
    let found = sqlx::query!(
        r#"
        select s.id as session, p.id, p.name, p.is_operator
        from session s
        join person p on p.id = s.person_id
        where s.secret_hash = $1 and s.expires_at > $2
        "#,
        secret_hash,
        now
    )
    .fetch_optional(tx.db())
    .await?;
    Ok(found.map(|row| Person {
        id: row.id,
        name: row.name,
        session: Some(row.session),
        is_operator: row.is_operator,
    }))
}

/// The person's standing in the room of this short name.
pub(super) async fn membership(
    tx: &mut InstallationTx,
    person: Uuid,
    slug: &str,
) -> Result<Option<Membership>> {
    let found = sqlx::query!(
        r#"
        select n.room_id, n.slug, n.name, n.is_demo, n.closed_at, m.role
        from room_name n
        join membership m on m.room_id = n.room_id
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
            let flags = (row.is_demo, row.closed_at.is_some());
            standing(row.room_id, row.slug, row.name, flags, &row.role)
        })
        .transpose()
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
            let flags = (row.is_demo, row.closed_at.is_some());
            standing(row.room_id, row.slug, row.name, flags, &row.role)
        })
        .collect()
}

fn standing(
    room: Uuid,
    slug: String,
    room_name: String,
    (is_demo, is_closed): (bool, bool),
    role: &str,
) -> Result<Membership> {
    Ok(Membership {
        room,
        slug,
        room_name,
        role: Role::parse(role).ok_or_else(|| Error::fault(format!("no such role: {role}")))?,
        is_demo,
        is_closed,
    })
}

/// What a token's row says, with its person and their standing.
pub(super) struct TokenRow {
    pub(super) secret_hash: Vec<u8>,
    pub(super) scopes: Vec<String>,
    pub(super) person: Person,
    pub(super) membership: Membership,
}

/// A token that is still good, of a person who is still a member.
pub(super) async fn token(
    tx: &mut RoomTx,
    id: Uuid,
    now: OffsetDateTime,
) -> Result<Option<TokenRow>> {
    let room = tx.room();
    let found = sqlx::query!(
        r#"
        select
            t.secret_hash, t.scopes,
            p.id as person_id, p.name as person_name, p.is_operator,
            n.slug, n.name as room_name, n.is_demo, n.closed_at, m.role
        from token t
        join person p on p.id = t.person_id
        join membership m on m.room_id = t.room_id and m.person_id = t.person_id
        join room_name n on n.room_id = t.room_id
        where t.room_id = $1
            and t.id = $2
            and t.revoked_at is null
            and t.expires_at > $3
            and m.suspended_at is null
            and m.ended_at is null
        "#,
        room,
        id,
        now
    )
    .fetch_optional(tx.db())
    .await?;
    found
        .map(|row| {
            Ok(TokenRow {
                secret_hash: row.secret_hash,
                scopes: row.scopes,
                person: Person {
                    id: row.person_id,
                    name: row.person_name,
                    session: None,
                    is_operator: row.is_operator,
                },
                membership: standing(
                    room,
                    row.slug,
                    row.room_name,
                    (row.is_demo, row.closed_at.is_some()),
                    &row.role,
                )?,
            })
        })
        .transpose()
}
