//! A permit that lasts: what is sent to somebody for hours is sent as long as it holds.

use std::time::{Duration, Instant};

use axum::http::HeaderMap;
use uuid::Uuid;

use super::sessions::session_secret;
use super::{Membership, Permit, memberships};
use crate::app::App;
use crate::error::{Error, Result};
use crate::rights::Right;

/// So long a permit is taken to hold without looking, where nothing was forgotten here.
const TRUSTED: Duration = Duration::from_millis(250);

/// A log-in and a standing in a room, asked for again and again. It does not count as
/// use of the session.
#[derive(Debug)]
pub struct Lasting {
    session: Vec<u8>,
    person: Uuid,
    membership: Membership,
    looked_at: Instant,
    epoch: u64,
}

impl Lasting {
    /// What a permit stands on, as it is now.
    ///
    /// # Errors
    /// [`Error::Unauthenticated`] for a request without a session.
    pub fn of<R: Right>(app: &App, permit: &Permit<R>, headers: &HeaderMap) -> Result<Self> {
        let secret = session_secret(headers, app.address()).ok_or(Error::Unauthenticated)?;
        Ok(Self {
            session: secret.hash(),
            person: permit.person().id,
            membership: permit.membership().clone(),
            looked_at: Instant::now(),
            epoch: app.sessions().cache.epoch(),
        })
    }

    /// Whether it is still the same person's session and the same role in the same room.
    /// Where nobody can know, it is not.
    pub async fn holds(&mut self, app: &App) -> bool {
        let epoch = app.sessions().cache.epoch();
        if epoch == self.epoch && self.looked_at.elapsed() < TRUSTED {
            return true;
        }
        let holds = self.look(app).await.unwrap_or(false);
        (self.epoch, self.looked_at) = (epoch, Instant::now());
        holds
    }

    async fn look(&self, app: &App) -> Result<bool> {
        let cache = &app.sessions().cache;
        let session = cache.session(app, &self.session).await?;
        let now = app.clock().now();
        let is_theirs =
            session.is_some_and(|it| it.expires_at > now && it.person.id == self.person);
        if !is_theirs {
            return Ok(false);
        }
        let standing = memberships::find(app, self.person, &self.membership.slug).await?;
        let is_same =
            |now: &Membership| (now.room, now.role) == (self.membership.room, self.membership.role);
        Ok(standing.as_ref().is_some_and(is_same))
    }
}
