//! Entries about the bench.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;
use uuid::Uuid;

use super::store;
use crate::database::RoomTx;
use crate::error::Result;
use crate::logbook::{About, Entry, Placed, SeenBy};

/// What prints do in a tray.
#[derive(Clone, Copy, Debug, Default, Deserialize, Eq, PartialEq, Serialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Step {
    /// Whatever stands in it: nobody has said more.
    #[default]
    Any,
    /// The image comes out.
    Developer,
    /// Development ends.
    StopBath,
    /// The only fixing bath of its line.
    Fixer,
    /// The first of two fixing baths.
    FirstFixer,
    /// The second of two fixing baths.
    SecondFixer,
    /// Prints wait in water.
    HoldingWater,
    /// What shortens the wash.
    WashAid,
    /// The tone changes.
    Toner,
    /// Water takes the fixer out.
    Wash,
}

impl Step {
    /// Every step, in the order prints meet them.
    pub const ALL: [Self; 10] = [
        Self::Any,
        Self::Developer,
        Self::StopBath,
        Self::Fixer,
        Self::FirstFixer,
        Self::SecondFixer,
        Self::HoldingWater,
        Self::WashAid,
        Self::Toner,
        Self::Wash,
    ];

    /// The step as the database and forms write it.
    #[must_use]
    pub const fn as_str(self) -> &'static str {
        match self {
            Self::Any => "any",
            Self::Developer => "developer",
            Self::StopBath => "stop_bath",
            Self::Fixer => "fixer",
            Self::FirstFixer => "first_fixer",
            Self::SecondFixer => "second_fixer",
            Self::HoldingWater => "holding_water",
            Self::WashAid => "wash_aid",
            Self::Toner => "toner",
            Self::Wash => "wash",
        }
    }

    /// Reads what [`Step::as_str`] writes.
    #[must_use]
    pub fn parse(text: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|step| step.as_str() == text)
    }
}

/// A line as it now is.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct LineSet {
    /// Which.
    pub id: Uuid,
    /// What people call it.
    pub name: String,
    /// Its place on the bench.
    pub position: i32,
    /// The space it stands in; nothing is the room itself.
    #[serde(default)]
    pub space_id: Option<Uuid>,
    /// Whether it is used no more.
    pub is_retired: bool,
}

impl Entry for LineSet {
    const KIND: &'static str = "line_set";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        let space = self.space_id.map(|id| About::new("space", id));
        let line = About::new("line", self.id);
        std::iter::once(line).chain(space).collect()
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
    /// What prints do in it.
    #[serde(default)]
    pub step: Step,
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
