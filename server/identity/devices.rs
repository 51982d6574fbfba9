//! Screens that are no person's: who a browser is that a steward paired.
//!
//! A browser that nobody paired shows a code, which a steward types. Code and
//! cookie come from one secret of 256 random bits: the database keeps the secret's
//! hash, and while it waits the code's. A pairing has no time-out; it is asked for
//! anew with every request, so that ending it takes effect with the next one.

use std::convert::Infallible;

use axum::extract::FromRequestParts;
use axum::http::request::Parts;
use axum::http::{HeaderMap, HeaderName, HeaderValue};
use axum::response::{IntoResponse, Response};
use sha2::{Digest, Sha256};
use time::{Duration, OffsetDateTime};
use uuid::Uuid;

use super::client::Client;
use super::secret::Secret;
use super::sessions::{self, DEVICE_KEPT};
use super::throttle::Tries;
use crate::address::PublicAddress;
use crate::app::App;
use crate::clock::micros;
use crate::database::{RoomTx, Scope};
use crate::error::{Error, Result};
use crate::problem::Problem;
use crate::web::forms::see_other;

mod store;

/// A code is good for so long.
pub const GOOD_FOR: Duration = Duration::minutes(10);
/// When a screen was last seen is noted no more often than this.
const NOTED_EVERY: Duration = Duration::minutes(1);
/// Letters and digits that nobody takes for one another on a wall.
const SIGNS: &[u8] = b"ACDEFHJKMNPRTWXY234679";
/// So many of them make a code.
const LENGTH: usize = 8;

/// What a screen is for; fixed when it is paired.
#[derive(Clone, Copy, Debug, Eq, Hash, PartialEq)]
pub enum DeviceKind {
    /// Shows the board.
    Board,
    /// Shows how the trays are, and takes what people do there by number and PIN.
    Door,
}

impl DeviceKind {
    /// Both, in the order pages list them.
    pub const ALL: [Self; 2] = [Self::Board, Self::Door];

    /// As database, forms and API write it.
    #[must_use]
    pub const fn as_str(self) -> &'static str {
        match self {
            Self::Board => "board",
            Self::Door => "door",
        }
    }

    /// Reads what [`DeviceKind::as_str`] writes.
    #[must_use]
    pub fn parse(text: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|kind| kind.as_str() == text)
    }
}

/// A paired screen: the proof that a request comes from it. Only this module makes
/// one.
#[derive(Clone, Debug)]
pub struct Device {
    id: Uuid,
    kind: DeviceKind,
    display: String,
    room: DeviceRoom,
}

/// The room a screen belongs to.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct DeviceRoom {
    /// The room.
    pub id: Uuid,
    /// Its short name in addresses.
    pub slug: String,
    /// Its name.
    pub name: String,
    /// Whether it is a room of invented people.
    pub is_demo: bool,
}

impl Device {
    /// Which screen.
    #[must_use]
    pub fn id(&self) -> Uuid {
        self.id
    }

    /// What it is for.
    #[must_use]
    pub fn kind(&self) -> DeviceKind {
        self.kind
    }

    /// The display it was paired with.
    #[must_use]
    pub fn display(&self) -> &str {
        &self.display
    }

    /// Its room.
    #[must_use]
    pub fn room(&self) -> &DeviceRoom {
        &self.room
    }

    /// What a transaction of it may see: its room, as nobody.
    #[must_use]
    pub fn scope(&self) -> Scope {
        Scope {
            room: self.room.id,
            person: None,
        }
    }
}

/// What a browser is to us.
#[derive(Clone, Debug)]
pub enum Pairing {
    /// Nothing yet, or nothing any more.
    Nothing,
    /// It shows this code until then.
    Waiting(Code, OffsetDateTime),
    /// A screen.
    Paired(Device),
}

/// A code that a screen shows.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct Code(String);

impl Code {
    /// The code of a secret as of the moment it was asked for.
    #[must_use]
    pub fn of(secret: &Secret, shown_at: OffsetDateTime) -> Self {
        let mut hasher = Sha256::new();
        hasher.update(b"wetside.screen");
        hasher.update(secret.reveal());
        hasher.update(micros(shown_at).to_be_bytes());
        let drawn = hasher.finalize();
        let pairs = drawn.chunks_exact(2).take(LENGTH);
        let sign = |pair: &[u8]| {
            let number = u16::from_be_bytes([pair[0], pair[1]]);
            char::from(SIGNS[usize::from(number) % SIGNS.len()])
        };
        Self(pairs.map(sign).collect())
    }

    /// Reads a code as people type it: with or without the gap, in any case.
    ///
    /// # Errors
    /// [`Problem::CodeUnknown`] for what is no code.
    pub fn read(typed: &str) -> Result<Self, Problem> {
        let text: String = typed
            .chars()
            .filter(|sign| !sign.is_whitespace() && *sign != '-')
            .map(|sign| sign.to_ascii_uppercase())
            .collect();
        let fits = text.len() == LENGTH && text.bytes().all(|sign| SIGNS.contains(&sign));
        match fits {
            true => Ok(Self(text)),
            false => Err(Problem::CodeUnknown),
        }
    }

    /// As it is shown, in two halves.
    #[must_use]
    pub fn halves(&self) -> (&str, &str) {
        self.0.split_at(LENGTH / 2)
    }

    fn hash(&self) -> Vec<u8> {
        Sha256::digest(self.0.as_bytes()).to_vec()
    }
}

fn cookie_name(address: &PublicAddress) -> &'static str {
    match address.base().is_empty() {
        true => "__Host-screen",
        false => "__Secure-screen",
    }
}

/// The secret of a browser that showed a code or was paired.
#[must_use]
pub fn screen_secret(headers: &HeaderMap, address: &PublicAddress) -> Option<Secret> {
    sessions::cookie(headers, cookie_name(address)).map(Secret::received)
}

/// The header that makes the browser this screen, for as long as browsers keep it.
///
/// # Errors
/// A public path that no header can hold.
pub fn screen_cookie(
    address: &PublicAddress,
    secret: &Secret,
) -> Result<(HeaderName, HeaderValue)> {
    let name = cookie_name(address);
    sessions::cookie_header(address, name, secret.reveal(), DEVICE_KEPT)
}

/// What the browser of a request is.
///
/// # Errors
/// That the database is away.
pub async fn look(app: &App, headers: &HeaderMap) -> Result<Pairing> {
    let Some(secret) = screen_secret(headers, app.address()) else {
        return Ok(Pairing::Nothing);
    };
    let (hash, now) = (secret.hash(), app.clock().now());
    let found = app
        .database()
        .installation(move |tx| Box::pin(async move { store::find(tx, &hash).await }))
        .await?;
    let Some(found) = found else {
        return Ok(Pairing::Nothing);
    };
    let Some((room, screen)) = found.room.zip(found.screen) else {
        let until = found.shown_at + GOOD_FOR;
        return Ok(match now < until {
            true => Pairing::Waiting(Code::of(&secret, found.shown_at), until),
            false => Pairing::Nothing,
        });
    };
    if found.last_seen_at + NOTED_EVERY <= now {
        note_seen(app, secret.hash(), now);
    }
    device(app, room, screen).await
}

async fn device(app: &App, room: DeviceRoom, screen: Uuid) -> Result<Pairing> {
    let scope = Scope {
        room: room.id,
        person: None,
    };
    let found = app
        .database()
        .reading(scope, move |tx| Box::pin(store::screen(tx, screen)))
        .await?;
    let Some((kind, display)) = found else {
        return Ok(Pairing::Nothing);
    };
    let unknown = || Error::fault(format!("no such kind of screen: {kind}"));
    Ok(Pairing::Paired(Device {
        id: screen,
        kind: DeviceKind::parse(&kind).ok_or_else(unknown)?,
        display,
        room,
    }))
}

/// Writes that a screen was seen. The request does not wait for it, and is not
/// failed by it.
fn note_seen(app: &App, hash: Vec<u8>, now: OffsetDateTime) {
    let database = app.database().clone();
    tokio::spawn(async move {
        let noted = database
            .installation(move |tx| {
                Box::pin(async move { store::seen(tx, &hash, now, now - NOTED_EVERY).await })
            })
            .await;
        if let Err(cause) = noted {
            tracing::warn!(%cause, "when a screen was last seen was not noted");
        }
    });
}

/// Begins to wait under a new code; answers the secret that makes it, or nothing
/// for a browser that is a screen: it stays one.
///
/// # Errors
/// [`Error::TooMany`] codes for one network; that the database is away.
pub async fn show_code(app: &App, client: &Client, headers: &HeaderMap) -> Result<Option<Secret>> {
    if matches!(look(app, headers).await?, Pairing::Paired(_)) {
        return Ok(None);
    }
    let (old, new) = (screen_secret(headers, app.address()), Secret::new()?);
    let now = app.clock().now();
    let code = Code::of(&new, now).hash();
    let tries = Tries::at_codes(&app.entrance().limits, &client.network());
    let (old, hash) = (old.map(|old| old.hash()), new.hash());
    app.database()
        .installation(move |tx| {
            Box::pin(async move {
                tries.count(tx, now).await?;
                // A steward may have typed its code just now: then it stays a screen.
                if let Some(old) = old
                    && !store::forget(tx, &old).await?
                {
                    return Ok(None);
                }
                store::wait(tx, &hash, &code, now).await?;
                Ok(Some(new))
            })
        })
        .await
}

/// Makes the browser that shows this code a screen of the transaction's room: of
/// two who type it one does.
///
/// # Errors
/// [`Problem::CodeUnknown`]: no such code, typed before, or too old.
pub async fn claim(tx: &mut RoomTx, code: &Code, screen: Uuid, now: OffsetDateTime) -> Result<()> {
    match store::claim(tx, &code.hash(), screen, now, now - GOOD_FOR).await? {
        true => Ok(()),
        false => Err(Error::field("code", Problem::CodeUnknown)),
    }
}

/// Forgets the browser of a screen of the transaction's room.
///
/// # Errors
/// The database's.
pub async fn release(tx: &mut RoomTx, screen: Uuid) -> Result<()> {
    store::release(tx, screen).await
}

/// A person's tries at codes: counted before one is looked at, given back where it
/// was right.
#[derive(Clone, Debug)]
pub struct CodeTries(Tries);

impl CodeTries {
    /// Counts a try.
    ///
    /// # Errors
    /// [`Error::TooMany`].
    pub async fn count(app: &App, person: Uuid) -> Result<Self> {
        let tries = Tries::at_typing(&app.entrance().limits, person);
        let (counted, now) = (tries.clone(), app.clock().now());
        app.database()
            .installation(move |tx| Box::pin(async move { counted.count(tx, now).await }))
            .await?;
        Ok(Self(tries))
    }

    /// Gives it back.
    ///
    /// # Errors
    /// That the database is away.
    pub async fn give_back(self, app: &App) -> Result<()> {
        let now = app.clock().now();
        app.database()
            .installation(move |tx| Box::pin(async move { self.0.give_back(tx, now).await }))
            .await
    }
}

impl FromRequestParts<App> for Pairing {
    type Rejection = Error;

    async fn from_request_parts(parts: &mut Parts, app: &App) -> Result<Self> {
        look(app, &parts.headers).await
    }
}

/// A paired screen of the door's kind. Who is none is led to where one is paired; a
/// board may not.
#[derive(Clone, Debug)]
pub struct Door(pub Device);

impl FromRequestParts<App> for Door {
    type Rejection = Response;

    async fn from_request_parts(parts: &mut Parts, app: &App) -> Result<Self, Response> {
        match look(app, &parts.headers).await {
            Ok(Pairing::Paired(device)) if device.kind == DeviceKind::Door => Ok(Self(device)),
            Ok(Pairing::Paired(_)) => Err(Error::Forbidden.into_response()),
            Ok(_) => Err(see_other(app, "/screen")),
            Err(cause) => Err(cause.into_response()),
        }
    }
}

/// Whether a request comes from a browser that may be a screen.
#[derive(Clone, Copy, Debug)]
pub struct MayBeScreen(pub bool);

impl FromRequestParts<App> for MayBeScreen {
    type Rejection = Infallible;

    async fn from_request_parts(parts: &mut Parts, app: &App) -> Result<Self, Infallible> {
        Ok(Self(screen_secret(&parts.headers, app.address()).is_some()))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const THEN: OffsetDateTime = time::macros::datetime!(2026-11-25 12:00 UTC);

    #[test]
    fn a_code_is_read_as_people_type_it() {
        let code = Code::of(&Secret::received("one"), THEN);
        let (first, second) = code.halves();
        for typed in [
            format!("{first}{second}"),
            format!("{first} {second}"),
            format!(" {}-{} ", first.to_lowercase(), second.to_lowercase()),
        ] {
            assert_eq!(Code::read(&typed), Ok(code.clone()), "{typed}");
        }
        for typed in ["", "ACDE FHJ", "ACDE FHJK M", "ACDE FHJ0", "ÄCDE FHJK"] {
            assert_eq!(Code::read(typed), Err(Problem::CodeUnknown), "{typed}");
        }
    }

    #[test]
    fn codes_hold_nothing_that_is_taken_for_something_else() {
        for sign in "0O1IL5S8BZUVGQ".bytes() {
            assert!(!SIGNS.contains(&sign), "{}", char::from(sign));
        }
        let shown: std::collections::HashSet<String> = (0..500)
            .map(|number| Code::of(&Secret::received(&number.to_string()), THEN).0)
            .collect();
        assert_eq!(shown.len(), 500);
        let later = THEN + Duration::seconds(1);
        let secret = Secret::received("one");
        assert_ne!(Code::of(&secret, THEN), Code::of(&secret, later));
    }
}
