//! Bringing the tables up to date, and knowing whether they are.

use sqlx::PgPool;
use sqlx::migrate::{MigrateError, Migrator};

use super::roles;
use super::transactions::{Database, RoleName};

static MIGRATOR: Migrator = sqlx::migrate!("./migrations");

/// How the database's tables stand to this program's.
#[derive(Clone, Copy, Debug, Eq, PartialEq)]
pub enum Schema {
    /// Nothing there, or older: `wetside migrate` brings it up to date.
    Behind,
    /// As this program wants it.
    Current,
    /// Made by a newer program.
    Ahead,
}

/// Applies what is missing, then grants the serving role its rights.
///
/// Two programs that migrate at once take turns on a row: a pooler between us
/// and the database could not hold the advisory lock that would be usual.
///
/// # Errors
/// The database's own, or a migration that was changed after it was applied.
pub async fn migrate(owner: &PgPool, role: &RoleName) -> Result<(), MigrateError> {
    let mut turn = owner.begin().await?;
    sqlx::raw_sql(
        "create table if not exists migration_turn (only_row boolean primary key);
        insert into migration_turn values (true) on conflict do nothing;",
    )
    .execute(owner)
    .await?;
    sqlx::raw_sql("select only_row from migration_turn for update")
        .execute(&mut *turn)
        .await?;
    let mut migrator = Migrator {
        migrations: MIGRATOR.migrations.clone(),
        ..Migrator::DEFAULT
    };
    migrator.set_locking(false);
    let mut db = owner.acquire().await?;
    migrator.run_direct(None, &mut *db, false).await?;
    roles::grant(&mut db, role).await?;
    turn.rollback().await?;
    Ok(())
}

/// Compares the newest applied migration with the newest this program knows.
///
/// # Errors
/// That the database does not answer.
pub async fn schema(database: &Database) -> Result<Schema, sqlx::Error> {
    schema_of(database.pool()).await
}

/// The same, through a pool of one's own.
///
/// # Errors
/// That the database does not answer.
pub async fn schema_of(pool: &PgPool) -> Result<Schema, sqlx::Error> {
    let known = MIGRATOR.iter().map(|each| each.version).max().unwrap_or(0);
    let there = sqlx::query_scalar!(
        r#"select to_regclass('public._sqlx_migrations') is not null as "there!""#
    )
    .fetch_one(pool)
    .await?;
    if !there {
        return Ok(Schema::Behind);
    }
    let applied = sqlx::query_scalar!("select max(version) from _sqlx_migrations where success")
        .fetch_one(pool)
        .await?
        .unwrap_or(0);
    Ok(match applied.cmp(&known) {
        std::cmp::Ordering::Less => Schema::Behind,
        std::cmp::Ordering::Equal => Schema::Current,
        std::cmp::Ordering::Greater => Schema::Ahead,
    })
}
