//! Products as JSON.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;
use utoipa::openapi::schema::ArrayBuilder;
use utoipa::openapi::{ObjectBuilder, RefOr, Schema, Type};
use uuid::Uuid;

use super::actions::{self, NewDilution, NewProduct};
use super::{CapacityFigure, DilutionFigures, Kind, Place, Product, input, product, products};
use crate::api::{By, Input, Made, Page, Paging, Route, Writing};
use crate::darkroom::incompatibility::Group;
use crate::error::{Error, Result};
use crate::input::{date, name, needed_note};
use crate::problem::{Problem, Problems};
use crate::rights::{KeepProducts, SeeProducts};

const PRODUCTS: &str = "/rooms/{room}/products";
const PRODUCT: &str = "/rooms/{room}/products/{id}";

/// The routes.
#[must_use]
pub fn api() -> Vec<Route> {
    vec![
        Route::list(PRODUCTS, "Products by name, retired ones last.", list),
        Route::one(PRODUCT, "One product.", one),
        Route::add(PRODUCTS, "Add a product.", add),
        Route::change(
            PRODUCT,
            "Set a product; mixes that stand keep their figures.",
            change,
        ),
    ]
}

/// A product with its figures.
#[derive(Debug, Serialize, ToSchema)]
pub struct ProductOut {
    /// Which.
    pub id: Uuid,
    /// Counts its changes.
    pub version: i32,
    /// What people call it.
    pub name: String,
    /// Which bath it makes.
    pub kind: Kind,
    /// The groups that decide what it may be poured with.
    #[schema(schema_with = groups_schema)]
    pub groups: Vec<Group>,
    /// Whether air uses it up.
    pub oxidises: bool,
    /// The depth the tray lives hold for, in tenths of a millimetre.
    pub depth_reference_tenths_mm: i32,
    /// Whether only a steward mixes it.
    pub steward_only: bool,
    /// H codes as supplied.
    pub hazard_codes: Vec<String>,
    /// P codes as supplied.
    pub precaution_codes: Vec<String>,
    /// The date of the safety data sheet on file; without one nobody mixes it.
    #[schema(format = Date)]
    pub data_sheet_on: Option<String>,
    /// Whether it is offered no more.
    pub is_retired: bool,
    /// How it is used.
    pub dilutions: Vec<DilutionOut>,
}

/// The figures of one dilution.
#[derive(Debug, Serialize, ToSchema)]
pub struct DilutionOut {
    /// Which.
    pub id: Uuid,
    /// N of 1+N, in thousandths.
    pub parts_thousandths: i64,
    /// How long it keeps in an open tray, in seconds.
    pub tray_life_s: i64,
    /// How long it keeps in a stoppered bottle, in seconds.
    pub bottle_life_s: i64,
    /// Where the lives come from.
    pub life_basis: String,
    /// How much paper a litre takes.
    pub capacities: Vec<CapacityOut>,
}

/// How much of one paper class a litre takes.
#[derive(Debug, Serialize, ToSchema)]
pub struct CapacityOut {
    /// The class.
    pub paper_class_id: Uuid,
    /// 8×10 in sheets a litre, in thousandths.
    pub sheets_per_litre_thousandths: i64,
    /// Where the figure comes from.
    pub basis: String,
}

impl From<Product> for ProductOut {
    fn from(product: Product) -> Self {
        Self {
            id: product.id,
            version: product.version,
            name: product.name,
            kind: product.kind,
            groups: product.groups,
            oxidises: product.oxidises,
            depth_reference_tenths_mm: product.depth_reference_tenths_mm,
            steward_only: product.steward_only,
            hazard_codes: product.hazard_codes,
            precaution_codes: product.precaution_codes,
            data_sheet_on: product.data_sheet_on,
            is_retired: product.is_retired,
            dilutions: product.dilutions.into_iter().map(Into::into).collect(),
        }
    }
}

impl From<DilutionFigures> for DilutionOut {
    fn from(figures: DilutionFigures) -> Self {
        Self {
            id: figures.id,
            parts_thousandths: figures.parts_thousandths,
            tray_life_s: figures.tray_life_s,
            bottle_life_s: figures.bottle_life_s,
            life_basis: figures.life_basis,
            capacities: figures.capacities.into_iter().map(Into::into).collect(),
        }
    }
}

impl From<CapacityFigure> for CapacityOut {
    fn from(figure: CapacityFigure) -> Self {
        Self {
            paper_class_id: figure.paper_class_id,
            sheets_per_litre_thousandths: figure.sheets_per_litre_thousandths,
            basis: figure.basis,
        }
    }
}

/// A product to set, whole.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct ProductIn {
    /// What people call it.
    #[schema(max_length = 80)]
    pub name: String,
    /// Which bath it makes.
    pub kind: Kind,
    /// The groups that decide what it may be poured with; none is unknown, and
    /// the unknown goes with nothing.
    #[schema(schema_with = groups_schema)]
    pub groups: Vec<Group>,
    /// Whether air uses it up.
    pub oxidises: bool,
    /// The depth the tray lives hold for, in tenths of a millimetre.
    #[schema(minimum = 10, maximum = 5_000)]
    pub depth_reference_tenths_mm: i64,
    /// Whether only a steward mixes it.
    #[serde(default)]
    pub steward_only: bool,
    /// H codes as supplied.
    #[serde(default)]
    pub hazard_codes: Vec<String>,
    /// P codes as supplied.
    #[serde(default)]
    pub precaution_codes: Vec<String>,
    /// The date of the safety data sheet on file; without one nobody mixes it.
    #[schema(format = Date)]
    pub data_sheet_on: Option<String>,
    /// Whether it is offered no more.
    #[serde(default)]
    pub is_retired: bool,
    /// How it is used.
    pub dilutions: Vec<DilutionIn>,
}

/// A dilution to set.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct DilutionIn {
    /// N of 1+N, in thousandths.
    #[schema(minimum = 0, maximum = 1_000_000)]
    pub parts_thousandths: i64,
    /// How long it keeps in an open tray, in seconds.
    #[schema(minimum = 60, maximum = 157_680_000)]
    pub tray_life_s: i64,
    /// How long it keeps in a stoppered bottle, in seconds.
    #[schema(minimum = 60, maximum = 157_680_000)]
    pub bottle_life_s: i64,
    /// Where the lives come from.
    #[schema(max_length = 200)]
    pub life_basis: String,
    /// How much paper a litre takes.
    #[serde(default)]
    pub capacities: Vec<CapacityIn>,
}

/// How much of one paper class a litre takes.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct CapacityIn {
    /// The class.
    pub paper_class_id: Uuid,
    /// 8×10 in sheets a litre, in thousandths.
    #[schema(minimum = 1_000, maximum = 10_000_000)]
    pub sheets_per_litre_thousandths: i64,
    /// Where the figure comes from.
    #[schema(max_length = 200)]
    pub basis: String,
}

impl Input for ProductIn {
    const NAMES: &'static [(&'static str, &'static str)] = &[("capacities", "dilutions")];
}

impl ProductIn {
    fn read(self, id: Option<Uuid>) -> Result<NewProduct> {
        let mut problems = Problems::default();
        let hazards = input::hazard_codes(self.hazard_codes.iter().map(String::as_str));
        let precautions = input::precaution_codes(self.precaution_codes.iter().map(String::as_str));
        let depth = input::depth_reference(self.depth_reference_tenths_mm);
        let sheet = self.data_sheet_on.as_deref().map(date).transpose();
        let new = NewProduct {
            id,
            name: problems.take("name", name(&self.name)).unwrap_or_default(),
            kind: self.kind,
            groups: self.groups,
            oxidises: self.oxidises,
            depth_reference_tenths_mm: problems
                .take("depth_reference_tenths_mm", depth)
                .unwrap_or_default(),
            steward_only: self.steward_only,
            hazard_codes: problems.take("hazard_codes", hazards).unwrap_or_default(),
            precaution_codes: problems
                .take("precaution_codes", precautions)
                .unwrap_or_default(),
            data_sheet_on: problems.take("data_sheet_on", sheet).flatten(),
            is_retired: self.is_retired,
            dilutions: dilutions(self.dilutions, &mut problems),
            ..NewProduct::named(String::new(), self.kind)
        };
        match problems.is_empty() {
            true => Ok(new),
            false => Err(Error::Invalid(problems)),
        }
    }
}

fn dilutions(all: Vec<DilutionIn>, problems: &mut Problems) -> Vec<NewDilution> {
    problems.take("dilutions", input::dilution_count(all.len()));
    let mut read: Vec<NewDilution> = Vec::new();
    for (index, dilution) in all.into_iter().enumerate() {
        let at = format!("dilutions[{index}]");
        let new = dilution.read(&at, problems);
        if read
            .iter()
            .any(|each| each.parts_thousandths == new.parts_thousandths)
        {
            problems.add(format!("{at}.parts_thousandths"), Problem::Twice);
        }
        read.push(new);
    }
    read
}

impl DilutionIn {
    /// The figures; where one is wrong, the problem says so and none is used.
    fn read(self, at: &str, problems: &mut Problems) -> NewDilution {
        let mut take = |field: &str, read| {
            problems
                .take(format!("{at}.{field}"), read)
                .unwrap_or_default()
        };
        let parts_thousandths = take("parts_thousandths", input::parts(self.parts_thousandths));
        let tray_life_s = take("tray_life_s", input::life(self.tray_life_s));
        let bottle_life_s = take("bottle_life_s", input::life(self.bottle_life_s));
        let basis = needed_note(&self.life_basis);
        let life_basis = problems.take(format!("{at}.life_basis"), basis);
        NewDilution {
            parts_thousandths,
            tray_life_s,
            bottle_life_s,
            life_basis: life_basis.unwrap_or_default(),
            capacities: capacities(self.capacities, at, problems),
            ..NewDilution::default()
        }
    }
}

fn capacities(all: Vec<CapacityIn>, at: &str, problems: &mut Problems) -> Vec<CapacityFigure> {
    let mut read: Vec<CapacityFigure> = Vec::new();
    for (index, figure) in all.into_iter().enumerate() {
        let at = format!("{at}.capacities[{index}]");
        let id = figure.paper_class_id;
        if read.iter().any(|other| other.paper_class_id == id) {
            problems.add(format!("{at}.paper_class_id"), Problem::Twice);
        }
        let sheets = input::capacity(figure.sheets_per_litre_thousandths);
        let sheets = problems.take(format!("{at}.sheets_per_litre_thousandths"), sheets);
        let basis = problems.take(format!("{at}.basis"), needed_note(&figure.basis));
        read.push(CapacityFigure {
            paper_class_id: id,
            place: Place::Single,
            sheets_per_litre_thousandths: sheets.unwrap_or_default(),
            basis: basis.unwrap_or_default(),
        });
    }
    read
}

/// The groups as JSON writes them, from the table of incompatibilities.
fn groups_schema() -> RefOr<Schema> {
    let names = Group::ALL
        .into_iter()
        .filter_map(|group| serde_json::to_value(group).ok());
    let group = ObjectBuilder::new()
        .schema_type(Type::String)
        .enum_values(Some(names.collect::<Vec<_>>()));
    ArrayBuilder::new().items(group).into()
}

async fn list(by: By<SeeProducts>, paging: Paging) -> Result<Page<ProductOut>> {
    let database = by.app.database();
    let products = database.reading(by.permit.scope(), |tx| Box::pin(products(tx)));
    let products = products.await?.into_iter().map(ProductOut::from).collect();
    paging.cut(products, |product: &ProductOut| product.id.to_string())
}

async fn one(by: By<SeeProducts>, id: Uuid) -> Result<ProductOut> {
    let database = by.app.database();
    let found = database.reading(by.permit.scope(), move |tx| Box::pin(product(tx, id)));
    found.await?.map(ProductOut::from).ok_or(Error::NotFound)
}

async fn add(by: Writing<KeepProducts>, product: ProductIn) -> Result<Made> {
    set(by, product.read(None)?).await
}

async fn change(by: Writing<KeepProducts>, id: Uuid, product: ProductIn) -> Result<Made> {
    set(by, product.read(Some(id))?).await
}

async fn set(by: Writing<KeepProducts>, new: NewProduct) -> Result<Made> {
    let done = actions::set_product(&by.app, &by.permit, by.key, new).await?;
    by.made(&done, "product", "products")
}
