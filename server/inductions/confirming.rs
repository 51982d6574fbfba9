//! The inducted person's own confirmation: from their account, or by number and PIN
//! beside a steward. It is one act for all that waits.

use uuid::Uuid;

use super::store::{self, Asked};
use super::{InductionConfirmed, Means};
use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::{Permit, pins};
use crate::logbook::{Book, Done, Key};
use crate::problem::Problem;
use crate::rights::{ConfirmInductions, Induct};

/// So many are confirmed together at most.
const MOST: i64 = 100;

/// Confirms all that waits for whoever asks.
///
/// # Errors
/// Nothing waits.
pub async fn confirm_own(app: &App, permit: &Permit<ConfirmInductions>, key: Key) -> Result<Done> {
    let person = permit.person().id;
    permit
        .write(app, key, &"confirm", move |book| {
            Box::pin(write_confirmations(book, person, Means::OwnAccount))
        })
        .await
}

/// Confirms all that waits for whoever typed their number and PIN beside a steward;
/// answers who that is, too.
///
/// # Errors
/// Number and PIN that do not go together; too many wrong ones; nothing waits.
pub async fn confirm_beside(
    app: &App,
    permit: &Permit<Induct>,
    key: Key,
    typed: pins::Typed,
) -> Result<(Done, Uuid)> {
    let person = pins::beside(app, permit, typed).await?.id;
    let done = permit
        .write(app, key, &("confirm_beside", person), move |book| {
            Box::pin(write_confirmations(book, person, Means::NumberAndPin))
        })
        .await?;
    Ok((done, person))
}

async fn write_confirmations(book: &mut Book<'_>, person: Uuid, means: Means) -> Result<()> {
    let asked = Asked {
        person: Some(person),
        waiting: true,
        ..Asked::default()
    };
    let mut waiting = store::inductions(book.tx(), asked, MOST).await?;
    if waiting.is_empty() {
        return Err(Error::Refused(Problem::NothingToConfirm));
    }
    waiting.reverse();
    for record in waiting {
        let entry = InductionConfirmed {
            induction_id: record.id,
            induction_seq: record.seq,
            person_id: person,
            means,
        };
        book.append(&entry).await?;
    }
    Ok(())
}
