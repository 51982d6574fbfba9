//! Entries about finishing: the times of a line, and what joins its wash.

use serde::{Deserialize, Serialize};
use uuid::Uuid;

use super::store;
use crate::database::RoomTx;
use crate::error::Result;
use crate::logbook::{About, Entry, Placed, SeenBy};

/// How long a paper class takes in the baths of a line, from the supplier's sheet.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct FinishingSet {
    /// The line.
    pub line_id: Uuid,
    /// The paper class.
    pub paper_class_id: Uuid,
    /// In each fixing bath, in seconds.
    pub fix_s: i64,
    /// The longest in fixing baths, in seconds: more bleaches, and paper keeps the fixer.
    pub longest_fix_s: i64,
    /// The rinse after the fixer, in seconds.
    pub rinse_s: i64,
    /// In the wash aid, in seconds, where one is used.
    pub wash_aid_s: Option<i64>,
    /// The wash after the wash aid, in seconds.
    pub wash_with_aid_s: Option<i64>,
    /// The wash without it, in seconds.
    pub wash_without_aid_s: i64,
    /// Where the times come from.
    pub basis: String,
}

impl Entry for FinishingSet {
    const KIND: &'static str = "finishing_set";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        vec![
            About::new("line", self.line_id),
            About::new("paper_class", self.paper_class_id),
        ]
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            store::set_finishing(tx, each).await?;
        }
        Ok(())
    }
}

/// A print that joined the wash of a line.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct WashJoined {
    /// The line.
    pub line_id: Uuid,
    /// Of which paper class it is.
    pub paper_class_id: Uuid,
    /// Whether it was in the wash aid before.
    pub had_wash_aid: bool,
    /// How long such a print washes, in seconds, as the line's times were.
    pub wash_s: i64,
}

impl Entry for WashJoined {
    const KIND: &'static str = "wash_joined";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        vec![
            About::new("line", self.line_id),
            About::new("paper_class", self.paper_class_id),
        ]
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            store::join_wash(tx, each).await?;
        }
        Ok(())
    }
}

/// The wash of a line, when all prints are out of it.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct WashEmptied {
    /// The line.
    pub line_id: Uuid,
}

impl Entry for WashEmptied {
    const KIND: &'static str = "wash_emptied";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        vec![About::new("line", self.line_id)]
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            store::empty_wash(tx, each).await?;
        }
        Ok(())
    }
}
