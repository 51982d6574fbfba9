//! The client's own key for one write, from its header.

use axum::extract::FromRequestParts;
use axum::http::HeaderName;
use axum::http::request::Parts;
use data_encoding::BASE64URL_NOPAD;
use uuid::Uuid;

use crate::app::App;
use crate::error::{Error, Result};
use crate::logbook::Key;
use crate::problem::{Problem, Problems};

/// The header.
pub(super) const HEADER: HeaderName = HeaderName::from_static("idempotency-key");

/// How people and the document write the header's name.
pub(super) const NAME: &str = "Idempotency-Key";

/// The key of a write.
pub(super) struct WriteKey(pub(super) Key);

impl FromRequestParts<App> for WriteKey {
    type Rejection = Error;

    async fn from_request_parts(parts: &mut Parts, _app: &App) -> Result<Self> {
        let mut sent = parts.headers.get_all(HEADER).iter();
        let (Some(key), None) = (sent.next(), sent.next()) else {
            return Err(not_a_key());
        };
        key.to_str()
            .ok()
            .and_then(read)
            .map(Self)
            .ok_or_else(not_a_key)
    }
}

fn not_a_key() -> Error {
    Error::Invalid(Problems::one(NAME, Problem::NotAKey))
}

/// A UUID, or 16 bytes as 22 characters of base64url.
fn read(text: &str) -> Option<Key> {
    if let Ok(uuid) = Uuid::try_parse(text)
        && text.len() == 36
    {
        return Some(uuid.into_bytes());
    }
    BASE64URL_NOPAD
        .decode(text.as_bytes())
        .ok()?
        .try_into()
        .ok()
}
