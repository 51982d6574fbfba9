//! The room's checks, and one check with its results.

use axum::extract::{Path, Query, State};
use axum::response::Response;
use serde::Deserialize;
use time::OffsetDateTime;
use uuid::Uuid;

use super::showing::{check_shown, result_row};
use super::standing::{CheckNow, checks_now};
use super::store::{self, Asked, CheckResult};
use super::views::{CheckPage, CheckShown, ChecksPage, FogTestLine};
use super::{RoomCheck, keep_pages, record_pages, starter};
use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::lamps::{self, LampNow};
use crate::rights::{KeepChecks, RecordCheck, Right, SeeChecks, TakeBack};
use crate::rooms::{self, Settings};
use crate::router::Pages;
use crate::web::dates::Zone;
use crate::web::desk::{RetiredRow, lying_at};
use crate::web::forms::{new_key, page};
use crate::web::frame::Frame;
use crate::web::messages::checks as words;
use crate::web::shell::{Place, Shell};

const CHECKS: &str = "/rooms/{room}/checks";
const CHECK: &str = "/rooms/{room}/checks/{check}";

/// So many results a page shows of a check.
const PAGE: i64 = 50;

/// The routes of these pages.
#[must_use]
pub fn pages() -> Pages {
    Pages::new()
        .get(CHECKS, list)
        .and(keep_pages::pages())
        .get(CHECK, one)
        .and(record_pages::pages())
}

/// Everything the pages stand on.
pub(super) struct Ground {
    pub(super) settings: Settings,
    pub(super) zone: Zone,
    pub(super) now: OffsetDateTime,
    checks: Vec<CheckNow>,
}

impl Ground {
    pub(super) async fn read<R: Right>(app: &App, permit: &Permit<R>) -> Result<Self> {
        let now = app.clock().now();
        app.database()
            .reading(permit.scope(), move |tx| {
                Box::pin(async move {
                    let settings = rooms::settings(tx).await?;
                    let zone = settings.time_zone()?;
                    Ok(Self {
                        checks: checks_now(tx, &zone, now).await?,
                        settings,
                        zone,
                        now,
                    })
                })
            })
            .await
    }

    pub(super) fn check(&self, id: Uuid) -> Result<&CheckNow> {
        let mut checks = self.checks.iter();
        let found = checks.find(|each| each.check.id == id);
        found.ok_or(Error::NotFound)
    }

    fn shown(&self, is_wanted: impl Fn(&CheckNow) -> bool) -> Vec<CheckShown> {
        let in_use = self.checks.iter().filter(|each| !each.check.is_retired);
        in_use
            .filter(|each| is_wanted(each))
            .map(|each| check_shown(each, &self.zone, self.settings.numbers()))
            .collect()
    }

    fn kept(&self) -> Vec<RoomCheck> {
        self.checks.iter().map(|each| each.check.clone()).collect()
    }
}

pub(super) fn shell<R: Right>(permit: &Permit<R>, frame: &Frame, path: &str) -> Shell {
    lying_at(frame.shell_in(permit, Some(Place::Checks)), path)
}

fn may<R: Right, S: Right>(permit: &Permit<S>) -> bool {
    R::ROW.roles.contains(&permit.role())
}

async fn list(State(app): State<App>, permit: Permit<SeeChecks>, frame: Frame) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let lamps = lamps_of(&app, &permit, &ground.zone, ground.now).await?;
    page(&ChecksPage {
        shell: shell(&permit, &frame, "/checks"),
        to_do: ground.shown(CheckNow::is_to_do),
        later: ground.shown(|each| !each.is_to_do()),
        fog_tests: fog_tests(&lamps),
        retired: retired(&ground),
        offers_starters: !starter::missing(&ground.kept()).is_empty(),
        key: new_key()?,
        may_record: may::<RecordCheck, _>(&permit),
        may_keep: may::<KeepChecks, _>(&permit),
    })
}

async fn lamps_of(
    app: &App,
    permit: &Permit<SeeChecks>,
    zone: &Zone,
    now: OffsetDateTime,
) -> Result<Vec<LampNow>> {
    let zone = zone.clone();
    app.database()
        .reading(permit.scope(), move |tx| {
            Box::pin(async move { lamps::lamps_now(tx, &zone, now).await })
        })
        .await
}

fn fog_tests(lamps: &[LampNow]) -> Vec<FogTestLine> {
    let lines = lamps::next_tests(lamps).map(|(lamp, said)| FogTestLine {
        lamp: lamp.id.to_string(),
        name: lamp.name.clone(),
        said,
    });
    lines.collect()
}

fn retired(ground: &Ground) -> Vec<RetiredRow> {
    let retired = ground.checks.iter().filter(|each| each.check.is_retired);
    let rows = retired.map(|each| RetiredRow {
        name: each.check.name.clone(),
        restore: format!("/checks/{}/restore", each.check.id),
    });
    rows.collect()
}

/// Which part of a check's results: before the entry of this number.
#[derive(Debug, Default, Deserialize)]
#[serde(default)]
struct Before {
    before: Option<i64>,
}

async fn one(
    State(app): State<App>,
    permit: Permit<SeeChecks>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
    Query(Before { before }): Query<Before>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let now = ground.check(id)?;
    let results = results_of(&app, &permit, id, before).await?;
    page(&check_page(&permit, &frame, &ground, now, &results))
}

async fn results_of(
    app: &App,
    permit: &Permit<SeeChecks>,
    id: Uuid,
    before: Option<i64>,
) -> Result<Vec<CheckResult>> {
    let asked = Asked {
        check: Some(id),
        before,
        ..Asked::default()
    };
    app.database()
        .reading(permit.scope(), move |tx| {
            Box::pin(store::results(tx, asked, PAGE))
        })
        .await
}

fn check_page(
    permit: &Permit<SeeChecks>,
    frame: &Frame,
    ground: &Ground,
    now: &CheckNow,
    results: &[CheckResult],
) -> CheckPage {
    let (zone, numbers) = (&ground.zone, ground.settings.numbers());
    let is_full = i64::try_from(results.len()).is_ok_and(|count| count >= PAGE);
    let last = results.last().filter(|_| is_full);
    let check = &now.check;
    let rows = results.iter();
    let limit = |measure| words::limit(measure, numbers);
    CheckPage {
        shell: shell(permit, frame, &format!("/checks/{}", check.id)),
        check: check_shown(now, zone, numbers),
        how: check.how.clone(),
        on_failure: check.on_failure.clone(),
        limit: check.measure.as_ref().map(limit),
        basis: check.basis.clone(),
        is_on_board: check.is_on_board,
        is_retired: check.is_retired,
        results: rows.map(|row| result_row(row, zone, numbers)).collect(),
        older: last.map(|last| format!("?before={}", last.seq)),
        may_record: may::<RecordCheck, _>(permit) && !check.is_retired,
        may_keep: may::<KeepChecks, _>(permit),
        may_take_back: may::<TakeBack, _>(permit),
    }
}
