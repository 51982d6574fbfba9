//! Spaces as JSON.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;
use uuid::Uuid;

use super::actions::{self, NewSpace};
use super::{Space, space, spaces};
use crate::api::{By, Input, Made, Page, Paging, Route, Writing};
use crate::error::{Error, Result};
use crate::input::{name, place};
use crate::problem::Problems;
use crate::rights::{KeepBench, SeeBench};

const SPACES: &str = "/rooms/{room}/bench/spaces";
const SPACE: &str = "/rooms/{room}/bench/spaces/{id}";

/// The routes.
#[must_use]
pub fn api() -> Vec<Route> {
    vec![
        Route::list(SPACES, "Spaces in their order, retired ones last.", list),
        Route::one(SPACE, "One space.", one),
        Route::add(SPACES, "Add a space.", add),
        Route::change(SPACE, "Set a space.", change),
    ]
}

/// A space: a room of the room, with lines of its own.
#[derive(Debug, Serialize, ToSchema)]
pub struct SpaceOut {
    /// Which.
    pub id: Uuid,
    /// What people call it.
    pub name: String,
    /// Its place in lists.
    pub position: i32,
    /// Whether it is used no more.
    pub is_retired: bool,
}

impl From<Space> for SpaceOut {
    fn from(space: Space) -> Self {
        Self {
            id: space.id,
            name: space.name,
            position: space.position,
            is_retired: space.is_retired,
        }
    }
}

/// A space to set.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SpaceIn {
    /// What people call it.
    #[schema(max_length = 80)]
    pub name: String,
    /// Its place in lists; nothing for the end, or for where it is.
    #[schema(minimum = 1, maximum = 1_000)]
    pub position: Option<i64>,
    /// Whether it is used no more.
    #[serde(default)]
    pub is_retired: bool,
}

impl Input for SpaceIn {}

impl SpaceIn {
    fn read(self, id: Option<Uuid>) -> Result<NewSpace> {
        let mut problems = Problems::default();
        let name = problems.take("name", name(&self.name));
        let position = problems.take("position", self.position.map(place).transpose());
        match (name, position) {
            (Some(name), Some(position)) => Ok(NewSpace {
                id,
                name,
                position,
                is_retired: self.is_retired,
            }),
            _ => Err(Error::Invalid(problems)),
        }
    }
}

async fn list(by: By<SeeBench>, paging: Paging) -> Result<Page<SpaceOut>> {
    let database = by.app.database();
    let all = database.reading(by.permit.scope(), |tx| Box::pin(spaces(tx)));
    let all = all.await?.into_iter().map(SpaceOut::from).collect();
    paging.cut(all, |space: &SpaceOut| space.id.to_string())
}

async fn one(by: By<SeeBench>, id: Uuid) -> Result<SpaceOut> {
    let database = by.app.database();
    let found = database.reading(by.permit.scope(), move |tx| Box::pin(space(tx, id)));
    found.await?.map(SpaceOut::from).ok_or(Error::NotFound)
}

async fn add(by: Writing<KeepBench>, space: SpaceIn) -> Result<Made> {
    set(by, space.read(None)?).await
}

async fn change(by: Writing<KeepBench>, id: Uuid, space: SpaceIn) -> Result<Made> {
    set(by, space.read(Some(id))?).await
}

async fn set(by: Writing<KeepBench>, new: NewSpace) -> Result<Made> {
    let done = actions::set_space(&by.app, &by.permit, by.key, new).await?;
    by.made(&done, "space", "bench/spaces")
}
