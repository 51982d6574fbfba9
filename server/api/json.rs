//! Reading bodies: JSON of one declared type, nothing missing, nothing more.

use std::error::Error as _;

use axum::extract::rejection::JsonRejection;
use axum::extract::{FromRequest, Request};
use axum::http::StatusCode;
use axum::response::{IntoResponse, Response};
use serde::de::DeserializeOwned;
use utoipa::{IntoParams, ToSchema};

use super::failures::Fault;
use crate::app::App;
use crate::error::Error;
use crate::problem::{Problem, Problems};

/// What a write takes: a struct that refuses fields it does not know.
pub trait Input: DeserializeOwned + ToSchema + Send + 'static {
    /// What the actions call a field, and what it is called here, where the
    /// name here says a unit or an id.
    const NAMES: &'static [(&'static str, &'static str)] = &[];

    /// The error with the fields as the sender named them.
    #[must_use]
    fn rename(error: Error) -> Error {
        renamed(error, Self::NAMES)
    }
}

/// What a question takes: a struct of what may stand in a query.
pub trait Question: DeserializeOwned + IntoParams + Send + 'static {
    /// As [`Input::NAMES`].
    const NAMES: &'static [(&'static str, &'static str)] = &[];
}

/// The error with the fields as the sender named them.
pub(super) fn renamed(error: Error, names: &[(&str, &str)]) -> Error {
    let Error::Invalid(problems) = error else {
        return error;
    };
    let mut renamed = Problems::default();
    for (field, problem) in problems.iter() {
        let found = names.iter().find(|(theirs, _)| *theirs == field);
        renamed.add(found.map_or(field, |(_, ours)| ours), problem.clone());
    }
    Error::Invalid(renamed)
}

/// A body, read.
pub(super) struct Body<T>(pub(super) T);

impl<T: DeserializeOwned> FromRequest<App> for Body<T> {
    type Rejection = Response;

    async fn from_request(request: Request, app: &App) -> Result<Self, Response> {
        match axum::Json::<T>::from_request(request, app).await {
            Ok(axum::Json(read)) => Ok(Self(read)),
            Err(rejection) => Err(refusal(&rejection)),
        }
    }
}

fn refusal(rejection: &JsonRejection) -> Response {
    match rejection {
        JsonRejection::JsonDataError(wrong) => {
            // The innermost is serde's own sentence, after the path to the field.
            let cause = wrong.source().and_then(|outer| outer.source());
            let text = cause.map_or_else(|| wrong.body_text(), ToString::to_string);
            let (field, problem) = meaning(&text);
            Error::Invalid(Problems::one(field, problem)).into_response()
        }
        JsonRejection::JsonSyntaxError(_) => Fault::BrokenJson.into_response(),
        JsonRejection::MissingJsonContentType(_) => Fault::OtherType.into_response(),
        other if other.status() == StatusCode::PAYLOAD_TOO_LARGE => Fault::TooLarge.into_response(),
        _ => Fault::BrokenJson.into_response(),
    }
}

/// Field and problem of a sentence like `dilutions[0].parts: invalid type: …`.
fn meaning(text: &str) -> (String, Problem) {
    const BEGINNINGS: [&str; 7] = [
        "missing field",
        "unknown field",
        "duplicate field",
        "unknown variant",
        "invalid type",
        "invalid value",
        "invalid length",
    ];
    let is_bare = BEGINNINGS.iter().any(|each| text.starts_with(each));
    let (path, said) = match text.split_once(": ") {
        Some((path, said)) if !is_bare => (path, said),
        _ => ("", text),
    };
    let named = said.split('`').nth(1).unwrap_or("");
    let within = |name: &str| match path {
        "" => name.to_owned(),
        path if path == name || path.ends_with(&format!(".{name}")) => path.to_owned(),
        path => format!("{path}.{name}"),
    };
    if said.starts_with("missing field") {
        (within(named), Problem::Missing)
    } else if said.starts_with("unknown field") {
        (within(named), Problem::NotAField)
    } else if said.starts_with("duplicate field") {
        (within(named), Problem::Twice)
    } else if said.starts_with("unknown variant") {
        (path.to_owned(), Problem::NotAChoice)
    } else {
        (path.to_owned(), Problem::WrongType)
    }
}
