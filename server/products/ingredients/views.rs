//! The pages of ingredients.

use askama::Template;
use serde::Deserialize;

use crate::products::views::CodeShown;
use crate::web::fields::{Cell, Problems};
use crate::web::shell::Shell;

/// An ingredient as the product's page lists it.
#[derive(Debug, Clone)]
pub struct IngredientRow {
    /// The substance.
    pub name: String,
    /// Its CAS number.
    pub cas: Option<String>,
    /// `1 % to 5 %`.
    pub content: String,
    /// Its own hazard statements.
    pub hazards: Vec<CodeShown>,
}

/// The list as typed: one value a row, in the order of the rows.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct IngredientsForm {
    /// Idempotency key: of the whole list.
    pub key: String,
    /// `keep`, or `more` for more rows.
    pub step: String,
    /// Names.
    pub name: Vec<String>,
    /// CAS numbers.
    pub cas: Vec<String>,
    /// Lower ends, in per cent.
    pub least: Vec<String>,
    /// Upper ends, in per cent.
    pub most: Vec<String>,
    /// H codes, any separator.
    pub hazard_codes: Vec<String>,
    /// `yes` where this is all that section 3 lists.
    pub is_complete: String,
}

/// The inputs of one ingredient.
#[derive(Debug, Clone)]
pub struct IngredientCells {
    /// Its number, from 1.
    pub number: usize,
    /// The substance.
    pub name: Cell,
    /// Its CAS number.
    pub cas: Cell,
    /// The lower end.
    pub least: Cell,
    /// The upper end.
    pub most: Cell,
    /// Its H codes.
    pub hazard_codes: Cell,
}

/// The list of a product: posts to `/products/{id}/ingredients`.
#[derive(Debug, Clone, Template)]
#[template(path = "products/ingredients.html")]
pub struct IngredientsPage {
    /// The frame.
    pub shell: Shell,
    /// The product's id.
    pub product_id: String,
    /// The product's name.
    pub product: String,
    /// Its rows, with blank ones at the end.
    pub rows: Vec<IngredientCells>,
    /// Idempotency key.
    pub key: String,
    /// `yes` where this is all that section 3 lists.
    pub is_complete: String,
    /// What to mend.
    pub problems: Problems,
}
