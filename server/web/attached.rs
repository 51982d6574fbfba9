//! Files that a browser keeps instead of showing.

use axum::body::Body;
use axum::http::header::{CONTENT_DISPOSITION, CONTENT_TYPE};
use axum::response::{IntoResponse, Response};

/// A file to keep; slugs and file names are plain letters.
pub fn attached(media: &str, name: &str, body: impl Into<Body>) -> Response {
    let headers = [
        (CONTENT_TYPE, media.to_owned()),
        (
            CONTENT_DISPOSITION,
            format!("attachment; filename=\"{name}\""),
        ),
    ];
    (headers, body.into()).into_response()
}
