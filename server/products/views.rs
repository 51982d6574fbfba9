//! Products with their dilutions, lives, capacities and safety data.

use askama::Template;
use serde::Deserialize;

use crate::web::dates::Moment;
use crate::web::desk::RetiredRow;
use crate::web::fields::{Choice, Problems};
use crate::web::shell::Shell;

/// A product of the list.
#[derive(Debug, Clone)]
pub struct ProductRow {
    /// Its id.
    pub id: String,
    /// Its name.
    pub name: String,
    /// `Developer`.
    pub kind: String,
    /// `1+9, 1+14`.
    pub dilutions: String,
    /// Is no safety data on file? Then it cannot be mixed.
    pub lacks_safety_data: bool,
}

/// The products.
#[derive(Debug, Clone, Template)]
#[template(path = "products/products.html")]
pub struct ProductsPage {
    /// The frame.
    pub shell: Shell,
    /// The products.
    pub products: Vec<ProductRow>,
    /// What is retired; each posts to its `/restore`.
    pub retired: Vec<RetiredRow>,
    /// Idempotency key of what brings one back.
    pub key: String,
    /// May this reader add one?
    pub may_change: bool,
}

/// A capacity as shown.
#[derive(Debug, Clone)]
pub struct CapacityShown {
    /// The paper class.
    pub paper_class: String,
    /// `100 sheets of 8×10 in per litre`.
    pub takes: String,
    /// `common practice, no source`.
    pub basis: String,
}

/// A dilution as shown.
#[derive(Debug, Clone)]
pub struct DilutionShown {
    /// Its id, for `/products/{product}/dilutions/{id}`.
    pub id: String,
    /// `1+9`.
    pub name: String,
    /// `8 h`.
    pub tray_life: String,
    /// `24 h`.
    pub bottle_life: String,
    /// `common practice, no source`.
    pub life_basis: String,
    /// Its capacities.
    pub capacities: Vec<CapacityShown>,
}

/// A code of the data sheet with its text.
#[derive(Debug, Clone)]
pub struct CodeShown {
    /// `H317`.
    pub code: String,
    /// Its text.
    pub text: String,
}

/// One product.
#[derive(Debug, Clone, Template)]
#[template(path = "products/product.html")]
pub struct ProductPage {
    /// The frame.
    pub shell: Shell,
    /// Its id.
    pub id: String,
    /// Its name.
    pub name: String,
    /// `Developer`.
    pub kind: String,
    /// Is it offered no more?
    pub is_retired: bool,
    /// Its version; each change makes a new one.
    pub version: i32,
    /// Its dilutions.
    pub dilutions: Vec<DilutionShown>,
    /// Hazard statements as supplied.
    pub hazards: Vec<CodeShown>,
    /// Precautionary statements as supplied.
    pub precautions: Vec<CodeShown>,
    /// Chemical groups that decide what it may meet, in words.
    pub groups: Vec<String>,
    /// The date of its safety data sheet.
    pub data_sheet_on: Option<Moment>,
    /// May only a steward mix it?
    pub is_steward_only: bool,
    /// Does it oxidise, and at which depth was its tray life given? `at 8 mm depth`.
    pub oxidises: Option<String>,
    /// May this reader change it?
    pub may_change: bool,
}

/// A product as typed.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct ProductForm {
    /// Idempotency key.
    pub key: String,
    /// Its name.
    pub name: String,
    /// `developer`, `stop_bath`, `fixer`, `wash_aid` or `toner`.
    pub kind: String,
    /// The chemical groups ticked, by the names the API has for them.
    pub groups: Vec<String>,
    /// `yes` where it oxidises in an open tray.
    pub oxidises: String,
    /// The depth its tray life is given for, in millimetres.
    pub depth_reference: String,
    /// `yes` where only a steward may mix it.
    pub steward_only: String,
    /// H codes, as supplied, any separator.
    pub hazard_codes: String,
    /// P codes, as supplied, any separator.
    pub precaution_codes: String,
    /// The data sheet's date, `2026-03-01`.
    pub data_sheet_on: String,
}

/// A new product (posts to `/products`) or a change (posts to `/products/{id}`;
/// `/products/{id}/retire` asks first).
#[derive(Debug, Clone, Template)]
#[template(path = "products/edit.html")]
pub struct ProductFormPage {
    /// The frame.
    pub shell: Shell,
    /// Its id; none for a new one.
    pub id: Option<String>,
    /// Its name as it is on file; empty for a new one.
    pub name: String,
    /// As typed.
    pub form: ProductForm,
    /// Every chemical group.
    pub groups: Vec<Choice>,
    /// What to mend.
    pub problems: Problems,
}

/// A dilution as typed; `capacity` and `basis` follow the order of the paper classes.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct DilutionForm {
    /// Idempotency key.
    pub key: String,
    /// The N of 1+N.
    pub parts: String,
    /// Hours in the open tray, or any unit of time behind the number.
    pub tray_life: String,
    /// The same in a stoppered bottle.
    pub bottle_life: String,
    /// Where the lives come from.
    pub life_basis: String,
    /// The paper classes' ids.
    pub paper_class: Vec<String>,
    /// Sheets of 8×10 in per litre, one a paper class; empty: not for this class.
    pub capacity: Vec<String>,
    /// Where each comes from.
    pub basis: Vec<String>,
}

/// One paper class in the dilution's form.
#[derive(Debug, Clone)]
pub struct CapacityField {
    /// The paper class's id.
    pub paper_class: String,
    /// Its name.
    pub name: String,
    /// Sheets of 8×10 in per litre as typed.
    pub capacity: String,
    /// Where it comes from, as typed.
    pub basis: String,
}

/// A new dilution (posts to `/products/{product}/dilutions`) or a change (posts to
/// `/products/{product}/dilutions/{id}`). Problems of the nth class are of `capacity-n`.
#[derive(Debug, Clone, Template)]
#[template(path = "products/dilution.html")]
pub struct DilutionFormPage {
    /// The frame.
    pub shell: Shell,
    /// The product's id.
    pub product_id: String,
    /// The product's name.
    pub product: String,
    /// The dilution's id; none for a new one. `…/{id}/remove` asks first.
    pub id: Option<String>,
    /// `1+9`, as it is on file; empty for a new one.
    pub name: String,
    /// As typed.
    pub form: DilutionForm,
    /// One a paper class, with what was typed.
    pub capacities: Vec<CapacityField>,
    /// What to mend.
    pub problems: Problems,
}
