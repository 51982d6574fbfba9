//! The thing that a path names.

use axum::extract::{FromRequestParts, Path};
use axum::http::request::Parts;
use serde::Deserialize;
use uuid::Uuid;

use crate::app::App;
use crate::error::{Error, Result};

#[derive(Deserialize)]
struct Named {
    id: Uuid,
}

/// The id in a path. What is no id names nothing.
pub(super) struct Which(pub(super) Uuid);

impl FromRequestParts<App> for Which {
    type Rejection = Error;

    async fn from_request_parts(parts: &mut Parts, app: &App) -> Result<Self> {
        let named = Path::<Named>::from_request_parts(parts, app).await;
        named
            .map(|Path(Named { id })| Self(id))
            .map_err(|_| Error::NotFound)
    }
}
