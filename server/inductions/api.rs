//! Inductions as JSON.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;
use uuid::Uuid;

use super::actions::{self, NewInduction, Withdrawal};
use super::store::{self, Asked, Induction};
use super::{Basis, Covered, Means};
use crate::api::{By, Input, Made, Page, Paging, Route, Writing, moment_text};
use crate::error::{Error, Result};
use crate::input::{date, remark};
use crate::mixes::readings::input::reason;
use crate::problem::Problems;
use crate::rights::{Induct, Right, Role, SeeInductions, SeeOwnInductions};

const INDUCTIONS: &str = "/rooms/{room}/inductions";
const INDUCTION: &str = "/rooms/{room}/inductions/{id}";
const OWN: &str = "/rooms/{room}/own-inductions";
const WITHDRAW: &str = "/rooms/{room}/inductions/{id}/withdraw";

/// The routes.
#[must_use]
pub fn api() -> Vec<Route> {
    vec![
        Route::list(
            INDUCTIONS,
            "Everybody's inductions, the latest written first.",
            list,
        ),
        Route::list(OWN, "One's own inductions, the latest written first.", own),
        Route::one(
            INDUCTION,
            "One induction: shown to its person and to stewards.",
            one,
        ),
        Route::add(
            INDUCTIONS,
            "Record that people were inducted; each has still to confirm it.",
            induct,
        ),
        Route::act(
            WITHDRAW,
            "Withdraw an induction: it counts no more.",
            withdraw,
        ),
    ]
}

/// A record of what somebody was told.
#[derive(Debug, Serialize, ToSchema)]
pub struct InductionOut {
    /// Which.
    pub id: Uuid,
    /// The number of its entry.
    pub seq: i64,
    /// Who was told.
    pub person_id: Uuid,
    /// By name.
    pub name: String,
    /// Who inducted.
    pub inducer_id: Option<Uuid>,
    /// What it stands on.
    pub basis: Basis,
    /// The day it was given.
    #[schema(format = Date)]
    pub given_on: String,
    /// What was told.
    pub topics: Vec<Covered>,
    /// Anything else that was said.
    pub remark: String,
    /// The record it renews.
    pub renews_id: Option<Uuid>,
    /// When the person confirmed; before that it does not count.
    #[schema(format = DateTime)]
    pub confirmed_at: Option<String>,
    /// By what they confirmed.
    pub confirmed_by: Option<Means>,
    /// The number of the entry that withdrew it.
    pub withdrawn_by: Option<i64>,
    /// Why it was withdrawn.
    pub withdrawn_reason: Option<String>,
}

impl InductionOut {
    fn of(record: Induction) -> Result<Self> {
        let (confirmed_at, confirmed_by) = record.confirmed.unzip();
        let (withdrawn_by, withdrawn_reason) = record.withdrawn.unzip();
        Ok(Self {
            id: record.id,
            seq: record.seq,
            person_id: record.person_id,
            name: record.person,
            inducer_id: record.inducer_id,
            basis: record.basis,
            given_on: record.given_on,
            topics: record.topics,
            remark: record.remark,
            renews_id: record.renews_id,
            confirmed_at: confirmed_at.map(moment_text).transpose()?,
            confirmed_by,
            withdrawn_by,
            withdrawn_reason,
        })
    }
}

async fn found<R: Right>(
    by: &By<R>,
    paging: &Paging,
    person: Option<Uuid>,
) -> Result<Page<InductionOut>> {
    let asked = Asked {
        person,
        before: paging.after_seq()?,
        ..Asked::default()
    };
    let most = paging.limit + 1;
    let found = by.app.database().reading(by.permit.scope(), move |tx| {
        Box::pin(store::inductions(tx, asked, most))
    });
    let page = paging.first_of(found.await?, |record| record.seq.to_string());
    page.map(InductionOut::of)
}

async fn list(by: By<SeeInductions>, paging: Paging) -> Result<Page<InductionOut>> {
    found(&by, &paging, None).await
}

async fn own(by: By<SeeOwnInductions>, paging: Paging) -> Result<Page<InductionOut>> {
    found(&by, &paging, Some(by.permit.person().id)).await
}

async fn one(by: By<SeeOwnInductions>, id: Uuid) -> Result<InductionOut> {
    let database = by.app.database();
    let found = database.reading(by.permit.scope(), move |tx| {
        Box::pin(store::induction(tx, id))
    });
    let may_see = |record: &Induction| {
        record.person_id == by.permit.person().id || by.permit.role() == Role::Steward
    };
    let found = found.await?.filter(may_see);
    InductionOut::of(found.ok_or(Error::NotFound)?)
}

/// What people were told.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct InductionIn {
    /// Everybody who was told: a record for each.
    #[schema(max_items = 60)]
    pub person_ids: Vec<Uuid>,
    /// What, in the version that holds now.
    pub topic_ids: Vec<Uuid>,
    /// The day, where that is not today.
    #[schema(format = Date)]
    pub given_on: Option<String>,
    /// Whether a paper from before is entered, which they signed.
    #[serde(default)]
    pub is_on_paper: bool,
    /// Anything else.
    #[serde(default)]
    #[schema(max_length = 300)]
    pub remark: String,
    /// The record it renews.
    pub renews_id: Option<Uuid>,
}

impl Input for InductionIn {
    const NAMES: &'static [(&'static str, &'static str)] = &[
        ("people", "person_ids"),
        ("topics", "topic_ids"),
        ("on", "given_on"),
    ];
}

impl InductionIn {
    fn read(self) -> Result<NewInduction> {
        let mut problems = Problems::default();
        let given_on = self.given_on.as_deref().map(date).transpose();
        let given_on = problems.take("on", given_on);
        let remark = problems.take("remark", remark(&self.remark));
        match (given_on, remark) {
            (Some(given_on), Some(remark)) => Ok(NewInduction {
                person_ids: self.person_ids,
                topic_ids: self.topic_ids,
                given_on,
                is_on_paper: self.is_on_paper,
                remark,
                renews_id: self.renews_id,
            }),
            _ => Err(Error::Invalid(problems)),
        }
    }
}

async fn induct(by: Writing<Induct>, new: InductionIn) -> Result<Made> {
    let done = actions::induct(&by.app, &by.permit, by.key, new.read()?).await?;
    by.made(&done, "induction", "inductions")
}

/// Why an induction is withdrawn.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct WithdrawalIn {
    /// Why.
    #[schema(max_length = 300)]
    pub reason: String,
}

impl Input for WithdrawalIn {}

async fn withdraw(by: Writing<Induct>, id: Uuid, wanted: WithdrawalIn) -> Result<Made> {
    let reason = reason(&wanted.reason).map_err(|no| Error::field("reason", no))?;
    let wanted = Withdrawal {
        induction_id: id,
        reason,
    };
    let done = actions::withdraw(&by.app, &by.permit, by.key, wanted).await?;
    by.made(&done, "induction", "inductions")
}
