//! The journal: one line a request. It names the route, never the path (links
//! with secrets have paths), and nobody.

use std::time::Instant;

use axum::extract::{MatchedPath, Request};
use axum::http::{HeaderName, HeaderValue};
use axum::middleware::Next;
use axum::response::Response;
use tracing::Instrument;
use uuid::Uuid;

const REQUEST_ID: HeaderName = HeaderName::from_static("x-request-id");

/// The journal's number for a request: ours to give, whatever came with it.
#[derive(Clone, Copy, Debug)]
struct RequestId(Uuid);

/// The number of a request, as its answer carries it.
#[must_use]
pub fn request_id(request: &Request) -> Option<String> {
    let id = request.extensions().get::<RequestId>()?;
    Some(id.0.to_string())
}

/// Writes the line, and lets everything that is logged meanwhile carry the number.
pub async fn write(mut request: Request, next: Next) -> Response {
    let began = Instant::now();
    let id = Uuid::now_v7();
    request.extensions_mut().insert(RequestId(id));
    let method = request.method().clone();
    let id = id.to_string();
    let span = tracing::info_span!("request", id);
    let route = request.extensions().get::<MatchedPath>().cloned();
    let mut response = next.run(request).instrument(span.clone()).await;
    if let Ok(id) = HeaderValue::try_from(id) {
        response.headers_mut().insert(REQUEST_ID, id);
    }
    let micros = began.elapsed().as_micros();
    let status = response.status().as_u16();
    let route = route.as_ref().map_or("none", MatchedPath::as_str);
    span.in_scope(|| tracing::info!(%method, route, status, micros, "answered"));
    response
}
