//! The page of a line, and the form of its finishing times.

use axum::extract::{Path, State};
use axum::response::Response;
use serde::Deserialize;
use uuid::Uuid;

use super::actions::{Emptying, Joining, empty_wash, join_wash, set_finishing};
use super::form::{of_finishing, read_finishing};
use super::line_page::{Ground, line_page};
use super::views::{FinishingForm, FinishingPage};
use crate::app::App;
use crate::bench::pages::shell;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::{Done, Key};
use crate::problem::Problems;
use crate::rights::{KeepBench, NoteSheets, SeeBench};
use crate::router::Pages;
use crate::web::desk::KeyForm;
use crate::web::forms::{Form, in_words, mend, new_key, on_to, page, read_id, read_key, to_mend};
use crate::web::frame::Frame;

const LINE: &str = "/rooms/{room}/lines/{line}";

/// The routes of these pages.
pub fn pages() -> Pages {
    let at = |path: &str| format!("{LINE}{path}");
    Pages::new()
        .get(LINE, line)
        .post(&at("/wash"), join)
        .post(&at("/wash/empty"), empty)
        .get(&at("/finishing/{class}"), form)
        .post(&at("/finishing/{class}"), change)
}

async fn line(
    State(app): State<App>,
    permit: Permit<SeeBench>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit, id).await?;
    let (none, now) = (Problems::default(), app.clock().now());
    page(&line_page(&permit, &frame, &ground, &none, now)?)
}

/// A print that joins the wash, as its button says it.
#[derive(Debug, Default, Deserialize)]
#[serde(default)]
struct JoinForm {
    key: String,
    paper_class: String,
    had_wash_aid: String,
}

async fn join(
    State(app): State<App>,
    permit: Permit<NoteSheets>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<JoinForm>,
) -> Result<Response> {
    let key = read_key(&form.key)?;
    let outcome = match read_id(&form.paper_class) {
        Ok(paper_class_id) => {
            let had_wash_aid = form.had_wash_aid == "yes";
            let joining = Joining {
                line_id: id,
                paper_class_id,
                had_wash_aid,
            };
            join_wash(&app, &permit, key, joining).await
        }
        Err(problem) => Err(Error::field("paper_class", problem)),
    };
    shown_again(&app, &permit, &frame, id, outcome).await
}

async fn empty(
    State(app): State<App>,
    permit: Permit<NoteSheets>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<KeyForm>,
) -> Result<Response> {
    let key: Key = read_key(&form.key)?;
    let emptying = Emptying {
        emptied_line_id: id,
    };
    let outcome = empty_wash(&app, &permit, key, emptying).await;
    shown_again(&app, &permit, &frame, id, outcome).await
}

/// Back to the line, or the line with what is wrong.
async fn shown_again(
    app: &App,
    permit: &Permit<NoteSheets>,
    frame: &Frame,
    id: Uuid,
    outcome: Result<Done>,
) -> Result<Response> {
    match outcome {
        Ok(_) => Ok(on_to(app, permit, &format!("/lines/{id}"))),
        Err(error) => {
            let (wrong, now) = (to_mend(error)?, app.clock().now());
            // What a button sends has no field on the page.
            let mut problems = Problems::default();
            for (_, problem) in wrong.iter() {
                problems.add("", problem.clone());
            }
            let ground = Ground::read(app, permit, id).await?;
            mend(&line_page(permit, frame, &ground, &problems, now)?)
        }
    }
}

async fn form(
    State(app): State<App>,
    permit: Permit<KeepBench>,
    frame: Frame,
    Path((_, line, class)): Path<(String, Uuid, Uuid)>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit, line).await?;
    let (key, numbers) = (new_key()?, ground.settings.numbers());
    let form = match ground.finishing(class) {
        Some(times) => of_finishing(times, key, numbers),
        None => FinishingForm {
            key,
            ..FinishingForm::default()
        },
    };
    let none = Problems::default();
    page(&form_page(&permit, &frame, (&ground, class), form, &none)?)
}

fn form_page(
    permit: &Permit<KeepBench>,
    frame: &Frame,
    (ground, class): (&Ground, Uuid),
    form: FinishingForm,
    problems: &Problems,
) -> Result<FinishingPage> {
    let line = &ground.line;
    let path = format!("/lines/{}/finishing/{class}", line.id);
    Ok(FinishingPage {
        shell: shell(permit, frame, &path),
        line_id: line.id.to_string(),
        line: line.name.clone(),
        class_id: class.to_string(),
        class: ground.class(class)?.name.clone(),
        form,
        problems: in_words(problems, ground.settings.numbers()),
    })
}

async fn change(
    State(app): State<App>,
    permit: Permit<KeepBench>,
    frame: Frame,
    Path((_, line, class)): Path<(String, Uuid, Uuid)>,
    Form(form): Form<FinishingForm>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit, line).await?;
    ground.class(class)?;
    let outcome = match read_finishing(&form, (line, class), ground.settings.numbers()) {
        Ok(new) => set_finishing(&app, &permit, read_key(&form.key)?, new).await,
        Err(problems) => Err(Error::Invalid(problems)),
    };
    match outcome {
        Ok(_) => Ok(on_to(&app, &permit, &format!("/lines/{line}"))),
        Err(error) => {
            let problems = to_mend(error)?;
            let of = (&ground, class);
            mend(&form_page(&permit, &frame, of, form, &problems)?)
        }
    }
}
