//! A mix is covered, uncovered, bottled or poured back into a tray.

use serde::Serialize;
use uuid::Uuid;

use super::{Ground, Vessel, VesselId, life_of};
use crate::air;
use crate::app::App;
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::{Book, Done, Key};
use crate::mixes::{RULES, Storage, Stored};
use crate::problem::Problem;
use crate::products;
use crate::rights::KeepMix;

/// What to do with a mix.
#[derive(Clone, Copy, Debug, Eq, PartialEq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Move {
    /// Cover its tray.
    Cover,
    /// Take the cover off.
    Uncover,
    /// Pour it into a bottle.
    Bottle(Uuid),
    /// Pour it from its bottle into a tray.
    Return(Uuid),
}

/// A mix to keep otherwise.
#[derive(Clone, Copy, Debug, Serialize)]
pub struct NewMove {
    /// The mix.
    pub mix_id: Uuid,
    /// What to do with it.
    pub to: Move,
    /// When, where that was not just now: microseconds since 1970.
    pub happened_at_us: Option<i64>,
}

/// Covers, uncovers, bottles or pours back a mix. Its used life stays and goes on
/// at the pace of its new place.
///
/// # Errors
/// It is kept so already; the vessel is full, too small, or for another bath.
pub async fn keep(app: &App, permit: &Permit<KeepMix>, key: Key, new: NewMove) -> Result<Done> {
    permit
        .write(app, key, &new, move |book| {
            Box::pin(async move { write(book, new).await })
        })
        .await
}

async fn write(book: &mut Book<'_>, new: NewMove) -> Result<()> {
    let ground = Ground::of(book, new.mix_id, new.happened_at_us).await?;
    let entry = stored(book.tx(), &ground, new.to).await?;
    book.append_at(ground.at, &entry).await?;
    Ok(())
}

/// What the book would say of a move.
///
/// # Errors
/// As [`keep`].
pub(in crate::mixes) async fn stored(tx: &mut RoomTx, ground: &Ground, to: Move) -> Result<Stored> {
    let mix = &ground.mix;
    let (vessel, storage) = match (to, mix.storage) {
        (Move::Cover, Storage::OpenTray) => (ground.vessel.clone(), Storage::CoveredTray),
        (Move::Uncover, Storage::CoveredTray) => (ground.vessel.clone(), Storage::OpenTray),
        (Move::Bottle(id), Storage::OpenTray | Storage::CoveredTray) => {
            let vessel = Vessel::find(tx, VesselId::Bottle(id)).await?;
            let storage = vessel.storage(mix.level_ul());
            (vessel, storage)
        }
        (Move::Return(id), Storage::FullBottle | Storage::PartBottle) => {
            let vessel = Vessel::find(tx, VesselId::Tray(id)).await?;
            (vessel, Storage::OpenTray)
        }
        _ => return Err(Error::Refused(Problem::Unchanged)),
    };
    if vessel.id() != ground.vessel.id() {
        must_take(tx, ground, &vessel).await?;
    }
    Ok(Stored {
        rules: RULES,
        mix_id: mix.id,
        from: mix.stand,
        to: vessel.stand(),
        storage,
        life_s: life_of(mix, &vessel, storage, mix.charged_ul)?,
    })
}

/// Refuses a vessel that cannot take the mix.
async fn must_take(tx: &mut RoomTx, ground: &Ground, vessel: &Vessel) -> Result<()> {
    vessel.must_be_empty(tx).await?;
    let holds_ul = vessel.holds_ul();
    if ground.mix.level_ul() > holds_ul {
        return Err(Error::field("to", Problem::OverTheRim { holds_ul }));
    }
    let product = ground
        .mix
        .product_id
        .ok_or(Error::Refused(Problem::UnknownLiquid))?;
    let product = products::product(tx, product).await?;
    let product = product.ok_or(Error::NotFound)?;
    vessel.must_be_for(product.kind)?;
    match vessel {
        Vessel::Tray(tray) => air::may_start_in(tx, tray.line_id, &product).await,
        Vessel::Bottle(_) => Ok(()),
    }
}
