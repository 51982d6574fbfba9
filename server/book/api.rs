//! The book as JSON.

use data_encoding::{BASE64, HEXLOWER};
use serde::Serialize;
use serde_json::{Map, Value};
use utoipa::ToSchema;
use uuid::Uuid;

use super::reading::{FEED, feed};
use super::{Line, Shown, checkpoints};
use crate::api::{By, Page, Paging, Route, moment_text};
use crate::clock::moment;
use crate::error::Result;
use crate::logbook::checkpoint::Checkpoint;
use crate::rights::{ReadBook, SealBook};

const BOOK: &str = "/rooms/{room}/book";
const CHECKPOINTS: &str = "/rooms/{room}/book/checkpoints";

/// The routes.
#[must_use]
pub fn api() -> Vec<Route> {
    vec![
        Route::list(
            BOOK,
            "Entries after a number, oldest first, none left out. Ask again after the last one \
             for what came since.",
            entries,
        ),
        Route::list(CHECKPOINTS, "The book's checkpoints, oldest first.", list),
        Route::make(CHECKPOINTS, "Make a checkpoint of the book now.", seal),
    ]
}

/// An entry. One that is not shown to the token's person keeps its number.
#[derive(Debug, Serialize, ToSchema)]
pub struct EntryOut {
    /// Its number.
    pub seq: i64,
    /// What it says; null where it is not shown.
    pub shown: Option<ShownOut>,
}

/// What an entry says.
#[derive(Debug, Serialize, ToSchema)]
pub struct ShownOut {
    /// Its kind.
    pub kind: String,
    /// Who wrote it; null for the program itself.
    pub actor: Option<Uuid>,
    /// When it happened.
    #[schema(format = DateTime)]
    pub happened_at: String,
    /// When it was written.
    #[schema(format = DateTime)]
    pub recorded_at: String,
    /// What it is about.
    pub about: Vec<AboutOut>,
    /// Its figures, as its kind has them; null where somebody has spoilt them.
    #[schema(value_type = Option<Object>)]
    pub payload: Option<Map<String, Value>>,
}

/// A thing that an entry is about.
#[derive(Debug, Serialize, ToSchema)]
pub struct AboutOut {
    /// What sort of thing.
    pub noun: String,
    /// Which.
    pub id: Uuid,
}

impl ShownOut {
    fn of(shown: &Shown, about: Vec<AboutOut>) -> Result<Self> {
        Ok(Self {
            kind: shown.kind.clone(),
            actor: shown.actor,
            happened_at: moment_text(shown.happened_at)?,
            recorded_at: moment_text(shown.recorded_at)?,
            about,
            payload: serde_json::from_slice(&shown.payload).ok(),
        })
    }
}

async fn entries(by: By<ReadBook>, paging: Paging<FEED>) -> Result<Page<EntryOut>> {
    let after = paging.after_seq()?.unwrap_or(0);
    let feed = feed(&by.app, &by.permit, after, paging.limit).await?;
    let said = |line: &Line| -> Result<EntryOut> {
        let about = feed.about.iter().filter(|(seq, _, _)| *seq == line.seq);
        let about = about.map(|(_, noun, id)| AboutOut {
            noun: noun.clone(),
            id: *id,
        });
        let shown = line.shown.as_ref();
        let shown = shown.map(|shown| ShownOut::of(shown, about.collect()));
        Ok(EntryOut {
            seq: line.seq,
            shown: shown.transpose()?,
        })
    };
    let more = feed.lines.last().filter(|line| line.seq < feed.last);
    Ok(Page {
        next: more.map(|line| line.seq.to_string()),
        data: feed.lines.iter().map(said).collect::<Result<_>>()?,
    })
}

/// A signed mark of how the book stood, kept outside the database.
#[derive(Debug, Serialize, ToSchema)]
pub struct CheckpointOut {
    /// The last entry then; 0 for an empty book.
    pub seq: i64,
    /// Its hash, in hexadecimal.
    pub hash: String,
    /// When.
    #[schema(format = DateTime)]
    pub at: String,
    /// The Ed25519 key it is signed with, in base64.
    pub public_key: String,
    /// The signature, in base64.
    pub signature: String,
}

impl CheckpointOut {
    fn of(checkpoint: Checkpoint) -> Result<Self> {
        Ok(Self {
            seq: checkpoint.seq,
            hash: HEXLOWER.encode(&checkpoint.hash),
            at: moment_text(moment(checkpoint.at_us))?,
            public_key: BASE64.encode(&checkpoint.public_key),
            signature: BASE64.encode(&checkpoint.signature),
        })
    }
}

async fn list(by: By<ReadBook>, paging: Paging) -> Result<Page<CheckpointOut>> {
    let shelf = checkpoints::list(&by.app, &by.permit).await?;
    let page = paging.cut(shelf.checkpoints, |mark| mark.at_us.to_string())?;
    page.map(CheckpointOut::of)
}

async fn seal(by: By<SealBook>) -> Result<CheckpointOut> {
    CheckpointOut::of(checkpoints::seal_now(&by.app, &by.permit).await?)
}
