//! Who is in the room, as JSON.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;
use uuid::Uuid;

use super::actions::{self, NewStay, NewSupervised};
use super::store::{self, Presence};
use crate::api::{By, Input, Made, Page, Paging, Route, Writing, moment_text};
use crate::clock::micros;
use crate::error::{Error, Result};
use crate::input::moment;
use crate::members::api::NothingIn;
use crate::rights::{Arrive, ClosePresence, LookAtBoard, Role, Supervise};

const PRESENCES: &str = "/rooms/{room}/presences";
const PRESENCE: &str = "/rooms/{room}/presences/{id}";
const SUPERVISED: &str = "/rooms/{room}/presences/supervised";
const UNTIL: &str = "/rooms/{room}/presences/{id}/until";
const LEAVE: &str = "/rooms/{room}/presences/{id}/leave";
const CLOSE: &str = "/rooms/{room}/presences/{id}/close";

/// The routes.
#[must_use]
pub fn api() -> Vec<Route> {
    vec![
        Route::list(
            PRESENCES,
            "Who is in the room now, the longest first.",
            list,
        ),
        Route::one(
            PRESENCE,
            "One time of being there. One that is over is shown to its person and to stewards.",
            one,
        ),
        Route::add(PRESENCES, "Say that one has arrived.", add),
        Route::add(
            SUPERVISED,
            "Let somebody in who is not inducted, supervised by whoever asks.",
            supervise,
        ),
        Route::act(
            UNTIL,
            "Say until when one stays, or that one stays longer.",
            stay,
        ),
        Route::act(LEAVE, "Say that one has left.", leave),
        Route::act(
            CLOSE,
            "End the presence of somebody who forgot to: it reads as not confirmed.",
            close,
        ),
    ]
}

/// A time of being there.
#[derive(Debug, Serialize, ToSchema)]
pub struct PresenceOut {
    /// Which.
    pub id: Uuid,
    /// Who.
    pub person_id: Uuid,
    /// Their name.
    pub name: String,
    /// The steward who answers for them, by name, where they are not inducted.
    pub supervised_by: Option<String>,
    /// Since when.
    #[schema(format = DateTime)]
    pub arrived_at: String,
    /// When they are taken for gone if they do not say so.
    #[schema(format = DateTime)]
    pub over_at: String,
    /// Until when they said that they stay.
    #[schema(format = DateTime)]
    pub expected_at: Option<String>,
    /// When it ended.
    #[schema(format = DateTime)]
    pub ended_at: Option<String>,
    /// Whether whoever left said so.
    pub is_confirmed: bool,
}

impl PresenceOut {
    /// As JSON has it.
    ///
    /// # Errors
    /// A fault for a moment beyond the calendar.
    pub fn of(presence: Presence) -> Result<Self> {
        Ok(Self {
            id: presence.id,
            person_id: presence.person_id,
            name: presence.name,
            supervised_by: presence.supervisor,
            arrived_at: moment_text(presence.arrived_at)?,
            over_at: moment_text(presence.over_at)?,
            expected_at: presence.expected_at.map(moment_text).transpose()?,
            ended_at: presence.ended_at.map(moment_text).transpose()?,
            is_confirmed: presence.is_confirmed,
        })
    }
}

async fn list(by: By<LookAtBoard>, paging: Paging) -> Result<Page<PresenceOut>> {
    let now = by.app.clock().now();
    let database = by.app.database();
    let all = database.reading(by.permit.scope(), move |tx| {
        Box::pin(store::present(tx, now))
    });
    let page = paging.cut(all.await?, |presence| presence.id.to_string())?;
    page.map(PresenceOut::of)
}

async fn one(by: By<LookAtBoard>, id: Uuid) -> Result<PresenceOut> {
    let now = by.app.clock().now();
    let database = by.app.database();
    let found = database.reading(by.permit.scope(), move |tx| {
        Box::pin(store::presence(tx, id))
    });
    let may_see = |presence: &Presence| {
        presence.is_there(now)
            || presence.person_id == by.permit.person().id
            || by.permit.role() == Role::Steward
    };
    let found = found.await?.filter(may_see);
    PresenceOut::of(found.ok_or(Error::NotFound)?)
}

/// Somebody who comes in.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct ArrivalIn {
    /// Until when they stay; asked for where nobody else is in the room.
    #[schema(format = DateTime)]
    pub expected_at: Option<String>,
}

impl Input for ArrivalIn {
    const NAMES: &'static [(&'static str, &'static str)] = &[("until", "expected_at")];
}

fn until(typed: Option<&str>) -> Result<Option<i64>> {
    let at = typed.map(moment).transpose();
    let at = at.map_err(|no| Error::field("until", no))?;
    Ok(at.map(micros))
}

async fn add(by: Writing<Arrive>, arrival: ArrivalIn) -> Result<Made> {
    let until_us = until(arrival.expected_at.as_deref())?;
    let done = actions::arrive(&by.app, &by.permit, by.key, until_us).await?;
    by.made(&done, "presence", "presences")
}

/// Who is to be let in.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SupervisedIn {
    /// Who.
    pub person_id: Uuid,
    /// Until when they stay; asked for where nobody else is in the room.
    #[schema(format = DateTime)]
    pub expected_at: Option<String>,
}

impl Input for SupervisedIn {
    const NAMES: &'static [(&'static str, &'static str)] =
        &[("person", "person_id"), ("until", "expected_at")];
}

async fn supervise(by: Writing<Supervise>, who: SupervisedIn) -> Result<Made> {
    let new = NewSupervised {
        person_id: who.person_id,
        until_us: until(who.expected_at.as_deref())?,
    };
    let done = actions::supervise(&by.app, &by.permit, by.key, new).await?;
    by.made(&done, "presence", "presences")
}

/// Until when somebody stays.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct StayIn {
    /// Until when.
    #[schema(format = DateTime)]
    pub expected_at: String,
}

impl Input for StayIn {
    const NAMES: &'static [(&'static str, &'static str)] = &[("until", "expected_at")];
}

async fn stay(by: Writing<Arrive>, id: Uuid, stay: StayIn) -> Result<Made> {
    let at = moment(&stay.expected_at).map_err(|no| Error::field("until", no))?;
    let new = NewStay {
        presence_id: Some(id),
        until_us: micros(at),
    };
    let done = actions::stay(&by.app, &by.permit, by.key, new).await?;
    by.made(&done, "presence", "presences")
}

async fn leave(by: Writing<Arrive>, id: Uuid, _: NothingIn) -> Result<Made> {
    let done = actions::leave(&by.app, &by.permit, by.key, Some(id)).await?;
    by.made(&done, "presence", "presences")
}

async fn close(by: Writing<ClosePresence>, id: Uuid, _: NothingIn) -> Result<Made> {
    let done = actions::close(&by.app, &by.permit, by.key, id).await?;
    by.made(&done, "presence", "presences")
}
