//! Which baths may start in a line: none with toner, glacial acid or ammonia where
//! nobody measured any exhaust, or where the fan stands still.

use uuid::Uuid;

use super::FlowOf;
use super::standing::off_in;
use super::store;
use crate::bench;
use crate::darkroom::air::{NeedsExhaust, needs_exhaust};
use crate::darkroom::incompatibility::Groups;
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::outages;
use crate::problem::Problem;
use crate::products::{Kind, Product};

/// What the air where a line stands lets start.
#[derive(Clone, Copy, Debug, Eq, PartialEq)]
pub struct LineAir {
    is_measured: bool,
    is_off: bool,
    is_agreed: bool,
}

/// What a product may not start without exhaust as.
fn needs_of(product: &Product) -> Option<NeedsExhaust> {
    let groups = Groups::from(product.groups.clone());
    needs_exhaust(product.kind == Kind::Toner, groups, &product.hazard_codes)
}

/// Refuses a bath that may not start in a line now.
///
/// # Errors
/// As [`LineAir::may_start`]; the database's.
pub async fn may_start_in(tx: &mut RoomTx, line: Uuid, product: &Product) -> Result<()> {
    match needs_of(product) {
        None => Ok(()),
        Some(_) => LineAir::of(tx, line).await?.may_start(product),
    }
}

impl LineAir {
    /// The air where a line stands now.
    ///
    /// # Errors
    /// No line of that id; the database's.
    pub async fn of(tx: &mut RoomTx, line: Uuid) -> Result<Self> {
        let space = bench::line(tx, line)
            .await?
            .ok_or(Error::NotFound)?
            .space_id;
        let place = space.unwrap_or(tx.room());
        let airs = store::airs(tx).await?;
        let mut airs = airs.iter();
        let has_fan = airs.all(|(id, air)| *id != place || air.has_fan);
        let measured = store::latest(tx).await?;
        let mut measured = measured.iter().filter(|each| each.of == FlowOf::Exhaust);
        let waivers = store::waivers(tx).await?;
        Ok(Self {
            is_measured: has_fan
                && measured.any(|each| each.place_id == place && each.ul_per_s > 0),
            is_off: has_fan && off_in(&outages::open(tx).await?, space).is_some(),
            is_agreed: waivers.iter().any(|each| each.place_id == place),
        })
    }

    /// Whether a bath of a product may start here now. Who agreed that baths start
    /// without measured exhaust said nothing of a fan that stands still.
    ///
    /// # Errors
    /// [`Problem::FanStandsStill`], [`Problem::ExhaustUnmeasured`].
    pub fn may_start(self, product: &Product) -> Result<()> {
        let Some(needs) = needs_of(product) else {
            return Ok(());
        };
        if self.is_off {
            return Err(Error::Refused(Problem::FanStandsStill(needs)));
        }
        match self.is_measured || self.is_agreed {
            true => Ok(()),
            false => Err(Error::Refused(Problem::ExhaustUnmeasured(needs))),
        }
    }
}
