//! The pages of rooms: the front door, the rooms of a person, setting up the
//! first room, and a room's settings.

use axum::extract::{Path, State};
use axum::http::HeaderMap;
use axum::response::Response;

use super::actions::{Founder, NewRoom, change_settings, open_room};
use super::form::{read_settings, shown_settings};
use super::settings::{Settings, Units};
use super::store;
use super::views::{RoomShown, RoomsPage, SettingsForm, SettingsPage};
use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::accounts::NewAccount;
use crate::identity::links::{self, Kind, Link};
use crate::identity::names::{LogInName, read_name};
use crate::identity::pages::{let_into_room, spent, unreferred};
use crate::identity::passwords::Password;
use crate::identity::secret::Secret;
use crate::identity::views::{RoleShown, SetUpForm, SetUpPage};
use crate::identity::{Client, Permit, Person, memberships};
use crate::logbook::Recording;
use crate::problem::{Problem, Problems};
use crate::rights::{KeepRoom, Right, SeeRoom};
use crate::router::Pages;
use crate::starters::STARTERS;
use crate::web::dates::zone_names;
use crate::web::fields::Choice;
use crate::web::forms::{Form, in_words, mend, new_key, on_to, page, read_key, see_other, to_mend};
use crate::web::frame::Frame;
use crate::web::numbers::Numbers;
use crate::web::shell::{Place, Shell};

/// The routes of these pages.
#[must_use]
pub fn pages() -> Pages {
    Pages::new()
        .open_get("/", front_door)
        .open_get("/rooms", rooms)
        .open_get("/set-up/{secret}", set_up_form)
        .open_post("/set-up/{secret}", set_up_send)
        .get("/rooms/{room}/settings", settings_form)
        .post("/rooms/{room}/settings", settings_send)
}

async fn front_door(State(app): State<App>) -> Response {
    see_other(&app, "/rooms")
}

async fn rooms(State(app): State<App>, person: Person, frame: Frame) -> Result<Response> {
    let rooms = memberships::all_shown(&app, person.id).await?;
    let rooms = rooms.into_iter().filter_map(|(membership, is_suspended)| {
        Some(RoomShown {
            role: RoleShown::named(membership.role.as_str())?,
            slug: membership.slug,
            name: membership.room_name,
            is_closed: membership.is_closed,
            is_suspended,
        })
    });
    page(&RoomsPage {
        shell: frame.shell_of(&person),
        rooms: rooms.collect(),
    })
}

fn zones() -> Vec<Choice> {
    let names = zone_names().into_iter();
    names.map(|name| Choice::new(name.clone(), name)).collect()
}

fn set_up_page(frame: &Frame, form: SetUpForm, problems: &Problems) -> SetUpPage {
    SetUpPage {
        shell: frame.shell(),
        form: SetUpForm {
            password: String::new(),
            ..form
        },
        problems: in_words(problems, Numbers::with_mark(".")),
        zones: zones(),
    }
}

async fn set_up_form(
    State(app): State<App>,
    frame: Frame,
    Path(secret): Path<String>,
) -> Result<Response> {
    if let Err(error) = links::look(&app, Kind::SetUp, &Secret::received(&secret)).await {
        return spent(&frame, error);
    }
    let form = SetUpForm {
        zone: "UTC".to_owned(),
        currency: "EUR".to_owned(),
        units: Units::Metric.as_str().to_owned(),
        ..SetUpForm::default()
    };
    page(&set_up_page(&frame, form, &Problems::default())).map(unreferred)
}

async fn set_up_send(
    State(app): State<App>,
    client: Client,
    headers: HeaderMap,
    frame: Frame,
    Path(secret): Path<String>,
    Form(form): Form<SetUpForm>,
) -> Result<Response> {
    let link = match links::look(&app, Kind::SetUp, &Secret::received(&secret)).await {
        Ok(link) => link,
        Err(error) => return spent(&frame, error),
    };
    match set_up(&app, &link, &form).await {
        Ok((slug, account)) => let_into_room(&app, &client, &headers, &slug, account.id).await,
        Err(Error::Invalid(problems)) => {
            mend(&set_up_page(&frame, form, &problems)).map(unreferred)
        }
        Err(error) => spent(&frame, error),
    }
}

/// Reads the form, makes the account and opens the room.
async fn set_up(app: &App, link: &Link, form: &SetUpForm) -> Result<(String, NewAccount)> {
    let mut problems = Problems::default();
    let units = Units::parse(&form.units).ok_or(Problem::NotAChoice);
    let units = problems.take("units", units);
    let name = problems.take("name", read_name(&form.name));
    let log_in_name = problems.take("log_in_name", LogInName::read(&form.log_in_name));
    let beside = [form.log_in_name.as_str(), form.room_name.as_str()];
    let password = problems.take("password", Password::choose(&form.password, &beside));
    let zone = form.zone.clone();
    let mut settings = Settings::starting(form.room_name.clone(), zone, form.currency.clone());
    if let Err(wrong) = super::read::check(settings.clone()) {
        problems.append(as_in_set_up(wrong));
    }
    let (Some(units), Some(name), Some(log_in_name), Some(password), true) =
        (units, name, log_in_name, password, problems.is_empty())
    else {
        return Err(Error::Invalid(problems));
    };
    settings.units = units;
    let account = NewAccount::prepare(app, name, log_in_name, &password).await?;
    let founder = Founder::New {
        account: account.clone(),
        set_up: Some(link.id),
        is_operator: true,
    };
    let recording = Recording::ByClock(app.clock().clone());
    let opened = open_room(app, NewRoom::new(settings), founder, recording, STARTERS).await?;
    Ok((opened.slug, account))
}

/// The room's name has another field's name here: the steward has a name too.
fn as_in_set_up(problems: Problems) -> Problems {
    let mut renamed = Problems::default();
    for (field, problem) in problems.iter() {
        let field = if field == "name" { "room_name" } else { field };
        renamed.add(field, problem.clone());
    }
    renamed
}

async fn settings_form(
    State(app): State<App>,
    permit: Permit<SeeRoom>,
    frame: Frame,
) -> Result<Response> {
    let present = present(&app, &permit).await?;
    let form = shown_settings(&present.0, new_key()?);
    let shell = frame.shell_in(&permit, Some(Place::Settings));
    page(&settings_page(shell, &present, form, &Problems::default()))
}

/// The settings as they are, and the entry that set them.
async fn present<R: Right>(app: &App, permit: &Permit<R>) -> Result<(Settings, i64)> {
    app.database()
        .reading(permit.scope(), |tx| Box::pin(store::settings_and_seq(tx)))
        .await
}

fn settings_page(
    shell: Shell,
    (settings, seq): &(Settings, i64),
    form: SettingsForm,
    problems: &Problems,
) -> SettingsPage {
    SettingsPage {
        shell,
        form,
        problems: in_words(problems, settings.numbers()),
        zones: zones(),
        currency_is_fixed: false,
        changed_seq: *seq,
    }
}

async fn settings_send(
    State(app): State<App>,
    permit: Permit<KeepRoom>,
    frame: Frame,
    Form(form): Form<SettingsForm>,
) -> Result<Response> {
    let present = present(&app, &permit).await?;
    let key = read_key(&form.key)?;
    let sent = match read_settings(&form, present.0.numbers()) {
        Ok(new) => change_settings(&app, &permit, key, new).await,
        Err(problems) => Err(Error::Invalid(problems)),
    };
    let Err(error) = sent else {
        return Ok(on_to(&app, &permit, "/settings"));
    };
    let shell = frame.shell_in(&permit, Some(Place::Settings));
    mend(&settings_page(shell, &present, form, &to_mend(error)?))
}
