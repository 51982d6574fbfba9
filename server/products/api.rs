//! Products as JSON.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;
use utoipa::openapi::schema::ArrayBuilder;
use utoipa::openapi::{ObjectBuilder, RefOr, Schema, Type};
use uuid::Uuid;

use super::actions::{self, NewProduct};
use super::api_dilutions::{DilutionIn, DilutionOut, dilutions};
use super::entries::acid_text;
use super::{Form, Kind, Product, TimePoint, check, ingredients, input, product, products};
use crate::api::{By, Input, Made, Page, Paging, Route, Writing};
use crate::darkroom::incompatibility::Group;
use crate::darkroom::stop_bath::StopAcid;
use crate::error::{Error, Result};
use crate::input::{date, name, note};
use crate::problem::Problems;
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
    .into_iter()
    .chain(ingredients::api::api())
    .collect()
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
    /// What it is before it is mixed.
    pub form: Form,
    /// A kit's parts, in thousandths; the water of 1+N is N times all of them together.
    pub kit_parts_thousandths: Vec<i64>,
    /// The stock solution that a packet of powder makes, in microlitres.
    pub packet_makes_ul: Option<i64>,
    /// Whether a part of a packet may be taken.
    pub packets_may_be_divided: bool,
    /// How long a powder's stock solution keeps in a full bottle, in seconds.
    pub stock_full_life_s: Option<i64>,
    /// The same from the first draw on, in seconds.
    pub stock_part_life_s: Option<i64>,
    /// The age of a mix that no top-up moves, in seconds.
    pub longest_life_s: Option<i64>,
    /// The coldest it works at, in tenths of a degree Celsius.
    pub coldest_tenths_celsius: Option<i32>,
    /// The warmest it works at, in tenths of a degree Celsius.
    pub warmest_tenths_celsius: Option<i32>,
    /// The warmest water it may be mixed with; null is 40 °C.
    pub water_warmest_tenths_celsius: Option<i32>,
    /// Two points of its sheet, or none.
    pub time_points: Vec<TimePoint>,
    /// A stop bath's acid; null where its capacity alone counts.
    #[schema(schema_with = acid_schema)]
    pub stop_acid: Option<StopAcid>,
    /// The pH at which a stop bath is used up, in thousandths; null is 5.2.
    pub limit_ph_thousandths: Option<i64>,
    /// The bromide at which a developer is used up.
    pub bromide_limit_mg_per_litre: Option<i64>,
    /// Where its form's figures, temperatures, times and limits come from.
    pub figures_basis: String,
    /// How it is used.
    pub dilutions: Vec<DilutionOut>,
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
            form: product.form,
            kit_parts_thousandths: product.kit_parts_thousandths,
            packet_makes_ul: product.packet_makes_ul,
            packets_may_be_divided: product.packets_may_be_divided,
            stock_full_life_s: product.stock_full_life_s,
            stock_part_life_s: product.stock_part_life_s,
            longest_life_s: product.longest_life_s,
            coldest_tenths_celsius: product.coldest_tenths_celsius,
            warmest_tenths_celsius: product.warmest_tenths_celsius,
            water_warmest_tenths_celsius: product.water_warmest_tenths_celsius,
            time_points: product.time_points,
            stop_acid: product.stop_acid,
            limit_ph_thousandths: product.limit_ph_thousandths,
            bromide_limit_mg_per_litre: product.bromide_limit_mg_per_litre,
            figures_basis: product.figures_basis,
            dilutions: product.dilutions.into_iter().map(Into::into).collect(),
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
    /// What it is before it is mixed.
    #[serde(default)]
    pub form: Form,
    /// A kit's two to eight parts, in thousandths; no other form has any.
    #[serde(default)]
    #[schema(max_items = 8)]
    pub kit_parts_thousandths: Vec<i64>,
    /// The stock solution that a packet of powder makes, in microlitres; a powder needs it.
    #[schema(minimum = 10_000, maximum = 1_000_000_000)]
    pub packet_makes_ul: Option<i64>,
    /// Whether a part of a packet may be taken.
    #[serde(default)]
    pub packets_may_be_divided: bool,
    /// How long a powder's stock solution keeps in a full bottle, in seconds.
    #[schema(minimum = 60, maximum = 157_680_000)]
    pub stock_full_life_s: Option<i64>,
    /// The same from the first draw on, in seconds.
    #[schema(minimum = 60, maximum = 157_680_000)]
    pub stock_part_life_s: Option<i64>,
    /// The age of a mix that no top-up moves, in seconds.
    #[schema(minimum = 60, maximum = 157_680_000)]
    pub longest_life_s: Option<i64>,
    /// The coldest it works at, in tenths of a degree Celsius.
    #[schema(minimum = 0, maximum = 600)]
    pub coldest_tenths_celsius: Option<i32>,
    /// The warmest it works at, in tenths of a degree Celsius.
    #[schema(minimum = 0, maximum = 600)]
    pub warmest_tenths_celsius: Option<i32>,
    /// The warmest water it may be mixed with; null is 40 °C.
    #[schema(minimum = 0, maximum = 600)]
    pub water_warmest_tenths_celsius: Option<i32>,
    /// Two points of its sheet 2 °C apart or more, or none.
    #[serde(default)]
    #[schema(max_items = 2)]
    pub time_points: Vec<TimePoint>,
    /// A stop bath's acid; null where its capacity alone counts.
    #[schema(schema_with = acid_schema)]
    pub stop_acid: Option<StopAcid>,
    /// The pH at which a stop bath is used up, in thousandths; null is 5.2.
    #[schema(minimum = 2_000, maximum = 9_000)]
    pub limit_ph_thousandths: Option<i64>,
    /// The bromide at which a developer is used up.
    #[schema(minimum = 1, maximum = 100_000)]
    pub bromide_limit_mg_per_litre: Option<i64>,
    /// Where its form's figures, temperatures, times and limits come from.
    #[serde(default)]
    #[schema(max_length = 200)]
    pub figures_basis: String,
    /// How it is used.
    pub dilutions: Vec<DilutionIn>,
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
        let basis = note(&self.figures_basis);
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
            form: self.form,
            kit_parts_thousandths: self.kit_parts_thousandths,
            packet_makes_ul: self.packet_makes_ul,
            packets_may_be_divided: self.packets_may_be_divided,
            stock_full_life_s: self.stock_full_life_s,
            stock_part_life_s: self.stock_part_life_s,
            longest_life_s: self.longest_life_s,
            coldest_tenths_celsius: self.coldest_tenths_celsius,
            warmest_tenths_celsius: self.warmest_tenths_celsius,
            water_warmest_tenths_celsius: self.water_warmest_tenths_celsius,
            time_points: self.time_points,
            stop_acid: self.stop_acid,
            limit_ph_thousandths: self.limit_ph_thousandths,
            bromide_limit_mg_per_litre: self.bromide_limit_mg_per_litre,
            figures_basis: problems.take("figures_basis", basis).unwrap_or_default(),
            dilutions: dilutions(self.dilutions, &mut problems),
        };
        problems.append(check::product(&new));
        match problems.is_empty() {
            true => Ok(new),
            false => Err(Error::Invalid(problems)),
        }
    }
}

fn acid_schema() -> RefOr<Schema> {
    let names = [StopAcid::Acetic, StopAcid::Citric];
    let names = names.into_iter().filter_map(|acid| acid_text(acid).ok());
    let acid = ObjectBuilder::new()
        .schema_type(Type::String)
        .enum_values(Some(names.collect::<Vec<_>>()));
    acid.into()
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
