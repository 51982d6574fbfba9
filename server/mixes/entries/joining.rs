//! Solution joins a mix, or takes another's place.

use serde::{Deserialize, Serialize};
use uuid::Uuid;

use super::{Stand, subjects};
use crate::database::RoomTx;
use crate::error::Result;
use crate::logbook::{About, Entry, Placed, SeenBy};
use crate::mixes::fold;

/// Fresh working solution was added to a mix.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct ToppedUp {
    /// The rules it is folded by.
    pub rules: u16,
    /// The mix.
    pub mix_id: Uuid,
    /// Where it stands.
    #[serde(flatten)]
    pub stand: Stand,
    /// What was added is of the same product.
    pub product_id: Uuid,
    /// Which version of it.
    pub product_version: i32,
    /// How much was added, in microlitres.
    pub volume_ul: i64,
    /// The concentrate in that, in microlitres.
    pub concentrate_ul: i64,
    /// The stock solution that was drawn from.
    #[serde(default)]
    pub stock_id: Option<Uuid>,
    /// How long the mix lives now where it stands, in seconds: it stands deeper.
    pub life_s: i64,
}

impl Entry for ToppedUp {
    const KIND: &'static str = "topped_up";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        let of = [
            About::new("mix", self.mix_id),
            About::new("product", self.product_id),
        ];
        let stock = self.stock_id.map(|id| About::new("stock_solution", id));
        subjects(of.into_iter().chain(stock).chain(self.stand.about()))
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            fold::topped_up(tx, each).await?;
        }
        Ok(())
    }
}

/// One mix was poured into another of the same product and dilution.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct PouredTogether {
    /// The rules it is folded by.
    pub rules: u16,
    /// The mix that was poured into.
    pub mix_id: Uuid,
    /// Where that stands.
    #[serde(flatten)]
    pub stand: Stand,
    /// The mix that was poured; it ends with that.
    pub poured_mix_id: Uuid,
    /// Where that stood.
    pub poured_from: Stand,
    /// How much was poured, in microlitres: all of it.
    pub volume_ul: i64,
    /// What was spent of that, in nanolitres.
    pub poured_spent_nl: i64,
    /// The part of its life that was used, in parts per billion.
    pub poured_age_ppb: i64,
    /// How long the mix lives now where it stands, in seconds.
    pub life_s: i64,
}

impl Entry for PouredTogether {
    const KIND: &'static str = "poured_together";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        let of = [
            About::new("mix", self.mix_id),
            About::new("mix", self.poured_mix_id),
        ];
        subjects(
            of.into_iter()
                .chain(self.stand.about())
                .chain(self.poured_from.about()),
        )
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            fold::poured_together(tx, each).await?;
        }
        Ok(())
    }
}

/// The first of two fixing baths went to waste and the second took its place.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct Shifted {
    /// The rules it is folded by.
    pub rules: u16,
    /// The second bath, which moved up.
    pub mix_id: Uuid,
    /// Where it stood.
    pub from: Stand,
    /// Where it stands now: as the first.
    pub to: Stand,
    /// The first bath, which was discarded.
    pub first_mix_id: Uuid,
    /// How much of that was poured off, in microlitres.
    pub volume_ul: i64,
    /// Where to: only `collected` until the room records what else is allowed.
    pub destination: String,
    /// Into which container.
    pub container: String,
    /// How long the bath that moved up lives there, in seconds.
    pub life_s: i64,
    /// How often the pair has moved up now.
    pub shifts: i32,
}

impl Entry for Shifted {
    const KIND: &'static str = "shifted";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        let of = [
            About::new("mix", self.mix_id),
            About::new("mix", self.first_mix_id),
        ];
        subjects(
            of.into_iter()
                .chain(self.to.about())
                .chain(self.from.about()),
        )
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            fold::shifted(tx, each).await?;
        }
        Ok(())
    }
}
