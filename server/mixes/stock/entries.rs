//! Entries about stock solutions.

use serde::{Deserialize, Serialize};
use uuid::Uuid;

use super::store;
use crate::database::RoomTx;
use crate::error::Result;
use crate::logbook::{About, Entry, Placed, SeenBy};

/// A powder was made up into stock solution.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct StockMade {
    /// The rules it is folded by.
    pub rules: u16,
    /// Which stock solution.
    pub stock_id: Uuid,
    /// What it was made of.
    pub product_id: Uuid,
    /// Which version of it.
    pub product_version: i32,
    /// How many packets, in thousandths.
    pub packets_thousandths: i64,
    /// What they made, in microlitres.
    pub volume_ul: i64,
    /// How long a full bottle keeps, in seconds; nothing where nobody knows.
    pub full_life_s: Option<i64>,
    /// The same from the first draw on.
    pub part_life_s: Option<i64>,
}

impl Entry for StockMade {
    const KIND: &'static str = "stock_made";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        vec![
            About::new("stock_solution", self.stock_id),
            About::new("product", self.product_id),
        ]
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            store::insert(tx, each).await?;
        }
        Ok(())
    }
}
