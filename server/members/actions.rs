//! What a steward does with members. Each rule is read under the lock on the
//! room's head, so that two at once cannot both be right.

use serde::Serialize;
use time::OffsetDateTime;
use uuid::Uuid;

use super::entries::{
    AccessEnded, InvitationRevoked, ResetLinkMade, Restored, RoleChanged, Suspended,
};
use super::joining::write_invitation;
use super::store::{self, Member};
use crate::app::App;
use crate::clock::micros;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::identity::links::{self, GOOD_FOR, Kind, NewLink};
use crate::identity::pins;
use crate::identity::secret::Secret;
use crate::logbook::{Book, Done, Key};
use crate::problem::Problem;
use crate::rights::{Invite, KeepMembers, MakeResetLink, Role, SeeMembers};

/// So many links of a room are open at once.
const OPEN_LINKS: usize = 200;

/// A link that was made.
#[derive(Clone, Debug)]
pub struct LinkMade {
    /// What it left in the book.
    pub done: Done,
    /// The whole address, to be shown now or never; nothing where the form was
    /// sent before.
    pub address: Option<String>,
    /// When it ends.
    pub expires_at: OffsetDateTime,
}

/// Who is in the room, by number after this one, and the links that are open.
///
/// # Errors
/// The database's.
pub async fn see(
    app: &App,
    permit: &Permit<SeeMembers>,
    after_number: i32,
) -> Result<(Vec<Member>, Vec<links::OpenLink>)> {
    let now = app.clock().now();
    app.database()
        .reading(permit.scope(), move |tx| {
            Box::pin(async move {
                let members = store::members(tx, after_number).await?;
                Ok((members, links::open_in(tx, now).await?))
            })
        })
        .await
}

/// Makes a link that makes its user a member with this role.
///
/// # Errors
/// Too many open links.
pub async fn invite(app: &App, permit: &Permit<Invite>, key: Key, role: Role) -> Result<LinkMade> {
    let secret = Secret::new()?;
    let kept = secret.clone();
    let done = permit
        .write(app, key, &role, move |book| {
            Box::pin(async move {
                let now = book.now();
                if links::open_in(book.tx(), now).await?.len() >= OPEN_LINKS {
                    return Err(Error::Refused(Problem::TooMany(OPEN_LINKS)));
                }
                write_invitation(book, role, &kept).await
            })
        })
        .await?;
    made(app, done, Kind::Join, &secret)
}

fn made(app: &App, done: Done, kind: Kind, secret: &Secret) -> Result<LinkMade> {
    let is_new = !done.hit;
    Ok(LinkMade {
        done,
        address: is_new.then(|| links::address(app, kind, secret)),
        expires_at: app.clock().now() + GOOD_FOR,
    })
}

/// Revokes a link of the room, of either sort.
///
/// # Errors
/// A link that is used or revoked already, or of another room.
pub async fn revoke(app: &App, permit: &Permit<Invite>, key: Key, link: Uuid) -> Result<Done> {
    permit
        .write(app, key, &link, move |book| {
            Box::pin(async move { revoke_link(book, link).await })
        })
        .await
}

async fn revoke_link(book: &mut Book<'_>, link: Uuid) -> Result<()> {
    let now = book.now();
    let person = links::revoke(book.tx(), link, now).await?;
    let revoked = InvitationRevoked {
        invitation: link,
        person,
    };
    book.append(&revoked).await?;
    Ok(())
}

/// A member's new role.
#[derive(Clone, Copy, Debug, Serialize)]
pub struct NewRole {
    /// Who.
    pub person: Uuid,
    /// What they become.
    pub role: Role,
}

/// Changes a member's role. A steward may step down, the last one not.
///
/// # Errors
/// The last steward; a member whose access has ended; the role they have.
pub async fn change_role(
    app: &App,
    permit: &Permit<KeepMembers>,
    key: Key,
    new: NewRole,
) -> Result<Done> {
    let done = permit
        .write(app, key, &new, move |book| {
            Box::pin(async move {
                let member = present(book, new.person).await?;
                if member.role == new.role {
                    return Err(Error::Refused(Problem::Unchanged));
                }
                keep_a_steward(book, &member).await?;
                let changed = RoleChanged {
                    person: new.person,
                    from: member.role,
                    to: new.role,
                };
                book.append(&changed).await?;
                revoke_links_of(book, &member).await
            })
        })
        .await?;
    app.sessions().forget_room(permit.room());
    Ok(done)
}

/// Suspends a membership: the person may not enter this room until restored.
///
/// # Errors
/// Oneself; a member who is suspended or whose access has ended.
pub async fn suspend(
    app: &App,
    permit: &Permit<KeepMembers>,
    key: Key,
    person: Uuid,
) -> Result<Done> {
    let done = permit
        .write(app, key, &("suspend", person), move |book| {
            Box::pin(async move {
                not_oneself(book, person)?;
                let member = present(book, person).await?;
                if member.suspended_at.is_some() {
                    return Err(Error::Refused(Problem::Unchanged));
                }
                keep_a_steward(book, &member).await?;
                book.append(&Suspended { person }).await?;
                revoke_links_of(book, &member).await
            })
        })
        .await?;
    app.sessions().forget_room(permit.room());
    Ok(done)
}

/// Restores a suspended membership.
///
/// # Errors
/// A member who is not suspended or whose access has ended.
pub async fn restore(
    app: &App,
    permit: &Permit<KeepMembers>,
    key: Key,
    person: Uuid,
) -> Result<Done> {
    let done = permit
        .write(app, key, &("restore", person), move |book| {
            Box::pin(async move {
                let member = present(book, person).await?;
                if member.suspended_at.is_none() {
                    return Err(Error::Refused(Problem::Unchanged));
                }
                book.append(&Restored { person }).await?;
                Ok(())
            })
        })
        .await?;
    app.sessions().forget_room(permit.room());
    Ok(done)
}

/// Ends a member's access for good: only an invitation brings them back. Their
/// tokens of the room, their PIN and the links they made end with it.
///
/// # Errors
/// Oneself; a member whose access has ended.
pub async fn end_access(
    app: &App,
    permit: &Permit<KeepMembers>,
    key: Key,
    person: Uuid,
) -> Result<Done> {
    let done = permit
        .write(app, key, &("end", person), move |book| {
            Box::pin(async move {
                not_oneself(book, person)?;
                let member = present(book, person).await?;
                keep_a_steward(book, &member).await?;
                book.append(&AccessEnded { person }).await?;
                let now = book.now();
                store::revoke_tokens(book.tx(), person, now).await?;
                pins::remove(book.tx(), person).await?;
                revoke_links_of(book, &member).await
            })
        })
        .await?;
    app.sessions().forget_room(permit.room());
    Ok(done)
}

/// Makes a link for a member's new password. See [`links::may_reset`] for whom;
/// the person sees at the next log-in that it was made.
///
/// # Errors
/// [`Problem::ResetNotAllowed`]; nobody who is in the room.
pub async fn make_reset_link(
    app: &App,
    permit: &Permit<MakeResetLink>,
    key: Key,
    person: Uuid,
) -> Result<LinkMade> {
    let secret = Secret::new()?;
    let kept = secret.clone();
    // Other rooms are read before this one's lock is taken, and again when the
    // link is used.
    let may = links::may_reset(app, permit.person().id, person).await;
    let may = match may {
        Err(Error::NotFound) => false,
        other => other?,
    };
    let done = permit
        .write(app, key, &person, move |book| {
            Box::pin(async move {
                not_oneself(book, person)?;
                let member = present(book, person).await?;
                if !may || member.role == Role::Steward {
                    return Err(Error::Refused(Problem::ResetNotAllowed));
                }
                let room = book.room();
                write_reset(book, person, Some(room), &kept).await
            })
        })
        .await?;
    made(app, done, Kind::Reset, &secret)
}

async fn write_reset(
    book: &mut Book<'_>,
    person: Uuid,
    room: Option<Uuid>,
    secret: &Secret,
) -> Result<()> {
    let (now, id) = (book.now(), book.new_id());
    let expires_at = now + GOOD_FOR;
    let link = NewLink {
        id,
        kind: Kind::Reset,
        room,
        role: None,
        person: Some(person),
        made_by: book.actor(),
        expires_at: Some(expires_at),
    };
    link.insert(book.tx(), secret, now).await?;
    let made = ResetLinkMade {
        person,
        link: id,
        expires_at_us: micros(expires_at),
    };
    book.append(&made).await?;
    Ok(())
}

fn not_oneself(book: &Book<'_>, person: Uuid) -> Result<()> {
    match book.actor() == Some(person) {
        true => Err(Error::Refused(Problem::NotToOneself)),
        false => Ok(()),
    }
}

/// A member whose access has not ended.
async fn present(book: &mut Book<'_>, person: Uuid) -> Result<Member> {
    let member = store::member(book.tx(), person).await?;
    let member = member.ok_or(Error::NotFound)?;
    match member.ended_at {
        Some(_) => Err(Error::Refused(Problem::AccessEnded)),
        None => Ok(member),
    }
}

/// Refuses what would leave the room without a steward.
async fn keep_a_steward(book: &mut Book<'_>, member: &Member) -> Result<()> {
    let is_one = member.role == Role::Steward && member.is_active();
    if is_one && store::other_stewards(book.tx(), member.person).await? == 0 {
        return Err(Error::Refused(Problem::LastSteward));
    }
    Ok(())
}

/// Revokes what somebody who is steward no more had made: no link outlives the
/// right to make it.
async fn revoke_links_of(book: &mut Book<'_>, member: &Member) -> Result<()> {
    if member.role != Role::Steward {
        return Ok(());
    }
    let now = book.now();
    for link in links::open_of(book.tx(), member.person, now).await? {
        revoke_link(book, link).await?;
    }
    Ok(())
}
