//! The pages of the bench: the bench itself and its lines.

use axum::extract::{Path, State};
use axum::response::Response;
use serde::Deserialize;
use uuid::Uuid;

use super::actions::{TrayMove, move_tray, set_line};
use super::form::{line_retired, read_line};
use super::spaces::{self, Space};
use super::views::{BenchLine, BenchPage, BenchTray, LineForm, LinePage};
use super::{Line, Tray, bottles, finishing, store, tray_pages};
use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::mixes::actions::volume_at;
use crate::problem::{Problem, Problems};
use crate::rights::{KeepBench, Right, SeeBench};
use crate::rooms::{self, Settings};
use crate::router::Pages;
use crate::web::desk::{KeyForm, RetiredRow, ask, lying_at};
use crate::web::drawing::{Standing, TrayDrawing, TrayShape};
use crate::web::fields::Choice;
use crate::web::forms::{Form, in_words, mend, new_key, page, read_key, see_other, to_mend};
use crate::web::frame::Frame;
use crate::web::messages::desk as words;
use crate::web::messages::lines::step_shown;
use crate::web::shell::{Place, Shell};

const BENCH: &str = "/rooms/{room}/bench";

/// The routes of these pages.
#[must_use]
pub fn pages() -> Pages {
    let at = |path: &str| format!("{BENCH}{path}");
    Pages::new()
        .get(BENCH, bench)
        .post(&at("/lines"), add_line)
        .get(&at("/lines/{line}"), line_form)
        .post(&at("/lines/{line}"), change_line)
        .get(&at("/lines/{line}/retire"), ask_first)
        .post(&at("/lines/{line}/retire"), retire_line)
        .post(&at("/lines/{line}/restore"), restore_line)
        .post(&at("/trays/{tray}/move"), move_send)
        .and(tray_pages::pages())
        .and(bottles::pages())
        .and(spaces::pages())
        .and(finishing::pages())
}

/// Everything the pages stand on.
pub(super) struct Ground {
    pub(super) settings: Settings,
    lines: Vec<Line>,
    trays: Vec<Tray>,
    spaces: Vec<Space>,
}

impl Ground {
    pub(super) async fn read<R: Right>(app: &App, permit: &Permit<R>) -> Result<Self> {
        app.database()
            .reading(permit.scope(), |tx| {
                Box::pin(async move {
                    Ok(Self {
                        settings: rooms::settings(tx).await?,
                        lines: store::lines(tx).await?,
                        trays: store::trays(tx).await?,
                        spaces: spaces::spaces(tx).await?,
                    })
                })
            })
            .await
    }

    pub(super) fn line(&self, id: Uuid) -> Result<&Line> {
        let mut lines = self.lines.iter();
        lines.find(|line| line.id == id).ok_or(Error::NotFound)
    }

    /// The space a line stands in, where the room has several.
    fn space(&self, line: &Line) -> Option<&Space> {
        let mut spaces = self.spaces.iter();
        spaces.find(|space| Some(space.id) == line.space_id)
    }

    /// What a line may be put in.
    fn spaces_for(&self, line: Option<&Line>) -> Vec<Choice> {
        spaces::choices(&self.spaces, line.and_then(|line| line.space_id))
    }

    pub(super) fn tray(&self, id: Uuid) -> Result<&Tray> {
        let mut trays = self.trays.iter();
        trays.find(|tray| tray.id == id).ok_or(Error::NotFound)
    }
}

pub(super) fn shell<R: Right>(permit: &Permit<R>, frame: &Frame, path: &str) -> Shell {
    lying_at(frame.shell_in(permit, Some(Place::Bench)), path)
}

/// Sends the browser to the bench.
pub(super) fn back<R: Right>(app: &App, permit: &Permit<R>) -> Response {
    let slug = &permit.membership().slug;
    see_other(app, &format!("/rooms/{slug}/bench"))
}

async fn bench(State(app): State<App>, permit: Permit<SeeBench>, frame: Frame) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let form = LineForm {
        key: new_key()?,
        ..LineForm::default()
    };
    let none = Problems::default();
    page(&bench_page(&permit, &frame, &ground, form, &none))
}

fn bench_page<R: Right>(
    permit: &Permit<R>,
    frame: &Frame,
    ground: &Ground,
    form: LineForm,
    problems: &Problems,
) -> BenchPage {
    let lines = ground.lines.iter().filter(|line| !line.is_retired);
    BenchPage {
        shell: shell(permit, frame, "/bench"),
        lines: lines.map(|line| bench_line(line, ground)).collect(),
        retired: retired(ground),
        spaces: ground.spaces_for(None),
        has_spaces: !ground.spaces.is_empty(),
        form,
        problems: in_words(problems, ground.settings.numbers()),
        may_change: KeepBench::ROW.roles.contains(&permit.role()),
    }
}

fn bench_line(line: &Line, ground: &Ground) -> BenchLine {
    let trays = ground.trays.iter();
    let trays = trays.filter(|tray| tray.line_id == line.id && !tray.is_retired);
    BenchLine {
        id: line.id.to_string(),
        name: line.name.clone(),
        space: ground.space(line).map(|space| space.name.clone()),
        trays: trays.map(|tray| bench_tray(tray, ground)).collect(),
    }
}

fn bench_tray(tray: &Tray, ground: &Ground) -> BenchTray {
    let (lengths, numbers) = (ground.settings.lengths(), ground.settings.numbers());
    let shape = TrayShape {
        long_tenths_mm: tray.inside_long_tenths_mm.into(),
        short_tenths_mm: tray.inside_short_tenths_mm.into(),
        depth_tenths_mm: tray.inside_depth_tenths_mm.into(),
        least_depth_tenths_mm: tray.least_depth_tenths_mm.into(),
    };
    let volume = |depth: i32| numbers.volume(volume_at(tray, depth));
    BenchTray {
        id: tray.id.to_string(),
        name: tray.name.clone(),
        step: step_shown(tray.step).to_owned(),
        inside: words::inside(
            &lengths.sides(shape.long_tenths_mm, shape.short_tenths_mm),
            &lengths.words(shape.depth_tenths_mm),
            &lengths.words(shape.least_depth_tenths_mm),
        ),
        least_volume: words::volumes(
            &volume(tray.least_depth_tenths_mm),
            &volume(tray.inside_depth_tenths_mm),
        ),
        drawing: TrayDrawing::new(shape, Standing::NothingRecorded, None, ""),
    }
}

/// Retired lines, and retired trays of lines that are in use.
fn retired(ground: &Ground) -> Vec<RetiredRow> {
    let lines = ground.lines.iter().filter(|line| line.is_retired);
    let lines = lines.map(|line| RetiredRow {
        name: line.name.clone(),
        restore: format!("/bench/lines/{}/restore", line.id),
    });
    let trays = ground.trays.iter().filter(|tray| tray.is_retired);
    let trays = trays.filter_map(|tray| {
        let line = ground.line(tray.line_id).ok()?;
        (!line.is_retired).then(|| RetiredRow {
            name: words::tray_of(&tray.name, &line.name),
            restore: format!("/bench/trays/{}/restore", tray.id),
        })
    });
    lines.chain(trays).collect()
}

async fn add_line(
    State(app): State<App>,
    permit: Permit<KeepBench>,
    frame: Frame,
    Form(form): Form<LineForm>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let outcome = match read_line(&form, None) {
        Ok(new) => set_line(&app, &permit, read_key(&form.key)?, new).await,
        Err(problems) => Err(Error::Invalid(problems)),
    };
    match outcome {
        Ok(_) => Ok(back(&app, &permit)),
        Err(error) => mend(&bench_page(
            &permit,
            &frame,
            &ground,
            form,
            &to_mend(error)?,
        )),
    }
}

async fn line_form(
    State(app): State<App>,
    permit: Permit<KeepBench>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let line = ground.line(id)?;
    page(&named(
        &permit,
        &frame,
        &ground,
        line,
        &Problems::default(),
    )?)
}

/// A line's page with the name it has.
fn named(
    permit: &Permit<KeepBench>,
    frame: &Frame,
    ground: &Ground,
    line: &Line,
    problems: &Problems,
) -> Result<LinePage> {
    let form = LineForm {
        key: new_key()?,
        name: line.name.clone(),
        space: line.space_id.map(|id| id.to_string()).unwrap_or_default(),
    };
    Ok(line_page(permit, frame, ground, (line.id, form), problems))
}

fn line_page(
    permit: &Permit<KeepBench>,
    frame: &Frame,
    ground: &Ground,
    (id, form): (Uuid, LineForm),
    problems: &Problems,
) -> LinePage {
    LinePage {
        shell: shell(permit, frame, &format!("/bench/lines/{id}")),
        id: id.to_string(),
        spaces: ground.spaces_for(ground.line(id).ok()),
        form,
        problems: in_words(problems, ground.settings.numbers()),
    }
}

async fn change_line(
    State(app): State<App>,
    permit: Permit<KeepBench>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<LineForm>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let outcome = match read_line(&form, Some(ground.line(id)?)) {
        Ok(new) => set_line(&app, &permit, read_key(&form.key)?, new).await,
        Err(problems) => Err(Error::Invalid(problems)),
    };
    match outcome {
        Ok(_) => Ok(back(&app, &permit)),
        Err(error) => {
            let problems = to_mend(error)?;
            mend(&line_page(&permit, &frame, &ground, (id, form), &problems))
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
    let question = words::retire_line(&ground.line(id)?.name);
    let here = format!("/bench/lines/{id}");
    let action = format!("{here}/retire");
    ask(shell(&permit, &frame, &action), question, &action, &here)
}

async fn retire_line(
    State(app): State<App>,
    permit: Permit<KeepBench>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<KeyForm>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let line = ground.line(id)?;
    match set_line(
        &app,
        &permit,
        read_key(&form.key)?,
        line_retired(line, true),
    )
    .await
    {
        Ok(_) => Ok(back(&app, &permit)),
        Err(error) => mend(&named(&permit, &frame, &ground, line, &to_mend(error)?)?),
    }
}

async fn restore_line(
    State(app): State<App>,
    permit: Permit<KeepBench>,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<KeyForm>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let mut line = line_retired(ground.line(id)?, false);
    // A space retired meanwhile takes no line: it comes back to the room itself.
    let space = ground.space(ground.line(id)?);
    line.space_id = space
        .filter(|space| !space.is_retired)
        .map(|space| space.id);
    set_line(&app, &permit, read_key(&form.key)?, line).await?;
    Ok(back(&app, &permit))
}

/// Where a tray is to move.
#[derive(Debug, Default, Deserialize)]
#[serde(default)]
struct MoveForm {
    key: String,
    to: String,
}

async fn move_send(
    State(app): State<App>,
    permit: Permit<KeepBench>,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<MoveForm>,
) -> Result<Response> {
    let wanted = TrayMove {
        moved_tray_id: id,
        is_earlier: match form.to.as_str() {
            "earlier" => true,
            "later" => false,
            _ => return Err(Error::field("to", Problem::NotAChoice)),
        },
    };
    move_tray(&app, &permit, read_key(&form.key)?, wanted).await?;
    Ok(back(&app, &permit))
}
