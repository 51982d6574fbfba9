//! Entries about power and fan.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;
use uuid::Uuid;

use super::store;
use crate::database::RoomTx;
use crate::error::Result;
use crate::logbook::{About, Entry, Placed, SeenBy};

/// What can be off.
#[derive(Clone, Copy, Debug, Deserialize, Eq, Hash, PartialEq, Serialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum What {
    /// The power: lamps, pumps, and whatever moves the air.
    Power,
    /// The fan that moves the room's air.
    Fan,
}

impl What {
    /// Everything that can be off, in the order pages list it.
    pub const ALL: [Self; 2] = [Self::Power, Self::Fan];

    /// As the database, the forms and the API write it.
    #[must_use]
    pub const fn as_str(self) -> &'static str {
        match self {
            Self::Power => "power",
            Self::Fan => "fan",
        }
    }

    /// Reads what [`What::as_str`] writes.
    #[must_use]
    pub fn parse(text: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|what| what.as_str() == text)
    }
}

/// Something went off. When it did is when the entry happened.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct OutageBegan {
    /// Which time this is.
    pub outage_id: Uuid,
    /// What is off.
    pub what: What,
    /// The part of the room it is about; nothing for the whole room.
    pub space_id: Option<Uuid>,
}

impl Entry for OutageBegan {
    const KIND: &'static str = "outage_began";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        let space = self.space_id.map(|space| About::new("space", space));
        let outage = About::new("outage", self.outage_id);
        space.into_iter().chain([outage]).collect()
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            store::begin(tx, each).await?;
        }
        Ok(())
    }
}

/// It is on again. When that was is when the entry happened.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct OutageEnded {
    /// Which time this was.
    pub outage_id: Uuid,
    /// What was off.
    pub what: What,
    /// The part of the room it was about; nothing for the whole room.
    pub space_id: Option<Uuid>,
}

impl Entry for OutageEnded {
    const KIND: &'static str = "outage_ended";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        let space = self.space_id.map(|space| About::new("space", space));
        let outage = About::new("outage", self.outage_id);
        space.into_iter().chain([outage]).collect()
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            store::end(tx, each).await?;
        }
        Ok(())
    }
}
