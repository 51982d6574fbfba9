//! How each check stands now: what its last result says, and when it is due.

use std::cmp::Ordering;

use serde::Serialize;
use time::OffsetDateTime;
use utoipa::ToSchema;

use super::store::{self, CheckResult, RoomCheck};
use crate::bench::spaces;
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::web::dates::Zone;
use crate::web::days;

/// When a check is due, by the room's own calendar.
#[derive(Clone, Copy, Debug, Eq, Hash, PartialEq, Serialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum DueWhen {
    /// Its day has passed.
    Overdue,
    /// Today.
    Today,
    /// On a later day.
    Later,
}

impl DueWhen {
    /// Of two days as `2026-11-03`, which sort as they follow one another.
    fn of(due_on: &str, today: &str) -> Self {
        match due_on.cmp(today) {
            Ordering::Less => Self::Overdue,
            Ordering::Equal => Self::Today,
            Ordering::Greater => Self::Later,
        }
    }
}

/// A check, what was found last, and when it is due.
#[derive(Clone, Debug)]
pub struct CheckNow {
    /// The check.
    pub check: RoomCheck,
    /// The space it is about, where the room has several.
    pub space: Option<String>,
    /// Its last result, those taken back left out.
    pub last: Option<CheckResult>,
    /// The day by which it is due, as `2026-11-10`.
    pub due_on: String,
    /// How far off that is.
    pub due: DueWhen,
    /// The first instant after that day.
    pub overdue_at: OffsetDateTime,
}

impl CheckNow {
    /// Whether it failed the last time.
    #[must_use]
    pub fn has_failed(&self) -> bool {
        self.last.as_ref().is_some_and(|last| !last.has_passed)
    }

    /// Whether it is to be done now.
    #[must_use]
    pub fn is_to_do(&self) -> bool {
        self.has_failed() || self.due != DueWhen::Later
    }
}

/// Every check: those in use by the day on which they are due, retired ones last. In a
/// room without any, nothing else is asked for.
///
/// # Errors
/// The database's.
pub async fn checks_now(
    tx: &mut RoomTx,
    zone: &Zone,
    now: OffsetDateTime,
) -> Result<Vec<CheckNow>> {
    let checks = store::room_checks(tx).await?;
    if checks.is_empty() {
        return Ok(Vec::new());
    }
    let spaces = spaces::spaces(tx).await?;
    let latest = store::latest(tx).await?;
    let today = zone.date_value(now);
    let stands = |check: RoomCheck| -> Result<CheckNow> {
        let space = spaces.iter().find(|space| Some(space.id) == check.space_id);
        let last = latest.iter().find(|last| last.room_check_id == check.id);
        let due_on = last.map_or(&check.first_due_on, |last| &last.due_on);
        Ok(CheckNow {
            space: space.map(|space| space.name.clone()),
            due_on: due_on.clone(),
            due: DueWhen::of(due_on, &today),
            overdue_at: days::ends(zone, due_on).map_err(Error::fault)?,
            last: last.cloned(),
            check,
        })
    };
    let mut all: Vec<CheckNow> = checks.into_iter().map(stands).collect::<Result<_>>()?;
    // By name already; what is due on one day stays so.
    all.sort_by_key(|now| (now.check.is_retired, now.due_on.clone()));
    Ok(all)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_check_is_due_on_its_day_and_overdue_after_it() {
        let found = ["2027-02-28", "2027-03-01", "2027-03-02"]
            .map(|today| DueWhen::of("2027-03-01", today));
        assert_eq!(found, [DueWhen::Later, DueWhen::Today, DueWhen::Overdue]);
    }
}
