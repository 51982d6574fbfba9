//! The pages of the checkpoints.

use axum::body::Body;
use axum::extract::{Path, State};
use axum::response::Response;
use data_encoding::HEXLOWER;

use super::checkpoints;
use super::pages::settings;
use super::store::{self, Verified};
use super::views::{CheckpointRow, CheckpointsPage, LastVerified};
use crate::app::App;
use crate::clock::moment;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::checkpoint::{Checkpoint, Shelf};
use crate::logbook::reading;
use crate::rights::{ReadBook, Right, SealBook};
use crate::rooms::Settings;
use crate::router::Pages;
use crate::web::attached::attached;
use crate::web::forms::{page, see_other};
use crate::web::frame::Frame;
use crate::web::shell::{Place, Shell};

/// The routes of these pages.
#[must_use]
pub(super) fn pages() -> Pages {
    Pages::new()
        .get("/rooms/{room}/checkpoints", list)
        .post("/rooms/{room}/checkpoints", make)
        .get("/rooms/{room}/checkpoints/{file}", download)
}

async fn list(State(app): State<App>, permit: Permit<ReadBook>, frame: Frame) -> Result<Response> {
    let shelf = checkpoints::list(&app, &permit).await?;
    let key = checkpoints::public_key(&app).await?;
    let settings = settings(&app, &permit).await?;
    let shell = frame.shell_in(&permit, Some(Place::Checkpoints));
    let verified = app
        .database()
        .reading(permit.scope(), |tx| Box::pin(store::last_verified(tx)))
        .await?;
    let may_make = SealBook::ROW.roles.contains(&permit.role());
    let list = list_page(shell, &shelf, verified, &settings)?;
    page(&CheckpointsPage {
        public_key: key.map(|key| HEXLOWER.encode(&key)).unwrap_or_default(),
        may_make,
        ..list
    })
}

fn list_page(
    shell: Shell,
    shelf: &Shelf,
    verified: Option<Verified>,
    settings: &Settings,
) -> Result<CheckpointsPage> {
    let zone = settings.time_zone()?;
    let row = |one: &Checkpoint| CheckpointRow {
        seq: one.seq,
        hash: HEXLOWER.encode(&one.hash),
        at: zone.in_full(moment(one.at_us)),
        file: file_name(one),
    };
    Ok(CheckpointsPage {
        shell,
        checkpoints: shelf
            .checkpoints
            .iter()
            .rev()
            .take(SHOWN)
            .map(row)
            .collect(),
        refused: shelf.refused.len(),
        verified: verified.map(|verified| LastVerified {
            at: zone.in_full(verified.at),
            entries: verified.entries,
            findings: verified.findings,
        }),
        public_key: String::new(),
        may_make: false,
    })
}

/// So many are listed; the file of the whole book has them all.
const SHOWN: usize = 400;

async fn make(State(app): State<App>, permit: Permit<SealBook>) -> Result<Response> {
    checkpoints::seal_now(&app, &permit).await?;
    let slug = &permit.membership().slug;
    Ok(see_other(&app, &format!("/rooms/{slug}/checkpoints")))
}

async fn download(
    State(app): State<App>,
    permit: Permit<ReadBook>,
    Path((_, file)): Path<(String, String)>,
) -> Result<Response> {
    let shelf = checkpoints::list(&app, &permit).await?;
    let found = shelf.checkpoints.iter().find(|one| file_name(one) == file);
    let one = found.ok_or(Error::NotFound)?;
    let mut line = Vec::new();
    reading::write_checkpoints(&mut line, std::slice::from_ref(one))?;
    Ok(attached("application/json", &file, Body::from(line)))
}

/// Number and time: several checkpoints may seal one entry.
fn file_name(one: &Checkpoint) -> String {
    format!("checkpoint-{}-{}.json", one.seq, one.at_us)
}
