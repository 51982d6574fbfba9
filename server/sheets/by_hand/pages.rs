//! The page on which a bench sheet kept on paper is entered.

use axum::extract::State;
use axum::response::Response;
use time::OffsetDateTime;
use uuid::Uuid;

use super::form::{Read, fresh, offered_unknown_tray};
use super::views::{PaperForm, PaperPage};
use super::{enter, entered_pages, store};
use crate::app::App;
use crate::bench::{self, Tray};
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::{Done, Key};
use crate::mixes::ReadingKind;
use crate::papers::{self, PaperClass, SheetSize};
use crate::problem::Problems;
use crate::rights::EnterBenchSheet;
use crate::rooms::{self, Settings};
use crate::router::Pages;
use crate::sheets::lines::{LineFor, lines_for};
use crate::sheets::note_pages::{class_choices, size_choices};
use crate::web::fields::Choice;
use crate::web::forms::{Form, in_words, mend, new_key, on_to, page, read_key, to_mend};
use crate::web::frame::Frame;
use crate::web::late;
use crate::web::messages::{readings, sheets as words};
use crate::web::shell::Place;

/// The routes of these pages.
#[must_use]
pub fn pages() -> Pages {
    Pages::new()
        .get("/rooms/{room}/bench-sheet/enter", paper_form)
        .post("/rooms/{room}/bench-sheet/enter", paper_send)
        .and(entered_pages::pages())
}

/// What the form offers.
struct Ground {
    settings: Settings,
    people: Vec<(Uuid, String)>,
    lines: Vec<LineFor>,
    trays: Vec<Tray>,
    classes: Vec<PaperClass>,
    sizes: Vec<SheetSize>,
    now: OffsetDateTime,
}

async fn ground(app: &App, permit: &Permit<EnterBenchSheet>) -> Result<Ground> {
    let now = app.clock().now();
    app.database()
        .reading(permit.scope(), move |tx| {
            Box::pin(async move {
                Ok(Ground {
                    settings: rooms::settings(tx).await?,
                    people: store::printers(tx).await?,
                    lines: lines_for(tx, now).await?,
                    trays: bench::trays(tx).await?,
                    classes: papers::paper_classes(tx).await?,
                    sizes: papers::sheet_sizes(tx).await?,
                    now,
                })
            })
        })
        .await
}

async fn paper_form(
    State(app): State<App>,
    permit: Permit<EnterBenchSheet>,
    frame: Frame,
) -> Result<Response> {
    let ground = ground(&app, &permit).await?;
    let form = fresh(new_key()?, &ground.settings.time_zone()?, ground.now);
    page(&paper_page(
        &permit,
        &frame,
        &ground,
        &form,
        &Problems::default(),
    )?)
}

async fn paper_send(
    State(app): State<App>,
    permit: Permit<EnterBenchSheet>,
    frame: Frame,
    Form(form): Form<PaperForm>,
) -> Result<Response> {
    let (key, ground) = (read_key(&form.key)?, ground(&app, &permit).await?);
    let answer = match form.step.as_str() {
        "more" => Ok(None),
        _ => enter_as_typed(&app, &permit, key, (&form, &ground)).await,
    };
    shown(&app, &permit, &frame, (&ground, &form), answer)
}

/// On to what was entered, or the form again: with more rows, or with what to mend.
fn shown(
    app: &App,
    permit: &Permit<EnterBenchSheet>,
    frame: &Frame,
    (ground, form): (&Ground, &PaperForm),
    answer: Result<Option<Done>>,
) -> Result<Response> {
    let none = Problems::default();
    match answer {
        Ok(Some(done)) => Ok(on_to(app, permit, &entered_pages::path(done.seq))),
        Ok(None) => page(&paper_page(permit, frame, ground, form, &none)?),
        Err(error) => {
            let problems = to_mend(error)?;
            mend(&paper_page(permit, frame, ground, form, &problems)?)
        }
    }
}

async fn enter_as_typed(
    app: &App,
    permit: &Permit<EnterBenchSheet>,
    key: Key,
    (form, ground): (&PaperForm, &Ground),
) -> Result<Option<Done>> {
    let zone = ground.settings.time_zone()?;
    let read = form.read(&zone, ground.settings.numbers());
    let read = read.map_err(Error::Invalid)?;
    let done = enter(app, permit, key, read.sheet.clone()).await;
    done.map(Some).map_err(|error| beside_rows(&read, error))
}

/// What the action says of rows, beside the fields of the form.
fn beside_rows(read: &Read, error: Error) -> Error {
    let Error::Invalid(problems) = error else {
        return error;
    };
    let mut shown = Problems::default();
    for (field, problem) in problems.iter() {
        shown.add(read.beside(field), problem.clone());
    }
    Error::Invalid(shown)
}

fn paper_page(
    permit: &Permit<EnterBenchSheet>,
    frame: &Frame,
    ground: &Ground,
    form: &PaperForm,
    problems: &Problems,
) -> Result<PaperPage> {
    let unknown = offered_unknown_tray(problems);
    let problems = in_words(problems, ground.settings.numbers());
    let mut notes = form.note_cells(&problems);
    for row in &mut notes {
        row.offers_unknown_tray |= unknown.contains(&row.line.id);
    }
    let people = ground.people.iter();
    let lines = ground.lines.iter();
    Ok(PaperPage {
        shell: frame.shell_in(permit, Some(Place::NoteSheets)),
        key: form.key.clone(),
        day: form.day.clone(),
        notes,
        checks: form.check_cells(&problems),
        problems,
        days: late::days(
            &ground.settings.time_zone()?,
            ground.settings.late_note_minutes,
            ground.now,
        ),
        people: or_none(people.map(|(id, name)| Choice::new(*id, name))),
        lines: match ground.lines.as_slice() {
            [only] => vec![Choice::new(only.id, &only.name)],
            _ => or_none(lines.clone().map(|line| Choice::new(line.id, &line.name))),
        },
        paper_classes: or_none(class_choices(&ground.classes).into_iter()),
        sheet_sizes: or_none(size_choices(&ground.sizes).into_iter()),
        trays: or_none(tray_choices(ground)),
        kinds: or_none(kinds()),
        outcomes: or_none(
            words::OUTCOMES
                .iter()
                .map(|(value, label)| Choice::new(*value, *label)),
        ),
        has_toner: ground.lines.iter().any(|line| line.has_toner),
    })
}

/// The choices after an empty one: a row may stay blank.
fn or_none(choices: impl Iterator<Item = Choice>) -> Vec<Choice> {
    std::iter::once(Choice::new("", words::NOT_CHOSEN))
        .chain(choices)
        .collect()
}

fn tray_choices(ground: &Ground) -> impl Iterator<Item = Choice> {
    let trays = ground.trays.iter().filter(|tray| !tray.is_retired);
    trays.filter_map(|tray| {
        let line = ground.lines.iter().find(|line| line.id == tray.line_id)?;
        let name = match ground.lines.len() {
            1 => tray.name.clone(),
            _ => words::tray_of(&tray.name, &line.name),
        };
        Some(Choice::new(tray.id, name))
    })
}

/// The checks of a sheet; what came into a bath is flagged at the tray.
fn kinds() -> impl Iterator<Item = Choice> {
    ReadingKind::ALL
        .into_iter()
        .filter(|kind| *kind != ReadingKind::Contamination)
        .map(|kind| Choice::new(kind.as_str(), readings::kind(kind)))
}
