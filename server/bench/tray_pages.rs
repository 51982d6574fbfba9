//! The pages that set a tray up.

use axum::extract::{Path, State};
use axum::response::Response;
use uuid::Uuid;

use super::actions::set_tray;
use super::form::{new_tray, of_tray, read_tray, tray_retired};
use super::pages::{Ground, back, shell};
use super::views::{TrayForm, TrayFormPage};
use super::{Step, Tray};
use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::problem::Problems;
use crate::rights::KeepBench;
use crate::router::Pages;
use crate::web::desk::{KeyForm, ask};
use crate::web::fields::Choice;
use crate::web::forms::{Form, in_words, mend, new_key, page, read_key, to_mend};
use crate::web::frame::Frame;
use crate::web::messages::desk as words;
use crate::web::messages::lines::step as step_words;

const LINE: &str = "/rooms/{room}/bench/lines/{line}/trays";
const TRAY: &str = "/rooms/{room}/bench/trays/{tray}";

/// The routes of these pages.
pub(super) fn pages() -> Pages {
    Pages::new()
        .get(&format!("{LINE}/new"), new_form)
        .post(LINE, add)
        .get(TRAY, form)
        .post(TRAY, change)
        .get(&format!("{TRAY}/retire"), ask_first)
        .post(&format!("{TRAY}/retire"), retire)
        .post(&format!("{TRAY}/restore"), restore)
}

async fn new_form(
    State(app): State<App>,
    permit: Permit<KeepBench>,
    frame: Frame,
    Path((_, line)): Path<(String, Uuid)>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let form = new_tray(new_key()?, ground.settings.lengths());
    let of = (line, None);
    page(&form_page(
        &permit,
        &frame,
        &ground,
        of,
        form,
        &Problems::default(),
    )?)
}

async fn form(
    State(app): State<App>,
    permit: Permit<KeepBench>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let none = Problems::default();
    page(&measured(
        &permit,
        &frame,
        &ground,
        ground.tray(id)?,
        &none,
    )?)
}

/// A tray's page with the measurements it has.
fn measured(
    permit: &Permit<KeepBench>,
    frame: &Frame,
    ground: &Ground,
    tray: &Tray,
    problems: &Problems,
) -> Result<TrayFormPage> {
    let form = of_tray(tray, new_key()?, ground.settings.lengths());
    let of = (tray.line_id, Some(tray.id));
    form_page(permit, frame, ground, of, form, problems)
}

fn form_page(
    permit: &Permit<KeepBench>,
    frame: &Frame,
    ground: &Ground,
    (line, id): (Uuid, Option<Uuid>),
    form: TrayForm,
    problems: &Problems,
) -> Result<TrayFormPage> {
    let path = match id {
        Some(id) => format!("/bench/trays/{id}"),
        None => format!("/bench/lines/{line}/trays/new"),
    };
    Ok(TrayFormPage {
        shell: shell(permit, frame, &path),
        id: id.map(|id| id.to_string()),
        line_id: line.to_string(),
        line: ground.line(line)?.name.clone(),
        steps: Step::ALL.map(step_choice).to_vec(),
        form,
        problems: in_words(problems, ground.settings.numbers()),
        unit: ground.settings.lengths().unit().to_owned(),
    })
}

fn step_choice(step: Step) -> Choice {
    Choice::new(step.as_str(), step_words(step))
}

async fn add(
    State(app): State<App>,
    permit: Permit<KeepBench>,
    frame: Frame,
    Path((_, line)): Path<(String, Uuid)>,
    Form(form): Form<TrayForm>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    write(&app, &permit, &frame, (&ground, line, None), form).await
}

async fn change(
    State(app): State<App>,
    permit: Permit<KeepBench>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<TrayForm>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let tray = ground.tray(id)?;
    let of = (&ground, tray.line_id, Some(tray));
    write(&app, &permit, &frame, of, form).await
}

async fn write(
    app: &App,
    permit: &Permit<KeepBench>,
    frame: &Frame,
    (ground, line, old): (&Ground, Uuid, Option<&Tray>),
    form: TrayForm,
) -> Result<Response> {
    ground.line(line)?;
    let outcome = match read_tray(&form, line, old, ground.settings.lengths()) {
        Ok(new) => set_tray(app, permit, read_key(&form.key)?, new).await,
        Err(problems) => Err(Error::Invalid(problems)),
    };
    match outcome {
        Ok(_) => Ok(back(app, permit)),
        Err(error) => {
            let (of, problems) = ((line, old.map(|old| old.id)), to_mend(error)?);
            mend(&form_page(permit, frame, ground, of, form, &problems)?)
        }
    }
}

async fn ask_first(
    State(app): State<App>,
    permit: Permit<KeepBench>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let question = words::retire_tray(&ground.tray(id)?.name);
    let here = format!("/bench/trays/{id}");
    let action = format!("{here}/retire");
    ask(shell(&permit, &frame, &action), question, &action, &here)
}

async fn retire(
    State(app): State<App>,
    permit: Permit<KeepBench>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<KeyForm>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let tray = ground.tray(id)?;
    match set_tray(
        &app,
        &permit,
        read_key(&form.key)?,
        tray_retired(tray, true),
    )
    .await
    {
        Ok(_) => Ok(back(&app, &permit)),
        Err(error) => mend(&measured(&permit, &frame, &ground, tray, &to_mend(error)?)?),
    }
}

async fn restore(
    State(app): State<App>,
    permit: Permit<KeepBench>,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<KeyForm>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let tray = tray_retired(ground.tray(id)?, false);
    set_tray(&app, &permit, read_key(&form.key)?, tray).await?;
    Ok(back(&app, &permit))
}
