//! After the fixer: the wash all prints of a tray share, and the notes a failed
//! residual test puts in doubt; how much a tray lacks to its least depth. Common
//! practice, no source; depth by geometry.

use super::quantities::{Area, Microlitres, Moment, Seconds, TenthsMm};

/// When a wash ends: the last print that joined restarts it for all. None where
/// nothing is in it. Source: a print just out of the fixer brings thiosulfate to
/// the others.
#[must_use]
pub fn wash_ends(joined: &[Moment], wash: Seconds) -> Option<Moment> {
    joined.iter().max().map(|last| last.after(wash))
}

/// Which of these times of notes a failed residual test puts in doubt: those
/// after the last passed test (all, where there was none) up to the failed one.
#[must_use]
pub fn notes_in_doubt(
    notes: &[Moment],
    last_passed: Option<Moment>,
    failed: Moment,
) -> Vec<Moment> {
    let after_passed = |note: &Moment| last_passed.is_none_or(|passed| *note > passed);
    notes
        .iter()
        .copied()
        .filter(|note| *note <= failed && after_passed(note))
        .collect()
}

/// How much solution a tray lacks to stand at its least depth, in microlitres,
/// rounded up so that adding it is enough; none where it stands there or deeper.
#[must_use]
pub fn lacks(volume: Microlitres, tray: Area, least_depth: TenthsMm) -> Option<Microlitres> {
    // 1/100 mm² · 1/10 mm is a thousandth of a microlitre.
    let needed = (i128::from(tray.get()) * i128::from(least_depth.get()) + 999) / 1_000;
    let missing = needed - i128::from(volume.get());
    let missing = i64::try_from(missing).ok().filter(|missing| *missing > 0)?;
    Microlitres::new(missing).ok()
}
