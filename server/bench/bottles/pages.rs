//! The pages of bottles.

use axum::extract::{Path, State};
use axum::response::Response;
use uuid::Uuid;

use super::actions::{NewBottle, set_bottle};
use super::views::{BottleForm, BottlePage, BottleRow, BottlesPage};
use super::{Bottle, input, store};
use crate::app::App;
use crate::bench::pages::shell;
use crate::darkroom::verdict::Verdict;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::input::name;
use crate::logbook::Done;
use crate::mixes::{self, Mix};
use crate::problem::{Problem, Problems};
use crate::rights::{KeepBench, Right, SeeBench};
use crate::rooms::{self, Settings};
use crate::router::Pages;
use crate::web::desk::{KeyForm, RetiredRow, ask};
use crate::web::forms::{Form, in_words, mend, new_key, on_to, page, read_key, to_mend};
use crate::web::frame::Frame;
use crate::web::messages::{desk as words, keeping, verdicts};

const BOTTLES: &str = "/rooms/{room}/bench/bottles";

/// The routes of these pages.
pub fn pages() -> Pages {
    let at = |path: &str| format!("{BOTTLES}{path}");
    Pages::new()
        .get(BOTTLES, list)
        .post(BOTTLES, add)
        .get(&at("/{bottle}"), form)
        .post(&at("/{bottle}"), change)
        .get(&at("/{bottle}/retire"), ask_first)
        .post(&at("/{bottle}/retire"), retire)
        .post(&at("/{bottle}/restore"), restore)
}

/// Everything the pages stand on.
struct Ground {
    settings: Settings,
    bottles: Vec<Bottle>,
    mixes: Vec<Mix>,
}

impl Ground {
    async fn read<R: Right>(app: &App, permit: &Permit<R>) -> Result<Self> {
        app.database()
            .reading(permit.scope(), |tx| {
                Box::pin(async move {
                    Ok(Self {
                        settings: rooms::settings(tx).await?,
                        bottles: store::bottles(tx).await?,
                        mixes: mixes::standing(tx).await?,
                    })
                })
            })
            .await
    }

    fn bottle(&self, id: Uuid) -> Result<&Bottle> {
        let mut bottles = self.bottles.iter();
        bottles
            .find(|bottle| bottle.id == id)
            .ok_or(Error::NotFound)
    }
}

fn back(app: &App, permit: &Permit<KeepBench>) -> Response {
    on_to(app, permit, "/bench/bottles")
}

async fn list(State(app): State<App>, permit: Permit<SeeBench>, frame: Frame) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let form = BottleForm {
        key: new_key()?,
        ..BottleForm::default()
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
    form: BottleForm,
    problems: &Problems,
) -> BottlesPage {
    let in_use = ground.bottles.iter().filter(|bottle| !bottle.is_retired);
    let retired = ground.bottles.iter().filter(|bottle| bottle.is_retired);
    BottlesPage {
        shell: shell(permit, frame, "/bench/bottles"),
        bottles: in_use.map(|bottle| row(bottle, ground)).collect(),
        retired: retired.map(retired_row).collect(),
        form,
        problems: in_words(problems, ground.settings.numbers()),
        may_change: KeepBench::ROW.roles.contains(&permit.role()),
    }
}

fn row(bottle: &Bottle, ground: &Ground) -> BottleRow {
    let numbers = ground.settings.numbers();
    let in_it = |mix: &&Mix| mix.stand.bottle_id == Some(bottle.id);
    let stands = ground.mixes.iter().find(in_it).map(|mix| {
        let title = mix.title(numbers);
        keeping::volume_of(&numbers.volume(mix.level_ul()), &title)
    });
    BottleRow {
        stands: stands.unwrap_or_else(|| verdicts::word(Verdict::NothingRecorded).to_owned()),
        id: bottle.id.to_string(),
        name: bottle.name.clone(),
        holds: numbers.litres(bottle.holds_ul),
    }
}

fn retired_row(bottle: &Bottle) -> RetiredRow {
    RetiredRow {
        name: bottle.name.clone(),
        restore: format!("/bench/bottles/{}/restore", bottle.id),
    }
}

/// A bottle as typed, read; `old` is the one it changes.
fn read(form: &BottleForm, old: Option<&Bottle>, ground: &Ground) -> Result<NewBottle, Problems> {
    let mut problems = Problems::default();
    let name = problems.take("name", name(&form.name));
    let holds = ground.settings.numbers().read_litres(&form.holds);
    let holds = holds.map_err(Problem::Number).and_then(input::holds);
    match (name, problems.take("holds", holds)) {
        (Some(name), Some(holds_ul)) => Ok(NewBottle {
            id: old.map(|old| old.id),
            name,
            holds_ul,
            is_retired: old.is_some_and(|old| old.is_retired),
        }),
        _ => Err(problems),
    }
}

/// A bottle as it is, retired or brought back.
fn retired(bottle: &Bottle, is_retired: bool) -> NewBottle {
    NewBottle {
        id: Some(bottle.id),
        name: bottle.name.clone(),
        holds_ul: bottle.holds_ul,
        is_retired,
    }
}

async fn add(
    State(app): State<App>,
    permit: Permit<KeepBench>,
    frame: Frame,
    Form(form): Form<BottleForm>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    match set_as_typed(&app, &permit, &ground, None, &form).await {
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
    ground: &Ground,
    old: Option<&Bottle>,
    form: &BottleForm,
) -> Result<Done> {
    let new = read(form, old, ground).map_err(Error::Invalid)?;
    set_bottle(app, permit, read_key(&form.key)?, new).await
}

async fn form(
    State(app): State<App>,
    permit: Permit<KeepBench>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let bottle = ground.bottle(id)?;
    let (form, none) = (as_it_is(bottle, &ground)?, Problems::default());
    page(&bottle_page(&permit, &frame, (&ground, id), form, &none))
}

fn as_it_is(bottle: &Bottle, ground: &Ground) -> Result<BottleForm> {
    Ok(BottleForm {
        key: new_key()?,
        name: bottle.name.clone(),
        holds: ground.settings.numbers().decimal(bottle.holds_ul, 6),
    })
}

fn bottle_page(
    permit: &Permit<KeepBench>,
    frame: &Frame,
    (ground, id): (&Ground, Uuid),
    form: BottleForm,
    problems: &Problems,
) -> BottlePage {
    BottlePage {
        shell: shell(permit, frame, &format!("/bench/bottles/{id}")),
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
    Form(form): Form<BottleForm>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let old = ground.bottle(id)?;
    match set_as_typed(&app, &permit, &ground, Some(old), &form).await {
        Ok(_) => Ok(back(&app, &permit)),
        Err(error) => {
            let problems = to_mend(error)?;
            mend(&bottle_page(
                &permit,
                &frame,
                (&ground, id),
                form,
                &problems,
            ))
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
    let question = words::retire_bottle(&ground.bottle(id)?.name);
    let here = format!("/bench/bottles/{id}");
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
    let bottle = ground.bottle(id)?;
    match set_bottle(&app, &permit, read_key(&form.key)?, retired(bottle, true)).await {
        Ok(_) => Ok(back(&app, &permit)),
        Err(error) => {
            let (form, problems) = (as_it_is(bottle, &ground)?, to_mend(error)?);
            mend(&bottle_page(
                &permit,
                &frame,
                (&ground, id),
                form,
                &problems,
            ))
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
    let bottle = retired(ground.bottle(id)?, false);
    set_bottle(&app, &permit, read_key(&form.key)?, bottle).await?;
    Ok(back(&app, &permit))
}
