//! Lines and trays as typed, read and written.

use uuid::Uuid;

use super::actions::{NewLine, NewTray};
use super::views::{LineForm, TrayForm};
use super::{Line, Tray, input};
use crate::input::name;
use crate::problem::{Problem, Problems};
use crate::web::lengths::Lengths;

/// What usually covers a print, in tenths of a millimetre: common practice, no source.
const USUAL_COVER_TENTHS_MM: i64 = 100;

/// A line as typed, read; `old` is the one it changes.
pub(super) fn read_line(form: &LineForm, old: Option<&Line>) -> Result<NewLine, Problems> {
    match name(&form.name) {
        Ok(name) => Ok(NewLine {
            id: old.map(|old| old.id),
            name,
            position: None,
            space_id: old.and_then(|old| old.space_id),
            is_retired: old.is_some_and(|old| old.is_retired),
        }),
        Err(problem) => Err(Problems::one("name", problem)),
    }
}

/// A line as it is, retired or brought back.
pub(super) fn line_retired(line: &Line, is_retired: bool) -> NewLine {
    NewLine {
        id: Some(line.id),
        name: line.name.clone(),
        position: None,
        space_id: line.space_id,
        is_retired,
    }
}

/// An empty form.
pub(super) fn new_tray(key: String, lengths: Lengths) -> TrayForm {
    TrayForm {
        key,
        least_depth: lengths.value(USUAL_COVER_TENTHS_MM),
        ..TrayForm::default()
    }
}

/// A tray as its form shows it.
pub(super) fn of_tray(tray: &Tray, key: String, lengths: Lengths) -> TrayForm {
    TrayForm {
        key,
        name: tray.name.clone(),
        inside_long: lengths.value(tray.inside_long_tenths_mm.into()),
        inside_short: lengths.value(tray.inside_short_tenths_mm.into()),
        inside_depth: lengths.value(tray.inside_depth_tenths_mm.into()),
        least_depth: lengths.value(tray.least_depth_tenths_mm.into()),
    }
}

/// A tray as typed, read; `old` is the one it changes.
pub(super) fn read_tray(
    form: &TrayForm,
    line_id: Uuid,
    old: Option<&Tray>,
    lengths: Lengths,
) -> Result<NewTray, Problems> {
    let read = |typed: &str| lengths.read(typed).map_err(Problem::Number);
    let mut problems = Problems::default();
    let name = problems.take("name", name(&form.name));
    let long = read(&form.inside_long).and_then(input::side);
    let long = problems.take("inside_long", long);
    let short = read(&form.inside_short).and_then(input::side);
    let short = problems.take("inside_short", short);
    let depth = read(&form.inside_depth).and_then(input::depth);
    let depth = problems.take("inside_depth", depth);
    let least = read(&form.least_depth).and_then(input::least_depth);
    let least = problems.take("least_depth", least);
    if let (Some(long), Some(short)) = (long, short) {
        problems.take("inside_long", input::in_order(long, short));
    }
    if let (Some(least), Some(depth)) = (least, depth) {
        problems.take("least_depth", input::below_the_rim(least, depth));
    }
    match (name, long, short, depth, least) {
        (Some(name), Some(long), Some(short), Some(depth), Some(least)) if problems.is_empty() => {
            Ok(NewTray {
                id: old.map(|old| old.id),
                line_id,
                name,
                position: None,
                step: None,
                inside_long_tenths_mm: long,
                inside_short_tenths_mm: short,
                inside_depth_tenths_mm: depth,
                least_depth_tenths_mm: least,
                is_retired: old.is_some_and(|old| old.is_retired),
            })
        }
        _ => Err(problems),
    }
}

/// A tray as it is, retired or brought back.
pub(super) fn tray_retired(tray: &Tray, is_retired: bool) -> NewTray {
    NewTray {
        id: Some(tray.id),
        line_id: tray.line_id,
        name: tray.name.clone(),
        position: None,
        step: None,
        inside_long_tenths_mm: tray.inside_long_tenths_mm,
        inside_short_tenths_mm: tray.inside_short_tenths_mm,
        inside_depth_tenths_mm: tray.inside_depth_tenths_mm,
        least_depth_tenths_mm: tray.least_depth_tenths_mm,
        is_retired,
    }
}
