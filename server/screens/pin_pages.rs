//! One's own number and PIN for the door, and where a steward takes a PIN away.

use axum::extract::{Path, State};
use axum::response::Response;
use uuid::Uuid;

use super::actions::{self, NewPin};
use super::store;
use super::views::{PinForm, PinPage};
use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::{Permit, pins};
use crate::problem::Problems;
use crate::rights::{KeepMembers, KeepPin};
use crate::rooms;
use crate::router::Pages;
use crate::web::desk::{KeyForm, lying_at};
use crate::web::forms::{Form, in_words, mend, new_key, on_to, page, read_key, to_mend};
use crate::web::frame::Frame;
use crate::web::numbers::Numbers;
use crate::web::shell::Place;

/// The routes of these pages.
pub(super) fn pages() -> Pages {
    Pages::new()
        .get("/rooms/{room}/pin", pin_form)
        .post("/rooms/{room}/pin", pin_send)
        .post("/rooms/{room}/pin/remove", remove_own)
        .post("/rooms/{room}/members/{person}/remove-pin", remove)
}

async fn pin_form(
    State(app): State<App>,
    permit: Permit<KeepPin>,
    frame: Frame,
) -> Result<Response> {
    page(&pin_page(&app, &permit, &frame, new_key()?, &Problems::default()).await?)
}

async fn pin_page(
    app: &App,
    permit: &Permit<KeepPin>,
    frame: &Frame,
    key: String,
    problems: &Problems,
) -> Result<PinPage> {
    let (person, now) = (permit.person().id, app.clock().now());
    let (settings, number, set_at) = app
        .database()
        .reading(permit.scope(), move |tx| {
            Box::pin(async move {
                let number = store::member_number(tx, person).await?;
                let set_at = pins::set_at(tx, person).await?;
                Ok((rooms::settings(tx).await?, number, set_at))
            })
        })
        .await?;
    let zone = settings.time_zone()?;
    Ok(PinPage {
        shell: lying_at(frame.shell_in(permit, Some(Place::Present)), "/pin"),
        number: number.ok_or(Error::NotFound)?,
        set: set_at.map(|at| zone.words(at, now)),
        key,
        problems: in_words(problems, Numbers::default()),
    })
}

async fn pin_send(
    State(app): State<App>,
    permit: Permit<KeepPin>,
    frame: Frame,
    Form(form): Form<PinForm>,
) -> Result<Response> {
    let new = NewPin {
        pin: form.pin,
        password: form.current_password,
    };
    match actions::set_pin(&app, &permit, read_key(&form.key)?, new).await {
        Ok(_) => Ok(on_to(&app, &permit, "/pin")),
        Err(error) => {
            let problems = to_mend(error)?;
            mend(&pin_page(&app, &permit, &frame, form.key, &problems).await?)
        }
    }
}

async fn remove_own(
    State(app): State<App>,
    permit: Permit<KeepPin>,
    Form(form): Form<KeyForm>,
) -> Result<Response> {
    actions::remove_own_pin(&app, &permit, read_key(&form.key)?).await?;
    Ok(on_to(&app, &permit, "/pin"))
}

async fn remove(
    State(app): State<App>,
    permit: Permit<KeepMembers>,
    Path((_, person)): Path<(String, Uuid)>,
    Form(form): Form<KeyForm>,
) -> Result<Response> {
    actions::remove_pin(&app, &permit, read_key(&form.key)?, person).await?;
    Ok(on_to(&app, &permit, &format!("/members/{person}")))
}
