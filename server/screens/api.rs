//! Screens as JSON. PINs are set on a page alone; a steward takes one away here too.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;
use uuid::Uuid;

use super::actions::{self, NewName, NewScreen};
use super::store::{self, Screen};
use crate::api::{By, Input, Made, Page, Paging, Route, Writing, moment_text};
use crate::error::{Error, Result};
use crate::members::api::NothingIn;
use crate::rights::{KeepMembers, KeepScreens, SeeScreens};

const SCREENS: &str = "/rooms/{room}/screens";
const SCREEN: &str = "/rooms/{room}/screens/{id}";
const END: &str = "/rooms/{room}/screens/{id}/end";
const REMOVE_PIN: &str = "/rooms/{room}/members/{id}/remove-pin";

/// The routes.
#[must_use]
pub fn api() -> Vec<Route> {
    vec![
        Route::list(SCREENS, "The screens that are paired, by name.", list),
        Route::one(SCREEN, "One screen, paired or not any more.", one),
        Route::add(SCREENS, "Pair the screen that shows a code.", add),
        Route::change(SCREEN, "Rename a screen.", rename),
        Route::act(END, "End a screen's pairing.", end),
        Route::act(
            REMOVE_PIN,
            "Take a member's PIN for the door away.",
            remove_pin,
        ),
    ]
}

/// A screen that is paired, or was.
#[derive(Debug, Serialize, ToSchema)]
pub struct ScreenOut {
    /// Which.
    pub id: Uuid,
    /// `board` or `door`.
    pub kind: String,
    /// What people call it.
    pub name: String,
    /// The display it was paired with.
    pub display: String,
    /// When it was paired.
    #[schema(format = DateTime)]
    pub paired_at: String,
    /// By whom.
    pub paired_by: Option<String>,
    /// When it was last seen, to the minute, while it is paired.
    #[schema(format = DateTime)]
    pub last_seen_at: Option<String>,
    /// When its pairing ended.
    #[schema(format = DateTime)]
    pub ended_at: Option<String>,
}

impl ScreenOut {
    fn of(screen: Screen) -> Result<Self> {
        Ok(Self {
            id: screen.id,
            kind: screen.kind.as_str().to_owned(),
            name: screen.name,
            display: screen.display,
            paired_at: moment_text(screen.paired_at)?,
            paired_by: screen.paired_by,
            last_seen_at: screen.last_seen_at.map(moment_text).transpose()?,
            ended_at: screen.ended_at.map(moment_text).transpose()?,
        })
    }
}

async fn list(by: By<SeeScreens>, paging: Paging) -> Result<Page<ScreenOut>> {
    let database = by.app.database();
    let all = database.reading(by.permit.scope(), |tx| Box::pin(store::paired(tx)));
    let page = paging.cut(all.await?, |screen| screen.id.to_string())?;
    page.map(ScreenOut::of)
}

async fn one(by: By<SeeScreens>, id: Uuid) -> Result<ScreenOut> {
    let database = by.app.database();
    let found = database.reading(by.permit.scope(), move |tx| Box::pin(store::screen(tx, id)));
    ScreenOut::of(found.await?.ok_or(Error::NotFound)?)
}

/// A screen to pair.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct ScreenIn {
    /// The code that it shows.
    pub code: String,
    /// `board` or `door`.
    pub kind: String,
    /// What people will call it.
    pub name: String,
    /// The display it begins with: `day`, `dim` or `safelight`.
    pub display: String,
}

impl Input for ScreenIn {}

async fn add(by: Writing<KeepScreens>, screen: ScreenIn) -> Result<Made> {
    let new = NewScreen {
        code: screen.code,
        kind: screen.kind,
        name: screen.name,
        display: screen.display,
    };
    let done = actions::pair(&by.app, &by.permit, by.key, new).await?;
    by.made(&done, "screen", "screens")
}

/// A screen's new name.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct ScreenNameIn {
    /// What people will call it.
    pub name: String,
}

impl Input for ScreenNameIn {}

async fn rename(by: Writing<KeepScreens>, id: Uuid, screen: ScreenNameIn) -> Result<Made> {
    let new = NewName {
        screen_id: id,
        name: screen.name,
    };
    let done = actions::rename(&by.app, &by.permit, by.key, new).await?;
    by.made(&done, "screen", "screens")
}

async fn end(by: Writing<KeepScreens>, id: Uuid, _: NothingIn) -> Result<Made> {
    let done = actions::end(&by.app, &by.permit, by.key, id).await?;
    by.made(&done, "screen", "screens")
}

async fn remove_pin(by: Writing<KeepMembers>, id: Uuid, _: NothingIn) -> Result<Made> {
    let done = actions::remove_pin(&by.app, &by.permit, by.key, id).await?;
    by.made(&done, "person", "members")
}
