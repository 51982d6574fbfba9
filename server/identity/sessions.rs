//! Sessions: who a browser's cookie stands for.

use axum::http::HeaderMap;
use axum::http::header::COOKIE;

use super::Person;
use super::secret::Secret;
use super::store;
use crate::address::PublicAddress;
use crate::app::App;
use crate::error::{Error, Result};

/// The sessions this instance knows of.
#[derive(Debug, Default)]
pub struct Sessions {}

impl Sessions {
    /// The person of a session.
    ///
    /// # Errors
    /// [`Error::Unauthenticated`] for none; that the database is away.
    pub async fn find(&self, app: &App, secret: &Secret) -> Result<Person> {
        let hash = secret.hash();
        let now = app.clock().now();
        app.database()
            .installation(move |tx| Box::pin(async move { store::session(tx, &hash, now).await }))
            .await?
            .ok_or(Error::Unauthenticated)
    }
}

/// The value of a cookie.
#[must_use]
pub fn cookie<'h>(headers: &'h HeaderMap, name: &str) -> Option<&'h str> {
    headers
        .get_all(COOKIE)
        .iter()
        .filter_map(|header| header.to_str().ok())
        .flat_map(|header| header.split(';'))
        .filter_map(|pair| pair.trim().split_once('='))
        .find(|(key, _)| *key == name)
        .map(|(_, value)| value)
}

/// The session's secret that a request carries.
#[must_use]
pub fn session_secret(headers: &HeaderMap, address: &PublicAddress) -> Option<Secret> {
    cookie(headers, address.session_cookie()).map(Secret::received)
}
