//! Workshops as JSON.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;
use uuid::Uuid;

use super::actions::{self, CallOff, NewWorkshop};
use super::store::{self, Workshop};
use super::{Standing, api_leading, input};
use crate::api::{By, Input, Made, Page, Paging, Route, Writing, moment_text};
use crate::clock::micros;
use crate::error::{Error, Result};
use crate::input::{moment, name, needed_remark};
use crate::problem::Problems;
use crate::rights::{PlanWorkshop, SeeWorkshops};

const WORKSHOPS: &str = "/rooms/{room}/workshops";
const WORKSHOP: &str = "/rooms/{room}/workshops/{id}";
const CALL_OFF: &str = "/rooms/{room}/workshops/{id}/call-off";

/// The routes.
#[must_use]
pub fn api() -> Vec<Route> {
    let mut routes = vec![
        Route::list(WORKSHOPS, "Workshops, the latest first.", list),
        Route::one(WORKSHOP, "One workshop.", one),
        Route::add(WORKSHOPS, "Plan a workshop.", add),
        Route::change(WORKSHOP, "Set a workshop that was not opened yet.", change),
        Route::act(
            CALL_OFF,
            "Call a workshop off that was not opened yet.",
            call_off,
        ),
    ];
    routes.extend(api_leading::api());
    routes
}

/// A workshop as it now is.
#[derive(Debug, Serialize, ToSchema)]
pub struct WorkshopOut {
    /// Which.
    pub id: Uuid,
    /// What it is called.
    pub title: String,
    /// How it stands.
    pub standing: Standing,
    /// Who leads it.
    pub leader_id: Uuid,
    /// By name.
    pub leader: String,
    /// Where; nothing for the room itself.
    pub space_id: Option<Uuid>,
    /// When it begins.
    #[schema(format = DateTime)]
    pub begins_at: String,
    /// When it ends.
    #[schema(format = DateTime)]
    pub ends_at: String,
    /// The most guests at once.
    pub most_guests: i32,
    /// The lines it prints on.
    pub line_ids: Vec<Uuid>,
    /// The member who pays; nobody where the room does.
    pub paid_by_id: Option<Uuid>,
    /// Why it was called off.
    pub called_off_reason: Option<String>,
    /// When it was opened.
    #[schema(format = DateTime)]
    pub opened_at: Option<String>,
    /// The number of the entry that says what was read to the group.
    pub opened_seq: Option<i64>,
    /// When it is over by itself.
    #[schema(format = DateTime)]
    pub over_at: Option<String>,
    /// When it was over.
    #[schema(format = DateTime)]
    pub ended_at: Option<String>,
    /// Whether whoever led it said so.
    pub is_confirmed: bool,
}

impl WorkshopOut {
    fn of(workshop: Workshop, standing: Standing) -> Result<Self> {
        Ok(Self {
            id: workshop.id,
            title: workshop.title,
            standing,
            leader_id: workshop.leader_id,
            leader: workshop.leader,
            space_id: workshop.space_id,
            begins_at: moment_text(workshop.begins_at)?,
            ends_at: moment_text(workshop.ends_at)?,
            most_guests: workshop.most_guests,
            line_ids: workshop.line_ids,
            paid_by_id: workshop.paid_by_id,
            called_off_reason: workshop.called_off_reason,
            opened_at: workshop.opened_at.map(moment_text).transpose()?,
            opened_seq: workshop.opened_seq,
            over_at: workshop.over_at.map(moment_text).transpose()?,
            ended_at: workshop.ended_at.map(moment_text).transpose()?,
            is_confirmed: workshop.is_confirmed,
        })
    }
}

async fn list(by: By<SeeWorkshops>, paging: Paging) -> Result<Page<WorkshopOut>> {
    let now = by.app.clock().now();
    let database = by.app.database();
    let all = database.reading(by.permit.scope(), |tx| Box::pin(store::workshops(tx)));
    let page = paging.cut(all.await?, |workshop| workshop.id.to_string())?;
    page.map(|workshop: Workshop| {
        let standing = workshop.standing(now);
        WorkshopOut::of(workshop, standing)
    })
}

async fn one(by: By<SeeWorkshops>, id: Uuid) -> Result<WorkshopOut> {
    let now = by.app.clock().now();
    let database = by.app.database();
    let found = database.reading(by.permit.scope(), move |tx| {
        Box::pin(store::workshop(tx, id))
    });
    let workshop = found.await?.ok_or(Error::NotFound)?;
    let standing = workshop.standing(now);
    WorkshopOut::of(workshop, standing)
}

/// A workshop to set.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct WorkshopIn {
    /// What it is called.
    #[schema(max_length = 80)]
    pub title: String,
    /// Who leads it.
    pub leader_id: Uuid,
    /// Where; nothing for the room itself.
    pub space_id: Option<Uuid>,
    /// When it begins.
    #[schema(format = DateTime)]
    pub begins_at: String,
    /// When it ends, on the same day of the room.
    #[schema(format = DateTime)]
    pub ends_at: String,
    /// The most guests at once.
    #[schema(minimum = 1, maximum = 999)]
    pub most_guests: i64,
    /// The lines it prints on.
    #[serde(default)]
    pub line_ids: Vec<Uuid>,
    /// The member who pays; nobody where the room does.
    pub paid_by_id: Option<Uuid>,
}

impl Input for WorkshopIn {
    const NAMES: &'static [(&'static str, &'static str)] = &[
        ("leader", "leader_id"),
        ("space", "space_id"),
        ("begins", "begins_at"),
        ("ends", "ends_at"),
        ("most", "most_guests"),
        ("lines", "line_ids"),
        ("paid_by", "paid_by_id"),
    ];
}

impl WorkshopIn {
    fn read(self, id: Option<Uuid>) -> Result<NewWorkshop> {
        let mut problems = Problems::default();
        let title = problems.take("title", name(&self.title));
        let begins = problems.take("begins", moment(&self.begins_at));
        let ends = problems.take("ends", moment(&self.ends_at));
        let most = problems.take("most", input::most_guests(self.most_guests));
        match (title, begins, ends, most) {
            (Some(title), Some(begins), Some(ends), Some(most_guests)) => Ok(NewWorkshop {
                id,
                title,
                leader_id: self.leader_id,
                space_id: self.space_id,
                begins_at_us: micros(begins),
                ends_at_us: micros(ends),
                most_guests,
                line_ids: self.line_ids,
                paid_by_id: self.paid_by_id,
            }),
            _ => Err(Error::Invalid(problems)),
        }
    }
}

async fn add(by: Writing<PlanWorkshop>, workshop: WorkshopIn) -> Result<Made> {
    set(by, workshop.read(None)?).await
}

async fn change(by: Writing<PlanWorkshop>, id: Uuid, workshop: WorkshopIn) -> Result<Made> {
    set(by, workshop.read(Some(id))?).await
}

async fn set(by: Writing<PlanWorkshop>, new: NewWorkshop) -> Result<Made> {
    let done = actions::set_workshop(&by.app, &by.permit, by.key, new).await?;
    by.made(&done, "workshop", "workshops")
}

/// Why a workshop is called off.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct CallOffIn {
    /// Why.
    #[schema(max_length = 300)]
    pub reason: String,
}

impl Input for CallOffIn {}

async fn call_off(by: Writing<PlanWorkshop>, id: Uuid, off: CallOffIn) -> Result<Made> {
    let reason = needed_remark(&off.reason).map_err(|no| Error::field("reason", no))?;
    let off = CallOff {
        workshop_id: id,
        reason,
    };
    let done = actions::call_off(&by.app, &by.permit, by.key, off).await?;
    by.made(&done, "workshop", "workshops")
}
