//! What a steward does with bottles.

use serde::Serialize;
use uuid::Uuid;

use super::BottleSet;
use super::store;
use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::{Book, Done, Key};
use crate::problem::Problem;
use crate::rights::KeepBench;

/// So many bottles a room keeps at most.
const MOST: usize = 200;

/// A bottle as somebody wants it.
#[derive(Clone, Debug, Serialize)]
pub struct NewBottle {
    /// The one to change; nothing for a new one.
    pub id: Option<Uuid>,
    /// What people call it.
    pub name: String,
    /// What it holds up to the stopper, in microlitres.
    pub holds_ul: i64,
    /// Whether it is used no more.
    pub is_retired: bool,
}

/// Adds or changes a bottle.
///
/// # Errors
/// A name that is taken; too many of them.
pub async fn set_bottle(
    app: &App,
    permit: &Permit<KeepBench>,
    key: Key,
    new: NewBottle,
) -> Result<Done> {
    permit
        .write(app, key, &new.clone(), move |book| {
            Box::pin(async move { write_bottle(book, new).await })
        })
        .await
}

async fn write_bottle(book: &mut Book<'_>, new: NewBottle) -> Result<()> {
    let there = store::bottles(book.tx()).await?;
    let mut others = there.iter().filter(|other| Some(other.id) != new.id);
    if others.any(|other| other.name == new.name) {
        return Err(Error::field("name", Problem::NameTaken));
    }
    let old = new.id.map(|id| there.iter().find(|bottle| bottle.id == id));
    let old = match old {
        Some(found) => Some(found.ok_or(Error::NotFound)?),
        None if there.len() >= MOST => return Err(Error::Refused(Problem::TooMany(MOST))),
        None => None,
    };
    let entry = BottleSet {
        id: old.map_or_else(|| book.new_id(), |bottle| bottle.id),
        name: new.name,
        holds_ul: new.holds_ul,
        is_retired: new.is_retired,
    };
    book.append(&entry).await?;
    Ok(())
}
