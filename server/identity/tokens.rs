//! Bearer tokens for the API. A token's text names its room and its row, so that
//! looking it up stays inside one room: `wetside_<room>_<row>_<secret>`.

use uuid::Uuid;

use super::secret::Secret;
use super::store::{self, TokenRow};
use super::{Membership, Person};
use crate::app::App;
use crate::database::Scope;
use crate::error::Result;

/// What a good token stands for.
#[derive(Clone, Debug)]
pub struct Held {
    /// Its person.
    pub person: Person,
    /// Their standing in its room.
    pub membership: Membership,
    /// What it is good for.
    pub scopes: Vec<String>,
}

/// The text of a token.
#[must_use]
pub fn text(room: Uuid, id: Uuid, secret: &Secret) -> String {
    format!(
        "wetside_{}_{}_{}",
        room.simple(),
        id.simple(),
        secret.reveal()
    )
}

fn parts(token: &str) -> Option<(Uuid, Uuid, Secret)> {
    let mut parts = token.strip_prefix("wetside_")?.splitn(3, '_');
    let room = Uuid::parse_str(parts.next()?).ok()?;
    let id = Uuid::parse_str(parts.next()?).ok()?;
    Some((room, id, Secret::received(parts.next()?)))
}

/// What a token stands for, if it is good now.
///
/// # Errors
/// That the database is away.
pub async fn find(app: &App, token: &str) -> Result<Option<Held>> {
    let Some((room, id, secret)) = parts(token) else {
        return Ok(None);
    };
    let now = app.clock().now();
    let scope = Scope { room, person: None };
    let row = app
        .database()
        .reading(scope, move |tx| {
            Box::pin(async move { store::token(tx, id, now).await })
        })
        .await?;
    Ok(row
        .filter(|row| is_same(&row.secret_hash, &secret.hash()))
        .map(|row: TokenRow| Held {
            person: row.person,
            membership: row.membership,
            scopes: row.scopes,
        }))
}

fn is_same(kept: &[u8], shown: &[u8]) -> bool {
    subtle::ConstantTimeEq::ct_eq(kept, shown).into()
}
