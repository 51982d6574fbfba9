//! Entries about who is in the room. They name persons by id alone; who sees
//! them is the person and the stewards.

use serde::{Deserialize, Serialize};
use uuid::Uuid;

use super::store;
use crate::database::RoomTx;
use crate::error::Result;
use crate::logbook::{About, Entry, Placed, SeenBy};
use crate::rights::Role;

macro_rules! entries {
    ($(
        #[doc = $what:literal]
        $entry:ident $kind:literal {
            $( #[doc = $said:literal] $field:ident: $type:ty ),+ $(,)?
        }
        about |$this:ident| $about:expr,
        project $project:path;
    )+) => {
        $(
            #[doc = $what]
            #[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
            pub struct $entry {
                $( #[doc = $said] pub $field: $type ),+
            }

            impl Entry for $entry {
                const KIND: &'static str = $kind;
                const SEEN_BY: SeenBy = SeenBy::SubjectAndStewards;

                fn about(&self) -> Vec<About> {
                    let $this = self;
                    $about
                }

                async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
                    $project(tx, placed).await
                }
            }
        )+
    };
}

fn of_person(person: Uuid) -> Vec<About> {
    vec![About::new("person", person)]
}

fn of_link(link: Uuid, person: Option<Uuid>) -> Vec<About> {
    let person = person.map(|person| About::new("person", person));
    person
        .into_iter()
        .chain([About::new("invitation", link)])
        .collect()
}

entries! {
    /// Somebody became a member, or came back.
    Joined "joined" {
        /// Who.
        person: Uuid,
        /// As what.
        role: Role,
        /// Their number in this room, kept for good.
        member_number: i32,
        /// The invitation they came by, if they did.
        invitation: Option<Uuid>,
    }
    about |this| of_person(this.person),
    project joined;

    /// A member is something else from here on.
    RoleChanged "role_changed" {
        /// Who.
        person: Uuid,
        /// What they were.
        from: Role,
        /// What they are.
        to: Role,
    }
    about |this| of_person(this.person),
    project role_changed;

    /// A member may not enter until restored.
    Suspended "suspended" {
        /// Who.
        person: Uuid,
    }
    about |this| of_person(this.person),
    project suspended;

    /// A suspended member may enter again.
    Restored "restored" {
        /// Who.
        person: Uuid,
    }
    about |this| of_person(this.person),
    project restored;

    /// A member is one no more.
    AccessEnded "access_ended" {
        /// Who.
        person: Uuid,
    }
    about |this| of_person(this.person),
    project access_ended;

    /// A link was made that makes somebody a member.
    Invited "invited" {
        /// The invitation.
        invitation: Uuid,
        /// What its user becomes.
        role: Role,
        /// When it ends, in microseconds since 1970.
        expires_at_us: i64,
    }
    about |this| of_link(this.invitation, None),
    project nothing;

    /// A link is good no more.
    InvitationRevoked "invitation_revoked" {
        /// The invitation or link.
        invitation: Uuid,
        /// Whose password it would have changed, if that was what it was for.
        person: Option<Uuid>,
    }
    about |this| of_link(this.invitation, this.person),
    project nothing;

    /// A link for a person's new password was made.
    ResetLinkMade "reset_link_made" {
        /// Whose password.
        person: Uuid,
        /// The link.
        link: Uuid,
        /// When it ends, in microseconds since 1970.
        expires_at_us: i64,
    }
    about |this| of_link(this.link, Some(this.person)),
    project nothing;
}

async fn joined(tx: &mut RoomTx, placed: &[Placed<Joined>]) -> Result<()> {
    for each in placed {
        store::join(tx, each).await?;
    }
    Ok(())
}

async fn role_changed(tx: &mut RoomTx, placed: &[Placed<RoleChanged>]) -> Result<()> {
    for each in placed {
        store::set_role(tx, each.entry.person, each.entry.to).await?;
    }
    Ok(())
}

async fn suspended(tx: &mut RoomTx, placed: &[Placed<Suspended>]) -> Result<()> {
    for each in placed {
        store::set_suspended(tx, each.entry.person, Some(each.recorded_at)).await?;
    }
    Ok(())
}

async fn restored(tx: &mut RoomTx, placed: &[Placed<Restored>]) -> Result<()> {
    for each in placed {
        store::set_suspended(tx, each.entry.person, None).await?;
    }
    Ok(())
}

async fn access_ended(tx: &mut RoomTx, placed: &[Placed<AccessEnded>]) -> Result<()> {
    for each in placed {
        store::end(tx, each.entry.person, each.recorded_at).await?;
    }
    Ok(())
}

/// Links hold secrets, so their rows are written by the action, not from the book.
async fn nothing<E: Entry>(_: &mut RoomTx, _: &[Placed<E>]) -> Result<()> {
    Ok(())
}
