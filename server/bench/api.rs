//! The bench as JSON.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;
use uuid::Uuid;

use super::actions::{self, NewLine, NewTray};
use super::{Line, Step, Tray, input, line, lines, tray, trays};
use crate::api::{By, Input, Made, Page, Paging, Route, Writing};
use crate::error::{Error, Result};
use crate::input::{name, place};
use crate::problem::Problems;
use crate::rights::{KeepBench, SeeBench};

const LINES: &str = "/rooms/{room}/bench/lines";
const LINE: &str = "/rooms/{room}/bench/lines/{id}";
const TRAYS: &str = "/rooms/{room}/bench/trays";
const TRAY: &str = "/rooms/{room}/bench/trays/{id}";

/// The routes.
#[must_use]
pub fn api() -> Vec<Route> {
    vec![
        Route::list(
            LINES,
            "Lines in their order, retired ones last.",
            list_lines,
        ),
        Route::one(LINE, "One line.", one_line),
        Route::add(LINES, "Add a line.", add_line),
        Route::change(LINE, "Set a line.", change_line),
        Route::list(
            TRAYS,
            "Trays in the order prints travel, retired ones last.",
            list_trays,
        ),
        Route::one(TRAY, "One tray.", one_tray),
        Route::add(TRAYS, "Add a tray.", add_tray),
        Route::change(TRAY, "Set a tray.", change_tray),
    ]
}

/// A line.
#[derive(Debug, Serialize, ToSchema)]
pub struct LineOut {
    /// Which.
    pub id: Uuid,
    /// What people call it.
    pub name: String,
    /// Its place on the bench.
    pub position: i32,
    /// The space it stands in; nothing is the room itself.
    pub space_id: Option<Uuid>,
    /// Whether it is used no more.
    pub is_retired: bool,
}

impl From<Line> for LineOut {
    fn from(line: Line) -> Self {
        Self {
            id: line.id,
            name: line.name,
            position: line.position,
            space_id: line.space_id,
            is_retired: line.is_retired,
        }
    }
}

/// A line to set.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct LineIn {
    /// What people call it.
    #[schema(max_length = 80)]
    pub name: String,
    /// Its place on the bench; nothing for the end, or for where it is.
    #[schema(minimum = 1, maximum = 1_000)]
    pub position: Option<i64>,
    /// The space it stands in; nothing is the room itself.
    #[serde(default)]
    pub space_id: Option<Uuid>,
    /// Whether it is used no more.
    #[serde(default)]
    pub is_retired: bool,
}

impl Input for LineIn {}

impl LineIn {
    fn read(self, id: Option<Uuid>) -> Result<NewLine> {
        let mut problems = Problems::default();
        let name = problems.take("name", name(&self.name));
        let position = problems.take("position", self.position.map(place).transpose());
        match (name, position) {
            (Some(name), Some(position)) => Ok(NewLine {
                id,
                name,
                position,
                space_id: self.space_id,
                is_retired: self.is_retired,
            }),
            _ => Err(Error::Invalid(problems)),
        }
    }
}

async fn list_lines(by: By<SeeBench>, paging: Paging) -> Result<Page<LineOut>> {
    let database = by.app.database();
    let lines = database.reading(by.permit.scope(), |tx| Box::pin(lines(tx)));
    let lines = lines.await?.into_iter().map(LineOut::from).collect();
    paging.cut(lines, |line: &LineOut| line.id.to_string())
}

async fn one_line(by: By<SeeBench>, id: Uuid) -> Result<LineOut> {
    let database = by.app.database();
    let found = database.reading(by.permit.scope(), move |tx| Box::pin(line(tx, id)));
    found.await?.map(LineOut::from).ok_or(Error::NotFound)
}

async fn add_line(by: Writing<KeepBench>, line: LineIn) -> Result<Made> {
    set_line(by, line.read(None)?).await
}

async fn change_line(by: Writing<KeepBench>, id: Uuid, line: LineIn) -> Result<Made> {
    set_line(by, line.read(Some(id))?).await
}

async fn set_line(by: Writing<KeepBench>, new: NewLine) -> Result<Made> {
    let done = actions::set_line(&by.app, &by.permit, by.key, new).await?;
    by.made(&done, "line", "bench/lines")
}

/// A tray. Measurements are inside.
#[derive(Debug, Serialize, ToSchema)]
pub struct TrayOut {
    /// Which.
    pub id: Uuid,
    /// The line it stands in.
    pub line_id: Uuid,
    /// What people call it.
    pub name: String,
    /// Its place in the line.
    pub position: i32,
    /// What prints do in it.
    pub step: Step,
    /// Long side of the floor in tenths of a millimetre.
    pub inside_long_tenths_mm: i32,
    /// Short side of the floor in tenths of a millimetre.
    pub inside_short_tenths_mm: i32,
    /// From the floor to the rim in tenths of a millimetre.
    pub inside_depth_tenths_mm: i32,
    /// What covers a print, in tenths of a millimetre.
    pub least_depth_tenths_mm: i32,
    /// Whether it is used no more.
    pub is_retired: bool,
}

impl From<Tray> for TrayOut {
    fn from(tray: Tray) -> Self {
        Self {
            id: tray.id,
            line_id: tray.line_id,
            name: tray.name,
            position: tray.position,
            step: tray.step,
            inside_long_tenths_mm: tray.inside_long_tenths_mm,
            inside_short_tenths_mm: tray.inside_short_tenths_mm,
            inside_depth_tenths_mm: tray.inside_depth_tenths_mm,
            least_depth_tenths_mm: tray.least_depth_tenths_mm,
            is_retired: tray.is_retired,
        }
    }
}

/// A tray to set. Measurements are inside.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct TrayIn {
    /// The line it stands in.
    pub line_id: Uuid,
    /// What people call it.
    #[schema(max_length = 80)]
    pub name: String,
    /// Its place in the line; nothing for the end, or for where it is.
    #[schema(minimum = 1, maximum = 1_000)]
    pub position: Option<i64>,
    /// What prints do in it; nothing for what they do, in a new one `any`.
    #[serde(default)]
    pub step: Option<Step>,
    /// Long side of the floor in tenths of a millimetre.
    #[schema(minimum = 500, maximum = 30_000)]
    pub inside_long_tenths_mm: i64,
    /// Short side of the floor in tenths of a millimetre.
    #[schema(minimum = 500, maximum = 30_000)]
    pub inside_short_tenths_mm: i64,
    /// From the floor to the rim in tenths of a millimetre.
    #[schema(minimum = 100, maximum = 5_000)]
    pub inside_depth_tenths_mm: i64,
    /// What covers a print, in tenths of a millimetre.
    #[schema(minimum = 10, maximum = 5_000)]
    pub least_depth_tenths_mm: i64,
    /// Whether it is used no more.
    #[serde(default)]
    pub is_retired: bool,
}

impl Input for TrayIn {
    const NAMES: &'static [(&'static str, &'static str)] = &[("line", "line_id")];
}

/// What a tray measures: long, short, depth, and what covers a print.
type Measures = (i32, i32, i32, i32);

impl TrayIn {
    fn read(self, id: Option<Uuid>) -> Result<NewTray> {
        let mut problems = Problems::default();
        let name = problems.take("name", name(&self.name));
        let position = problems.take("position", self.position.map(place).transpose());
        let measures = self.measures(&mut problems);
        match (name, position, measures) {
            (Some(name), Some(position), Some((long, short, depth, least)))
                if problems.is_empty() =>
            {
                Ok(NewTray {
                    id,
                    line_id: self.line_id,
                    name,
                    position,
                    step: self.step,
                    inside_long_tenths_mm: long,
                    inside_short_tenths_mm: short,
                    inside_depth_tenths_mm: depth,
                    least_depth_tenths_mm: least,
                    is_retired: self.is_retired,
                })
            }
            _ => Err(Error::Invalid(problems)),
        }
    }

    fn measures(&self, problems: &mut Problems) -> Option<Measures> {
        let (long, short) = (self.inside_long_tenths_mm, self.inside_short_tenths_mm);
        let (depth, least) = (self.inside_depth_tenths_mm, self.least_depth_tenths_mm);
        let long = problems.take("inside_long_tenths_mm", input::side(long));
        let short = problems.take("inside_short_tenths_mm", input::side(short));
        let depth = problems.take("inside_depth_tenths_mm", input::depth(depth));
        let least = problems.take("least_depth_tenths_mm", input::least_depth(least));
        let (long, short, depth, least) = (long?, short?, depth?, least?);
        problems.take("inside_long_tenths_mm", input::in_order(long, short));
        problems.take("least_depth_tenths_mm", input::below_the_rim(least, depth));
        Some((long, short, depth, least))
    }
}

async fn list_trays(by: By<SeeBench>, paging: Paging) -> Result<Page<TrayOut>> {
    let database = by.app.database();
    let trays = database.reading(by.permit.scope(), |tx| Box::pin(trays(tx)));
    let trays = trays.await?.into_iter().map(TrayOut::from).collect();
    paging.cut(trays, |tray: &TrayOut| tray.id.to_string())
}

async fn one_tray(by: By<SeeBench>, id: Uuid) -> Result<TrayOut> {
    let database = by.app.database();
    let found = database.reading(by.permit.scope(), move |tx| Box::pin(tray(tx, id)));
    found.await?.map(TrayOut::from).ok_or(Error::NotFound)
}

async fn add_tray(by: Writing<KeepBench>, tray: TrayIn) -> Result<Made> {
    set_tray(by, tray.read(None)?).await
}

async fn change_tray(by: Writing<KeepBench>, id: Uuid, tray: TrayIn) -> Result<Made> {
    set_tray(by, tray.read(Some(id))?).await
}

async fn set_tray(by: Writing<KeepBench>, new: NewTray) -> Result<Made> {
    let done = actions::set_tray(&by.app, &by.permit, by.key, new).await?;
    by.made(&done, "tray", "bench/trays")
}
