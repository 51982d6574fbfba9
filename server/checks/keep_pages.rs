//! The pages by which a steward adds, changes and retires checks.

use axum::extract::{Path, State};
use axum::response::Response;
use uuid::Uuid;

use super::RoomCheck;
use super::actions::{CopyStarters, NewCheck, copy_starters, set_check};
use super::form::{of_check, read_check};
use super::pages::{Ground, shell};
use super::views::{CheckForm, CheckFormPage};
use crate::app::App;
use crate::bench::spaces::{self, Space};
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::Done;
use crate::problem::Problems;
use crate::rights::KeepChecks;
use crate::router::Pages;
use crate::web::desk::{KeyForm, ask};
use crate::web::forms::{Form, in_words, mend, new_key, on_to, page, read_key, to_mend};
use crate::web::frame::Frame;
use crate::web::messages::checks as words;

const CHECKS: &str = "/rooms/{room}/checks";

/// The routes of these pages.
pub(super) fn pages() -> Pages {
    let at = |path: &str| format!("{CHECKS}{path}");
    Pages::new()
        .get(&at("/new"), new_form)
        .post(CHECKS, add)
        .post(&at("/starters"), copy)
        .get(&at("/{check}/change"), form)
        .post(&at("/{check}/change"), change)
        .get(&at("/{check}/retire"), ask_first)
        .post(&at("/{check}/retire"), retire)
        .post(&at("/{check}/restore"), restore)
}

async fn copy(
    State(app): State<App>,
    permit: Permit<KeepChecks>,
    Form(form): Form<KeyForm>,
) -> Result<Response> {
    copy_starters(&app, &permit, read_key(&form.key)?, CopyStarters {}).await?;
    Ok(on_to(&app, &permit, "/checks"))
}

async fn spaces_of(app: &App, permit: &Permit<KeepChecks>) -> Result<Vec<Space>> {
    app.database()
        .reading(permit.scope(), |tx| Box::pin(spaces::spaces(tx)))
        .await
}

/// The form of a check, or of a new one where there is none yet.
async fn form_page(
    app: &App,
    permit: &Permit<KeepChecks>,
    frame: &Frame,
    (ground, check): (&Ground, Option<&RoomCheck>),
    (form, problems): (CheckForm, &Problems),
) -> Result<CheckFormPage> {
    let spaces = spaces_of(app, permit).await?;
    let path = check.map_or_else(
        || "/checks/new".to_owned(),
        |check| format!("/checks/{}/change", check.id),
    );
    Ok(CheckFormPage {
        shell: shell(permit, frame, &path),
        id: check.map(|check| check.id.to_string()),
        spaces: spaces::choices(&spaces, check.and_then(|check| check.space_id)),
        form,
        problems: in_words(problems, ground.settings.numbers()),
    })
}

async fn new_form(
    State(app): State<App>,
    permit: Permit<KeepChecks>,
    frame: Frame,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let form = CheckForm {
        key: new_key()?,
        ..CheckForm::default()
    };
    let shown = (form, &Problems::default());
    page(&form_page(&app, &permit, &frame, (&ground, None), shown).await?)
}

async fn set_as_typed(
    app: &App,
    permit: &Permit<KeepChecks>,
    (ground, old): (&Ground, Option<&RoomCheck>),
    form: &CheckForm,
) -> Result<Done> {
    let new = read_check(form, old, ground.settings.numbers()).map_err(Error::Invalid)?;
    set_check(app, permit, read_key(&form.key)?, new).await
}

async fn add(
    State(app): State<App>,
    permit: Permit<KeepChecks>,
    frame: Frame,
    Form(form): Form<CheckForm>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    match set_as_typed(&app, &permit, (&ground, None), &form).await {
        Ok(done) => Ok(to_check(&app, &permit, done.id("room_check")?)),
        Err(error) => {
            let shown = (form, &to_mend(error)?);
            mend(&form_page(&app, &permit, &frame, (&ground, None), shown).await?)
        }
    }
}

fn to_check(app: &App, permit: &Permit<KeepChecks>, id: Uuid) -> Response {
    on_to(app, permit, &format!("/checks/{id}"))
}

async fn form(
    State(app): State<App>,
    permit: Permit<KeepChecks>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let check = &ground.check(id)?.check;
    let form = of_check(check, new_key()?, ground.settings.numbers());
    let shown = (form, &Problems::default());
    page(&form_page(&app, &permit, &frame, (&ground, Some(check)), shown).await?)
}

async fn change(
    State(app): State<App>,
    permit: Permit<KeepChecks>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<CheckForm>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let of = (&ground, Some(&ground.check(id)?.check));
    match set_as_typed(&app, &permit, of, &form).await {
        Ok(_) => Ok(to_check(&app, &permit, id)),
        Err(error) => {
            let shown = (form, &to_mend(error)?);
            mend(&form_page(&app, &permit, &frame, of, shown).await?)
        }
    }
}

async fn ask_first(
    State(app): State<App>,
    permit: Permit<KeepChecks>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let question = words::retire(&ground.check(id)?.check.name);
    let here = format!("/checks/{id}");
    let action = format!("{here}/retire");
    ask(shell(&permit, &frame, &action), question, &action, &here)
}

async fn retire(
    State(app): State<App>,
    permit: Permit<KeepChecks>,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<KeyForm>,
) -> Result<Response> {
    set_retired(&app, &permit, id, &form, true).await
}

async fn restore(
    State(app): State<App>,
    permit: Permit<KeepChecks>,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<KeyForm>,
) -> Result<Response> {
    set_retired(&app, &permit, id, &form, false).await
}

/// Nothing stands in the way of either: a check keeps its name and its space.
async fn set_retired(
    app: &App,
    permit: &Permit<KeepChecks>,
    id: Uuid,
    form: &KeyForm,
    is_retired: bool,
) -> Result<Response> {
    let ground = Ground::read(app, permit).await?;
    let new = NewCheck::like(&ground.check(id)?.check, is_retired);
    set_check(app, permit, read_key(&form.key)?, new).await?;
    Ok(on_to(app, permit, "/checks"))
}
