//! What a note did, and taking it back.

use axum::extract::{Path, Query, State};
use axum::response::Response;
use serde::Deserialize;
use time::OffsetDateTime;
use uuid::Uuid;

use super::actions::{UNDO, Undo, undo};
use super::correct_pages::beside;
use super::effects::Effect;
use super::story::{Story, story};
use super::views::{NoteEnd, NoteReplaced, SheetsNotedPage, UndoForm, UndoNotePage};
use super::{Pass, input};
use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::{Done, Key};
use crate::problem::Problems;
use crate::rights::{LookAtBoard, Right, Role, UndoNote};
use crate::router::Pages;
use crate::web::forms::{Form, in_words, mend, new_key, on_to, page, read_key, to_mend};
use crate::web::frame::Frame;
use crate::web::messages::{bench, sheets as words};
use crate::web::numbers::Numbers;
use crate::web::shell::Place;

/// The routes of these pages.
pub(super) fn pages() -> Pages {
    Pages::new()
        .get("/rooms/{room}/sheets/{seq}", noted)
        .get("/rooms/{room}/sheets/{seq}/undo", undo_form)
        .post("/rooms/{room}/sheets/{seq}/undo", undo_send)
}

/// What the address says of the time.
#[derive(Debug, Default, Deserialize)]
#[serde(default)]
struct SaidOfTime {
    time: String,
}

async fn noted(
    State(app): State<App>,
    permit: Permit<LookAtBoard>,
    frame: Frame,
    Path((_, seq)): Path<(String, i64)>,
    Query(said): Query<SaidOfTime>,
) -> Result<Response> {
    let story = look_at(&app, &permit, seq).await?;
    let time_note = match said.time.as_str() {
        "moved" => Some(bench::moved_forward()),
        "first" => Some(bench::first_of_two()),
        _ => None,
    };
    let noted = noted_page(&permit, &frame, &story, app.clock().now())?;
    page(&SheetsNotedPage { time_note, ..noted })
}

fn noted_page(
    permit: &Permit<LookAtBoard>,
    frame: &Frame,
    story: &Story,
    now: OffsetDateTime,
) -> Result<SheetsNotedPage> {
    let (pass, zone) = (&story.pass, story.settings.time_zone()?);
    let is_undone = pass.reversed_by.is_some();
    let (reader, role) = (permit.person().id, permit.role());
    let until = may_undo_until(pass, reader, role, now);
    let may_correct = !is_undone && role == Role::Steward;
    Ok(SheetsNotedPage {
        shell: frame.shell_in(permit, Some(Place::NoteSheets)),
        seq: pass.seq,
        count: pass.sheets.to_string(),
        noun: words::noun(pass.sheets.into(), pass.is_film),
        paper: paper(pass).unwrap_or_else(|| bench::FILM.to_owned()),
        is_film: pass.is_film,
        line: pass.line_name.clone(),
        workshop: pass
            .workshop_id
            .map(|id| id.to_string())
            .zip(pass.workshop.clone()),
        line_id: pass.line_id.to_string(),
        at: zone.words(pass.happened_at, now),
        person: (pass.person_id != reader).then(|| story.person.clone()),
        written_by: story.written_by.clone(),
        not_counted: not_counted(pass),
        effects: effects_in_words(story),
        replaced: story.corrects.as_ref().map(|old| replaced(old, story)),
        end: story.end.as_ref().map(|end| NoteEnd {
            said: words::taken_back(&end.by, &end.reason),
            corrected_by: end.corrected_by,
        }),
        time_note: None,
        may_correct,
        may_set_right: may_correct && !pass.is_film,
        undo_until: until.map(|until| zone.words(until, now)),
        is_undone,
    })
}

fn not_counted(pass: &Pass) -> Option<String> {
    let count = words::sheets(pass.sheets.into());
    pass.is_estimated.then(|| words::nobody_counted(&count))
}

fn replaced(old: &Story, new: &Story) -> NoteReplaced {
    let why = old.end.as_ref();
    NoteReplaced {
        seq: old.pass.seq,
        said: why.map_or_else(String::new, |end| {
            words::set_right(&end.by, old.pass.seq, &end.reason)
        }),
        rows: beside(&old.into(), &new.into(), old.settings.numbers()),
    }
}

/// The paper of a note; nothing for film.
pub(super) fn paper(pass: &Pass) -> Option<String> {
    let (size, class) = pass.sheet_size.as_ref().zip(pass.paper_class.as_ref())?;
    Some(format!("{size}, {class}"))
}

/// Until when this reader may take the note back.
fn may_undo_until(
    pass: &Pass,
    reader: Uuid,
    role: Role,
    now: OffsetDateTime,
) -> Option<OffsetDateTime> {
    let until = pass.recorded_at + UNDO;
    let is_own = pass.person_id == reader;
    let may = pass.reversed_by.is_none() && role != Role::Treasurer;
    (may && is_own && now <= until).then_some(until)
}

fn effects_in_words(story: &Story) -> Vec<String> {
    let numbers = story.settings.numbers();
    match story.effects.is_empty() {
        true if story.is_without_tray => vec![words::UNKNOWN_TRAY.to_owned()],
        true => vec![bench::WORE_NOTHING.to_owned()],
        false => {
            let effects = story.effects.iter();
            effects.map(|effect| effect.in_words(numbers)).collect()
        }
    }
}

pub(super) async fn look_at<R: Right>(app: &App, permit: &Permit<R>, seq: i64) -> Result<Story> {
    app.database()
        .reading(permit.scope(), move |tx| Box::pin(story(tx, seq)))
        .await
}

async fn undo_form(
    State(app): State<App>,
    permit: Permit<UndoNote>,
    frame: Frame,
    Path((_, seq)): Path<(String, i64)>,
) -> Result<Response> {
    let story = look_at(&app, &permit, seq).await?;
    let form = UndoForm {
        key: new_key()?,
        ..UndoForm::default()
    };
    let (none, now) = (Problems::default(), app.clock().now());
    page(&undo_page(&permit, &frame, &story, form, &none, now)?)
}

async fn undo_send(
    State(app): State<App>,
    permit: Permit<UndoNote>,
    frame: Frame,
    Path((_, seq)): Path<(String, i64)>,
    Form(form): Form<UndoForm>,
) -> Result<Response> {
    let story = look_at(&app, &permit, seq).await?;
    let key = read_key(&form.key)?;
    match undo_as_typed(&app, &permit, key, story.pass.id, &form).await {
        Ok(_) => Ok(on_to(&app, &permit, &format!("/sheets/{seq}"))),
        Err(error) => {
            let (problems, now) = (to_mend(error)?, app.clock().now());
            mend(&undo_page(&permit, &frame, &story, form, &problems, now)?)
        }
    }
}

async fn undo_as_typed(
    app: &App,
    permit: &Permit<UndoNote>,
    key: Key,
    pass_id: Uuid,
    form: &UndoForm,
) -> Result<Done> {
    let reason = input::reason(&form.reason);
    let reason = reason.map_err(|problem| Error::field("reason", problem))?;
    let wanted = Undo { pass_id, reason };
    undo(app, permit, key, wanted).await
}

fn undo_page(
    permit: &Permit<UndoNote>,
    frame: &Frame,
    story: &Story,
    form: UndoForm,
    problems: &Problems,
    now: OffsetDateTime,
) -> Result<UndoNotePage> {
    let (pass, numbers) = (&story.pass, story.settings.numbers());
    Ok(UndoNotePage {
        shell: frame.shell_in(permit, Some(Place::NoteSheets)),
        seq: pass.seq,
        note: bench::note(pass.sheets, paper(pass).as_deref(), &pass.line_name),
        at: story.settings.time_zone()?.words(pass.happened_at, now),
        effects: given_back(&story.effects, numbers),
        asks_reason: pass.person_id != permit.person().id,
        form,
        problems: in_words(problems, numbers),
    })
}

/// What comes back to each bath.
pub(super) fn given_back(effects: &[Effect], numbers: Numbers) -> Vec<String> {
    effects
        .iter()
        .filter(|effect| effect.spent_nl > 0)
        .map(|effect| bench::gives_back(&effect.bath, &effect.spent(numbers)))
        .collect()
}
