//! The scribe of a room: the one task of this instance that writes in its book.
//!
//! Every write goes through a bounded queue to the room's scribe, which opens
//! the transaction, locks the head, lets the action write, commits, and only
//! then answers. So a room holds one connection, a request that goes away cancels
//! nothing, and neighbouring notes share a transaction. A group that fails is
//! written again one by one, so that one bad note spoils no other.

use std::collections::HashMap;
use std::panic::AssertUnwindSafe;
use std::sync::{Arc, Mutex, PoisonError};
use std::time::Duration;

use futures_util::FutureExt;
use futures_util::future::BoxFuture;
use tokio::sync::{mpsc, oneshot};
use uuid::Uuid;

use super::ask::{Ask, Author, Done, GroupOf, Grouped, Work, settle};
use super::book::{Asked, Book, Draft, Head, Recording};
use super::entry::Kinds;
use crate::database::{Database, RoomTx, Scope};
use crate::error::{Error, Result};

/// Requests that wait for one room; more are told to come again.
const QUEUE: usize = 256;
/// Notes that share a transaction.
const GROUP: usize = 64;
/// After so long without work a scribe goes.
const IDLE: Duration = Duration::from_secs(60);

/// Hears of every commit, before its writer gets an answer.
pub type OnCommit = Arc<dyn Fn(Uuid, Head) + Send + Sync>;

/// The scribes of this instance, one for each room that is being written in.
#[derive(Clone)]
pub struct Scribes {
    desk: Arc<Desk>,
}

struct Desk {
    database: Database,
    kinds: Kinds,
    recording: Recording,
    on_commit: OnCommit,
    queues: Mutex<HashMap<Uuid, mpsc::Sender<Ask>>>,
}

impl std::fmt::Debug for Scribes {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("Scribes").finish_non_exhaustive()
    }
}

impl Scribes {
    /// Scribes that write `kinds` into `database`.
    #[must_use]
    pub fn new(
        database: Database,
        kinds: Kinds,
        recording: Recording,
        on_commit: OnCommit,
    ) -> Self {
        Self {
            desk: Arc::new(Desk {
                database,
                kinds,
                recording,
                on_commit,
                queues: Mutex::default(),
            }),
        }
    }

    /// Lets `work` write alone in a transaction of its own.
    ///
    /// # Errors
    /// What `work` answers; [`Error::Unavailable`] where the queue is full.
    pub async fn write<W>(&self, room: Uuid, author: Author, asked: Asked, work: W) -> Result<Done>
    where
        W: for<'b, 't> FnOnce(&'b mut Book<'t>) -> BoxFuture<'b, Result<()>>
            + Send
            + Sync
            + 'static,
    {
        self.ask(room, author, asked, Work::Alone(Box::new(work)))
            .await
    }

    /// Writes one entry of a sort that neighbours may share a transaction with.
    ///
    /// # Errors
    /// What composing it answers; [`Error::Unavailable`] where the queue is full.
    pub async fn write_grouped<G: Grouped>(
        &self,
        room: Uuid,
        author: Author,
        asked: Asked,
        item: G,
    ) -> Result<Done> {
        let work = Work::Grouped(GroupOf::of::<G>(), Arc::new(item));
        self.ask(room, author, asked, work).await
    }

    async fn ask(&self, room: Uuid, author: Author, asked: Asked, work: Work) -> Result<Done> {
        let (answer, answered) = oneshot::channel();
        let ask = Ask {
            author,
            asked,
            work,
            answer,
        };
        self.desk.enqueue(room, ask)?;
        answered
            .await
            .unwrap_or(Err(Error::Unavailable("the room's scribe stopped")))
    }
}

impl Desk {
    fn enqueue(self: &Arc<Self>, room: Uuid, ask: Ask) -> Result<()> {
        let mut queues = self.queues();
        let queue = queues.entry(room).or_insert_with(|| self.hire(room));
        queue
            .try_send(ask)
            .map_err(|_| Error::Unavailable("too many people write in this room at once"))
    }

    fn queues(&self) -> std::sync::MutexGuard<'_, HashMap<Uuid, mpsc::Sender<Ask>>> {
        self.queues.lock().unwrap_or_else(PoisonError::into_inner)
    }

    fn hire(self: &Arc<Self>, room: Uuid) -> mpsc::Sender<Ask> {
        let (queue, asks) = mpsc::channel(QUEUE);
        tokio::spawn(self.clone().serve(room, asks));
        queue
    }

    /// Works through the queue; goes after a while without work. It leaves the
    /// desk under the lock that requests are handed in under, so none is lost.
    async fn serve(self: Arc<Self>, room: Uuid, mut asks: mpsc::Receiver<Ask>) {
        let mut held = None;
        loop {
            let first = match held.take() {
                Some(ask) => ask,
                None => match tokio::time::timeout(IDLE, asks.recv()).await {
                    Ok(Some(ask)) => ask,
                    Ok(None) => return,
                    Err(_) => {
                        let mut queues = self.queues();
                        if asks.is_empty() {
                            queues.remove(&room);
                            return;
                        }
                        continue;
                    }
                },
            };
            let mut batch = vec![first];
            while batch.len() < GROUP {
                match asks.try_recv() {
                    Ok(next) if next.work.joins(&batch[0].work) => batch.push(next),
                    Ok(next) => {
                        held = Some(next);
                        break;
                    }
                    Err(_) => break,
                }
            }
            self.clone().write(room, batch).await;
        }
    }

    /// Writes a batch and answers each of it. A panic inside leaves the answers
    /// undelivered, which their callers hear as "unavailable", and the scribe goes on.
    async fn write(self: Arc<Self>, room: Uuid, mut batch: Vec<Ask>) {
        let outcome = if batch.len() == 1 {
            let Some(ask) = batch.pop() else { return };
            AssertUnwindSafe(self.write_one(room, ask))
                .catch_unwind()
                .await
        } else {
            AssertUnwindSafe(self.write_group(room, batch))
                .catch_unwind()
                .await
        };
        if outcome.is_err() {
            tracing::error!(%room, "a write panicked; its transaction was given up");
        }
    }

    async fn write_one(&self, room: Uuid, ask: Ask) {
        let Ask {
            author,
            asked,
            work,
            answer,
        } = ask;
        let outcome = self.one_transaction(room, author, asked, work).await;
        // Whoever asked may be gone; what was committed stays.
        drop(answer.send(outcome));
    }

    async fn one_transaction(
        &self,
        room: Uuid,
        author: Author,
        asked: Asked,
        work: Work,
    ) -> Result<Done> {
        let person = asked.actor;
        let mut tx = match work {
            Work::Alone(_) => self.database.open_room(Scope { room, person }).await?,
            Work::Grouped(..) => self.open_often(room, person).await?,
        };
        let written = self.write_in(&mut tx, author, asked, work).await;
        let (done, head) = tx.end(written).await?;
        (self.on_commit)(room, head);
        Ok(done)
    }

    async fn write_in(
        &self,
        tx: &mut RoomTx,
        author: Author,
        asked: Asked,
        work: Work,
    ) -> Result<(Done, Head)> {
        let mut book = Book::open(tx, self.kinds, &self.recording, asked).await?;
        let settled = settle(book.tx(), &[(author, asked)]).await?;
        if let Some(settled) = settled.into_iter().next().flatten() {
            return settled.map(|done| (done, book.head()));
        }
        match work {
            Work::Alone(work) => work(&mut book).await?,
            Work::Grouped(group, item) => {
                let now = book.now();
                let composed = (group.compose)(book.tx(), now, vec![(asked, item)]).await?;
                for draft in composed {
                    book.write(vec![draft?]).await?;
                }
            }
        }
        let (seq, about) = book
            .first()
            .ok_or_else(|| Error::fault("an action wrote nothing in the book"))?;
        Ok((Done::new(seq, &about), book.head()))
    }

    async fn open_often(&self, room: Uuid, person: Option<Uuid>) -> Result<RoomTx> {
        self.database.open_room_often(Scope { room, person }).await
    }

    /// Writes a group in one transaction; where that fails as a whole, one by one.
    async fn write_group(&self, room: Uuid, batch: Vec<Ask>) {
        match self.group_transaction(room, &batch).await {
            Ok(outcomes) => {
                for (ask, outcome) in batch.into_iter().zip(outcomes) {
                    drop(ask.answer.send(outcome));
                }
            }
            Err(cause) => {
                tracing::warn!(%room, %cause, "a group of notes is written one by one");
                for ask in batch {
                    self.write_one(room, ask).await;
                }
            }
        }
    }

    async fn group_transaction(&self, room: Uuid, batch: &[Ask]) -> Result<Vec<Result<Done>>> {
        if has_twins(batch) {
            return Err(Error::Unavailable("one key twice in a group"));
        }
        let mut tx = self.open_often(room, None).await?;
        let written = self.write_group_in(&mut tx, batch).await;
        let (outcomes, head) = tx.end(written).await?;
        (self.on_commit)(room, head);
        Ok(outcomes)
    }

    async fn write_group_in(
        &self,
        tx: &mut RoomTx,
        batch: &[Ask],
    ) -> Result<(Vec<Result<Done>>, Head)> {
        let Some(Work::Grouped(group, _)) = batch.first().map(|ask| &ask.work) else {
            return Err(Error::fault("a group of nothing"));
        };
        let nobody = Asked {
            actor: None,
            key: None,
            fingerprint: [0; 32],
        };
        let mut book = Book::open(tx, self.kinds, &self.recording, nobody).await?;
        let asked: Vec<_> = batch.iter().map(|ask| (ask.author, ask.asked)).collect();
        let mut outcomes = settle(book.tx(), &asked).await?;
        let mut open = Vec::new();
        let mut items = Vec::new();
        for (place, ask) in batch.iter().enumerate() {
            if let (None, Work::Grouped(_, item)) = (&outcomes[place], &ask.work) {
                open.push(place);
                items.push((ask.asked, item.clone()));
            }
        }
        let now = book.now();
        let composed = (group.compose)(book.tx(), now, items).await?;
        let mut drafts = Vec::new();
        let mut seq = book.head().seq;
        for (place, draft) in open.into_iter().zip(composed) {
            outcomes[place] = Some(draft.map(|draft: Draft| {
                seq += 1;
                let done = Done::new(seq, draft.about());
                drafts.push(draft);
                done
            }));
        }
        book.write(drafts).await?;
        let lost = || Err(Error::Unavailable("the request was lost"));
        let outcomes = outcomes.into_iter();
        let outcomes = outcomes.map(|outcome| outcome.unwrap_or_else(lost));
        Ok((outcomes.collect(), book.head()))
    }
}

/// Whether one key stands twice in a group: the second answers from the first,
/// which takes two transactions.
fn has_twins(batch: &[Ask]) -> bool {
    let mut keys: Vec<_> = batch.iter().filter_map(|ask| ask.asked.key).collect();
    let before = keys.len();
    keys.sort_unstable();
    keys.dedup();
    keys.len() < before
}
