//! Bottles as JSON.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;
use uuid::Uuid;

use super::actions::{self, NewBottle};
use super::{Bottle, bottle, bottles, input};
use crate::api::{By, Input, Made, Page, Paging, Route, Writing};
use crate::error::{Error, Result};
use crate::input::name;
use crate::problem::Problems;
use crate::rights::{KeepBench, SeeBench};

const BOTTLES: &str = "/rooms/{room}/bench/bottles";
const BOTTLE: &str = "/rooms/{room}/bench/bottles/{id}";

/// The routes.
#[must_use]
pub fn api() -> Vec<Route> {
    vec![
        Route::list(BOTTLES, "Bottles by name, retired ones last.", list),
        Route::one(BOTTLE, "One bottle.", one),
        Route::add(BOTTLES, "Add a bottle.", add),
        Route::change(BOTTLE, "Set a bottle.", change),
    ]
}

/// A bottle.
#[derive(Debug, Serialize, ToSchema)]
pub struct BottleOut {
    /// Which.
    pub id: Uuid,
    /// What people call it.
    pub name: String,
    /// What it holds up to the stopper, in microlitres.
    pub holds_ul: i64,
    /// Whether it is used no more.
    pub is_retired: bool,
}

impl From<Bottle> for BottleOut {
    fn from(bottle: Bottle) -> Self {
        Self {
            id: bottle.id,
            name: bottle.name,
            holds_ul: bottle.holds_ul,
            is_retired: bottle.is_retired,
        }
    }
}

/// A bottle to set.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct BottleIn {
    /// What people call it.
    #[schema(max_length = 80)]
    pub name: String,
    /// What it holds up to the stopper, in microlitres.
    #[schema(minimum = 50_000, maximum = 50_000_000)]
    pub holds_ul: i64,
    /// Whether it is used no more.
    #[serde(default)]
    pub is_retired: bool,
}

impl Input for BottleIn {}

impl BottleIn {
    fn read(self, id: Option<Uuid>) -> Result<NewBottle> {
        let mut problems = Problems::default();
        let name = problems.take("name", name(&self.name));
        let holds = problems.take("holds_ul", input::holds(self.holds_ul));
        match (name, holds) {
            (Some(name), Some(holds_ul)) => Ok(NewBottle {
                id,
                name,
                holds_ul,
                is_retired: self.is_retired,
            }),
            _ => Err(Error::Invalid(problems)),
        }
    }
}

async fn list(by: By<SeeBench>, paging: Paging) -> Result<Page<BottleOut>> {
    let database = by.app.database();
    let all = database.reading(by.permit.scope(), |tx| Box::pin(bottles(tx)));
    let all = all.await?.into_iter().map(BottleOut::from).collect();
    paging.cut(all, |bottle: &BottleOut| bottle.id.to_string())
}

async fn one(by: By<SeeBench>, id: Uuid) -> Result<BottleOut> {
    let database = by.app.database();
    let found = database.reading(by.permit.scope(), move |tx| Box::pin(bottle(tx, id)));
    found.await?.map(BottleOut::from).ok_or(Error::NotFound)
}

async fn add(by: Writing<KeepBench>, bottle: BottleIn) -> Result<Made> {
    set(by, bottle.read(None)?).await
}

async fn change(by: Writing<KeepBench>, id: Uuid, bottle: BottleIn) -> Result<Made> {
    set(by, bottle.read(Some(id))?).await
}

async fn set(by: Writing<KeepBench>, new: NewBottle) -> Result<Made> {
    let done = actions::set_bottle(&by.app, &by.permit, by.key, new).await?;
    by.made(&done, "bottle", "bench/bottles")
}
