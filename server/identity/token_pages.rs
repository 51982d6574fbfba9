//! The pages of one's tokens in a room.

use axum::extract::{Path, State};
use axum::response::Response;
use time::OffsetDateTime;
use uuid::Uuid;

use super::Permit;
use super::tokens::{self, NewToken, Token, scopes_of};
use super::views::{TokenForm, TokenMadePage, TokenRow, TokensPage};
use crate::app::App;
use crate::error::Result;
use crate::problem::{Problem, Problems};
use crate::rights::KeepTokens;
use crate::router::Pages;
use crate::web::dates::Zone;
use crate::web::fields::Choice;
use crate::web::forms::{Form, in_words, mend, page, see_other, to_mend};
use crate::web::frame::Frame;
use crate::web::messages::people as words;
use crate::web::numbers::Numbers;
use crate::web::shell::Place;

/// How many days a new token's form proposes.
const USUAL_DAYS: &str = "90";

/// The routes of these pages.
#[must_use]
pub fn pages() -> Pages {
    Pages::new()
        .get("/rooms/{room}/tokens", tokens_form)
        .post("/rooms/{room}/tokens", tokens_send)
        .post("/rooms/{room}/tokens/{token}/revoke", revoke)
}

async fn tokens_form(
    State(app): State<App>,
    permit: Permit<KeepTokens>,
    frame: Frame,
) -> Result<Response> {
    let form = TokenForm {
        days: USUAL_DAYS.to_owned(),
        ..TokenForm::default()
    };
    page(&tokens_page(&app, &permit, &frame, form, &Problems::default()).await?)
}

async fn tokens_page(
    app: &App,
    permit: &Permit<KeepTokens>,
    frame: &Frame,
    form: TokenForm,
    problems: &Problems,
) -> Result<TokensPage> {
    let now = app.clock().now();
    let listed = tokens::list(app, permit).await?;
    let choices = scopes_of(permit.role()).into_iter();
    Ok(TokensPage {
        shell: frame.shell_in(permit, Some(Place::Tokens)),
        tokens: listed.into_iter().map(|token| row(token, now)).collect(),
        form,
        problems: in_words(problems, Numbers::with_mark(".")),
        scopes: choices
            .map(|scope| Choice::new(scope, words::scope(scope)))
            .collect(),
    })
}

fn row(token: Token, now: OffsetDateTime) -> TokenRow {
    let zone = Zone::utc();
    let scopes: Vec<&str> = token
        .scopes
        .iter()
        .map(|scope| words::scope(scope))
        .collect();
    TokenRow {
        id: token.id.to_string(),
        name: token.name,
        scopes: scopes.join("; "),
        made: zone.words(token.made_at, now),
        expires: zone.words(token.expires_at, now),
        last_used: token.last_used_at.map(|at| zone.words(at, now)),
        has_ended: token.revoked_at.is_some() || token.expires_at <= now,
    }
}

async fn tokens_send(
    State(app): State<App>,
    permit: Permit<KeepTokens>,
    frame: Frame,
    Form(form): Form<TokenForm>,
) -> Result<Response> {
    let made = match read(&form) {
        Ok(new) => tokens::make(&app, &permit, new).await.map_err(to_mend),
        Err(problems) => Err(Ok(problems)),
    };
    match made {
        Ok(made) => page(&TokenMadePage {
            shell: frame.shell_in(&permit, Some(Place::Tokens)),
            name: made.name,
            token: Some(made.text),
            expires: Zone::utc().words(made.expires_at, app.clock().now()),
        }),
        Err(problems) => mend(&tokens_page(&app, &permit, &frame, form, &problems?).await?),
    }
}

/// The form as typed, read.
fn read(form: &TokenForm) -> Result<NewToken, Problems> {
    let days = form.days.trim().parse();
    Ok(NewToken {
        name: form.name.clone(),
        scopes: form.scopes.clone(),
        days: days.map_err(|_| Problems::one("days", Problem::NotANumber))?,
    })
}

async fn revoke(
    State(app): State<App>,
    permit: Permit<KeepTokens>,
    Path((_, token)): Path<(String, Uuid)>,
) -> Result<Response> {
    tokens::revoke(&app, &permit, token).await?;
    let slug = &permit.membership().slug;
    Ok(see_other(&app, &format!("/rooms/{slug}/tokens")))
}
