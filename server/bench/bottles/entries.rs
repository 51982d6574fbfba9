//! Entries about bottles.

use serde::{Deserialize, Serialize};
use uuid::Uuid;

use super::store;
use crate::database::RoomTx;
use crate::error::Result;
use crate::logbook::{About, Entry, Placed, SeenBy};

/// A bottle as it now is.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct BottleSet {
    /// Which.
    pub id: Uuid,
    /// What people call it.
    pub name: String,
    /// What it holds up to the stopper, in microlitres.
    pub holds_ul: i64,
    /// Whether it is used no more.
    pub is_retired: bool,
}

impl Entry for BottleSet {
    const KIND: &'static str = "bottle_set";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        vec![About::new("bottle", self.id)]
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            store::set_bottle(tx, each).await?;
        }
        Ok(())
    }
}
