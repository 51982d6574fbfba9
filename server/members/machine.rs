//! What is done to accounts on the machine itself: the rescue commands' work.
//! Whatever concerns a room stands in that room's book, written by nobody.

use time::OffsetDateTime;
use uuid::Uuid;

use super::entries::{ResetLinkMade, Restored, RoleChanged};
use super::joining::join;
use super::store::{self, AccountRow};
use crate::app::App;
use crate::clock::micros;
use crate::error::{Error, Result};
use crate::identity::links::{self, GOOD_FOR, Kind, NewLink};
use crate::identity::secret::Secret;
use crate::identity::sessions;
use crate::logbook::{Asked, Author, Done, fingerprint};
use crate::problem::Problem;
use crate::rights::Role;
use crate::rooms;

/// An account and its rooms.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct Account {
    /// Who.
    pub id: Uuid,
    /// The name others see.
    pub name: String,
    /// The name typed to log in.
    pub log_in_name: String,
    /// Whether they look after the installation.
    pub is_operator: bool,
    /// Since when the account may not log in, if it may not.
    pub suspended_at: Option<OffsetDateTime>,
    /// The rooms, each with its short name, the role there and whether it is closed.
    pub rooms: Vec<(Uuid, String, Role, bool)>,
}

async fn with_rooms(app: &App, row: AccountRow) -> Result<Account> {
    let id = row.id;
    let rooms = app
        .database()
        .as_person(id, move |tx| {
            Box::pin(async move { store::rooms_of(tx, id).await })
        })
        .await?;
    Ok(Account {
        id,
        name: row.name,
        log_in_name: row.log_in_name,
        is_operator: row.is_operator,
        suspended_at: row.suspended_at,
        rooms,
    })
}

/// Every account, by log-in name.
///
/// # Errors
/// That the database is away.
pub async fn accounts(app: &App) -> Result<Vec<Account>> {
    let rows = app
        .database()
        .installation(|tx| Box::pin(async move { store::accounts(tx).await }))
        .await?;
    let mut accounts = Vec::with_capacity(rows.len());
    for row in rows {
        accounts.push(with_rooms(app, row).await?);
    }
    Ok(accounts)
}

/// The account of a log-in name.
///
/// # Errors
/// [`Error::NotFound`].
pub async fn account(app: &App, log_in_name: &str) -> Result<Account> {
    let name = log_in_name.to_lowercase();
    let row = app
        .database()
        .installation(move |tx| Box::pin(async move { store::account(tx, &name).await }))
        .await?;
    with_rooms(app, row.ok_or(Error::NotFound)?).await
}

/// Makes a link for a person's new password: an entry in each open room of
/// theirs first, then the link, so that there is none that no book knows of.
///
/// # Errors
/// That the database is away.
pub async fn reset(app: &App, account: &Account) -> Result<String> {
    let (secret, now) = (Secret::new()?, app.clock().now());
    let expires_at = now + GOOD_FOR;
    let made = ResetLinkMade {
        person: account.id,
        link: Uuid::now_v7(),
        expires_at_us: micros(expires_at),
    };
    let link = NewLink {
        id: made.link,
        kind: Kind::Reset,
        room: None,
        role: None,
        person: Some(account.id),
        made_by: None,
        expires_at: Some(expires_at),
    };
    for (room, ..) in account.rooms.iter().filter(|(.., is_closed)| !is_closed) {
        let entry = made.clone();
        app.scribes()
            .write(*room, Author::Unchecked, by_machine("reset", &made)?, {
                move |book| {
                    Box::pin(async move {
                        book.append(&entry).await?;
                        Ok(())
                    })
                }
            })
            .await?;
    }
    links::write(app, link, &secret).await?;
    Ok(links::address(app, Kind::Reset, &secret))
}

fn by_machine(action: &str, input: &impl serde::Serialize) -> Result<Asked> {
    Ok(Asked {
        actor: None,
        key: None,
        fingerprint: fingerprint(action, input)?,
    })
}

/// Makes somebody a steward of a room that has lost its own: a member or not,
/// suspended or gone.
///
/// # Errors
/// [`Problem::Unchanged`] for one who is; a closed room.
pub async fn make_steward(app: &App, room: Uuid, person: Uuid) -> Result<Done> {
    let asked = by_machine("make_steward", &person)?;
    let done = app
        .scribes()
        .write(room, Author::Unchecked, asked, move |book| {
            Box::pin(async move {
                if rooms::is_closed(book.tx()).await? {
                    return Err(Error::Refused(Problem::RoomClosed));
                }
                let member = store::member(book.tx(), person).await?;
                let Some(member) = member.filter(|member| member.ended_at.is_none()) else {
                    return join(book, person, Role::Steward, None).await;
                };
                if member.role == Role::Steward && member.is_active() {
                    return Err(Error::Refused(Problem::Unchanged));
                }
                if member.suspended_at.is_some() {
                    book.append(&Restored { person }).await?;
                }
                if member.role != Role::Steward {
                    let changed = RoleChanged {
                        person,
                        from: member.role,
                        to: Role::Steward,
                    };
                    book.append(&changed).await?;
                }
                Ok(())
            })
        })
        .await?;
    app.sessions().forget_room(room);
    Ok(done)
}

/// Suspends an account, which ends its log-ins, or lets it log in again.
///
/// # Errors
/// That the database is away.
pub async fn set_suspended(app: &App, person: Uuid, suspended: bool) -> Result<()> {
    let at = suspended.then(|| app.clock().now());
    app.database()
        .installation(move |tx| {
            Box::pin(async move { store::set_account_suspended(tx, person, at).await })
        })
        .await?;
    if suspended {
        sessions::end_all(app, person).await?;
    }
    app.sessions().forget_person(person);
    Ok(())
}
