//! The second skin: the same actions as the pages, as JSON under `/api/v1`.
//!
//! Routes come from one table (`routes::all`): the router, the OpenAPI
//! document and the access tests are made from it, and each row takes its right
//! and its types from its handler's own signature, so none of them can drift.
//! A request shows a bearer token; cookies mean nothing here. Every answer is
//! `{"data": …}`, with `next` where a list goes on, or `{"error": …}`.

mod answer;
mod failures;
mod json;
mod key;
mod moments;
mod openapi;
mod paging;
mod route;
pub mod routes;
mod which;

use axum::Router;
use axum::extract::{DefaultBodyLimit, Extension};
use axum::middleware::{from_fn, from_fn_with_state};
use tower_http::catch_panic::CatchPanicLayer;

use crate::app::App;
use crate::identity::Skin;
use crate::web::guards;

pub use answer::{Made, MadeOut, Page};
pub use failures::{ErrorOut, FieldOut, WrongOut};
pub use json::{Input, Question};
pub use moments::moment_text;
pub use paging::Paging;
pub use route::{By, Route, Writing};

/// Where the API stands below the public address.
pub const PREFIX: &str = "/api/v1";

/// Kilobytes a body may have.
const MOST_KILOBYTES: usize = 64;

/// The API, with its guards and its way of saying what went wrong.
///
/// # Errors
/// A document that JSON cannot hold.
pub fn router(app: &App) -> crate::error::Result<Router<App>> {
    let routes = routes::all();
    let document = openapi::document(&routes, app.address().base())?;
    let mut router = Router::new();
    for route in routes {
        router = router.route(route.path, route.methods);
    }
    Ok(Router::new().nest(
        PREFIX,
        router
            .fallback(failures::no_such_route)
            .layer(DefaultBodyLimit::max(MOST_KILOBYTES * 1_024))
            .layer(Extension(openapi::Document(document.into())))
            .layer(CatchPanicLayer::custom(failures::panicked))
            .layer(from_fn_with_state(app.clone(), guards::guard))
            .layer(from_fn(failures::in_words))
            .layer(Extension(Skin::Api)),
    ))
}
