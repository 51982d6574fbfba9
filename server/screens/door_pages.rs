//! A door's pages: one act each, by a person's number and PIN. They list nobody,
//! and what they answer names nobody.

use axum::extract::{Query, State};
use axum::response::Response;
use serde::Deserialize;

use super::views::{ComeOrGoPage, DonePage, DoorForm, NoteAtDoorForm, NoteAtDoorPage};
use super::wall::of_room;
use crate::app::App;
use crate::arrivals::{self, actions, asks_of_who_comes, until_typed};
use crate::error::{Error, Result};
use crate::identity::devices::{Device, Door};
use crate::identity::{AtDoor, Permit, pins};
use crate::logbook::Done;
use crate::problem::{Problem, Problems};
use crate::rights::{Arrive, NoteSheets};
use crate::rooms;
use crate::router::Pages;
use crate::sheets::actions::note_sheets;
use crate::sheets::{Offer, read_counted};
use crate::web::forms::{Form, in_words, mend, new_key, page, read_key, see_other, to_mend};
use crate::web::frame::Frame;
use crate::web::messages::screens as words;
use crate::web::numbers::Numbers;
use crate::web::shell::Shell;

/// The routes of these pages.
pub(super) fn pages() -> Pages {
    Pages::new()
        .open_get("/screen/arrive", arrive_form)
        .open_post("/screen/arrive", arrive_send)
        .open_get("/screen/leave", leave_form)
        .open_post("/screen/leave", leave_send)
        .open_get("/screen/note", note_form)
        .open_post("/screen/note", note_send)
        .open_get("/screen/done", done)
}

/// The frame of a door's page: its room, the display of the screen, and nobody.
pub(super) fn shell(app: &App, device: &Device, frame: &Frame) -> Shell {
    of_room(app, device.room(), frame.display())
}

/// The permit of whoever typed their number and PIN, for this act alone.
pub(super) async fn by_pin<R: AtDoor>(
    app: &App,
    device: &Device,
    number: &str,
    pin: &str,
) -> Result<Permit<R>> {
    let typed = pins::Typed {
        number: number.to_owned(),
        pin: pin.to_owned(),
    };
    pins::admit(app, device, typed).await?.permit()
}

/// What a door's page is shown again with: a role that may not is told so there,
/// for the screen must not stay on an error's page; who can induct is not named.
pub(super) fn mended(error: Error) -> Result<Problems> {
    match error {
        Error::Refused(Problem::NotInducted { missing, .. }) => {
            let stewards = Vec::new();
            Ok(Problems::one(
                "",
                Problem::NotInducted { missing, stewards },
            ))
        }
        Error::Forbidden => Ok(Problems::one("", Problem::OtherRole)),
        other => to_mend(other),
    }
}

/// On to what says that it is done.
pub(super) fn on_to_done(app: &App, what: &str) -> Response {
    see_other(app, &format!("/screen/done?what={what}"))
}

fn new_form() -> Result<DoorForm> {
    Ok(DoorForm {
        key: new_key()?,
        ..DoorForm::default()
    })
}

async fn come_or_go(
    app: &App,
    device: &Device,
    frame: &Frame,
    is_leaving: bool,
    (form, problems): (DoorForm, Problems),
) -> Result<ComeOrGoPage> {
    let now = app.clock().now();
    let (settings, present, open) = app
        .database()
        .reading(device.scope(), move |tx| {
            Box::pin(async move {
                let settings = rooms::settings(tx).await?;
                let present = arrivals::present(tx, now).await?;
                let open = arrivals::open_baths(tx, &settings).await?;
                Ok((settings, present, open))
            })
        })
        .await?;
    let asks = || asks_of_who_comes(form.stay.clone(), &settings, now);
    let is_asked = !is_leaving && present.is_empty();
    Ok(ComeOrGoPage {
        shell: shell(app, device, frame),
        asks: is_asked.then(asks).transpose()?,
        is_leaving,
        form,
        problems: in_words(&problems, Numbers::default()),
        open: open.into_iter().map(|tray| tray.name).collect(),
    })
}

async fn arrive_form(State(app): State<App>, Door(device): Door, frame: Frame) -> Result<Response> {
    let fresh = (new_form()?, Problems::default());
    page(&come_or_go(&app, &device, &frame, false, fresh).await?)
}

async fn leave_form(State(app): State<App>, Door(device): Door, frame: Frame) -> Result<Response> {
    let fresh = (new_form()?, Problems::default());
    page(&come_or_go(&app, &device, &frame, true, fresh).await?)
}

async fn arrive_send(
    State(app): State<App>,
    Door(device): Door,
    frame: Frame,
    Form(form): Form<DoorForm>,
) -> Result<Response> {
    match arrives(&app, &device, &form).await {
        Ok(_) => Ok(on_to_done(&app, "arrived")),
        Err(error) => {
            let again = (form, mended(error)?);
            mend(&come_or_go(&app, &device, &frame, false, again).await?)
        }
    }
}

async fn arrives(app: &App, device: &Device, form: &DoorForm) -> Result<Done> {
    let key = read_key(&form.key)?;
    let until_us = until_typed(app, device.scope(), &form.stay).await?;
    let permit = by_pin::<Arrive>(app, device, &form.number, &form.pin).await?;
    actions::arrive(app, &permit, key, until_us).await
}

async fn leave_send(
    State(app): State<App>,
    Door(device): Door,
    frame: Frame,
    Form(form): Form<DoorForm>,
) -> Result<Response> {
    match leaves(&app, &device, &form).await {
        Ok(_) => Ok(on_to_done(&app, "left")),
        Err(error) => {
            let again = (form, mended(error)?);
            mend(&come_or_go(&app, &device, &frame, true, again).await?)
        }
    }
}

async fn leaves(app: &App, device: &Device, form: &DoorForm) -> Result<Done> {
    let key = read_key(&form.key)?;
    let permit = by_pin::<Arrive>(app, device, &form.number, &form.pin).await?;
    actions::leave(app, &permit, key, None).await
}

async fn note_form(State(app): State<App>, Door(device): Door, frame: Frame) -> Result<Response> {
    let form = NoteAtDoorForm {
        key: new_key()?,
        sheets: "1".to_owned(),
        ..NoteAtDoorForm::default()
    };
    page(&note_page(&app, &device, &frame, form, &Problems::default()).await?)
}

async fn note_page(
    app: &App,
    device: &Device,
    frame: &Frame,
    form: NoteAtDoorForm,
    problems: &Problems,
) -> Result<NoteAtDoorPage> {
    let now = app.clock().now();
    let offer = app
        .database()
        .reading(device.scope(), move |tx| Box::pin(Offer::read(tx, now)))
        .await?;
    Ok(NoteAtDoorPage {
        shell: shell(app, device, frame),
        form,
        problems: in_words(problems, Numbers::default()),
        lines: offer.lines,
        paper_classes: offer.paper_classes,
        sheet_sizes: offer.sheet_sizes,
    })
}

async fn note_send(
    State(app): State<App>,
    Door(device): Door,
    frame: Frame,
    Form(form): Form<NoteAtDoorForm>,
) -> Result<Response> {
    match notes(&app, &device, &form).await {
        Ok(_) => Ok(on_to_done(&app, "noted")),
        Err(error) => {
            let problems = mended(error)?;
            mend(&note_page(&app, &device, &frame, form, &problems).await?)
        }
    }
}

async fn notes(app: &App, device: &Device, form: &NoteAtDoorForm) -> Result<Done> {
    let key = read_key(&form.key)?;
    let typed = [
        &*form.line,
        &*form.paper_class,
        &*form.sheet_size,
        &*form.sheets,
    ];
    let new = read_counted(typed).map_err(Error::Invalid)?;
    let permit = by_pin::<NoteSheets>(app, device, &form.number, &form.pin).await?;
    note_sheets(app, &permit, key, new).await
}

/// What was done.
#[derive(Debug, Default, Deserialize)]
#[serde(default)]
struct What {
    what: String,
}

async fn done(
    State(app): State<App>,
    Door(device): Door,
    frame: Frame,
    Query(What { what }): Query<What>,
) -> Result<Response> {
    page(&DonePage {
        shell: shell(&app, &device, &frame),
        said: words::done(&what),
        advice: advice(&app, &device, &what).await?,
    })
}

/// What to mind after an act: what stands in the trays, for who came in.
async fn advice(app: &App, device: &Device, what: &str) -> Result<Vec<String>> {
    match what {
        "arrived" => {
            app.database()
                .reading(device.scope(), |tx| Box::pin(arrivals::cautions_now(tx)))
                .await
        }
        "flagged" | "reported" => Ok(vec![words::LEAVE_IT.to_owned()]),
        _ => Ok(Vec::new()),
    }
}
