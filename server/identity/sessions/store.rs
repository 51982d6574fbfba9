//! The sessions' SQL.

use time::OffsetDateTime;
use uuid::Uuid;

use super::{IDLE, LogIn, Session};
use crate::database::InstallationTx;
use crate::error::Result;
use crate::identity::Person;

/// Sessions by the hashes of their secrets, for accounts that may log in.
pub(in crate::identity) async fn find(
    tx: &mut InstallationTx,
    secret_hashes: &[Vec<u8>],
) -> Result<Vec<(Vec<u8>, Session)>> {
    let found = sqlx::query!(
        r#"
        select
            s.secret_hash, s.id as session, s.created_at, s.last_seen_at, s.expires_at,
            p.id, p.name, p.is_operator
        from session s
        join person p on p.id = s.person_id
        where s.secret_hash = any($1) and p.suspended_at is null
        "#,
        secret_hashes
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found
        .into_iter()
        .map(|row| {
            let session = Session {
                person: Person {
                    id: row.id,
                    name: row.name,
                    session: Some(row.session),
                    is_operator: row.is_operator,
                },
                created_at: row.created_at,
                last_seen_at: row.last_seen_at,
                expires_at: row.expires_at,
            };
            (row.secret_hash, session)
        })
        .collect())
}

pub(super) async fn insert(
    tx: &mut InstallationTx,
    secret_hash: &[u8],
    person: Uuid,
    agent: &str,
    now: OffsetDateTime,
) -> Result<()> {
    sqlx::query!(
        r#"
        insert into session (
            secret_hash, id, person_id, agent, created_at, last_seen_at, expires_at
        )
        values ($1, $2, $3, $4, $5, $5, $6)
        "#,
        secret_hash,
        Uuid::now_v7(),
        person,
        agent,
        now,
        now + IDLE
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

/// Notes that a session was used, unless another instance just did.
pub(super) async fn seen(
    tx: &mut InstallationTx,
    secret_hash: &[u8],
    now: OffsetDateTime,
    until: OffsetDateTime,
    before: OffsetDateTime,
) -> Result<()> {
    sqlx::query!(
        r#"
        update session
        set last_seen_at = $2, expires_at = $3
        where secret_hash = $1 and last_seen_at <= $4
        "#,
        secret_hash,
        now,
        until,
        before
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

pub(super) async fn end(tx: &mut InstallationTx, secret_hash: &[u8]) -> Result<Option<Uuid>> {
    let person = sqlx::query_scalar!(
        "delete from session where secret_hash = $1 returning person_id",
        secret_hash
    )
    .fetch_optional(tx.db())
    .await?;
    Ok(person)
}

pub(super) async fn of_person(
    tx: &mut InstallationTx,
    person: Uuid,
    now: OffsetDateTime,
) -> Result<Vec<LogIn>> {
    let found = sqlx::query_as!(
        LogIn,
        r#"
        select id, agent, created_at, last_seen_at
        from session
        where person_id = $1 and expires_at > $2
        order by last_seen_at desc, id
        limit 200
        "#,
        person,
        now
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found)
}

pub(super) async fn end_one(tx: &mut InstallationTx, person: Uuid, session: Uuid) -> Result<bool> {
    let ended = sqlx::query!(
        "delete from session where person_id = $1 and id = $2",
        person,
        session
    )
    .execute(tx.db())
    .await?;
    Ok(ended.rows_affected() > 0)
}

/// Ends every session of a person but one.
pub(in crate::identity) async fn end_all(
    tx: &mut InstallationTx,
    person: Uuid,
    except: Option<Uuid>,
) -> Result<u64> {
    let ended = sqlx::query!(
        "delete from session where person_id = $1 and id is distinct from $2",
        person,
        except
    )
    .execute(tx.db())
    .await?;
    Ok(ended.rows_affected())
}
