//! How somebody becomes a member: by an invitation, or with the room itself.

use uuid::Uuid;

use super::entries::{Invited, Joined};
use super::store;
use crate::app::App;
use crate::clock::micros;
use crate::error::{Error, Result};
use crate::identity::accounts::NewAccount;
use crate::identity::links::{self, GOOD_FOR, Kind, Link, NewLink};
use crate::identity::secret::Secret;
use crate::logbook::{Asked, Author, Book, Done, fingerprint};
use crate::problem::Problem;
use crate::rights::Role;
use crate::rooms;

/// Who accepts an invitation.
#[derive(Clone, Debug)]
pub enum Joiner {
    /// Somebody whose account is made by it.
    New(NewAccount),
    /// Somebody who is logged in.
    Known(Uuid),
}

impl Joiner {
    /// Who.
    #[must_use]
    pub fn person(&self) -> Uuid {
        match self {
            Self::New(account) => account.id,
            Self::Known(person) => *person,
        }
    }
}

/// Writes that somebody is a member from here on. Who comes back keeps their
/// number.
///
/// # Errors
/// [`Problem::AlreadyMember`], suspended members too: an invitation lifts no
/// suspension.
pub async fn join(
    book: &mut Book<'_>,
    person: Uuid,
    role: Role,
    invitation: Option<Uuid>,
) -> Result<()> {
    let member_number = match store::member(book.tx(), person).await? {
        Some(member) if member.ended_at.is_none() => {
            return Err(Error::Refused(Problem::AlreadyMember));
        }
        Some(member) => member.member_number,
        None => store::next_number(book.tx()).await?,
    };
    let joined = Joined {
        person,
        role,
        member_number,
        invitation,
    };
    book.append(&joined).await?;
    Ok(())
}

/// Adds an account and makes its person a member: what the demo fills a room with.
///
/// # Errors
/// That the log-in name is taken.
pub async fn add_account(book: &mut Book<'_>, account: &NewAccount, role: Role) -> Result<()> {
    let now = book.now();
    account.insert(book.tx(), false, now).await?;
    join(book, account.id, role, None).await
}

/// Writes down a link that makes its user a member, and that it was made.
///
/// # Errors
/// The database's.
pub async fn write_invitation(book: &mut Book<'_>, role: Role, secret: &Secret) -> Result<()> {
    let (now, id) = (book.now(), book.new_id());
    let expires_at = now + GOOD_FOR;
    let link = NewLink {
        id,
        kind: Kind::Join,
        room: Some(book.room()),
        role: Some(role),
        person: None,
        made_by: book.actor(),
        expires_at: Some(expires_at),
    };
    link.insert(book.tx(), secret, now).await?;
    let invited = Invited {
        invitation: id,
        role,
        expires_at_us: micros(expires_at),
    };
    book.append(&invited).await?;
    Ok(())
}

/// Accepts an invitation: of two at once one wins, and whoever is refused has
/// not used it up.
///
/// # Errors
/// [`Problem::LinkDead`]; a log-in name that is taken; [`Problem::AlreadyMember`];
/// a closed room.
pub async fn accept(app: &App, link: &Link, joiner: Joiner) -> Result<Done> {
    let dead = || Error::Refused(Problem::LinkDead);
    let room = link.room.ok_or_else(dead)?;
    let role = link.role.ok_or_else(dead)?;
    let (id, person) = (link.id, joiner.person());
    let asked = Asked {
        actor: Some(person),
        key: None,
        fingerprint: fingerprint("join", &(id, person))?,
    };
    let done = app
        .scribes()
        .write(room, Author::Unchecked, asked, move |book| {
            Box::pin(async move {
                if rooms::is_closed(book.tx()).await? {
                    return Err(Error::Refused(Problem::RoomClosed));
                }
                let now = book.now();
                links::use_up(book.tx(), id, now).await?;
                if let Joiner::New(account) = &joiner {
                    account.insert(book.tx(), false, now).await?;
                }
                join(book, person, role, Some(id)).await
            })
        })
        .await?;
    app.sessions().forget_person(person);
    Ok(done)
}
