//! Sessions: who a browser's cookie stands for.
//!
//! The cookie holds 256 random bits, the database their hash. A session ends
//! 30 days after it was last used and 180 days after the log-in, whichever comes
//! first: a darkroom's phone is its owner's, and what a session may do is noted
//! under its name; a shared machine's browser is logged out by hand, or from the
//! account page of any other. (NIST SP 800-63B leaves 30 days to a log-in by
//! password alone.)

use axum::http::header::{COOKIE, SET_COOKIE};
use axum::http::{HeaderMap, HeaderName, HeaderValue};
use time::{Duration, OffsetDateTime};
use uuid::Uuid;

use super::Person;
use super::cache::Cache;
use super::secret::Secret;
use crate::address::PublicAddress;
use crate::app::App;
use crate::database::InstallationTx;
use crate::error::{Error, Result};

pub(super) mod store;

/// Unused for so long, a session ends.
pub const IDLE: Duration = Duration::days(30);
/// However much used, a session ends after so long.
pub const LONGEST: Duration = Duration::days(180);
/// When it was last used is noted no more often than this.
const NOTED_EVERY: Duration = Duration::minutes(1);
/// How long a browser keeps its device secret; a row nobody used for longer is of no use.
pub const DEVICE_KEPT: Duration = Duration::days(400);

/// A session as it is cached.
#[derive(Clone, Debug)]
pub(super) struct Session {
    pub(super) person: Person,
    pub(super) created_at: OffsetDateTime,
    pub(super) last_seen_at: OffsetDateTime,
    pub(super) expires_at: OffsetDateTime,
}

/// A log-in, as its person sees it.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct LogIn {
    /// Which.
    pub id: Uuid,
    /// What the browser said it is.
    pub agent: String,
    /// When it began.
    pub created_at: OffsetDateTime,
    /// When it was last used, to the minute.
    pub last_seen_at: OffsetDateTime,
}

/// The sessions this instance knows of, and what they may enter.
#[derive(Debug, Default)]
pub struct Sessions {
    pub(super) cache: Cache,
}

impl Sessions {
    /// The person of a session.
    ///
    /// # Errors
    /// [`Error::Unauthenticated`] for none; that the database is away.
    pub async fn find(&self, app: &App, secret: &Secret) -> Result<Person> {
        let hash = secret.hash();
        let now = app.clock().now();
        let session = self.cache.session(app, &hash).await?;
        let session = session
            .filter(|session| session.expires_at > now)
            .ok_or(Error::Unauthenticated)?;
        if session.last_seen_at + NOTED_EVERY <= now {
            let until = (now + IDLE).min(session.created_at + LONGEST);
            self.cache.seen(&hash, now, until);
            note_seen(app, hash, now, until);
        }
        Ok(session.person)
    }

    /// Forgets a person's sessions at once: they are read anew.
    pub fn forget_person(&self, person: Uuid) {
        self.cache.forget_person(person);
    }

    /// Forgets who may enter a room at once: it is read anew.
    pub fn forget_room(&self, room: Uuid) {
        self.cache.forget_room(room);
    }
}

/// Writes that a session was used. The request does not wait for it, and is not
/// failed by it.
fn note_seen(app: &App, hash: Vec<u8>, now: OffsetDateTime, until: OffsetDateTime) {
    let database = app.database().clone();
    let before = now - NOTED_EVERY;
    tokio::spawn(async move {
        let noted = database
            .installation(move |tx| {
                Box::pin(async move { store::seen(tx, &hash, now, until, before).await })
            })
            .await;
        if let Err(cause) = noted {
            tracing::warn!(%cause, "a session's last use was not noted");
        }
    });
}

/// Begins a session.
pub(super) async fn begin(
    tx: &mut InstallationTx,
    person: Uuid,
    agent: &str,
    now: OffsetDateTime,
) -> Result<Secret> {
    let secret = Secret::new()?;
    store::insert(tx, &secret.hash(), person, agent, now).await?;
    Ok(secret)
}

/// Ends the session of a cookie. One that is over already is no error.
///
/// # Errors
/// That the database is away.
pub async fn end(app: &App, secret: &Secret) -> Result<()> {
    let hash = secret.hash();
    let person = app
        .database()
        .installation(move |tx| Box::pin(async move { store::end(tx, &hash).await }))
        .await?;
    if let Some(person) = person {
        app.sessions().forget_person(person);
    }
    Ok(())
}

/// A person's log-ins that are still good, the last used first.
///
/// # Errors
/// That the database is away.
pub async fn of_person(app: &App, person: Uuid) -> Result<Vec<LogIn>> {
    let now = app.clock().now();
    app.database()
        .installation(move |tx| Box::pin(async move { store::of_person(tx, person, now).await }))
        .await
}

/// Ends one log-in of a person.
///
/// # Errors
/// [`Error::NotFound`] where it is none of theirs.
pub async fn end_one(app: &App, person: Uuid, session: Uuid) -> Result<()> {
    let ended = app
        .database()
        .installation(move |tx| Box::pin(async move { store::end_one(tx, person, session).await }))
        .await?;
    app.sessions().forget_person(person);
    match ended {
        true => Ok(()),
        false => Err(Error::NotFound),
    }
}

/// Ends all log-ins of a person; answers how many there were.
///
/// # Errors
/// That the database is away.
pub async fn end_all(app: &App, person: Uuid) -> Result<u64> {
    let ended = app
        .database()
        .installation(move |tx| Box::pin(async move { store::end_all(tx, person, None).await }))
        .await?;
    app.sessions().forget_person(person);
    Ok(ended)
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

/// The secret of a browser that somebody logged in with before.
#[must_use]
pub fn device_secret(headers: &HeaderMap, address: &PublicAddress) -> Option<Secret> {
    cookie(headers, device_cookie(address)).map(Secret::received)
}

fn device_cookie(address: &PublicAddress) -> &'static str {
    match address.base().is_empty() {
        true => "__Host-device",
        false => "__Secure-device",
    }
}

/// The header that hands a session to the browser.
///
/// # Errors
/// A public path that no header can hold.
pub fn set_cookie(address: &PublicAddress, secret: &Secret) -> Result<(HeaderName, HeaderValue)> {
    let name = address.session_cookie();
    cookie_header(address, name, secret.reveal(), LONGEST)
}

/// The header that takes the session from the browser.
///
/// # Errors
/// A public path that no header can hold.
pub fn clear_cookie(address: &PublicAddress) -> Result<(HeaderName, HeaderValue)> {
    cookie_header(address, address.session_cookie(), "", Duration::ZERO)
}

/// The header that makes the browser one that logged in before.
///
/// # Errors
/// A public path that no header can hold.
pub fn set_device_cookie(
    address: &PublicAddress,
    secret: &Secret,
) -> Result<(HeaderName, HeaderValue)> {
    let name = device_cookie(address);
    cookie_header(address, name, secret.reveal(), DEVICE_KEPT)
}

/// The header that sets a cookie bound to this host.
///
/// # Errors
/// A public path that no header can hold.
pub(super) fn cookie_header(
    address: &PublicAddress,
    name: &str,
    value: &str,
    kept: Duration,
) -> Result<(HeaderName, HeaderValue)> {
    let text = format!(
        "{name}={value}; Path={}; Max-Age={}; Secure; HttpOnly; SameSite=Lax",
        address.cookie_path(),
        kept.whole_seconds()
    );
    let mut header = HeaderValue::try_from(text)
        .map_err(|_| Error::fault("the public path does not fit into a cookie"))?;
    header.set_sensitive(true);
    Ok((SET_COOKIE, header))
}
