//! The record of lamps and screens, one lamp with its tests, the form of a test, and
//! taking one back.

use axum::extract::{Path, Query, State};
use axum::response::Response;
use serde::Deserialize;
use time::OffsetDateTime;
use uuid::Uuid;

use super::actions::{UndoFogTest, take_back, test_lamp};
use super::form::{NAMES, read_test};
use super::showing::{about, found, lamp_shown, test_row};
use super::standing::{LampNow, lamps_now};
use super::store::{self, Asked, FogTest};
use super::views::{FogTestForm, FogTestPage, LampPage, LampsPage};
use super::{Lamp, keep_pages};
use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::input::needed_remark;
use crate::logbook::Done;
use crate::problem::Problems;
use crate::rights::{KeepLamps, Right, SeeLamps, TakeBack, TestLamps};
use crate::rooms::{self, Settings};
use crate::router::Pages;
use crate::web::dates::Zone;
use crate::web::desk::{RetiredRow, lying_at, renamed};
use crate::web::fields::Choice;
use crate::web::forms::{Form, in_words, mend, new_key, on_to, page, read_key, to_mend};
use crate::web::frame::Frame;
use crate::web::late;
use crate::web::messages::lamps::TAKE_BACK as TAKE_BACK_WORDS;
use crate::web::shell::{Place, Shell};
use crate::web::views::{ReasonForm, TakeBackPage};

const LAMPS: &str = "/rooms/{room}/lamps";
const LAMP: &str = "/rooms/{room}/lamps/{lamp}";
const TEST: &str = "/rooms/{room}/lamps/{lamp}/test";
const TAKE_BACK: &str = "/rooms/{room}/fog-tests/{test}/take-back";

/// So many tests a page shows of a lamp.
const PAGE: i64 = 50;

/// The routes of these pages.
#[must_use]
pub fn pages() -> Pages {
    Pages::new()
        .get(LAMPS, list)
        .and(keep_pages::pages())
        .get(LAMP, one)
        .get(TEST, test_form)
        .post(TEST, test_send)
        .get(TAKE_BACK, take_back_form)
        .post(TAKE_BACK, take_back_send)
}

/// Everything the pages stand on.
pub(super) struct Ground {
    pub(super) settings: Settings,
    pub(super) zone: Zone,
    pub(super) now: OffsetDateTime,
    lamps: Vec<LampNow>,
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
                        lamps: lamps_now(tx, &zone, now).await?,
                        settings,
                        zone,
                        now,
                    })
                })
            })
            .await
    }

    pub(super) fn lamp(&self, id: Uuid) -> Result<&LampNow> {
        let mut lamps = self.lamps.iter();
        lamps.find(|each| each.lamp.id == id).ok_or(Error::NotFound)
    }
}

pub(super) fn shell<R: Right>(permit: &Permit<R>, frame: &Frame, path: &str) -> Shell {
    lying_at(frame.shell_in(permit, Some(Place::Lamps)), path)
}

fn may<R: Right, S: Right>(permit: &Permit<S>) -> bool {
    R::ROW.roles.contains(&permit.role())
}

async fn list(State(app): State<App>, permit: Permit<SeeLamps>, frame: Frame) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let (retired, in_use): (Vec<&LampNow>, Vec<&LampNow>) =
        ground.lamps.iter().partition(|each| each.lamp.is_retired);
    let shown = in_use.into_iter();
    page(&LampsPage {
        shell: shell(&permit, &frame, "/lamps"),
        lamps: shown
            .map(|each| lamp_shown(each, &ground.settings, &ground.zone))
            .collect(),
        retired: retired.iter().map(|each| retired_row(&each.lamp)).collect(),
        key: new_key()?,
        may_test: may::<TestLamps, _>(&permit),
        may_keep: may::<KeepLamps, _>(&permit),
    })
}

fn retired_row(lamp: &Lamp) -> RetiredRow {
    RetiredRow {
        name: lamp.name.clone(),
        restore: format!("/lamps/{}/restore", lamp.id),
    }
}

/// Which part of a lamp's tests: before the entry of this number.
#[derive(Debug, Default, Deserialize)]
#[serde(default)]
struct Before {
    before: Option<i64>,
}

async fn one(
    State(app): State<App>,
    permit: Permit<SeeLamps>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
    Query(Before { before }): Query<Before>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let lamp = ground.lamp(id)?;
    let tests = tests_of(&app, &permit, id, before).await?;
    page(&lamp_page(&permit, &frame, &ground, lamp, &tests))
}

async fn tests_of(
    app: &App,
    permit: &Permit<SeeLamps>,
    id: Uuid,
    before: Option<i64>,
) -> Result<Vec<FogTest>> {
    let asked = Asked {
        lamp: Some(id),
        before,
        ..Asked::default()
    };
    app.database()
        .reading(permit.scope(), move |tx| {
            Box::pin(store::tests(tx, asked, PAGE))
        })
        .await
}

fn lamp_page(
    permit: &Permit<SeeLamps>,
    frame: &Frame,
    ground: &Ground,
    now: &LampNow,
    tests: &[FogTest],
) -> LampPage {
    let (settings, zone) = (&ground.settings, &ground.zone);
    let is_full = i64::try_from(tests.len()).is_ok_and(|count| count >= PAGE);
    let last = tests.last().filter(|_| is_full);
    let is_retired = now.lamp.is_retired;
    LampPage {
        shell: shell(permit, frame, &format!("/lamps/{}", now.lamp.id)),
        lamp: lamp_shown(now, settings, zone),
        is_retired,
        tests: tests
            .iter()
            .map(|test| test_row(test, settings, zone))
            .collect(),
        older: last.map(|last| format!("?before={}", last.seq)),
        may_test: may::<TestLamps, _>(permit) && !is_retired,
        may_keep: may::<KeepLamps, _>(permit),
        may_take_back: may::<TakeBack, _>(permit),
    }
}

async fn test_form(
    State(app): State<App>,
    permit: Permit<TestLamps>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let form = FogTestForm {
        key: new_key()?,
        when: late::NOW.to_owned(),
        day: ground.zone.date_value(ground.now),
        ..FogTestForm::default()
    };
    let (lamp, none) = (ground.lamp(id)?, Problems::default());
    page(&test_page(&permit, &frame, (&ground, lamp), form, &none))
}

fn test_page(
    permit: &Permit<TestLamps>,
    frame: &Frame,
    (ground, now): (&Ground, &LampNow),
    form: FogTestForm,
    problems: &Problems,
) -> FogTestPage {
    let settings = &ground.settings;
    let classes = now.papers.iter();
    FogTestPage {
        shell: shell(permit, frame, &format!("/lamps/{}/test", now.lamp.id)),
        id: now.lamp.id.to_string(),
        name: now.lamp.name.clone(),
        about: about(now, settings),
        classes: classes
            .map(|class| Choice::new(class.id.to_string(), class.name.clone()))
            .collect(),
        days: late::days(&ground.zone, settings.late_note_minutes, ground.now),
        form,
        problems: in_words(problems, settings.numbers()),
        may_keep: may::<KeepLamps, _>(permit),
    }
}

async fn test_send(
    State(app): State<App>,
    permit: Permit<TestLamps>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<FogTestForm>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let lamp = ground.lamp(id)?;
    let outcome = test_as_typed(&app, &permit, (&ground, id), &form).await;
    let Err(error) = outcome else {
        return Ok(on_to(&app, &permit, &format!("/lamps/{id}")));
    };
    let problems = renamed(&to_mend(error)?, NAMES);
    mend(&test_page(
        &permit,
        &frame,
        (&ground, lamp),
        form,
        &problems,
    ))
}

async fn test_as_typed(
    app: &App,
    permit: &Permit<TestLamps>,
    (ground, id): (&Ground, Uuid),
    form: &FogTestForm,
) -> Result<Done> {
    let new = read_test(form, id, &ground.settings).map_err(Error::Invalid)?;
    test_lamp(app, permit, read_key(&form.key)?, new).await
}

/// A test and its lamp.
async fn kept(app: &App, permit: &Permit<TakeBack>, id: Uuid) -> Result<(Settings, FogTest, Lamp)> {
    app.database()
        .reading(permit.scope(), move |tx| {
            Box::pin(async move {
                let test = store::test(tx, id).await?.ok_or(Error::NotFound)?;
                let lamp = store::lamp(tx, test.lamp_id).await?;
                let lamp = lamp.ok_or(Error::NotFound)?;
                Ok((rooms::settings(tx).await?, test, lamp))
            })
        })
        .await
}

async fn take_back_form(
    State(app): State<App>,
    permit: Permit<TakeBack>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let kept = kept(&app, &permit, id).await?;
    let form = ReasonForm {
        key: new_key()?,
        ..ReasonForm::default()
    };
    let none = Problems::default();
    page(&take_back_page(&permit, &frame, &kept, form, &none)?)
}

fn take_back_page(
    permit: &Permit<TakeBack>,
    frame: &Frame,
    (settings, test, lamp): &(Settings, FogTest, Lamp),
    form: ReasonForm,
    problems: &Problems,
) -> Result<TakeBackPage> {
    let path = format!("/fog-tests/{}/take-back", test.id);
    let shell = shell(permit, frame, &path);
    Ok(TakeBackPage {
        words: TAKE_BACK_WORDS,
        action: shell.at(&path),
        back: shell.at(&format!("/lamps/{}", lamp.id)),
        shell,
        back_name: lamp.name.clone(),
        found: found(test),
        at: settings.time_zone()?.minute_in_full(test.happened_at),
        is_undone: test.undone_by.is_some(),
        form,
        problems: in_words(problems, settings.numbers()),
    })
}

async fn take_back_send(
    State(app): State<App>,
    permit: Permit<TakeBack>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<ReasonForm>,
) -> Result<Response> {
    let kept = kept(&app, &permit, id).await?;
    let Err(error) = take_back_as_typed(&app, &permit, id, &form).await else {
        return Ok(on_to(&app, &permit, &format!("/lamps/{}", kept.2.id)));
    };
    let problems = to_mend(error)?;
    mend(&take_back_page(&permit, &frame, &kept, form, &problems)?)
}

async fn take_back_as_typed(
    app: &App,
    permit: &Permit<TakeBack>,
    fog_test_id: Uuid,
    form: &ReasonForm,
) -> Result<Done> {
    let reason = needed_remark(&form.reason).map_err(|problem| Error::field("reason", problem))?;
    let undo = UndoFogTest {
        fog_test_id,
        reason,
    };
    take_back(app, permit, read_key(&form.key)?, undo).await
}
