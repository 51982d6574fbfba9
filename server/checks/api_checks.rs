//! Room checks as JSON: what is looked at, how and how often.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;
use uuid::Uuid;

use super::actions::{self, CopyStarters, NewCheck};
use super::input;
use super::standing::{CheckNow, DueWhen, checks_now};
use crate::api::{By, Input, Made, Page, Paging, Route, Writing};
use crate::error::{Error, Result};
use crate::input::{name, needed_note, needed_remark};
use crate::problem::Problems;
use crate::rights::{KeepChecks, SeeChecks};
use crate::rooms;

const CHECKS: &str = "/rooms/{room}/checks";
const CHECK: &str = "/rooms/{room}/checks/{id}";
const STARTERS: &str = "/rooms/{room}/checks/starters";

/// The routes.
pub(super) fn api() -> Vec<Route> {
    vec![
        Route::list(
            CHECKS,
            "Room checks by the day on which they are due, retired ones last.",
            list,
        ),
        Route::one(CHECK, "One room check.", one),
        Route::add(CHECKS, "Add a room check; it is due today.", add),
        Route::add(
            STARTERS,
            "Copy the starter checks that the room does not have by name; each is due today.",
            copy,
        ),
        Route::change(CHECK, "Set a room check.", change),
    ]
}

/// A room check, what was found last, and when it is due.
#[derive(Debug, Serialize, ToSchema)]
pub struct RoomCheckOut {
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
    /// The unit of what is measured; nothing where nothing is.
    pub unit: Option<String>,
    /// The least that passes, in thousandths of the unit.
    pub least_thousandths: Option<i64>,
    /// The most that passes, in thousandths of the unit.
    pub most_thousandths: Option<i64>,
    /// Whether it is done no more.
    pub is_retired: bool,
    /// The day by which it is due.
    #[schema(format = Date)]
    pub due_on: String,
    /// How far off that is, by the room's own calendar.
    pub due: DueWhen,
    /// Whether it failed the last time.
    pub has_failed: bool,
    /// Its last result, those taken back left out.
    pub last_result_id: Option<Uuid>,
}

impl From<CheckNow> for RoomCheckOut {
    fn from(now: CheckNow) -> Self {
        let has_failed = now.has_failed();
        let check = now.check;
        let measure = check.measure.as_ref();
        Self {
            least_thousandths: measure.and_then(|measure| measure.least_thousandths),
            most_thousandths: measure.and_then(|measure| measure.most_thousandths),
            unit: check.measure.map(|measure| measure.unit),
            id: check.id,
            name: check.name,
            how: check.how,
            every_days: check.every_days,
            basis: check.basis,
            on_failure: check.on_failure,
            is_on_board: check.is_on_board,
            space_id: check.space_id,
            is_retired: check.is_retired,
            due_on: now.due_on,
            due: now.due,
            has_failed,
            last_result_id: now.last.map(|last| last.id),
        }
    }
}

async fn all(by: &By<SeeChecks>) -> Result<Vec<CheckNow>> {
    let (database, now) = (by.app.database(), by.app.clock().now());
    database
        .reading(by.permit.scope(), move |tx| {
            Box::pin(async move {
                let zone = rooms::settings(tx).await?.time_zone()?;
                checks_now(tx, &zone, now).await
            })
        })
        .await
}

async fn list(by: By<SeeChecks>, paging: Paging) -> Result<Page<RoomCheckOut>> {
    let all = all(&by).await?.into_iter();
    let all = all.map(RoomCheckOut::from).collect();
    paging.cut(all, |check: &RoomCheckOut| check.id.to_string())
}

async fn one(by: By<SeeChecks>, id: Uuid) -> Result<RoomCheckOut> {
    let mut all = all(&by).await?.into_iter();
    let found = all.find(|each| each.check.id == id);
    found.map(RoomCheckOut::from).ok_or(Error::NotFound)
}

/// A room check to set.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct RoomCheckIn {
    /// What is looked at.
    #[schema(max_length = 80)]
    pub name: String,
    /// How.
    #[schema(max_length = 300)]
    pub how: String,
    /// So many days after it was done it is due again.
    #[schema(minimum = 1, maximum = 1_830)]
    pub every_days: i64,
    /// Where the number of days comes from.
    #[schema(max_length = 200)]
    pub basis: String,
    /// What to do where it fails.
    #[schema(max_length = 300)]
    pub on_failure: String,
    /// Whether the board says so while it is overdue or has failed.
    #[serde(default)]
    pub is_on_board: bool,
    /// The space it is about; nothing for the room itself.
    pub space_id: Option<Uuid>,
    /// The unit of what is measured; nothing where nothing is.
    #[schema(max_length = 20)]
    pub unit: Option<String>,
    /// The least that passes, in thousandths of the unit.
    #[schema(minimum = 0, maximum = 1_000_000_000)]
    pub least_thousandths: Option<i64>,
    /// The most that passes, in thousandths of the unit.
    #[schema(minimum = 0, maximum = 1_000_000_000)]
    pub most_thousandths: Option<i64>,
    /// Whether it is done no more.
    #[serde(default)]
    pub is_retired: bool,
}

impl Input for RoomCheckIn {
    const NAMES: &'static [(&'static str, &'static str)] =
        &[("space", "space_id"), ("most", "most_thousandths")];
}

impl RoomCheckIn {
    fn read(self, id: Option<Uuid>) -> Result<NewCheck> {
        let mut problems = Problems::default();
        let end = |given: Option<i64>| given.map(input::figure).transpose();
        let least = problems.take("least_thousandths", end(self.least_thousandths));
        let most = problems.take("most_thousandths", end(self.most_thousandths));
        let unit = self.unit.as_deref().unwrap_or_default();
        let measure = input::measure(unit, least.flatten(), most.flatten());
        let measure = measure.unwrap_or_else(|wrong| {
            problems.append(wrong);
            None
        });
        let on_failure = needed_remark(&self.on_failure);
        let new = NewCheck {
            id,
            name: problems.take("name", name(&self.name)).unwrap_or_default(),
            how: problems
                .take("how", needed_remark(&self.how))
                .unwrap_or_default(),
            every_days: problems
                .take("every_days", input::days(self.every_days))
                .unwrap_or_default(),
            basis: problems
                .take("basis", needed_note(&self.basis))
                .unwrap_or_default(),
            on_failure: problems.take("on_failure", on_failure).unwrap_or_default(),
            is_on_board: self.is_on_board,
            space_id: self.space_id,
            measure,
            is_retired: self.is_retired,
        };
        match problems.is_empty() {
            true => Ok(new),
            false => Err(Error::Invalid(problems)),
        }
    }
}

async fn add(by: Writing<KeepChecks>, check: RoomCheckIn) -> Result<Made> {
    set(by, check.read(None)?).await
}

async fn change(by: Writing<KeepChecks>, id: Uuid, check: RoomCheckIn) -> Result<Made> {
    set(by, check.read(Some(id))?).await
}

async fn set(by: Writing<KeepChecks>, new: NewCheck) -> Result<Made> {
    let done = actions::set_check(&by.app, &by.permit, by.key, new).await?;
    by.made(&done, "room_check", "checks")
}

/// Nothing is asked: the starter checks are the program's own.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct StarterChecksIn {}

impl Input for StarterChecksIn {}

async fn copy(by: Writing<KeepChecks>, _: StarterChecksIn) -> Result<Made> {
    let done = actions::copy_starters(&by.app, &by.permit, by.key, CopyStarters {}).await?;
    by.made(&done, "room_check", "checks")
}
