//! What people find of a mix, and a steward's word to use it a little longer.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;
use uuid::Uuid;

use super::{Stand, subjects};
use crate::darkroom::incompatibility::Group;
use crate::darkroom::state::CheckKind;
use crate::database::RoomTx;
use crate::error::Result;
use crate::logbook::{About, Entry, Placed, SeenBy};
use crate::mixes::readings;

/// What was looked at.
#[derive(Clone, Copy, Debug, Deserialize, Eq, PartialEq, Serialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum ReadingKind {
    /// Its temperature, in tenths of a degree.
    Temperature,
    /// A test print or strip, by eye.
    TestPrint,
    /// Seconds until the image first shows.
    Emergence,
    /// Seconds until film clears.
    Clearing,
    /// pH, in thousandths.
    Ph,
    /// The colour of an indicator stop bath.
    IndicatorColour,
    /// Silver, in milligrams a litre.
    Silver,
    /// Spot test for silver left in a print.
    ResidualSilver,
    /// Spot test for thiosulfate left in a print.
    ResidualThiosulfate,
    /// Something came into it.
    Contamination,
}

impl ReadingKind {
    /// Every kind.
    pub const ALL: [Self; 10] = [
        Self::Temperature,
        Self::TestPrint,
        Self::Emergence,
        Self::Clearing,
        Self::Ph,
        Self::IndicatorColour,
        Self::Silver,
        Self::ResidualSilver,
        Self::ResidualThiosulfate,
        Self::Contamination,
    ];

    /// The kind as the database and forms write it.
    #[must_use]
    pub const fn as_str(self) -> &'static str {
        match self {
            Self::Temperature => "temperature",
            Self::TestPrint => "test_print",
            Self::Emergence => "emergence",
            Self::Clearing => "clearing",
            Self::Ph => "ph",
            Self::IndicatorColour => "indicator_colour",
            Self::Silver => "silver",
            Self::ResidualSilver => "residual_silver",
            Self::ResidualThiosulfate => "residual_thiosulfate",
            Self::Contamination => "contamination",
        }
    }

    /// Reads what [`ReadingKind::as_str`] writes.
    #[must_use]
    pub fn parse(text: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|each| each.as_str() == text)
    }

    /// The check that is; a temperature and a report of contamination are none.
    #[must_use]
    pub const fn check(self) -> Option<CheckKind> {
        match self {
            Self::Temperature | Self::Contamination => None,
            Self::TestPrint => Some(CheckKind::TestPrint),
            Self::Emergence => Some(CheckKind::Emergence),
            Self::Clearing => Some(CheckKind::Clearing),
            Self::Ph => Some(CheckKind::Ph),
            Self::IndicatorColour => Some(CheckKind::IndicatorColour),
            Self::Silver => Some(CheckKind::Silver),
            Self::ResidualSilver => Some(CheckKind::ResidualSilver),
            Self::ResidualThiosulfate => Some(CheckKind::ResidualThiosulfate),
        }
    }
}

/// What came of it.
#[derive(Clone, Copy, Debug, Deserialize, Eq, PartialEq, Serialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Outcome {
    /// A figure, and nothing to hold it against.
    Read,
    /// Good.
    Passed,
    /// Not good.
    Failed,
}

impl Outcome {
    /// The outcome as the database and forms write it.
    #[must_use]
    pub const fn as_str(self) -> &'static str {
        match self {
            Self::Read => "read",
            Self::Passed => "passed",
            Self::Failed => "failed",
        }
    }

    /// Reads what [`Outcome::as_str`] writes.
    #[must_use]
    pub fn parse(text: &str) -> Option<Self> {
        [Self::Read, Self::Passed, Self::Failed]
            .into_iter()
            .find(|each| each.as_str() == text)
    }
}

/// What came into a mix.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Contaminant {
    /// Nobody can say.
    Unknown,
    /// Something of these groups.
    Groups(Vec<Group>),
}

/// Somebody looked at a mix.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct Reading {
    /// The rules it is folded by.
    pub rules: u16,
    /// The reading.
    pub reading_id: Uuid,
    /// The mix.
    pub mix_id: Uuid,
    /// Where that stands.
    #[serde(flatten)]
    pub stand: Stand,
    /// What was looked at.
    pub kind: ReadingKind,
    /// What came of it.
    pub outcome: Outcome,
    /// The figure, in the kind's own unit.
    pub value: Option<i64>,
    /// The bath's temperature then, in tenths of a degree.
    pub tenths_celsius: Option<i32>,
    /// The paper or film it was made with.
    pub sample: String,
    /// Whether the mix was fresh: later readings are held against this one.
    pub is_fresh: bool,
    /// Against the fresh reading, in thousandths, where the two compare.
    pub ratio_thousandths: Option<i64>,
    /// The fresh reading it was held against.
    pub fresh_reading_id: Option<Uuid>,
    /// What of the mix was spent then, in nanolitres.
    pub spent_nl: i64,
    /// Of a contamination: what came into it.
    pub contaminant: Option<Contaminant>,
    /// In the finder's words.
    pub remark: String,
    /// Who looked, where somebody else wrote it down here.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub person_id: Option<Uuid>,
}

impl Entry for Reading {
    const KIND: &'static str = "reading";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        let of = [
            About::new("reading", self.reading_id),
            About::new("mix", self.mix_id),
        ];
        let person = self.person_id.map(|id| About::new("person", id));
        subjects(of.into_iter().chain(person).chain(self.stand.about()))
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            readings::store::insert(tx, each).await?;
        }
        Ok(())
    }
}

/// A steward took a reading back.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct ReadingUndone {
    /// The reading.
    pub reading_id: Uuid,
    /// The number of its entry.
    pub reading_seq: i64,
    /// The mix.
    pub mix_id: Uuid,
    /// Where that stands.
    #[serde(flatten)]
    pub stand: Stand,
    /// Why.
    pub reason: String,
}

impl Entry for ReadingUndone {
    const KIND: &'static str = "reading_undone";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        let of = [
            About::new("reading", self.reading_id),
            About::new("mix", self.mix_id),
        ];
        subjects(of.into_iter().chain(self.stand.about()))
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            readings::store::undo(tx, each).await?;
        }
        Ok(())
    }
}

/// A steward lets a mix be tested and used a little longer.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct Extended {
    /// The rules it is folded by.
    pub rules: u16,
    /// The extension.
    pub extension_id: Uuid,
    /// The mix.
    pub mix_id: Uuid,
    /// Where that stands.
    #[serde(flatten)]
    pub stand: Stand,
    /// From when, in microseconds since 1970.
    pub given_us: i64,
    /// To when; never more than 24 hours later.
    pub until_us: i64,
    /// The clearing ratio it was given on, in thousandths.
    pub clearing_thousandths: Option<i64>,
    /// The emergence ratio it was given on, in thousandths.
    pub emergence_thousandths: Option<i64>,
    /// Why.
    pub reason: String,
}

impl Entry for Extended {
    const KIND: &'static str = "extended";
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
            readings::store::extend(tx, each).await?;
        }
        Ok(())
    }
}
