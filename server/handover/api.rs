//! Handing over as JSON.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;
use uuid::Uuid;

use super::Part;
use super::actions::{self, NewHandover};
use super::sheet::{Ground, last_sealed};
use super::store::{self, Handover};
use crate::api::{By, Input, Made, Page, Paging, Route, Writing, moment_text};
use crate::error::{Error, Result};
use crate::rights::{HandOver, SeeHandover};

const SHEET: &str = "/rooms/{room}/handover";
const HANDOVERS: &str = "/rooms/{room}/handovers";
const HANDOVER: &str = "/rooms/{room}/handovers/{id}";
const CONFIRM: &str = "/rooms/{room}/handovers/{id}/confirm";
const WITHDRAW: &str = "/rooms/{room}/handovers/{id}/withdraw";

/// The routes.
#[must_use]
pub fn api() -> Vec<Route> {
    vec![
        Route::read(SHEET, "What is open in the room now.", sheet),
        Route::list(HANDOVERS, "Handovers, the latest first.", list),
        Route::one(HANDOVER, "One handover, with its list.", one),
        Route::add(HANDOVERS, "Hand the room over to another steward.", add),
        Route::act(CONFIRM, "Confirm a handover to oneself.", confirm),
        Route::act(WITHDRAW, "Take back a handover that waits.", withdraw),
    ]
}

/// What is open in the room.
#[derive(Debug, Serialize, ToSchema)]
pub struct HandoverSheetOut {
    /// When it was so.
    #[schema(format = DateTime)]
    pub as_of: String,
    /// The list.
    pub parts: Vec<Part>,
}

async fn sheet(by: By<SeeHandover>) -> Result<HandoverSheetOut> {
    let (now, sealed) = (
        by.app.clock().now(),
        last_sealed(&by.app, by.permit.room()).await?,
    );
    let database = by.app.database();
    let ground = database.reading(by.permit.scope(), move |tx| {
        Box::pin(Ground::read(tx, now, sealed))
    });
    Ok(HandoverSheetOut {
        as_of: moment_text(now)?,
        parts: ground.await?.parts(),
    })
}

/// A handover as it now is.
#[derive(Debug, Serialize, ToSchema)]
pub struct HandoverOut {
    /// Which.
    pub id: Uuid,
    /// Who hands over.
    pub from_person_id: Uuid,
    /// That person's name.
    pub from_name: String,
    /// Who takes over.
    pub to_person_id: Uuid,
    /// That person's name.
    pub to_name: String,
    /// What was open in the room.
    pub parts: Vec<Part>,
    /// When it was opened.
    #[schema(format = DateTime)]
    pub opened_at: String,
    /// The number of the entry that opened it.
    pub opened_seq: i64,
    /// When it was confirmed.
    #[schema(format = DateTime)]
    pub confirmed_at: Option<String>,
    /// The number of the entry that confirmed it.
    pub confirmed_seq: Option<i64>,
    /// When it was taken back.
    #[schema(format = DateTime)]
    pub withdrawn_at: Option<String>,
}

impl HandoverOut {
    fn of(handover: Handover) -> Result<Self> {
        Ok(Self {
            id: handover.id,
            from_person_id: handover.from_person_id,
            from_name: handover.from_name,
            to_person_id: handover.to_person_id,
            to_name: handover.to_name,
            parts: handover.parts,
            opened_at: moment_text(handover.opened_at)?,
            opened_seq: handover.opened_seq,
            confirmed_at: handover.confirmed_at.map(moment_text).transpose()?,
            confirmed_seq: handover.confirmed_seq,
            withdrawn_at: handover.withdrawn_at.map(moment_text).transpose()?,
        })
    }
}

async fn list(by: By<SeeHandover>, paging: Paging) -> Result<Page<HandoverOut>> {
    let (before, most) = (paging.after_seq()?, paging.limit + 1);
    let found = by.app.database().reading(by.permit.scope(), move |tx| {
        Box::pin(store::list(tx, before, most))
    });
    let page = paging.first_of(found.await?, |handover| handover.opened_seq.to_string());
    page.map(HandoverOut::of)
}

async fn one(by: By<SeeHandover>, id: Uuid) -> Result<HandoverOut> {
    let database = by.app.database();
    let found = database.reading(by.permit.scope(), move |tx| {
        Box::pin(store::handover(tx, id))
    });
    HandoverOut::of(found.await?.ok_or(Error::NotFound)?)
}

/// To whom the room is handed over.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct HandoverIn {
    /// Another steward of the room.
    pub to_person_id: Uuid,
}

impl Input for HandoverIn {
    const NAMES: &'static [(&'static str, &'static str)] = &[("successor", "to_person_id")];
}

async fn add(by: Writing<HandOver>, handover: HandoverIn) -> Result<Made> {
    let new = NewHandover {
        to_person_id: handover.to_person_id,
    };
    let done = actions::open(&by.app, &by.permit, by.key, new).await?;
    by.made(&done, "handover", "handovers")
}

/// Nothing further is asked of a handover.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct HandoverNothingIn {}

impl Input for HandoverNothingIn {}

async fn confirm(by: Writing<HandOver>, id: Uuid, _: HandoverNothingIn) -> Result<Made> {
    let done = actions::confirm(&by.app, &by.permit, by.key, id).await?;
    by.made(&done, "handover", "handovers")
}

async fn withdraw(by: Writing<HandOver>, id: Uuid, _: HandoverNothingIn) -> Result<Made> {
    let done = actions::withdraw(&by.app, &by.permit, by.key, id).await?;
    by.made(&done, "handover", "handovers")
}
