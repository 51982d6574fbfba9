//! A mix ends, or did not after all.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;
use uuid::Uuid;

use super::{Stand, subjects};
use crate::database::RoomTx;
use crate::error::Result;
use crate::logbook::{About, Entry, Placed, SeenBy};
use crate::mixes::fold;

/// Why a mix was discarded; who pays for what was left of it follows from that.
#[derive(Clone, Copy, Debug, Default, Deserialize, Eq, PartialEq, Serialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Why {
    /// It was used up or too old, or is needed no more.
    #[default]
    Spent,
    /// Something came into it.
    Contaminated,
    /// It was mixed wrongly.
    Mistaken,
    /// It was mixed for a test.
    Test,
    /// The supplier called its product back.
    Recalled,
}

impl Why {
    /// Every reason.
    pub const ALL: [Self; 5] = [
        Self::Spent,
        Self::Contaminated,
        Self::Mistaken,
        Self::Test,
        Self::Recalled,
    ];

    /// The reason as forms write it.
    #[must_use]
    pub const fn as_str(self) -> &'static str {
        match self {
            Self::Spent => "spent",
            Self::Contaminated => "contaminated",
            Self::Mistaken => "mistaken",
            Self::Test => "test",
            Self::Recalled => "recalled",
        }
    }

    /// Reads what [`Why::as_str`] writes.
    #[must_use]
    pub fn parse(text: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|each| each.as_str() == text)
    }
}

/// A mix was poured off into a container.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct Discarded {
    /// The mix.
    pub mix_id: Uuid,
    /// Where it stood.
    #[serde(flatten)]
    pub stand: Stand,
    /// How much was poured off, in microlitres.
    pub volume_ul: i64,
    /// Where to: only `collected` until the room records what else is allowed.
    pub destination: String,
    /// The container, as the steward named it.
    pub container: String,
    /// Why.
    #[serde(default)]
    pub why: Why,
}

impl Entry for Discarded {
    const KIND: &'static str = "discarded";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        subjects(
            [About::new("mix", self.mix_id)]
                .into_iter()
                .chain(self.stand.about()),
        )
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            fold::discarded(tx, each).await?;
        }
        Ok(())
    }
}

/// A discard was logged by mistake: the mix stands and ages as if never discarded.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct DiscardUndone {
    /// The mix.
    pub mix_id: Uuid,
    /// The number of the discard's entry.
    pub discard_seq: i64,
    /// Where it stands.
    #[serde(flatten)]
    pub stand: Stand,
    /// How the mistake came about.
    pub reason: String,
}

impl Entry for DiscardUndone {
    const KIND: &'static str = "discard_undone";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        subjects(
            [About::new("mix", self.mix_id)]
                .into_iter()
                .chain(self.stand.about()),
        )
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            fold::discard_undone(tx, each).await?;
        }
        Ok(())
    }
}

/// A tray or bottle that held household bleach was rinsed.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct Rinsed {
    /// Which.
    #[serde(flatten)]
    pub stand: Stand,
}

impl Entry for Rinsed {
    const KIND: &'static str = "rinsed";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        self.stand.about().collect()
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            fold::rinsed(tx, each).await?;
        }
        Ok(())
    }
}
