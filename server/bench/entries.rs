//! Entries about the bench.

use serde::{Deserialize, Serialize};
use uuid::Uuid;

use super::store;
use crate::database::RoomTx;
use crate::error::Result;
use crate::logbook::{About, Entry, Placed, SeenBy};

/// A line as it now is.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct LineSet {
    /// Which.
    pub id: Uuid,
    /// What people call it.
    pub name: String,
    /// Its place on the bench.
    pub position: i32,
    /// Whether it is used no more.
    pub is_retired: bool,
}

impl Entry for LineSet {
    const KIND: &'static str = "line_set";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        vec![About::new("line", self.id)]
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            store::set_line(tx, each).await?;
        }
        Ok(())
    }
}

/// A tray as it now is. Measurements are inside, in tenths of a millimetre.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct TraySet {
    /// Which.
    pub id: Uuid,
    /// The line it stands in.
    pub line_id: Uuid,
    /// What people call it.
    pub name: String,
    /// Its place in the line, in the order prints travel.
    pub position: i32,
    /// Long side of the floor.
    pub inside_long_tenths_mm: i32,
    /// Short side of the floor.
    pub inside_short_tenths_mm: i32,
    /// From the floor to the rim.
    pub inside_depth_tenths_mm: i32,
    /// What covers a print.
    pub least_depth_tenths_mm: i32,
    /// Whether it is used no more.
    pub is_retired: bool,
}

impl Entry for TraySet {
    const KIND: &'static str = "tray_set";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        vec![
            About::new("tray", self.id),
            About::new("line", self.line_id),
        ]
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            store::set_tray(tx, each).await?;
        }
        Ok(())
    }
}
