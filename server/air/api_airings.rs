//! Airing as JSON.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;
use uuid::Uuid;

use super::actions::{self, AiringOver, NewAiring};
use super::api::before;
use super::input;
use super::store::{self, Airing};
use crate::api::{By, Input, Made, Page, Paging, Route, Writing, moment_text};
use crate::clock::micros;
use crate::error::{Error, Result};
use crate::input::moment;
use crate::rights::{NoteAiring, SeeAir};

const AIRING: &str = "/rooms/{room}/air/{id}/airing";
const AIRINGS: &str = "/rooms/{room}/airings";
const ONE_AIRING: &str = "/rooms/{room}/airings/{id}";
const END: &str = "/rooms/{room}/airings/{id}/end";

/// The routes.
pub(super) fn api() -> Vec<Route> {
    vec![
        Route::act(
            AIRING,
            "Say that a place is aired, or was for so long.",
            air,
        ),
        Route::list(
            AIRINGS,
            "Times of airing, the latest written first.",
            airings,
        ),
        Route::one(ONE_AIRING, "One time of airing.", airing),
        Route::act(END, "Say that an airing is over.", end),
    ]
}

/// A place that is aired, or was.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct AiringIn {
    /// For how long, where it is over.
    #[schema(minimum = 60, maximum = 43_200)]
    pub seconds: Option<i64>,
    /// When it began, where that was not just now; what is over was over just now
    /// otherwise.
    #[schema(format = DateTime)]
    pub happened_at: Option<String>,
}

impl Input for AiringIn {}

fn micros_of(text: Option<&str>) -> Result<Option<i64>> {
    let at = text.map(moment).transpose();
    let at = at.map_err(|problem| Error::field("happened_at", problem))?;
    Ok(at.map(micros))
}

async fn air(by: Writing<NoteAiring>, id: Uuid, airing: AiringIn) -> Result<Made> {
    let seconds = airing.seconds.map(input::aired).transpose();
    let new = NewAiring {
        aired_place_id: id,
        seconds: seconds.map_err(|problem| Error::field("seconds", problem))?,
        happened_at_us: micros_of(airing.happened_at.as_deref())?,
    };
    let done = actions::air(&by.app, &by.permit, by.key, new).await?;
    by.made(&done, "airing", "airings")
}

/// A time that a place was aired.
#[derive(Debug, Serialize, ToSchema)]
pub struct AiringOut {
    /// Which time.
    pub id: Uuid,
    /// Which place.
    pub air_id: Uuid,
    /// When it began.
    #[schema(format = DateTime)]
    pub began_at: String,
    /// Who said so, by name.
    pub began_by: Option<String>,
    /// The number of the entry that said so.
    pub began_seq: i64,
    /// When it was over.
    #[schema(format = DateTime)]
    pub ended_at: Option<String>,
}

impl AiringOut {
    fn of(airing: Airing) -> Result<Self> {
        Ok(Self {
            id: airing.id,
            air_id: airing.place_id,
            began_at: moment_text(airing.began_at)?,
            began_by: airing.began_by,
            began_seq: airing.began_seq,
            ended_at: airing.ended_at.map(moment_text).transpose()?,
        })
    }
}

async fn airings(by: By<SeeAir>, paging: Paging) -> Result<Page<AiringOut>> {
    let (asked, most) = (before(&paging)?, paging.limit + 1);
    let found = by.app.database().reading(by.permit.scope(), move |tx| {
        Box::pin(store::airings(tx, asked, most))
    });
    let page = paging.first_of(found.await?, |airing| airing.began_seq.to_string());
    page.map(AiringOut::of)
}

async fn airing(by: By<SeeAir>, id: Uuid) -> Result<AiringOut> {
    let database = by.app.database();
    let found = database.reading(by.permit.scope(), move |tx| Box::pin(store::airing(tx, id)));
    AiringOut::of(found.await?.ok_or(Error::NotFound)?)
}

/// The end of an airing.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct AiringEndIn {
    /// When, where that was not just now.
    #[schema(format = DateTime)]
    pub happened_at: Option<String>,
}

impl Input for AiringEndIn {}

async fn end(by: Writing<NoteAiring>, id: Uuid, end: AiringEndIn) -> Result<Made> {
    let over = AiringOver {
        ended_airing_id: id,
        happened_at_us: micros_of(end.happened_at.as_deref())?,
    };
    let done = actions::end_airing(&by.app, &by.permit, by.key, over).await?;
    by.made(&done, "airing", "airings")
}
