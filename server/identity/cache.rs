//! What this instance remembers of sessions and standings, for a second.
//!
//! One task reads again, more than once a second, every session in use and the
//! heads of the rooms they are in; where a head moved, also who may enter that
//! room, since a standing changes only by an entry. While that reading fails,
//! what was known goes on for five seconds; after that nobody is known and every
//! request that needs somebody hears "unavailable". What this instance itself
//! changes is forgotten here at once.

use std::collections::{HashMap, HashSet};
use std::sync::{Arc, Mutex, MutexGuard, PoisonError, Weak};
use std::time::{Duration, Instant};

use time::OffsetDateTime;
use tokio::task::JoinHandle;
use uuid::Uuid;

use super::Membership;
use super::sessions::{self, Session};
use super::store;
use crate::app::App;
use crate::database::{Database, Scope};
use crate::error::{Error, Result};
use crate::logbook::{self, Head};

/// Between two readings; with the reading itself less than a second.
const READ_AGAIN: Duration = Duration::from_millis(700);
/// A reading that takes longer has failed.
const PATIENCE: Duration = Duration::from_secs(1);
/// What was read so lately is used without asking.
const FRESH: Duration = Duration::from_secs(1);
/// While readings fail, what was read so lately is still used.
const STALE: Duration = Duration::from_secs(5);
/// What nobody used for so long is dropped.
const UNUSED: Duration = Duration::from_secs(60);
/// More sessions than this are not remembered.
const MOST: usize = 20_000;

/// Somebody's standing in a room, as of an entry of its book.
#[derive(Clone, Debug)]
pub(super) struct Standing {
    pub(super) membership: Membership,
    pub(super) seq: i64,
}

#[derive(Debug)]
struct Known<T> {
    value: T,
    read_at: Instant,
    used_at: Instant,
}

impl<T> Known<T> {
    fn new(value: T, read_at: Instant) -> Self {
        Self {
            value,
            read_at,
            used_at: Instant::now(),
        }
    }
}

#[derive(Debug, Default)]
struct State {
    /// Moves when something is forgotten: what was read before is not kept.
    epoch: u64,
    is_failing: bool,
    sessions: HashMap<Vec<u8>, Known<Session>>,
    standings: HashMap<(Uuid, String), Known<Standing>>,
    reader: Option<JoinHandle<()>>,
}

/// The memory.
#[derive(Debug, Default)]
pub(super) struct Cache {
    state: Arc<Mutex<State>>,
}

fn open(state: &Mutex<State>) -> MutexGuard<'_, State> {
    state.lock().unwrap_or_else(PoisonError::into_inner)
}

/// What is remembered of one thing.
enum Memory<T> {
    /// Use it.
    Good(T),
    /// Read it; what was known may serve where that fails.
    Read { epoch: u64, known: Option<T> },
}

fn recall<T: Clone>(known: Option<&mut Known<T>>, epoch: u64, is_failing: bool) -> Memory<T> {
    let Some(known) = known else {
        return Memory::Read { epoch, known: None };
    };
    known.used_at = Instant::now();
    let age = known.read_at.elapsed();
    let value = known.value.clone();
    match () {
        () if age <= FRESH || (is_failing && age <= STALE) => Memory::Good(value),
        () => Memory::Read {
            epoch,
            known: (age <= STALE).then_some(value),
        },
    }
}

impl Cache {
    /// The session of a secret's hash.
    pub(super) async fn session(&self, app: &App, hash: &[u8]) -> Result<Option<Session>> {
        let memory = {
            let mut state = self.awake(app);
            let (epoch, is_failing) = (state.epoch, state.is_failing);
            recall(state.sessions.get_mut(hash), epoch, is_failing)
        };
        let (epoch, known) = match memory {
            Memory::Good(session) => return Ok(Some(session)),
            Memory::Read { epoch, known } => (epoch, known),
        };
        let began = Instant::now();
        let wanted = vec![hash.to_vec()];
        let read = app
            .database()
            .installation(move |tx| {
                Box::pin(async move { sessions::store::find(tx, &wanted).await })
            })
            .await;
        let found = match (read, known) {
            (Ok(mut found), _) => found.pop().map(|(_, session)| session),
            (Err(Error::Unavailable(_)), Some(session)) => return Ok(Some(session)),
            (Err(cause), _) => return Err(cause),
        };
        let mut state = open(&self.state);
        match &found {
            Some(session) if state.epoch == epoch && state.sessions.len() < MOST => {
                let known = Known::new(session.clone(), began);
                state.sessions.insert(hash.to_vec(), known);
            }
            _ => {
                state.sessions.remove(hash);
            }
        }
        Ok(found)
    }

    /// A person's standing in the room of this short name.
    pub(super) async fn standing(
        &self,
        app: &App,
        person: Uuid,
        slug: &str,
    ) -> Result<Option<Membership>> {
        let key = (person, slug.to_owned());
        let memory = {
            let mut state = self.awake(app);
            let (epoch, is_failing) = (state.epoch, state.is_failing);
            recall(state.standings.get_mut(&key), epoch, is_failing)
        };
        let (epoch, known) = match memory {
            Memory::Good(standing) => return Ok(Some(standing.membership)),
            Memory::Read { epoch, known } => (epoch, known),
        };
        let began = Instant::now();
        let slug = slug.to_owned();
        let read = app
            .database()
            .as_person(person, move |tx| {
                Box::pin(async move { store::standing(tx, person, &slug).await })
            })
            .await;
        let found = match (read, known) {
            (Ok(found), _) => found,
            (Err(Error::Unavailable(_)), Some(standing)) => return Ok(Some(standing.membership)),
            (Err(cause), _) => return Err(cause),
        };
        let mut state = open(&self.state);
        match &found {
            Some(standing) if state.epoch == epoch && state.standings.len() < MOST => {
                let known = Known::new(standing.clone(), began);
                state.standings.insert(key, known);
            }
            _ => {
                state.standings.remove(&key);
            }
        }
        Ok(found.map(|standing| standing.membership))
    }

    /// Notes that a session was used, so that it is written once a minute only.
    pub(super) fn seen(&self, hash: &[u8], now: OffsetDateTime, until: OffsetDateTime) {
        if let Some(known) = open(&self.state).sessions.get_mut(hash) {
            known.value.last_seen_at = now;
            known.value.expires_at = until;
        }
    }

    /// Moves whenever something is forgotten here.
    pub(super) fn epoch(&self) -> u64 {
        open(&self.state).epoch
    }

    pub(super) fn forget_person(&self, person: Uuid) {
        let mut state = open(&self.state);
        state.epoch += 1;
        state
            .sessions
            .retain(|_, known| known.value.person.id != person);
        state.standings.retain(|(id, _), _| *id != person);
    }

    pub(super) fn forget_room(&self, room: Uuid) {
        let mut state = open(&self.state);
        state.epoch += 1;
        state
            .standings
            .retain(|_, known| known.value.membership.room != room);
    }

    /// The state, with the reader at work.
    fn awake(&self, app: &App) -> MutexGuard<'_, State> {
        let mut state = open(&self.state);
        let is_at_work = state.reader.as_ref().is_some_and(|it| !it.is_finished());
        if !is_at_work {
            let task = read_again(Arc::downgrade(&self.state), app.database().clone());
            state.reader = Some(tokio::spawn(task));
        }
        state
    }
}

/// Reads what is remembered again and again, for as long as somebody holds it.
async fn read_again(state: Weak<Mutex<State>>, database: Database) {
    loop {
        tokio::time::sleep(READ_AGAIN).await;
        let Some(asked) = state.upgrade().map(|state| Asked::of(&mut open(&state))) else {
            return;
        };
        let began = Instant::now();
        let answer = tokio::time::timeout(PATIENCE, asked.read(&database)).await;
        let Some(state) = state.upgrade() else { return };
        let mut state = open(&state);
        if let Ok(Ok(answer)) = answer {
            state.is_failing = false;
            if state.epoch == asked.epoch {
                asked.keep(&mut state, answer, began);
            }
        } else {
            if !state.is_failing {
                tracing::warn!("sessions cannot be read; they are good for five more seconds");
            }
            state.is_failing = true;
        }
    }
}

/// What is to be read again.
struct Asked {
    epoch: u64,
    sessions: Vec<Vec<u8>>,
    /// For each room the entry that is known, and the persons in it.
    rooms: HashMap<Uuid, (i64, Vec<(Uuid, String)>)>,
}

#[derive(Default)]
struct Answer {
    sessions: HashMap<Vec<u8>, Session>,
    moved: HashSet<Uuid>,
    standings: HashMap<(Uuid, Uuid), Standing>,
}

impl Asked {
    fn of(state: &mut State) -> Self {
        state
            .sessions
            .retain(|_, known| known.used_at.elapsed() < UNUSED);
        state
            .standings
            .retain(|_, known| known.used_at.elapsed() < UNUSED);
        let mut rooms = HashMap::new();
        for (key, known) in &state.standings {
            let Standing { membership, seq } = &known.value;
            let (oldest, people) = rooms
                .entry(membership.room)
                .or_insert_with(|| (*seq, Vec::new()));
            *oldest = (*oldest).min(*seq);
            people.push(key.clone());
        }
        Self {
            epoch: state.epoch,
            sessions: state.sessions.keys().cloned().collect(),
            rooms,
        }
    }

    async fn read(&self, database: &Database) -> Result<Answer> {
        let hashes = self.sessions.clone();
        let rooms: Vec<Uuid> = self.rooms.keys().copied().collect();
        let (sessions, heads) = database
            .installation(move |tx| {
                Box::pin(async move {
                    let sessions = sessions::store::find(tx, &hashes).await?;
                    Ok((sessions, logbook::heads(tx, &rooms).await?))
                })
            })
            .await?;
        let mut answer = Answer {
            sessions: sessions.into_iter().collect(),
            ..Answer::default()
        };
        for (room, Head { seq, .. }) in heads {
            let Some((known, people)) = self.rooms.get(&room) else {
                continue;
            };
            if seq == *known {
                continue;
            }
            answer.moved.insert(room);
            let persons: Vec<Uuid> = people.iter().map(|(person, _)| *person).collect();
            let scope = Scope { room, person: None };
            let standings = database
                .reading(scope, move |tx| {
                    Box::pin(async move { store::standings(tx, &persons).await })
                })
                .await?;
            let placed = standings
                .into_iter()
                .map(|(person, standing)| ((room, person), standing));
            answer.standings.extend(placed);
        }
        Ok(answer)
    }

    fn keep(&self, state: &mut State, mut answer: Answer, began: Instant) {
        for hash in &self.sessions {
            match (state.sessions.get_mut(hash), answer.sessions.remove(hash)) {
                (Some(known), Some(session)) => {
                    known.value = session;
                    known.read_at = began;
                }
                _ => {
                    state.sessions.remove(hash);
                }
            }
        }
        for (room, (_, people)) in &self.rooms {
            for key in people {
                let Some(known) = state.standings.get_mut(key) else {
                    continue;
                };
                if !answer.moved.contains(room) {
                    known.read_at = began;
                    continue;
                }
                // A standing of another name is an old address of the room.
                match answer.standings.get(&(*room, key.0)) {
                    Some(standing) if standing.membership.slug == key.1 => {
                        known.value = standing.clone();
                        known.read_at = began;
                    }
                    _ => {
                        state.standings.remove(key);
                    }
                }
            }
        }
    }
}
