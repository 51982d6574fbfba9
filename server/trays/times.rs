//! How long to develop in this tray now.

use super::pages::Ground;
use super::views::Development;
use crate::darkroom::quantities::{Seconds, TenthsCelsius, Thousandths};
use crate::darkroom::time_temperature::{
    Coefficient, EmergenceAdvice, TimeError, Timed, WorkingRange, emergence_advice, factor,
    factorial_time, time_at,
};
use crate::error::Result;
use crate::mixes::readings::Kept;
use crate::mixes::{Figures, Mix, ReadingKind};
use crate::problem::{Problem, Problems};
use crate::products::Kind;
use crate::web::forms::in_words;
use crate::web::messages::trays as words;

/// An emergence time, and the fresh one it is held against.
#[derive(Clone, Debug)]
pub(super) struct Emergence {
    pub(super) now: Kept,
    pub(super) fresh: Kept,
}

/// The last emergence time of a mix that compares with a fresh one.
pub(super) fn last_compared(findings: &[Kept]) -> Option<&Kept> {
    findings.iter().find(|kept| {
        kept.kind == ReadingKind::Emergence
            && kept.ratio_thousandths.is_some()
            && kept.undone_by.is_none()
    })
}

/// The two points of a product's sheet, and its working range: its own, or what
/// lies between the points.
struct Sheet {
    points: [Timed; 2],
    range: WorkingRange,
}

impl Sheet {
    fn of(figures: Option<&Figures>) -> Option<Self> {
        let figures = figures?;
        let [one, other] = figures.time_points.as_slice() else {
            return None;
        };
        let tenths = |value: i32| TenthsCelsius::new(value.into()).ok();
        let timed = |seconds: i64, at: i32| {
            Some(Timed {
                time: Seconds::new(seconds).ok()?,
                temperature: tenths(at)?,
            })
        };
        let points = [
            timed(one.seconds, one.tenths_celsius)?,
            timed(other.seconds, other.tenths_celsius)?,
        ];
        let [one, other] = points.map(|point| point.temperature);
        let coldest = figures.coldest_tenths_celsius.and_then(tenths);
        let warmest = figures.warmest_tenths_celsius.and_then(tenths);
        Some(Self {
            points,
            range: WorkingRange {
                lowest: coldest.unwrap_or(one.min(other)),
                highest: warmest.unwrap_or(one.max(other)),
            },
        })
    }

    fn time_at(&self, temperature: TenthsCelsius) -> Result<Seconds, TimeError> {
        let [one, other] = self.points;
        let coefficient = Coefficient::from_points(one, other)?;
        time_at(one, coefficient, temperature, self.range)
    }
}

/// How long to develop: at the temperature typed, else at the last one taken.
pub(super) fn development(ground: &Ground, mix: &Mix, typed: &str) -> Option<Development> {
    let kind = ground.product.as_ref().map(|product| product.kind);
    if kind != Some(Kind::Developer) {
        return None;
    }
    let numbers = ground.settings.numbers();
    let mut problems = Problems::default();
    let read = match typed.trim() {
        "" => None,
        typed => {
            let read = numbers.read_celsius(typed).map_err(Problem::Number);
            problems.take("celsius", read)
        }
    };
    let taken = last_temperature(&ground.findings);
    let tenths = match problems.is_empty() {
        true => read.or(taken),
        false => None,
    };
    let temperature = tenths.and_then(|tenths| TenthsCelsius::new(tenths).ok());
    let sheet = Sheet::of(mix.figures.as_ref());
    let (time, said) = at_temperature(sheet.as_ref(), temperature, ground);
    Some(Development {
        typed: typed.to_owned(),
        problems: in_words(&problems, numbers),
        time,
        said,
        by_factor: by_factor(ground, sheet.as_ref()),
    })
}

fn at_temperature(
    sheet: Option<&Sheet>,
    temperature: Option<TenthsCelsius>,
    ground: &Ground,
) -> (Option<String>, String) {
    let numbers = ground.settings.numbers();
    let Some(sheet) = sheet else {
        return (None, words::NO_POINTS.to_owned());
    };
    let Some(temperature) = temperature else {
        return (None, words::NO_TEMPERATURE.to_owned());
    };
    let celsius = |at: TenthsCelsius| numbers.celsius(at.get().into());
    let at = celsius(temperature);
    match sheet.time_at(temperature) {
        Ok(time) => {
            let points = sheet.points.map(|point| {
                let time = words::time(point.time.get());
                format!("{time} at {}", celsius(point.temperature))
            });
            let time = words::time_at(&words::time(time.get()), &at);
            (Some(time), words::from_points(&points))
        }
        Err(TimeError::OutsideRange) => {
            let (lowest, highest) = (celsius(sheet.range.lowest), celsius(sheet.range.highest));
            (None, words::outside(&at, &lowest, &highest))
        }
        Err(_) => (None, words::NO_POINTS.to_owned()),
    }
}

fn last_temperature(findings: &[Kept]) -> Option<i64> {
    let is_it = |kept: &&Kept| kept.kind == ReadingKind::Temperature && kept.undone_by.is_none();
    findings.iter().find(is_it)?.value
}

/// The time by the factor of the fresh bath, once the image takes 1.25 times as
/// long to show.
fn by_factor(ground: &Ground, sheet: Option<&Sheet>) -> Option<String> {
    let Emergence { now, fresh } = ground.emergence.as_ref()?;
    let ratio = Thousandths::new(now.ratio_thousandths?).ok()?;
    if emergence_advice(ratio) != EmergenceAdvice::ByFactor {
        return None;
    }
    let numbers = ground.settings.numbers();
    let times = numbers.rounded(ratio.get(), 3, 2);
    let sum = sheet.and_then(|sheet| {
        let at = TenthsCelsius::new(fresh.tenths_celsius?.into()).ok()?;
        let factor = factor(sheet.time_at(at).ok()?, Seconds::new(fresh.value?).ok()?);
        let factor = factor.ok()?;
        let shown = Seconds::new(now.value?).ok()?;
        let time = factorial_time(shown, factor).ok()?;
        Some((
            numbers.rounded(factor.get(), 3, 1),
            words::time(shown.get()),
            words::time(time.get()),
        ))
    });
    Some(match sum {
        Some((factor, shown, time)) => words::by_factor(&times, &shown, &factor, &time),
        None => words::by_factor_without_time(&times),
    })
}
