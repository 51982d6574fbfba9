//! The pages that say what is off, and take that it is.

use axum::extract::{Path, Query, State};
use axum::response::Response;
use serde::Deserialize;
use time::OffsetDateTime;
use uuid::Uuid;

use super::actions::{NewOutage, OutageOver, begin, end};
use super::store;
use super::views::{EndPage, OffRow, OutageForm, OutagesPage, PastRow};
use super::{Outage, What};
use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::{Done, Key};
use crate::problem::{Problem, Problems};
use crate::rights::{LookAtBoard, NoteOutages, Right};
use crate::rooms::{self, Settings};
use crate::router::Pages;
use crate::web::dates::Zone;
use crate::web::desk::{lying_at, renamed};
use crate::web::fields::Choice;
use crate::web::forms::{Form, in_words, mend, new_key, on_to, page, read_key, to_mend};
use crate::web::frame::Frame;
use crate::web::late;
use crate::web::messages::outages as words;
use crate::web::shell::{Place, Shell};

/// So many a page shows of what was off.
const PAGE: i64 = 50;

/// The routes of these pages.
#[must_use]
pub fn pages() -> Pages {
    Pages::new()
        .get("/rooms/{room}/outages", outages)
        .post("/rooms/{room}/outages", begin_send)
        .get("/rooms/{room}/outages/{outage}/end", end_form)
        .post("/rooms/{room}/outages/{outage}/end", end_send)
}

/// Which part of the list: before the entry of this number.
#[derive(Debug, Default, Deserialize)]
#[serde(default)]
struct Before {
    before: Option<i64>,
}

/// Everything the page of all of them stands on.
struct Ground {
    settings: Settings,
    off: Vec<Outage>,
    past: Vec<Outage>,
    now: OffsetDateTime,
}

impl Ground {
    async fn read<R: Right>(app: &App, permit: &Permit<R>, before: Option<i64>) -> Result<Self> {
        let now = app.clock().now();
        app.database()
            .reading(permit.scope(), move |tx| {
                Box::pin(async move {
                    Ok(Self {
                        settings: rooms::settings(tx).await?,
                        off: store::open(tx).await?,
                        past: store::list(tx, before, PAGE).await?,
                        now,
                    })
                })
            })
            .await
    }
}

fn shell<R: Right>(permit: &Permit<R>, frame: &Frame, path: &str) -> Shell {
    lying_at(frame.shell_in(permit, Some(Place::Outages)), path)
}

fn empty_form(days: &[Choice]) -> Result<OutageForm> {
    Ok(OutageForm {
        key: new_key()?,
        when: "now".to_owned(),
        day: days
            .first()
            .map_or_else(String::new, |day| day.value.clone()),
        ..OutageForm::default()
    })
}

async fn outages(
    State(app): State<App>,
    permit: Permit<LookAtBoard>,
    frame: Frame,
    Query(Before { before }): Query<Before>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit, before).await?;
    let form = empty_form(&days(&ground.settings, ground.now)?)?;
    let none = Problems::default();
    page(&outages_page(&permit, &frame, &ground, form, &none)?)
}

fn outages_page<R: Right>(
    permit: &Permit<R>,
    frame: &Frame,
    ground: &Ground,
    form: OutageForm,
    problems: &Problems,
) -> Result<OutagesPage> {
    let (settings, now) = (&ground.settings, ground.now);
    let zone = settings.time_zone()?;
    let whats = What::ALL.into_iter();
    let past = ground.past.iter();
    let is_full = i64::try_from(ground.past.len()).is_ok_and(|count| count >= PAGE);
    let last = ground.past.last().filter(|_| is_full);
    let mut shell = shell(permit, frame, "/outages");
    // This page says it itself, with the button that ends it.
    shell.off.clear();
    Ok(OutagesPage {
        shell,
        off: ground
            .off
            .iter()
            .map(|off| off_row(off, &zone, now))
            .collect(),
        advice: words::ADVICE,
        past: past.filter_map(|was| past_row(was, &zone, now)).collect(),
        older: last.map(|last| format!("?before={}", last.began_seq)),
        whats: whats
            .map(|what| {
                Choice::new(what.as_str(), words::choice(what)).explained(words::choice_hint(what))
            })
            .collect(),
        days: days(settings, now)?,
        form,
        problems: in_words(problems, settings.numbers()),
        may_note: NoteOutages::ROW.roles.contains(&permit.role()),
    })
}

fn off_row(off: &Outage, zone: &Zone, now: OffsetDateTime) -> OffRow {
    OffRow {
        id: off.id.to_string(),
        sentence: words::off_since(off.what, &zone.words(off.began_at, now).words),
        name: words::name(off.what),
        said_by: words::said_by(off.began_by.as_deref(), None),
    }
}

fn past_row(was: &Outage, zone: &Zone, now: OffsetDateTime) -> Option<PastRow> {
    let from = zone.words(was.began_at, now).words;
    let until = zone.words(was.ended_at?, now).words;
    Some(PastRow {
        seq: was.began_seq,
        at: zone.words(was.began_at, now),
        sentence: words::off_until(was.what, &from, &until),
        said_by: words::said_by(was.began_by.as_deref(), was.ended_by.as_deref()),
    })
}

/// The days that may be named, today first.
fn days(settings: &Settings, now: OffsetDateTime) -> Result<Vec<Choice>> {
    Ok(late::days(
        &settings.time_zone()?,
        settings.late_note_minutes,
        now,
    ))
}

async fn begin_send(
    State(app): State<App>,
    permit: Permit<NoteOutages>,
    frame: Frame,
    Form(form): Form<OutageForm>,
) -> Result<Response> {
    let key = read_key(&form.key)?;
    match begin_as_typed(&app, &permit, key, &form).await {
        Ok(_) => Ok(on_to(&app, &permit, "/outages")),
        Err(error) => {
            let problems = renamed(&to_mend(error)?, BESIDE);
            let ground = Ground::read(&app, &permit, None).await?;
            mend(&outages_page(&permit, &frame, &ground, form, &problems)?)
        }
    }
}

async fn begin_as_typed(
    app: &App,
    permit: &Permit<NoteOutages>,
    key: Key,
    form: &OutageForm,
) -> Result<Done> {
    let mut problems = Problems::default();
    let what = What::parse(&form.what).ok_or(Problem::NotAChoice);
    let what = problems.take("what", what);
    let at = problems.take("time", when(app, permit, form).await?);
    match (what, at) {
        (Some(what), Some(happened_at_us)) => {
            let new = NewOutage {
                what,
                space_id: None,
                happened_at_us,
            };
            begin(app, permit, key, new).await
        }
        _ => Err(Error::Invalid(problems)),
    }
}

/// When, in microseconds since 1970; nothing for just now.
async fn when<R: Right>(
    app: &App,
    permit: &Permit<R>,
    form: &OutageForm,
) -> Result<Result<Option<i64>, Problem>> {
    if form.when != late::EARLIER {
        return Ok(Ok(None));
    }
    let settings = app
        .database()
        .reading(permit.scope(), |tx| Box::pin(rooms::settings(tx)))
        .await?;
    let zone = settings.time_zone()?;
    Ok(late::read(&zone, &form.when, &form.day, &form.time))
}

/// What is wrong with the moment stands beside the field for its time.
const BESIDE: &[(&str, &str)] = &[("happened_at", "time")];

async fn end_form(
    State(app): State<App>,
    permit: Permit<NoteOutages>,
    frame: Frame,
    Path((_, outage)): Path<(String, Uuid)>,
) -> Result<Response> {
    page(&end_page(&app, &permit, &frame, outage, None).await?)
}

/// The page that asks when it was over; with what was typed, where it is shown
/// again.
async fn end_page(
    app: &App,
    permit: &Permit<NoteOutages>,
    frame: &Frame,
    id: Uuid,
    typed: Option<(OutageForm, Problems)>,
) -> Result<EndPage> {
    let now = app.clock().now();
    let (settings, outage) = app
        .database()
        .reading(permit.scope(), move |tx| {
            Box::pin(async move { Ok((rooms::settings(tx).await?, store::outage(tx, id).await?)) })
        })
        .await?;
    let outage = outage.ok_or(Error::NotFound)?;
    let (zone, days) = (settings.time_zone()?, days(&settings, now)?);
    let (form, problems) = match typed {
        Some(typed) => typed,
        None => (empty_form(&days)?, Problems::default()),
    };
    let of = |at| zone.words(at, now).words;
    let since = of(outage.began_at);
    Ok(EndPage {
        shell: shell(permit, frame, &format!("/outages/{id}/end")),
        id: id.to_string(),
        name: words::name(outage.what),
        sentence: match outage.ended_at {
            None => words::off_since(outage.what, &since),
            Some(until) => words::off_until(outage.what, &since, &of(until)),
        },
        is_over: outage.ended_at.is_some(),
        days,
        form,
        problems: in_words(&problems, settings.numbers()),
    })
}

async fn end_send(
    State(app): State<App>,
    permit: Permit<NoteOutages>,
    frame: Frame,
    Path((_, outage)): Path<(String, Uuid)>,
    Form(form): Form<OutageForm>,
) -> Result<Response> {
    let key = read_key(&form.key)?;
    match end_as_typed(&app, &permit, key, outage, &form).await {
        Ok(_) => Ok(on_to(&app, &permit, "/outages")),
        Err(error) => {
            let typed = (form, renamed(&to_mend(error)?, BESIDE));
            mend(&end_page(&app, &permit, &frame, outage, Some(typed)).await?)
        }
    }
}

async fn end_as_typed(
    app: &App,
    permit: &Permit<NoteOutages>,
    key: Key,
    outage: Uuid,
    form: &OutageForm,
) -> Result<Done> {
    let at = when(app, permit, form).await?;
    let over = OutageOver {
        ended_outage_id: outage,
        happened_at_us: at.map_err(|problem| Error::field("time", problem))?,
    };
    end(app, permit, key, over).await
}
