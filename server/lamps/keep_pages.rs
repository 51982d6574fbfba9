//! The pages by which a steward adds, changes and retires lamps and screens.

use axum::extract::{Path, State};
use axum::response::Response;
use uuid::Uuid;

use super::actions::{NewLamp, set_lamp};
use super::form::{of_lamp, of_new, read_lamp};
use super::pages::{Ground, shell};
use super::views::{LampForm, LampFormPage};
use super::{Lamp, LampKind};
use crate::app::App;
use crate::bench::spaces::{self, Space};
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::Done;
use crate::problem::Problems;
use crate::rights::KeepLamps;
use crate::router::Pages;
use crate::web::desk::{KeyForm, ask};
use crate::web::fields::Choice;
use crate::web::forms::{Form, in_words, mend, new_key, on_to, page, read_key, to_mend};
use crate::web::frame::Frame;
use crate::web::messages::lamps as words;

const LAMPS: &str = "/rooms/{room}/lamps";

/// The routes of these pages.
pub(super) fn pages() -> Pages {
    let at = |path: &str| format!("{LAMPS}{path}");
    Pages::new()
        .get(&at("/new"), new_form)
        .post(LAMPS, add)
        .get(&at("/{lamp}/change"), form)
        .post(&at("/{lamp}/change"), change)
        .get(&at("/{lamp}/retire"), ask_first)
        .post(&at("/{lamp}/retire"), retire)
        .post(&at("/{lamp}/restore"), restore)
}

async fn spaces_of(app: &App, permit: &Permit<KeepLamps>) -> Result<Vec<Space>> {
    app.database()
        .reading(permit.scope(), |tx| Box::pin(spaces::spaces(tx)))
        .await
}

/// The form of a lamp, or of a new one where there is none yet.
async fn form_page(
    app: &App,
    permit: &Permit<KeepLamps>,
    frame: &Frame,
    (ground, lamp): (&Ground, Option<&Lamp>),
    (form, problems): (LampForm, &Problems),
) -> Result<LampFormPage> {
    let spaces = spaces_of(app, permit).await?;
    let path = lamp.map_or_else(
        || "/lamps/new".to_owned(),
        |lamp| format!("/lamps/{}/change", lamp.id),
    );
    let kinds = LampKind::ALL.into_iter();
    Ok(LampFormPage {
        shell: shell(permit, frame, &path),
        id: lamp.map(|lamp| lamp.id.to_string()),
        kinds: kinds
            .map(|kind| {
                Choice::new(kind.as_str(), words::kind(kind)).explained(words::kind_hint(kind))
            })
            .collect(),
        spaces: spaces::choices(&spaces, lamp.and_then(|lamp| lamp.hangs.space_id)),
        unit: ground.settings.lengths().unit(),
        form,
        problems: in_words(problems, ground.settings.numbers()),
    })
}

async fn new_form(
    State(app): State<App>,
    permit: Permit<KeepLamps>,
    frame: Frame,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let shown = (of_new(new_key()?), &Problems::default());
    page(&form_page(&app, &permit, &frame, (&ground, None), shown).await?)
}

async fn set_as_typed(
    app: &App,
    permit: &Permit<KeepLamps>,
    (ground, old): (&Ground, Option<&Lamp>),
    form: &LampForm,
) -> Result<Done> {
    let new = read_lamp(form, old, &ground.settings).map_err(Error::Invalid)?;
    set_lamp(app, permit, read_key(&form.key)?, new).await
}

async fn add(
    State(app): State<App>,
    permit: Permit<KeepLamps>,
    frame: Frame,
    Form(form): Form<LampForm>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    match set_as_typed(&app, &permit, (&ground, None), &form).await {
        Ok(done) => Ok(to_lamp(&app, &permit, done.id("lamp")?)),
        Err(error) => {
            let shown = (form, &to_mend(error)?);
            mend(&form_page(&app, &permit, &frame, (&ground, None), shown).await?)
        }
    }
}

fn to_lamp(app: &App, permit: &Permit<KeepLamps>, id: Uuid) -> Response {
    on_to(app, permit, &format!("/lamps/{id}"))
}

async fn form(
    State(app): State<App>,
    permit: Permit<KeepLamps>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let lamp = &ground.lamp(id)?.lamp;
    let form = of_lamp(lamp, new_key()?, &ground.settings);
    let shown = (form, &Problems::default());
    page(&form_page(&app, &permit, &frame, (&ground, Some(lamp)), shown).await?)
}

async fn change(
    State(app): State<App>,
    permit: Permit<KeepLamps>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<LampForm>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let of = (&ground, Some(&ground.lamp(id)?.lamp));
    match set_as_typed(&app, &permit, of, &form).await {
        Ok(_) => Ok(to_lamp(&app, &permit, id)),
        Err(error) => {
            let shown = (form, &to_mend(error)?);
            mend(&form_page(&app, &permit, &frame, of, shown).await?)
        }
    }
}

async fn ask_first(
    State(app): State<App>,
    permit: Permit<KeepLamps>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let question = words::retire(&ground.lamp(id)?.lamp.name);
    let here = format!("/lamps/{id}");
    let action = format!("{here}/retire");
    ask(shell(&permit, &frame, &action), question, &action, &here)
}

async fn retire(
    State(app): State<App>,
    permit: Permit<KeepLamps>,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<KeyForm>,
) -> Result<Response> {
    set_retired(&app, &permit, id, &form, true).await
}

async fn restore(
    State(app): State<App>,
    permit: Permit<KeepLamps>,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<KeyForm>,
) -> Result<Response> {
    set_retired(&app, &permit, id, &form, false).await
}

/// Nothing stands in the way of either: a lamp keeps its name and its space.
async fn set_retired(
    app: &App,
    permit: &Permit<KeepLamps>,
    id: Uuid,
    form: &KeyForm,
    is_retired: bool,
) -> Result<Response> {
    let ground = Ground::read(app, permit).await?;
    let new = NewLamp::like(&ground.lamp(id)?.lamp, is_retired);
    set_lamp(app, permit, read_key(&form.key)?, new).await?;
    Ok(on_to(app, permit, "/lamps"))
}
