//! Papers as JSON.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;
use uuid::Uuid;

use super::actions::{self, NewPaperClass, NewSheetSize};
use super::{PaperClass, SheetSize, input, paper_classes, sheet_sizes};
use crate::api::{By, Input, Made, Page, Paging, Route, Writing};
use crate::error::{Error, Result};
use crate::input::name;
use crate::problem::Problems;
use crate::rights::{KeepPapers, SeePapers};

const SIZES: &str = "/rooms/{room}/papers/sheet-sizes";
const SIZE: &str = "/rooms/{room}/papers/sheet-sizes/{id}";
const CLASSES: &str = "/rooms/{room}/papers/classes";
const CLASS: &str = "/rooms/{room}/papers/classes/{id}";

/// The routes.
#[must_use]
pub fn api() -> Vec<Route> {
    vec![
        Route::list(SIZES, "Sheet sizes, retired ones last.", list_sizes),
        Route::one(SIZE, "One sheet size.", one_size),
        Route::add(SIZES, "Add a sheet size.", add_size),
        Route::change(SIZE, "Set a sheet size.", change_size),
        Route::list(CLASSES, "Paper classes, retired ones last.", list_classes),
        Route::one(CLASS, "One paper class.", one_class),
        Route::add(CLASSES, "Add a paper class.", add_class),
        Route::change(CLASS, "Set a paper class.", change_class),
    ]
}

/// A sheet size.
#[derive(Debug, Serialize, ToSchema)]
pub struct SheetSizeOut {
    /// Which.
    pub id: Uuid,
    /// What people call it.
    pub name: String,
    /// Long side in tenths of a millimetre.
    pub long_tenths_mm: i32,
    /// Short side in tenths of a millimetre.
    pub short_tenths_mm: i32,
    /// Whether it is offered no more.
    pub is_retired: bool,
}

impl From<SheetSize> for SheetSizeOut {
    fn from(size: SheetSize) -> Self {
        Self {
            id: size.id,
            name: size.name,
            long_tenths_mm: size.long_tenths_mm,
            short_tenths_mm: size.short_tenths_mm,
            is_retired: size.is_retired,
        }
    }
}

/// A sheet size to set.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SheetSizeIn {
    /// What people call it.
    #[schema(max_length = 80)]
    pub name: String,
    /// Long side in tenths of a millimetre.
    #[schema(minimum = 100, maximum = 20_000)]
    pub long_tenths_mm: i64,
    /// Short side in tenths of a millimetre.
    #[schema(minimum = 100, maximum = 20_000)]
    pub short_tenths_mm: i64,
    /// Whether it is offered no more.
    #[serde(default)]
    pub is_retired: bool,
}

impl Input for SheetSizeIn {}

impl SheetSizeIn {
    fn read(self, id: Option<Uuid>) -> Result<NewSheetSize> {
        let mut problems = Problems::default();
        let name = problems.take("name", name(&self.name));
        let long = problems.take("long_tenths_mm", input::side(self.long_tenths_mm));
        let short = problems.take("short_tenths_mm", input::side(self.short_tenths_mm));
        if let (Some(long), Some(short)) = (long, short) {
            problems.take("long_tenths_mm", input::in_order(long, short));
        }
        match (name, long, short) {
            (Some(name), Some(long_tenths_mm), Some(short_tenths_mm)) if problems.is_empty() => {
                Ok(NewSheetSize {
                    id,
                    name,
                    long_tenths_mm,
                    short_tenths_mm,
                    is_retired: self.is_retired,
                })
            }
            _ => Err(Error::Invalid(problems)),
        }
    }
}

async fn all_sizes(by: &By<SeePapers>) -> Result<Vec<SheetSizeOut>> {
    let database = by.app.database();
    let sizes = database.reading(by.permit.scope(), |tx| Box::pin(sheet_sizes(tx)));
    Ok(sizes.await?.into_iter().map(SheetSizeOut::from).collect())
}

async fn list_sizes(by: By<SeePapers>, paging: Paging) -> Result<Page<SheetSizeOut>> {
    paging.cut(all_sizes(&by).await?, |size| size.id.to_string())
}

async fn one_size(by: By<SeePapers>, id: Uuid) -> Result<SheetSizeOut> {
    let mut sizes = all_sizes(&by).await?.into_iter();
    sizes.find(|size| size.id == id).ok_or(Error::NotFound)
}

async fn add_size(by: Writing<KeepPapers>, size: SheetSizeIn) -> Result<Made> {
    set_size(by, size.read(None)?).await
}

async fn change_size(by: Writing<KeepPapers>, id: Uuid, size: SheetSizeIn) -> Result<Made> {
    set_size(by, size.read(Some(id))?).await
}

async fn set_size(by: Writing<KeepPapers>, new: NewSheetSize) -> Result<Made> {
    let done = actions::set_sheet_size(&by.app, &by.permit, by.key, new).await?;
    by.made(&done, "sheet_size", "papers/sheet-sizes")
}

/// A paper class.
#[derive(Debug, Serialize, ToSchema)]
pub struct PaperClassOut {
    /// Which.
    pub id: Uuid,
    /// What people call it.
    pub name: String,
    /// Whether it is offered no more.
    pub is_retired: bool,
}

impl From<PaperClass> for PaperClassOut {
    fn from(class: PaperClass) -> Self {
        Self {
            id: class.id,
            name: class.name,
            is_retired: class.is_retired,
        }
    }
}

/// A paper class to set.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct PaperClassIn {
    /// What people call it.
    #[schema(max_length = 80)]
    pub name: String,
    /// Whether it is offered no more.
    #[serde(default)]
    pub is_retired: bool,
}

impl Input for PaperClassIn {}

impl PaperClassIn {
    fn read(self, id: Option<Uuid>) -> Result<NewPaperClass> {
        let name = name(&self.name).map_err(|problem| Error::field("name", problem))?;
        Ok(NewPaperClass {
            id,
            name,
            is_retired: self.is_retired,
            silver: None,
            carry_over_ul_per_m2: None,
        })
    }
}

async fn all_classes(by: &By<SeePapers>) -> Result<Vec<PaperClassOut>> {
    let database = by.app.database();
    let classes = database.reading(by.permit.scope(), |tx| Box::pin(paper_classes(tx)));
    let classes = classes.await?.into_iter();
    Ok(classes.map(PaperClassOut::from).collect())
}

async fn list_classes(by: By<SeePapers>, paging: Paging) -> Result<Page<PaperClassOut>> {
    paging.cut(all_classes(&by).await?, |class| class.id.to_string())
}

async fn one_class(by: By<SeePapers>, id: Uuid) -> Result<PaperClassOut> {
    let mut classes = all_classes(&by).await?.into_iter();
    classes.find(|class| class.id == id).ok_or(Error::NotFound)
}

async fn add_class(by: Writing<KeepPapers>, class: PaperClassIn) -> Result<Made> {
    set_class(by, class.read(None)?).await
}

async fn change_class(by: Writing<KeepPapers>, id: Uuid, class: PaperClassIn) -> Result<Made> {
    set_class(by, class.read(Some(id))?).await
}

async fn set_class(by: Writing<KeepPapers>, new: NewPaperClass) -> Result<Made> {
    let done = actions::set_paper_class(&by.app, &by.permit, by.key, new).await?;
    by.made(&done, "paper_class", "papers/classes")
}
