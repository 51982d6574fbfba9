//! The board's page.

use axum::body::Body;
use axum::extract::State;
use axum::http::header::{CACHE_CONTROL, CONTENT_TYPE, ETAG, IF_NONE_MATCH, VARY};
use axum::http::{HeaderMap, StatusCode};
use axum::response::{IntoResponse, Response};

use super::draw::{self, Drawn, Variant};
use crate::app::App;
use crate::error::Result;
use crate::identity::Permit;
use crate::rights::LookAtBoard;
use crate::router::Pages;
use crate::web::shell::Display;

/// The board's route.
#[must_use]
pub(super) fn pages() -> Pages {
    Pages::new().get("/rooms/{room}/board", board)
}

async fn board(
    State(app): State<App>,
    permit: Permit<LookAtBoard>,
    display: Display,
    headers: HeaderMap,
) -> Result<Response> {
    let variant = Variant::of(permit.membership(), display);
    let drawn = draw::board(&app, &variant).await?;
    Ok(answer(&drawn, is_known(&headers, &drawn.etag)))
}

/// Whether the browser has the page of this tag already.
#[must_use]
pub fn is_known(headers: &HeaderMap, etag: &str) -> bool {
    headers.get(IF_NONE_MATCH).is_some_and(|tags| {
        let tags = tags.to_str().unwrap_or_default();
        tags.split(',').any(|tag| tag.trim() == etag)
    })
}

fn answer(drawn: &Drawn, is_known: bool) -> Response {
    let headers = [
        (CONTENT_TYPE, "text/html; charset=utf-8".to_owned()),
        (CACHE_CONTROL, "private, no-cache".to_owned()),
        (VARY, "Cookie".to_owned()),
        (ETAG, drawn.etag.clone()),
    ];
    if is_known {
        return (StatusCode::NOT_MODIFIED, headers).into_response();
    }
    (headers, Body::from(drawn.page.clone())).into_response()
}
