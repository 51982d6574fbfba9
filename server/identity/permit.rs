//! Proofs of who asks and what they may: extractors that no handler can forge.

use std::marker::PhantomData;

use axum::extract::{FromRequestParts, RawPathParams};
use axum::http::header::AUTHORIZATION;
use axum::http::request::Parts;
use uuid::Uuid;

use super::sessions::session_secret;
use super::{memberships, tokens};
use crate::app::App;
use crate::database::Scope;
use crate::error::{Error, Result};
use crate::logbook::{Asked, Author, Book, Done, Grouped, Key};
use crate::rights::{Right, Role};

/// Which of the two skins a request came through; each router says its own.
#[derive(Clone, Copy, Debug, Eq, PartialEq)]
pub enum Skin {
    /// Pages, with a session cookie.
    Pages,
    /// The API, with a bearer token.
    Api,
}

/// A person who is logged in.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct Person {
    /// Who.
    pub id: Uuid,
    /// The name others see.
    pub name: String,
    /// The log-in this is; nothing where a token was shown.
    pub session: Option<Uuid>,
    /// Whether they look after the installation.
    pub is_operator: bool,
}

/// A person's standing in a room.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct Membership {
    /// The room.
    pub room: Uuid,
    /// The room's short name in addresses.
    pub slug: String,
    /// The room's name.
    pub room_name: String,
    /// What the person is there.
    pub role: Role,
    /// Whether it is a room of invented people.
    pub is_demo: bool,
    /// Whether the room takes no more entries.
    pub is_closed: bool,
}

/// The proof that a person holds right `R` in a room. Only this module makes one.
#[derive(Clone, Debug)]
pub struct Permit<R> {
    person: Person,
    membership: Membership,
    right: PhantomData<R>,
}

impl<R: Right> Permit<R> {
    fn new(person: Person, membership: Membership) -> Result<Self> {
        if !R::ROW.roles.contains(&membership.role) {
            return Err(Error::Forbidden);
        }
        Ok(Self {
            person,
            membership,
            right: PhantomData,
        })
    }

    /// Who holds it.
    #[must_use]
    pub fn person(&self) -> &Person {
        &self.person
    }

    /// Where, and as what.
    #[must_use]
    pub fn membership(&self) -> &Membership {
        &self.membership
    }

    /// The room.
    #[must_use]
    pub fn room(&self) -> Uuid {
        self.membership.room
    }

    /// The person's role there.
    #[must_use]
    pub fn role(&self) -> Role {
        self.membership.role
    }

    /// What a transaction of theirs may see.
    #[must_use]
    pub fn scope(&self) -> Scope {
        Scope {
            room: self.membership.room,
            person: Some(self.person.id),
        }
    }

    /// Writes in the room's book by this right: `input` is what was asked, as
    /// read; the key answers a repeat of it from the entry.
    ///
    /// # Errors
    /// What `work` answers; a key that was used for something else.
    pub async fn write<W>(
        &self,
        app: &App,
        key: Key,
        input: &impl serde::Serialize,
        work: W,
    ) -> Result<Done>
    where
        W: for<'b, 't> FnOnce(&'b mut Book<'t>) -> futures_util::future::BoxFuture<'b, Result<()>>
            + Send
            + Sync
            + 'static,
    {
        let asked = self.asked(key, input)?;
        app.scribes()
            .write(self.room(), self.author(), asked, work)
            .await
    }

    /// Writes one entry that may share its transaction with its neighbours': `input`
    /// is what was asked, `item` what is written of it.
    ///
    /// # Errors
    /// As [`Permit::write`].
    pub async fn write_grouped<G: Grouped>(
        &self,
        app: &App,
        key: Key,
        input: &impl serde::Serialize,
        item: G,
    ) -> Result<Done> {
        let asked = self.asked(key, input)?;
        app.scribes()
            .write_grouped(self.room(), self.author(), asked, item)
            .await
    }

    fn author(&self) -> Author {
        Author::Member(R::ROW.roles)
    }

    fn asked(&self, key: Key, input: &impl serde::Serialize) -> Result<Asked> {
        if self.membership.is_closed {
            return Err(Error::Refused(crate::problem::Problem::RoomClosed));
        }
        Ok(Asked {
            actor: Some(self.person.id),
            key: Some(key),
            fingerprint: crate::logbook::fingerprint(R::ROW.name, input)?,
        })
    }
}

/// The permit of a person in a room, by the same checks as a request of theirs:
/// how the demo and the tests act as somebody without a browser.
///
/// # Errors
/// As for a request.
pub async fn permit_for<R: Right>(app: &App, person: Person, slug: &str) -> Result<Permit<R>> {
    let membership = memberships::find(app, person.id, slug).await?;
    Permit::new(person, membership.ok_or(Error::NotFound)?)
}

impl FromRequestParts<App> for Person {
    type Rejection = Error;

    async fn from_request_parts(parts: &mut Parts, app: &App) -> Result<Self> {
        let secret = session_secret(&parts.headers, app.address()).ok_or(Error::Unauthenticated)?;
        app.sessions().find(app, &secret).await
    }
}

impl<R: Right> FromRequestParts<App> for Permit<R> {
    type Rejection = Error;

    async fn from_request_parts(parts: &mut Parts, app: &App) -> Result<Self> {
        let skin = parts.extensions.get::<Skin>().copied();
        if skin == Some(Skin::Api) {
            let (person, membership) = by_token::<R>(parts, app).await?;
            let asked_for = slug_of(parts, app).await?;
            // A token is good for its own room and knows of no other.
            if membership.slug != asked_for {
                return Err(Error::NotFound);
            }
            return Self::new(person, membership);
        }
        let person = Person::from_request_parts(parts, app).await?;
        let slug = slug_of(parts, app).await?;
        let membership = memberships::find(app, person.id, &slug).await?;
        let permit = Self::new(person, membership.ok_or(Error::NotFound)?)?;
        // Whose page this is, for the frame around it.
        parts.extensions.insert(permit.scope());
        Ok(permit)
    }
}

async fn by_token<R: Right>(parts: &Parts, app: &App) -> Result<(Person, Membership)> {
    let header = parts.headers.get(AUTHORIZATION);
    let token = header
        .and_then(|value| value.to_str().ok())
        .and_then(|value| value.strip_prefix("Bearer "))
        .ok_or(Error::Unauthenticated)?;
    let held = tokens::find(app, token)
        .await?
        .ok_or(Error::Unauthenticated)?;
    let scope = R::ROW.reach.scope().ok_or(Error::Forbidden)?;
    if !held.scopes.iter().any(|each| each == scope) {
        return Err(Error::Forbidden);
    }
    Ok((held.person, held.membership))
}

async fn slug_of(parts: &mut Parts, app: &App) -> Result<String> {
    let params = RawPathParams::from_request_parts(parts, app)
        .await
        .map_err(|_| Error::NotFound)?;
    let room = params.iter().find(|(name, _)| *name == "room");
    room.map(|(_, slug)| slug.to_owned())
        .ok_or_else(|| Error::fault("a route of a room without {room}"))
}
