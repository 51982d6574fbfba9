//! Pools: how this program talks to a PostgreSQL server.

use std::time::Duration;

use sqlx::PgPool;
use sqlx::postgres::{PgConnectOptions, PgPoolOptions};

/// What a server writes in its journal, unless `WETSIDE_LOG` says otherwise: of
/// this layer only what is wrong.
pub const JOURNAL: &str = "info,sqlx=warn";

/// Connections of one instance: a room's writes hold one at most.
const CONNECTIONS: u32 = 24;

/// Opens the serving pool. Nothing is connected before it is needed.
///
/// A plan that is kept may not read through a table because that was small when the
/// plan was made.
#[must_use]
pub fn serving(options: PgConnectOptions) -> PgPool {
    PgPoolOptions::new()
        .max_connections(CONNECTIONS)
        .acquire_timeout(Duration::from_secs(5))
        .connect_lazy_with(tuned(options).options([("enable_seqscan", "off"), ("jit", "off")]))
}

/// The serving pool for filling a demo: a commit does not wait for the disk. Whoever
/// uses it lets [`Owner::analyze`](super::Owner::analyze) end the work, whose own
/// commit waits for everything before it.
#[must_use]
pub fn hurried(options: PgConnectOptions) -> PgPool {
    serving(options.options([("synchronous_commit", "off")]))
}

/// Opens a small pool for a command: as the owner, or as whoever the URL names.
#[must_use]
pub fn owner(options: PgConnectOptions) -> PgPool {
    PgPoolOptions::new()
        .max_connections(4)
        .acquire_timeout(Duration::from_secs(10))
        .connect_lazy_with(tuned(options))
}

/// A transaction that hangs is ended by the database, never one that commits.
fn tuned(options: PgConnectOptions) -> PgConnectOptions {
    options.application_name("wetside").options([
        ("idle_in_transaction_session_timeout", "10s"),
        ("lock_timeout", "10s"),
        ("timezone", "UTC"),
    ])
}
