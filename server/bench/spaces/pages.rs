//! The pages of spaces.

use axum::extract::{Path, State};
use axum::response::Response;
use uuid::Uuid;

use super::actions::{NewSpace, set_space};
use super::views::{SpaceForm, SpacePage, SpaceRow, SpacesPage};
use super::{Space, store};
use crate::app::App;
use crate::bench::pages::shell;
use crate::bench::{Line, lines};
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::input::name;
use crate::logbook::Done;
use crate::problem::Problems;
use crate::rights::{KeepBench, Right, SeeBench};
use crate::rooms::{self, Settings};
use crate::router::Pages;
use crate::web::desk::{KeyForm, RetiredRow, ask};
use crate::web::forms::{Form, in_words, mend, new_key, on_to, page, read_key, to_mend};
use crate::web::frame::Frame;
use crate::web::messages::desk as words;

const SPACES: &str = "/rooms/{room}/bench/spaces";

/// The routes of these pages.
pub fn pages() -> Pages {
    let at = |path: &str| format!("{SPACES}{path}");
    Pages::new()
        .get(SPACES, list)
        .post(SPACES, add)
        .get(&at("/{space}"), form)
        .post(&at("/{space}"), change)
        .get(&at("/{space}/retire"), ask_first)
        .post(&at("/{space}/retire"), retire)
        .post(&at("/{space}/restore"), restore)
}

/// Everything the pages stand on.
struct Ground {
    settings: Settings,
    spaces: Vec<Space>,
    lines: Vec<Line>,
}

impl Ground {
    async fn read<R: Right>(app: &App, permit: &Permit<R>) -> Result<Self> {
        app.database()
            .reading(permit.scope(), |tx| {
                Box::pin(async move {
                    Ok(Self {
                        settings: rooms::settings(tx).await?,
                        spaces: store::spaces(tx).await?,
                        lines: lines(tx).await?,
                    })
                })
            })
            .await
    }

    fn space(&self, id: Uuid) -> Result<&Space> {
        let mut spaces = self.spaces.iter();
        spaces.find(|space| space.id == id).ok_or(Error::NotFound)
    }
}

fn back(app: &App, permit: &Permit<KeepBench>) -> Response {
    on_to(app, permit, "/bench/spaces")
}

async fn list(State(app): State<App>, permit: Permit<SeeBench>, frame: Frame) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let form = SpaceForm {
        key: new_key()?,
        ..SpaceForm::default()
    };
    page(&list_page(
        &permit,
        &frame,
        &ground,
        form,
        &Problems::default(),
    ))
}

fn list_page<R: Right>(
    permit: &Permit<R>,
    frame: &Frame,
    ground: &Ground,
    form: SpaceForm,
    problems: &Problems,
) -> SpacesPage {
    let in_use = ground.spaces.iter().filter(|space| !space.is_retired);
    let retired = ground.spaces.iter().filter(|space| space.is_retired);
    SpacesPage {
        shell: shell(permit, frame, "/bench/spaces"),
        spaces: in_use.map(|space| row(space, ground)).collect(),
        retired: retired.map(retired_row).collect(),
        form,
        problems: in_words(problems, ground.settings.numbers()),
        may_change: KeepBench::ROW.roles.contains(&permit.role()),
    }
}

fn row(space: &Space, ground: &Ground) -> SpaceRow {
    let lines = ground.lines.iter();
    let lines = lines.filter(|line| !line.is_retired && line.space_id == Some(space.id));
    let lines: Vec<&str> = lines.map(|line| line.name.as_str()).collect();
    SpaceRow {
        id: space.id.to_string(),
        name: space.name.clone(),
        lines: lines.join(", "),
    }
}

fn retired_row(space: &Space) -> RetiredRow {
    RetiredRow {
        name: space.name.clone(),
        restore: format!("/bench/spaces/{}/restore", space.id),
    }
}

/// A space as typed, read; `old` is the one it changes.
fn read(form: &SpaceForm, old: Option<&Space>) -> Result<NewSpace, Problems> {
    match name(&form.name) {
        Ok(name) => Ok(NewSpace {
            id: old.map(|old| old.id),
            name,
            position: None,
            is_retired: old.is_some_and(|old| old.is_retired),
        }),
        Err(problem) => Err(Problems::one("name", problem)),
    }
}

/// A space as it is, retired or brought back.
fn retired(space: &Space, is_retired: bool) -> NewSpace {
    NewSpace {
        id: Some(space.id),
        name: space.name.clone(),
        position: None,
        is_retired,
    }
}

async fn add(
    State(app): State<App>,
    permit: Permit<KeepBench>,
    frame: Frame,
    Form(form): Form<SpaceForm>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    match set_as_typed(&app, &permit, None, &form).await {
        Ok(_) => Ok(back(&app, &permit)),
        Err(error) => {
            let problems = to_mend(error)?;
            mend(&list_page(&permit, &frame, &ground, form, &problems))
        }
    }
}

async fn set_as_typed(
    app: &App,
    permit: &Permit<KeepBench>,
    old: Option<&Space>,
    form: &SpaceForm,
) -> Result<Done> {
    let new = read(form, old).map_err(Error::Invalid)?;
    set_space(app, permit, read_key(&form.key)?, new).await
}

async fn form(
    State(app): State<App>,
    permit: Permit<KeepBench>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let space = ground.space(id)?;
    let (form, none) = (as_it_is(space, &ground)?, Problems::default());
    page(&space_page(&permit, &frame, (&ground, id), form, &none))
}

fn as_it_is(space: &Space, _: &Ground) -> Result<SpaceForm> {
    Ok(SpaceForm {
        key: new_key()?,
        name: space.name.clone(),
    })
}

fn space_page(
    permit: &Permit<KeepBench>,
    frame: &Frame,
    (ground, id): (&Ground, Uuid),
    form: SpaceForm,
    problems: &Problems,
) -> SpacePage {
    SpacePage {
        shell: shell(permit, frame, &format!("/bench/spaces/{id}")),
        id: id.to_string(),
        form,
        problems: in_words(problems, ground.settings.numbers()),
    }
}

async fn change(
    State(app): State<App>,
    permit: Permit<KeepBench>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<SpaceForm>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let old = ground.space(id)?;
    match set_as_typed(&app, &permit, Some(old), &form).await {
        Ok(_) => Ok(back(&app, &permit)),
        Err(error) => {
            let problems = to_mend(error)?;
            mend(&space_page(&permit, &frame, (&ground, id), form, &problems))
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
    let question = words::retire_space(&ground.space(id)?.name);
    let here = format!("/bench/spaces/{id}");
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
    let space = ground.space(id)?;
    match set_space(&app, &permit, read_key(&form.key)?, retired(space, true)).await {
        Ok(_) => Ok(back(&app, &permit)),
        Err(error) => {
            let (form, problems) = (as_it_is(space, &ground)?, to_mend(error)?);
            mend(&space_page(&permit, &frame, (&ground, id), form, &problems))
        }
    }
}

async fn restore(
    State(app): State<App>,
    permit: Permit<KeepBench>,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<KeyForm>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let space = retired(ground.space(id)?, false);
    set_space(&app, &permit, read_key(&form.key)?, space).await?;
    Ok(back(&app, &permit))
}
