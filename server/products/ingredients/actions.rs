//! What a steward does with the ingredients of a product.

use serde::Serialize;
use uuid::Uuid;

use super::input;
use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::{Done, Key};
use crate::products::actions::write_next;
use crate::products::{Ingredient, store};
use crate::rights::KeepProducts;

/// The ingredients of a product as somebody copied them from its sheet.
#[derive(Clone, Debug, Serialize)]
pub struct NewIngredients {
    /// The product.
    pub product_id: Uuid,
    /// All of them, in the order of the sheet.
    pub ingredients: Vec<Ingredient>,
    /// Whether this is all that section 3 lists.
    pub composition_is_known: bool,
}

/// Sets the ingredients of a product, all at once: one that is not named is taken out.
///
/// # Errors
/// None of that id; too many.
pub async fn set_ingredients(
    app: &App,
    permit: &Permit<KeepProducts>,
    key: Key,
    new: NewIngredients,
) -> Result<Done> {
    permit
        .write(app, key, &new.clone(), move |book| {
            Box::pin(async move {
                input::count(new.ingredients.len()).map_err(Error::Refused)?;
                let product = store::product(book.tx(), new.product_id).await?;
                let mut product = product.ok_or(Error::NotFound)?;
                product.ingredients = new.ingredients;
                product.composition_is_known = new.composition_is_known;
                write_next(book, product).await
            })
        })
        .await
}
