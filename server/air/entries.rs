//! Entries about air. The space is the part of the room it is about; none is the room
//! itself.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;
use uuid::Uuid;

use super::store;
use crate::database::RoomTx;
use crate::error::Result;
use crate::logbook::{About, Entry, Placed, SeenBy};

/// By which rule exhaust is wanted.
#[derive(Clone, Copy, Debug, Deserialize, Eq, Hash, PartialEq, Serialize, ToSchema)]
pub enum ExhaustRule {
    /// International Mechanical Code 2018, Table 403.3.1.1.
    #[serde(rename = "imc_2018")]
    Imc2018,
    /// ASHRAE 62.1, from memory.
    #[serde(rename = "ashrae_62_1")]
    Ashrae621,
    /// The steward's own figure.
    #[serde(rename = "own")]
    Own,
}

impl ExhaustRule {
    /// Every rule, in the order pages list them.
    pub const ALL: [Self; 3] = [Self::Imc2018, Self::Ashrae621, Self::Own];

    /// As the database, the forms and the API write it.
    #[must_use]
    pub const fn as_str(self) -> &'static str {
        match self {
            Self::Imc2018 => "imc_2018",
            Self::Ashrae621 => "ashrae_62_1",
            Self::Own => "own",
        }
    }

    /// Reads what [`ExhaustRule::as_str`] writes.
    #[must_use]
    pub fn parse(text: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|rule| rule.as_str() == text)
    }
}

/// Which flow was measured.
#[derive(Clone, Copy, Debug, Deserialize, Eq, Hash, PartialEq, Serialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum FlowOf {
    /// What a fan takes out for good.
    Exhaust,
    /// What moves while doors and windows stand open: no exhaust.
    Airing,
}

impl FlowOf {
    /// Both, in the order pages list them.
    pub const ALL: [Self; 2] = [Self::Exhaust, Self::Airing];

    /// As the database, the forms and the API write it.
    #[must_use]
    pub const fn as_str(self) -> &'static str {
        match self {
            Self::Exhaust => "exhaust",
            Self::Airing => "airing",
        }
    }

    /// Reads what [`FlowOf::as_str`] writes.
    #[must_use]
    pub fn parse(text: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|of| of.as_str() == text)
    }
}

/// What is known of the air of a place beside its measurements.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct Air {
    /// Its floor; nothing where nobody measured it.
    pub floor_hundredths_mm2: Option<i64>,
    /// From floor to ceiling; nothing where nobody measured it.
    pub height_tenths_mm: Option<i32>,
    /// By how much clearing takes longer than where air mixes perfectly, in tenths.
    pub mixing_tenths: i32,
    /// By which rule exhaust is wanted.
    pub rule: ExhaustRule,
    /// The steward's own figure for all of the place, by that rule alone.
    pub own_ul_per_s: Option<i64>,
    /// Where that figure comes from.
    pub basis: String,
    /// Whether a fan takes air out.
    pub has_fan: bool,
}

/// The air of a place as it now is.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct AirSet {
    /// Which part of the room.
    pub space_id: Option<Uuid>,
    /// What is known of it.
    pub air: Air,
}

fn about_space(space: Option<Uuid>) -> Vec<About> {
    let space = space.map(|space| About::new("space", space));
    space.into_iter().collect()
}

fn about_with(space: Option<Uuid>, noun: &'static str, id: Uuid) -> Vec<About> {
    let mut about = about_space(space);
    about.push(About::new(noun, id));
    about
}

impl Entry for AirSet {
    const KIND: &'static str = "air_set";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        about_space(self.space_id)
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            store::set_air(tx, &each.entry).await?;
        }
        Ok(())
    }
}

/// Somebody measured a flow.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct FlowMeasured {
    /// Which measurement.
    pub flow_measurement_id: Uuid,
    /// In which part of the room.
    pub space_id: Option<Uuid>,
    /// Which flow.
    pub of: FlowOf,
    /// How much; 0 where nothing moved.
    pub ul_per_s: i64,
    /// On which day, as `2026-11-25`.
    pub measured_on: String,
    /// Who measured, where that was not whoever wrote it down.
    pub measured_by: String,
    /// With what, and where.
    pub how: String,
}

impl Entry for FlowMeasured {
    const KIND: &'static str = "flow_measured";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        about_with(self.space_id, "flow_measurement", self.flow_measurement_id)
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            store::insert_measurement(tx, each).await?;
        }
        Ok(())
    }
}

/// A measurement was mistaken.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct FlowTakenBack {
    /// Which.
    pub flow_measurement_id: Uuid,
    /// The number of its entry.
    pub flow_measurement_seq: i64,
    /// In which part of the room.
    pub space_id: Option<Uuid>,
    /// Why.
    pub reason: String,
}

impl Entry for FlowTakenBack {
    const KIND: &'static str = "flow_taken_back";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        about_with(self.space_id, "flow_measurement", self.flow_measurement_id)
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            store::take_back(tx, each).await?;
        }
        Ok(())
    }
}

/// Baths may start in a place without measured exhaust, by somebody's agreement; or no
/// more.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct ExhaustWaiverSet {
    /// In which part of the room.
    pub space_id: Option<Uuid>,
    /// The competent person who agreed; nobody where exhaust is needed again.
    pub agreed_by: Option<String>,
}

impl Entry for ExhaustWaiverSet {
    const KIND: &'static str = "exhaust_waiver_set";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        about_space(self.space_id)
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            store::set_waiver(tx, each).await?;
        }
        Ok(())
    }
}

/// Doors and windows were opened. When is when the entry happened.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct AiringBegan {
    /// Which time this is.
    pub airing_id: Uuid,
    /// In which part of the room.
    pub space_id: Option<Uuid>,
}

impl Entry for AiringBegan {
    const KIND: &'static str = "airing_began";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        about_with(self.space_id, "airing", self.airing_id)
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            let (id, space) = (each.entry.airing_id, each.entry.space_id);
            store::insert_airing(tx, (id, space), None, each).await?;
        }
        Ok(())
    }
}

/// They were closed again. When is when the entry happened.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct AiringEnded {
    /// Which time this was.
    pub airing_id: Uuid,
    /// In which part of the room.
    pub space_id: Option<Uuid>,
}

impl Entry for AiringEnded {
    const KIND: &'static str = "airing_ended";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        about_with(self.space_id, "airing", self.airing_id)
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            let id = each.entry.airing_id;
            store::end_airing(tx, (id, each.happened_at), each).await?;
        }
        Ok(())
    }
}

/// A place was aired, said afterwards. When it began is when the entry happened.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct Aired {
    /// Which time this was.
    pub airing_id: Uuid,
    /// In which part of the room.
    pub space_id: Option<Uuid>,
    /// For how long.
    pub seconds: i64,
}

impl Entry for Aired {
    const KIND: &'static str = "aired";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        about_with(self.space_id, "airing", self.airing_id)
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            let (id, space) = (each.entry.airing_id, each.entry.space_id);
            let ended = each.happened_at + time::Duration::seconds(each.entry.seconds);
            store::insert_airing(tx, (id, space), Some(ended), each).await?;
        }
        Ok(())
    }
}
