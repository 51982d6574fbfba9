//! Entries about papers.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;
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
    /// What is known of its silver; none where nobody said, and then none is estimated.
    #[serde(default)]
    pub silver: Option<SilverFigures>,
    /// What a square metre carries into the next bath, in microlitres; none where
    /// nobody measured, and then none is shown.
    #[serde(default)]
    pub carry_over_ul_per_m2: Option<i64>,
}

/// What a paper's coating holds and what the image keeps of it: weak evidence,
/// so each with its range.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SilverFigures {
    /// The lightest coating, in milligrams of silver a square metre.
    #[schema(minimum = 1, maximum = 10_000)]
    pub least_mg_per_m2: i64,
    /// The usual one.
    #[schema(minimum = 1, maximum = 10_000)]
    pub usual_mg_per_m2: i64,
    /// The heaviest.
    #[schema(minimum = 1, maximum = 10_000)]
    pub most_mg_per_m2: i64,
    /// The least share that stays in the image, in parts per billion.
    #[schema(minimum = 0, maximum = 1_000_000_000)]
    pub least_kept_ppb: i64,
    /// The usual share.
    #[schema(minimum = 0, maximum = 1_000_000_000)]
    pub usual_kept_ppb: i64,
    /// The largest.
    #[schema(minimum = 0, maximum = 1_000_000_000)]
    pub most_kept_ppb: i64,
    /// Where they come from.
    #[schema(max_length = 200)]
    pub basis: String,
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
