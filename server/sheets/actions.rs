//! What people do with notes.

use serde::Serialize;
use time::Duration;
use uuid::Uuid;

use super::store;
use super::{NewNote, NoteUndone};
use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::{Book, Done, Key};
use crate::problem::Problem;
use crate::rights::{NoteSheets, Role, UndoNote};

/// So long a member may take back a note of their own.
pub const UNDO: Duration = Duration::minutes(10);

/// Notes sheets.
///
/// # Errors
/// A time too far off; a line where nothing recorded stood; a paper that a bath
/// has no figure for.
pub async fn note_sheets(
    app: &App,
    permit: &Permit<NoteSheets>,
    key: Key,
    new: NewNote,
) -> Result<Done> {
    permit.write_grouped(app, key, new).await
}

/// A note to take back.
#[derive(Clone, Debug, Serialize)]
pub struct Undo {
    /// The note.
    pub pass_id: Uuid,
    /// Why, where a steward corrects somebody.
    pub reason: String,
}

/// Takes a note back by an entry that reverses it.
///
/// # Errors
/// A note of somebody else, unless a steward says why; too late; done before.
pub async fn undo(app: &App, permit: &Permit<UndoNote>, key: Key, undo: Undo) -> Result<Done> {
    let role = permit.role();
    permit
        .write(app, key, &undo.clone(), move |book| {
            Box::pin(async move { write_undo(book, role, undo).await })
        })
        .await
}

async fn write_undo(book: &mut Book<'_>, role: Role, undo: Undo) -> Result<()> {
    let pass = store::pass(book.tx(), undo.pass_id).await?;
    let pass = pass.ok_or(Error::NotFound)?;
    let is_own = book.actor() == Some(pass.person_id);
    if pass.reversed_by.is_some() {
        return Err(Error::Refused(Problem::AlreadyUndone));
    }
    match role {
        Role::Steward if !is_own && undo.reason.is_empty() => {
            return Err(Error::field("reason", Problem::Missing));
        }
        Role::Steward => {}
        _ if !is_own => return Err(Error::Forbidden),
        _ if book.now() > pass.recorded_at + UNDO => {
            return Err(Error::Refused(Problem::UndoTimeOver {
                minutes: UNDO.whole_minutes(),
            }));
        }
        _ => {}
    }
    let entry = NoteUndone {
        pass_id: pass.id,
        pass_seq: pass.seq,
        line_id: pass.line_id,
        person_id: pass.person_id,
        wear: store::wear_of(book.tx(), pass.seq).await?,
        reason: undo.reason,
    };
    book.append(&entry).await?;
    Ok(())
}
