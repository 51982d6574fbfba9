//! The page to note rolls of film, where a fixer takes any.

use axum::extract::State;
use axum::response::Response;
use time::OffsetDateTime;

use super::actions::{NewFilm, note_film};
use super::input;
use super::lines::{LineFor, lines_for};
use super::note_pages::at_time;
use super::views::{NoteFilmForm, NoteFilmPage};
use super::when::{self, Typed, When};
use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::Key;
use crate::problem::{Problem, Problems};
use crate::rights::NoteSheets;
use crate::rooms::{self, Settings};
use crate::router::Pages;
use crate::web::dates::Adjusted;
use crate::web::fields::Choice;
use crate::web::forms::{Form, in_words, mend, new_key, on_to, page, read_id, read_key, to_mend};
use crate::web::frame::Frame;
use crate::web::late;
use crate::web::messages::sheets as words;
use crate::web::numbers::Numbers;
use crate::web::shell::Place;

/// The routes of these pages.
pub(super) fn pages() -> Pages {
    Pages::new()
        .get("/rooms/{room}/sheets/film", film_form)
        .post("/rooms/{room}/sheets/film", film_send)
}

struct Ground {
    settings: Settings,
    lines: Vec<LineFor>,
    now: OffsetDateTime,
}

async fn ground(app: &App, permit: &Permit<NoteSheets>) -> Result<Ground> {
    let now = app.clock().now();
    app.database()
        .reading(permit.scope(), move |tx| {
            Box::pin(async move {
                Ok(Ground {
                    settings: rooms::settings(tx).await?,
                    lines: lines_for(tx, now).await?,
                    now,
                })
            })
        })
        .await
}

async fn film_form(
    State(app): State<App>,
    permit: Permit<NoteSheets>,
    frame: Frame,
) -> Result<Response> {
    let ground = ground(&app, &permit).await?;
    let form = fresh(&ground, new_key()?);
    page(&film_page(
        &permit,
        &frame,
        &ground,
        form,
        &Problems::default(),
    )?)
}

/// The form with the first line that takes film.
fn fresh(ground: &Ground, key: String) -> NoteFilmForm {
    let first = ground.lines.iter().find(|line| line.takes_film());
    NoteFilmForm {
        key,
        line: first.map_or_else(String::new, |line| line.id.to_string()),
        rolls: "1".to_owned(),
        when: "now".to_owned(),
        ..NoteFilmForm::default()
    }
}

async fn film_send(
    State(app): State<App>,
    permit: Permit<NoteSheets>,
    frame: Frame,
    Form(form): Form<NoteFilmForm>,
) -> Result<Response> {
    let key = read_key(&form.key)?;
    match film_as_typed(&app, &permit, key, &form).await {
        Ok((seq, adjusted)) => {
            let query = when::query(adjusted);
            Ok(on_to(&app, &permit, &format!("/sheets/{seq}{query}")))
        }
        Err(error) => {
            let (problems, ground) = (to_mend(error)?, ground(&app, &permit).await?);
            mend(&film_page(&permit, &frame, &ground, form, &problems)?)
        }
    }
}

async fn film_as_typed(
    app: &App,
    permit: &Permit<NoteSheets>,
    key: Key,
    form: &NoteFilmForm,
) -> Result<(i64, Adjusted)> {
    let typed = Typed {
        when: &form.when,
        day: &form.day,
        time: &form.time,
    };
    let when = when::read(app, permit, typed).await?;
    let (new, adjusted) = read(form, when).map_err(Error::Invalid)?;
    let done = note_film(app, permit, key, new).await.map_err(at_time)?;
    Ok((done.seq, adjusted))
}

fn read(form: &NoteFilmForm, when: When) -> Result<(NewFilm, Adjusted), Problems> {
    let mut problems = Problems::default();
    let line = problems.take("line", read_id(&form.line));
    let rolls = Numbers::default().read_count(&form.rolls);
    let rolls = rolls.map_err(Problem::Number).and_then(input::rolls);
    let rolls = problems.take("rolls", rolls);
    let when = problems.take("time", when);
    match (line, rolls, when) {
        (Some(line_id), Some(rolls), Some(when)) => {
            let film = NewFilm {
                line_id,
                rolls,
                happened_at_us: when.map(|(at, _)| at),
            };
            Ok((film, when.map_or(Adjusted::No, |(_, adjusted)| adjusted)))
        }
        _ => Err(problems),
    }
}

fn film_page(
    permit: &Permit<NoteSheets>,
    frame: &Frame,
    ground: &Ground,
    form: NoteFilmForm,
    problems: &Problems,
) -> Result<NoteFilmPage> {
    let numbers = ground.settings.numbers();
    let (takes, takes_not): (Vec<&LineFor>, Vec<&LineFor>) =
        ground.lines.iter().partition(|line| line.takes_film());
    Ok(NoteFilmPage {
        shell: frame.shell_in(permit, Some(Place::NoteSheets)),
        form,
        problems: in_words(problems, numbers),
        lines: takes.iter().map(|line| choice(line, numbers)).collect(),
        paper_only: takes_not.iter().map(|line| paper_only(line)).collect(),
        days: late::days(
            &ground.settings.time_zone()?,
            ground.settings.late_note_minutes,
            ground.now,
        ),
    })
}

fn choice(line: &LineFor, numbers: Numbers) -> Choice {
    let fixers = line.fixers.iter();
    let each: Vec<(String, String)> = fixers
        .filter_map(|(product, rolls)| Some((product.clone(), numbers.decimal((*rolls)?, 3))))
        .collect();
    Choice::new(line.id, &line.name).explained(words::takes_film(&each))
}

fn paper_only(line: &LineFor) -> String {
    let fixers = line.fixers.iter().filter(|(_, rolls)| rolls.is_none());
    let fixers: Vec<String> = fixers.map(|(product, _)| product.clone()).collect();
    words::takes_paper_only(&line.name, &fixers)
}
