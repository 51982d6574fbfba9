//! The pages of whoever leads a workshop on its day.

use axum::extract::{Path, State};
use axum::response::Response;
use uuid::Uuid;

use super::cautions::{Cautions, cautions};
use super::input;
use super::leading::{self, GuestsOut, NewGuests, Opening};
use super::pages::{Ground, shell};
use super::views::{EndPage, GuestsForm, GuestsPage, OpenForm, OpenPage, SignOutForm, TopicToRead};
use crate::app::App;
use crate::arrivals;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::Done;
use crate::problem::{Problem, Problems};
use crate::rights::{LeadWorkshop, NoteSheets, Right};
use crate::rooms;
use crate::router::Pages;
use crate::topics::Topic;
use crate::topics::input::paragraphs;
use crate::web::desk::{KeyForm, ask};
use crate::web::forms::{Form, in_words, mend, new_key, on_to, page, read_id, read_key, to_mend};
use crate::web::frame::Frame;
use crate::web::messages::workshops as words;

/// The routes of these pages.
pub(super) fn pages() -> Pages {
    let at = |path: &str| format!("/rooms/{{room}}/workshops/{{workshop}}{path}");
    Pages::new()
        .get(&at("/open"), open_form)
        .post(&at("/open"), open_send)
        .get(&at("/guests"), guests_form)
        .post(&at("/guests"), guests_send)
        .post(&at("/sign-out"), sign_out)
        .get(&at("/take-over"), take_over_asked)
        .post(&at("/take-over"), take_over)
        .get(&at("/end"), end_form)
        .post(&at("/end"), end_send)
}

type Led = Permit<LeadWorkshop>;

fn to_workshop(app: &App, permit: &Led, id: Uuid) -> Response {
    on_to(app, permit, &format!("/workshops/{id}"))
}

async fn open_page(
    app: &App,
    permit: &Led,
    frame: &Frame,
    id: Uuid,
    problems: &Problems,
) -> Result<OpenPage> {
    let ground = Ground::read(app, permit, id).await?;
    let found = app
        .database()
        .reading(permit.scope(), |tx| Box::pin(cautions(tx)));
    let Cautions {
        in_trays,
        concentrates,
        topics,
        read,
    } = found.await?;
    Ok(OpenPage {
        shell: shell(permit, frame, &format!("/workshops/{id}/open")),
        workshop: ground.shown(),
        in_trays,
        concentrates,
        topics: topics.iter().map(to_read).collect(),
        key: new_key()?,
        read: read.digest()?,
        problems: in_words(problems, ground.settings.numbers()),
    })
}

fn to_read(topic: &Topic) -> TopicToRead {
    TopicToRead {
        title: topic.title.clone(),
        paragraphs: paragraphs(&topic.body).map(str::to_owned).collect(),
    }
}

async fn open_form(
    State(app): State<App>,
    permit: Led,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    page(&open_page(&app, &permit, &frame, id, &Problems::default()).await?)
}

async fn open_send(
    State(app): State<App>,
    permit: Led,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<OpenForm>,
) -> Result<Response> {
    match opens(&app, &permit, id, form).await {
        Ok(_) => Ok(to_workshop(&app, &permit, id)),
        Err(error) => mend(&open_page(&app, &permit, &frame, id, &to_mend(error)?).await?),
    }
}

async fn opens(app: &App, permit: &Led, id: Uuid, form: OpenForm) -> Result<Done> {
    if form.was_read != "yes" {
        return Err(Error::field("was_read", Problem::NotConfirmed));
    }
    let opening = Opening {
        opened_workshop_id: id,
        read: form.read,
    };
    leading::open(app, permit, read_key(&form.key)?, opening).await
}

fn guests_page(
    permit: &Led,
    frame: &Frame,
    ground: &Ground,
    (form, problems): (GuestsForm, &Problems),
) -> GuestsPage {
    let path = format!("/workshops/{}/guests", ground.workshop.id);
    GuestsPage {
        shell: shell(permit, frame, &path),
        workshop: ground.shown(),
        kept_days: ground.settings.guest_days,
        form,
        problems: in_words(problems, ground.settings.numbers()),
    }
}

async fn guests_form(
    State(app): State<App>,
    permit: Led,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit, id).await?;
    let form = GuestsForm {
        key: new_key()?,
        ..GuestsForm::default()
    };
    let shown = (form, &Problems::default());
    page(&guests_page(&permit, &frame, &ground, shown))
}

async fn guests_send(
    State(app): State<App>,
    permit: Led,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<GuestsForm>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit, id).await?;
    match come(&app, &permit, id, &form).await {
        Ok(_) => Ok(to_workshop(&app, &permit, id)),
        Err(error) => {
            let shown = (form, &to_mend(error)?);
            mend(&guests_page(&permit, &frame, &ground, shown))
        }
    }
}

async fn come(app: &App, permit: &Led, workshop_id: Uuid, form: &GuestsForm) -> Result<Done> {
    let names = input::names(form.names.lines());
    let new = NewGuests {
        workshop_id,
        names: names.map_err(|problem| Error::field("names", problem))?,
    };
    leading::sign_in(app, permit, read_key(&form.key)?, new).await
}

async fn sign_out(
    State(app): State<App>,
    permit: Led,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<SignOutForm>,
) -> Result<Response> {
    let guest_ids = match form.guest.as_str() {
        "" => Vec::new(),
        guest => vec![read_id(guest).map_err(|_| Error::NotFound)?],
    };
    let out = GuestsOut {
        workshop_id: id,
        guest_ids,
    };
    leading::sign_out(&app, &permit, read_key(&form.key)?, out).await?;
    Ok(to_workshop(&app, &permit, id))
}

async fn take_over_asked(
    State(app): State<App>,
    permit: Led,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit, id).await?;
    let workshop = &ground.workshop;
    let back = format!("/workshops/{id}");
    let action = format!("{back}/take-over");
    let question = words::take_over(&workshop.title, &workshop.leader);
    ask(shell(&permit, &frame, &action), question, &action, &back)
}

async fn take_over(
    State(app): State<App>,
    permit: Led,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<KeyForm>,
) -> Result<Response> {
    leading::take_over(&app, &permit, read_key(&form.key)?, id).await?;
    Ok(to_workshop(&app, &permit, id))
}

async fn end_page(
    app: &App,
    permit: &Led,
    frame: &Frame,
    id: Uuid,
    problems: &Problems,
) -> Result<EndPage> {
    let ground = Ground::read(app, permit, id).await?;
    let open = app.database().reading(permit.scope(), |tx| {
        Box::pin(async move {
            let settings = rooms::settings(tx).await?;
            arrivals::open_baths(tx, &settings).await
        })
    });
    let leads = ground.is_led_by(permit.person().id);
    Ok(EndPage {
        shell: shell(permit, frame, &format!("/workshops/{id}/end")),
        workshop: ground.shown(),
        there: words::there_still(ground.there()),
        noted: ground.noted(),
        open: open.await?,
        may_note: leads && NoteSheets::ROW.roles.contains(&permit.role()),
        key: new_key()?,
        problems: in_words(problems, ground.settings.numbers()),
    })
}

async fn end_form(
    State(app): State<App>,
    permit: Led,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    page(&end_page(&app, &permit, &frame, id, &Problems::default()).await?)
}

async fn end_send(
    State(app): State<App>,
    permit: Led,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<KeyForm>,
) -> Result<Response> {
    match leading::end(&app, &permit, read_key(&form.key)?, id).await {
        Ok(_) => Ok(to_workshop(&app, &permit, id)),
        Err(error) => mend(&end_page(&app, &permit, &frame, id, &to_mend(error)?).await?),
    }
}
