//! What a steward does with products.

use serde::Serialize;
use uuid::Uuid;

use super::store;
use super::{CapacityFigure, DilutionFigures, Kind, ProductSet};
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

/// Adds or changes a product.
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
            Box::pin(async move { write_product(book, new).await })
        })
        .await
}

async fn write_product(book: &mut Book<'_>, new: NewProduct) -> Result<()> {
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
    check_classes(book, &new).await?;
    let mut dilutions: Vec<DilutionFigures> = Vec::new();
    for figures in new.dilutions {
        if dilutions
            .iter()
            .any(|other| other.parts_thousandths == figures.parts_thousandths)
        {
            return Err(Error::field("dilutions", Problem::NameTaken));
        }
        let same = old.and_then(|old| {
            let mut figures_of_old = old.dilutions.iter();
            figures_of_old.find(|each| each.parts_thousandths == figures.parts_thousandths)
        });
        dilutions.push(DilutionFigures {
            id: same.map_or_else(|| book.new_id(), |same| same.id),
            parts_thousandths: figures.parts_thousandths,
            tray_life_s: figures.tray_life_s,
            bottle_life_s: figures.bottle_life_s,
            life_basis: figures.life_basis,
            capacities: figures.capacities,
        });
    }
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

async fn check_classes(book: &mut Book<'_>, new: &NewProduct) -> Result<()> {
    let classes = papers::paper_classes(book.tx()).await?;
    let mut figures = new.dilutions.iter().flat_map(|each| &each.capacities);
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
