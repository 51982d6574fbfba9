//! The pages of one dilution.

use axum::extract::{Path, State};
use axum::response::Response;
use uuid::Uuid;

use super::dilution_form::{FIELDS, fields, new_dilution, of_dilution, places, read_dilution};
use super::dilutions::{DilutionRemoval, remove_dilution, set_dilution};
use super::pages::{Ground, shell, show};
use super::views::{DilutionForm, DilutionFormPage, PlaceFields};
use super::{DilutionFigures, Form as ProductForm, Kind, Place};
use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::problem::Problems;
use crate::rights::KeepProducts;
use crate::router::Pages;
use crate::web::desk::{KeyForm, ask, renamed};
use crate::web::forms::{Form, in_words, mend, new_key, page, read_key, to_mend};
use crate::web::frame::Frame;
use crate::web::messages::{desk, products as words};

const DILUTIONS: &str = "/rooms/{room}/products/{product}/dilutions";

/// The routes of these pages.
pub(super) fn pages() -> Pages {
    let at = |path: &str| format!("{DILUTIONS}{path}");
    Pages::new()
        .post(DILUTIONS, add)
        .get(&at("/new"), new_form)
        .get(&at("/{dilution}"), edit_form)
        .post(&at("/{dilution}"), change)
        .get(&at("/{dilution}/remove"), ask_first)
        .post(&at("/{dilution}/remove"), remove)
}

impl Ground {
    fn dilution(&self, id: Uuid) -> Result<&DilutionFigures> {
        let mut dilutions = self.product.dilutions.iter();
        dilutions
            .find(|figures| figures.id == id)
            .ok_or(Error::NotFound)
    }
}

async fn new_form(
    State(app): State<App>,
    permit: Permit<KeepProducts>,
    frame: Frame,
    Path((_, product)): Path<(String, Uuid)>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit, product).await?;
    let form = new_dilution(new_key()?, &ground.product);
    let none = Problems::default();
    page(&form_page(&permit, &frame, (&ground, None), form, &none)?)
}

async fn edit_form(
    State(app): State<App>,
    permit: Permit<KeepProducts>,
    frame: Frame,
    Path((_, product, id)): Path<(String, Uuid, Uuid)>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit, product).await?;
    let form = of_dilution(ground.dilution(id)?, new_key()?, ground.settings.numbers());
    let (of, none) = ((&ground, Some(id)), Problems::default());
    page(&form_page(&permit, &frame, of, form, &none)?)
}

fn form_page(
    permit: &Permit<KeepProducts>,
    frame: &Frame,
    (ground, id): (&Ground, Option<Uuid>),
    form: DilutionForm,
    problems: &Problems,
) -> Result<DilutionFormPage> {
    let (product, numbers) = (&ground.product, ground.settings.numbers());
    let figures = id.map(|id| ground.dilution(id)).transpose()?;
    let last = id.map_or_else(|| "new".to_owned(), |id| id.to_string());
    let path = format!("/products/{}/dilutions/{last}", product.id);
    Ok(DilutionFormPage {
        shell: shell(permit, frame, &path),
        product_id: product.id.to_string(),
        product: product.name.clone(),
        id: id.map(|id| id.to_string()),
        name: figures.map_or_else(String::new, |figures| {
            numbers.dilution(figures.parts_thousandths)
        }),
        parts_of: words::parts_of(product.form).to_owned(),
        is_ready_to_use: product.form == ProductForm::ReadyToUse,
        is_fixer: product.kind == Kind::Fixer,
        acid: product.stop_acid.map(|acid| words::acid(acid).to_owned()),
        places: place_fields(&form, ground),
        form,
        problems: in_words(problems, numbers),
    })
}

/// The paper a litre takes, place by place.
fn place_fields(form: &DilutionForm, ground: &Ground) -> Vec<PlaceFields> {
    let kind = ground.product.kind;
    let fields = fields(form, &ground.classes, kind);
    let places = places(kind).iter().map(|place| {
        let fields: Vec<_> = fields
            .iter()
            .filter(|field| field.place == *place)
            .cloned()
            .collect();
        let is_filled = fields.iter().any(|field| !field.capacity.is_empty());
        PlaceFields {
            title: words::place(*place).to_owned(),
            is_open: *place == Place::Single || is_filled,
            is_plain: *place == Place::Single,
            fields,
        }
    });
    places.collect()
}

async fn add(
    State(app): State<App>,
    permit: Permit<KeepProducts>,
    frame: Frame,
    Path((_, product)): Path<(String, Uuid)>,
    Form(form): Form<DilutionForm>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit, product).await?;
    write(&app, &permit, &frame, (&ground, None), form).await
}

async fn change(
    State(app): State<App>,
    permit: Permit<KeepProducts>,
    frame: Frame,
    Path((_, product, id)): Path<(String, Uuid, Uuid)>,
    Form(form): Form<DilutionForm>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit, product).await?;
    ground.dilution(id)?;
    write(&app, &permit, &frame, (&ground, Some(id)), form).await
}

async fn write(
    app: &App,
    permit: &Permit<KeepProducts>,
    frame: &Frame,
    (ground, id): (&Ground, Option<Uuid>),
    form: DilutionForm,
) -> Result<Response> {
    let (product, numbers) = (ground.product.id, ground.settings.numbers());
    let typed = fields(&form, &ground.classes, ground.product.kind);
    let outcome = match read_dilution(&form, &typed, (&ground.product, id), numbers) {
        Ok(new) => set_dilution(app, permit, read_key(&form.key)?, new).await,
        Err(problems) => Err(Error::Invalid(problems)),
    };
    match outcome {
        Ok(_) => Ok(show(app, permit, &product.to_string())),
        Err(error) => {
            let problems = renamed(&to_mend(error)?, FIELDS);
            mend(&form_page(permit, frame, (ground, id), form, &problems)?)
        }
    }
}

async fn ask_first(
    State(app): State<App>,
    permit: Permit<KeepProducts>,
    frame: Frame,
    Path((_, product, id)): Path<(String, Uuid, Uuid)>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit, product).await?;
    let parts = ground.dilution(id)?.parts_thousandths;
    let dilution = ground.settings.numbers().dilution(parts);
    let question = desk::take_out(&ground.product.name, &dilution);
    let here = format!("/products/{product}/dilutions/{id}");
    let action = format!("{here}/remove");
    ask(shell(&permit, &frame, &action), question, &action, &here)
}

async fn remove(
    State(app): State<App>,
    permit: Permit<KeepProducts>,
    Path((_, product_id, removed_dilution_id)): Path<(String, Uuid, Uuid)>,
    Form(form): Form<KeyForm>,
) -> Result<Response> {
    let wanted = DilutionRemoval {
        product_id,
        removed_dilution_id,
    };
    remove_dilution(&app, &permit, read_key(&form.key)?, wanted).await?;
    Ok(show(&app, &permit, &product_id.to_string()))
}
