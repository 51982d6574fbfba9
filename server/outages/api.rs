//! Power and fan as JSON.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;
use uuid::Uuid;

use super::actions::{self, NewOutage, OutageOver};
use super::store;
use super::{Outage, What};
use crate::api::{By, Input, Made, Page, Paging, Route, Writing, moment_text};
use crate::clock::micros;
use crate::error::{Error, Result};
use crate::input::moment;
use crate::rights::{LookAtBoard, NoteOutages};

const OUTAGES: &str = "/rooms/{room}/outages";
const OUTAGE: &str = "/rooms/{room}/outages/{id}";
const END: &str = "/rooms/{room}/outages/{id}/end";

/// The routes.
#[must_use]
pub fn api() -> Vec<Route> {
    vec![
        Route::list(OUTAGES, "What is and was off, the latest first.", list),
        Route::one(OUTAGE, "One time that something was off.", one),
        Route::add(OUTAGES, "Say that power or fan is off.", add),
        Route::act(END, "Say that it is over.", end),
    ]
}

/// Something that is off, or was.
#[derive(Debug, Serialize, ToSchema)]
pub struct OutageOut {
    /// Which time.
    pub id: Uuid,
    /// What.
    pub what: What,
    /// The part of the room it is about; nothing for the whole room.
    pub space_id: Option<Uuid>,
    /// When it went off.
    #[schema(format = DateTime)]
    pub began_at: String,
    /// Who said so, by name.
    pub began_by: Option<String>,
    /// The number of the entry that said so.
    pub began_seq: i64,
    /// When it was on again.
    #[schema(format = DateTime)]
    pub ended_at: Option<String>,
    /// Who said that, by name.
    pub ended_by: Option<String>,
}

impl OutageOut {
    /// As JSON has it.
    ///
    /// # Errors
    /// A fault for a moment beyond the calendar.
    pub fn of(outage: Outage) -> Result<Self> {
        Ok(Self {
            id: outage.id,
            what: outage.what,
            space_id: outage.space_id,
            began_at: moment_text(outage.began_at)?,
            began_by: outage.began_by,
            began_seq: outage.began_seq,
            ended_at: outage.ended_at.map(moment_text).transpose()?,
            ended_by: outage.ended_by,
        })
    }
}

async fn list(by: By<LookAtBoard>, paging: Paging) -> Result<Page<OutageOut>> {
    let (before, most) = (paging.after_seq()?, paging.limit + 1);
    let found = actions::list(&by.app, &by.permit, before, most).await?;
    let page = paging.first_of(found, |outage| outage.began_seq.to_string());
    page.map(OutageOut::of)
}

async fn one(by: By<LookAtBoard>, id: Uuid) -> Result<OutageOut> {
    let database = by.app.database();
    let found = database.reading(by.permit.scope(), move |tx| Box::pin(store::outage(tx, id)));
    OutageOut::of(found.await?.ok_or(Error::NotFound)?)
}

/// Something that went off.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct OutageIn {
    /// What.
    pub what: What,
    /// When, where that was not just now.
    #[schema(format = DateTime)]
    pub happened_at: Option<String>,
}

impl Input for OutageIn {}

async fn add(by: Writing<NoteOutages>, outage: OutageIn) -> Result<Made> {
    let new = NewOutage {
        what: outage.what,
        space_id: None,
        happened_at_us: micros_of(outage.happened_at.as_deref())?,
    };
    let done = actions::begin(&by.app, &by.permit, by.key, new).await?;
    by.made(&done, "outage", "outages")
}

fn micros_of(text: Option<&str>) -> Result<Option<i64>> {
    let at = text.map(moment).transpose();
    let at = at.map_err(|problem| Error::field("happened_at", problem))?;
    Ok(at.map(micros))
}

/// The end of one.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct OutageEndIn {
    /// When, where that was not just now.
    #[schema(format = DateTime)]
    pub happened_at: Option<String>,
}

impl Input for OutageEndIn {}

async fn end(by: Writing<NoteOutages>, id: Uuid, end: OutageEndIn) -> Result<Made> {
    let over = OutageOver {
        ended_outage_id: id,
        happened_at_us: micros_of(end.happened_at.as_deref())?,
    };
    let done = actions::end(&by.app, &by.permit, by.key, over).await?;
    by.made(&done, "outage", "outages")
}
