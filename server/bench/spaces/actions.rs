//! What a steward does with spaces.

use serde::Serialize;
use uuid::Uuid;

use super::SpaceSet;
use super::store;
use crate::app::App;
use crate::bench::lines;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::{Book, Done, Key};
use crate::problem::Problem;
use crate::rights::KeepBench;

/// So many spaces a room keeps at most.
const MOST: usize = 20;

/// A space as somebody wants it.
#[derive(Clone, Debug, Serialize)]
pub struct NewSpace {
    /// The one to change; nothing for a new one.
    pub id: Option<Uuid>,
    /// What people call it.
    pub name: String,
    /// Its place in lists; nothing for the end.
    pub position: Option<i32>,
    /// Whether it is used no more.
    pub is_retired: bool,
}

/// Adds or changes a space.
///
/// # Errors
/// A name that is taken; a space in which a line stands, which is not retired.
pub async fn set_space(
    app: &App,
    permit: &Permit<KeepBench>,
    key: Key,
    new: NewSpace,
) -> Result<Done> {
    permit
        .write(app, key, &new.clone(), move |book| {
            Box::pin(async move { write_space(book, new).await })
        })
        .await
}

async fn write_space(book: &mut Book<'_>, new: NewSpace) -> Result<()> {
    let there = store::spaces(book.tx()).await?;
    let mut others = there.iter().filter(|other| Some(other.id) != new.id);
    if others.any(|other| other.name == new.name) {
        return Err(Error::field("name", Problem::NameTaken));
    }
    let old = new.id.map(|id| there.iter().find(|space| space.id == id));
    let old = match old {
        Some(found) => Some(found.ok_or(Error::NotFound)?),
        None if there.len() >= MOST => return Err(Error::Refused(Problem::TooMany(MOST))),
        None => None,
    };
    if new.is_retired
        && let Some(space) = old
    {
        let lines = lines(book.tx()).await?;
        let mut in_use = lines.iter().filter(|line| !line.is_retired);
        if in_use.any(|line| line.space_id == Some(space.id)) {
            return Err(Error::Refused(Problem::SpaceInUse));
        }
    }
    let last = there.iter().map(|space| space.position).max().unwrap_or(0);
    let entry = SpaceSet {
        id: old.map_or_else(|| book.new_id(), |space| space.id),
        name: new.name,
        position: new
            .position
            .or(old.map(|space| space.position))
            .unwrap_or(last + 1),
        is_retired: new.is_retired,
    };
    book.append(&entry).await?;
    Ok(())
}
