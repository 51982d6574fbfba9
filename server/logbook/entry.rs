//! What an entry is: its kind, who sees it, what it is about, and what it does
//! to the rows that show the room as it now stands.

use std::future::Future;

use futures_util::future::BoxFuture;
use serde::de::DeserializeOwned;
use serde::{Deserialize, Serialize};
use time::OffsetDateTime;
use uuid::Uuid;

use crate::database::RoomTx;
use crate::error::Result;

/// One kind of entry.
///
/// The payload is the struct's JSON text, whole numbers only, kept and hashed as
/// first written. It carries every figure its projection needs: nothing outside
/// the entry and the rows that earlier entries left may decide what it does.
pub trait Entry: Serialize + DeserializeOwned + Send + Sync + 'static {
    /// The kind's name in the book.
    const KIND: &'static str;
    /// Who may read it.
    const SEEN_BY: SeenBy;

    /// What it is about: how pages find it again.
    fn about(&self) -> Vec<About>;

    /// Works out anew the figures this entry keeps, by the rules of its own
    /// version; a sentence where they come out otherwise. Verifying asks this.
    ///
    /// # Errors
    /// Figures that cannot be worked out at all.
    fn recheck(&self) -> Result<Option<String>> {
        Ok(None)
    }

    /// Changes the snapshot rows as these entries say, in their order.
    fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> impl Future<Output = Result<()>> + Send
    where
        Self: Sized;
}

/// A thing an entry is about.
#[derive(Clone, Copy, Debug, Eq, Ord, PartialEq, PartialOrd)]
pub struct About {
    /// What sort of thing, by its table's name.
    pub noun: &'static str,
    /// Which.
    pub id: Uuid,
}

impl About {
    /// The thing `id` of the table `noun`.
    #[must_use]
    pub const fn new(noun: &'static str, id: Uuid) -> Self {
        Self { noun, id }
    }
}

/// Who sees the entries of a kind. Everyone else sees that there is one.
#[derive(Clone, Copy, Debug, Eq, PartialEq)]
pub enum SeenBy {
    /// Everyone in the room.
    Everyone,
    /// The persons it is about, and stewards.
    SubjectAndStewards,
    /// Treasurers and stewards.
    TreasurerAndStewards,
}

/// An entry at its place in the book.
#[derive(Clone, Debug)]
pub struct Placed<E> {
    /// Its number.
    pub seq: i64,
    /// Who wrote it; nobody for the program itself.
    pub actor: Option<Uuid>,
    /// When the person says it happened.
    pub happened_at: OffsetDateTime,
    /// When it was written.
    pub recorded_at: OffsetDateTime,
    /// What it says.
    pub entry: E,
}

/// A placed entry as it was written.
#[derive(Clone, Debug)]
pub struct Written {
    /// Its kind.
    pub kind: String,
    /// Place and text.
    pub placed: Placed<Vec<u8>>,
}

/// One row of the table of kinds: what the book needs of a kind without knowing
/// its type.
#[derive(Debug)]
pub struct Kind {
    /// The kind's name.
    pub name: &'static str,
    /// Who sees it.
    pub seen_by: SeenBy,
    /// What an entry with this payload is about.
    pub about: fn(&[u8]) -> Result<Vec<About>>,
    /// Works out an entry's kept figures anew.
    pub recheck: fn(&[u8]) -> Result<Option<String>>,
    /// Projects a run of entries of this kind.
    pub project: for<'t> fn(&'t mut RoomTx, &'t [Written]) -> BoxFuture<'t, Result<()>>,
}

impl Kind {
    /// The row of an entry type.
    #[must_use]
    pub const fn of<E: Entry>() -> Self {
        Self {
            name: E::KIND,
            seen_by: E::SEEN_BY,
            about: about::<E>,
            recheck: recheck::<E>,
            project: project::<E>,
        }
    }
}

/// All kinds of entry the program writes.
pub type Kinds = &'static [Kind];

/// The field that names the screen an entry was written through. It stands behind
/// what the entry says itself, and only where there was one.
pub(super) const THROUGH: &str = "through_screen_id";

#[derive(Deserialize)]
struct Through {
    through_screen_id: Option<Uuid>,
}

/// The screen that an entry with this text was written through.
#[must_use]
pub fn through_screen(payload: &[u8]) -> Option<Uuid> {
    let through: Through = serde_json::from_slice(payload).ok()?;
    through.through_screen_id
}

fn about<E: Entry>(payload: &[u8]) -> Result<Vec<About>> {
    let mut about = serde_json::from_slice::<E>(payload)?.about();
    let screen = through_screen(payload);
    about.extend(screen.map(|screen| About::new("screen", screen)));
    Ok(about)
}

fn recheck<E: Entry>(payload: &[u8]) -> Result<Option<String>> {
    serde_json::from_slice::<E>(payload)?.recheck()
}

/// Reads the entries back from their text, so that what the rows show is what
/// the book says and nothing else.
fn project<'t, E: Entry>(tx: &'t mut RoomTx, rows: &'t [Written]) -> BoxFuture<'t, Result<()>> {
    Box::pin(async move {
        let placed = rows
            .iter()
            .map(|row| {
                Ok(Placed {
                    seq: row.placed.seq,
                    actor: row.placed.actor,
                    happened_at: row.placed.happened_at,
                    recorded_at: row.placed.recorded_at,
                    entry: serde_json::from_slice(&row.placed.entry)?,
                })
            })
            .collect::<Result<Vec<Placed<E>>>>()?;
        E::project(tx, &placed).await
    })
}
