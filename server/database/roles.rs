//! The serving role: what it may do, made by `wetside migrate`, checked by `wetside serve`.

use sqlx::{AssertSqlSafe, Connection, PgConnection, PgPool};

use super::transactions::RoleName;

/// What the serving role may do to each table, and no more. The book is only
/// ever added to; people are never deleted.
pub const GRANTS: &[(&str, &str)] = &[
    ("person", "select, insert, update"),
    ("session", "select, insert, update, delete"),
    ("known_device", "select, insert, update, delete"),
    ("throttle", "select, insert, update, delete"),
    ("room_name", "select, insert, update"),
    ("head", "select, insert, update"),
    ("invitation", "select, insert, update"),
    ("work", "select, insert, update, delete"),
    ("entry", "select, insert"),
    ("entry_about", "select, insert"),
    ("membership", "select, insert, update"),
    ("room_setting", "select, insert, update"),
    ("sheet_size", "select, insert, update"),
    ("paper_class", "select, insert, update"),
    ("product", "select, insert, update"),
    ("ingredient", "select, insert, update, delete"),
    ("dilution", "select, insert, update, delete"),
    ("capacity", "select, insert, update, delete"),
    ("space", "select, insert, update"),
    ("line", "select, insert, update"),
    ("tray", "select, insert, update"),
    ("bottle", "select, insert, update"),
    ("finishing", "select, insert, update"),
    ("wash", "select, insert, update, delete"),
    ("stock_solution", "select, insert, update"),
    ("mix", "select, insert, update"),
    ("mix_capacity", "select, insert, update, delete"),
    ("reading", "select, insert, update"),
    ("extension", "select, insert"),
    ("rinse", "select, insert, update"),
    ("stay", "select, insert, update"),
    ("pass", "select, insert, update"),
    ("wear", "select, insert"),
    ("outage", "select, insert, update"),
    ("lamp", "select, insert, update"),
    ("fog_test", "select, insert, update"),
    ("fog_test_told", "select, insert"),
    ("topic", "select, insert, update"),
    ("topic_version", "select, insert"),
    ("topic_product", "select, insert, delete"),
    ("induction", "select, insert, update"),
    ("induction_topic", "select, insert"),
    ("induction_scan", "select, insert, update"),
    ("induction_told", "select, insert"),
    ("supplement_told", "select, insert"),
    ("room_check", "select, insert, update"),
    ("room_check_result", "select, insert, update"),
    ("room_check_told", "select, insert"),
    ("place_air", "select, insert, update"),
    ("flow_measurement", "select, insert, update"),
    ("exhaust_waiver", "select, insert, update"),
    ("airing", "select, insert, update"),
    ("beside", "select, insert, update"),
    ("incident", "select, insert, update"),
    ("incident_look", "select, insert"),
    ("avoid_note", "select, insert, delete"),
    ("workshop", "select, insert, update"),
    ("guest", "select, insert, update"),
    ("presence", "select, insert, update"),
    ("expected_told", "select, insert"),
    ("screen", "select, insert, update"),
    ("pairing", "select, insert, update, delete"),
    ("pin", "select, insert, update, delete"),
    ("handover", "select, insert, update"),
    ("notice", "select, insert, update"),
    ("delivery", "select, insert, update"),
    ("token", "select, insert, update"),
    ("verification", "select, insert"),
    ("_sqlx_migrations", "select"),
];

/// Why the server does not serve with this database login.
#[derive(Debug, thiserror::Error)]
pub enum RoleFault {
    /// The database did not answer or refused.
    #[error(transparent)]
    Database(#[from] sqlx::Error),
    /// The role may do too much for row-level security to mean anything.
    #[error(
        "The role {role} {power}, so one room could see another's book. \
         Let the server use a role without that: see --app-role."
    )]
    TooStrong {
        /// The role.
        role: String,
        /// What it is or may.
        power: &'static str,
    },
}

/// Makes the role where it is missing, lets this login take it, and grants
/// exactly [`GRANTS`].
///
/// # Errors
/// The database's own.
pub async fn grant(db: &mut PgConnection, role: &RoleName) -> Result<(), sqlx::Error> {
    let name = role.as_str();
    let exists = sqlx::query_scalar!(
        r#"select exists (select from pg_roles where rolname = $1) as "exists!""#,
        name
    )
    .fetch_one(&mut *db)
    .await?;
    let mut tx = db.begin().await?;
    if !exists {
        run(&mut tx, format!("create role {name} nologin")).await?;
    }
    let may_take = sqlx::query_scalar!(
        r#"select pg_has_role(current_user, $1::text::name, 'member') as "may!""#,
        name
    )
    .fetch_one(&mut *tx)
    .await?;
    if !may_take {
        run(&mut tx, format!("grant {name} to current_user")).await?;
    }
    run(&mut tx, format!("grant usage on schema public to {name}")).await?;
    for (table, rights) in GRANTS {
        run(
            &mut tx,
            format!("revoke all on table {table} from public, {name}"),
        )
        .await?;
        run(
            &mut tx,
            format!("grant {rights} on table {table} to {name}"),
        )
        .await?;
    }
    tx.commit().await
}

async fn run(db: &mut PgConnection, statement: String) -> Result<(), sqlx::Error> {
    // Names only: the role is checked, the tables are ours.
    sqlx::raw_sql(AssertSqlSafe(statement)).execute(db).await?;
    Ok(())
}

/// Refuses a role under which row-level security would be no wall.
///
/// # Errors
/// [`RoleFault::TooStrong`] with what is wrong.
pub async fn check(pool: &PgPool, role: &RoleName) -> Result<(), RoleFault> {
    let found = sqlx::query!(
        r#"
        select
            r.rolsuper as "superuser!",
            r.rolbypassrls as "bypasses!",
            exists (
                select from pg_class c
                join pg_namespace n on n.oid = c.relnamespace
                where n.nspname = 'public' and c.relowner = r.oid
            ) as "owns!"
        from pg_roles r
        where r.rolname = $1
        "#,
        role.as_str()
    )
    .fetch_optional(pool)
    .await?;
    let power = match found {
        None => Some("does not exist"),
        Some(found) if found.superuser => Some("is a superuser"),
        Some(found) if found.bypasses => Some("bypasses row-level security"),
        Some(found) if found.owns => Some("owns the tables"),
        Some(_) => None,
    };
    match power {
        Some(power) => Err(RoleFault::TooStrong {
            role: role.as_str().to_owned(),
            power,
        }),
        None => Ok(()),
    }
}
