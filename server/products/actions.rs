//! What a steward does with products.

use serde::Serialize;
use uuid::Uuid;

use super::store;
use super::{CapacityFigure, DilutionFigures, Kind, Product, ProductSet};
use crate::app::App;
use crate::darkroom::incompatibility::Group;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::{Book, Done, Key};
use crate::papers;
use crate::problem::Problem;
use crate::rights::KeepProducts;

/// So many products a room keeps at most.
const MOST: usize = 200;

/// A product as somebody wants it.
#[derive(Clone, Debug, Serialize)]
pub struct NewProduct {
    /// The one to change; nothing for a new one.
    pub id: Option<Uuid>,
    /// What people call it.
    pub name: String,
    /// Which bath it makes.
    pub kind: Kind,
    /// The groups that decide what it may be poured with.
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
    /// The date of the safety data sheet on file.
    pub data_sheet_on: Option<String>,
    /// Whether it is offered no more.
    pub is_retired: bool,
    /// How it is used.
    pub dilutions: Vec<NewDilution>,
}

/// A dilution as somebody wants it.
#[derive(Clone, Debug, Serialize)]
pub struct NewDilution {
    /// N of 1+N, in thousandths.
    pub parts_thousandths: i64,
    /// How long it keeps in an open tray, in seconds.
    pub tray_life_s: i64,
    /// How long it keeps in a stoppered bottle, in seconds.
    pub bottle_life_s: i64,
    /// Where the lives come from.
    pub life_basis: String,
    /// How much paper a litre takes.
    pub capacities: Vec<CapacityFigure>,
}

/// Adds or changes a product, with all its dilutions.
///
/// # Errors
/// A name or a dilution that is there already; a paper class that is not there.
pub async fn set_product(
    app: &App,
    permit: &Permit<KeepProducts>,
    key: Key,
    new: NewProduct,
) -> Result<Done> {
    permit
        .write(app, key, &new.clone(), move |book| {
            Box::pin(async move { write_product(book, new, Dilutions::AsWanted).await })
        })
        .await
}

/// Adds or changes a product and leaves the dilutions that it has alone.
///
/// # Errors
/// A name that is there already.
pub async fn describe_product(
    app: &App,
    permit: &Permit<KeepProducts>,
    key: Key,
    new: NewProduct,
) -> Result<Done> {
    permit
        .write(app, key, &new.clone(), move |book| {
            Box::pin(async move { write_product(book, new, Dilutions::AsTheyAre).await })
        })
        .await
}

/// Which dilutions a product has after it was set.
enum Dilutions {
    AsWanted,
    AsTheyAre,
}

async fn write_product(book: &mut Book<'_>, new: NewProduct, which: Dilutions) -> Result<()> {
    let there = store::products(book.tx()).await?;
    if there
        .iter()
        .any(|other| Some(other.id) != new.id && other.name == new.name)
    {
        return Err(Error::field("name", Problem::NameTaken));
    }
    let old = match new.id {
        Some(id) => Some(
            there
                .iter()
                .find(|other| other.id == id)
                .ok_or(Error::NotFound)?,
        ),
        None if there.len() >= MOST => return Err(Error::Refused(Problem::TooMany(MOST))),
        None => None,
    };
    let dilutions = match which {
        Dilutions::AsWanted => {
            check_classes(book, &new.dilutions).await?;
            figured(book, old, &new.dilutions)?
        }
        Dilutions::AsTheyAre => old.map_or_else(Vec::new, |old| old.dilutions.clone()),
    };
    let entry = ProductSet {
        id: old.map_or_else(|| book.new_id(), |old| old.id),
        version: old.map_or(1, |old| old.version + 1),
        name: new.name,
        kind: new.kind,
        groups: new.groups,
        oxidises: new.oxidises,
        depth_reference_tenths_mm: new.depth_reference_tenths_mm,
        steward_only: new.steward_only,
        hazard_codes: new.hazard_codes,
        precaution_codes: new.precaution_codes,
        data_sheet_on: new.data_sheet_on,
        is_retired: new.is_retired,
        dilutions,
    };
    book.append(&entry).await?;
    Ok(())
}

/// The dilutions wanted, those that were there under their old ids.
fn figured(
    book: &mut Book<'_>,
    old: Option<&Product>,
    wanted: &[NewDilution],
) -> Result<Vec<DilutionFigures>> {
    let mut dilutions: Vec<DilutionFigures> = Vec::new();
    for figures in wanted {
        let is_same = |each: &&DilutionFigures| each.parts_thousandths == figures.parts_thousandths;
        if dilutions.iter().any(|each| is_same(&each)) {
            return Err(Error::field("dilutions", Problem::NameTaken));
        }
        let same = old.and_then(|old| old.dilutions.iter().find(is_same));
        dilutions.push(DilutionFigures {
            id: same.map_or_else(|| book.new_id(), |same| same.id),
            parts_thousandths: figures.parts_thousandths,
            tray_life_s: figures.tray_life_s,
            bottle_life_s: figures.bottle_life_s,
            life_basis: figures.life_basis.clone(),
            capacities: figures.capacities.clone(),
        });
    }
    Ok(dilutions)
}

pub(super) async fn check_classes(book: &mut Book<'_>, wanted: &[NewDilution]) -> Result<()> {
    let classes = papers::paper_classes(book.tx()).await?;
    let mut figures = wanted.iter().flat_map(|each| &each.capacities);
    let all_known = figures.all(|figure| {
        classes
            .iter()
            .any(|class| class.id == figure.paper_class_id)
    });
    match all_known {
        true => Ok(()),
        false => Err(Error::field("capacities", Problem::NotAChoice)),
    }
}

/// A product to retire or to bring back.
#[derive(Clone, Copy, Debug, Serialize)]
pub struct Retiring {
    /// Which.
    pub product_id: Uuid,
    /// Whether it is offered no more.
    pub is_retired: bool,
}

/// Retires a product, or brings it back, and changes nothing else.
///
/// # Errors
/// None of that id.
pub async fn retire_product(
    app: &App,
    permit: &Permit<KeepProducts>,
    key: Key,
    wanted: Retiring,
) -> Result<Done> {
    permit
        .write(app, key, &wanted, move |book| {
            Box::pin(async move {
                let product = store::product(book.tx(), wanted.product_id).await?;
                let mut product = product.ok_or(Error::NotFound)?;
                product.is_retired = wanted.is_retired;
                write_next(book, product).await
            })
        })
        .await
}

/// Writes the next version of a product.
pub(super) async fn write_next(book: &mut Book<'_>, mut product: Product) -> Result<()> {
    product.version += 1;
    book.append(&product).await?;
    Ok(())
}
