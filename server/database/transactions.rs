//! The only places that open a transaction.
//!
//! A transaction runs on a task of its own, so that a request whose client went
//! away cannot leave a connection inside an open transaction. It is opened by
//! one simple query that also takes the serving role and names the room and the
//! person, which row-level security then holds every statement to.

use std::sync::Arc;

use futures_util::future::BoxFuture;
use sqlx::{PgConnection, PgPool};
use uuid::Uuid;

use super::shelf::{Shelf, Transaction};
use crate::error::{Error, Result};

const KEEP_PLANS: &str = "; set local plan_cache_mode = force_generic_plan";

/// The database, as the server may use it.
#[derive(Clone, Debug)]
pub struct Database {
    shelf: Arc<Shelf>,
    role: RoleName,
}

/// A role's name, fit to be written into SQL.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct RoleName(String);

impl RoleName {
    /// A lower-case identifier of at most 63 letters, digits and underscores.
    #[must_use]
    pub fn new(name: &str) -> Option<Self> {
        let fits = !name.is_empty()
            && name.len() <= 63
            && !name.starts_with(|first: char| first.is_ascii_digit())
            && name
                .bytes()
                .all(|byte| byte.is_ascii_lowercase() || byte.is_ascii_digit() || byte == b'_');
        fits.then(|| Self(name.to_owned()))
    }

    /// The name.
    #[must_use]
    pub fn as_str(&self) -> &str {
        &self.0
    }
}

/// What a transaction may see: one room, as one person or as nobody.
#[derive(Clone, Copy, Debug, Eq, PartialEq)]
pub struct Scope {
    /// The room.
    pub room: Uuid,
    /// Who asks; nobody for jobs and commands.
    pub person: Option<Uuid>,
}

/// A transaction inside one room.
#[derive(Debug)]
pub struct RoomTx {
    tx: Transaction,
    room: Uuid,
}

impl RoomTx {
    /// A transaction that a neighbour opened.
    pub(super) fn of(tx: Transaction, room: Uuid) -> Self {
        Self { tx, room }
    }

    /// Takes everything back.
    pub(super) async fn roll_back(self) -> Result<()> {
        self.tx.roll_back().await
    }

    /// The room it was opened for.
    #[must_use]
    pub fn room(&self) -> Uuid {
        self.room
    }

    /// The connection, for a store's queries.
    pub fn db(&mut self) -> &mut PgConnection {
        self.tx.db()
    }

    /// Commits what went well, and takes back what did not.
    pub(crate) async fn end<T>(self, answer: Result<T>) -> Result<T> {
        end(self.tx, answer).await
    }
}

/// A transaction over the installation's own tables: people and how they get in.
#[derive(Debug)]
pub struct InstallationTx {
    tx: Transaction,
}

impl InstallationTx {
    /// A transaction that a neighbour opened.
    pub(super) fn of(tx: Transaction) -> Self {
        Self { tx }
    }

    /// The connection, for a store's queries.
    pub fn db(&mut self) -> &mut PgConnection {
        self.tx.db()
    }

    /// Commits what went well, and takes back what did not.
    pub(super) async fn end<T>(self, answer: Result<T>) -> Result<T> {
        end(self.tx, answer).await
    }
}

impl Database {
    /// Serves from `pool` as `role`.
    #[must_use]
    pub fn new(pool: PgPool, role: RoleName) -> Self {
        Self {
            shelf: Shelf::new(pool),
            role,
        }
    }

    /// The pool, for this module's neighbours.
    pub(super) fn pool(&self) -> &PgPool {
        self.shelf.pool()
    }

    /// Closes every connection.
    pub async fn close(&self) {
        self.shelf.close().await;
    }

    /// Opens a transaction in a room. Only for callers that own a task no
    /// request can cancel; everyone else takes [`Database::in_room`].
    pub(crate) async fn open_room(&self, scope: Scope) -> Result<RoomTx> {
        self.open("begin", scope, "").await
    }

    /// The same, for what is written so often that its statements keep their plans.
    /// They come with lists, of which the planner, where it may choose, counts on ten
    /// and so plans anew each time there is one.
    pub(crate) async fn open_room_often(&self, scope: Scope) -> Result<RoomTx> {
        self.open("begin", scope, KEEP_PLANS).await
    }

    async fn open(&self, begin: &str, scope: Scope, plans: &str) -> Result<RoomTx> {
        let settings = format!("{}{plans}", scope_settings(scope));
        Ok(RoomTx {
            tx: self.begin(begin, &settings).await?,
            room: scope.room,
        })
    }

    async fn begin(&self, begin: &str, settings: &str) -> Result<Transaction> {
        let role = self.role.as_str();
        let statement = format!("{begin}; set local role {role}{settings}");
        self.shelf.begin(statement).await
    }

    /// Runs `work` in one transaction of a room and commits it.
    ///
    /// # Errors
    /// What `work` answers, or that the database is away.
    pub async fn in_room<T, W>(&self, scope: Scope, work: W) -> Result<T>
    where
        T: Send + 'static,
        W: for<'t> FnOnce(&'t mut RoomTx) -> BoxFuture<'t, Result<T>> + Send + 'static,
    {
        let database = self.clone();
        on_its_own_task(async move {
            let mut tx = database.open_room(scope).await?;
            let answer = work(&mut tx).await;
            tx.end(answer).await
        })
        .await
    }

    /// Reads in a room; the database refuses a write.
    ///
    /// # Errors
    /// What `work` answers, or that the database is away.
    pub async fn reading<T, W>(&self, scope: Scope, work: W) -> Result<T>
    where
        T: Send + 'static,
        W: for<'t> FnOnce(&'t mut RoomTx) -> BoxFuture<'t, Result<T>> + Send + 'static,
    {
        let database = self.clone();
        on_its_own_task(async move {
            let begin = "begin isolation level repeatable read read only";
            let mut tx = database.open(begin, scope, "").await?;
            let answer = work(&mut tx).await;
            tx.end(answer).await
        })
        .await
    }

    /// Runs `work` in one transaction over the installation's tables.
    ///
    /// # Errors
    /// What `work` answers, or that the database is away.
    pub async fn installation<T, W>(&self, work: W) -> Result<T>
    where
        T: Send + 'static,
        W: for<'t> FnOnce(&'t mut InstallationTx) -> BoxFuture<'t, Result<T>> + Send + 'static,
    {
        let database = self.clone();
        on_its_own_task(async move {
            let mut tx = InstallationTx {
                tx: database.begin("begin", "").await?,
            };
            let answer = work(&mut tx).await;
            tx.end(answer).await
        })
        .await
    }

    /// The rooms of one person, over all rooms: what the person's own
    /// membership rows say.
    ///
    /// # Errors
    /// What `work` answers, or that the database is away.
    pub async fn as_person<T, W>(&self, person: Uuid, work: W) -> Result<T>
    where
        T: Send + 'static,
        W: for<'t> FnOnce(&'t mut InstallationTx) -> BoxFuture<'t, Result<T>> + Send + 'static,
    {
        let database = self.clone();
        on_its_own_task(async move {
            let settings = format!("; set local wetside.person = '{person}'");
            let mut tx = InstallationTx {
                tx: database.begin("begin", &settings).await?,
            };
            let answer = work(&mut tx).await;
            tx.end(answer).await
        })
        .await
    }
}

/// Commits what went well, and takes back what did not.
async fn end<T>(tx: Transaction, answer: Result<T>) -> Result<T> {
    match answer {
        Ok(answer) => tx.commit().await.map(|()| answer),
        Err(cause) => {
            // Where not even that can be said, the connection is closed.
            drop(tx.roll_back().await);
            Err(cause)
        }
    }
}

/// Both are typed `Uuid`; nothing else is ever written into SQL.
fn scope_settings(Scope { room, person }: Scope) -> String {
    let person = person.map_or_else(String::new, |person| {
        format!("; set local wetside.person = '{person}'")
    });
    format!("; set local wetside.room = '{room}'{person}")
}

pub(super) async fn on_its_own_task<T: Send + 'static>(
    work: impl Future<Output = Result<T>> + Send + 'static,
) -> Result<T> {
    match tokio::spawn(work).await {
        Ok(answer) => answer,
        Err(ended) => Err(Error::fault(format!("a transaction's task ended: {ended}"))),
    }
}
