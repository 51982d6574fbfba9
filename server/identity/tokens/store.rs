//! The tokens' SQL.

use time::OffsetDateTime;
use uuid::Uuid;

use super::{GoodToken, Token};
use crate::database::RoomTx;
use crate::error::Result;
use crate::identity::store::membership;
use crate::identity::{Membership, Person};

/// What a token's row says, with its person and their standing.
pub(super) struct TokenRow {
    pub(super) secret_hash: Vec<u8>,
    pub(super) scopes: Vec<String>,
    pub(super) last_used_at: Option<OffsetDateTime>,
    pub(super) person: Person,
    pub(super) membership: Membership,
}

/// A token that is still good, of a person who is still a member.
pub(super) async fn find(
    tx: &mut RoomTx,
    id: Uuid,
    now: OffsetDateTime,
) -> Result<Option<TokenRow>> {
    let room = tx.room();
    let found = sqlx::query!(
        r#"
        select
            t.secret_hash, t.scopes, t.last_used_at,
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
            and p.suspended_at is null
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
                last_used_at: row.last_used_at,
                person: Person {
                    id: row.person_id,
                    name: row.person_name,
                    session: None,
                    is_operator: row.is_operator,
                },
                membership: membership(
                    room,
                    row.slug,
                    row.room_name,
                    (row.is_demo, row.closed_at),
                    &row.role,
                )?,
            })
        })
        .transpose()
}

/// Notes that a token was used, unless another instance just did.
pub(super) async fn used(
    tx: &mut RoomTx,
    id: Uuid,
    now: OffsetDateTime,
    before: OffsetDateTime,
) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        r#"
        update token
        set last_used_at = $3
        where room_id = $1
            and id = $2
            and (last_used_at is null or last_used_at <= $4)
        "#,
        room,
        id,
        now,
        before
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

pub(super) async fn insert(
    tx: &mut RoomTx,
    person: Uuid,
    token: &Token,
    secret_hash: &[u8],
) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        r#"
        insert into token (room_id, id, person_id, name, secret_hash, scopes, made_at, expires_at)
        values ($1, $2, $3, $4, $5, $6, $7, $8)
        "#,
        room,
        token.id,
        person,
        token.name,
        secret_hash,
        &token.scopes,
        token.made_at,
        token.expires_at
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

pub(super) async fn of_person(tx: &mut RoomTx, person: Uuid) -> Result<Vec<Token>> {
    let room = tx.room();
    let tokens = sqlx::query_as!(
        Token,
        r#"
        select id, name, scopes, made_at, expires_at, last_used_at, revoked_at
        from token
        where room_id = $1 and person_id = $2
        order by made_at desc, id desc
        limit 200
        "#,
        room,
        person
    )
    .fetch_all(tx.db())
    .await?;
    Ok(tokens)
}

pub(super) async fn good_in(tx: &mut RoomTx, now: OffsetDateTime) -> Result<Vec<GoodToken>> {
    let room = tx.room();
    let tokens = sqlx::query_as!(
        GoodToken,
        r#"
        select t.name, p.name as person_name, t.scopes, t.expires_at
        from token t
        join person p on p.id = t.person_id
        join membership m on m.room_id = t.room_id and m.person_id = t.person_id
        where t.room_id = $1
            and t.revoked_at is null
            and t.expires_at > $2
            and m.suspended_at is null
            and m.ended_at is null
            and p.suspended_at is null
        order by p.name, t.name, t.id
        limit 1000
        "#,
        room,
        now
    )
    .fetch_all(tx.db())
    .await?;
    Ok(tokens)
}

/// Revokes a token; answers whether the person has it.
pub(super) async fn revoke(
    tx: &mut RoomTx,
    person: Uuid,
    id: Uuid,
    now: OffsetDateTime,
) -> Result<bool> {
    let room = tx.room();
    let revoked = sqlx::query!(
        r#"
        update token
        set revoked_at = coalesce(revoked_at, $4)
        where room_id = $1 and person_id = $2 and id = $3
        "#,
        room,
        person,
        id,
        now
    )
    .execute(tx.db())
    .await?;
    Ok(revoked.rows_affected() > 0)
}
