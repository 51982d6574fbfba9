//! The pages of products.

use axum::extract::{Path, State};
use axum::response::Response;
use uuid::Uuid;

use super::actions::{Retiring, describe_product, retire_product};
use super::entries::group_text;
use super::form::{FIELDS, new_product, of_product, read_product};
use super::views::{
    CodeShown, DilutionShown, ProductForm, ProductFormPage, ProductPage, ProductRow, ProductsPage,
};
use super::{
    DilutionFigures, Form as Supplied, Product, dilution_pages, figures, ingredients, statements,
    store,
};
use crate::app::App;
use crate::darkroom::incompatibility::Group;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::inductions;
use crate::mixes::stock::views::StockRow;
use crate::mixes::stock::{self, Stock};
use crate::papers::{self, PaperClass};
use crate::problem::Problems;
use crate::rights::{KeepProducts, Mix, Right, SeeInductions, SeeProducts};
use crate::rooms::{self, Settings};
use crate::router::Pages;
use crate::web::dates::Moment;
use crate::web::desk::{KeyForm, RetiredRow, ask, lying_at, renamed};
use crate::web::fields::Choice;
use crate::web::forms::{Form, in_words, mend, new_key, page, read_key, see_other, to_mend};
use crate::web::frame::Frame;
use crate::web::messages::inductions::supplement;
use crate::web::messages::{desk, ingredients as composition, products as words};
use crate::web::shell::{Place, Shell};

const PRODUCTS: &str = "/rooms/{room}/products";

/// The routes of these pages.
#[must_use]
pub fn pages() -> Pages {
    let at = |path: &str| format!("{PRODUCTS}{path}");
    Pages::new()
        .get(PRODUCTS, products)
        .post(PRODUCTS, add)
        .get(&at("/new"), new_form)
        .get(&at("/{product}"), product)
        .post(&at("/{product}"), change)
        .get(&at("/{product}/edit"), edit_form)
        .get(&at("/{product}/retire"), ask_first)
        .post(&at("/{product}/retire"), retire)
        .post(&at("/{product}/restore"), restore)
        .and(dilution_pages::pages())
        .and(ingredients::pages())
}

/// Everything the pages of one product stand on.
pub(super) struct Ground {
    pub(super) settings: Settings,
    pub(super) classes: Vec<PaperClass>,
    pub(super) product: Product,
}

impl Ground {
    pub(super) async fn read<R: Right>(app: &App, permit: &Permit<R>, id: Uuid) -> Result<Self> {
        app.database()
            .reading(permit.scope(), move |tx| {
                Box::pin(async move {
                    Ok(Self {
                        settings: rooms::settings(tx).await?,
                        classes: papers::paper_classes(tx).await?,
                        product: store::product(tx, id).await?.ok_or(Error::NotFound)?,
                    })
                })
            })
            .await
    }
}

pub(super) fn shell<R: Right>(permit: &Permit<R>, frame: &Frame, path: &str) -> Shell {
    lying_at(frame.shell_in(permit, Some(Place::Products)), path)
}

/// Sends the browser to a product's page, or to the list.
pub(super) fn show<R: Right>(app: &App, permit: &Permit<R>, id: &str) -> Response {
    let slug = &permit.membership().slug;
    see_other(app, &format!("/rooms/{slug}/products/{id}"))
}

fn may_change<R: Right>(permit: &Permit<R>) -> bool {
    KeepProducts::ROW.roles.contains(&permit.role())
}

async fn products(
    State(app): State<App>,
    permit: Permit<SeeProducts>,
    frame: Frame,
) -> Result<Response> {
    let (settings, all) = app
        .database()
        .reading(permit.scope(), |tx| {
            Box::pin(async move { Ok((rooms::settings(tx).await?, store::products(tx).await?)) })
        })
        .await?;
    let offered = all.iter().filter(|product| !product.is_retired);
    page(&ProductsPage {
        shell: shell(&permit, &frame, "/products"),
        products: offered.map(|product| row(product, &settings)).collect(),
        retired: retired(&all),
        key: new_key()?,
        may_change: may_change(&permit),
    })
}

fn row(product: &Product, settings: &Settings) -> ProductRow {
    let numbers = settings.numbers();
    let dilutions = product.dilutions.iter();
    let dilutions: Vec<String> = dilutions
        .map(|figures| numbers.dilution(figures.parts_thousandths))
        .collect();
    ProductRow {
        id: product.id.to_string(),
        name: product.name.clone(),
        kind: words::kind(product.kind).to_owned(),
        dilutions: match dilutions.is_empty() {
            true => words::NO_DILUTION.to_owned(),
            false => dilutions.join(", "),
        },
        lacks_safety_data: product.data_sheet_on.is_none(),
    }
}

fn retired(all: &[Product]) -> Vec<RetiredRow> {
    let retired = all.iter().filter(|product| product.is_retired);
    let rows = retired.map(|product| RetiredRow {
        name: product.name.clone(),
        restore: format!("/products/{}/restore", product.id),
    });
    rows.collect()
}

async fn product(
    State(app): State<App>,
    permit: Permit<SeeProducts>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit, id).await?;
    let made = made_of(&app, &permit, id).await?;
    let made = stock::rows(&made, &ground.settings, app.clock().now())?;
    let untold = untold(&app, &permit, &ground).await?;
    page(&product_page(&permit, &frame, &ground, (made, untold))?)
}

/// The stock solutions made of a product, as far as something remains of them.
async fn made_of(app: &App, permit: &Permit<SeeProducts>, id: Uuid) -> Result<Vec<Stock>> {
    app.database()
        .reading(permit.scope(), move |tx| {
            Box::pin(stock::stocks(tx, Some(id)))
        })
        .await
}

/// What to tell whom before a product is opened, for those who see everybody's inductions.
async fn untold(app: &App, permit: &Permit<SeeProducts>, ground: &Ground) -> Result<Vec<String>> {
    if !SeeInductions::ROW.roles.contains(&permit.role()) {
        return Ok(Vec::new());
    }
    let today = ground.settings.time_zone()?.date_value(app.clock().now());
    let product = ground.product.clone();
    let due = app.database().reading(permit.scope(), move |tx| {
        Box::pin(async move { inductions::supplements_of(tx, &product, &today).await })
    });
    Ok(due.await?.iter().map(supplement).collect())
}

fn product_page(
    permit: &Permit<SeeProducts>,
    frame: &Frame,
    ground: &Ground,
    (stocks, supplements): (Vec<StockRow>, Vec<String>),
) -> Result<ProductPage> {
    let product = &ground.product;
    let depth = ground.settings.numbers();
    let depth = depth.millimetres(product.depth_reference_tenths_mm.into());
    let groups = product.groups.iter();
    let dilutions = product.dilutions.iter();
    Ok(ProductPage {
        shell: shell(permit, frame, &format!("/products/{}", product.id)),
        id: product.id.to_string(),
        name: product.name.clone(),
        kind: words::kind(product.kind).to_owned(),
        is_retired: product.is_retired,
        version: product.version,
        made_of: words::made_of(product.form).to_owned(),
        figures: figures::of_product(product, ground.settings.numbers()),
        dilutions: dilutions.map(|figures| shown(figures, ground)).collect(),
        concerns: composition::concerns(&product.concerns()),
        ingredients: ingredients::ingredient_rows(product, ground.settings.numbers()),
        composition_is_known: product.composition_is_known,
        hazards: codes(&product.hazard_codes),
        precautions: codes(&product.precaution_codes),
        groups: groups
            .map(|group| words::group(*group).0.to_owned())
            .collect(),
        data_sheet_on: data_sheet_day(ground)?,
        is_steward_only: product.steward_only,
        oxidises: product.oxidises.then(|| words::at_depth(&depth)),
        may_change: may_change(permit),
        is_powder: product.form == Supplied::Powder,
        may_make: product.form == Supplied::Powder && Mix::ROW.roles.contains(&permit.role()),
        stocks,
        supplements,
    })
}

pub(super) fn codes(codes: &[String]) -> Vec<CodeShown> {
    let shown = codes.iter().map(|code| CodeShown {
        code: code.clone(),
        text: statements::text(code),
    });
    shown.collect()
}

/// A sheet's date is a day of the calendar wherever the room is.
fn data_sheet_day(ground: &Ground) -> Result<Option<Moment>> {
    let Some(date) = &ground.product.data_sheet_on else {
        return Ok(None);
    };
    let zone = ground.settings.time_zone()?;
    let noon = zone.instant(&format!("{date}T12:00"));
    let (noon, _) = noon.map_err(|cause| Error::Internal(cause.into()))?;
    Ok(Some(Moment {
        machine: date.clone(),
        words: zone.day(noon).words,
    }))
}

fn shown(dilution: &DilutionFigures, ground: &Ground) -> DilutionShown {
    let numbers = ground.settings.numbers();
    DilutionShown {
        id: dilution.id.to_string(),
        name: numbers.dilution(dilution.parts_thousandths),
        groups: figures::of_dilution(dilution, &ground.product, &ground.classes, numbers),
    }
}

async fn settings(app: &App, permit: &Permit<KeepProducts>) -> Result<Settings> {
    app.database()
        .reading(permit.scope(), |tx| Box::pin(rooms::settings(tx)))
        .await
}

async fn new_form(
    State(app): State<App>,
    permit: Permit<KeepProducts>,
    frame: Frame,
) -> Result<Response> {
    let settings = settings(&app, &permit).await?;
    let form = new_product(new_key()?, settings.numbers());
    let none = Problems::default();
    page(&form_page(&permit, &frame, (None, &settings), form, &none)?)
}

async fn add(
    State(app): State<App>,
    permit: Permit<KeepProducts>,
    frame: Frame,
    Form(form): Form<ProductForm>,
) -> Result<Response> {
    let settings = settings(&app, &permit).await?;
    let outcome = match read_product(&form, None, settings.numbers()) {
        Ok(new) => describe_product(&app, &permit, read_key(&form.key)?, new).await,
        Err(problems) => Err(Error::Invalid(problems)),
    };
    match outcome {
        Ok(done) => Ok(show(&app, &permit, &done.id("product")?.to_string())),
        Err(error) => {
            let (of, problems) = ((None, &settings), renamed(&to_mend(error)?, FIELDS));
            mend(&form_page(&permit, &frame, of, form, &problems)?)
        }
    }
}

async fn edit_form(
    State(app): State<App>,
    permit: Permit<KeepProducts>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit, id).await?;
    let form = of_product(&ground.product, new_key()?, ground.settings.numbers())?;
    let of = (Some(&ground.product), &ground.settings);
    page(&form_page(&permit, &frame, of, form, &Problems::default())?)
}

async fn change(
    State(app): State<App>,
    permit: Permit<KeepProducts>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
    Form(form): Form<ProductForm>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit, id).await?;
    let of = (Some(&ground.product), &ground.settings);
    let outcome = match read_product(&form, of.0, ground.settings.numbers()) {
        Ok(new) => describe_product(&app, &permit, read_key(&form.key)?, new).await,
        Err(problems) => Err(Error::Invalid(problems)),
    };
    match outcome {
        Ok(_) => Ok(show(&app, &permit, &id.to_string())),
        Err(error) => {
            let problems = renamed(&to_mend(error)?, FIELDS);
            mend(&form_page(&permit, &frame, of, form, &problems)?)
        }
    }
}

fn form_page(
    permit: &Permit<KeepProducts>,
    frame: &Frame,
    (product, settings): (Option<&Product>, &Settings),
    form: ProductForm,
    problems: &Problems,
) -> Result<ProductFormPage> {
    let path = match product {
        Some(product) => format!("/products/{}/edit", product.id),
        None => "/products/new".to_owned(),
    };
    let groups = Group::ALL.into_iter().map(|group| {
        let (label, hint) = words::group(group);
        Ok(Choice::new(group_text(group)?, label).explained(hint))
    });
    Ok(ProductFormPage {
        shell: shell(permit, frame, &path),
        id: product.map(|product| product.id.to_string()),
        name: product.map_or_else(String::new, |product| product.name.clone()),
        form,
        groups: groups.collect::<Result<_>>()?,
        problems: in_words(problems, settings.numbers()),
    })
}

async fn ask_first(
    State(app): State<App>,
    permit: Permit<KeepProducts>,
    frame: Frame,
    Path((_, id)): Path<(String, Uuid)>,
) -> Result<Response> {
    let ground = Ground::read(&app, &permit, id).await?;
    let question = desk::retire_product(&ground.product.name);
    let here = format!("/products/{id}");
    let action = format!("{here}/retire");
    ask(shell(&permit, &frame, &action), question, &action, &here)
}

async fn retire(
    State(app): State<App>,
    permit: Permit<KeepProducts>,
    Path((_, product_id)): Path<(String, Uuid)>,
    Form(form): Form<KeyForm>,
) -> Result<Response> {
    let wanted = Retiring {
        product_id,
        is_retired: true,
    };
    retire_product(&app, &permit, read_key(&form.key)?, wanted).await?;
    let slug = &permit.membership().slug;
    Ok(see_other(&app, &format!("/rooms/{slug}/products")))
}

async fn restore(
    State(app): State<App>,
    permit: Permit<KeepProducts>,
    Path((_, product_id)): Path<(String, Uuid)>,
    Form(form): Form<KeyForm>,
) -> Result<Response> {
    let wanted = Retiring {
        product_id,
        is_retired: false,
    };
    retire_product(&app, &permit, read_key(&form.key)?, wanted).await?;
    Ok(show(&app, &permit, &product_id.to_string()))
}
