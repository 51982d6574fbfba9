//! Checks and their results as pages show them.

use super::standing::CheckNow;
use super::store::CheckResult;
use super::views::{CheckShown, ResultRow};
use crate::web::dates::Zone;
use crate::web::messages::checks as words;
use crate::web::numbers::Numbers;

/// A check with what was found last and when it is due.
pub(super) fn check_shown(now: &CheckNow, zone: &Zone, numbers: Numbers) -> CheckShown {
    let check = &now.check;
    let last = now.last.as_ref().map_or_else(
        || words::NEVER.to_owned(),
        |last| {
            let day = zone.day(last.happened_at).words;
            words::last(&day, &words::found(last, numbers))
        },
    );
    CheckShown {
        id: check.id.to_string(),
        name: check.name.clone(),
        space: now.space.clone(),
        loud: words::loud(now.has_failed(), now.due),
        due: words::due(now.due, &now.due_on),
        last,
        to_do: now.has_failed().then(|| check.on_failure.clone()),
        every: words::every(check.every_days),
    }
}

/// A result in its check's history.
pub(super) fn result_row(result: &CheckResult, zone: &Zone, numbers: Numbers) -> ResultRow {
    ResultRow {
        seq: result.seq,
        id: result.id.to_string(),
        at: zone.minute_in_full(result.happened_at),
        found: words::found(result, numbers),
        more: words::by(result.person.as_deref(), &result.due_on),
        undone_by: result.undone_by,
    }
}
