//! What was found at room checks as JSON.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;
use uuid::Uuid;

use super::actions::{self, NewResult, UndoResult};
use super::store::{self, Asked, CheckResult};
use super::{api_checks, input};
use crate::api::{By, Input, Made, Page, Paging, Route, Writing, moment_text};
use crate::clock::micros;
use crate::error::{Error, Result};
use crate::input::{moment, needed_remark, remark};
use crate::problem::Problems;
use crate::rights::{RecordCheck, SeeChecks, TakeBack};

const RECORD: &str = "/rooms/{room}/checks/{id}/record";
const RESULTS: &str = "/rooms/{room}/check-results";
const RESULT: &str = "/rooms/{room}/check-results/{id}";
const BACK: &str = "/rooms/{room}/check-results/{id}/take-back";

/// The routes.
#[must_use]
pub fn api() -> Vec<Route> {
    let results = [
        Route::act(RECORD, "Record what was found at a room check.", record),
        Route::list(
            RESULTS,
            "Results of room checks, the latest written first.",
            results,
        ),
        Route::one(RESULT, "One result of a room check.", one),
        Route::act(BACK, "Take a mistaken result back.", take_back),
    ];
    api_checks::api().into_iter().chain(results).collect()
}

/// What was found at a room check.
#[derive(Debug, Serialize, ToSchema)]
pub struct CheckResultOut {
    /// Which.
    pub id: Uuid,
    /// The number of its entry.
    pub seq: i64,
    /// Of which check.
    pub room_check_id: Uuid,
    /// Who did it.
    pub person_id: Option<Uuid>,
    /// Whether all was well.
    pub has_passed: bool,
    /// What was measured, in thousandths of the unit.
    pub measured_thousandths: Option<i64>,
    /// The unit of then.
    pub unit: Option<String>,
    /// What was found.
    pub remark: String,
    /// The day by which it was due again.
    #[schema(format = Date)]
    pub due_on: String,
    /// When.
    #[schema(format = DateTime)]
    pub happened_at: String,
    /// The number of the entry that took it back.
    pub undone_by: Option<i64>,
}

impl CheckResultOut {
    fn of(result: CheckResult) -> Result<Self> {
        Ok(Self {
            id: result.id,
            seq: result.seq,
            room_check_id: result.room_check_id,
            person_id: result.person_id,
            has_passed: result.has_passed,
            measured_thousandths: result.measured_thousandths,
            unit: result.unit,
            remark: result.remark,
            due_on: result.due_on,
            happened_at: moment_text(result.happened_at)?,
            undone_by: result.undone_by,
        })
    }
}

async fn results(by: By<SeeChecks>, paging: Paging) -> Result<Page<CheckResultOut>> {
    let asked = Asked {
        before: paging.after_seq()?,
        ..Asked::default()
    };
    let most = paging.limit + 1;
    let found = by.app.database().reading(by.permit.scope(), move |tx| {
        Box::pin(store::results(tx, asked, most))
    });
    let page = paging.first_of(found.await?, |result| result.seq.to_string());
    page.map(CheckResultOut::of)
}

async fn one(by: By<SeeChecks>, id: Uuid) -> Result<CheckResultOut> {
    let database = by.app.database();
    let found = database.reading(by.permit.scope(), move |tx| Box::pin(store::result(tx, id)));
    CheckResultOut::of(found.await?.ok_or(Error::NotFound)?)
}

/// What somebody found at a room check.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct CheckResultIn {
    /// Whether all was well.
    pub has_passed: bool,
    /// What was measured, in thousandths of the check's unit; what passes needs it where
    /// the check has a unit.
    #[schema(minimum = 0, maximum = 1_000_000_000)]
    pub measured_thousandths: Option<i64>,
    /// What was found; a failure needs it.
    #[serde(default)]
    #[schema(max_length = 300)]
    pub remark: String,
    /// When, where that was not just now.
    #[schema(format = DateTime)]
    pub happened_at: Option<String>,
}

impl Input for CheckResultIn {
    const NAMES: &'static [(&'static str, &'static str)] = &[("measured", "measured_thousandths")];
}

impl CheckResultIn {
    fn read(self, room_check_id: Uuid) -> Result<NewResult> {
        let mut problems = Problems::default();
        let measured = self.measured_thousandths.map(input::figure).transpose();
        let measured = problems.take("measured", measured);
        let remark = problems.take("remark", remark(&self.remark));
        let at = self.happened_at.as_deref().map(moment).transpose();
        let at = problems.take("happened_at", at);
        match (measured, remark, at) {
            (Some(measured_thousandths), Some(remark), Some(at)) => Ok(NewResult {
                room_check_id,
                has_passed: self.has_passed,
                measured_thousandths,
                remark,
                happened_at_us: at.map(micros),
            }),
            _ => Err(Error::Invalid(problems)),
        }
    }
}

async fn record(by: Writing<RecordCheck>, id: Uuid, result: CheckResultIn) -> Result<Made> {
    let new = result.read(id)?;
    let done = actions::record(&by.app, &by.permit, by.key, new).await?;
    by.made(&done, "room_check_result", "check-results")
}

/// Why a result is taken back.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct CheckResultBackIn {
    /// Why.
    #[schema(max_length = 300)]
    pub reason: String,
}

impl Input for CheckResultBackIn {}

async fn take_back(by: Writing<TakeBack>, id: Uuid, undo: CheckResultBackIn) -> Result<Made> {
    let reason = needed_remark(&undo.reason).map_err(|no| Error::field("reason", no))?;
    let undo = UndoResult {
        result_id: id,
        reason,
    };
    let done = actions::take_back(&by.app, &by.permit, by.key, undo).await?;
    by.made(&done, "room_check_result", "check-results")
}
