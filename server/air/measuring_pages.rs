//! The pages by which a measured flow is recorded and taken back.

use axum::extract::{Path, State};
use axum::response::Response;
use uuid::Uuid;

use super::actions::{UndoMeasurement, measure, take_back};
use super::form::read_measurement;
use super::pages::{Ground, shell};
use super::store::{self, Measurement};
use super::views::{MeasureForm, MeasurePage, TakeBackPage, WordsForm};
use super::{AirNow, FlowOf};
use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::Done;
use crate::mixes::readings::input::reason;
use crate::problem::Problems;
use crate::rights::{KeepAir, TakeBack};
use crate::router::Pages;
use crate::web::desk::renamed;
use crate::web::fields::Choice;
use crate::web::forms::{Form, in_words, mend, new_key, on_to, page, read_key, to_mend};
use crate::web::frame::Frame;
use crate::web::messages::air as words;

const MEASURE: &str = "/rooms/{room}/air/{space}/measure";
const TAKE_BACK: &str = "/rooms/{room}/air-measurements/{measurement}/take-back";

/// The routes of these pages.
pub(super) fn pages() -> Pages {
    Pages::new()
        .get(MEASURE, measure_form)
        .post(MEASURE, measure_send)
        .get(TAKE_BACK, take_back_form)
        .post(TAKE_BACK, take_back_send)
}

/// The flows that can be measured in a place: exhaust where a fan makes some.
fn flows(place: &AirNow) -> Vec<Choice> {
    let flows = FlowOf::ALL.into_iter();
    flows
        .filter(|of| *of != FlowOf::Exhaust || place.has_fan())
        .map(|of| Choice::new(of.as_str(), words::flow_of(of)).explained(words::flow_of_hint(of)))
        .collect()
}

async fn measure_form(
    State(app): State<App>,
    permit: Permit<KeepAir>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let place = ground.place(id)?;
    let first = flows(place).into_iter().next();
    let form = MeasureForm {
        key: new_key()?,
        of: first.map_or_else(String::new, |first| first.value),
        measured_on: ground.zone.date_value(ground.now),
        ..MeasureForm::default()
    };
    let shown = (form, &Problems::default());
    page(&measure_page(&permit, &frame, (&ground, place), shown))
}

fn measure_page(
    permit: &Permit<KeepAir>,
    frame: &Frame,
    (ground, now): (&Ground, &AirNow),
    (form, problems): (MeasureForm, &Problems),
) -> MeasurePage {
    let id = now.place.id;
    MeasurePage {
        shell: shell(permit, frame, &format!("/air/{id}/measure")),
        id: id.to_string(),
        name: words::here(now.place.name.as_deref()).to_owned(),
        flows: flows(now),
        flow_unit: ground.settings.air_units().flow_unit(),
        form,
        problems: in_words(problems, ground.settings.numbers()),
    }
}

async fn measure_send(
    State(app): State<App>,
    permit: Permit<KeepAir>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<MeasureForm>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let place = ground.place(id)?;
    let outcome = measure_as_typed(&app, &permit, (&ground, id), &form).await;
    let Err(error) = outcome else {
        return Ok(on_to(&app, &permit, &format!("/air/{id}")));
    };
    let shown = (form, &to_mend(error)?);
    mend(&measure_page(&permit, &frame, (&ground, place), shown))
}

async fn measure_as_typed(
    app: &App,
    permit: &Permit<KeepAir>,
    (ground, id): (&Ground, Uuid),
    form: &MeasureForm,
) -> Result<Done> {
    let new = read_measurement(form, id, &ground.settings).map_err(Error::Invalid)?;
    measure(app, permit, read_key(&form.key)?, new).await
}

/// A measurement and what is around it.
async fn kept(app: &App, permit: &Permit<TakeBack>, id: Uuid) -> Result<(Ground, Measurement)> {
    let database = app.database();
    let found = database.reading(permit.scope(), move |tx| {
        Box::pin(store::measurement(tx, id))
    });
    let found = found.await?.ok_or(Error::NotFound)?;
    Ok((Ground::read(app, permit).await?, found))
}

async fn take_back_form(
    State(app): State<App>,
    permit: Permit<TakeBack>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let kept = kept(&app, &permit, id).await?;
    let form = WordsForm {
        key: new_key()?,
        ..WordsForm::default()
    };
    let none = Problems::default();
    page(&take_back_page(&permit, &frame, &kept, form, &none))
}

fn take_back_page(
    permit: &Permit<TakeBack>,
    frame: &Frame,
    (ground, measured): &(Ground, Measurement),
    form: WordsForm,
    problems: &Problems,
) -> TakeBackPage {
    let path = format!("/air-measurements/{}/take-back", measured.id);
    let row = ground.said().measured_row(measured);
    let place = ground.place(measured.place_id).ok();
    let name = place.and_then(|place| place.place.name.as_deref());
    TakeBackPage {
        shell: shell(permit, frame, &path),
        id: measured.id.to_string(),
        back: ground.path(measured.place_id),
        name: words::here(name).to_owned(),
        found: format!("{} {}. {}", row.said, row.at, row.more),
        is_undone: measured.undone_by.is_some(),
        form,
        problems: in_words(problems, ground.settings.numbers()),
    }
}

async fn take_back_send(
    State(app): State<App>,
    permit: Permit<TakeBack>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<WordsForm>,
) -> Result<Response> {
    let kept = kept(&app, &permit, id).await?;
    let Err(error) = take_back_as_typed(&app, &permit, id, &form).await else {
        return Ok(on_to(&app, &permit, &kept.0.path(kept.1.place_id)));
    };
    let problems = renamed(&to_mend(error)?, &[("reason", "words")]);
    mend(&take_back_page(&permit, &frame, &kept, form, &problems))
}

async fn take_back_as_typed(
    app: &App,
    permit: &Permit<TakeBack>,
    flow_measurement_id: Uuid,
    form: &WordsForm,
) -> Result<Done> {
    let reason = reason(&form.words).map_err(|problem| Error::field("words", problem))?;
    let undo = UndoMeasurement {
        flow_measurement_id,
        reason,
    };
    take_back(app, permit, read_key(&form.key)?, undo).await
}
