//! The page on which a steward copies the ingredients of a product from its sheet.

use axum::extract::{Path, State};
use axum::response::Response;
use uuid::Uuid;

use super::actions::set_ingredients;
use super::form::of_product;
use super::views::{IngredientRow, IngredientsForm, IngredientsPage};
use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::{Done, Key};
use crate::problem::Problems;
use crate::products::pages::{Ground, codes, shell, show};
use crate::products::{Ingredient, Product};
use crate::rights::KeepProducts;
use crate::router::Pages;
use crate::web::forms::{Form, in_words, mend, new_key, page, read_key, to_mend};
use crate::web::frame::Frame;
use crate::web::messages::ingredients as words;
use crate::web::numbers::Numbers;

const INGREDIENTS: &str = "/rooms/{room}/products/{product}/ingredients";

/// The routes of this page.
pub(in crate::products) fn pages() -> Pages {
    Pages::new().get(INGREDIENTS, form).post(INGREDIENTS, send)
}

/// The ingredients of a product as its own page lists them.
pub(in crate::products) fn ingredient_rows(
    product: &Product,
    numbers: Numbers,
) -> Vec<IngredientRow> {
    let row = |each: &Ingredient| IngredientRow {
        name: each.name.clone(),
        cas: each.cas.clone(),
        content: words::content(each.least_millionths, each.most_millionths, numbers),
        hazards: codes(&each.hazard_codes),
    };
    product.ingredients.iter().map(row).collect()
}

async fn form(
    State(app): State<App>,
    permit: Permit<KeepProducts>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit, id).await?;
    let form = of_product(&ground.product, new_key()?, ground.settings.numbers());
    let none = Problems::default();
    page(&form_page(&permit, &frame, &ground, (form, &none)))
}

fn form_page(
    permit: &Permit<KeepProducts>,
    frame: &Frame,
    ground: &Ground,
    (form, problems): (IngredientsForm, &Problems),
) -> IngredientsPage {
    let product = &ground.product;
    let problems = in_words(problems, ground.settings.numbers());
    IngredientsPage {
        shell: shell(
            permit,
            frame,
            &format!("/products/{}/ingredients", product.id),
        ),
        product_id: product.id.to_string(),
        product: product.name.clone(),
        rows: form.cells(&problems),
        key: form.key,
        is_complete: form.is_complete,
        problems,
    }
}

async fn send(
    State(app): State<App>,
    permit: Permit<KeepProducts>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<IngredientsForm>,
) -> Result<Response> {
    let (key, ground) = (read_key(&form.key)?, Ground::read(&app, &permit, id).await?);
    match as_typed(&app, &permit, key, (&ground, &form)).await {
        Ok(Some(_)) => Ok(show(&app, &permit, &id.to_string())),
        Ok(None) => {
            let shown = (form, &Problems::default());
            page(&form_page(&permit, &frame, &ground, shown))
        }
        Err(error) => {
            let shown = (form, &to_mend(error)?);
            mend(&form_page(&permit, &frame, &ground, shown))
        }
    }
}

/// The list kept as it was typed; nothing where more rows were asked for.
async fn as_typed(
    app: &App,
    permit: &Permit<KeepProducts>,
    key: Key,
    (ground, form): (&Ground, &IngredientsForm),
) -> Result<Option<Done>> {
    if form.step == "more" {
        return Ok(None);
    }
    let new = form.read(&ground.product, ground.settings.numbers());
    let new = new.map_err(Error::Invalid)?;
    set_ingredients(app, permit, key, new).await.map(Some)
}
