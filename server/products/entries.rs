//! Entries about products.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;
use uuid::Uuid;

use super::store;
use crate::darkroom::incompatibility::Group;
use crate::darkroom::stop_bath::StopAcid;
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
    /// Where prints wait for the wash.
    HoldingWater,
}

impl Kind {
    /// Every kind, in the order prints meet them.
    pub const ALL: [Self; 6] = [
        Self::Developer,
        Self::StopBath,
        Self::Fixer,
        Self::HoldingWater,
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
            Self::HoldingWater => "holding_water",
        }
    }

    /// Reads what [`Kind::as_str`] writes.
    #[must_use]
    pub fn parse(text: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|kind| kind.as_str() == text)
    }
}

/// What a product is before anybody mixes it.
#[derive(Clone, Copy, Debug, Default, Deserialize, Eq, PartialEq, Serialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Form {
    /// One liquid concentrate.
    #[default]
    Liquid,
    /// Several parts that are mixed together.
    Kit,
    /// A powder, made up into a stock solution first.
    Powder,
    /// Used as it is.
    ReadyToUse,
}

impl Form {
    /// Every form.
    pub const ALL: [Self; 4] = [Self::Liquid, Self::Kit, Self::Powder, Self::ReadyToUse];

    /// The form as the database writes it.
    #[must_use]
    pub const fn as_str(self) -> &'static str {
        match self {
            Self::Liquid => "liquid",
            Self::Kit => "kit",
            Self::Powder => "powder",
            Self::ReadyToUse => "ready_to_use",
        }
    }

    /// Reads what [`Form::as_str`] writes.
    #[must_use]
    pub fn parse(text: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|form| form.as_str() == text)
    }
}

/// Where a bath stands among its like: only fixers stand in two.
#[derive(Clone, Copy, Debug, Default, Deserialize, Eq, PartialEq, Serialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Place {
    /// By itself.
    #[default]
    Single,
    /// The first of two.
    First,
    /// The second of two.
    Second,
}

impl Place {
    /// Every place.
    pub const ALL: [Self; 3] = [Self::Single, Self::First, Self::Second];

    /// The place as the database writes it.
    #[must_use]
    pub const fn as_str(self) -> &'static str {
        match self {
            Self::Single => "single",
            Self::First => "first",
            Self::Second => "second",
        }
    }

    /// Reads what [`Place::as_str`] writes.
    #[must_use]
    pub fn parse(text: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|place| place.as_str() == text)
    }
}

/// One point of a product's sheet: how long at which temperature.
#[derive(Clone, Copy, Debug, Deserialize, Eq, PartialEq, Serialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct TimePoint {
    /// The time, in seconds.
    pub seconds: i64,
    /// The temperature, in tenths of a degree Celsius.
    pub tenths_celsius: i32,
}

/// A group as the database writes it.
///
/// # Errors
/// A fault: every group is a word.
pub fn group_text(group: Group) -> Result<String> {
    text_of(&group)
}

/// An acid as the database writes it.
pub(super) fn acid_text(acid: StopAcid) -> Result<String> {
    text_of(&acid)
}

fn text_of(value: &impl Serialize) -> Result<String> {
    match serde_json::to_value(value)? {
        serde_json::Value::String(text) => Ok(text),
        other => Err(Error::fault(format!("no name: {other}"))),
    }
}

/// Reads an acid as the database writes it.
///
/// # Errors
/// An acid the program does not know.
pub(super) fn parse_acid(text: &str) -> Result<StopAcid> {
    Ok(serde_json::from_value(serde_json::Value::from(text))?)
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
    /// What it is before it is mixed.
    #[serde(default)]
    pub form: Form,
    /// A kit's parts a:b:…, in thousandths; the water of a dilution's 1+N is N
    /// times all of them together.
    #[serde(default)]
    pub kit_parts_thousandths: Vec<i64>,
    /// The stock solution that a packet of powder makes, in microlitres.
    #[serde(default)]
    pub packet_makes_ul: Option<i64>,
    /// Whether a part of a packet may be taken; otherwise whole ones only.
    #[serde(default)]
    pub packets_may_be_divided: bool,
    /// How long a powder's stock solution keeps in a full bottle, in seconds.
    #[serde(default)]
    pub stock_full_life_s: Option<i64>,
    /// The same from the first draw on, in seconds.
    #[serde(default)]
    pub stock_part_life_s: Option<i64>,
    /// The age of a mix that no top-up moves, in seconds.
    #[serde(default)]
    pub longest_life_s: Option<i64>,
    /// The coldest it works at, in tenths of a degree Celsius.
    #[serde(default)]
    pub coldest_tenths_celsius: Option<i32>,
    /// The warmest it works at, in tenths of a degree Celsius.
    #[serde(default)]
    pub warmest_tenths_celsius: Option<i32>,
    /// The warmest water it may be mixed with, in tenths of a degree Celsius; none is 40 °C.
    #[serde(default)]
    pub water_warmest_tenths_celsius: Option<i32>,
    /// Two points of its sheet, or none: from them times at other temperatures follow.
    #[serde(default)]
    pub time_points: Vec<TimePoint>,
    /// A stop bath's acid; none where only its capacity counts.
    #[serde(default)]
    pub stop_acid: Option<StopAcid>,
    /// The pH at which a stop bath is used up, in thousandths; none is 5.2.
    #[serde(default)]
    pub limit_ph_thousandths: Option<i64>,
    /// The bromide at which a developer is used up; none where nobody set one.
    #[serde(default)]
    pub bromide_limit_mg_per_litre: Option<i64>,
    /// Where its temperatures, times and limits come from.
    #[serde(default)]
    pub figures_basis: String,
    /// How it is used, weakest last.
    pub dilutions: Vec<DilutionFigures>,
    /// What section 3 of its sheet lists, in that order.
    #[serde(default)]
    pub ingredients: Vec<Ingredient>,
    /// Whether a steward said that this is all that section lists. Until then what is in
    /// it is unknown.
    #[serde(default)]
    pub composition_is_known: bool,
}

/// An ingredient as the supplier's data sheet lists it.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct Ingredient {
    /// The substance.
    pub name: String,
    /// Its number in the CAS Registry, where the sheet has one.
    pub cas: Option<String>,
    /// The least it may be of the product, by mass, in millionths.
    pub least_millionths: Option<i32>,
    /// The most it may be, by mass, in millionths.
    pub most_millionths: Option<i32>,
    /// H codes of the substance itself, whatever the product's own are.
    pub hazard_codes: Vec<String>,
}

/// The warmest water a product is mixed with where its sheet says nothing, in
/// tenths of a degree Celsius: common practice, no source.
pub const WATER_WARMEST_TENTHS_CELSIUS: i32 = 400;

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
    /// How long it keeps in a covered tray, in seconds; none is as in an open one.
    #[serde(default)]
    pub covered_life_s: Option<i64>,
    /// How long it keeps in a part-filled bottle, in seconds; none is as in a full one.
    #[serde(default)]
    pub part_bottle_life_s: Option<i64>,
    /// Where the lives come from.
    pub life_basis: String,
    /// How many rolls of film a litre of a fixer takes, in thousandths; none is paper only.
    #[serde(default)]
    pub film_rolls_per_litre_thousandths: Option<i64>,
    /// The acid of a fresh stop bath at this strength, in millimoles a litre.
    #[serde(default)]
    pub acid_mmol_per_litre: Option<i64>,
    /// The silver at which a single fixer is used up.
    #[serde(default)]
    pub silver_limit_single_mg_per_litre: Option<i64>,
    /// The silver at which the first of two fixers is used up.
    #[serde(default)]
    pub silver_limit_first_mg_per_litre: Option<i64>,
    /// The silver at which the second of two fixers is used up.
    #[serde(default)]
    pub silver_limit_second_mg_per_litre: Option<i64>,
    /// Where its film, acid and silver figures come from.
    #[serde(default)]
    pub figures_basis: String,
    /// How much paper a litre takes.
    pub capacities: Vec<CapacityFigure>,
}

/// How much of one paper class a litre takes.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct CapacityFigure {
    /// The class.
    pub paper_class_id: Uuid,
    /// Where the bath stands; all but fixers stand by themselves.
    #[serde(default)]
    pub place: Place,
    /// 8×10 in sheets a litre, in thousandths.
    pub sheets_per_litre_thousandths: i64,
    /// Where the figure comes from.
    pub basis: String,
}

impl DilutionFigures {
    /// The silver at which a fixer in this place is used up; none where nobody set one.
    #[must_use]
    pub const fn silver_limit_mg_per_litre(&self, place: Place) -> Option<i64> {
        match place {
            Place::Single => self.silver_limit_single_mg_per_litre,
            Place::First => self.silver_limit_first_mg_per_litre,
            Place::Second => self.silver_limit_second_mg_per_litre,
        }
    }

    /// How much paper a litre takes in this place.
    pub fn capacities_in(&self, place: Place) -> impl Iterator<Item = &CapacityFigure> {
        let all = self.capacities.iter();
        all.filter(move |figure| figure.place == place)
    }
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
