//! A steward opens somebody's incident and says that it is dealt with; the person, or a
//! steward whom they asked, erases it.

use axum::extract::{Path, State};
use axum::response::Response;
use uuid::Uuid;

use super::actions::{erase, finish, open};
use super::pages::{Opened, known, shell};
use crate::app::App;
use crate::error::Result;
use crate::identity::Permit;
use crate::rights::{EraseIncident, OpenIncident};
use crate::router::Pages;
use crate::web::desk::{KeyForm, ask};
use crate::web::forms::{Form, on_to, page, read_key};
use crate::web::frame::Frame;
use crate::web::messages::incidents as words;

const INCIDENT: &str = "/rooms/{room}/incidents/{incident}";

/// The routes of these pages.
pub(super) fn pages() -> Pages {
    let at = |path: &str| format!("{INCIDENT}{path}");
    Pages::new()
        .post(&at("/open"), open_send)
        .post(&at("/finish"), finish_send)
        .get(&at("/erase"), erase_asked)
        .post(&at("/erase"), erase_send)
}

async fn open_send(
    State(app): State<App>,
    permit: Permit<OpenIncident>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<KeyForm>,
) -> Result<Response> {
    let incident = known(&app, &permit, id).await?;
    open(&app, &permit, read_key(&form.key)?, id).await?;
    let opened = Opened::read(&app, &permit, incident).await?;
    page(&opened.page(&permit, &frame)?)
}

async fn finish_send(
    State(app): State<App>,
    permit: Permit<OpenIncident>,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<KeyForm>,
) -> Result<Response> {
    finish(&app, &permit, read_key(&form.key)?, id).await?;
    Ok(on_to(&app, &permit, "/incidents"))
}

async fn erase_asked(
    State(app): State<App>,
    permit: Permit<EraseIncident>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let incident = known(&app, &permit, id).await?;
    let path = format!("/incidents/{id}/erase");
    let shell = shell(&permit, &frame, &path);
    let question = words::erase_question(incident.number);
    ask(shell, question, &path, &format!("/incidents/{id}"))
}

async fn erase_send(
    State(app): State<App>,
    permit: Permit<EraseIncident>,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<KeyForm>,
) -> Result<Response> {
    erase(&app, &permit, read_key(&form.key)?, id).await?;
    Ok(on_to(&app, &permit, &format!("/incidents/{id}")))
}
