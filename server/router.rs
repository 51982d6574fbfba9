//! Every route, and what stands around them.

use axum::Router;
use axum::http::Method;
use tower_http::request_id::{MakeRequestUuid, PropagateRequestIdLayer, SetRequestIdLayer};

use crate::api;
use crate::app::App;
use crate::error::Result;

/// A route, as the access tests walk it.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct Listed {
    /// How it is asked.
    pub method: Method,
    /// Its path, with `{names}` for what varies.
    pub path: String,
    /// The right it takes; nothing where none is asked for.
    pub right: Option<&'static str>,
}

/// The whole program as a service, below the public address's path.
///
/// # Errors
/// A fault in the API's own description.
pub fn service(app: &App) -> Result<Router> {
    let all = Router::new().merge(api::router(app)?);
    let base = app.address().base();
    let all = match base.is_empty() {
        true => all,
        false => Router::new().nest(base, all),
    };
    Ok(all
        .layer(PropagateRequestIdLayer::x_request_id())
        .layer(SetRequestIdLayer::x_request_id(MakeRequestUuid))
        .with_state(app.clone()))
}
