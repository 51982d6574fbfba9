//! Checks that are overdue or failed: on the board, in a handover, and told to stewards.

use time::OffsetDateTime;

use super::standing::{CheckNow, DueWhen, checks_now};
use super::store;
use crate::database::RoomTx;
use crate::error::Result;
use crate::lamps::Due;
use crate::notices::{self, Notice};
use crate::rooms;
use crate::web::dates::Zone;
use crate::web::messages::checks as words;

/// What everyone should know of the checks that are to be on the board.
///
/// # Errors
/// The database's.
pub async fn due(tx: &mut RoomTx, zone: &Zone, now: OffsetDateTime) -> Result<Due> {
    let checks = checks_now(tx, zone, now).await?;
    let shown = in_use(&checks).filter(|each| each.check.is_on_board);
    let coming = shown.clone().filter(|each| each.due != DueWhen::Overdue);
    Ok(Due {
        changes_at: coming.map(|each| each.overdue_at).min(),
        sentences: shown.filter_map(|each| to_do(each, zone)).collect(),
    })
}

fn in_use(checks: &[CheckNow]) -> impl Iterator<Item = &CheckNow> + Clone {
    checks.iter().filter(|each| !each.check.is_retired)
}

/// What is to be done about a check that failed or is overdue, in one sentence.
fn to_do(now: &CheckNow, zone: &Zone) -> Option<String> {
    let overdue = (now.due == DueWhen::Overdue).then_some(now.due_on.as_str());
    match (now.last.as_ref(), overdue) {
        (Some(last), overdue) if !last.has_passed => {
            let failed_on = zone.day(last.happened_at).words;
            let check = &now.check;
            Some(words::failed(
                &check.name,
                &failed_on,
                &check.on_failure,
                overdue,
            ))
        }
        (_, Some(since)) => Some(words::overdue(&now.check.name, since)),
        (_, None) => None,
    }
}

/// What a steward who takes the room over should know of each check in use: what is to be
/// done, or when it is due.
#[must_use]
pub fn handed_over(checks: &[CheckNow], zone: &Zone) -> Vec<String> {
    let due = |now: &CheckNow| words::due_by(&now.check.name, &now.due_on);
    in_use(checks)
        .map(|now| to_do(now, zone).unwrap_or_else(|| due(now)))
        .collect()
}

/// Tells stewards of each check that is overdue, once for each day by which it was due.
///
/// # Errors
/// The database's.
pub async fn tell_due(tx: &mut RoomTx, now: OffsetDateTime) -> Result<()> {
    if store::room_checks(tx).await?.is_empty() {
        return Ok(());
    }
    let zone = rooms::settings(tx).await?.time_zone()?;
    let checks = checks_now(tx, &zone, now).await?;
    for each in in_use(&checks).filter(|each| each.due == DueWhen::Overdue) {
        if store::first_told(tx, each.check.id, &each.due_on, now).await? {
            let notice = Notice::RoomCheckDue {
                check: each.check.id,
                name: each.check.name.clone(),
                due_on: each.due_on.clone(),
            };
            notices::tell_stewards(tx, now, &notice).await?;
        }
    }
    Ok(())
}
