//! Entries about mixes.

use serde::{Deserialize, Serialize};
use uuid::Uuid;

use super::store;
use crate::database::RoomTx;
use crate::error::Result;
use crate::logbook::{About, Entry, Placed, SeenBy};

/// The version of the rules that fold these entries: `trade.md`'s wear and age
/// as `darkroom::wear` and `darkroom::age` have them.
pub const RULES: u16 = 1;

/// A working solution was mixed in a tray.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct Mixed {
    /// The rules it is folded by.
    pub rules: u16,
    /// The mix.
    pub mix_id: Uuid,
    /// Where it stands.
    pub tray_id: Uuid,
    /// The line that tray stands in.
    pub line_id: Uuid,
    /// What it was mixed from.
    pub product_id: Uuid,
    /// Which version of it.
    pub product_version: i32,
    /// N of 1+N, in thousandths.
    pub parts_thousandths: i64,
    /// All of it, in microlitres.
    pub charged_ul: i64,
    /// The concentrate in it, in microlitres; the rest is water.
    pub concentrate_ul: i64,
    /// How long it lives where it stands, in seconds.
    pub life_s: i64,
    /// How much paper a litre of it takes.
    pub capacities: Vec<FrozenCapacity>,
}

/// How much of one paper class a litre takes, as it was when the mix was made.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct FrozenCapacity {
    /// The class.
    pub paper_class_id: Uuid,
    /// 8×10 in sheets a litre, in thousandths.
    pub sheets_per_litre_thousandths: i64,
}

impl Entry for Mixed {
    const KIND: &'static str = "mixed";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        vec![
            About::new("mix", self.mix_id),
            About::new("tray", self.tray_id),
            About::new("line", self.line_id),
            About::new("product", self.product_id),
        ]
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            store::insert_mix(tx, each).await?;
        }
        Ok(())
    }
}

/// A mix was poured off into a container.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct Discarded {
    /// The mix.
    pub mix_id: Uuid,
    /// Where it stood.
    pub tray_id: Uuid,
    /// The line that tray stands in.
    pub line_id: Uuid,
    /// How much was poured off, in microlitres.
    pub volume_ul: i64,
    /// Where to: only `collected` until the room records what else is allowed.
    pub destination: String,
    /// The container, as the steward named it.
    pub container: String,
}

impl Entry for Discarded {
    const KIND: &'static str = "discarded";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        vec![
            About::new("mix", self.mix_id),
            About::new("tray", self.tray_id),
            About::new("line", self.line_id),
        ]
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            store::end_mix(tx, each).await?;
        }
        Ok(())
    }
}
