//! The forms of room air, read and filled in.

use uuid::Uuid;

use super::actions::{AiringOver, NewAir, NewAiring, NewMeasurement};
use super::input::{self, MIXING_TENTHS};
use super::views::{AirForm, AiringForm, MeasureForm};
use super::{Air, ExhaustRule, FlowOf};
use crate::input::{date, needed_note, note};
use crate::problem::{Problem, Problems};
use crate::rooms::Settings;
use crate::web::late;
use crate::web::minutes::read_minutes;
use crate::web::numbers::NumberProblem;

/// The names of fields that actions know otherwise.
pub(super) const NAMES: &[(&str, &str)] = &[("happened_at", "time"), ("seconds", "minutes")];

const YES: &str = "yes";
const NO: &str = "no";

/// The form of a place as it is, or of one of which nothing is known.
pub(super) fn of_air(air: Option<&Air>, key: String, settings: &Settings) -> AirForm {
    let (numbers, units) = (settings.numbers(), settings.air_units());
    let mixing = air.map_or(MIXING_TENTHS, |air| air.mixing_tenths);
    let rule = air.map_or(ExhaustRule::Imc2018, |air| air.rule);
    let has_fan = air.is_none_or(|air| air.has_fan);
    let floor = air.and_then(|air| air.floor_hundredths_mm2);
    let height = air.and_then(|air| air.height_tenths_mm);
    let own = air.and_then(|air| air.own_ul_per_s);
    AirForm {
        key,
        floor: floor.map_or_else(String::new, |floor| units.area_value(floor)),
        height: height.map_or_else(String::new, |height| units.height_value(height.into())),
        mixing: numbers.decimal(mixing.into(), 1),
        fan: if has_fan { YES } else { NO }.to_owned(),
        rule: rule.as_str().to_owned(),
        own: own.map_or_else(String::new, |own| units.flow_value(own)),
        basis: air.map(|air| air.basis.clone()).unwrap_or_default(),
    }
}

/// A figure that may stay unknown.
fn known<T>(
    typed: &str,
    read: impl FnOnce(&str) -> Result<i64, NumberProblem>,
    hold: impl FnOnce(i64) -> Result<T, Problem>,
) -> Result<Option<T>, Problem> {
    match typed.trim() {
        "" => Ok(None),
        typed => read(typed)
            .map_err(Problem::Number)
            .and_then(hold)
            .map(Some),
    }
}

/// What is known of a place as typed, read.
pub(super) fn read_air(
    form: &AirForm,
    place_id: Uuid,
    settings: &Settings,
) -> Result<NewAir, Problems> {
    let units = settings.air_units();
    let mut problems = Problems::default();
    let floor = known(&form.floor, |typed| units.read_area(typed), input::floor);
    let floor = problems.take("floor", floor);
    let height = known(
        &form.height,
        |typed| units.read_height(typed),
        input::height,
    );
    let height = problems.take("height", height);
    let mixing = settings.numbers().read_tenths(&form.mixing);
    let mixing = mixing.map_err(Problem::Number).and_then(input::mixing);
    let mixing = problems.take("mixing", mixing);
    let fan = match form.fan.as_str() {
        YES => Ok(true),
        NO => Ok(false),
        _ => Err(Problem::NotAChoice),
    };
    let fan = problems.take("fan", fan);
    let rule = ExhaustRule::parse(&form.rule).ok_or(Problem::NotAChoice);
    let rule = problems.take("rule", rule);
    let own = known(&form.own, |typed| units.read_flow(typed), input::wanted);
    let own = problems.take("own", own);
    let basis = problems.take("basis", note(&form.basis));
    match (floor, height, mixing, fan, rule, own, basis) {
        (
            Some(floor_hundredths_mm2),
            Some(height_tenths_mm),
            Some(mixing_tenths),
            Some(has_fan),
            Some(rule),
            Some(own_ul_per_s),
            Some(basis),
        ) => Ok(NewAir {
            place_id,
            air: Air {
                floor_hundredths_mm2,
                height_tenths_mm,
                mixing_tenths,
                rule,
                own_ul_per_s,
                basis,
                has_fan,
            },
        }),
        _ => Err(problems),
    }
}

/// A measurement as typed, read.
pub(super) fn read_measurement(
    form: &MeasureForm,
    place_id: Uuid,
    settings: &Settings,
) -> Result<NewMeasurement, Problems> {
    let mut problems = Problems::default();
    let of = problems.take("of", FlowOf::parse(&form.of).ok_or(Problem::NotAChoice));
    let flow = settings.air_units().read_flow(&form.flow);
    let flow = flow.map_err(Problem::Number).and_then(input::measured);
    let flow = problems.take("flow", flow);
    let on = problems.take("measured_on", date(&form.measured_on));
    let by = problems.take("measured_by", note(&form.measured_by));
    let how = problems.take("how", needed_note(&form.how));
    match (of, flow, on, by, how) {
        (Some(of), Some(ul_per_s), Some(measured_on), Some(measured_by), Some(how)) => {
            Ok(NewMeasurement {
                place_id,
                of,
                ul_per_s,
                measured_on,
                measured_by,
                how,
            })
        }
        _ => Err(problems),
    }
}

/// When it was, in microseconds since 1970; nothing for just now.
fn when(form: &AiringForm, settings: &Settings) -> Result<Option<i64>, Problem> {
    let zone = settings.time_zone().map_err(|_| Problem::NotATime)?;
    late::read(&zone, &form.when, &form.day, &form.time)
}

/// An airing that is over as typed, read.
pub(super) fn read_aired(
    form: &AiringForm,
    aired_place_id: Uuid,
    settings: &Settings,
) -> Result<NewAiring, Problems> {
    let mut problems = Problems::default();
    let seconds = read_minutes(&form.minutes, settings.numbers()).and_then(input::aired);
    let seconds = problems.take("minutes", seconds);
    let at = problems.take("time", when(form, settings));
    match (seconds, at) {
        (Some(seconds), Some(happened_at_us)) => Ok(NewAiring {
            aired_place_id,
            seconds: Some(seconds),
            happened_at_us,
        }),
        _ => Err(problems),
    }
}

/// The end of an airing as typed, read.
pub(super) fn read_end(
    form: &AiringForm,
    ended_airing_id: Uuid,
    settings: &Settings,
) -> Result<AiringOver, Problems> {
    match when(form, settings) {
        Ok(happened_at_us) => Ok(AiringOver {
            ended_airing_id,
            happened_at_us,
        }),
        Err(problem) => Err(Problems::one("time", problem)),
    }
}
