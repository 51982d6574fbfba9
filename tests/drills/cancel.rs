//! The cancel storm: a thousand requests whose client goes away somewhere in the
//! middle, and the same storm over transactions that go away with it.

use std::collections::BTreeSet;
use std::future::Future;
use std::pin::Pin;
use std::sync::Arc;
use std::task::{Context, Poll};
use std::time::Duration;

use sqlx::{AssertSqlSafe, Connection, PgPool};
use tokio::sync::Semaphore;
use tokio::task::JoinSet;
use uuid::Uuid;
use wetside::database::cluster::WEB_ROLE;
use wetside::database::connect;
use wetside::logbook::Key;

use super::audit::{Audit, Dice};
use crate::harness::{Bench, Browser, Installation, Stage, new_key, scenario_alone};

/// So many requests are sent.
const REQUESTS: usize = 1_000;
/// So many of them in a burst.
const BURST: usize = 40;
/// So many of those at once.
const AT_ONCE: usize = 24;
/// What the points of leaving are drawn from, unless `WETSIDE_DRILL_SEED` says.
const SEED: u64 = 20_261_125;

/// Work whose client goes away when it has been looked at so many times: at one
/// of the points where it waits.
struct Dropped<F> {
    work: Pin<Box<F>>,
    looks: u64,
}

impl<F: Future> Future for Dropped<F> {
    type Output = Option<F::Output>;

    fn poll(mut self: Pin<&mut Self>, context: &mut Context<'_>) -> Poll<Self::Output> {
        match self.work.as_mut().poll(context) {
            Poll::Ready(answer) => Poll::Ready(Some(answer)),
            Poll::Pending if self.looks == 0 => Poll::Ready(None),
            Poll::Pending => {
                self.looks -= 1;
                Poll::Pending
            }
        }
    }
}

/// What a storm left behind.
#[derive(Debug, Default)]
struct Wake {
    sent: BTreeSet<Key>,
    answered: BTreeSet<Key>,
    dropped: usize,
    /// Connections in an open transaction when all was quiet again.
    left_open: i64,
}

/// Sends every request, in bursts with a look at the connections after each: a
/// later request may close by accident what an earlier one left open. Ends with
/// the first burst that left something. A request waits about so many times.
async fn storm<F>(installation: &Installation, waits: u64, request: impl Fn(Key) -> F) -> Wake
where
    F: Future<Output = bool> + Send + 'static,
{
    let mut dice = Dice::new(super::seed().unwrap_or(SEED));
    let mut wake = Wake::default();
    while wake.sent.len() < REQUESTS && wake.left_open == 0 {
        burst(&mut wake, &mut dice, waits, &request).await;
        wake.left_open = left_open(installation).await;
    }
    wake
}

/// One in eight is let be, the others go away at one of their first waits or
/// after some milliseconds, whichever comes first.
async fn burst<F>(wake: &mut Wake, dice: &mut Dice, waits: u64, request: &impl Fn(Key) -> F)
where
    F: Future<Output = bool> + Send + 'static,
{
    let room = Arc::new(Semaphore::new(AT_ONCE));
    let mut clients = JoinSet::new();
    for _ in 0..BURST {
        let key = new_key();
        wake.sent.insert(key);
        let (looks, patience) = match dice.below(8) {
            0 => (u64::MAX, Duration::from_secs(30)),
            _ => (dice.below(waits), Duration::from_millis(1 + dice.below(9))),
        };
        let work = Dropped {
            work: Box::pin(request(key)),
            looks,
        };
        let place = room.clone().acquire_owned().await.unwrap();
        clients.spawn(async move {
            let outcome = tokio::time::timeout(patience, work).await;
            drop(place);
            (key, outcome.ok().flatten())
        });
    }
    while let Some(ended) = clients.join_next().await {
        match ended.unwrap() {
            (_, None) => wake.dropped += 1,
            (key, Some(is_done)) => {
                assert!(is_done, "a request was refused");
                wake.answered.insert(key);
            }
        }
    }
}

/// Connections of the server's role that sit in an open transaction, when all
/// that still ran had time to end.
async fn left_open(installation: &Installation) -> i64 {
    let mut db = installation.db().await;
    let count = "select count(*) from pg_stat_activity
        where datname = current_database() and usename = $1 and state like 'idle in transaction%'";
    let mut open = 0;
    for _ in 0..30 {
        open = sqlx::query_scalar(count)
            .bind(WEB_ROLE)
            .fetch_one(&mut db)
            .await
            .unwrap();
        if open == 0 {
            break;
        }
        tokio::time::sleep(Duration::from_millis(50)).await;
    }
    db.close().await.unwrap();
    open
}

async fn keys_in(installation: &Installation, query: &str, room: Uuid) -> Vec<Key> {
    let mut db = installation.db().await;
    let found: Vec<Vec<u8>> = sqlx::query_scalar(AssertSqlSafe(query.to_owned()))
        .bind(room)
        .fetch_all(&mut db)
        .await
        .unwrap();
    db.close().await.unwrap();
    found
        .into_iter()
        .map(|key| key.try_into().unwrap())
        .collect()
}

fn note_form(bench: &Bench, key: Key) -> Vec<(String, String)> {
    [
        ("key", data_encoding::BASE64URL_NOPAD.encode(&key)),
        ("line", bench.line.to_string()),
        ("paper_class", bench.classes[0].to_string()),
        ("sheet_size", bench.size.to_string()),
        ("sheets", "1".to_owned()),
        ("when", "now".to_owned()),
    ]
    .map(|(name, value)| (name.to_owned(), value))
    .to_vec()
}

#[test]
fn a_thousand_clients_that_go_away_leave_nothing_open_and_lose_no_answer() {
    scenario_alone(async |stage: Stage| {
        let bench = stage.bench().await;
        let browser = stage.browser(&stage.cast.member).await;
        let path = stage.at("/sheets");
        let wake = storm(&stage.installation, 12, |key| {
            let (mut browser, path): (Browser, String) = (browser.clone(), path.clone());
            let fields = note_form(&bench, key);
            async move { browser.post(&path, &fields).await.status.as_u16() == 303 }
        })
        .await;
        assert_eq!(wake.left_open, 0, "connections left in a transaction");
        assert!(
            wake.dropped > REQUESTS / 4,
            "only {} were dropped",
            wake.dropped
        );
        assert!(
            wake.answered.len() > REQUESTS / 40,
            "hardly any was answered"
        );
        let query = "select key from entry where room_id = $1 and kind = 'noted'";
        let there = keys_in(&stage.installation, query, stage.room).await;
        let audit = Audit::of(&wake.sent, &wake.answered, &there);
        assert!(audit.is_clean(), "{audit:?}");
        assert!(
            audit.unanswered > 0,
            "no request was dropped after it was handed on"
        );
    });
}

/// What `Database::in_room` does, on the task of whoever calls it.
async fn in_room_unspawned(pool: PgPool, room: Uuid, key: Key) -> bool {
    let begin = format!("begin; set local role {WEB_ROLE}; set local wetside.room = '{room}'");
    let mut tx = pool.begin_with(AssertSqlSafe(begin)).await.unwrap();
    sqlx::query("insert into storm_note (room_id, key) values ($1, $2)")
        .bind(room)
        .bind(key.as_slice())
        .execute(&mut *tx)
        .await
        .unwrap();
    tx.commit().await.unwrap();
    true
}

/// A table of the drill's own, so that both ways write the same statements.
async fn lay_table(installation: &Installation) {
    let mut db = installation.db().await;
    let statements = format!(
        "create table storm_note (room_id uuid not null, key bytea primary key);
        grant insert, select on storm_note to {WEB_ROLE}"
    );
    sqlx::raw_sql(AssertSqlSafe(statements))
        .execute(&mut db)
        .await
        .unwrap();
    db.close().await.unwrap();
}

async fn storm_over_table(stage: &Stage, is_spawned: bool) -> (Wake, Audit) {
    lay_table(&stage.installation).await;
    let pool = connect::serving(stage.installation.web.clone());
    let room = stage.room;
    // What runs on a task of its own is waited for once; how long that takes is the
    // machine's affair.
    let waits = if is_spawned { 2 } else { 12 };
    let wake = storm(&stage.installation, waits, |key| {
        let work = in_room_unspawned(pool.clone(), room, key);
        async move {
            match is_spawned {
                true => tokio::spawn(work).await.unwrap(),
                false => work.await,
            }
        }
    })
    .await;
    pool.close().await;
    let query = "select key from storm_note where room_id = $1";
    let there = keys_in(&stage.installation, query, room).await;
    let audit = Audit::of(&wake.sent, &wake.answered, &there);
    (wake, audit)
}

/// What the storm is for: transactions that go away with their request stay open.
#[test]
fn the_same_storm_over_transactions_without_a_task_of_their_own_fails() {
    scenario_alone(async |stage: Stage| {
        let (wake, audit) = storm_over_table(&stage, false).await;
        println!(
            "after {} requests {} connections left in a transaction, {} answered notes lost",
            wake.sent.len(),
            wake.left_open,
            audit.lost.len()
        );
        assert!(
            wake.left_open > 0 || !audit.lost.is_empty(),
            "the storm does not show what it is for"
        );
    });
}

/// The same statements on a task of their own are not to blame.
#[test]
fn the_same_storm_over_the_same_statements_on_their_own_task_passes() {
    scenario_alone(async |stage: Stage| {
        let (wake, audit) = storm_over_table(&stage, true).await;
        assert_eq!(wake.left_open, 0, "connections left in a transaction");
        assert!(audit.is_clean(), "{audit:?}");
        assert!(
            wake.dropped > REQUESTS / 4,
            "only {} were dropped",
            wake.dropped
        );
    });
}
