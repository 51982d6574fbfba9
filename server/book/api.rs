//! The book as JSON.

use data_encoding::{BASE64, HEXLOWER};
use serde::Serialize;
use utoipa::ToSchema;

use super::checkpoints;
use crate::api::{By, Page, Paging, Route, moment_text};
use crate::clock::moment;
use crate::error::Result;
use crate::logbook::checkpoint::Checkpoint;
use crate::rights::{ReadBook, SealBook};

const CHECKPOINTS: &str = "/rooms/{room}/book/checkpoints";

/// The routes.
#[must_use]
pub fn api() -> Vec<Route> {
    vec![
        Route::list(CHECKPOINTS, "The book's checkpoints, oldest first.", list),
        Route::make(CHECKPOINTS, "Make a checkpoint of the book now.", seal),
    ]
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
