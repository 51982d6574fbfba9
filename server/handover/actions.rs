//! What the two stewards of a handover do. Each rule is read under the lock on the
//! room's head, and so is the list that the entry holds.

use serde::Serialize;
use uuid::Uuid;

use super::sheet::{Ground, digest, last_sealed};
use super::store::{self, Handover};
use super::{HandedOver, HandoverOpened, HandoverWithdrawn};
use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::checkpoint::Checkpoint;
use crate::logbook::{Book, Done, Key};
use crate::members::Member;
use crate::notices::{self, Notice};
use crate::problem::Problem;
use crate::rights::{HandOver, Role};

/// A handover as somebody wants it.
#[derive(Clone, Copy, Debug, Serialize)]
pub struct NewHandover {
    /// Who is to take over.
    pub to_person_id: Uuid,
}

/// Opens a handover: the list of what is open goes into the book, and the one who
/// is to take over is told.
///
/// # Errors
/// Somebody who is no steward here, or oneself; a handover of one's own that waits.
pub async fn open(
    app: &App,
    permit: &Permit<HandOver>,
    key: Key,
    new: NewHandover,
) -> Result<Done> {
    // The checkpoints lie outside the database: they are read before the lock.
    let sealed = last_sealed(app, permit.room()).await?;
    let (person, name) = (permit.person().id, permit.person().name.clone());
    permit
        .write(app, key, &new, move |book| {
            Box::pin(async move { write_opening(book, (person, name), new, sealed).await })
        })
        .await
}

async fn write_opening(
    book: &mut Book<'_>,
    (from, name): (Uuid, String),
    new: NewHandover,
    sealed: Option<Checkpoint>,
) -> Result<()> {
    let now = book.now();
    let ground = Ground::read(book.tx(), now, sealed).await?;
    let to = new.to_person_id;
    if !successors(&ground.members, from).any(|member| member.person == to) {
        return Err(Error::field("successor", Problem::NotAChoice));
    }
    if store::waits(book.tx(), from).await? {
        return Err(Error::Refused(Problem::HandoverWaits));
    }
    let entry = HandoverOpened {
        handover_id: book.new_id(),
        from_person_id: from,
        to_person_id: to,
        parts: ground.parts(),
    };
    book.append(&entry).await?;
    let notice = Notice::HandoverWaits {
        handover: entry.handover_id,
        from: name,
    };
    notices::tell(book.tx(), now, to, &notice).await
}

/// Who may take over from somebody: the other stewards who may enter.
pub(super) fn successors(members: &[Member], from: Uuid) -> impl Iterator<Item = &Member> {
    members.iter().filter(move |member| {
        member.role == Role::Steward && member.is_active() && member.person != from
    })
}

/// Confirms a handover to oneself: the list was read and taken over.
///
/// # Errors
/// None of that id; one that names somebody else; one that has ended.
pub async fn confirm(
    app: &App,
    permit: &Permit<HandOver>,
    key: Key,
    handover: Uuid,
) -> Result<Done> {
    let (person, name) = (permit.person().id, permit.person().name.clone());
    permit
        .write(app, key, &("confirm", handover), move |book| {
            Box::pin(async move { write_confirmation(book, (person, name), handover).await })
        })
        .await
}

async fn write_confirmation(
    book: &mut Book<'_>,
    (person, name): (Uuid, String),
    handover: Uuid,
) -> Result<()> {
    let handover = waiting(book, handover).await?;
    if handover.to_person_id != person {
        return Err(Error::Refused(Problem::NotTheSuccessor));
    }
    let entry = HandedOver {
        handover_id: handover.id,
        from_person_id: handover.from_person_id,
        to_person_id: handover.to_person_id,
        parts_sha256: digest(&handover.parts)?,
    };
    book.append(&entry).await?;
    let now = book.now();
    let notice = Notice::HandoverConfirmed {
        handover: handover.id,
        to: name,
    };
    notices::tell(book.tx(), now, handover.from_person_id, &notice).await
}

/// Takes a handover back that waits: the one who opened it, the one it names, or
/// any other steward, so that none waits for somebody who has gone.
///
/// # Errors
/// None of that id; one that has ended.
pub async fn withdraw(
    app: &App,
    permit: &Permit<HandOver>,
    key: Key,
    handover: Uuid,
) -> Result<Done> {
    let (person, name) = (permit.person().id, permit.person().name.clone());
    permit
        .write(app, key, &("withdraw", handover), move |book| {
            Box::pin(async move { write_withdrawal(book, (person, name), handover).await })
        })
        .await
}

async fn write_withdrawal(
    book: &mut Book<'_>,
    (person, name): (Uuid, String),
    handover: Uuid,
) -> Result<()> {
    let handover = waiting(book, handover).await?;
    let entry = HandoverWithdrawn {
        handover_id: handover.id,
        from_person_id: handover.from_person_id,
        to_person_id: handover.to_person_id,
    };
    book.append(&entry).await?;
    let now = book.now();
    let notice = Notice::HandoverWithdrawn {
        handover: handover.id,
        by: name,
    };
    for other in [handover.from_person_id, handover.to_person_id] {
        if other != person {
            notices::tell(book.tx(), now, other, &notice).await?;
        }
    }
    Ok(())
}

async fn waiting(book: &mut Book<'_>, handover: Uuid) -> Result<Handover> {
    let handover = store::handover(book.tx(), handover).await?;
    let handover = handover.ok_or(Error::NotFound)?;
    match handover.is_open() {
        true => Ok(handover),
        false => Err(Error::Refused(Problem::HandoverEnded)),
    }
}
