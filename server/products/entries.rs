//! Entries about products.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;
use uuid::Uuid;

use super::store;
use crate::darkroom::incompatibility::Group;
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::logbook::{About, Entry, Placed, SeenBy};

/// Which bath a product makes.
#[derive(Clone, Copy, Debug, Deserialize, Eq, PartialEq, Serialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Kind {
    /// Brings out the image.
    Developer,
    /// Ends development.
    StopBath,
    /// Makes the print last.
    Fixer,
    /// Shortens the wash.
    WashAid,
    /// Changes tone or permanence.
    Toner,
}

impl Kind {
    /// Every kind, in the order prints meet them.
    pub const ALL: [Self; 5] = [
        Self::Developer,
        Self::StopBath,
        Self::Fixer,
        Self::WashAid,
        Self::Toner,
    ];

    /// The kind as the database writes it.
    #[must_use]
    pub const fn as_str(self) -> &'static str {
        match self {
            Self::Developer => "developer",
            Self::StopBath => "stop_bath",
            Self::Fixer => "fixer",
            Self::WashAid => "wash_aid",
            Self::Toner => "toner",
        }
    }

    /// Reads what [`Kind::as_str`] writes.
    #[must_use]
    pub fn parse(text: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|kind| kind.as_str() == text)
    }
}

/// A group as the database writes it.
pub(super) fn group_text(group: Group) -> Result<String> {
    match serde_json::to_value(group)? {
        serde_json::Value::String(text) => Ok(text),
        other => Err(Error::fault(format!("no group: {other}"))),
    }
}

/// Reads a group as the database writes it.
///
/// # Errors
/// A group the program does not know.
pub fn parse_group(text: &str) -> Result<Group> {
    Ok(serde_json::from_value(serde_json::Value::from(text))?)
}

/// A product as it now is.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct ProductSet {
    /// Which.
    pub id: Uuid,
    /// Counts its changes.
    pub version: i32,
    /// What people call it.
    pub name: String,
    /// Which bath it makes.
    pub kind: Kind,
    /// The groups that decide what it may be poured with.
    pub groups: Vec<Group>,
    /// Whether air uses it up, so that a shallow tray dies faster.
    pub oxidises: bool,
    /// The depth the tray lives hold for, in tenths of a millimetre.
    pub depth_reference_tenths_mm: i32,
    /// Whether only a steward mixes it.
    pub steward_only: bool,
    /// H codes of the product as supplied.
    pub hazard_codes: Vec<String>,
    /// P codes of the product as supplied.
    pub precaution_codes: Vec<String>,
    /// The date of the safety data sheet on file, as `2026-11-25`; none on file, none mixed.
    pub data_sheet_on: Option<String>,
    /// Whether it is offered no more.
    pub is_retired: bool,
    /// How it is used, weakest last.
    pub dilutions: Vec<DilutionFigures>,
}

/// The figures of one dilution.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct DilutionFigures {
    /// Which.
    pub id: Uuid,
    /// N of 1+N, in thousandths.
    pub parts_thousandths: i64,
    /// How long it keeps in an open tray, in seconds.
    pub tray_life_s: i64,
    /// How long it keeps in a stoppered bottle, in seconds.
    pub bottle_life_s: i64,
    /// Where the lives come from.
    pub life_basis: String,
    /// How much paper a litre takes.
    pub capacities: Vec<CapacityFigure>,
}

/// How much of one paper class a litre takes.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct CapacityFigure {
    /// The class.
    pub paper_class_id: Uuid,
    /// 8×10 in sheets a litre, in thousandths.
    pub sheets_per_litre_thousandths: i64,
    /// Where the figure comes from.
    pub basis: String,
}

impl Entry for ProductSet {
    const KIND: &'static str = "product_set";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        vec![About::new("product", self.id)]
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            store::set_product(tx, each).await?;
        }
        Ok(())
    }
}
