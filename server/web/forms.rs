//! Forms: read leniently, answered kindly.
//!
//! A form is a struct of texts as typed. Its `read` collects everything that is
//! wrong at once; the page is shown again with the same texts and a sentence
//! beside each field.

use askama::Template;
use axum::extract::{FromRequest, Request};
use axum::http::StatusCode;
use axum::http::header::LOCATION;
use axum::response::{Html, IntoResponse, Response};
use data_encoding::BASE64URL_NOPAD;
use serde::de::DeserializeOwned;
use uuid::Uuid;

use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::identity::secret::random;
use crate::logbook::Key;
use crate::problem::{Problem, Problems};
use crate::rights::Right;
use crate::web::numbers::Numbers;
use crate::web::{fields, messages};

/// A submitted form. Unlike the framework's own, what cannot be read at all is
/// answered in the room's look.
#[derive(Clone, Copy, Debug)]
pub struct Form<T>(pub T);

impl<T: DeserializeOwned> FromRequest<App> for Form<T> {
    type Rejection = Response;

    async fn from_request(request: Request, app: &App) -> Result<Self, Response> {
        match axum_extra::extract::Form::<T>::from_request(request, app).await {
            Ok(axum_extra::extract::Form(form)) => Ok(Self(form)),
            Err(rejection) => match rejection.into_response().status() {
                StatusCode::PAYLOAD_TOO_LARGE => Err(StatusCode::PAYLOAD_TOO_LARGE.into_response()),
                _ => Err(Error::field("", Problem::Missing).into_response()),
            },
        }
    }
}

/// Mints the key of a form: one form served, one entry at most.
///
/// # Errors
/// A machine without randomness.
pub fn new_key() -> Result<String> {
    Ok(BASE64URL_NOPAD.encode(&random::<16>()?))
}

/// Reads a key as [`new_key`] writes it.
///
/// # Errors
/// A missing or broken key: a form that was not served by us.
pub fn read_key(text: &str) -> Result<Key> {
    BASE64URL_NOPAD
        .decode(text.as_bytes())
        .ok()
        .and_then(|bytes| bytes.try_into().ok())
        .ok_or_else(|| Error::field("key", Problem::Missing))
}

/// What a form page is shown again with. Errors that are not about the input
/// pass through.
///
/// # Errors
/// Every error that no change of the input mends.
pub fn to_mend(error: Error) -> Result<Problems> {
    match error {
        Error::Invalid(problems) => Ok(problems),
        Error::Refused(problem) => Ok(Problems::one("", problem)),
        other => Err(other),
    }
}

/// Sends the browser on, after a write, to a path of ours.
#[must_use]
pub fn see_other(app: &App, path: &str) -> Response {
    let location = format!("{}{path}", app.address().base());
    (StatusCode::SEE_OTHER, [(LOCATION, location)]).into_response()
}

/// Sends the browser on to a page of the room.
#[must_use]
pub fn on_to<R: Right>(app: &App, permit: &Permit<R>, path: &str) -> Response {
    let slug = &permit.membership().slug;
    see_other(app, &format!("/rooms/{slug}{path}"))
}

/// What is wrong, in words, for the macros of the templates.
#[must_use]
pub fn in_words(problems: &Problems, numbers: Numbers) -> fields::Problems {
    let mut shown = fields::Problems::none();
    for (field, problem) in problems.iter() {
        shown.add(field, messages::problem(problem, numbers));
    }
    shown
}

/// A page.
///
/// # Errors
/// A fault of a template.
pub fn page(template: &impl Template) -> Result<Response> {
    let body = template
        .render()
        .map_err(|cause| Error::Internal(cause.into()))?;
    Ok(Html(body).into_response())
}

/// A form's page again, with what is to be mended.
///
/// # Errors
/// A fault of a template.
pub fn mend(template: &impl Template) -> Result<Response> {
    let page = page(template)?;
    Ok((StatusCode::UNPROCESSABLE_ENTITY, page).into_response())
}

/// Reads an id that a form of ours sent.
///
/// # Errors
/// [`Problem::NotAChoice`].
pub fn read_id(text: &str) -> Result<Uuid, Problem> {
    Uuid::parse_str(text).map_err(|_| Problem::NotAChoice)
}
