//! What stands in a tray, as far as the verdict needs to know it. Whoever folds
//! the book fills this in; a figure a product does not have stays empty.

use serde::{Deserialize, Serialize};

use super::age::Age;
use super::quantities::{Moment, Nanolitres, Ppb, Seconds, TenthsCelsius, Thousandths};
use super::wear::Charge;

/// What stands in a tray.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum TrayState {
    /// The book knows of nothing in it.
    Empty,
    /// Liquid nobody can name.
    UnknownLiquid,
    /// A mix.
    Mix(Box<MixState>),
}

/// Where a mix comes from.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Origin {
    /// Mixed on record.
    #[default]
    Mixed,
    /// It stood there on the first day: a known mix, its fractions guessed.
    Guessed,
    /// A mix whose age or start nobody knows.
    Unknown,
}

/// A kind of check a person makes on a bath.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum CheckKind {
    /// A test print or strip judged by eye.
    TestPrint,
    /// Seconds until the image first shows.
    Emergence,
    /// Seconds until film clears.
    Clearing,
    /// pH measured.
    Ph,
    /// The colour of an indicator stop bath.
    IndicatorColour,
    /// Silver by strip or laboratory.
    Silver,
    /// Spot test for silver left in a print.
    ResidualSilver,
    /// Spot test for thiosulfate left in a print.
    ResidualThiosulfate,
}

/// A failed check that stands; whoever folds the book drops it when it is undone.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct FailedCheck {
    /// What was checked.
    pub kind: CheckKind,
    /// When.
    #[serde(rename = "at_us")]
    pub at: Moment,
}

/// The last passed check.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct PassedCheck {
    /// What was checked.
    pub kind: CheckKind,
    /// When.
    #[serde(rename = "at_us")]
    pub at: Moment,
    /// W of the mix at that time.
    #[serde(rename = "spent_nanolitres")]
    pub spent: Nanolitres,
}

/// A reading held against the fresh one: time now / time fresh.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct RatioReading {
    /// 1000 is as fresh.
    #[serde(rename = "ratio_thousandths")]
    pub ratio: Thousandths,
    /// When.
    #[serde(rename = "at_us")]
    pub at: Moment,
}

/// Measured silver.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SilverReading {
    /// In milligrams per litre.
    pub milligrams_per_litre: u32,
    /// When.
    #[serde(rename = "at_us")]
    pub at: Moment,
    /// W of the mix at that time.
    #[serde(rename = "spent_nanolitres")]
    pub spent: Nanolitres,
}

/// Silver in a fixer that has a limit.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SilverWatch {
    /// The limit the steward chose, in milligrams per litre.
    pub limit_milligrams_per_litre: u32,
    /// The estimate now, in milligrams per litre.
    pub estimated_milligrams_per_litre: u32,
    /// The last measured value.
    pub measured: Option<SilverReading>,
}

/// The temperature of a tray and what it should be.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct TemperatureWatch {
    /// The lowest the product works at, in tenths of a degree Celsius.
    #[serde(rename = "lowest_tenths_celsius")]
    pub lowest: TenthsCelsius,
    /// The highest the product works at, in tenths of a degree Celsius.
    #[serde(rename = "highest_tenths_celsius")]
    pub highest: TenthsCelsius,
    /// The last one taken.
    pub last: Option<TemperatureReading>,
    /// In a room marked unheated: since when the mix stands there.
    #[serde(rename = "unheated_since_us")]
    pub unheated_since: Option<Moment>,
}

/// A temperature taken.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct TemperatureReading {
    /// In tenths of a degree Celsius.
    #[serde(rename = "tenths_celsius")]
    pub temperature: TenthsCelsius,
    /// When.
    #[serde(rename = "at_us")]
    pub at: Moment,
}

/// A steward's extension of a mix that would be replaced.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Extension {
    /// When it was given.
    #[serde(rename = "given_us")]
    pub given: Moment,
    /// When it ends; never more than 24 h later.
    #[serde(rename = "until_us")]
    pub until: Moment,
    /// The clearing ratio it was given on, in thousandths.
    #[serde(rename = "clearing_thousandths")]
    pub clearing: Option<Thousandths>,
    /// The emergence ratio it was given on, in thousandths.
    #[serde(rename = "emergence_thousandths")]
    pub emergence: Option<Thousandths>,
}

/// What a steward may set about the verdict; the safety rows are not among it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct Thresholds {
    /// From this fraction of capacity or life on: Test first. Default 0.8.
    pub test_first_ppb: Ppb,
    /// How long a passed check is good for. Default 1 h.
    pub passed_check_seconds: Seconds,
    /// How much of capacity a passed check is good for. Default 0.1.
    pub passed_check_ppb: Ppb,
    /// In an unheated room, how long a temperature is good for. Default 4 h.
    pub temperature_seconds: Seconds,
}

impl Default for Thresholds {
    fn default() -> Self {
        Self {
            test_first_ppb: Ppb::of(800_000_000),
            passed_check_seconds: Seconds::from_hours(1),
            passed_check_ppb: Ppb::of(100_000_000),
            temperature_seconds: Seconds::from_hours(4),
        }
    }
}

/// A mix in a tray: every figure its verdict needs.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct MixState {
    /// V and W; none for a bath whose product states no capacity.
    pub charge: Option<Charge>,
    /// Life in the present storage; none for a bath whose product states none.
    pub age: Option<Age>,
    /// The longest total age, which no top-up moves.
    pub total_age: Option<Age>,
    /// The used share of a stop bath's acid, in parts per billion.
    pub acid_used_ppb: Option<Ppb>,
    /// The reached share of a bromide limit, in parts per billion.
    pub bromide_used_ppb: Option<Ppb>,
    /// Where it comes from.
    pub origin: Origin,
    /// Since when it is flagged as contaminated.
    #[serde(rename = "contaminated_us")]
    pub contaminated: Option<Moment>,
    /// A failed check that stands.
    pub failed_check: Option<FailedCheck>,
    /// The last passed check.
    pub passed_check: Option<PassedCheck>,
    /// When sheets of unknown number were last noted.
    #[serde(rename = "unknown_sheets_us")]
    pub unknown_sheets: Option<Moment>,
    /// Clearing time against fresh.
    pub clearing: Option<RatioReading>,
    /// Emergence time against fresh, corrected for temperature.
    pub emergence: Option<RatioReading>,
    /// Silver, where it has a limit.
    pub silver: Option<SilverWatch>,
    /// Temperature, where the product has a range.
    pub temperature: Option<TemperatureWatch>,
    /// A steward's extension.
    pub extension: Option<Extension>,
    /// What the room's steward set.
    pub thresholds: Thresholds,
}
