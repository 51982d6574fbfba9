//! A room's settings as JSON.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;
use utoipa::openapi::{ObjectBuilder, RefOr, Schema, Type};

use super::actions::change_settings;
use super::settings::{fixer_shifts, guest_days, second_bath_ppb};
use super::{DecimalMark, Emergency, HazardRules, Hours, Settings, Units, settings_and_seq};
use crate::api::{By, Input, Made, Route, Writing};
use crate::error::{Error, Result};
use crate::problem::Problem;
use crate::rights::{KeepRoom, SeeRoom};

const SETTINGS: &str = "/rooms/{room}/settings";

/// The routes.
#[must_use]
pub fn api() -> Vec<Route> {
    vec![
        Route::read(SETTINGS, "The room's settings.", read),
        Route::set(SETTINGS, "Set the room's settings, whole.", set),
    ]
}

/// A room's settings.
#[derive(Debug, Serialize, ToSchema)]
pub struct SettingsOut {
    /// The number of the entry that last set them.
    pub seq: i64,
    /// What people call the room.
    pub name: String,
    /// Its time zone, by IANA name.
    pub zone: String,
    /// Its currency, by ISO 4217 code.
    pub currency: String,
    /// How lengths are written.
    #[schema(schema_with = units_schema)]
    pub units: Units,
    /// How numbers are written.
    #[schema(schema_with = mark_schema)]
    pub decimal_mark: DecimalMark,
    /// Opening hours of the seven days, Monday first; null where it is closed.
    pub hours: Vec<Option<HoursOut>>,
    /// The largest number of people in it.
    pub people_limit: i32,
    /// From which share used on a bath is tested before use, in parts per billion.
    pub test_first_ppb: i64,
    /// How late a note may be, in minutes.
    pub late_note_minutes: i32,
    /// Whose words hazards are labelled in.
    #[schema(schema_with = rules_schema)]
    pub hazard_rules: HazardRules,
    /// What the emergency page says.
    pub emergency: EmergencyOut,
    /// Whether a bath's temperature is to be taken every few hours.
    pub is_unheated: bool,
    /// How often a second fixer moves up before both are replaced.
    pub fixer_shifts: i32,
    /// The share of a pass that the second of two fixers gains, in parts per billion.
    pub second_bath_ppb: i64,
    /// The alkali of the developer that prints carry over; null where nobody said.
    pub alkali_meq_per_litre: Option<i32>,
    /// The silver of a roll of film; null where nobody said.
    pub silver_mg_per_roll: Option<i64>,
    /// The share of it that stays in the film, in parts per billion; null where nobody said.
    pub film_kept_ppb: Option<i64>,
    /// Whether nobody mixes concentrate while nobody else is in the room.
    pub forbids_mixing_alone: bool,
    /// For so many days the names of guests are kept.
    pub guest_days: i32,
}

/// When a room is open on one day, in minutes after midnight.
#[derive(Debug, Serialize, ToSchema)]
pub struct HoursOut {
    /// From 0 to 1439.
    pub opens_minute: i32,
    /// Later than it opens, at most 1440.
    pub closes_minute: i32,
}

/// What the emergency page says; empty where nobody wrote it yet.
#[derive(Debug, Serialize, ToSchema)]
pub struct EmergencyOut {
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

impl SettingsOut {
    fn of(settings: Settings, seq: i64) -> Self {
        let hours = |hours: Hours| HoursOut {
            opens_minute: hours.opens_minute,
            closes_minute: hours.closes_minute,
        };
        let Emergency {
            number,
            poison_centre,
            address,
            contacts,
            eyewash,
            data_sheets,
        } = settings.emergency;
        Self {
            seq,
            name: settings.name,
            zone: settings.zone,
            currency: settings.currency,
            units: settings.units,
            decimal_mark: settings.decimal_mark,
            hours: settings.hours.map(|day| day.map(hours)).into(),
            people_limit: settings.people_limit,
            test_first_ppb: settings.test_first_ppb,
            late_note_minutes: settings.late_note_minutes,
            hazard_rules: settings.hazard_rules,
            emergency: EmergencyOut {
                number,
                poison_centre,
                address,
                contacts,
                eyewash,
                data_sheets,
            },
            is_unheated: settings.is_unheated,
            fixer_shifts: settings.fixer_shifts,
            second_bath_ppb: settings.second_bath_ppb,
            alkali_meq_per_litre: settings.alkali_meq_per_litre,
            silver_mg_per_roll: settings.silver_mg_per_roll,
            film_kept_ppb: settings.film_kept_ppb,
            forbids_mixing_alone: settings.forbids_mixing_alone,
            guest_days: settings.guest_days,
        }
    }
}

async fn read(by: By<SeeRoom>) -> Result<SettingsOut> {
    let database = by.app.database();
    let found = database.reading(by.permit.scope(), |tx| Box::pin(settings_and_seq(tx)));
    let (settings, seq) = found.await?;
    Ok(SettingsOut::of(settings, seq))
}

/// A room's settings to set, whole.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SettingsIn {
    /// What people call the room.
    #[schema(max_length = 80)]
    pub name: String,
    /// Its time zone, by IANA name.
    pub zone: String,
    /// Its currency, by ISO 4217 code.
    #[schema(min_length = 3, max_length = 3)]
    pub currency: String,
    /// How lengths are written.
    #[schema(schema_with = units_schema)]
    pub units: Units,
    /// How numbers are written.
    #[schema(schema_with = mark_schema)]
    pub decimal_mark: DecimalMark,
    /// Opening hours of the seven days, Monday first; null where it is closed.
    #[schema(min_items = 7, max_items = 7)]
    pub hours: Vec<Option<HoursIn>>,
    /// The largest number of people in it.
    #[schema(minimum = 1, maximum = 1_000)]
    pub people_limit: i32,
    /// From which share used on a bath is tested before use, in parts per billion.
    #[schema(minimum = 10_000_000, maximum = 990_000_000)]
    pub test_first_ppb: i64,
    /// How late a note may be, in minutes.
    #[schema(minimum = 0, maximum = 129_600)]
    pub late_note_minutes: i32,
    /// Whose words hazards are labelled in.
    #[schema(schema_with = rules_schema)]
    pub hazard_rules: HazardRules,
    /// What the emergency page says.
    pub emergency: EmergencyIn,
    /// Whether a bath's temperature is to be taken every few hours.
    #[serde(default)]
    pub is_unheated: bool,
    /// How often a second fixer moves up before both are replaced; 3 where it is left
    /// out, from memory.
    #[serde(default = "fixer_shifts")]
    #[schema(minimum = 0, maximum = 20)]
    pub fixer_shifts: i32,
    /// The share of a pass that the second of two fixers gains, in parts per billion;
    /// a tenth where it is left out, from memory.
    #[serde(default = "second_bath_ppb")]
    #[schema(minimum = 0, maximum = 500_000_000)]
    pub second_bath_ppb: i64,
    /// The alkali of the developer that prints carry over; null, and stop baths count
    /// by their capacity alone.
    #[schema(minimum = 1, maximum = 5_000)]
    pub alkali_meq_per_litre: Option<i32>,
    /// The silver of a roll of film; null, and none is estimated.
    #[schema(minimum = 1, maximum = 10_000)]
    pub silver_mg_per_roll: Option<i64>,
    /// The share of it that stays in the film, in parts per billion.
    #[schema(minimum = 0, maximum = 1_000_000_000)]
    pub film_kept_ppb: Option<i64>,
    /// Whether nobody mixes concentrate while nobody else is in the room.
    #[serde(default)]
    pub forbids_mixing_alone: bool,
    /// For so many days the names of guests are kept.
    #[serde(default = "guest_days")]
    #[schema(minimum = 1, maximum = 3_650)]
    pub guest_days: i32,
}

/// When a room is open on one day, in minutes after midnight.
#[derive(Clone, Copy, Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct HoursIn {
    /// From 0 to 1439.
    #[schema(minimum = 0, maximum = 1_439)]
    pub opens_minute: i32,
    /// Later than it opens, at most 1440.
    #[schema(minimum = 1, maximum = 1_440)]
    pub closes_minute: i32,
}

/// What the emergency page says; empty where nobody knows it yet.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct EmergencyIn {
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

impl Input for SettingsIn {
    const NAMES: &'static [(&'static str, &'static str)] = &[
        ("test_first", "test_first_ppb"),
        ("late_note_hours", "late_note_minutes"),
        ("second_bath", "second_bath_ppb"),
        ("alkali", "alkali_meq_per_litre"),
        ("silver_per_roll", "silver_mg_per_roll"),
        ("film_kept", "film_kept_ppb"),
        ("hours-0", "hours[0]"),
        ("hours-1", "hours[1]"),
        ("hours-2", "hours[2]"),
        ("hours-3", "hours[3]"),
        ("hours-4", "hours[4]"),
        ("hours-5", "hours[5]"),
        ("hours-6", "hours[6]"),
        ("emergency_number", "emergency.number"),
        ("poison_centre", "emergency.poison_centre"),
        ("address", "emergency.address"),
        ("contacts", "emergency.contacts"),
        ("eyewash", "emergency.eyewash"),
        ("data_sheets", "emergency.data_sheets"),
    ];
}

impl SettingsIn {
    fn read(self) -> Result<Settings> {
        let hours = |day: HoursIn| Hours {
            opens_minute: day.opens_minute,
            closes_minute: day.closes_minute,
        };
        let days: Vec<Option<Hours>> = self.hours.iter().map(|day| day.map(hours)).collect();
        let seven = <[Option<Hours>; 7]>::try_from(days);
        let said = self.emergency;
        Ok(Settings {
            name: self.name,
            zone: self.zone,
            currency: self.currency,
            units: self.units,
            decimal_mark: self.decimal_mark,
            hours: seven.map_err(|_| Error::field("hours", Problem::NotSevenDays))?,
            people_limit: self.people_limit,
            test_first_ppb: self.test_first_ppb,
            late_note_minutes: self.late_note_minutes,
            hazard_rules: self.hazard_rules,
            emergency: Emergency {
                number: said.number,
                poison_centre: said.poison_centre,
                address: said.address,
                contacts: said.contacts,
                eyewash: said.eyewash,
                data_sheets: said.data_sheets,
            },
            is_unheated: self.is_unheated,
            fixer_shifts: self.fixer_shifts,
            second_bath_ppb: self.second_bath_ppb,
            alkali_meq_per_litre: self.alkali_meq_per_litre,
            silver_mg_per_roll: self.silver_mg_per_roll,
            film_kept_ppb: self.film_kept_ppb,
            forbids_mixing_alone: self.forbids_mixing_alone,
            guest_days: self.guest_days,
        })
    }
}

async fn set(by: Writing<KeepRoom>, settings: SettingsIn) -> Result<Made> {
    let settings = settings.read()?;
    let done = change_settings(&by.app, &by.permit, by.key, settings).await?;
    Ok(by.made_at(&done, by.permit.room(), "settings"))
}

fn one_of(names: &[&str]) -> RefOr<Schema> {
    let choice = ObjectBuilder::new().schema_type(Type::String);
    choice.enum_values(Some(names.iter().copied())).into()
}

fn units_schema() -> RefOr<Schema> {
    one_of(&[Units::Metric.as_str(), Units::Inch.as_str()])
}

fn mark_schema() -> RefOr<Schema> {
    one_of(&[DecimalMark::Point.as_str(), DecimalMark::Comma.as_str()])
}

fn rules_schema() -> RefOr<Schema> {
    one_of(&[
        HazardRules::Clp.as_str(),
        HazardRules::NorthAmerican.as_str(),
    ])
}
