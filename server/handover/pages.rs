//! The pages of handing over: the list as it is now, and each handover.

use axum::extract::{Path, Query, State};
use axum::response::Response;
use serde::Deserialize;
use time::OffsetDateTime;
use uuid::Uuid;

use super::actions::{self, NewHandover, successors};
use super::sheet::{Ground, beyond, last_sealed};
use super::store::{self, Handover};
use super::views::{HandoverForm, HandoverPage, HandoverRow, SheetPage, Stands};
use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::{Done, Key};
use crate::problem::Problems;
use crate::rights::{HandOver, Right, SeeHandover};
use crate::router::Pages;
use crate::web::dates::Zone;
use crate::web::desk::{KeyForm, lying_at};
use crate::web::fields::Choice;
use crate::web::forms::{Form, in_words, mend, new_key, on_to, page, read_id, read_key, to_mend};
use crate::web::frame::Frame;
use crate::web::messages::handover as words;
use crate::web::shell::{Place, Shell};

/// So many handovers a page lists.
const PAGE: i64 = 20;

/// The routes of these pages.
#[must_use]
pub fn pages() -> Pages {
    Pages::new()
        .get("/rooms/{room}/handover", sheet)
        .post("/rooms/{room}/handover", open)
        .get("/rooms/{room}/handovers/{handover}", handover)
        .post("/rooms/{room}/handovers/{handover}/confirm", confirm)
        .post("/rooms/{room}/handovers/{handover}/withdraw", withdraw)
}

/// Which part of the handovers: before the entry of this number.
#[derive(Debug, Default, Deserialize)]
#[serde(default)]
struct Before {
    before: Option<i64>,
}

fn shell<R: Right>(permit: &Permit<R>, frame: &Frame, path: &str) -> Shell {
    lying_at(frame.shell_in(permit, Some(Place::Handover)), path)
}

async fn sheet(
    State(app): State<App>,
    permit: Permit<SeeHandover>,
    frame: Frame,
    Query(Before { before }): Query<Before>,
) -> Result<Response> {
    let form = HandoverForm {
        key: new_key()?,
        ..HandoverForm::default()
    };
    let none = Problems::default();
    page(&sheet_page(&app, &permit, &frame, (form, before), &none).await?)
}

async fn sheet_page<R: Right>(
    app: &App,
    permit: &Permit<R>,
    frame: &Frame,
    (form, before): (HandoverForm, Option<i64>),
    problems: &Problems,
) -> Result<SheetPage> {
    let (now, sealed) = (app.clock().now(), last_sealed(app, permit.room()).await?);
    let (ground, handovers) = app
        .database()
        .reading(permit.scope(), move |tx| {
            Box::pin(async move {
                let ground = Ground::read(tx, now, sealed).await?;
                Ok((ground, store::list(tx, before, PAGE).await?))
            })
        })
        .await?;
    let zone = ground.settings.time_zone()?;
    let is_full = i64::try_from(handovers.len()).is_ok_and(|count| count >= PAGE);
    let last = handovers.last().filter(|_| is_full);
    let others = successors(&ground.members, permit.person().id);
    Ok(SheetPage {
        shell: shell(permit, frame, "/handover"),
        as_of: zone.minute_in_full(now),
        parts: ground.parts(),
        successors: others
            .map(|member| Choice::new(member.person, &member.name))
            .collect(),
        older: last.map(|last| format!("?before={}", last.opened_seq)),
        handovers: handovers.iter().map(|one| row(one, &zone, now)).collect(),
        form,
        problems: in_words(problems, ground.settings.numbers()),
    })
}

fn row(handover: &Handover, zone: &Zone, now: OffsetDateTime) -> HandoverRow {
    HandoverRow {
        id: handover.id.to_string(),
        at: zone.words(handover.opened_at, now),
        sentence: sentence(handover, zone),
    }
}

/// Between whom it is, and how it stands.
fn sentence(handover: &Handover, zone: &Zone) -> String {
    let (from, to) = (&handover.from_name, &handover.to_name);
    let at = |at| zone.minute_in_full(at).words;
    match (handover.confirmed_at, handover.withdrawn_at) {
        (Some(confirmed), _) => words::done(from, to, &at(confirmed)),
        (None, Some(withdrawn)) => words::withdrawn(from, to, &at(withdrawn)),
        (None, None) => words::waits(from, to),
    }
}

async fn open(
    State(app): State<App>,
    permit: Permit<HandOver>,
    frame: Frame,
    Form(form): Form<HandoverForm>,
) -> Result<Response> {
    let key = read_key(&form.key)?;
    match open_as_typed(&app, &permit, key, &form).await {
        Ok(done) => {
            let id = done.id("handover")?;
            Ok(on_to(&app, &permit, &format!("/handovers/{id}")))
        }
        Err(error) => {
            let problems = to_mend(error)?;
            mend(&sheet_page(&app, &permit, &frame, (form, None), &problems).await?)
        }
    }
}

async fn open_as_typed(
    app: &App,
    permit: &Permit<HandOver>,
    key: Key,
    form: &HandoverForm,
) -> Result<Done> {
    let to = read_id(&form.successor).map_err(|problem| Error::field("successor", problem))?;
    actions::open(app, permit, key, NewHandover { to_person_id: to }).await
}

async fn handover(
    State(app): State<App>,
    permit: Permit<SeeHandover>,
    frame: Frame,
    Path((_, handover)): Path<(String, Uuid)>,
) -> Result<Response> {
    let none = Problems::default();
    page(&handover_page(&app, &permit, &frame, handover, &none).await?)
}

async fn handover_page<R: Right>(
    app: &App,
    permit: &Permit<R>,
    frame: &Frame,
    id: Uuid,
    problems: &Problems,
) -> Result<HandoverPage> {
    let (now, sealed) = (app.clock().now(), last_sealed(app, permit.room()).await?);
    let (ground, found) = app
        .database()
        .reading(permit.scope(), move |tx| {
            Box::pin(async move {
                let found = store::handover(tx, id).await?;
                Ok((Ground::read(tx, now, sealed).await?, found))
            })
        })
        .await?;
    let found = found.ok_or(Error::NotFound)?;
    let zone = ground.settings.time_zone()?;
    let present = match found.is_open() {
        true => ground.parts(),
        false => found.parts.clone(),
    };
    let shell = shell(permit, frame, &format!("/handovers/{id}"));
    let person = permit.person().id;
    Ok(HandoverPage {
        id: id.to_string(),
        sentence: sentence(&found, &zone),
        stands: stands(&found, person),
        opened: zone.minute_in_full(found.opened_at),
        opened_seq: found.opened_seq,
        confirmed_seq: found.confirmed_seq,
        come: beyond(&present, &found.parts),
        gone: beyond(&found.parts, &present),
        parts: found.parts,
        own_page: shell.at(&format!("/members/{person}")),
        key: new_key()?,
        problems: in_words(problems, ground.settings.numbers()),
        shell,
    })
}

fn stands(handover: &Handover, reader: Uuid) -> Stands {
    match handover.is_open() {
        true if handover.to_person_id == reader => Stands::ForYou,
        true => Stands::ForAnother,
        false if handover.confirmed_at.is_some() && handover.from_person_id == reader => {
            Stands::YouHandedOver
        }
        false => Stands::Ended,
    }
}

/// Where what was done with a handover leads: its page, or it again with what is
/// in the way.
async fn onward(
    app: &App,
    permit: &Permit<HandOver>,
    frame: &Frame,
    handover: Uuid,
    sent: Result<Done>,
) -> Result<Response> {
    match sent {
        Ok(_) => Ok(on_to(app, permit, &format!("/handovers/{handover}"))),
        Err(error) => {
            let problems = to_mend(error)?;
            mend(&handover_page(app, permit, frame, handover, &problems).await?)
        }
    }
}

async fn confirm(
    State(app): State<App>,
    permit: Permit<HandOver>,
    frame: Frame,
    Path((_, handover)): Path<(String, Uuid)>,
    Form(form): Form<KeyForm>,
) -> Result<Response> {
    let key = read_key(&form.key)?;
    let sent = actions::confirm(&app, &permit, key, handover).await;
    onward(&app, &permit, &frame, handover, sent).await
}

async fn withdraw(
    State(app): State<App>,
    permit: Permit<HandOver>,
    frame: Frame,
    Path((_, handover)): Path<(String, Uuid)>,
    Form(form): Form<KeyForm>,
) -> Result<Response> {
    let key = read_key(&form.key)?;
    let sent = actions::withdraw(&app, &permit, key, handover).await;
    onward(&app, &permit, &frame, handover, sent).await
}
