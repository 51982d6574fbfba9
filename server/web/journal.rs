//! The journal: one line a request. It names the route, never the path (links
//! with secrets have paths), and nobody.

use std::time::Instant;

use axum::extract::{MatchedPath, Request};
use axum::middleware::Next;
use axum::response::Response;
use tracing::Instrument;

use crate::router::request_id;

/// Writes the line, and lets everything that is logged meanwhile carry the id.
pub async fn write(request: Request, next: Next) -> Response {
    let began = Instant::now();
    let method = request.method().clone();
    let id = request_id(&request).unwrap_or_default();
    let span = tracing::info_span!("request", id);
    let route = request.extensions().get::<MatchedPath>().cloned();
    let response = next.run(request).instrument(span.clone()).await;
    let micros = began.elapsed().as_micros();
    let status = response.status().as_u16();
    let route = route.as_ref().map_or("none", MatchedPath::as_str);
    span.in_scope(|| tracing::info!(%method, route, status, micros, "answered"));
    response
}
