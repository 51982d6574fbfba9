//! An error on its way out: the status is set here, the words by the layer of
//! the skin it leaves through (`web::error_pages`, `api::failures`).

use std::sync::Arc;
use std::time::Duration;

use axum::body::Body;
use axum::http::header::RETRY_AFTER;
use axum::http::{HeaderValue, StatusCode};
use axum::response::{IntoResponse, Response};

use crate::error::Error;

/// Carried by a response until its skin has put it into words.
#[derive(Clone, Debug)]
pub struct Failure(pub Arc<Error>);

impl Error {
    /// The status that means this.
    #[must_use]
    pub fn status(&self) -> StatusCode {
        match self {
            Self::Unauthenticated => StatusCode::UNAUTHORIZED,
            Self::Forbidden => StatusCode::FORBIDDEN,
            Self::NotFound => StatusCode::NOT_FOUND,
            Self::Invalid(_) | Self::Mismatch => StatusCode::UNPROCESSABLE_ENTITY,
            Self::Refused(_) => StatusCode::CONFLICT,
            Self::TooMany(_) => StatusCode::TOO_MANY_REQUESTS,
            Self::Unavailable(_) => StatusCode::SERVICE_UNAVAILABLE,
            Self::Internal(_) => StatusCode::INTERNAL_SERVER_ERROR,
        }
    }

    /// After how long another try makes sense.
    #[must_use]
    pub fn retry_after(&self) -> Option<Duration> {
        match self {
            Self::TooMany(wait) => Some(*wait),
            Self::Unavailable(_) => Some(Duration::from_secs(2)),
            _ => None,
        }
    }
}

impl IntoResponse for Error {
    fn into_response(self) -> Response {
        if let Self::Internal(cause) = &self {
            tracing::error!(cause = format!("{cause:#}"), "a request failed");
        }
        let mut response = Response::new(Body::empty());
        *response.status_mut() = self.status();
        if let Some(wait) = self.retry_after() {
            let seconds = HeaderValue::from(wait.as_secs().max(1));
            response.headers_mut().insert(RETRY_AFTER, seconds);
        }
        response.extensions_mut().insert(Failure(Arc::new(self)));
        response
    }
}
