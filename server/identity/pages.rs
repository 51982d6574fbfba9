//! The pages of logging in and out, of a new password, and of one's account.

use axum::extract::{Path, Query, State};
use axum::http::header::REFERRER_POLICY;
use axum::http::{HeaderMap, HeaderName, HeaderValue, StatusCode};
use axum::response::{IntoResponse, Response};
use serde::Deserialize;
use uuid::Uuid;

use super::accounts::{self, LoggedIn, NewPassword, Overview, Typed};
use super::links::{self, Kind, Link};
use super::names::read_name;
use super::secret::Secret;
use super::sessions::{
    self, clear_cookie, device_secret, session_secret, set_cookie, set_device_cookie,
};
use super::views::{AccountPage, LogInForm, LogInPage, ResetPage, SessionShown, SpentLinkPage};
use super::{Client, Person, memberships};
use crate::app::App;
use crate::clock::{micros, moment};
use crate::error::{Error, Result};
use crate::problem::{Problem, Problems};
use crate::router::Pages;
use crate::web::dates::Zone;
use crate::web::display::own_path;
use crate::web::fields::Choice;
use crate::web::forms::{Form, in_words, mend, page, see_other, to_mend};
use crate::web::frame::Frame;
use crate::web::messages::people as words;
use crate::web::numbers::Numbers;

const CLEAR_SITE_DATA: HeaderName = HeaderName::from_static("clear-site-data");

/// The routes of these pages.
#[must_use]
pub fn pages() -> Pages {
    Pages::new()
        .open_get("/log-in", log_in_form)
        .open_post("/log-in", log_in_send)
        .open_post("/log-out", log_out)
        .open_get("/reset/{secret}", reset_form)
        .open_post("/reset/{secret}", reset_send)
        .open_get("/account", account)
        .open_post("/account/name", change_name)
        .open_post("/account/password", change_password)
        .open_post("/account/seen", seen)
        .open_post("/account/sessions/end-all", end_all)
        .open_post("/account/sessions/{session}/end", end_one)
}

/// Numbers on pages that belong to no room.
fn numbers() -> Numbers {
    Numbers::with_mark(".")
}

/// Where to go after logging in.
#[derive(Debug, Default, Deserialize)]
#[serde(default)]
struct Onward {
    #[serde(alias = "next")]
    back: String,
}

async fn log_in_form(frame: Frame, Query(onward): Query<Onward>) -> Result<Response> {
    page(&LogInPage {
        shell: frame.shell(),
        form: LogInForm {
            back: onward.back,
            ..LogInForm::default()
        },
        problems: in_words(&Problems::default(), numbers()),
    })
}

async fn log_in_send(
    State(app): State<App>,
    client: Client,
    headers: HeaderMap,
    frame: Frame,
    Form(form): Form<LogInForm>,
) -> Result<Response> {
    let device = device_secret(&headers, app.address());
    match accounts::log_in(&app, &client, device, typed(&form)).await {
        Ok(logged_in) => {
            // Whoever was logged in here before is so no more.
            end_present(&app, &headers).await?;
            let onward = match logged_in.has_news {
                true => "/account",
                false => own_path(&form.back),
            };
            let_in(&app, see_other(&app, onward), &logged_in)
        }
        Err(error) => mend_log_in(&frame, form, &to_mend(error)?),
    }
}

fn typed(form: &LogInForm) -> Typed {
    Typed {
        log_in_name: form.log_in_name.clone(),
        password: form.password.clone(),
    }
}

fn mend_log_in(frame: &Frame, form: LogInForm, problems: &Problems) -> Result<Response> {
    mend(&LogInPage {
        shell: frame.shell(),
        form: LogInForm {
            password: String::new(),
            ..form
        },
        problems: in_words(problems, numbers()),
    })
}

/// Hands the session and the device's secret to the browser.
///
/// # Errors
/// A public path that no cookie can hold.
pub fn let_in(app: &App, mut response: Response, logged_in: &LoggedIn) -> Result<Response> {
    let cookies = [
        set_cookie(app.address(), &logged_in.session)?,
        set_device_cookie(app.address(), &logged_in.device)?,
    ];
    for (name, value) in cookies {
        response.headers_mut().append(name, value);
    }
    Ok(response)
}

/// Logs somebody in who just got an account, and leads them to their room's board.
///
/// # Errors
/// As for [`let_in`].
pub async fn let_into_room(
    app: &App,
    client: &Client,
    headers: &HeaderMap,
    slug: &str,
    person: Uuid,
) -> Result<Response> {
    let device = device_secret(headers, app.address());
    let logged_in = accounts::enter(app, client, device, person).await?;
    let board = see_other(app, &format!("/rooms/{slug}/board"));
    let_in(app, board, &logged_in)
}

async fn end_present(app: &App, headers: &HeaderMap) -> Result<()> {
    match session_secret(headers, app.address()) {
        Some(secret) => sessions::end(app, &secret).await,
        None => Ok(()),
    }
}

async fn log_out(State(app): State<App>, headers: HeaderMap) -> Result<Response> {
    end_present(&app, &headers).await?;
    shut_out(&app)
}

/// Takes the session from the browser, and what it kept of our pages.
fn shut_out(app: &App) -> Result<Response> {
    let mut response = see_other(app, "/log-in");
    let (name, value) = clear_cookie(app.address())?;
    let headers = response.headers_mut();
    headers.append(name, value);
    headers.insert(CLEAR_SITE_DATA, HeaderValue::from_static("\"cache\""));
    Ok(response)
}

/// A link's page says nothing of its address to anyone.
#[must_use]
pub fn unreferred(mut response: Response) -> Response {
    let none = HeaderValue::from_static("no-referrer");
    response.headers_mut().insert(REFERRER_POLICY, none);
    response
}

/// The page of a link that is good no more; other errors pass through.
///
/// # Errors
/// Every error but a dead link.
pub fn spent(frame: &Frame, error: Error) -> Result<Response> {
    match error {
        Error::Refused(Problem::LinkDead) => {
            let shell = frame.shell();
            let page = page(&SpentLinkPage { shell })?;
            Ok(unreferred((StatusCode::GONE, page).into_response()))
        }
        other => Err(other),
    }
}

fn reset_page(frame: &Frame, link: Link, problems: &Problems) -> ResetPage {
    ResetPage {
        shell: frame.shell(),
        name: link.person_name.unwrap_or_default(),
        log_in_name: link.log_in_name.unwrap_or_default(),
        problems: in_words(problems, numbers()),
    }
}

async fn reset_form(
    State(app): State<App>,
    frame: Frame,
    Path(secret): Path<String>,
) -> Result<Response> {
    match links::look(&app, Kind::Reset, &Secret::received(&secret)).await {
        Ok(link) => page(&reset_page(&frame, link, &Problems::default())).map(unreferred),
        Err(error) => spent(&frame, error),
    }
}

#[derive(Default, Deserialize)]
#[serde(default)]
struct ResetForm {
    password: String,
}

async fn reset_send(
    State(app): State<App>,
    frame: Frame,
    Path(secret): Path<String>,
    Form(form): Form<ResetForm>,
) -> Result<Response> {
    let secret = Secret::received(&secret);
    let link = match links::look(&app, Kind::Reset, &secret).await {
        Ok(link) => link,
        Err(error) => return spent(&frame, error),
    };
    match links::reset(&app, &secret, &form.password).await {
        Ok(()) => Ok(see_other(&app, "/log-in")),
        Err(Error::Invalid(problems)) => mend(&reset_page(&frame, link, &problems)).map(unreferred),
        Err(error) => spent(&frame, error),
    }
}

async fn account(State(app): State<App>, person: Person, frame: Frame) -> Result<Response> {
    let typed = person.name.clone();
    page(&account_page(&app, &person, &frame, typed, &Problems::default()).await?)
}

async fn account_page(
    app: &App,
    person: &Person,
    frame: &Frame,
    typed_name: String,
    problems: &Problems,
) -> Result<AccountPage> {
    let Overview {
        name,
        log_in_name,
        news,
        log_ins,
    } = accounts::overview(app, person).await?;
    let (zone, now) = (Zone::utc(), app.clock().now());
    let words_of = |at| zone.words(at, now);
    let sessions = log_ins.into_iter().map(|log_in| SessionShown {
        id: log_in.id.to_string(),
        since: words_of(log_in.created_at),
        last_seen: words_of(log_in.last_seen_at),
        is_this: Some(log_in.id) == person.session,
        agent: log_in.agent,
    });
    let told = news.iter().map(|each| {
        let used_at = each.used_at.map(|at| words_of(at).words);
        let made_at = words_of(each.made_at).words;
        words::reset_link_made(each.made_by.as_deref(), &made_at, used_at.as_deref())
    });
    let rooms = memberships::all(app, person.id).await?;
    Ok(AccountPage {
        shell: frame.shell_of(person),
        sessions: sessions.collect(),
        done_by_stewards: told.collect(),
        seen_until: news
            .first()
            .map_or_else(String::new, |newest| micros(newest.made_at).to_string()),
        rooms: rooms
            .into_iter()
            .map(|room| Choice::new(room.slug, room.room_name))
            .collect(),
        name,
        typed_name,
        log_in_name,
        problems: in_words(problems, numbers()),
    })
}

#[derive(Default, Deserialize)]
#[serde(default)]
struct NameForm {
    name: String,
}

async fn change_name(
    State(app): State<App>,
    person: Person,
    frame: Frame,
    Form(form): Form<NameForm>,
) -> Result<Response> {
    match read_name(&form.name) {
        Ok(name) => {
            accounts::change_name(&app, &person, name).await?;
            Ok(see_other(&app, "/account"))
        }
        Err(problem) => {
            let problems = Problems::one("name", problem);
            mend(&account_page(&app, &person, &frame, form.name, &problems).await?)
        }
    }
}

#[derive(Default, Deserialize)]
#[serde(default)]
struct PasswordForm {
    current_password: String,
    new_password: String,
}

async fn change_password(
    State(app): State<App>,
    person: Person,
    client: Client,
    frame: Frame,
    Form(form): Form<PasswordForm>,
) -> Result<Response> {
    let typed = NewPassword {
        present: form.current_password,
        new: form.new_password,
    };
    match accounts::change_password(&app, &person, &client, typed).await {
        Ok(logged_in) => let_in(&app, see_other(&app, "/account"), &logged_in),
        Err(error) => {
            let (problems, name) = (to_mend(error)?, person.name.clone());
            mend(&account_page(&app, &person, &frame, name, &problems).await?)
        }
    }
}

#[derive(Default, Deserialize)]
#[serde(default)]
struct SeenForm {
    until: String,
}

async fn seen(
    State(app): State<App>,
    person: Person,
    Form(form): Form<SeenForm>,
) -> Result<Response> {
    let until = form.until.parse();
    let until = until.map_err(|_| Error::field("until", Problem::NotATime))?;
    accounts::seen_news(&app, &person, moment(until)).await?;
    Ok(see_other(&app, "/account"))
}

async fn end_one(
    State(app): State<App>,
    person: Person,
    Path(session): Path<Uuid>,
) -> Result<Response> {
    sessions::end_one(&app, person.id, session).await?;
    Ok(see_other(&app, "/account"))
}

async fn end_all(State(app): State<App>, person: Person) -> Result<Response> {
    sessions::end_all(&app, person.id).await?;
    shut_out(&app)
}
