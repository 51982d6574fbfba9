//! Errors as pages, in the look of every other page.

use std::any::Any;

use askama::Template;
use axum::body::Body;
use axum::extract::{Request, State};
use axum::http::header::CONTENT_TYPE;
use axum::http::{HeaderValue, Method, StatusCode};
use axum::middleware::Next;
use axum::response::{IntoResponse, Response};
use percent_encoding::{NON_ALPHANUMERIC, utf8_percent_encode};

use super::failure::Failure;
use super::forms::see_other;
use super::frame::Frame;
use super::messages;
use super::numbers::Numbers;
use super::views::{ErrorPage, Trouble};
use crate::app::App;
use crate::error::Error;
use crate::web::journal::request_id;

/// Puts what went wrong into a page; who is not logged in is sent to do so.
pub async fn in_words(State(app): State<App>, request: Request, next: Next) -> Response {
    let (parts, body) = request.into_parts();
    let frame = Frame::of(&parts, &app);
    let method = parts.method.clone();
    let request = Request::from_parts(parts, body);
    let id = request_id(&request);
    let response = next.run(request).await;
    let failure = response.extensions().get::<Failure>().cloned();
    let Some(trouble) = trouble(&response, failure.as_ref()) else {
        return response;
    };
    let shell = frame.shell();
    if matches!(trouble, Trouble::NotLoggedIn) && method == Method::GET {
        let here = utf8_percent_encode(&shell.here, NON_ALPHANUMERIC);
        return see_other(&app, &format!("/log-in?next={here}"));
    }
    let retry_after_s = failure
        .as_ref()
        .and_then(|Failure(error)| error.retry_after());
    let page = ErrorPage {
        shell,
        trouble,
        sentence: failure.as_ref().and_then(sentence),
        request_id: id,
        retry_after_s: retry_after_s.map(|wait| wait.as_secs()),
    };
    with_body(response, &page)
}

fn with_body(response: Response, page: &ErrorPage) -> Response {
    let (mut parts, _) = response.into_parts();
    // One status for one meaning: the framework has its own for some.
    parts.status = StatusCode::from_u16(page.trouble.status()).unwrap_or(parts.status);
    let html = HeaderValue::from_static("text/html; charset=utf-8");
    parts.headers.insert(CONTENT_TYPE, html);
    parts.headers.remove("content-length");
    let body = page.render().unwrap_or_default();
    Response::from_parts(parts, Body::from(body))
}

/// What a response is about, if it says nothing itself.
fn trouble(response: &Response, failure: Option<&Failure>) -> Option<Trouble> {
    if let Some(Failure(error)) = failure {
        return Some(match **error {
            Error::Unauthenticated => Trouble::NotLoggedIn,
            Error::Forbidden => Trouble::NotAllowed,
            Error::NotFound => Trouble::NotFound,
            Error::Refused(_) => Trouble::Changed,
            Error::Invalid(_) | Error::Mismatch => Trouble::NotReadable,
            Error::TooMany(_) => Trouble::TooMany,
            Error::Unavailable(_) => Trouble::Busy,
            Error::Internal(_) => Trouble::Broken,
        });
    }
    match response.status() {
        StatusCode::NOT_FOUND => Some(Trouble::NotFound),
        StatusCode::METHOD_NOT_ALLOWED => Some(Trouble::OtherMethod),
        StatusCode::MISDIRECTED_REQUEST => Some(Trouble::WrongAddress),
        StatusCode::PAYLOAD_TOO_LARGE => Some(Trouble::TooLarge),
        StatusCode::BAD_REQUEST => Some(Trouble::NotReadable),
        _ => None,
    }
}

fn sentence(Failure(error): &Failure) -> Option<String> {
    match &**error {
        Error::Refused(problem) => Some(messages::problem(problem, Numbers::default())),
        _ => None,
    }
}

/// No page has that address.
pub async fn no_such_page() -> Error {
    Error::NotFound
}

/// A handler panicked: the log says what, and [`in_words`] says that it is our fault.
#[expect(clippy::needless_pass_by_value, reason = "the layer hands it over")]
pub fn panicked(cause: Box<dyn Any + Send>) -> Response {
    let what = cause
        .downcast_ref::<String>()
        .map(String::as_str)
        .or_else(|| cause.downcast_ref::<&str>().copied())
        .unwrap_or("a panic without words");
    Error::fault(format!("a handler panicked: {what}")).into_response()
}
