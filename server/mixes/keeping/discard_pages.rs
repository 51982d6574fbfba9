//! The page to discard a mix.

use axum::extract::{Path, State};
use axum::response::Response;
use time::OffsetDateTime;
use uuid::Uuid;

use super::containers::{self, Offered, offered};
use super::outlook::{self, Outlook, bath, by_field};
use super::views::{DiscardForm, DiscardPage};
use crate::app::App;
use crate::darkroom::verdict::{Judgement, Reason};
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::mixes::actions::{Ground, NewDiscard, discard};
use crate::mixes::{Why, cautions, input};
use crate::problem::{Problem, Problems};
use crate::rights::{Discard, Role};
use crate::rooms::Settings;
use crate::router::Pages;
use crate::web::desk::lying_at;
use crate::web::forms::{Form, in_words, mend, new_key, on_to, page, read_key, to_mend};
use crate::web::frame::Frame;
use crate::web::late;
use crate::web::messages::bench as bench_words;
use crate::web::shell::Place;

const DISCARD: &str = "/rooms/{room}/mixes/{mix}/discard";

pub(super) fn pages() -> Pages {
    Pages::new().get(DISCARD, form).post(DISCARD, send)
}

/// The mix, and where it may go.
struct Seen {
    ground: Ground,
    judgement: Judgement,
    offered: Vec<Offered>,
}

async fn see(app: &App, permit: &Permit<Discard>, id: Uuid) -> Result<Seen> {
    let now = app.clock().now();
    app.database()
        .reading(permit.scope(), move |tx| {
            Box::pin(async move {
                let ground = Ground::seen(tx, id).await?;
                let found = Outlook::of(tx, ground.mix.clone(), &ground.settings, now).await?;
                Ok(Seen {
                    offered: offered(tx, &ground.mix, &ground.settings).await?,
                    judgement: found.judgement,
                    ground,
                })
            })
        })
        .await
}

async fn form(
    State(app): State<App>,
    permit: Permit<Discard>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let seen = see(&app, &permit, id).await?;
    let form = DiscardForm {
        key: new_key()?,
        ..as_it_is(&seen)
    };
    let now = app.clock().now();
    page(&shown(
        &permit,
        &frame,
        seen,
        form,
        &Problems::default(),
        now,
    )?)
}

/// All that stands there, for the reason that its verdict gives.
fn as_it_is(seen: &Seen) -> DiscardForm {
    let is_contaminated = |reason: &Reason| matches!(reason, Reason::Contaminated(_));
    let why = match seen.judgement.reasons.iter().any(is_contaminated) {
        true => Why::Contaminated,
        false => Why::Spent,
    };
    let numbers = seen.ground.settings.numbers();
    DiscardForm {
        volume: numbers.decimal(seen.ground.mix.level_ul(), 6),
        why: why.as_str().to_owned(),
        ..DiscardForm::default()
    }
}

async fn send(
    State(app): State<App>,
    permit: Permit<Discard>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<DiscardForm>,
) -> Result<Response> {
    match as_typed(&app, &permit, id, &form).await {
        Ok(path) => Ok(on_to(&app, &permit, &path)),
        Err(error) => {
            let (problems, seen) = (to_mend(error)?, see(&app, &permit, id).await?);
            let beside = containers::beside(&problems, &form.collected);
            let (problems, now) = (by_field(&problems, beside), app.clock().now());
            mend(&shown(&permit, &frame, seen, form, &problems, now)?)
        }
    }
}

/// Discards, and answers the page of the tray or bottle that is empty now.
async fn as_typed(
    app: &App,
    permit: &Permit<Discard>,
    mix_id: Uuid,
    form: &DiscardForm,
) -> Result<String> {
    let settings = outlook::settings(app, permit).await?;
    let new = read(form, mix_id, &settings)?.map_err(Error::Invalid)?;
    let done = discard(app, permit, read_key(&form.key)?, new).await?;
    match done.id("bottle") {
        Ok(bottle) => Ok(format!("/bottles/{bottle}")),
        Err(_) => Ok(format!("/trays/{}", done.id("tray")?)),
    }
}

fn read(
    form: &DiscardForm,
    mix_id: Uuid,
    settings: &Settings,
) -> Result<Result<NewDiscard, Problems>> {
    let zone = settings.time_zone()?;
    let mut problems = Problems::default();
    let container = containers::read(&form.collected, &form.container);
    let container = problems.take("container", container);
    let volume = settings.numbers().read_litres(&form.volume);
    let volume = volume.map_err(Problem::Number).and_then(input::poured_off);
    let volume = problems.take("volume", volume);
    let why = Why::parse(&form.why).ok_or(Problem::NotAChoice);
    let why = problems.take("why", why);
    let at = late::read(&zone, &form.when, &form.day, &form.time);
    let at = problems.take("time", at);
    if form.confirmed != "yes" {
        problems.add("confirmed", Problem::NotConfirmed);
    }
    Ok(match (container, volume, why, at) {
        (Some(container), Some(volume_ul), Some(why), Some(happened_at_us))
            if problems.is_empty() =>
        {
            Ok(NewDiscard {
                mix_id,
                volume_ul,
                container,
                why,
                happened_at_us,
            })
        }
        _ => Err(problems),
    })
}

fn shown(
    permit: &Permit<Discard>,
    frame: &Frame,
    seen: Seen,
    form: DiscardForm,
    problems: &Problems,
    now: OffsetDateTime,
) -> Result<DiscardPage> {
    let settings = &seen.ground.settings;
    let mix = &seen.ground.mix;
    let shell = frame.shell_in(permit, Some(Place::Board));
    let mut cautions = cautions(&mix.hazard_codes);
    cautions.push(bench_words::CONTAINERS.to_owned());
    Ok(DiscardPage {
        shell: lying_at(shell, &format!("/mixes/{}/discard", mix.id)),
        bath: bath(&seen.ground, &seen.judgement, now)?,
        is_left_alone: mix.product_id.is_none() && permit.role() != Role::Steward,
        days: late::days(&settings.time_zone()?, settings.late_note_minutes, now),
        problems: in_words(problems, settings.numbers()),
        containers: containers::choices(&seen.offered),
        cautions,
        form,
    })
}
