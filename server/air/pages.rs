//! The places of the room, and one of them with its history.

use axum::extract::{Path, Query, State};
use axum::response::Response;
use serde::Deserialize;
use time::OffsetDateTime;
use uuid::Uuid;

use super::showing::Said;
use super::standing::{AirNow, air_now};
use super::store::{self, Airing, Asked, Measurement};
use super::views::{AirPage, PlacePage};
use super::{airing_pages, keep_pages, measuring_pages};
use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::rights::{KeepAir, NoteAiring, Right, SeeAir, TakeBack};
use crate::rooms::{self, Settings};
use crate::router::Pages;
use crate::web::dates::Zone;
use crate::web::desk::lying_at;
use crate::web::forms::{new_key, page};
use crate::web::frame::Frame;
use crate::web::shell::{self, Shell};

const AIR: &str = "/rooms/{room}/air";
const PLACE: &str = "/rooms/{room}/air/{space}";

/// So many measurements, and so many airings, a page shows of a place.
const PAGE: i64 = 30;

/// The routes of these pages.
#[must_use]
pub fn pages() -> Pages {
    Pages::new()
        .get(AIR, list)
        .get(PLACE, one)
        .and(keep_pages::pages())
        .and(measuring_pages::pages())
        .and(airing_pages::pages())
}

/// Everything the pages stand on.
pub(super) struct Ground {
    pub(super) settings: Settings,
    pub(super) zone: Zone,
    pub(super) now: OffsetDateTime,
    pub(super) places: Vec<AirNow>,
}

impl Ground {
    pub(super) async fn read<R: Right>(app: &App, permit: &Permit<R>) -> Result<Self> {
        let now = app.clock().now();
        app.database()
            .reading(permit.scope(), move |tx| {
                Box::pin(async move {
                    let settings = rooms::settings(tx).await?;
                    Ok(Self {
                        zone: settings.time_zone()?,
                        places: air_now(tx, now).await?,
                        settings,
                        now,
                    })
                })
            })
            .await
    }

    /// The place of an id.
    pub(super) fn place(&self, id: Uuid) -> Result<&AirNow> {
        let mut places = self.places.iter();
        let found = places.find(|each| each.place.id == id);
        found.ok_or(Error::NotFound)
    }

    /// The page of a place, below the room: a space that is used no more has none.
    pub(super) fn path(&self, id: Uuid) -> String {
        match self.place(id) {
            Ok(_) => format!("/air/{id}"),
            Err(_) => "/air".to_owned(),
        }
    }

    /// How what is known of a place is written.
    pub(super) fn said(&self) -> Said<'_> {
        Said {
            settings: &self.settings,
            zone: &self.zone,
            now: self.now,
        }
    }
}

pub(super) fn shell<R: Right>(permit: &Permit<R>, frame: &Frame, path: &str) -> Shell {
    lying_at(frame.shell_in(permit, Some(shell::Place::Air)), path)
}

fn may<R: Right, S: Right>(permit: &Permit<S>) -> bool {
    R::ROW.roles.contains(&permit.role())
}

async fn list(State(app): State<App>, permit: Permit<SeeAir>, frame: Frame) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let said = ground.said();
    let places = ground.places.iter().map(|place| said.place(place));
    page(&AirPage {
        shell: shell(&permit, &frame, "/air"),
        places: places.collect::<Result<Vec<_>>>()?,
        key: new_key()?,
        may_air: may::<NoteAiring, _>(&permit),
    })
}

/// Which part of a place's history: before the entry of this number.
#[derive(Debug, Default, Deserialize)]
#[serde(default)]
struct Before {
    before: Option<i64>,
}

/// What was measured in a place, and when it was aired.
type History = (Vec<Measurement>, Vec<Airing>);

async fn one(
    State(app): State<App>,
    permit: Permit<SeeAir>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
    Query(Before { before }): Query<Before>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let place = ground.place(id)?;
    let history = history(&app, &permit, id, before).await?;
    page(&place_page(&permit, &frame, (&ground, place), &history)?)
}

async fn history(
    app: &App,
    permit: &Permit<SeeAir>,
    id: Uuid,
    before: Option<i64>,
) -> Result<History> {
    let asked = Asked {
        place: Some(id),
        before,
        ..Asked::default()
    };
    app.database()
        .reading(permit.scope(), move |tx| {
            Box::pin(async move {
                let measured = store::measurements(tx, asked, PAGE).await?;
                Ok((measured, store::airings(tx, asked, PAGE).await?))
            })
        })
        .await
}

/// Before which entry the rest of a history lies: where either list is full, the later
/// of its ends, so that nothing is passed over.
fn rest_of((measured, aired): &History) -> Option<i64> {
    let is_full = |count: usize| i64::try_from(count).is_ok_and(|count| count >= PAGE);
    let measured = measured.last().filter(|_| is_full(measured.len()));
    let aired = aired.last().filter(|_| is_full(aired.len()));
    let ends = [
        measured.map(|last| last.seq),
        aired.map(|last| last.began_seq),
    ];
    ends.into_iter().flatten().max()
}

fn place_page(
    permit: &Permit<SeeAir>,
    frame: &Frame,
    (ground, place): (&Ground, &AirNow),
    history: &History,
) -> Result<PlacePage> {
    let (said, rest) = (ground.said(), rest_of(history));
    // What is before that is on the next page.
    let is_here = |seq: i64| rest.is_none_or(|rest| seq >= rest);
    let measured = history.0.iter().filter(|each| is_here(each.seq));
    let aired = history.1.iter().filter(|each| is_here(each.began_seq));
    Ok(PlacePage {
        shell: shell(permit, frame, &format!("/air/{}", place.place.id)),
        place: said.place(place)?,
        measured: measured.map(|each| said.measured_row(each)).collect(),
        aired: aired.map(|each| said.aired_row(each)).collect(),
        older: rest.map(|rest| format!("?before={rest}")),
        key: new_key()?,
        may_air: may::<NoteAiring, _>(permit),
        may_keep: may::<KeepAir, _>(permit),
        may_take_back: may::<TakeBack, _>(permit),
    })
}
