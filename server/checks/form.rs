//! The forms of checks and results, read and filled in.

use uuid::Uuid;

use super::actions::{NewCheck, NewResult};
use super::input;
use super::views::{CheckForm, ResultForm};
use super::{Measure, RoomCheck};
use crate::error::Result;
use crate::input::{name, needed_note, needed_remark, remark};
use crate::problem::{Problem, Problems};
use crate::rooms::Settings;
use crate::web::forms::read_id;
use crate::web::late;
use crate::web::numbers::Numbers;

/// The names of fields that actions know otherwise.
pub(super) const NAMES: &[(&str, &str)] = &[("happened_at", "time")];

/// What the form of a result sends where all was well.
pub(super) const PASSED: &str = "passed";
/// What it sends where it was not.
pub(super) const FAILED: &str = "failed";

/// The form of a check as it is.
pub(super) fn of_check(check: &RoomCheck, key: String, numbers: Numbers) -> CheckForm {
    let measure = check.measure.as_ref();
    let end = |of: fn(&Measure) -> Option<i64>| {
        let end = measure.and_then(of);
        end.map_or_else(String::new, |end| numbers.decimal(end, 3))
    };
    CheckForm {
        key,
        name: check.name.clone(),
        how: check.how.clone(),
        days: check.every_days.to_string(),
        basis: check.basis.clone(),
        on_failure: check.on_failure.clone(),
        is_on_board: if check.is_on_board { "yes" } else { "" }.to_owned(),
        space: check.space_id.map(|id| id.to_string()).unwrap_or_default(),
        unit: measure.map_or_else(String::new, |measure| measure.unit.clone()),
        least: end(|measure| measure.least_thousandths),
        most: end(|measure| measure.most_thousandths),
    }
}

/// A check as typed, read; `old` is the one it changes.
pub(super) fn read_check(
    form: &CheckForm,
    old: Option<&RoomCheck>,
    numbers: Numbers,
) -> Result<NewCheck, Problems> {
    let mut problems = Problems::default();
    let days = numbers.read_count(&form.days).map_err(Problem::Number);
    let space = match form.space.as_str() {
        "" => Ok(None),
        text => read_id(text).map(Some),
    };
    let new = NewCheck {
        id: old.map(|old| old.id),
        name: problems.take("name", name(&form.name)).unwrap_or_default(),
        how: problems
            .take("how", needed_remark(&form.how))
            .unwrap_or_default(),
        every_days: problems
            .take("days", days.and_then(input::days))
            .unwrap_or_default(),
        basis: problems
            .take("basis", needed_note(&form.basis))
            .unwrap_or_default(),
        on_failure: problems
            .take("on_failure", needed_remark(&form.on_failure))
            .unwrap_or_default(),
        is_on_board: form.is_on_board == "yes",
        space_id: problems.take("space", space).flatten(),
        measure: read_measure(form, numbers, &mut problems),
        is_retired: old.is_some_and(|old| old.is_retired),
    };
    match problems.is_empty() {
        true => Ok(new),
        false => Err(problems),
    }
}

fn read_measure(form: &CheckForm, numbers: Numbers, problems: &mut Problems) -> Option<Measure> {
    let least = problems.take("least", read_figure(&form.least, numbers));
    let most = problems.take("most", read_figure(&form.most, numbers));
    match input::measure(&form.unit, least.flatten(), most.flatten()) {
        Ok(measure) => measure,
        Err(wrong) => {
            problems.append(wrong);
            None
        }
    }
}

/// A figure in the check's unit, where there is one.
fn read_figure(typed: &str, numbers: Numbers) -> Result<Option<i64>, Problem> {
    match typed.trim() {
        "" => Ok(None),
        typed => {
            let read = numbers.read_thousandths(typed).map_err(Problem::Number);
            read.and_then(input::figure).map(Some)
        }
    }
}

/// A result as typed, read.
pub(super) fn read_result(
    form: &ResultForm,
    room_check_id: Uuid,
    settings: &Settings,
) -> Result<NewResult, Problems> {
    let mut problems = Problems::default();
    let has_passed = match form.outcome.as_str() {
        PASSED => Ok(true),
        FAILED => Ok(false),
        _ => Err(Problem::NotAChoice),
    };
    let has_passed = problems.take("outcome", has_passed);
    let measured = read_figure(&form.measured, settings.numbers());
    let measured = problems.take("measured", measured);
    let remark = problems.take("remark", remark(&form.remark));
    let at = problems.take("time", when(form, settings));
    match (has_passed, measured, remark, at) {
        (Some(has_passed), Some(measured_thousandths), Some(remark), Some(happened_at_us)) => {
            Ok(NewResult {
                room_check_id,
                has_passed,
                measured_thousandths,
                remark,
                happened_at_us,
            })
        }
        _ => Err(problems),
    }
}

/// When it was, in microseconds since 1970; nothing for just now.
fn when(form: &ResultForm, settings: &Settings) -> Result<Option<i64>, Problem> {
    let zone = settings.time_zone().map_err(|_| Problem::NotATime)?;
    late::read(&zone, &form.when, &form.day, &form.time)
}
