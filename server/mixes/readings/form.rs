//! The forms of readings, read and filled in.

use uuid::Uuid;

use super::ground::Ground;
use super::input::{self, Said, figure_of};
use super::views::{CheckForm, ExtendForm, Figure, FlagForm, KindLink, TakeBackForm};
use super::{NewExtension, NewReading, Taken, UndoReading};
use crate::error::Result;
use crate::mixes::ReadingKind;
use crate::problem::{Problem, Problems};
use crate::products::parse_group;
use crate::rooms::Settings;
use crate::web::fields::Choice;
use crate::web::late;
use crate::web::messages::{readings, testing as words};
use crate::web::numbers::Numbers;

/// The names of fields that actions know otherwise.
pub(super) const NAMES: &[(&str, &str)] = &[("happened_at", "time")];

/// A check as typed, read.
pub(super) fn read_check(form: &CheckForm, ground: &Ground) -> Result<NewReading, Problems> {
    let numbers = ground.settings.numbers();
    let mut problems = Problems::default();
    let kind = ReadingKind::parse(&form.kind).ok_or(Problem::NotAChoice);
    let kind = problems.take("kind", kind);
    let taken = kind.and_then(|kind| input::taken(said(kind, form, numbers), &mut problems));
    let remark = problems.take("remark", input::remark(&form.remark));
    let at = problems.take("time", when(form, &ground.settings));
    match (taken, remark, at) {
        (Some(taken), Some(remark), Some(happened_at_us)) if problems.is_empty() => {
            Ok(NewReading {
                mix_id: ground.mix.id,
                taken,
                remark,
                happened_at_us,
            })
        }
        _ => Err(problems),
    }
}

fn said(kind: ReadingKind, form: &CheckForm, numbers: Numbers) -> Said {
    let celsius = |typed: &str| numbers.read_celsius(typed);
    let value = match kind {
        ReadingKind::Temperature => celsius(&form.temperature),
        ReadingKind::Ph => numbers.read_thousandths(&form.ph),
        ReadingKind::Silver => numbers.read_count(&form.silver),
        _ => numbers.read_count(&form.seconds),
    };
    let passed = match form.outcome.as_str() {
        "good" => Some(true),
        "bad" => Some(false),
        _ => None,
    };
    Said {
        kind,
        passed,
        value: value.map_err(Problem::Number),
        bath: celsius(&form.bath_temperature).map_err(Problem::Number),
        sample: form.sample.clone(),
        is_fresh: form.fresh == "yes",
    }
}

/// When it was, in microseconds since 1970; nothing for just now.
fn when(form: &CheckForm, settings: &Settings) -> Result<Option<i64>, Problem> {
    let zone = settings.time_zone().map_err(|_| Problem::NotATime)?;
    late::read(&zone, &form.when, &form.day, &form.time)
}

/// Every check that fits the bath.
pub(super) fn kinds(ground: &Ground) -> Vec<KindLink> {
    let kinds = ground.kinds.iter();
    kinds
        .map(|kind| KindLink {
            value: kind.as_str().to_owned(),
            label: readings::kind(*kind).to_owned(),
            is_chosen: *kind == ground.kind,
        })
        .collect()
}

/// Good and not good, in the words of that check.
pub(super) fn outcomes(kind: ReadingKind) -> Vec<Choice> {
    if figure_of(kind).is_some() {
        return Vec::new();
    }
    let (good, bad) = words::outcomes(kind);
    vec![Choice::new("good", good), Choice::new("bad", bad)]
}

/// The figure a check asks for.
pub(super) fn figure(kind: ReadingKind, form: &CheckForm) -> Option<Figure> {
    let name = figure_of(kind)?;
    let value = match name {
        "temperature" => &form.temperature,
        "ph" => &form.ph,
        "silver" => &form.silver,
        _ => &form.seconds,
    };
    let (label, unit) = words::figure(kind);
    Some(Figure {
        name,
        label,
        unit,
        value: value.clone(),
    })
}

/// What may have come into a mix.
pub(crate) fn contaminants() -> Result<Vec<Choice>> {
    input::contaminants()
        .map(|group| {
            let (label, hint) = words::contaminant(group);
            let text = crate::products::group_text(group)?;
            Ok(Choice::new(text, label).explained(hint))
        })
        .collect()
}

/// A report of contamination as typed, read.
pub(crate) fn read_flag(form: &FlagForm, mix_id: Uuid) -> Result<NewReading, Problems> {
    let mut problems = Problems::default();
    let groups: Result<Vec<_>> = form.groups.iter().map(|text| parse_group(text)).collect();
    let groups = groups.map_err(|_| Problem::NotAChoice);
    let groups = groups.and_then(|groups| input::came_in(&groups, form.unknown == "yes"));
    let groups = problems.take("groups", groups);
    let remark = problems.take("remark", input::remark(&form.remark));
    match (groups, remark) {
        (Some(groups), Some(remark)) => Ok(NewReading {
            mix_id,
            taken: Taken::Contamination(groups),
            remark,
            happened_at_us: None,
        }),
        _ => Err(problems),
    }
}

/// An extension as typed, read.
pub(super) fn read_extension(
    form: &ExtendForm,
    mix_id: Uuid,
    numbers: Numbers,
) -> Result<NewExtension, Problems> {
    let mut problems = Problems::default();
    let hours = numbers.read_thousandths(&form.hours);
    let hours = problems.take("hours", hours.map_err(Problem::Number));
    let reason = problems.take("reason", input::reason(&form.reason));
    match (hours, reason) {
        (Some(hours), Some(reason)) => Ok(NewExtension {
            mix_id,
            minutes: hours.saturating_mul(60) / 1_000,
            reason,
        }),
        _ => Err(problems),
    }
}

/// The reason for taking back as typed, read.
pub(super) fn read_take_back(
    form: &TakeBackForm,
    reading_id: Uuid,
) -> Result<UndoReading, Problems> {
    match input::reason(&form.reason) {
        Ok(reason) => Ok(UndoReading { reading_id, reason }),
        Err(problem) => Err(Problems::one("reason", problem)),
    }
}
