//! The page on which a steward sets somebody's note right: old and new beside
//! each other, before and after.

use axum::extract::{Path, State};
use axum::response::Response;
use time::OffsetDateTime;
use uuid::Uuid;

use super::correction::{Correction, correct, proposed};
use super::effects::{Effect, effects};
use super::note_pages::{class_choices, count, size_choices};
use super::noted_pages::paper;
use super::story::{Story, story};
use super::views::{Compared, CorrectForm, CorrectNotePage};
use super::{input, store};
use crate::app::App;
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::Key;
use crate::papers::{self, PaperClass, SheetSize};
use crate::problem::{Problem, Problems};
use crate::rights::CorrectNote;
use crate::router::Pages;
use crate::web::forms::{Form, in_words, mend, new_key, on_to, page, read_id, read_key, to_mend};
use crate::web::frame::Frame;
use crate::web::messages::{bench, sheets::compared as words};
use crate::web::numbers::Numbers;
use crate::web::shell::Place;

/// The routes of these pages.
pub(super) fn pages() -> Pages {
    Pages::new()
        .get("/rooms/{room}/sheets/{seq}/correct", correct_form)
        .post("/rooms/{room}/sheets/{seq}/correct", correct_send)
}

/// One of two notes beside each other.
pub(super) struct Side<'s> {
    sheets: i64,
    is_estimated: bool,
    paper_class: &'s str,
    sheet_size: &'s str,
    effects: &'s [Effect],
}

impl<'s> From<&'s Story> for Side<'s> {
    fn from(story: &'s Story) -> Self {
        Self {
            sheets: story.pass.sheets.into(),
            is_estimated: story.pass.is_estimated,
            paper_class: story.pass.paper_class.as_deref().unwrap_or_default(),
            sheet_size: story.pass.sheet_size.as_deref().unwrap_or_default(),
            effects: &story.effects,
        }
    }
}

/// Old beside new, row by row.
pub(super) fn beside(old: &Side<'_>, new: &Side<'_>, numbers: Numbers) -> Vec<Compared> {
    let row = |what: &str, old: &str, new: &str| Compared {
        what: what.to_owned(),
        is_changed: old != new,
        old: old.to_owned(),
        new: new.to_owned(),
    };
    let counted = |side: &Side<'_>| match side.is_estimated {
        true => words::not_counted(&side.sheets.to_string()),
        false => side.sheets.to_string(),
    };
    let mut rows = vec![
        row(words::COUNT, &counted(old), &counted(new)),
        row(words::SIZE, old.sheet_size, new.sheet_size),
        row(words::PAPER, old.paper_class, new.paper_class),
    ];
    let mut baths: Vec<&Effect> = old.effects.iter().collect();
    for effect in new.effects {
        if !baths.iter().any(|bath| bath.bath == effect.bath) {
            baths.push(effect);
        }
    }
    for bath in baths {
        let used = |side: &Side<'_>| {
            let found = side.effects.iter().find(|each| each.bath == bath.bath);
            found.map_or_else(|| words::NOTHING.to_owned(), |each| each.spent(numbers))
        };
        rows.push(row(&words::used_up(&bath.bath), &used(old), &used(new)));
    }
    rows
}

/// What the page stands on.
struct Ground {
    story: Story,
    classes: Vec<PaperClass>,
    sizes: Vec<SheetSize>,
    now: OffsetDateTime,
}

async fn ground(app: &App, permit: &Permit<CorrectNote>, seq: i64) -> Result<Ground> {
    let now = app.clock().now();
    app.database()
        .reading(permit.scope(), move |tx| {
            Box::pin(async move {
                let story = story(tx, seq).await?;
                if story.pass.is_film {
                    return Err(Error::NotFound);
                }
                Ok(Ground {
                    story,
                    classes: papers::paper_classes(tx).await?,
                    sizes: papers::sheet_sizes(tx).await?,
                    now,
                })
            })
        })
        .await
}

async fn correct_form(
    State(app): State<App>,
    permit: Permit<CorrectNote>,
    frame: Frame,
    Path((_, seq)): Path<(String, i64)>,
) -> Result<Response> {
    let ground = ground(&app, &permit, seq).await?;
    let form = as_noted(&ground, new_key()?);
    page(&correct_page(
        &permit,
        &frame,
        &ground,
        form,
        &Problems::default(),
    )?)
}

/// The form as the note stands.
fn as_noted(ground: &Ground, key: String) -> CorrectForm {
    let pass = &ground.story.pass;
    let text = |id: Option<Uuid>| id.map_or_else(String::new, |id| id.to_string());
    CorrectForm {
        key,
        paper_class: text(pass.paper_class_id),
        sheet_size: text(pass.sheet_size_id),
        sheets: pass.sheets.to_string(),
        ..CorrectForm::default()
    }
}

async fn correct_send(
    State(app): State<App>,
    permit: Permit<CorrectNote>,
    frame: Frame,
    Path((_, seq)): Path<(String, i64)>,
    Form(form): Form<CorrectForm>,
) -> Result<Response> {
    let (key, ground) = (read_key(&form.key)?, ground(&app, &permit, seq).await?);
    match as_typed(&app, &permit, key, (&ground, &form)).await {
        Ok(Answer::Done(seq)) => Ok(on_to(&app, &permit, &format!("/sheets/{seq}"))),
        Ok(Answer::Shown(rows)) => page(&CorrectNotePage {
            rows,
            ..correct_page(&permit, &frame, &ground, form, &Problems::default())?
        }),
        Err(error) => {
            let problems = to_mend(error)?;
            mend(&correct_page(&permit, &frame, &ground, form, &problems)?)
        }
    }
}

/// What a form that was sent comes to.
enum Answer {
    /// The note that holds now.
    Done(i64),
    /// Old beside new, nothing written.
    Shown(Vec<Compared>),
}

async fn as_typed(
    app: &App,
    permit: &Permit<CorrectNote>,
    key: Key,
    (ground, form): (&Ground, &CorrectForm),
) -> Result<Answer> {
    let wanted = read(form, ground.story.pass.id).map_err(Error::Invalid)?;
    if form.step == "show" {
        let (seq, now) = (ground.story.pass.seq, ground.now);
        let rows = app.database().reading(permit.scope(), move |tx| {
            Box::pin(async move { shown(tx, now, seq, &wanted).await })
        });
        return Ok(Answer::Shown(rows.await?));
    }
    let done = correct(app, permit, key, wanted).await?;
    // The first entry takes the old note back; the next is the one that holds.
    Ok(Answer::Done(done.seq + 1))
}

fn read(form: &CorrectForm, corrected_pass_id: Uuid) -> Result<Correction, Problems> {
    let mut problems = Problems::default();
    let class = problems.take("paper_class", read_id(&form.paper_class));
    let size = problems.take("sheet_size", read_id(&form.sheet_size));
    let sheets = count(&form.sheets, false).and_then(|count| count.ok_or(Problem::Missing));
    let sheets = problems.take("sheets", sheets);
    let reason = problems.take("reason", input::reason(&form.reason));
    match (class, size, sheets, reason) {
        (Some(paper_class_id), Some(sheet_size_id), Some(sheets), Some(reason)) => Ok(Correction {
            corrected_pass_id,
            paper_class_id,
            sheet_size_id,
            sheets,
            reason,
        }),
        _ => Err(problems),
    }
}

/// Old beside new, as a correction would write it now.
async fn shown(
    tx: &mut RoomTx,
    now: OffsetDateTime,
    seq: i64,
    wanted: &Correction,
) -> Result<Vec<Compared>> {
    let old = story(tx, seq).await?;
    let noted = proposed(tx, now, &old.pass, wanted).await?;
    let effects = effects(tx, &noted.wear).await?;
    let names = store::paper_names(tx, noted.paper_class_id, noted.sheet_size_id).await?;
    let (paper_class, sheet_size) = names.ok_or(Error::NotFound)?;
    let new = Side {
        sheets: noted.sheets.into(),
        is_estimated: false,
        paper_class: &paper_class,
        sheet_size: &sheet_size,
        effects: &effects,
    };
    Ok(beside(&(&old).into(), &new, old.settings.numbers()))
}

fn correct_page(
    permit: &Permit<CorrectNote>,
    frame: &Frame,
    ground: &Ground,
    form: CorrectForm,
    problems: &Problems,
) -> Result<CorrectNotePage> {
    let (story, numbers) = (&ground.story, ground.story.settings.numbers());
    let pass = &story.pass;
    Ok(CorrectNotePage {
        shell: frame.shell_in(permit, Some(Place::NoteSheets)),
        seq: pass.seq,
        note: bench::note(pass.sheets, paper(pass).as_deref(), &pass.line_name),
        person: story.person.clone(),
        at: story
            .settings
            .time_zone()?
            .words(pass.happened_at, ground.now),
        form,
        problems: in_words(problems, numbers),
        paper_classes: class_choices(&ground.classes),
        sheet_sizes: size_choices(&ground.sizes),
        rows: Vec::new(),
    })
}
