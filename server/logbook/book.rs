//! A room's book, open for writing: the one way an entry comes about.

use sha2::{Digest, Sha256};
use time::OffsetDateTime;
use uuid::Uuid;

use super::beside::Beside;
use super::chain::{self, Link};
use super::entry::{About, Entry, Kinds, Placed, THROUGH, Written};
use super::store;
use crate::clock::{Clock, micros};
use crate::database::RoomTx;
use crate::error::{Error, Result};

/// The client's own name for one request: 16 bytes, never used for another.
pub type Key = [u8; 16];

/// The SHA-256 of an action's name and its parsed input.
pub type Fingerprint = [u8; 32];

/// When entries are recorded.
#[derive(Clone, Debug)]
pub enum Recording {
    /// By the clock, as everywhere.
    ByClock(Clock),
    /// By a clock of the writer's choice: refused outside a demo room.
    Demo(Clock),
}

impl Recording {
    /// The time it is, for this recording.
    #[must_use]
    pub fn now(&self) -> OffsetDateTime {
        match self {
            Self::ByClock(clock) | Self::Demo(clock) => clock.now(),
        }
    }
}

/// The last entry's place.
#[derive(Clone, Copy, Debug, Eq, PartialEq)]
pub struct Head {
    /// Its number; 0 for an empty book.
    pub seq: i64,
    /// Its hash.
    pub hash: [u8; 32],
    /// When it was written.
    pub recorded_at: OffsetDateTime,
}

/// Who asked for an entry, under which key.
#[derive(Clone, Copy, Debug)]
pub struct Asked {
    /// Who; nobody for jobs and commands.
    pub actor: Option<Uuid>,
    /// The client's key.
    pub key: Option<Key>,
    /// What the key was used for.
    pub fingerprint: Fingerprint,
}

/// An entry that has no place yet.
#[derive(Clone, Debug)]
pub struct Draft {
    asked: Asked,
    kind: &'static str,
    happened_at: Option<OffsetDateTime>,
    payload: Vec<u8>,
    about: Vec<About>,
}

impl Draft {
    /// An entry as asked; `happened_at` is the moment of writing where nothing is said.
    ///
    /// # Errors
    /// A payload that JSON cannot hold.
    pub fn new<E: Entry>(
        asked: Asked,
        happened_at: Option<OffsetDateTime>,
        entry: &E,
    ) -> Result<Self> {
        let mut about = entry.about();
        about.sort_unstable();
        about.dedup();
        Ok(Self {
            asked,
            kind: E::KIND,
            happened_at,
            payload: serde_json::to_vec(entry)?,
            about,
        })
    }

    /// What it is about.
    #[must_use]
    pub fn about(&self) -> &[About] {
        &self.about
    }

    /// Lets the entry say through which screen it was written, behind what it says
    /// itself.
    #[must_use]
    pub(super) fn through(mut self, screen: Option<Uuid>) -> Self {
        let Some(screen) = screen else { return self };
        if self.payload.pop() == Some(b'}') {
            let said = format!(",\"{THROUGH}\":\"{screen}\"}}");
            self.payload.extend_from_slice(said.as_bytes());
            self.about.push(About::new("screen", screen));
            self.about.sort_unstable();
        }
        self
    }
}

/// An open book. Holding one means holding the lock on the room's head.
#[derive(Debug)]
pub struct Book<'t> {
    tx: &'t mut RoomTx,
    kinds: Kinds,
    head: Head,
    now: OffsetDateTime,
    asked: Asked,
    screen: Option<Uuid>,
    first: Option<(i64, Vec<About>)>,
    ids: u32,
    is_demo: bool,
}

impl<'t> Book<'t> {
    /// Locks the head and opens the book. The lock is the transaction's first
    /// statement, alone: what is read later is read as of after the wait.
    ///
    /// # Errors
    /// [`Error::NotFound`] where the room has no book; a recording that may not be.
    pub async fn open(
        tx: &'t mut RoomTx,
        kinds: Kinds,
        recording: &Recording,
        asked: Asked,
    ) -> Result<Book<'t>> {
        let head = store::lock_head(tx).await?.ok_or(Error::NotFound)?;
        if let Recording::Demo(_) = recording
            && head.seq > 0
            && store::first_kind(tx).await?.as_deref() != Some(chain::DEMO_KIND)
        {
            return Err(Error::fault("only a demo room takes another clock"));
        }
        // The book never runs backwards, whatever the clock does.
        let now = recording.now().max(head.recorded_at);
        Ok(Book {
            tx,
            kinds,
            head,
            now,
            asked,
            screen: None,
            first: None,
            ids: 0,
            is_demo: matches!(recording, Recording::Demo(_)),
        })
    }

    /// Starts the book of a new room and opens it.
    ///
    /// # Errors
    /// The database's.
    pub async fn start(
        tx: &'t mut RoomTx,
        kinds: Kinds,
        recording: &Recording,
        asked: Asked,
    ) -> Result<Book<'t>> {
        let empty = Head {
            seq: 0,
            hash: chain::FIRST_PREV,
            recorded_at: OffsetDateTime::UNIX_EPOCH,
        };
        store::insert_head(tx, &empty).await?;
        Self::open(tx, kinds, recording, asked).await
    }

    /// The transaction, for stores.
    pub fn tx(&mut self) -> &mut RoomTx {
        self.tx
    }

    /// The room.
    #[must_use]
    pub fn room(&self) -> Uuid {
        self.tx.room()
    }

    /// The moment of writing.
    #[must_use]
    pub fn now(&self) -> OffsetDateTime {
        self.now
    }

    /// Who is writing.
    #[must_use]
    pub fn actor(&self) -> Option<Uuid> {
        self.asked.actor
    }

    /// An id for a new thing: of the usual time-ordered shape, its random part
    /// drawn from the book itself, so that the same book comes about twice.
    pub fn new_id(&mut self) -> Uuid {
        self.ids += 1;
        let mut hasher = Sha256::new();
        hasher.update(b"wetside.id");
        hasher.update(self.tx.room());
        hasher.update(self.head.hash);
        hasher.update(self.ids.to_be_bytes());
        let drawn: [u8; 32] = hasher.finalize().into();
        let mut random = [0; 10];
        random.copy_from_slice(&drawn[..10]);
        let millis = u64::try_from(micros(self.now) / 1_000).unwrap_or(0);
        uuid::Builder::from_unix_timestamp_millis(millis, &random).into_uuid()
    }

    /// Text that is to lie beside the next entry, with a salt of its own: of chance, but
    /// in a demo drawn from the book, so that the same book comes about twice.
    ///
    /// # Errors
    /// A machine without randomness.
    pub fn lay_aside(&mut self, words: String) -> Result<Beside> {
        Ok(Beside::words(self.salt()?, words))
    }

    /// A file that is to lie beside the next entry, salted as [`Book::lay_aside`] does.
    ///
    /// # Errors
    /// A machine without randomness.
    pub fn lay_file_aside(&mut self, file: Vec<u8>) -> Result<Beside> {
        Ok(Beside::file(self.salt()?, file))
    }

    fn salt(&mut self) -> Result<[u8; 32]> {
        let mut salt = [0; 32];
        match self.is_demo {
            true => salt[..16].copy_from_slice(self.new_id().as_bytes()),
            false => {
                getrandom::fill(&mut salt).map_err(|cause| Error::fault(cause.to_string()))?;
            }
        }
        Ok(salt)
    }

    /// What is written from here on is written through this screen.
    pub(super) fn through(&mut self, screen: Option<Uuid>) {
        self.screen = screen;
    }

    /// The last entry's place.
    #[must_use]
    pub fn head(&self) -> Head {
        self.head
    }

    /// Number and subjects of the first entry written since it was opened.
    pub(super) fn first(&mut self) -> Option<(i64, Vec<About>)> {
        self.first.take()
    }

    /// Writes an entry about now.
    ///
    /// # Errors
    /// The database's.
    pub async fn append<E: Entry>(&mut self, entry: &E) -> Result<i64> {
        self.append_at(None, entry).await
    }

    /// Writes an entry about `happened_at`.
    ///
    /// # Errors
    /// The database's.
    pub async fn append_at<E: Entry>(
        &mut self,
        happened_at: Option<OffsetDateTime>,
        entry: &E,
    ) -> Result<i64> {
        // An action that writes several entries keys the first.
        let asked = Asked {
            key: self.asked.key.take(),
            ..self.asked
        };
        let draft = Draft::new(asked, happened_at, entry)?;
        self.write(vec![draft.through(self.screen)]).await
    }

    /// Writes entries of one kind in order and moves the head; answers the first
    /// one's number.
    pub(super) async fn write(&mut self, drafts: Vec<Draft>) -> Result<i64> {
        let first = self.head.seq + 1;
        let Some(kind) = drafts.first().map(|draft| draft.kind) else {
            return Ok(first);
        };
        if self.first.is_none() {
            self.first = drafts.first().map(|draft| (first, draft.about.clone()));
        }
        let mut rows = store::EntryRows::default();
        let mut written = Vec::with_capacity(drafts.len());
        for draft in drafts {
            let link = self.link(&draft);
            let hash = chain::hash(&link);
            rows.push(&link, &hash, &draft.about);
            self.head.seq = link.seq;
            self.head.hash = hash;
            written.push(Written {
                kind: kind.to_owned(),
                placed: Placed {
                    seq: self.head.seq,
                    actor: draft.asked.actor,
                    happened_at: draft.happened_at.unwrap_or(self.now),
                    recorded_at: self.now,
                    entry: draft.payload,
                },
            });
        }
        self.head.recorded_at = self.now;
        store::insert_entries(self.tx, rows, &self.head).await?;
        let row = self.kinds.iter().find(|row| row.name == kind);
        let row = row.ok_or_else(|| Error::fault(format!("no such kind of entry: {kind}")))?;
        (row.project)(self.tx, &written).await?;
        Ok(first)
    }

    fn link<'d>(&self, draft: &'d Draft) -> Link<'d> {
        Link {
            room: self.tx.room(),
            seq: self.head.seq + 1,
            prev: self.head.hash,
            kind: draft.kind,
            actor: draft.asked.actor,
            key: draft.asked.key,
            fingerprint: draft.asked.fingerprint,
            happened_at_us: micros(draft.happened_at.unwrap_or(self.now)),
            recorded_at_us: micros(self.now),
            payload: &draft.payload,
        }
    }
}
