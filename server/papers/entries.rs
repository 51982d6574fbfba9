//! Entries about papers.

use serde::{Deserialize, Serialize};
use uuid::Uuid;

use super::store;
use crate::database::RoomTx;
use crate::error::Result;
use crate::logbook::{About, Entry, Placed, SeenBy};

/// A sheet size as it now is.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct SheetSizeSet {
    /// Which.
    pub id: Uuid,
    /// What people call it.
    pub name: String,
    /// Long side in tenths of a millimetre.
    pub long_tenths_mm: i32,
    /// Short side in tenths of a millimetre.
    pub short_tenths_mm: i32,
    /// Its place in lists.
    pub position: i32,
    /// Whether it is offered no more.
    pub is_retired: bool,
}

impl Entry for SheetSizeSet {
    const KIND: &'static str = "sheet_size_set";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        vec![About::new("sheet_size", self.id)]
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            store::set_sheet_size(tx, each).await?;
        }
        Ok(())
    }
}

/// A paper class as it now is.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct PaperClassSet {
    /// Which.
    pub id: Uuid,
    /// What people call it.
    pub name: String,
    /// Its place in lists.
    pub position: i32,
    /// Whether it is offered no more.
    pub is_retired: bool,
}

impl Entry for PaperClassSet {
    const KIND: &'static str = "paper_class_set";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        vec![About::new("paper_class", self.id)]
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            store::set_paper_class(tx, each).await?;
        }
        Ok(())
    }
}
