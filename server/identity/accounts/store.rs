//! The accounts' SQL.

use time::OffsetDateTime;
use uuid::Uuid;

use super::{Account, NewAccount, ResetNews};
use crate::database::{InstallationTx, RoomTx};
use crate::error::Result;

pub(super) async fn account(tx: &mut InstallationTx, log_in_name: &str) -> Result<Option<Account>> {
    let found = sqlx::query_as!(
        Account,
        r#"
        select id, password_hash, suspended_at is not null as "is_suspended!"
        from person
        where log_in_name = $1
        "#,
        log_in_name
    )
    .fetch_optional(tx.db())
    .await?;
    Ok(found)
}

/// An account and its log-in name.
pub(super) async fn account_of(
    tx: &mut InstallationTx,
    person: Uuid,
) -> Result<Option<(Account, String)>> {
    let found = sqlx::query!(
        "select id, password_hash, suspended_at, log_in_name from person where id = $1",
        person
    )
    .fetch_optional(tx.db())
    .await?;
    Ok(found.map(|row| {
        let account = Account {
            id: row.id,
            password_hash: row.password_hash,
            is_suspended: row.suspended_at.is_some(),
        };
        (account, row.log_in_name)
    }))
}

pub(super) async fn insert(
    tx: &mut RoomTx,
    new: &NewAccount,
    password_hash: &str,
    is_operator: bool,
    now: OffsetDateTime,
) -> Result<()> {
    sqlx::query!(
        r#"
        insert into person (id, name, log_in_name, password_hash, is_operator, created_at)
        values ($1, $2, $3, $4, $5, $6)
        "#,
        new.id,
        new.name,
        new.log_in_name.as_str(),
        password_hash,
        is_operator,
        now
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

/// Locks an account that may log in and whose password is still this one.
pub(super) async fn lock_unchanged(
    tx: &mut InstallationTx,
    person: Uuid,
    password_hash: &str,
) -> Result<bool> {
    let found = sqlx::query_scalar!(
        r#"
        select id
        from person
        where id = $1 and password_hash = $2 and suspended_at is null
        for update
        "#,
        person,
        password_hash
    )
    .fetch_optional(tx.db())
    .await?;
    Ok(found.is_some())
}

/// Replaces a password's hash, where it is still the one that was verified.
pub(in crate::identity) async fn replace_hash(
    tx: &mut InstallationTx,
    person: Uuid,
    old: &str,
    new: &str,
) -> Result<bool> {
    let replaced = sqlx::query!(
        "update person set password_hash = $3 where id = $1 and password_hash = $2",
        person,
        old,
        new
    )
    .execute(tx.db())
    .await?;
    Ok(replaced.rows_affected() > 0)
}

pub(super) async fn rename(tx: &mut InstallationTx, person: Uuid, name: &str) -> Result<()> {
    sqlx::query!("update person set name = $2 where id = $1", person, name)
        .execute(tx.db())
        .await?;
    Ok(())
}

pub(super) async fn knows_device(
    tx: &mut InstallationTx,
    person: Uuid,
    secret_hash: &[u8],
) -> Result<bool> {
    let known = sqlx::query_scalar!(
        r#"
        select exists (
            select from known_device where secret_hash = $1 and person_id = $2
        ) as "known!"
        "#,
        secret_hash,
        person
    )
    .fetch_one(tx.db())
    .await?;
    Ok(known)
}

/// Notes that a known device was used; answers whether it is known.
pub(super) async fn device_used(
    tx: &mut InstallationTx,
    person: Uuid,
    secret_hash: &[u8],
    now: OffsetDateTime,
) -> Result<bool> {
    let used = sqlx::query!(
        "update known_device set seen_at = $3 where secret_hash = $1 and person_id = $2",
        secret_hash,
        person,
        now
    )
    .execute(tx.db())
    .await?;
    Ok(used.rows_affected() > 0)
}

/// Lets the persons of one device secret be known by another.
pub(super) async fn copy_device(tx: &mut InstallationTx, from: &[u8], to: &[u8]) -> Result<()> {
    sqlx::query!(
        r#"
        insert into known_device (secret_hash, person_id, seen_at)
        select $2, person_id, seen_at
        from known_device
        where secret_hash = $1
        "#,
        from,
        to
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

pub(super) async fn insert_device(
    tx: &mut InstallationTx,
    person: Uuid,
    secret_hash: &[u8],
    now: OffsetDateTime,
) -> Result<()> {
    sqlx::query!(
        "insert into known_device (secret_hash, person_id, seen_at) values ($1, $2, $3)",
        secret_hash,
        person,
        now
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

pub(in crate::identity) async fn forget_devices(
    tx: &mut InstallationTx,
    person: Uuid,
) -> Result<()> {
    sqlx::query!("delete from known_device where person_id = $1", person)
        .execute(tx.db())
        .await?;
    Ok(())
}

/// Whether a link for a new password was made since the person last looked.
pub(super) async fn has_news(tx: &mut InstallationTx, person: Uuid) -> Result<bool> {
    let has = sqlx::query_scalar!(
        r#"
        select exists (
            select
            from invitation i
            join person p on p.id = i.person_id
            where i.person_id = $1
                and i.kind = 'reset'
                and (p.reset_seen_at is null or i.made_at > p.reset_seen_at)
        ) as "has!"
        "#,
        person
    )
    .fetch_one(tx.db())
    .await?;
    Ok(has)
}

/// The links for a new password made since the person last looked.
pub(super) async fn news(tx: &mut InstallationTx, person: Uuid) -> Result<Vec<ResetNews>> {
    let found = sqlx::query_as!(
        ResetNews,
        r#"
        select i.made_at, maker.name as "made_by?", i.used_at
        from invitation i
        join person p on p.id = i.person_id
        left join person maker on maker.id = i.made_by
        where i.person_id = $1
            and i.kind = 'reset'
            and (p.reset_seen_at is null or i.made_at > p.reset_seen_at)
        order by i.made_at desc, i.id
        limit 50
        "#,
        person
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found)
}

pub(super) async fn seen_news(
    tx: &mut InstallationTx,
    person: Uuid,
    until: OffsetDateTime,
) -> Result<()> {
    sqlx::query!(
        "update person set reset_seen_at = greatest(reset_seen_at, $2) where id = $1",
        person,
        until
    )
    .execute(tx.db())
    .await?;
    Ok(())
}
