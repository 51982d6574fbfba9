//! Bearer tokens for the API. A token's text names its room and its row, so that
//! looking it up stays inside one room: `wetside_<room>_<row>_<secret>`.

use time::{Duration, OffsetDateTime};
use uuid::Uuid;

use super::names::text as line_of_text;
use super::secret::Secret;
use super::{Membership, Permit, Person};
use crate::app::App;
use crate::database::{RoomTx, Scope};
use crate::error::{Error, Result};
use crate::problem::{Problem, Problems};
use crate::rights::{KeepTokens, Reach, Role, TABLE};

mod store;

/// The longest a token is good.
pub const MOST_DAYS: i64 = 366;
/// The most characters of a token's name.
const NAME: usize = 80;
/// So many good tokens a person has in a room at most.
const MOST: usize = 50;
/// When it was last used is noted no more often than this.
const NOTED_EVERY: Duration = Duration::minutes(1);

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
            Box::pin(async move { store::find(tx, id, now).await })
        })
        .await?;
    let Some(row) = row.filter(|row| is_same(&row.secret_hash, &secret.hash())) else {
        return Ok(None);
    };
    if row.last_used_at.is_none_or(|at| at + NOTED_EVERY <= now) {
        app.database()
            .in_room(scope, move |tx| {
                Box::pin(async move { store::used(tx, id, now, now - NOTED_EVERY).await })
            })
            .await?;
    }
    Ok(Some(Held {
        person: row.person,
        membership: row.membership,
        scopes: row.scopes,
    }))
}

fn is_same(kept: &[u8], shown: &[u8]) -> bool {
    subtle::ConstantTimeEq::ct_eq(kept, shown).into()
}

/// The scopes a token of somebody with this role may have: those of the rights
/// the role has.
#[must_use]
pub fn scopes_of(role: Role) -> Vec<&'static str> {
    [Reach::Read, Reach::Bench, Reach::Keep]
        .into_iter()
        .filter(|reach| {
            TABLE
                .iter()
                .any(|row| row.reach == *reach && row.roles.contains(&role))
        })
        .filter_map(Reach::scope)
        .collect()
}

/// A token as somebody wants it.
#[derive(Clone, Debug)]
pub struct NewToken {
    /// What it is for.
    pub name: String,
    /// What it is good for.
    pub scopes: Vec<String>,
    /// How many days it is good.
    pub days: i64,
}

/// A token that was made.
#[derive(Clone, Debug)]
pub struct TokenMade {
    /// Which.
    pub id: Uuid,
    /// What it is for.
    pub name: String,
    /// Its text, to be shown now or never.
    pub text: String,
    /// When it ends.
    pub expires_at: OffsetDateTime,
}

/// A token, without its secret.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct Token {
    /// Which.
    pub id: Uuid,
    /// What it is for.
    pub name: String,
    /// What it is good for.
    pub scopes: Vec<String>,
    /// When it was made.
    pub made_at: OffsetDateTime,
    /// When it ends.
    pub expires_at: OffsetDateTime,
    /// When it was last used, to the minute.
    pub last_used_at: Option<OffsetDateTime>,
    /// When it was revoked, if it was.
    pub revoked_at: Option<OffsetDateTime>,
}

/// Makes a token. It can do no more than its person, whatever it says: a right
/// is looked up with the role its person has when it is used.
///
/// # Errors
/// What is wrong with it; too many of them.
pub async fn make(app: &App, permit: &Permit<KeepTokens>, new: NewToken) -> Result<TokenMade> {
    let new = check(new, permit.role()).map_err(Error::Invalid)?;
    let (id, secret, now) = (Uuid::now_v7(), Secret::new()?, app.clock().now());
    let made = TokenMade {
        id,
        name: new.name.clone(),
        text: text(permit.room(), id, &secret),
        expires_at: now + Duration::days(new.days),
    };
    let row = Token {
        id,
        name: new.name,
        scopes: new.scopes,
        made_at: now,
        expires_at: made.expires_at,
        last_used_at: None,
        revoked_at: None,
    };
    let person = permit.person().id;
    app.database()
        .in_room(permit.scope(), move |tx| {
            Box::pin(async move {
                let all = store::of_person(tx, person).await?;
                let good = |each: &&Token| each.revoked_at.is_none() && each.expires_at > now;
                if all.iter().filter(good).count() >= MOST {
                    return Err(Error::Refused(Problem::TooMany(MOST)));
                }
                store::insert(tx, person, &row, &secret.hash()).await
            })
        })
        .await?;
    Ok(made)
}

fn check(new: NewToken, role: Role) -> Result<NewToken, Problems> {
    let mut problems = Problems::default();
    let name = line_of_text(&new.name, NAME).and_then(|name| match name.is_empty() {
        true => Err(Problem::Missing),
        false => Ok(name),
    });
    let name = problems.take("name", name).unwrap_or_default();
    let may = scopes_of(role);
    let mut scopes = new.scopes;
    scopes.sort_unstable();
    scopes.dedup();
    if scopes.is_empty() {
        problems.add("scopes", Problem::Missing);
    } else if !scopes.iter().all(|scope| may.contains(&scope.as_str())) {
        problems.add("scopes", Problem::NotAScope);
    }
    if !(1..=MOST_DAYS).contains(&new.days) {
        let (least, most) = ("1".to_owned(), MOST_DAYS.to_string());
        problems.add("days", Problem::OutOfRange { least, most });
    }
    match problems.is_empty() {
        true => Ok(NewToken {
            name,
            scopes,
            days: new.days,
        }),
        false => Err(problems),
    }
}

/// One's own tokens in the room, the newest first.
///
/// # Errors
/// That the database is away.
pub async fn list(app: &App, permit: &Permit<KeepTokens>) -> Result<Vec<Token>> {
    let person = permit.person().id;
    app.database()
        .reading(permit.scope(), move |tx| {
            Box::pin(async move { store::of_person(tx, person).await })
        })
        .await
}

/// A token that is good, as others of the room see it.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct GoodToken {
    /// What it is for.
    pub name: String,
    /// Whose it is, by name.
    pub person_name: String,
    /// What it is good for.
    pub scopes: Vec<String>,
    /// When it ends.
    pub expires_at: OffsetDateTime,
}

/// Every token of the room that is good now, by whose it is.
///
/// # Errors
/// The database's.
pub async fn good_in(tx: &mut RoomTx, now: OffsetDateTime) -> Result<Vec<GoodToken>> {
    store::good_in(tx, now).await
}

/// Revokes one of one's own tokens. One that is revoked already stays so.
///
/// # Errors
/// [`Error::NotFound`] where it is none of theirs.
pub async fn revoke(app: &App, permit: &Permit<KeepTokens>, token: Uuid) -> Result<()> {
    let (person, now) = (permit.person().id, app.clock().now());
    let is_theirs = app
        .database()
        .in_room(permit.scope(), move |tx| {
            Box::pin(async move { store::revoke(tx, person, token, now).await })
        })
        .await?;
    match is_theirs {
        true => Ok(()),
        false => Err(Error::NotFound),
    }
}
