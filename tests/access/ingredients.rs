//! What the sheet of a product of the house lists.

use uuid::Uuid;
use wetside::products::Ingredient;
use wetside::products::ingredients::actions::{NewIngredients, set_ingredients};
use wetside::rights::KeepProducts;

use crate::harness::{Stage, new_key};

/// One ingredient of a product.
pub(super) async fn ingredients(stage: &Stage, product_id: Uuid) {
    let permit = stage.permit::<KeepProducts>(&stage.cast.steward).await;
    let new = NewIngredients {
        product_id,
        ingredients: vec![Ingredient {
            name: "Hydroquinone".to_owned(),
            cas: Some("123-31-9".to_owned()),
            least_millionths: Some(10_000),
            most_millionths: Some(50_000),
            hazard_codes: vec!["H317".to_owned()],
        }],
        composition_is_known: true,
    };
    let app = &stage.installation.app;
    let set = set_ingredients(app, &permit.unwrap(), new_key(), new).await;
    set.unwrap();
}
