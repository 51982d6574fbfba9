//! Entries about room checks.

use serde::{Deserialize, Serialize};
use uuid::Uuid;

use super::store;
use crate::database::RoomTx;
use crate::error::Result;
use crate::logbook::{About, Entry, Placed, SeenBy};

/// What is measured at a check, and what it may be.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct Measure {
    /// The unit, such as `L/s`.
    pub unit: String,
    /// The least that passes, in thousandths of the unit; nothing where nobody set one.
    pub least_thousandths: Option<i64>,
    /// The most that passes, in thousandths of the unit; nothing where nobody set one.
    pub most_thousandths: Option<i64>,
}

impl Measure {
    /// Whether so many thousandths of the unit may pass; the bounds themselves do.
    #[must_use]
    pub fn allows(&self, thousandths: i64) -> bool {
        let is_under = self
            .least_thousandths
            .is_some_and(|least| thousandths < least);
        let is_over = self.most_thousandths.is_some_and(|most| thousandths > most);
        !is_under && !is_over
    }
}

/// A check as it now is.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct RoomCheckSet {
    /// Which.
    pub id: Uuid,
    /// What is looked at.
    pub name: String,
    /// How.
    pub how: String,
    /// So many days after it was done it is due again.
    pub every_days: i32,
    /// Where the number of days comes from.
    pub basis: String,
    /// What to do where it fails.
    pub on_failure: String,
    /// Whether the board says so while it is overdue or has failed.
    pub is_on_board: bool,
    /// The space it is about; nothing for the room itself.
    pub space_id: Option<Uuid>,
    /// What is measured; nothing where nothing is.
    pub measure: Option<Measure>,
    /// The day by which it is done for the first time, as `2026-11-03`.
    pub first_due_on: String,
    /// Whether it is done no more.
    pub is_retired: bool,
}

impl Entry for RoomCheckSet {
    const KIND: &'static str = "room_check_set";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        let space = self.space_id.map(|space| About::new("space", space));
        let check = About::new("room_check", self.id);
        space.into_iter().chain([check]).collect()
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            store::set_check(tx, each).await?;
        }
        Ok(())
    }
}

/// Somebody did a check. When they did is when the entry happened.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct RoomChecked {
    /// Which result.
    pub result_id: Uuid,
    /// Of which check.
    pub room_check_id: Uuid,
    /// Whether all was well.
    pub has_passed: bool,
    /// What was found; a failure always has one.
    pub remark: String,
    /// What was measured, in thousandths of the unit.
    pub measured_thousandths: Option<i64>,
    /// What was to be measured then.
    pub measure: Option<Measure>,
    /// The day by which it is due again, as `2026-11-10`.
    pub due_on: String,
}

impl Entry for RoomChecked {
    const KIND: &'static str = "room_checked";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        vec![
            About::new("room_check_result", self.result_id),
            About::new("room_check", self.room_check_id),
        ]
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            store::insert_result(tx, each).await?;
        }
        Ok(())
    }

    /// Nothing outside its own limit has passed.
    fn recheck(&self) -> Result<Option<String>> {
        let measured = self.measured_thousandths.zip(self.measure.as_ref());
        let is_outside = measured.is_some_and(|(found, measure)| !measure.allows(found));
        Ok((self.has_passed && is_outside)
            .then(|| "it has passed with a figure outside its own limit".to_owned()))
    }
}

/// A result was mistaken.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
pub struct RoomCheckTakenBack {
    /// Which.
    pub result_id: Uuid,
    /// The number of its entry.
    pub result_seq: i64,
    /// Of which check.
    pub room_check_id: Uuid,
    /// Why.
    pub reason: String,
}

impl Entry for RoomCheckTakenBack {
    const KIND: &'static str = "room_check_taken_back";
    const SEEN_BY: SeenBy = SeenBy::Everyone;

    fn about(&self) -> Vec<About> {
        vec![
            About::new("room_check_result", self.result_id),
            About::new("room_check", self.room_check_id),
        ]
    }

    async fn project(tx: &mut RoomTx, placed: &[Placed<Self>]) -> Result<()> {
        for each in placed {
            store::take_back(tx, each).await?;
        }
        Ok(())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_bound_itself_passes() {
        let measure = Measure {
            unit: "L/s".to_owned(),
            least_thousandths: Some(1_000),
            most_thousandths: Some(2_000),
        };
        let passes = [999, 1_000, 2_000, 2_001].map(|found| measure.allows(found));
        assert_eq!(passes, [false, true, true, false]);
        let open = Measure {
            least_thousandths: None,
            most_thousandths: None,
            ..measure
        };
        assert!(open.allows(0) && open.allows(i64::MAX));
    }
}
