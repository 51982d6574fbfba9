//! A mix ends, or did not after all.

use serde::Serialize;
use uuid::Uuid;

use super::{Ground, Vessel, VesselId, guard_container};
use crate::app::App;
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::{Book, Done, Key};
use crate::mixes::{DiscardUndone, Discarded, Mix, Rinsed, Why, store};
use crate::problem::Problem;
use crate::rights::{self, Role};

/// How a mix is discarded.
#[derive(Clone, Debug, Serialize)]
pub struct NewDiscard {
    /// The mix.
    pub mix_id: Uuid,
    /// How much is poured off, in microlitres.
    pub volume_ul: i64,
    /// The container, as the steward named it.
    pub container: String,
    /// Why.
    pub why: Why,
    /// When, where that was not just now: microseconds since 1970.
    pub happened_at_us: Option<i64>,
}

/// A discard that was logged by mistake.
#[derive(Clone, Debug, Serialize)]
pub struct UndoDiscard {
    /// The mix.
    pub mix_id: Uuid,
    /// How the mistake came about.
    pub reason: String,
}

/// A vessel that was rinsed.
#[derive(Clone, Copy, Debug, Serialize)]
pub struct NewRinse {
    /// Which.
    pub rinsed: VesselId,
}

/// Discards a mix into a named container.
///
/// # Errors
/// A mix that no longer stands; more than was in it; a container that holds what
/// it must not meet; liquid that nobody can name, unless a steward does it.
pub async fn discard(
    app: &App,
    permit: &Permit<rights::Discard>,
    key: Key,
    new: NewDiscard,
) -> Result<Done> {
    let role = permit.role();
    permit
        .write(app, key, &new.clone(), move |book| {
            Box::pin(async move { write_discard(book, role, new).await })
        })
        .await
}

async fn write_discard(book: &mut Book<'_>, role: Role, new: NewDiscard) -> Result<()> {
    let ground = Ground::of(book, new.mix_id, new.happened_at_us).await?;
    let mix = &ground.mix;
    if mix.product_id.is_none() && role != Role::Steward {
        return Err(Error::Refused(Problem::UnknownLiquid));
    }
    if new.volume_ul > mix.charged_ul {
        let holds_ul = mix.charged_ul;
        return Err(Error::field("volume", Problem::OverTheRim { holds_ul }));
    }
    guard_container(book.tx(), mix, &new.container).await?;
    let entry = Discarded {
        mix_id: mix.id,
        stand: mix.stand,
        volume_ul: new.volume_ul,
        destination: "collected".to_owned(),
        container: new.container,
        why: new.why,
    };
    book.append_at(ground.at, &entry).await?;
    Ok(())
}

/// Takes a discard back: the mix stands where it stood and has aged on.
///
/// # Errors
/// A mix that was not discarded by itself; a vessel that holds another by now.
pub async fn undo_discard(
    app: &App,
    permit: &Permit<rights::TakeBack>,
    key: Key,
    undo: UndoDiscard,
) -> Result<Done> {
    permit
        .write(app, key, &undo.clone(), move |book| {
            Box::pin(async move { write_undo(book, undo).await })
        })
        .await
}

async fn write_undo(book: &mut Book<'_>, undo: UndoDiscard) -> Result<()> {
    if undo.reason.is_empty() {
        return Err(Error::field("reason", Problem::Missing));
    }
    let undoing = may_undo(book.tx(), undo.mix_id).await?;
    let entry = DiscardUndone {
        mix_id: undo.mix_id,
        discard_seq: undoing.seq,
        stand: undoing.discarded.stand,
        reason: undo.reason,
    };
    book.append(&entry).await?;
    Ok(())
}

/// A discard that may be taken back.
pub(in crate::mixes) struct Undoing {
    pub(in crate::mixes) mix: Mix,
    /// The number of the discard's entry, and what it says.
    pub(in crate::mixes) seq: i64,
    pub(in crate::mixes) discarded: Discarded,
    pub(in crate::mixes) vessel: Vessel,
}

/// The discard of a mix, where it may be taken back now.
///
/// # Errors
/// As [`undo_discard`].
pub(in crate::mixes) async fn may_undo(tx: &mut RoomTx, mix: Uuid) -> Result<Undoing> {
    let none = || Error::Refused(Problem::NotDiscarded);
    let mix = store::mix(tx, mix).await?.ok_or(Error::NotFound)?;
    mix.discarded_at.ok_or_else(none)?;
    let (seq, discarded) = store::discard(tx, mix.id).await?.ok_or_else(none)?;
    let id = match (discarded.stand.tray_id, discarded.stand.bottle_id) {
        (Some(tray), _) => VesselId::Tray(tray),
        (None, Some(bottle)) => VesselId::Bottle(bottle),
        (None, None) => return Err(none()),
    };
    let vessel = Vessel::find(tx, id).await?;
    if vessel.is_retired() {
        return Err(Error::Refused(Problem::Retired));
    }
    if store::in_vessel(tx, vessel.id()).await?.is_some() {
        return Err(Error::Refused(Problem::TrayFull));
    }
    // A tray that was moved or serves another step since is not where it stood.
    if vessel.stand() != discarded.stand {
        return Err(Error::Refused(Problem::OtherStep));
    }
    Ok(Undoing {
        mix,
        seq,
        discarded,
        vessel,
    })
}

/// Records that a tray or bottle was rinsed.
///
/// # Errors
/// One that waits for no rinse.
pub async fn rinse(
    app: &App,
    permit: &Permit<rights::Discard>,
    key: Key,
    new: NewRinse,
) -> Result<Done> {
    permit
        .write(app, key, &new, move |book| {
            Box::pin(async move {
                let vessel = Vessel::find(book.tx(), new.rinsed).await?;
                if !store::waits_for_rinse(book.tx(), vessel.id()).await? {
                    return Err(Error::Refused(Problem::Unchanged));
                }
                let entry = Rinsed {
                    stand: vessel.stand(),
                };
                book.append(&entry).await?;
                Ok(())
            })
        })
        .await
}
