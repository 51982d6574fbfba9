//! What is handed to a scribe, and what comes back.

use std::any::Any;
use std::future::Future;
use std::sync::Arc;

use futures_util::future::BoxFuture;
use time::OffsetDateTime;
use tokio::sync::oneshot;
use uuid::Uuid;

use super::book::{Asked, Book, Draft};
use super::entry::{About, Entry};
use super::store;
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::problem::Problem;
use crate::rights::Role;

/// What the writer must still be when the lock is held.
#[derive(Clone, Copy, Debug)]
pub enum Author {
    /// A member of the room with one of these roles, neither suspended nor gone.
    Member(&'static [Role]),
    /// The program itself, or somebody who is only becoming a member.
    Unchecked,
}

impl Author {
    /// Whether the writer still is that.
    fn recheck(self, asking: &store::Asking) -> Result<()> {
        let Self::Member(wanted) = self else {
            return Ok(());
        };
        let role = asking.role.as_deref().ok_or(Error::NotFound)?;
        match Role::parse(role) {
            _ if asking.is_closed => Err(Error::Refused(Problem::RoomClosed)),
            Some(role) if wanted.contains(&role) => Ok(()),
            _ => Err(Error::Forbidden),
        }
    }
}

/// What a write left in the book.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct Done {
    /// The number of the first entry it wrote.
    pub seq: i64,
    /// Whether the key had been used before, for the same thing.
    pub hit: bool,
    about: Vec<(String, Uuid)>,
}

impl Done {
    pub(super) fn new(seq: i64, about: &[About]) -> Self {
        Self {
            seq,
            hit: false,
            about: about
                .iter()
                .map(|thing| (thing.noun.to_owned(), thing.id))
                .collect(),
        }
    }

    /// The first thing of this sort that the entry is about.
    ///
    /// # Errors
    /// A fault where there is none: an action that names the wrong noun.
    pub fn id(&self, noun: &str) -> Result<Uuid> {
        let found = self.about.iter().find(|(name, _)| name == noun);
        found
            .map(|(_, id)| *id)
            .ok_or_else(|| Error::fault(format!("entry {} is about no {noun}", self.seq)))
    }

    /// Of an entry about two of a noun, the one that is not this.
    ///
    /// # Errors
    /// A fault where the entry is about no other.
    pub fn other_id(&self, noun: &str, than: Uuid) -> Result<Uuid> {
        let is_other = |(name, id): &&(String, Uuid)| name == noun && *id != than;
        let found = self.about.iter().find(is_other);
        found
            .map(|(_, id)| *id)
            .ok_or_else(|| Error::fault(format!("entry {} is about no other {noun}", self.seq)))
    }
}

/// Input whose entries may share a transaction with their neighbours'.
pub trait Grouped: Send + Sync + Sized + 'static {
    /// The entry each becomes.
    type Entry: Entry;

    /// Reads what it must and composes an entry for each item; one that cannot
    /// be fails alone. It must not depend on what another item of the group writes.
    fn compose(
        tx: &mut RoomTx,
        now: OffsetDateTime,
        items: &[(Asked, Arc<Self>)],
    ) -> impl Future<Output = Result<Vec<Result<Composed<Self::Entry>>>>> + Send;
}

/// An entry, and when what it says happened.
#[derive(Clone, Debug)]
pub struct Composed<E> {
    /// When, where that is not the moment of writing.
    pub happened_at: Option<OffsetDateTime>,
    /// The entry.
    pub entry: E,
}

pub(super) type Item = (Asked, Arc<dyn Any + Send + Sync>);
type Alone = Box<
    dyn for<'b, 't> FnOnce(&'b mut Book<'t>) -> BoxFuture<'b, Result<()>> + Send + Sync + 'static,
>;
type ComposeAll = for<'t> fn(
    &'t mut RoomTx,
    OffsetDateTime,
    Vec<Item>,
) -> BoxFuture<'t, Result<Vec<Result<Draft>>>>;

/// A sort of grouped input, known by the function that composes it.
#[derive(Clone, Copy)]
pub(super) struct GroupOf {
    name: &'static str,
    pub(super) compose: ComposeAll,
}

impl GroupOf {
    pub(super) fn of<G: Grouped>() -> Self {
        Self {
            name: std::any::type_name::<G>(),
            compose: compose_all::<G>,
        }
    }
}

fn compose_all<G: Grouped>(
    tx: &mut RoomTx,
    now: OffsetDateTime,
    items: Vec<Item>,
) -> BoxFuture<'_, Result<Vec<Result<Draft>>>> {
    Box::pin(async move {
        let items = items
            .into_iter()
            .map(|(asked, item)| match item.downcast::<G>() {
                Ok(item) => Ok((asked, item)),
                Err(_) => Err(Error::fault("a group of mixed sorts")),
            })
            .collect::<Result<Vec<(Asked, Arc<G>)>>>()?;
        let composed = G::compose(tx, now, &items).await?;
        Ok(items
            .iter()
            .zip(composed)
            .map(|((asked, _), composed)| {
                let Composed { happened_at, entry } = composed?;
                Draft::new(*asked, happened_at, &entry)
            })
            .collect())
    })
}

/// What a request wants written.
pub(super) enum Work {
    /// Something that has a transaction to itself.
    Alone(Alone),
    /// Something that may share one.
    Grouped(GroupOf, Arc<dyn Any + Send + Sync>),
}

impl Work {
    pub(super) fn joins(&self, first: &Self) -> bool {
        match (self, first) {
            (Self::Grouped(mine, _), Self::Grouped(theirs, _)) => mine.name == theirs.name,
            _ => false,
        }
    }
}

/// One request in the queue.
pub(super) struct Ask {
    pub(super) author: Author,
    pub(super) asked: Asked,
    pub(super) work: Work,
    pub(super) answer: oneshot::Sender<Result<Done>>,
}

/// For each request, in their order: nothing where it may be written; else its
/// answer, which is what the entry under its key says, or that its writer may not
/// write.
pub(super) async fn settle(
    tx: &mut RoomTx,
    asked: &[(Author, Asked)],
) -> Result<Vec<Option<Result<Done>>>> {
    let keys: Vec<Option<Vec<u8>>> = asked
        .iter()
        .map(|(_, asked)| asked.key.map(|key| key.to_vec()))
        .collect();
    let writers: Vec<Option<Uuid>> = asked.iter().map(|(_, asked)| asked.actor).collect();
    let found = store::asking(tx, &keys, &writers).await?;
    if found.len() != asked.len() {
        return Err(Error::fault("the room has no name"));
    }
    let mut settled = Vec::with_capacity(asked.len());
    for ((author, asked), asking) in asked.iter().zip(found) {
        settled.push(match asking.keyed(asked.actor, &asked.fingerprint) {
            None => author.recheck(&asking).err().map(Err),
            Some((_, false)) => Some(Err(Error::Mismatch)),
            Some((seq, true)) => Some(Ok(Done {
                seq,
                hit: true,
                about: store::about(tx, seq).await?,
            })),
        });
    }
    Ok(settled)
}
