//! Sizes and classes as typed, read and written.

use uuid::Uuid;

use super::actions::{NewPaperClass, NewSheetSize};
use super::views::PapersForm;
use super::{PaperClass, SheetSize, input};
use crate::input::name;
use crate::problem::{Problem, Problems};
use crate::web::lengths::Lengths;

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

/// A class as typed, read.
pub(super) fn read_class(form: &PapersForm, id: Option<Uuid>) -> Result<NewPaperClass, Problems> {
    match name(&form.class_name) {
        Ok(name) => Ok(NewPaperClass {
            id,
            name,
            is_retired: false,
            silver: None,
            carry_over_ul_per_m2: None,
        }),
        Err(problem) => Err(Problems::one("class_name", problem)),
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
pub(super) fn of_class(class: &PaperClass, key: String) -> PapersForm {
    PapersForm {
        key,
        class_name: class.name.clone(),
        ..PapersForm::default()
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
