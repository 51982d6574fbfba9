//! The owner's side of the database: verifying, exporting, tampering drills.
//! The server never serves from here.
//!
//! A *rehearsal* is one transaction on a connection of its own in which chosen
//! tables are shadowed by empty temporary ones, so that the same stores write
//! what the book says beside what is kept. It always ends in a rollback.

use std::sync::Arc;
use std::time::Duration;

use futures_util::future::BoxFuture;
use serde_json::{Map, Value};
use sqlx::postgres::PgPoolOptions;
use sqlx::{AssertSqlSafe, PgPool};
use uuid::Uuid;

use super::shelf::Shelf;
use super::transactions::{InstallationTx, RoomTx, on_its_own_task};
use crate::error::Result;

/// The database as the owner of its tables, whom no policy holds.
#[derive(Clone, Debug)]
pub struct Owner {
    shelf: Arc<Shelf>,
}

/// How one row differs between what is kept and what the book gives.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct Difference {
    /// The table.
    pub table: String,
    /// Names and values of the columns that identify the row.
    pub key: Vec<(String, String)>,
    /// What differs.
    pub what: Differs,
}

/// What differs about a row.
#[derive(Clone, Debug, Eq, PartialEq)]
pub enum Differs {
    /// The book gives a row that is not kept.
    Missing,
    /// A row is kept that the book does not give.
    Extra,
    /// These columns hold something else.
    Columns(Vec<String>),
}

impl Owner {
    /// Works through `pool`, whose login is the owner of the tables.
    #[must_use]
    pub fn new(pool: PgPool) -> Self {
        Self {
            shelf: Shelf::new(pool),
        }
    }

    /// Reads the installation's tables and every room's, as they are at one moment.
    ///
    /// # Errors
    /// What `work` answers, or that the database is away.
    pub async fn reading<T, W>(&self, work: W) -> Result<T>
    where
        T: Send + 'static,
        W: for<'t> FnOnce(&'t mut InstallationTx) -> BoxFuture<'t, Result<T>> + Send + 'static,
    {
        let shelf = self.shelf.clone();
        on_its_own_task(async move {
            let begin = "begin isolation level repeatable read read only";
            let mut tx = InstallationTx::of(shelf.begin(begin.to_owned()).await?);
            let answer = work(&mut tx).await;
            tx.end(answer).await
        })
        .await
    }

    /// Reads one room's rows page by page, as they are at one moment.
    ///
    /// # Errors
    /// What `work` answers, or that the database is away.
    pub async fn reading_room<T, W>(&self, room: Uuid, work: W) -> Result<T>
    where
        T: Send + 'static,
        W: for<'t> FnOnce(&'t mut RoomTx) -> BoxFuture<'t, Result<T>> + Send + 'static,
    {
        let shelf = self.shelf.clone();
        on_its_own_task(async move {
            let begin = "begin isolation level repeatable read read only";
            let mut tx = RoomTx::of(shelf.begin(begin.to_owned()).await?, room);
            let answer = work(&mut tx).await;
            tx.end(answer).await
        })
        .await
    }

    /// Runs `work` with `tables` shadowed by empty temporary ones of the same
    /// shape, and takes everything back.
    ///
    /// The connection is a new one. On a used one a statement prepared before
    /// the shadows were there would still mean the real tables.
    ///
    /// # Errors
    /// What `work` answers, or that the database is away.
    pub async fn rehearse<T, W>(
        &self,
        room: Uuid,
        tables: &'static [&'static str],
        work: W,
    ) -> Result<T>
    where
        T: Send + 'static,
        W: for<'t> FnOnce(&'t mut RoomTx) -> BoxFuture<'t, Result<T>> + Send + 'static,
    {
        let pool = PgPoolOptions::new()
            .max_connections(1)
            .acquire_timeout(Duration::from_secs(10))
            .connect_lazy_with((*self.shelf.pool().connect_options()).clone());
        on_its_own_task(async move {
            let shelf = Shelf::new(pool);
            let tx = shelf.begin(opening(room, tables)).await?;
            let mut tx = RoomTx::of(tx, room);
            let answer = work(&mut tx).await;
            tx.roll_back().await?;
            shelf.close().await;
            answer
        })
        .await
    }

    /// Lets the database count what its tables hold, so that it plans well from the
    /// first page on. Its commit waits for the disk, and so for all that was
    /// committed before it.
    ///
    /// # Errors
    /// That the database is away.
    pub async fn analyze(&self) -> Result<()> {
        sqlx::raw_sql("analyze").execute(self.shelf.pool()).await?;
        Ok(())
    }

    /// Every room that any of `tables` has a row of, in the order of their ids.
    ///
    /// # Errors
    /// That the database is away.
    pub async fn rooms_in(&self, tables: &[&'static str]) -> Result<Vec<Uuid>> {
        let each = tables
            .iter()
            .map(|table| format!("select room_id from public.{table}"));
        let union = each.collect::<Vec<_>>().join(" union ");
        let statement = format!("{union} order by room_id");
        let found = sqlx::query_scalar::<_, Uuid>(AssertSqlSafe(statement));
        Ok(found.fetch_all(self.shelf.pool()).await?)
    }
}

/// Table names are ours and the room is typed: nothing else is written into SQL.
fn opening(room: Uuid, tables: &[&'static str]) -> String {
    let mut statement = format!(
        "begin isolation level repeatable read; \
         set local idle_in_transaction_session_timeout = '10min'; \
         set local client_min_messages = warning; \
         set local wetside.room = '{room}'"
    );
    for table in tables {
        statement.push_str(&format!(
            "; create temporary table {table} (like public.{table} including all) on commit drop"
        ));
    }
    statement
}

/// Gives a rehearsal the row that names the room, as it was before any entry:
/// under the short name the first entry says, or as it is kept where that
/// entry says none.
///
/// # Errors
/// That the database is away.
pub async fn seed_name(tx: &mut RoomTx, slug: Option<&str>, is_demo: bool) -> Result<()> {
    let statement = match slug {
        Some(_) => {
            "insert into pg_temp.room_name (room_id, slug, name, is_demo)
            values ($1, $2, '', $3)"
        }
        None => {
            "insert into pg_temp.room_name
            select * from public.room_name
            where room_id = $1 and $2::text is null and $3::boolean is not null"
        }
    };
    sqlx::query(statement)
        .bind(tx.room())
        .bind(slug)
        .bind(is_demo)
        .execute(tx.db())
        .await?;
    Ok(())
}

/// A mark inside a rehearsal that [`back_to_mark`] returns to.
///
/// # Errors
/// That the database is away.
pub async fn mark(tx: &mut RoomTx) -> Result<()> {
    run(tx, "savepoint mark").await
}

/// Gives up what was done since the mark, and the error that spoilt it.
///
/// # Errors
/// That the database is away.
pub async fn back_to_mark(tx: &mut RoomTx) -> Result<()> {
    run(tx, "rollback to savepoint mark; release savepoint mark").await
}

/// Keeps what was done since the mark.
///
/// # Errors
/// That the database is away.
pub async fn drop_mark(tx: &mut RoomTx) -> Result<()> {
    run(tx, "release savepoint mark").await
}

async fn run(tx: &mut RoomTx, statement: &'static str) -> Result<()> {
    sqlx::raw_sql(statement).execute(tx.db()).await?;
    Ok(())
}

/// Compares a room's rows of a shadowed table with those of its shadow, both
/// ways; at most `most` differences.
///
/// # Errors
/// That the database is away.
pub async fn differences(
    tx: &mut RoomTx,
    table: &'static str,
    most: i64,
) -> Result<Vec<Difference>> {
    let room = tx.room();
    let keys = key_columns(tx, table).await?;
    let statement = comparison(table, &keys);
    let found = sqlx::query_as::<_, (Option<String>, Option<String>)>(AssertSqlSafe(statement))
        .bind(room)
        .bind(most)
        .fetch_all(tx.db())
        .await?;
    found
        .iter()
        .map(|(kept, given)| {
            let kept = kept.as_deref().map(serde_json::from_str).transpose()?;
            let given = given.as_deref().map(serde_json::from_str).transpose()?;
            Ok(difference(table, &keys, kept.as_ref(), given.as_ref()))
        })
        .collect()
}

/// The primary key's columns but the room; every row stands alone where there is none.
async fn key_columns(tx: &mut RoomTx, table: &str) -> Result<Vec<String>> {
    let found = sqlx::query_scalar!(
        r#"
        select a.attname::text as "name!"
        from pg_index i
        join pg_attribute a on a.attrelid = i.indrelid and a.attnum = any(i.indkey)
        where i.indrelid = ('public.' || $1::text)::regclass
            and i.indisprimary
            and a.attname <> 'room_id'
        order by a.attnum
        "#,
        table
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found)
}

fn comparison(table: &str, keys: &[String]) -> String {
    let side = |schema: &str| format!("select * from {schema}.{table} where room_id = $1");
    let (kept, given) = (side("public"), side("pg_temp"));
    let same = keys
        .iter()
        .map(|key| format!(" and k.\"{key}\" = g.\"{key}\""))
        .collect::<String>();
    format!(
        "select to_jsonb(k)::text, to_jsonb(g)::text \
         from ({kept} except all {given}) k \
         full join ({given} except all {kept}) g on k.room_id = g.room_id{same} \
         order by 1, 2 limit $2"
    )
}

fn difference(
    table: &str,
    keys: &[String],
    kept: Option<&Map<String, Value>>,
    given: Option<&Map<String, Value>>,
) -> Difference {
    let what = match (kept, given) {
        (Some(kept), Some(given)) => Differs::Columns(
            kept.iter()
                .filter(|(name, value)| given.get(*name) != Some(value))
                .map(|(name, _)| name.clone())
                .collect(),
        ),
        (Some(_), None) => Differs::Extra,
        (None, _) => Differs::Missing,
    };
    let key = kept.or(given).map_or_else(Vec::new, |row| {
        keys.iter()
            .filter_map(|name| Some((name.clone(), plain(row.get(name)?))))
            .collect()
    });
    Difference {
        table: table.to_owned(),
        key,
        what,
    }
}

fn plain(value: &Value) -> String {
    value
        .as_str()
        .map_or_else(|| value.to_string(), str::to_owned)
}
