//! The page that an invitation leads to.

use axum::extract::{Path, State};
use axum::http::HeaderMap;
use axum::response::Response;

use super::joining::{Joiner, accept};
use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::accounts::NewAccount;
use crate::identity::links::{self, Kind, Link};
use crate::identity::names::{LogInName, read_name};
use crate::identity::pages::{let_into_room, spent, unreferred};
use crate::identity::passwords::Password;
use crate::identity::secret::Secret;
use crate::identity::sessions::session_secret;
use crate::identity::views::{JoinForm, JoinPage, RoleShown};
use crate::identity::{Client, Person};
use crate::problem::{Problem, Problems};
use crate::router::Pages;
use crate::web::forms::{Form, in_words, mend, page, see_other, to_mend};
use crate::web::frame::Frame;
use crate::web::numbers::Numbers;

/// The routes of this page.
#[must_use]
pub fn pages() -> Pages {
    Pages::new()
        .open_get("/join/{secret}", join_form)
        .open_post("/join/{secret}", join_send)
}

/// Who is logged in, if anyone.
async fn present(app: &App, headers: &HeaderMap) -> Result<Option<Person>> {
    let Some(secret) = session_secret(headers, app.address()) else {
        return Ok(None);
    };
    match app.sessions().find(app, &secret).await {
        Ok(person) => Ok(Some(person)),
        Err(Error::Unauthenticated) => Ok(None),
        Err(error) => Err(error),
    }
}

fn join_page(
    frame: &Frame,
    link: &Link,
    person: Option<&Person>,
    form: JoinForm,
    problems: &Problems,
) -> Result<JoinPage> {
    let role = link
        .role
        .and_then(|role| RoleShown::named(role.as_str()))
        .ok_or_else(|| Error::fault("an invitation without a role"))?;
    Ok(JoinPage {
        shell: person.map_or_else(|| frame.shell(), |person| frame.shell_of(person)),
        room_name: link.room_name.clone().unwrap_or_default(),
        role,
        as_person: person.map(|person| person.name.clone()),
        form: JoinForm {
            password: String::new(),
            ..form
        },
        problems: in_words(problems, Numbers::with_mark(".")),
    })
}

async fn join_form(
    State(app): State<App>,
    headers: HeaderMap,
    frame: Frame,
    Path(secret): Path<String>,
) -> Result<Response> {
    let link = match links::look(&app, Kind::Join, &Secret::received(&secret)).await {
        Ok(link) => link,
        Err(error) => return spent(&frame, error),
    };
    let person = present(&app, &headers).await?;
    let (form, none) = (JoinForm::default(), Problems::default());
    page(&join_page(&frame, &link, person.as_ref(), form, &none)?).map(unreferred)
}

async fn join_send(
    State(app): State<App>,
    client: Client,
    headers: HeaderMap,
    frame: Frame,
    Path(secret): Path<String>,
    Form(form): Form<JoinForm>,
) -> Result<Response> {
    let link = match links::look(&app, Kind::Join, &Secret::received(&secret)).await {
        Ok(link) => link,
        Err(error) => return spent(&frame, error),
    };
    let person = present(&app, &headers).await?;
    match join(&app, &link, person.as_ref(), &form).await {
        Ok(joiner) => welcome(&app, &client, &headers, link, joiner).await,
        Err(dead @ Error::Refused(Problem::LinkDead)) => spent(&frame, dead),
        Err(error) => {
            let (problems, person) = (to_mend(error)?, person.as_ref());
            mend(&join_page(&frame, &link, person, form, &problems)?).map(unreferred)
        }
    }
}

/// Leads to the room; who has an account only now is logged in by it.
async fn welcome(
    app: &App,
    client: &Client,
    headers: &HeaderMap,
    link: Link,
    joiner: Joiner,
) -> Result<Response> {
    let slug = link.slug.unwrap_or_default();
    match joiner {
        Joiner::New(account) => let_into_room(app, client, headers, &slug, account.id).await,
        Joiner::Known(_) => Ok(see_other(app, &format!("/rooms/{slug}/board"))),
    }
}

async fn join(app: &App, link: &Link, person: Option<&Person>, form: &JoinForm) -> Result<Joiner> {
    let joiner = match person {
        Some(person) => Joiner::Known(person.id),
        None => Joiner::New(read_account(app, link, form).await?),
    };
    accept(app, link, joiner.clone()).await?;
    Ok(joiner)
}

async fn read_account(app: &App, link: &Link, form: &JoinForm) -> Result<NewAccount> {
    let mut problems = Problems::default();
    let name = problems.take("name", read_name(&form.name));
    let log_in_name = problems.take("log_in_name", LogInName::read(&form.log_in_name));
    let room_name = link.room_name.clone().unwrap_or_default();
    let beside = [form.log_in_name.as_str(), room_name.as_str()];
    let password = problems.take("password", Password::choose(&form.password, &beside));
    let (Some(name), Some(log_in_name), Some(password)) = (name, log_in_name, password) else {
        return Err(Error::Invalid(problems));
    };
    NewAccount::prepare(app, name, log_in_name, &password).await
}
