//! What a request gets back where something went wrong: always the same shape.

use std::any::Any;

use axum::Json;
use axum::extract::Request;
use axum::http::header::{CONTENT_LENGTH, WWW_AUTHENTICATE};
use axum::http::{HeaderValue, StatusCode};
use axum::middleware::Next;
use axum::response::{IntoResponse, Response};
use serde::Serialize;
use utoipa::ToSchema;

use super::MOST_KILOBYTES;
use crate::error::Error;
use crate::web::failure::Failure;
use crate::web::journal::request_id;
use crate::web::messages;
use crate::web::messages::api as words;
use crate::web::numbers::Numbers;

/// What is wrong with a request as a request, whatever it asks for.
#[derive(Clone, Copy, Debug, Eq, PartialEq)]
pub(super) enum Fault {
    NoSuchRoute,
    OtherMethod,
    OtherType,
    BrokenJson,
    TooLarge,
    OtherHost,
}

impl Fault {
    const fn status(self) -> StatusCode {
        match self {
            Self::NoSuchRoute => StatusCode::NOT_FOUND,
            Self::OtherMethod => StatusCode::METHOD_NOT_ALLOWED,
            Self::OtherType => StatusCode::UNSUPPORTED_MEDIA_TYPE,
            Self::BrokenJson => StatusCode::BAD_REQUEST,
            Self::TooLarge => StatusCode::PAYLOAD_TOO_LARGE,
            Self::OtherHost => StatusCode::MISDIRECTED_REQUEST,
        }
    }

    /// What a bare status of the framework means.
    fn of(status: StatusCode) -> Option<Self> {
        let all = [
            Self::NoSuchRoute,
            Self::OtherMethod,
            Self::OtherType,
            Self::BrokenJson,
            Self::TooLarge,
            Self::OtherHost,
        ];
        all.into_iter().find(|fault| fault.status() == status)
    }

    const fn kind(self) -> &'static str {
        match self {
            Self::NoSuchRoute => "no_such_route",
            Self::OtherMethod => "method_not_allowed",
            Self::OtherType => "not_json",
            Self::BrokenJson => "broken_json",
            Self::TooLarge => "too_large",
            Self::OtherHost => "other_host",
        }
    }

    fn sentence(self) -> String {
        match self {
            Self::NoSuchRoute => words::no_such_route().to_owned(),
            Self::OtherMethod => words::other_method().to_owned(),
            Self::OtherType => words::send_json().to_owned(),
            Self::BrokenJson => words::broken_json().to_owned(),
            Self::TooLarge => words::body_too_large(MOST_KILOBYTES),
            Self::OtherHost => words::other_host().to_owned(),
        }
    }
}

impl IntoResponse for Fault {
    fn into_response(self) -> Response {
        let mut response = self.status().into_response();
        response.extensions_mut().insert(self);
        response
    }
}

/// Every error of the API.
#[derive(Debug, Serialize, ToSchema)]
pub struct ErrorOut {
    /// What went wrong.
    pub error: WrongOut,
}

/// What went wrong.
#[derive(Debug, Serialize, ToSchema)]
pub struct WrongOut {
    /// What sort of thing went wrong, for programs: it never changes its meaning.
    #[schema(example = "invalid")]
    pub kind: String,
    /// What went wrong and what to do, for people.
    pub sentence: String,
    /// What to mend, field by field.
    pub fields: Vec<FieldOut>,
    /// Under which number the server's log has this request.
    pub request_id: String,
}

/// One field to mend.
#[derive(Debug, Serialize, ToSchema)]
pub struct FieldOut {
    /// Which; inside lists like `dilutions[0].tray_life_s`. Empty for the body as a whole.
    pub field: String,
    /// What to do.
    pub sentence: String,
}

/// Answers a path that leads nowhere.
pub(super) async fn no_such_route() -> Fault {
    Fault::NoSuchRoute
}

/// A handler panicked: the log says what, the client hears that it is our fault.
#[expect(clippy::needless_pass_by_value, reason = "the layer hands it over")]
pub(super) fn panicked(cause: Box<dyn Any + Send>) -> Response {
    let text = cause.downcast_ref::<String>().map(String::as_str);
    let text = text.or_else(|| cause.downcast_ref::<&str>().copied());
    let text = text.unwrap_or("a panic without words");
    Error::fault(format!("a handler panicked: {text}")).into_response()
}

/// Puts every failure into words, whichever part of the program it comes from.
pub(super) async fn in_words(request: Request, next: Next) -> Response {
    let request_id = request_id(&request).unwrap_or_default();
    let response = next.run(request).await;
    let status = response.status();
    if !status.is_client_error() && !status.is_server_error() {
        return response;
    }
    let error = wrong(&response, request_id);
    let (mut parts, _) = response.into_parts();
    let said = Json(ErrorOut { error }).into_response();
    parts.headers.remove(CONTENT_LENGTH);
    parts.headers.extend(said.headers().clone());
    if status == StatusCode::UNAUTHORIZED {
        let bearer = HeaderValue::from_static("Bearer");
        parts.headers.insert(WWW_AUTHENTICATE, bearer);
    }
    Response::from_parts(parts, said.into_body())
}

fn wrong(response: &Response, request_id: String) -> WrongOut {
    let extensions = response.extensions();
    let fault = extensions.get::<Fault>().copied();
    let (kind, sentence, fields) = match (extensions.get::<Failure>(), fault) {
        (Some(Failure(error)), _) => (kind(error), sentence(error), fields(error)),
        (None, Some(fault)) => (fault.kind(), fault.sentence(), Vec::new()),
        (None, None) => match Fault::of(response.status()) {
            Some(fault) => (fault.kind(), fault.sentence(), Vec::new()),
            None => {
                let error = Error::fault("an answer without a meaning");
                (kind(&error), sentence(&error), Vec::new())
            }
        },
    };
    WrongOut {
        kind: kind.to_owned(),
        sentence,
        fields,
        request_id,
    }
}

const fn kind(error: &Error) -> &'static str {
    match error {
        Error::Unauthenticated => "unauthenticated",
        Error::Forbidden => "forbidden",
        Error::NotFound => "not_found",
        Error::Invalid(_) => "invalid",
        Error::Refused(_) => "refused",
        Error::Mismatch => "key_mismatch",
        Error::TooMany(_) => "too_many",
        Error::Unavailable(_) => "unavailable",
        Error::Internal(_) => "internal",
    }
}

fn sentence(error: &Error) -> String {
    match error {
        Error::Unauthenticated => words::token_needed().to_owned(),
        Error::Forbidden => words::token_too_weak().to_owned(),
        Error::Mismatch => words::key_used().to_owned(),
        other => messages::failure(other, Numbers::default()),
    }
}

fn fields(error: &Error) -> Vec<FieldOut> {
    let Error::Invalid(problems) = error else {
        return Vec::new();
    };
    problems
        .iter()
        .map(|(field, problem)| FieldOut {
            field: field.to_owned(),
            sentence: messages::problem(problem, Numbers::default()),
        })
        .collect()
}
