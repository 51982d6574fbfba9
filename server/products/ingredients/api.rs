//! Ingredients as JSON.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;
use uuid::Uuid;

use super::actions::{self, NewIngredients};
use super::input;
use crate::api::{By, Input, Made, Route, Writing};
use crate::error::{Error, Result};
use crate::input::name;
use crate::problem::Problems;
use crate::products::input::hazard_codes;
use crate::products::{Concern, Ingredient, Product, product};
use crate::rights::{KeepProducts, SeeProducts};

const INGREDIENTS: &str = "/rooms/{room}/products/{id}/ingredients";

/// The routes.
#[must_use]
pub fn api() -> Vec<Route> {
    vec![
        Route::one(
            INGREDIENTS,
            "What the data sheet of a product lists, and what follows from it at any content.",
            composition,
        ),
        Route::change(
            INGREDIENTS,
            "Set the ingredients of a product, all at once: one that is not named is taken out.",
            change,
        ),
    ]
}

/// What a product is made of, as far as its sheet says.
#[derive(Debug, Serialize, ToSchema)]
pub struct CompositionOut {
    /// The ingredients, in the order of the sheet.
    pub ingredients: Vec<IngredientOut>,
    /// Whether a steward said that this is all that section 3 lists.
    pub composition_is_known: bool,
    /// What it asks of whoever handles it, from its own codes and from those of every
    /// ingredient at any content. An empty list does not call it harmless.
    pub concerns: Vec<Concern>,
}

/// An ingredient as the supplier's data sheet lists it.
#[derive(Debug, Serialize, ToSchema)]
pub struct IngredientOut {
    /// The substance.
    pub name: String,
    /// Its number in the CAS Registry, where the sheet has one.
    pub cas: Option<String>,
    /// The least it may be of the product, by mass, in millionths.
    pub least_millionths: Option<i32>,
    /// The most it may be, by mass, in millionths.
    pub most_millionths: Option<i32>,
    /// H codes of the substance itself.
    pub hazard_codes: Vec<String>,
}

impl From<Product> for CompositionOut {
    fn from(product: Product) -> Self {
        Self {
            concerns: product.concerns(),
            ingredients: product.ingredients.into_iter().map(Into::into).collect(),
            composition_is_known: product.composition_is_known,
        }
    }
}

impl From<Ingredient> for IngredientOut {
    fn from(ingredient: Ingredient) -> Self {
        Self {
            name: ingredient.name,
            cas: ingredient.cas,
            least_millionths: ingredient.least_millionths,
            most_millionths: ingredient.most_millionths,
            hazard_codes: ingredient.hazard_codes,
        }
    }
}

async fn composition(by: By<SeeProducts>, id: Uuid) -> Result<CompositionOut> {
    let database = by.app.database();
    let found = database.reading(by.permit.scope(), move |tx| Box::pin(product(tx, id)));
    found
        .await?
        .map(CompositionOut::from)
        .ok_or(Error::NotFound)
}

/// The ingredients of a product to set.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct CompositionIn {
    /// All of them, in the order of the sheet.
    #[schema(max_items = 40)]
    pub ingredients: Vec<IngredientIn>,
    /// Whether this is all that section 3 lists. Until somebody says so, what is in the
    /// product counts as unknown.
    #[serde(default)]
    pub composition_is_known: bool,
}

/// An ingredient as the supplier's data sheet lists it.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct IngredientIn {
    /// The substance.
    #[schema(max_length = 80)]
    pub name: String,
    /// Its number in the CAS Registry, such as `123-31-9`; its last digit is verified.
    pub cas: Option<String>,
    /// The least it may be of the product, by mass, in millionths.
    #[schema(minimum = 0, maximum = 1_000_000)]
    pub least_millionths: Option<i64>,
    /// The most it may be, by mass, in millionths.
    #[schema(minimum = 0, maximum = 1_000_000)]
    pub most_millionths: Option<i64>,
    /// H codes of the substance itself.
    #[serde(default)]
    pub hazard_codes: Vec<String>,
}

impl Input for CompositionIn {}

impl CompositionIn {
    fn read(self, product_id: Uuid) -> Result<NewIngredients> {
        let mut problems = Problems::default();
        let listed = self.ingredients.into_iter().enumerate();
        let ingredients = listed
            .map(|(place, each)| each.read(place, &mut problems))
            .collect();
        match problems.is_empty() {
            true => Ok(NewIngredients {
                product_id,
                ingredients,
                composition_is_known: self.composition_is_known,
            }),
            false => Err(Error::Invalid(problems)),
        }
    }
}

impl IngredientIn {
    /// What could not be read is empty, and has its problem.
    fn read(self, place: usize, problems: &mut Problems) -> Ingredient {
        let at = |field: &str| format!("ingredients[{place}].{field}");
        let share = |share: Option<i64>| share.map(input::share).transpose();
        let codes = hazard_codes(self.hazard_codes.iter().map(String::as_str));
        let cas = input::cas(self.cas.as_deref().unwrap_or_default());
        let least = problems.take(at("least_millionths"), share(self.least_millionths));
        let most = problems.take(at("most_millionths"), share(self.most_millionths));
        let (least, most) = (least.flatten(), most.flatten());
        problems.take(at("most_millionths"), input::range(least, most));
        Ingredient {
            name: problems
                .take(at("name"), name(&self.name))
                .unwrap_or_default(),
            cas: problems.take(at("cas"), cas).flatten(),
            least_millionths: least,
            most_millionths: most,
            hazard_codes: problems.take(at("hazard_codes"), codes).unwrap_or_default(),
        }
    }
}

async fn change(by: Writing<KeepProducts>, id: Uuid, list: CompositionIn) -> Result<Made> {
    let new = list.read(id)?;
    let done = actions::set_ingredients(&by.app, &by.permit, by.key, new).await?;
    by.made(&done, "product", "products")
}
