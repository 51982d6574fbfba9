//! The pages by which people say that a place is aired, and that this is over: two
//! presses, or once afterwards.

use axum::extract::{Path, State};
use axum::response::Response;
use uuid::Uuid;

use super::actions::{NewAiring, air, end_airing};
use super::form::{NAMES, read_aired, read_end};
use super::pages::{Ground, shell};
use super::store::{self, Airing};
use super::views::{AiredPage, AiringEndPage, AiringForm};
use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::Done;
use crate::problem::Problems;
use crate::rights::NoteAiring;
use crate::router::Pages;
use crate::web::desk::renamed;
use crate::web::fields::Choice;
use crate::web::forms::{Form, in_words, mend, new_key, on_to, page, read_key, to_mend};
use crate::web::frame::Frame;
use crate::web::late;
use crate::web::messages::air as words;

const BEGIN: &str = "/rooms/{room}/air/{space}/airing";
const AIRED: &str = "/rooms/{room}/air/{space}/aired";
const END: &str = "/rooms/{room}/airings/{airing}/end";

/// The routes of these pages.
pub(super) fn pages() -> Pages {
    Pages::new()
        .post(BEGIN, begin)
        .get(AIRED, aired_form)
        .post(AIRED, aired_send)
        .get(END, end_form)
        .post(END, end_send)
}

fn empty_form(ground: &Ground) -> Result<AiringForm> {
    Ok(AiringForm {
        key: new_key()?,
        when: late::NOW.to_owned(),
        day: ground.zone.date_value(ground.now),
        ..AiringForm::default()
    })
}

fn days(ground: &Ground) -> Vec<Choice> {
    late::days(&ground.zone, ground.settings.late_note_minutes, ground.now)
}

async fn begin(
    State(app): State<App>,
    permit: Permit<NoteAiring>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<AiringForm>,
) -> Result<Response> {
    let new = NewAiring {
        aired_place_id: id,
        seconds: None,
        happened_at_us: None,
    };
    let outcome = air(&app, &permit, read_key(&form.key)?, new).await;
    done_or_mend(&app, &permit, &frame, id, (form, outcome)).await
}

async fn aired_form(
    State(app): State<App>,
    permit: Permit<NoteAiring>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let shown = (empty_form(&ground)?, &Problems::default());
    page(&aired_page(&permit, &frame, (&ground, id), shown)?)
}

fn aired_page(
    permit: &Permit<NoteAiring>,
    frame: &Frame,
    (ground, id): (&Ground, Uuid),
    (form, problems): (AiringForm, &Problems),
) -> Result<AiredPage> {
    let place = &ground.place(id)?.place;
    Ok(AiredPage {
        shell: shell(permit, frame, &format!("/air/{id}/aired")),
        id: id.to_string(),
        name: words::here(place.name.as_deref()).to_owned(),
        days: days(ground),
        form,
        problems: in_words(problems, ground.settings.numbers()),
    })
}

async fn aired_send(
    State(app): State<App>,
    permit: Permit<NoteAiring>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<AiringForm>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit).await?;
    let outcome = match read_aired(&form, id, &ground.settings) {
        Ok(new) => air(&app, &permit, read_key(&form.key)?, new).await,
        Err(problems) => Err(Error::Invalid(problems)),
    };
    done_or_mend(&app, &permit, &frame, id, (form, outcome)).await
}

/// On to the place, or the form again with what is to be mended.
async fn done_or_mend(
    app: &App,
    permit: &Permit<NoteAiring>,
    frame: &Frame,
    id: Uuid,
    (form, outcome): (AiringForm, Result<Done>),
) -> Result<Response> {
    let Err(error) = outcome else {
        return Ok(on_to(app, permit, &format!("/air/{id}")));
    };
    let problems = renamed(&to_mend(error)?, NAMES);
    let ground = Ground::read(app, permit).await?;
    mend(&aired_page(
        permit,
        frame,
        (&ground, id),
        (form, &problems),
    )?)
}

/// An airing and what is around it.
async fn kept(app: &App, permit: &Permit<NoteAiring>, id: Uuid) -> Result<(Ground, Airing)> {
    let database = app.database();
    let found = database.reading(permit.scope(), move |tx| Box::pin(store::airing(tx, id)));
    let found = found.await?.ok_or(Error::NotFound)?;
    Ok((Ground::read(app, permit).await?, found))
}

async fn end_form(
    State(app): State<App>,
    permit: Permit<NoteAiring>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let kept = kept(&app, &permit, id).await?;
    let shown = (empty_form(&kept.0)?, &Problems::default());
    page(&end_page(&permit, &frame, &kept, shown))
}

fn end_page(
    permit: &Permit<NoteAiring>,
    frame: &Frame,
    (ground, airing): &(Ground, Airing),
    (form, problems): (AiringForm, &Problems),
) -> AiringEndPage {
    let place = ground.place(airing.place_id).ok();
    let name = place.and_then(|place| place.place.name.as_deref());
    AiringEndPage {
        shell: shell(permit, frame, &format!("/airings/{}/end", airing.id)),
        id: airing.id.to_string(),
        back: ground.path(airing.place_id),
        name: words::here(name).to_owned(),
        sentence: ground.said().aired(airing),
        is_over: airing.ended_at.is_some(),
        days: days(ground),
        form,
        problems: in_words(problems, ground.settings.numbers()),
    }
}

async fn end_send(
    State(app): State<App>,
    permit: Permit<NoteAiring>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<AiringForm>,
) -> Result<Response> {
    let kept = kept(&app, &permit, id).await?;
    let outcome = match read_end(&form, id, &kept.0.settings) {
        Ok(over) => end_airing(&app, &permit, read_key(&form.key)?, over).await,
        Err(problems) => Err(Error::Invalid(problems)),
    };
    let Err(error) = outcome else {
        return Ok(on_to(&app, &permit, &kept.0.path(kept.1.place_id)));
    };
    let problems = renamed(&to_mend(error)?, NAMES);
    mend(&end_page(&permit, &frame, &kept, (form, &problems)))
}
