//! What a steward does with bottles.

use serde::Serialize;
use uuid::Uuid;

use super::store;
use super::{Bottle, BottleSet};
use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::{Book, Done, Key};
use crate::mixes;
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
/// A name that is taken; too many of them; one that holds a mix is neither retired
/// nor made smaller than that.
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
    // What stands in a bottle would be nowhere, and a smaller one would not hold it.
    if let Some(held_ul) = held(book, old).await? {
        if new.is_retired {
            return Err(Error::Refused(Problem::TrayFull));
        }
        if new.holds_ul < held_ul {
            return Err(Error::field("holds", Problem::HoldsMore { held_ul }));
        }
    }
    let entry = BottleSet {
        id: old.map_or_else(|| book.new_id(), |bottle| bottle.id),
        name: new.name,
        holds_ul: new.holds_ul,
        is_retired: new.is_retired,
    };
    book.append(&entry).await?;
    Ok(())
}

/// What stands in a bottle, in microlitres.
async fn held(book: &mut Book<'_>, bottle: Option<&Bottle>) -> Result<Option<i64>> {
    let Some(bottle) = bottle else {
        return Ok(None);
    };
    let mix = mixes::in_vessel(book.tx(), bottle.id).await?;
    Ok(mix.map(|mix| mix.level_ul()))
}
