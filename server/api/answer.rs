//! What a request gets back where all went well.

use axum::Json;
use axum::http::header::LOCATION;
use axum::http::{HeaderName, HeaderValue, StatusCode};
use axum::response::{IntoResponse, Response};
use serde::Serialize;
use utoipa::ToSchema;
use uuid::Uuid;

use crate::error::Error;
use crate::logbook::Done;

/// Says that a key was used before, for the same thing.
pub(super) const HIT: HeaderName = HeaderName::from_static("idempotency-hit");

/// One thing.
#[derive(Debug, Serialize)]
pub(super) struct One<T> {
    pub(super) data: T,
}

/// A part of a list.
#[derive(Debug, Serialize)]
pub struct Page<T> {
    /// The things, in the list's order.
    pub data: Vec<T>,
    /// Give this as `after` for the part that follows; absent at the end.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub next: Option<String>,
}

/// What a write made or changed.
#[derive(Debug, Serialize, ToSchema)]
pub struct MadeOut {
    /// The thing's id.
    pub id: Uuid,
    /// The number of its entry in the book.
    pub seq: i64,
    /// Where it can be read.
    pub place: String,
}

/// A write that was done, or had been done before under the same key.
#[derive(Debug)]
pub struct Made {
    pub(super) out: MadeOut,
    pub(super) hit: bool,
}

impl Made {
    pub(super) fn new(done: &Done, id: Uuid, place: String) -> Self {
        Self {
            out: MadeOut {
                id,
                seq: done.seq,
                place,
            },
            hit: done.hit,
        }
    }

    /// The answer: `fresh` is its status where it was not done before.
    pub(super) fn answer(self, fresh: StatusCode) -> Response {
        let Ok(place) = HeaderValue::from_str(&self.out.place) else {
            return Error::fault("a place that no header can hold").into_response();
        };
        let status = if self.hit { StatusCode::OK } else { fresh };
        let mut response = (status, Json(One { data: self.out })).into_response();
        let headers = response.headers_mut();
        headers.insert(LOCATION, place);
        if self.hit {
            headers.insert(HIT, HeaderValue::from_static("true"));
        }
        response
    }
}
