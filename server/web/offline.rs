//! What a phone keeps for when there is no network: the worker that keeps it, and the
//! page that is shown where nothing was kept.

use axum::http::header::{CACHE_CONTROL, CONTENT_SECURITY_POLICY, CONTENT_TYPE};
use axum::response::{IntoResponse, Response};

use super::forms::page;
use super::frame::Frame;
use super::views::OfflinePage;
use crate::error::Result;

/// The worker asks our own pages and nobody else.
const WORKER_RULES: &str = "default-src 'none'; connect-src 'self'";

/// The script that keeps pages. It stands at the root of the installation, for it
/// sees only what lies below its own address, and browsers ask for it anew.
pub async fn worker() -> Response {
    let headers = [
        (CONTENT_TYPE, "text/javascript; charset=utf-8"),
        (CACHE_CONTROL, "no-cache"),
        (CONTENT_SECURITY_POLICY, WORKER_RULES),
    ];
    (headers, include_str!("../../static/worker.js")).into_response()
}

/// The page that says there is no network.
///
/// # Errors
/// A fault of the template.
pub async fn offline(frame: Frame) -> Result<Response> {
    page(&OfflinePage {
        shell: frame.shell(),
    })
}
