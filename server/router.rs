//! The whole router: both skins side by side.

use axum::Router;
use axum::extract::Request;
use axum::http::{HeaderName, Method};
use axum::middleware::{Next, from_fn};
use axum::response::Response;
use tower_http::request_id::{MakeRequestUuid, PropagateRequestIdLayer, SetRequestIdLayer};

use crate::api;
use crate::app::App;
use crate::error::Result;

/// What the tests of access know of a route.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct Listed {
    /// How it is asked.
    pub method: Method,
    /// Its path below the public address.
    pub path: String,
    /// The name of the right it takes; nothing where it takes none.
    pub right: Option<&'static str>,
}

/// The pages' routes.
pub mod pages {
    /// Method, path and the name of the right, or nothing where a page takes none.
    pub const ROUTES: &[(&str, &str, Option<&str>)] = &[];
}

const REQUEST_ID: HeaderName = HeaderName::from_static("x-request-id");

/// Everything this program answers to.
///
/// # Errors
/// An API document that JSON cannot hold.
pub fn router(app: App) -> Result<Router> {
    let router = Router::new().merge(api::router(&app)?);
    Ok(router
        .layer(PropagateRequestIdLayer::new(REQUEST_ID))
        .layer(SetRequestIdLayer::new(REQUEST_ID, MakeRequestUuid))
        .layer(from_fn(forget_foreign_id))
        .with_state(app))
}

/// The log's number for a request is ours to give.
async fn forget_foreign_id(mut request: Request, next: Next) -> Response {
    request.headers_mut().remove(REQUEST_ID);
    next.run(request).await
}
