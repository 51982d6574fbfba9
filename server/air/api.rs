//! Room air as JSON. A place has the id of its space; the room itself has its own.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;
use uuid::Uuid;

use super::actions::{self, NewAir, NewMeasurement, NewWaiver, UndoMeasurement};
use super::input::{self, MIXING_TENTHS};
use super::standing::{AirNow, air_now};
use super::store::{self, Asked, Measurement};
use super::{Air, ExhaustRule, FlowOf};
use crate::api::{By, Input, Made, Page, Paging, Route, Writing};
use crate::darkroom::air::{Cleared, Exhaust};
use crate::error::{Error, Result};
use crate::input::{date, name, needed_note, note};
use crate::mixes::readings::input::reason;
use crate::problem::Problems;
use crate::rights::{KeepAir, SeeAir, TakeBack};

const ALL: &str = "/rooms/{room}/air";
const ONE: &str = "/rooms/{room}/air/{id}";
const MEASURE: &str = "/rooms/{room}/air/{id}/measure";
const WAIVER: &str = "/rooms/{room}/air/{id}/waiver";
const MEASUREMENTS: &str = "/rooms/{room}/air-measurements";
const ONE_MEASUREMENT: &str = "/rooms/{room}/air-measurements/{id}";
const BACK: &str = "/rooms/{room}/air-measurements/{id}/take-back";

/// The routes.
#[must_use]
pub fn api() -> Vec<Route> {
    let mut routes = vec![
        Route::list(ALL, "The air of each place, the room itself first.", list),
        Route::one(ONE, "The air of one place.", one),
        Route::change(ONE, "Set what is known of a place's air.", change),
        Route::act(
            MEASURE,
            "Record a flow that was measured in a place.",
            measure,
        ),
        Route::act(
            WAIVER,
            "Let baths start in a place without measured exhaust, or no more.",
            waive,
        ),
        Route::list(
            MEASUREMENTS,
            "Flows that were measured, the latest written first.",
            measurements,
        ),
        Route::one(ONE_MEASUREMENT, "One flow that was measured.", measurement),
        Route::act(BACK, "Take a mistaken measurement back.", take_back),
    ];
    routes.extend(super::api_airings::api());
    routes
}

/// What is known of a place's exhaust.
#[derive(Clone, Copy, Debug, Serialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum ExhaustOut {
    /// Nobody measured it, or what was measured is nothing.
    Unmeasured,
    /// Measured, and nobody knows how much is wanted.
    Measured,
    /// Measured, and less than is wanted.
    Short,
    /// Measured, and no less than is wanted. That does not make the air good.
    AsWanted,
}

/// The air of a place.
#[derive(Debug, Serialize, ToSchema)]
pub struct AirOut {
    /// The space's id, or the room's.
    pub id: Uuid,
    /// The space; nothing for the room itself.
    pub space_id: Option<Uuid>,
    /// Its floor.
    pub floor_hundredths_mm2: Option<i64>,
    /// From floor to ceiling.
    pub height_tenths_mm: Option<i32>,
    /// Its volume, where both are known.
    pub volume_ul: Option<i64>,
    /// By how much clearing takes longer than where air mixes perfectly.
    pub mixing_tenths: i32,
    /// Whether a fan takes air out, as far as anybody said.
    pub has_fan: bool,
    /// By which rule exhaust is wanted; nothing where nobody said.
    pub rule: Option<ExhaustRule>,
    /// Where a figure of one's own comes from.
    pub basis: String,
    /// What is known of its exhaust, whether the fan runs now or not.
    pub exhaust: ExhaustOut,
    /// Whether the fan stands still now.
    pub is_off: bool,
    /// The exhaust that was measured last.
    pub measured_ul_per_s: Option<i64>,
    /// The exhaust that is wanted.
    pub wanted_ul_per_s: Option<i64>,
    /// What is missing.
    pub short_ul_per_s: Option<i64>,
    /// Air changes an hour by that exhaust.
    pub changes_per_hour_thousandths: Option<i64>,
    /// How many trays stand open there.
    pub open_trays: usize,
    /// How long until 90, 99 and 99.9 % have gone, after the trays are covered or
    /// emptied; nothing while any stands open, and where nobody can know.
    pub clearing_s: Vec<i64>,
    /// Who agreed that baths start without measured exhaust.
    pub agreed_by: Option<String>,
    /// The airing that is not over.
    pub airing_id: Option<Uuid>,
    /// How long it was aired within the hour.
    pub aired_s: i64,
    /// Air changes an hour on average of that hour, by airing alone: never exhaust.
    pub aired_changes_per_hour_thousandths: Option<i64>,
}

impl AirOut {
    fn of(now: &AirNow) -> Result<Self> {
        let air = now.air.as_ref();
        let (exhaust, short) = match now.judged()? {
            Exhaust::Unmeasured => (ExhaustOut::Unmeasured, None),
            Exhaust::Measured => (ExhaustOut::Measured, None),
            Exhaust::Short(missing) => (ExhaustOut::Short, Some(missing.get())),
            Exhaust::AsWanted => (ExhaustOut::AsWanted, None),
        };
        let clearing = Cleared::ALL.map(|cleared| now.clearing(cleared));
        let clearing = clearing.into_iter().collect::<Result<Vec<_>>>()?;
        Ok(Self {
            id: now.place.id,
            space_id: now.place.space_id,
            floor_hundredths_mm2: air.and_then(|air| air.floor_hundredths_mm2),
            height_tenths_mm: air.and_then(|air| air.height_tenths_mm),
            volume_ul: now.volume()?.map(i64::from),
            mixing_tenths: air.map_or(MIXING_TENTHS, |air| air.mixing_tenths),
            has_fan: now.has_fan(),
            rule: air.map(|air| air.rule),
            basis: air.map(|air| air.basis.clone()).unwrap_or_default(),
            exhaust,
            is_off: now.off.is_some(),
            measured_ul_per_s: now.measured().map(i64::from),
            wanted_ul_per_s: now.wanted()?.map(i64::from),
            short_ul_per_s: short,
            changes_per_hour_thousandths: now.changes()?.map(i64::from),
            open_trays: now.open_trays().count(),
            clearing_s: clearing.into_iter().flatten().map(i64::from).collect(),
            agreed_by: now.agreed.as_ref().map(|(by, _)| by.clone()),
            airing_id: now.aired_now.as_ref().map(|airing| airing.id),
            aired_s: now.aired.get(),
            aired_changes_per_hour_thousandths: now.average()?.map(i64::from),
        })
    }
}

async fn all(by: &By<SeeAir>) -> Result<Vec<AirNow>> {
    let (database, now) = (by.app.database(), by.app.clock().now());
    database
        .reading(by.permit.scope(), move |tx| Box::pin(air_now(tx, now)))
        .await
}

async fn list(by: By<SeeAir>, paging: Paging) -> Result<Page<AirOut>> {
    let all = all(&by).await?;
    let all = all.iter().map(AirOut::of).collect::<Result<Vec<_>>>()?;
    paging.cut(all, |air: &AirOut| air.id.to_string())
}

async fn one(by: By<SeeAir>, id: Uuid) -> Result<AirOut> {
    let all = all(&by).await?;
    let found = all.iter().find(|each| each.place.id == id);
    AirOut::of(found.ok_or(Error::NotFound)?)
}

/// What is known of a place's air.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct AirIn {
    /// Its floor; nothing where nobody measured it.
    #[schema(minimum = 50_000_000, maximum = 1_000_000_000_000_i64)]
    pub floor_hundredths_mm2: Option<i64>,
    /// From floor to ceiling; nothing where nobody measured it.
    #[schema(minimum = 10_000, maximum = 300_000)]
    pub height_tenths_mm: Option<i64>,
    /// By how much clearing takes longer than where air mixes perfectly.
    #[serde(default = "usual_mixing")]
    #[schema(minimum = 10, maximum = 100)]
    pub mixing_tenths: i64,
    /// Whether a fan takes air out.
    pub has_fan: bool,
    /// By which rule exhaust is wanted.
    pub rule: ExhaustRule,
    /// A figure of one's own for all of the place, with the rule `own` alone.
    #[schema(minimum = 1_000_000, maximum = 100_000_000_000_i64)]
    pub own_ul_per_s: Option<i64>,
    /// Where that comes from.
    #[serde(default)]
    #[schema(max_length = 200)]
    pub basis: String,
}

fn usual_mixing() -> i64 {
    MIXING_TENTHS.into()
}

impl Input for AirIn {
    const NAMES: &'static [(&'static str, &'static str)] = &[("own", "own_ul_per_s")];
}

impl AirIn {
    fn read(self, place_id: Uuid) -> Result<NewAir> {
        let mut problems = Problems::default();
        let floor = self.floor_hundredths_mm2.map(input::floor).transpose();
        let floor = problems.take("floor_hundredths_mm2", floor);
        let height = self.height_tenths_mm.map(input::height).transpose();
        let height = problems.take("height_tenths_mm", height);
        let mixing = problems.take("mixing_tenths", input::mixing(self.mixing_tenths));
        let own = self.own_ul_per_s.map(input::wanted).transpose();
        let own = problems.take("own_ul_per_s", own);
        let basis = problems.take("basis", note(&self.basis));
        match (floor, height, mixing, own, basis) {
            (Some(floor), Some(height), Some(mixing_tenths), Some(own), Some(basis)) => {
                let air = Air {
                    floor_hundredths_mm2: floor,
                    height_tenths_mm: height,
                    mixing_tenths,
                    rule: self.rule,
                    own_ul_per_s: own,
                    basis,
                    has_fan: self.has_fan,
                };
                Ok(NewAir { place_id, air })
            }
            _ => Err(Error::Invalid(problems)),
        }
    }
}

async fn change(by: Writing<KeepAir>, id: Uuid, air: AirIn) -> Result<Made> {
    let done = actions::set_air(&by.app, &by.permit, by.key, air.read(id)?).await?;
    Ok(by.made_at(&done, id, &format!("air/{id}")))
}

/// A flow that was measured.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct MeasurementIn {
    /// Which flow.
    pub of: FlowOf,
    /// How much; 0 where nothing moved.
    #[schema(minimum = 0, maximum = 100_000_000_000_i64)]
    pub ul_per_s: i64,
    /// On which day.
    #[schema(format = Date)]
    pub measured_on: String,
    /// Who measured, where that is not whoever sends it.
    #[serde(default)]
    #[schema(max_length = 200)]
    pub measured_by: String,
    /// With what, and where.
    #[schema(max_length = 200)]
    pub how: String,
}

impl Input for MeasurementIn {}

impl MeasurementIn {
    fn read(self, place_id: Uuid) -> Result<NewMeasurement> {
        let mut problems = Problems::default();
        let flow = problems.take("ul_per_s", input::measured(self.ul_per_s));
        let on = problems.take("measured_on", date(&self.measured_on));
        let by = problems.take("measured_by", note(&self.measured_by));
        let how = problems.take("how", needed_note(&self.how));
        match (flow, on, by, how) {
            (Some(ul_per_s), Some(measured_on), Some(measured_by), Some(how)) => {
                Ok(NewMeasurement {
                    place_id,
                    of: self.of,
                    ul_per_s,
                    measured_on,
                    measured_by,
                    how,
                })
            }
            _ => Err(Error::Invalid(problems)),
        }
    }
}

async fn measure(by: Writing<KeepAir>, id: Uuid, measured: MeasurementIn) -> Result<Made> {
    let done = actions::measure(&by.app, &by.permit, by.key, measured.read(id)?).await?;
    by.made(&done, "flow_measurement", "air-measurements")
}

/// Whether baths start without measured exhaust.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct WaiverIn {
    /// The competent person who agreed; nobody where exhaust is needed again.
    #[schema(max_length = 80)]
    pub agreed_by: Option<String>,
}

impl Input for WaiverIn {}

async fn waive(by: Writing<KeepAir>, id: Uuid, waiver: WaiverIn) -> Result<Made> {
    let agreed_by = waiver.agreed_by.as_deref().map(name).transpose();
    let new = NewWaiver {
        place_id: id,
        agreed_by: agreed_by.map_err(|problem| Error::field("agreed_by", problem))?,
    };
    let done = actions::set_waiver(&by.app, &by.permit, by.key, new).await?;
    Ok(by.made_at(&done, id, &format!("air/{id}")))
}

/// A flow that was measured, as it was kept.
#[derive(Debug, Serialize, ToSchema)]
pub struct MeasurementOut {
    /// Which.
    pub id: Uuid,
    /// The number of its entry.
    pub seq: i64,
    /// In which place.
    pub air_id: Uuid,
    /// Which flow.
    pub of: FlowOf,
    /// How much.
    pub ul_per_s: i64,
    /// On which day.
    #[schema(format = Date)]
    pub measured_on: String,
    /// Who measured, where that was not whoever wrote it down.
    pub measured_by: String,
    /// With what, and where.
    pub how: String,
    /// Who wrote it down.
    pub person_id: Option<Uuid>,
    /// The number of the entry that took it back.
    pub undone_by: Option<i64>,
}

impl From<Measurement> for MeasurementOut {
    fn from(measured: Measurement) -> Self {
        Self {
            id: measured.id,
            seq: measured.seq,
            air_id: measured.place_id,
            of: measured.of,
            ul_per_s: measured.ul_per_s,
            measured_on: measured.measured_on,
            measured_by: measured.measured_by,
            how: measured.how,
            person_id: measured.person_id,
            undone_by: measured.undone_by,
        }
    }
}

async fn measurements(by: By<SeeAir>, paging: Paging) -> Result<Page<MeasurementOut>> {
    let (asked, most) = (before(&paging)?, paging.limit + 1);
    let found = by.app.database().reading(by.permit.scope(), move |tx| {
        Box::pin(store::measurements(tx, asked, most))
    });
    let page = paging.first_of(found.await?, |measured| measured.seq.to_string());
    page.map(|measured| Ok(MeasurementOut::from(measured)))
}

/// Which part of a list is asked for.
pub(super) fn before(paging: &Paging) -> Result<Asked> {
    Ok(Asked {
        before: paging.after_seq()?,
        ..Asked::default()
    })
}

async fn measurement(by: By<SeeAir>, id: Uuid) -> Result<MeasurementOut> {
    let database = by.app.database();
    let found = database.reading(by.permit.scope(), move |tx| {
        Box::pin(store::measurement(tx, id))
    });
    found
        .await?
        .map(MeasurementOut::from)
        .ok_or(Error::NotFound)
}

/// Why a measurement is taken back.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct MeasurementBackIn {
    /// Why.
    #[schema(max_length = 300)]
    pub reason: String,
}

impl Input for MeasurementBackIn {}

async fn take_back(by: Writing<TakeBack>, id: Uuid, undo: MeasurementBackIn) -> Result<Made> {
    let reason = reason(&undo.reason).map_err(|no| Error::field("reason", no))?;
    let undo = UndoMeasurement {
        flow_measurement_id: id,
        reason,
    };
    let done = actions::take_back(&by.app, &by.permit, by.key, undo).await?;
    by.made(&done, "flow_measurement", "air-measurements")
}
