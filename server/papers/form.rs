//! Sizes and classes as typed, read and written.

use uuid::Uuid;

use super::actions::{NewPaperClass, NewSheetSize};
use super::views::{ClassForm, PapersForm};
use super::{PaperClass, SheetSize, SilverFigures, input};
use crate::input::{SET_BY_STEWARD, name, note};
use crate::problem::{Problem, Problems};
use crate::web::desk::renamed;
use crate::web::lengths::Lengths;
use crate::web::numbers::Numbers;

/// A size as typed, read.
pub(super) fn read_size(
    form: &PapersForm,
    id: Option<Uuid>,
    lengths: Lengths,
) -> Result<NewSheetSize, Problems> {
    let side = |typed: &str| {
        let read = lengths.read(typed).map_err(Problem::Number);
        read.and_then(input::side)
    };
    let mut problems = Problems::default();
    let name = problems.take("size_name", name(&form.size_name));
    let long = problems.take("long", side(&form.long));
    let short = problems.take("short", side(&form.short));
    if let (Some(long), Some(short)) = (long, short) {
        problems.take("long", input::in_order(long, short));
    }
    match (name, long, short) {
        (Some(name), Some(long_tenths_mm), Some(short_tenths_mm)) if problems.is_empty() => {
            Ok(NewSheetSize {
                id,
                name,
                long_tenths_mm,
                short_tenths_mm,
                is_retired: false,
            })
        }
        _ => Err(problems),
    }
}

/// What the fields of a class's form are called, beside the figures they hold.
pub(super) const CLASS_FIELDS: &[(&str, &str)] = &[
    ("name", "class_name"),
    ("least_mg_per_m2", "silver_least"),
    ("usual_mg_per_m2", "silver_usual"),
    ("most_mg_per_m2", "silver_most"),
    ("least_kept_ppb", "kept_least"),
    ("usual_kept_ppb", "kept_usual"),
    ("most_kept_ppb", "kept_most"),
];

/// A class as typed, read.
pub(super) fn read_class(
    form: &ClassForm,
    id: Option<Uuid>,
    old: Option<&PaperClass>,
    numbers: Numbers,
) -> Result<NewPaperClass, Problems> {
    let mut problems = Problems::default();
    let name = problems.take("class_name", name(&form.class_name));
    let silver = read_silver(form, old, numbers, &mut problems);
    let carried = match form.carry_over.trim() {
        "" => Ok(None),
        typed => {
            let read = numbers.read_millilitres(typed).map_err(Problem::Number);
            read.and_then(input::carry_over).map(Some)
        }
    };
    let carried = problems.take("carry_over", carried);
    match (name, carried) {
        (Some(name), Some(carry_over_ul_per_m2)) if problems.is_empty() => Ok(NewPaperClass {
            id,
            name,
            is_retired: old.is_some_and(|old| old.is_retired),
            silver,
            carry_over_ul_per_m2,
        }),
        _ => Err(problems),
    }
}

/// All of its figures, or none where all are empty.
fn read_silver(
    form: &ClassForm,
    old: Option<&PaperClass>,
    numbers: Numbers,
    problems: &mut Problems,
) -> Option<SilverFigures> {
    let typed = [
        ("silver_least", &form.silver_least),
        ("silver_usual", &form.silver_usual),
        ("silver_most", &form.silver_most),
        ("kept_least", &form.kept_least),
        ("kept_usual", &form.kept_usual),
        ("kept_most", &form.kept_most),
    ];
    let basis = problems.take("silver_basis", note(&form.silver_basis));
    if typed.iter().all(|(_, typed)| typed.trim().is_empty()) {
        return None;
    }
    let mut read = typed.into_iter().map(|(field, typed)| {
        let figure = match field.starts_with("kept") {
            true => numbers.read_percent(typed),
            // Thousandths of a gram are milligrams.
            false => numbers.read_thousandths(typed),
        };
        problems.take(field, figure.map_err(Problem::Number))
    });
    let mut next = || read.next().flatten();
    let six = [next(), next(), next(), next(), next(), next()];
    let [
        Some(least),
        Some(usual),
        Some(most),
        Some(least_kept),
        Some(usual_kept),
        Some(most_kept),
    ] = six
    else {
        return None;
    };
    let silver = SilverFigures {
        least_mg_per_m2: least,
        usual_mg_per_m2: usual,
        most_mg_per_m2: most,
        least_kept_ppb: least_kept,
        usual_kept_ppb: usual_kept,
        most_kept_ppb: most_kept,
        basis: basis.unwrap_or_default(),
    };
    problems.append(renamed(&input::silver(&silver), CLASS_FIELDS));
    Some(with_basis(silver, old))
}

/// Where nobody says where they come from, a steward set them.
fn with_basis(silver: SilverFigures, old: Option<&PaperClass>) -> SilverFigures {
    let before = old.and_then(|old| old.silver.clone());
    let is_said_anew = before.is_none_or(|before| before.basis != silver.basis || before == silver);
    match silver.basis.is_empty() || !is_said_anew {
        true => SilverFigures {
            basis: SET_BY_STEWARD.to_owned(),
            ..silver
        },
        false => silver,
    }
}

/// A size as its form shows it.
pub(super) fn of_size(size: &SheetSize, key: String, lengths: Lengths) -> PapersForm {
    PapersForm {
        key,
        size_name: size.name.clone(),
        long: lengths.value(size.long_tenths_mm.into()),
        short: lengths.value(size.short_tenths_mm.into()),
        ..PapersForm::default()
    }
}

/// A class as its form shows it.
pub(super) fn of_class(class: &PaperClass, key: String, numbers: Numbers) -> ClassForm {
    let form = ClassForm {
        key,
        class_name: class.name.clone(),
        carry_over: class
            .carry_over_ul_per_m2
            .map_or_else(String::new, |carried| numbers.decimal(carried, 3)),
        ..ClassForm::default()
    };
    let Some(silver) = &class.silver else {
        return form;
    };
    ClassForm {
        silver_least: numbers.decimal(silver.least_mg_per_m2, 3),
        silver_usual: numbers.decimal(silver.usual_mg_per_m2, 3),
        silver_most: numbers.decimal(silver.most_mg_per_m2, 3),
        kept_least: numbers.decimal(silver.least_kept_ppb, 7),
        kept_usual: numbers.decimal(silver.usual_kept_ppb, 7),
        kept_most: numbers.decimal(silver.most_kept_ppb, 7),
        silver_basis: silver.basis.clone(),
        ..form
    }
}

/// A size as it is, retired or brought back.
pub(super) fn size_retired(size: &SheetSize, is_retired: bool) -> NewSheetSize {
    NewSheetSize {
        id: Some(size.id),
        name: size.name.clone(),
        long_tenths_mm: size.long_tenths_mm,
        short_tenths_mm: size.short_tenths_mm,
        is_retired,
    }
}

/// A class as it is, retired or brought back.
pub(super) fn class_retired(class: &PaperClass, is_retired: bool) -> NewPaperClass {
    NewPaperClass {
        id: Some(class.id),
        name: class.name.clone(),
        is_retired,
        silver: class.silver.clone(),
        carry_over_ul_per_m2: class.carry_over_ul_per_m2,
    }
}
