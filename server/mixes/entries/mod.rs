//! Entries about mixes.

mod ending;
mod joining;
mod mixing;
mod testing;

pub use ending::{DiscardUndone, Discarded, Rinsed, Why};
pub use joining::{PouredTogether, Shifted, ToppedUp};
pub use mixing::{Figures, FrozenCapacity, Mixed, SilverLimits, StopFigures, Stored, UnknownFound};
pub use testing::{Contaminant, Extended, Outcome, Reading, ReadingKind, ReadingUndone};

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;
use uuid::Uuid;

use crate::logbook::About;
use crate::products::Place;

/// The version of the rules that fold these entries: `trade.md`'s wear and age
/// as `darkroom::wear` and `darkroom::age` have them.
pub const RULES: u16 = 1;

/// How a mix is kept.
#[derive(Clone, Copy, Debug, Default, Deserialize, Eq, PartialEq, Serialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Storage {
    /// In a tray, open to the air.
    #[default]
    OpenTray,
    /// In a tray under a cover.
    CoveredTray,
    /// In a stoppered bottle, full.
    FullBottle,
    /// In a stoppered bottle with air above it.
    PartBottle,
}

impl Storage {
    /// Every storage.
    pub const ALL: [Self; 4] = [
        Self::OpenTray,
        Self::CoveredTray,
        Self::FullBottle,
        Self::PartBottle,
    ];

    /// The storage as the database writes it.
    #[must_use]
    pub const fn as_str(self) -> &'static str {
        match self {
            Self::OpenTray => "open_tray",
            Self::CoveredTray => "covered_tray",
            Self::FullBottle => "full_bottle",
            Self::PartBottle => "part_bottle",
        }
    }

    /// Reads what [`Storage::as_str`] writes.
    #[must_use]
    pub fn parse(text: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|each| each.as_str() == text)
    }
}

/// Where a mix stands: in a tray of a line, or in a bottle.
#[derive(Clone, Copy, Debug, Default, Deserialize, Eq, PartialEq, Serialize)]
pub struct Stand {
    /// The tray.
    #[serde(default)]
    pub tray_id: Option<Uuid>,
    /// The line that tray stands in.
    #[serde(default)]
    pub line_id: Option<Uuid>,
    /// The bottle.
    #[serde(default)]
    pub bottle_id: Option<Uuid>,
    /// Which place among fixing baths that is.
    #[serde(default)]
    pub place: Place,
}

impl Stand {
    /// What an entry is about that says where a mix stands.
    fn about(self) -> impl Iterator<Item = About> {
        let tray = self.tray_id.map(|id| About::new("tray", id));
        let line = self.line_id.map(|id| About::new("line", id));
        let bottle = self.bottle_id.map(|id| About::new("bottle", id));
        [tray, line, bottle].into_iter().flatten()
    }
}

/// The subjects of an entry, none of them twice.
fn subjects(all: impl IntoIterator<Item = About>) -> Vec<About> {
    let mut subjects: Vec<About> = Vec::new();
    for about in all {
        if !subjects.contains(&about) {
            subjects.push(about);
        }
    }
    subjects
}
