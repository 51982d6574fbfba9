//! Entries about spaces.

use serde::{Deserialize, Serialize};
use uuid::Uuid;

use super::store;
use crate::database::RoomTx;
use crate::error::Result;
use crate::logbook::{About, Entry, Placed, SeenBy};

/// A space as it now is: a room of the room, with lines of its own.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct SpaceSet {
    /// Which.
    pub id: Uuid,
    /// What people call it.
    pub name: String,
    /// Its place in lists.
    pub position: i32,
    /// Whether it is used no more.
    pub is_retired: bool,
}

impl Entry for SpaceSet {
    const KIND: &'static str = "space_set";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        vec![About::new("space", self.id)]
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            store::set_space(tx, each).await?;
        }
        Ok(())
    }
}
