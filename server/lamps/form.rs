//! The forms of lamps and tests, read and filled in.

use uuid::Uuid;

use super::actions::{NewFogTest, NewLamp};
use super::input::{self, TEST_MONTHS};
use super::views::{FogTestForm, LampForm};
use super::{Hanging, Lamp, LampKind};
use crate::error::Result;
use crate::input::{name, note};
use crate::problem::{Problem, Problems};
use crate::rooms::Settings;
use crate::web::forms::read_id;
use crate::web::late;
use crate::web::minutes::read_minutes;
use crate::web::numbers::Numbers;

/// The names of fields that actions know otherwise.
pub(super) const NAMES: &[(&str, &str)] = &[("happened_at", "time")];

/// The form of a lamp that is to be added.
pub(super) fn of_new(key: String) -> LampForm {
    LampForm {
        key,
        kind: LampKind::Safelight.as_str().to_owned(),
        months: TEST_MONTHS.to_string(),
        ..LampForm::default()
    }
}

/// The form of a lamp as it is.
pub(super) fn of_lamp(lamp: &Lamp, key: String, settings: &Settings) -> LampForm {
    let hangs = &lamp.hangs;
    LampForm {
        key,
        name: lamp.name.clone(),
        kind: hangs.kind.as_str().to_owned(),
        light: hangs.light.clone(),
        distance: settings.lengths().value(hangs.distance_tenths_mm.into()),
        space: hangs.space_id.map(|id| id.to_string()).unwrap_or_default(),
        months: lamp.test_months.to_string(),
    }
}

/// A lamp as typed, read; `old` is the one it changes.
pub(super) fn read_lamp(
    form: &LampForm,
    old: Option<&Lamp>,
    settings: &Settings,
) -> Result<NewLamp, Problems> {
    let mut problems = Problems::default();
    let name = problems.take("name", name(&form.name));
    let kind = LampKind::parse(&form.kind).ok_or(Problem::NotAChoice);
    let kind = problems.take("kind", kind);
    let light = problems.take("light", note(&form.light));
    let distance = settings.lengths().read(&form.distance);
    let distance = distance.map_err(Problem::Number).and_then(input::distance);
    let distance = problems.take("distance", distance);
    let space = match form.space.as_str() {
        "" => Ok(None),
        text => read_id(text).map(Some),
    };
    let space = problems.take("space", space);
    let months = settings.numbers().read_count(&form.months);
    let months = months.map_err(Problem::Number).and_then(input::months);
    let months = problems.take("months", months);
    match (name, kind, light, distance, space, months) {
        (
            Some(name),
            Some(kind),
            Some(light),
            Some(distance_tenths_mm),
            Some(space_id),
            Some(test_months),
        ) => Ok(NewLamp {
            id: old.map(|old| old.id),
            name,
            hangs: Hanging {
                kind,
                light,
                distance_tenths_mm,
                space_id,
            },
            test_months,
            is_retired: old.is_some_and(|old| old.is_retired),
        }),
        _ => Err(problems),
    }
}

/// A test as typed, read.
pub(super) fn read_test(
    form: &FogTestForm,
    lamp_id: Uuid,
    settings: &Settings,
) -> Result<NewFogTest, Problems> {
    let numbers = settings.numbers();
    let mut problems = Problems::default();
    let class = problems.take("paper_class", read_id(&form.paper_class));
    let clean = problems.take("clean", read_step(&form.clean, numbers));
    let fogged = problems.take("fogged", read_step(&form.fogged, numbers));
    let at = problems.take("time", when(form, settings));
    match (class, clean, fogged, at) {
        (Some(paper_class_id), Some(clean_s), Some(fogged_s), Some(happened_at_us)) => {
            Ok(NewFogTest {
                lamp_id,
                paper_class_id,
                clean_s,
                fogged_s,
                happened_at_us,
            })
        }
        _ => Err(problems),
    }
}

/// A step that may not have been found.
fn read_step(typed: &str, numbers: Numbers) -> Result<Option<i64>, Problem> {
    match typed.trim() {
        "" => Ok(None),
        typed => read_minutes(typed, numbers).and_then(input::step).map(Some),
    }
}

/// When it was, in microseconds since 1970; nothing for just now.
fn when(form: &FogTestForm, settings: &Settings) -> Result<Option<i64>, Problem> {
    let zone = settings.time_zone().map_err(|_| Problem::NotATime)?;
    late::read(&zone, &form.when, &form.day, &form.time)
}
