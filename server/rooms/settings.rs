//! A room's settings.

use serde::{Deserialize, Serialize};

use crate::darkroom::silver::{SECOND_BATH_SHARE, SHIFTS};
use crate::error::{Error, Result};
use crate::web::air_units::AirUnits;
use crate::web::dates::Zone;
use crate::web::lengths::Lengths;
use crate::web::numbers::Numbers;

/// How lengths and volumes are written.
#[derive(Clone, Copy, Debug, Deserialize, Eq, PartialEq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Units {
    /// Millimetres and litres.
    Metric,
    /// Inches and litres.
    Inch,
}

impl Units {
    /// The units as the database and forms write them.
    #[must_use]
    pub const fn as_str(self) -> &'static str {
        match self {
            Self::Metric => "metric",
            Self::Inch => "inch",
        }
    }

    /// Reads what [`Units::as_str`] writes.
    #[must_use]
    pub fn parse(text: &str) -> Option<Self> {
        [Self::Metric, Self::Inch]
            .into_iter()
            .find(|each| each.as_str() == text)
    }
}

/// What stands between whole and parts of a number.
#[derive(Clone, Copy, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub enum DecimalMark {
    /// 1.5
    #[serde(rename = ".")]
    Point,
    /// 1,5
    #[serde(rename = ",")]
    Comma,
}

impl DecimalMark {
    /// The mark.
    #[must_use]
    pub const fn as_str(self) -> &'static str {
        match self {
            Self::Point => ".",
            Self::Comma => ",",
        }
    }

    /// Reads what [`DecimalMark::as_str`] writes.
    #[must_use]
    pub fn parse(text: &str) -> Option<Self> {
        [Self::Point, Self::Comma]
            .into_iter()
            .find(|each| each.as_str() == text)
    }
}

/// Whose words hazards are labelled in.
#[derive(Clone, Copy, Debug, Deserialize, Eq, PartialEq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum HazardRules {
    /// The European regulation on classification, labelling and packaging.
    Clp,
    /// The hazard communication standards of the United States and Canada.
    NorthAmerican,
}

impl HazardRules {
    /// The rule set as the database and forms write it.
    #[must_use]
    pub const fn as_str(self) -> &'static str {
        match self {
            Self::Clp => "clp",
            Self::NorthAmerican => "north_american",
        }
    }

    /// Reads what [`HazardRules::as_str`] writes.
    #[must_use]
    pub fn parse(text: &str) -> Option<Self> {
        [Self::Clp, Self::NorthAmerican]
            .into_iter()
            .find(|each| each.as_str() == text)
    }
}

/// When a room is open on one weekday, in minutes after its midnight.
#[derive(Clone, Copy, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct Hours {
    /// From 0 to 1,439.
    pub opens_minute: i32,
    /// Later than it opens, at most 1,440.
    pub closes_minute: i32,
}

/// What the emergency page says of this room; empty where nobody wrote it yet.
#[derive(Clone, Debug, Default, Deserialize, Eq, PartialEq, Serialize)]
pub struct Emergency {
    /// The number of the emergency services.
    pub number: String,
    /// Name and number of the poison centre.
    pub poison_centre: String,
    /// The address to give.
    pub address: String,
    /// The room's own people.
    pub contacts: String,
    /// Where the eyewash is.
    pub eyewash: String,
    /// Where the data sheets are.
    pub data_sheets: String,
}

/// A room's settings.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct Settings {
    /// What people call it.
    pub name: String,
    /// Its time zone, by IANA name.
    pub zone: String,
    /// Its currency, by ISO 4217 code.
    pub currency: String,
    /// Its units.
    pub units: Units,
    /// Its decimal mark.
    pub decimal_mark: DecimalMark,
    /// Opening hours, Monday first; nothing where it is closed that day.
    pub hours: [Option<Hours>; 7],
    /// The largest number of people in it.
    pub people_limit: i32,
    /// From which share used on a bath is tested before use.
    pub test_first_ppb: i64,
    /// How late a note may be.
    pub late_note_minutes: i32,
    /// Its hazard rules.
    pub hazard_rules: HazardRules,
    /// What its emergency page says.
    pub emergency: Emergency,
    /// Whether a bath's temperature is to be taken every few hours.
    #[serde(default)]
    pub is_unheated: bool,
    /// How often a second fixer moves up before both are replaced.
    #[serde(default = "fixer_shifts")]
    pub fixer_shifts: i32,
    /// The share of a pass that the second of two fixers gains, in parts per billion.
    #[serde(default = "second_bath_ppb")]
    pub second_bath_ppb: i64,
    /// The alkali of the developer that prints carry over; none where nobody said,
    /// and then a stop bath counts by its capacity alone.
    #[serde(default)]
    pub alkali_meq_per_litre: Option<i32>,
    /// The silver of a roll of film; none where nobody said.
    #[serde(default)]
    pub silver_mg_per_roll: Option<i64>,
    /// The share of it that stays in the film, in parts per billion; none where nobody said.
    #[serde(default)]
    pub film_kept_ppb: Option<i64>,
    /// Whether nobody mixes concentrate while nobody else is in the room.
    #[serde(default)]
    pub forbids_mixing_alone: bool,
    /// For so many days the names of guests are kept.
    #[serde(default = "guest_days")]
    pub guest_days: i32,
}

/// From memory.
pub(super) fn guest_days() -> i32 {
    30
}

/// From memory, as [`SHIFTS`] says.
pub(super) fn fixer_shifts() -> i32 {
    i32::try_from(SHIFTS).unwrap_or(i32::MAX)
}

/// From memory, as [`SECOND_BATH_SHARE`] says.
pub(super) fn second_bath_ppb() -> i64 {
    SECOND_BATH_SHARE.get()
}

impl Settings {
    /// How this room writes times.
    ///
    /// # Errors
    /// A fault: the zone was checked when it was set.
    pub fn time_zone(&self) -> Result<Zone> {
        Zone::named(&self.zone).map_err(|cause| Error::Internal(cause.into()))
    }

    /// How this room writes numbers.
    #[must_use]
    pub fn numbers(&self) -> Numbers {
        Numbers::with_mark(self.decimal_mark.as_str())
    }

    /// How this room writes lengths.
    #[must_use]
    pub fn lengths(&self) -> Lengths {
        Lengths::new(self.numbers(), self.units == Units::Inch)
    }

    /// How this room writes what is said of its air.
    #[must_use]
    pub fn air_units(&self) -> AirUnits {
        AirUnits::new(self.numbers(), self.units == Units::Inch)
    }

    /// What a room starts with, to be changed by its steward: open around the
    /// clock, ten people, a test from 80 % used on, notes up to seven days late.
    /// The last two are the specification's; hours and number of people are
    /// starting points only.
    #[must_use]
    pub fn starting(name: String, zone: String, currency: String) -> Self {
        let always = Hours {
            opens_minute: 0,
            closes_minute: 1_440,
        };
        Self {
            name,
            zone,
            currency,
            units: Units::Metric,
            decimal_mark: DecimalMark::Point,
            hours: [Some(always); 7],
            people_limit: 10,
            test_first_ppb: 800_000_000,
            late_note_minutes: 7 * 24 * 60,
            hazard_rules: HazardRules::Clp,
            emergency: Emergency::default(),
            is_unheated: false,
            fixer_shifts: fixer_shifts(),
            second_bath_ppb: second_bath_ppb(),
            alkali_meq_per_litre: None,
            silver_mg_per_roll: None,
            film_kept_ppb: None,
            forbids_mixing_alone: false,
            guest_days: guest_days(),
        }
    }
}
