//! The book as JSON: everything that was written, as far as it is shown.

use data_encoding::HEXLOWER;
use serde::Serialize;
use serde_json::Value;
use utoipa::ToSchema;
use uuid::Uuid;

use super::checkpoints;
use super::reading::{self, Feed};
use super::store::Line;
use crate::api::{By, Page, Paging, Route, moment_text};
use crate::clock::moment;
use crate::error::Result;
use crate::logbook::checkpoint::Checkpoint;
use crate::rights::{ReadBook, SealBook};

const ENTRIES: &str = "/rooms/{room}/entries";
const CHECKPOINTS: &str = "/rooms/{room}/checkpoints";

/// The routes.
#[must_use]
pub fn api() -> Vec<Route> {
    vec![
        Route::list(
            ENTRIES,
            "What was written after an entry, oldest first, none left out: of one that is not \
             shown to you, its number.",
            entries,
        ),
        Route::list(
            CHECKPOINTS,
            "The checkpoints of the book, oldest first.",
            list_checkpoints,
        ),
    ]
}

/// An entry of the book.
#[derive(Debug, Serialize, ToSchema)]
pub struct EntryOut {
    /// Its number.
    pub seq: i64,
    /// Whether the rest is shown to you.
    pub is_shown: bool,
    /// Its kind.
    pub kind: Option<String>,
    /// Who wrote it; nobody for the program itself.
    pub actor_id: Option<Uuid>,
    /// When it happened.
    #[schema(format = DateTime)]
    pub happened_at: Option<String>,
    /// When it was written.
    #[schema(format = DateTime)]
    pub recorded_at: Option<String>,
    /// What it is about.
    pub about: Vec<AboutOut>,
    /// What it says, as its kind has it.
    pub payload: Option<Value>,
}

/// A thing that an entry is about.
#[derive(Debug, Serialize, ToSchema)]
pub struct AboutOut {
    /// What sort of thing.
    pub noun: String,
    /// Which.
    pub id: Uuid,
}

async fn entries(by: By<ReadBook>, paging: Paging) -> Result<Page<EntryOut>> {
    let after = paging.after_seq()?.unwrap_or(0);
    let feed = reading::feed(&by.app, &by.permit, after, paging.limit + 1).await?;
    let Feed { lines, about, .. } = feed;
    let page = paging.first_of(lines, |line| line.seq.to_string());
    page.map(|line| entry(line, &about))
}

fn entry(line: Line, about: &[(i64, String, Uuid)]) -> Result<EntryOut> {
    let about = about.iter().filter(|(seq, _, _)| *seq == line.seq);
    let about = about.map(|(_, noun, id)| AboutOut {
        noun: noun.clone(),
        id: *id,
    });
    let (seq, shown) = (line.seq, line.shown);
    Ok(EntryOut {
        seq,
        is_shown: shown.is_some(),
        kind: shown.as_ref().map(|shown| shown.kind.clone()),
        actor_id: shown.as_ref().and_then(|shown| shown.actor),
        happened_at: shown
            .as_ref()
            .map(|shown| moment_text(shown.happened_at))
            .transpose()?,
        recorded_at: shown
            .as_ref()
            .map(|shown| moment_text(shown.recorded_at))
            .transpose()?,
        about: about.collect(),
        payload: shown
            .map(|shown| serde_json::from_slice(&shown.payload))
            .transpose()?,
    })
}

/// A signed mark of how the book stood.
#[derive(Debug, Serialize, ToSchema)]
pub struct CheckpointOut {
    /// The last entry it seals.
    pub seq: i64,
    /// That entry's hash, 64 hexadecimal digits.
    pub hash: String,
    /// When it was made.
    #[schema(format = DateTime)]
    pub at: String,
    /// The key it is signed with, 64 hexadecimal digits.
    pub public_key: String,
    /// The signature, 128 hexadecimal digits.
    pub signature: String,
}

async fn list_checkpoints(by: By<SealBook>, paging: Paging) -> Result<Page<CheckpointOut>> {
    let shelf = checkpoints::shelf(&by.app, by.permit.room()).await?;
    let page = paging.cut(shelf.checkpoints, |one| one.at_us.to_string())?;
    page.map(|one| checkpoint(&one))
}

fn checkpoint(one: &Checkpoint) -> Result<CheckpointOut> {
    Ok(CheckpointOut {
        seq: one.seq,
        hash: HEXLOWER.encode(&one.hash),
        at: moment_text(moment(one.at_us))?,
        public_key: HEXLOWER.encode(&one.public_key),
        signature: HEXLOWER.encode(&one.signature),
    })
}
