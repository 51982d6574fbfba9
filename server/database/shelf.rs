//! Connections that were just used, ready for the next transaction.
//!
//! The driver's own pool asks a connection how it is before it hands it out and
//! once more when it comes back: two round trips beside the few of a write. Here a
//! connection comes back only from a transaction that was ended, and is in order;
//! any other is closed, which takes back what was done over it. Whether the
//! database went away meanwhile is seen by the statement that opens the next
//! transaction: nothing was asked before it, so it is said again over another.

use std::sync::{Arc, Mutex, MutexGuard, PoisonError};
use std::time::{Duration, Instant};

use sqlx::pool::PoolConnection;
use sqlx::{AssertSqlSafe, PgConnection, PgPool, Postgres};
use tokio::sync::{OwnedSemaphorePermit, Semaphore};

use crate::error::Result;

/// What nobody used for so long goes back to the pool, which closes it.
const UNUSED: Duration = Duration::from_secs(300);

/// Connections that are left to the pool, for what is asked without a transaction.
const SPARE: usize = 2;

/// The connections of a pool that were used last.
#[derive(Debug)]
pub(super) struct Shelf {
    pool: PgPool,
    /// One for each connection the pool may have, but for those left to it: whoever
    /// holds one finds one.
    places: Arc<Semaphore>,
    ready: Mutex<Vec<Used>>,
}

/// A connection, closed with this value while its transaction is open.
#[derive(Debug)]
struct Used {
    connection: PoolConnection<Postgres>,
    is_open: bool,
    since: Instant,
}

impl Drop for Used {
    fn drop(&mut self) {
        if self.is_open {
            self.connection.close_on_drop();
        }
    }
}

impl Used {
    /// A statement without values or answer.
    async fn say(&mut self, statement: String) -> Result<(), sqlx::Error> {
        let said = sqlx::raw_sql(AssertSqlSafe(statement));
        said.execute(&mut *self.connection).await.map(|_| ())
    }
}

impl Shelf {
    /// Those of `pool`.
    pub(super) fn new(pool: PgPool) -> Arc<Self> {
        let most = usize::try_from(pool.options().get_max_connections());
        let places = most.unwrap_or(1).saturating_sub(SPARE).max(1);
        Arc::new(Self {
            pool,
            places: Arc::new(Semaphore::new(places)),
            ready: Mutex::default(),
        })
    }

    /// The pool, for what is asked without a transaction.
    pub(super) fn pool(&self) -> &PgPool {
        &self.pool
    }

    /// Closes every connection.
    pub(super) async fn close(&self) {
        self.ready().clear();
        self.pool.close().await;
    }

    /// Opens a transaction by this statement.
    pub(super) async fn begin(self: &Arc<Self>, statement: String) -> Result<Transaction> {
        let patience = self.pool.options().get_acquire_timeout();
        let place = tokio::time::timeout(patience, self.places.clone().acquire_owned());
        let Ok(Ok(place)) = place.await else {
            return Err(sqlx::Error::PoolTimedOut.into());
        };
        loop {
            let known = self.ready().pop();
            let was_known = known.is_some();
            let mut used = match known {
                Some(used) => used,
                None => self.fresh().await?,
            };
            used.is_open = true;
            match used.say(statement.clone()).await {
                Err(cause) if was_known && is_gone(&cause) => {}
                Err(cause) => return Err(cause.into()),
                Ok(()) => {
                    return Ok(Transaction {
                        used,
                        shelf: self.clone(),
                        _place: place,
                    });
                }
            }
        }
    }

    async fn fresh(&self) -> Result<Used> {
        Ok(Used {
            connection: self.pool.acquire().await?,
            is_open: false,
            since: Instant::now(),
        })
    }

    fn ready(&self) -> MutexGuard<'_, Vec<Used>> {
        self.ready.lock().unwrap_or_else(PoisonError::into_inner)
    }

    fn put(&self, mut used: Used) {
        used.is_open = false;
        used.since = Instant::now();
        if !self.pool.is_closed() {
            let mut ready = self.ready();
            ready.retain(|other| other.since.elapsed() < UNUSED);
            ready.push(used);
        }
    }
}

/// Whether the connection is lost rather than the statement wrong: the server
/// ended it (class 57), or nobody is at the other end.
fn is_gone(cause: &sqlx::Error) -> bool {
    let code = cause.as_database_error().and_then(|cause| cause.code());
    match code {
        Some(code) => code.starts_with("57P"),
        None => matches!(cause, sqlx::Error::Io(_) | sqlx::Error::Protocol(_)),
    }
}

/// A connection in a transaction.
#[derive(Debug)]
pub(super) struct Transaction {
    used: Used,
    shelf: Arc<Shelf>,
    _place: OwnedSemaphorePermit,
}

impl Transaction {
    /// The connection.
    pub(super) fn db(&mut self) -> &mut PgConnection {
        &mut self.used.connection
    }

    /// Makes everything done so far last.
    pub(super) async fn commit(self) -> Result<()> {
        self.end("commit").await
    }

    /// Takes everything back.
    pub(super) async fn roll_back(self) -> Result<()> {
        self.end("rollback").await
    }

    async fn end(mut self, statement: &str) -> Result<()> {
        self.used.say(statement.to_owned()).await?;
        self.shelf.put(self.used);
        Ok(())
    }
}
