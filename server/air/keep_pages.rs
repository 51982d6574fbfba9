//! The pages by which a steward keeps what is known of a place, and lets baths start
//! there without measured exhaust.

use axum::extract::{Path, State};
use axum::response::Response;
use uuid::Uuid;

use super::actions::{NewWaiver, set_air, set_waiver};
use super::form::{of_air, read_air};
use super::pages::{Ground, shell};
use super::views::{AirForm, AirFormPage, WaiverPage, WordsForm};
use super::{AirNow, ExhaustRule};
use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::input::name;
use crate::logbook::{Done, Key};
use crate::problem::Problems;
use crate::rights::KeepAir;
use crate::router::Pages;
use crate::web::fields::Choice;
use crate::web::forms::{Form, in_words, mend, new_key, on_to, page, read_key, to_mend};
use crate::web::frame::Frame;
use crate::web::messages::air as words;

const CHANGE: &str = "/rooms/{room}/air/{space}/change";
const WAIVER: &str = "/rooms/{room}/air/{space}/waiver";
const WITHDRAW: &str = "/rooms/{room}/air/{space}/waiver/withdraw";

/// The routes of these pages.
pub(super) fn pages() -> Pages {
    Pages::new()
        .get(CHANGE, change_form)
        .post(CHANGE, change)
        .get(WAIVER, waiver_form)
        .post(WAIVER, waive)
        .post(WITHDRAW, withdraw)
}

async fn change_form(
    State(app): State<App>,
    permit: Permit<KeepAir>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let place = ground.place(id)?;
    let form = of_air(place.air.as_ref(), new_key()?, &ground.settings);
    let shown = (form, &Problems::default());
    page(&air_page(&permit, &frame, (&ground, place), shown))
}

fn air_page(
    permit: &Permit<KeepAir>,
    frame: &Frame,
    (ground, now): (&Ground, &AirNow),
    (form, problems): (AirForm, &Problems),
) -> AirFormPage {
    let (id, units) = (now.place.id, ground.settings.air_units());
    let rules = ExhaustRule::ALL.into_iter();
    AirFormPage {
        shell: shell(permit, frame, &format!("/air/{id}/change")),
        id: id.to_string(),
        name: words::here(now.place.name.as_deref()).to_owned(),
        rules: rules
            .map(|rule| {
                Choice::new(rule.as_str(), words::rule(rule)).explained(words::rule_hint(rule))
            })
            .collect(),
        area_unit: units.area_unit(),
        height_unit: units.height_unit(),
        flow_unit: units.flow_unit(),
        form,
        problems: in_words(problems, ground.settings.numbers()),
    }
}

async fn change(
    State(app): State<App>,
    permit: Permit<KeepAir>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<AirForm>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    match set_as_typed(&app, &permit, (&ground, id), &form).await {
        Ok(_) => Ok(on_to(&app, &permit, &format!("/air/{id}"))),
        Err(error) => {
            let shown = (form, &to_mend(error)?);
            mend(&air_page(
                &permit,
                &frame,
                (&ground, ground.place(id)?),
                shown,
            ))
        }
    }
}

async fn set_as_typed(
    app: &App,
    permit: &Permit<KeepAir>,
    (ground, id): (&Ground, Uuid),
    form: &AirForm,
) -> Result<Done> {
    let new = read_air(form, id, &ground.settings).map_err(Error::Invalid)?;
    set_air(app, permit, read_key(&form.key)?, new).await
}

async fn waiver_form(
    State(app): State<App>,
    permit: Permit<KeepAir>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let form = WordsForm {
        key: new_key()?,
        ..WordsForm::default()
    };
    let shown = (form, &Problems::default());
    page(&waiver_page(&permit, &frame, (&ground, id), shown)?)
}

fn waiver_page(
    permit: &Permit<KeepAir>,
    frame: &Frame,
    (ground, id): (&Ground, Uuid),
    (form, problems): (WordsForm, &Problems),
) -> Result<WaiverPage> {
    let place = ground.place(id)?;
    let shown = ground.said().place(place)?;
    Ok(WaiverPage {
        shell: shell(permit, frame, &format!("/air/{id}/waiver")),
        id: shown.id,
        name: shown.name,
        starts: shown.starts,
        is_given: place.agreed.is_some(),
        form,
        problems: in_words(problems, ground.settings.numbers()),
    })
}

async fn waive(
    State(app): State<App>,
    permit: Permit<KeepAir>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<WordsForm>,
) -> Result<Response> {
    let key = read_key(&form.key)?;
    let outcome = match name(&form.words) {
        Ok(agreed_by) => set(&app, &permit, id, (key, Some(agreed_by))).await,
        Err(problem) => Err(Error::field("words", problem)),
    };
    shown_again(&app, &permit, &frame, id, (form, outcome)).await
}

async fn withdraw(
    State(app): State<App>,
    permit: Permit<KeepAir>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<WordsForm>,
) -> Result<Response> {
    let key = read_key(&form.key)?;
    let outcome = set(&app, &permit, id, (key, None)).await;
    shown_again(&app, &permit, &frame, id, (form, outcome)).await
}

async fn set(
    app: &App,
    permit: &Permit<KeepAir>,
    place_id: Uuid,
    (key, agreed_by): (Key, Option<String>),
) -> Result<Done> {
    let new = NewWaiver {
        place_id,
        agreed_by,
    };
    set_waiver(app, permit, key, new).await
}

/// On to the place, or the form again with what is to be mended.
async fn shown_again(
    app: &App,
    permit: &Permit<KeepAir>,
    frame: &Frame,
    id: Uuid,
    (form, outcome): (WordsForm, Result<Done>),
) -> Result<Response> {
    let Err(error) = outcome else {
        return Ok(on_to(app, permit, &format!("/air/{id}")));
    };
    let problems = to_mend(error)?;
    let ground = Ground::read(app, permit).await?;
    mend(&waiver_page(
        permit,
        frame,
        (&ground, id),
        (form, &problems),
    )?)
}
