//! The form of what was found at a check, and taking a result back.

use axum::extract::{Path, State};
use axum::response::Response;
use uuid::Uuid;

use super::actions::{UndoResult, record, take_back};
use super::form::{FAILED, NAMES, PASSED, read_result};
use super::pages::{Ground, shell};
use super::standing::CheckNow;
use super::store::{self, CheckResult};
use super::views::{RecordPage, ResultForm};
use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::input::needed_remark;
use crate::logbook::Done;
use crate::problem::Problems;
use crate::rights::{RecordCheck, TakeBack};
use crate::router::Pages;
use crate::web::desk::renamed;
use crate::web::fields::Choice;
use crate::web::forms::{Form, in_words, mend, new_key, on_to, page, read_key, to_mend};
use crate::web::frame::Frame;
use crate::web::late;
use crate::web::messages::checks as words;
use crate::web::views::{ReasonForm, TakeBackPage};

const RECORD: &str = "/rooms/{room}/checks/{check}/record";
const TAKE_BACK: &str = "/rooms/{room}/check-results/{result}/take-back";

/// The routes of these pages.
pub(super) fn pages() -> Pages {
    Pages::new()
        .get(RECORD, form)
        .post(RECORD, send)
        .get(TAKE_BACK, take_back_form)
        .post(TAKE_BACK, take_back_send)
}

async fn form(
    State(app): State<App>,
    permit: Permit<RecordCheck>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let form = ResultForm {
        key: new_key()?,
        when: late::NOW.to_owned(),
        day: ground.zone.date_value(ground.now),
        ..ResultForm::default()
    };
    let (now, none) = (ground.check(id)?, Problems::default());
    page(&record_page(&permit, &frame, (&ground, now), form, &none))
}

fn record_page(
    permit: &Permit<RecordCheck>,
    frame: &Frame,
    (ground, now): (&Ground, &CheckNow),
    form: ResultForm,
    problems: &Problems,
) -> RecordPage {
    let (check, settings) = (&now.check, &ground.settings);
    let measure = check.measure.as_ref();
    let choice =
        |value: &str, (label, hint): (&str, &str)| Choice::new(value, label).explained(hint);
    RecordPage {
        shell: shell(permit, frame, &format!("/checks/{}/record", check.id)),
        id: check.id.to_string(),
        name: check.name.clone(),
        how: check.how.clone(),
        on_failure: check.on_failure.clone(),
        unit: measure.map(|measure| measure.unit.clone()),
        limit: measure.map_or_else(String::new, |measure| {
            words::limit(measure, settings.numbers())
        }),
        outcomes: vec![choice(PASSED, words::PASSED), choice(FAILED, words::FAILED)],
        days: late::days(&ground.zone, settings.late_note_minutes, ground.now),
        form,
        problems: in_words(problems, settings.numbers()),
    }
}

async fn send(
    State(app): State<App>,
    permit: Permit<RecordCheck>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<ResultForm>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let now = ground.check(id)?;
    let Err(error) = record_as_typed(&app, &permit, (&ground, id), &form).await else {
        return Ok(on_to(&app, &permit, &format!("/checks/{id}")));
    };
    let problems = renamed(&to_mend(error)?, NAMES);
    mend(&record_page(
        &permit,
        &frame,
        (&ground, now),
        form,
        &problems,
    ))
}

async fn record_as_typed(
    app: &App,
    permit: &Permit<RecordCheck>,
    (ground, id): (&Ground, Uuid),
    form: &ResultForm,
) -> Result<Done> {
    let new = read_result(form, id, &ground.settings).map_err(Error::Invalid)?;
    record(app, permit, read_key(&form.key)?, new).await
}

async fn kept(app: &App, permit: &Permit<TakeBack>, id: Uuid) -> Result<CheckResult> {
    let found = app
        .database()
        .reading(permit.scope(), move |tx| Box::pin(store::result(tx, id)));
    found.await?.ok_or(Error::NotFound)
}

async fn take_back_form(
    State(app): State<App>,
    permit: Permit<TakeBack>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let kept = kept(&app, &permit, id).await?;
    let form = ReasonForm {
        key: new_key()?,
        ..ReasonForm::default()
    };
    let none = Problems::default();
    page(&take_back_page(
        &permit,
        &frame,
        (&ground, &kept),
        form,
        &none,
    )?)
}

fn take_back_page(
    permit: &Permit<TakeBack>,
    frame: &Frame,
    (ground, result): (&Ground, &CheckResult),
    form: ReasonForm,
    problems: &Problems,
) -> Result<TakeBackPage> {
    let path = format!("/check-results/{}/take-back", result.id);
    let shell = shell(permit, frame, &path);
    let check = &ground.check(result.room_check_id)?.check;
    let numbers = ground.settings.numbers();
    Ok(TakeBackPage {
        words: words::TAKE_BACK,
        action: shell.at(&path),
        back: shell.at(&format!("/checks/{}", check.id)),
        shell,
        back_name: check.name.clone(),
        found: words::found(result, numbers),
        at: ground.zone.minute_in_full(result.happened_at),
        is_undone: result.undone_by.is_some(),
        form,
        problems: in_words(problems, numbers),
    })
}

async fn take_back_send(
    State(app): State<App>,
    permit: Permit<TakeBack>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<ReasonForm>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let kept = kept(&app, &permit, id).await?;
    let Err(error) = take_back_as_typed(&app, &permit, id, &form).await else {
        let check = kept.room_check_id;
        return Ok(on_to(&app, &permit, &format!("/checks/{check}")));
    };
    let (of, problems) = ((&ground, &kept), to_mend(error)?);
    mend(&take_back_page(&permit, &frame, of, form, &problems)?)
}

async fn take_back_as_typed(
    app: &App,
    permit: &Permit<TakeBack>,
    result_id: Uuid,
    form: &ReasonForm,
) -> Result<Done> {
    let reason = needed_remark(&form.reason).map_err(|problem| Error::field("reason", problem))?;
    let undo = UndoResult { result_id, reason };
    take_back(app, permit, read_key(&form.key)?, undo).await
}
