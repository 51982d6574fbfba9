//! What a steward does with products.

use serde::Serialize;
use uuid::Uuid;

pub use super::wanted::{NewDilution, NewProduct};
use super::{DilutionFigures, Product};
use super::{check, dilutions, store};
use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::inductions;
use crate::logbook::{Book, Done, Key};
use crate::papers;
use crate::problem::{Problem, Problems};
use crate::rights::KeepProducts;

/// So many products a room keeps at most.
const MOST: usize = 200;

/// Adds or changes a product, with all its dilutions; its ingredients stay as they are.
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

/// Adds or changes a product and leaves its dilutions and its ingredients alone.
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
    let mut problems = check::product(&new);
    let dilutions = match which {
        Dilutions::AsWanted => {
            check_classes(book, &new.dilutions).await?;
            problems.append(of_dilutions(&new));
            figured(book, old, &new.dilutions)?
        }
        Dilutions::AsTheyAre => {
            let there = old.map_or_else(Vec::new, |old| old.dilutions.clone());
            let as_wanted: Vec<NewDilution> = there.iter().cloned().map(Into::into).collect();
            problems.append(check::with_dilutions(&new, &as_wanted));
            there
        }
    };
    if !problems.is_empty() {
        return Err(Error::Invalid(problems));
    }
    let new = with_basis(new, old);
    let id = old.map_or_else(|| book.new_id(), |old| old.id);
    let version = old.map_or(1, |old| old.version + 1);
    let mut entry = new.settled(id, version, dilutions);
    if let Some(old) = old {
        entry.ingredients.clone_from(&old.ingredients);
        entry.composition_is_known = old.composition_is_known;
    }
    book.append(&entry).await?;
    inductions::tell_supplements(book).await
}

/// What is wrong with each dilution wanted, by its place in the list.
fn of_dilutions(new: &NewProduct) -> Problems {
    let mut problems = Problems::default();
    for (index, figures) in new.dilutions.iter().enumerate() {
        for (field, problem) in check::dilution(figures, new).iter() {
            problems.add(format!("dilutions[{index}].{field}"), problem.clone());
        }
    }
    problems
}

/// The product with a word on where its figures come from, where it has any.
fn with_basis(new: NewProduct, old: Option<&Product>) -> NewProduct {
    let figures = figures_of(&new);
    if figures == figures_of(&NewProduct::named(String::new(), new.kind)) {
        return NewProduct {
            figures_basis: String::new(),
            ..new
        };
    }
    let is_changed = old.is_some_and(|old| figures_of(&NewProduct::like(old)) != figures);
    NewProduct {
        figures_basis: dilutions::basis(new.figures_basis.clone(), is_changed),
        ..new
    }
}

/// The figures of a product that need a word on where they come from.
fn figures_of(new: &NewProduct) -> impl PartialEq + use<> {
    (
        (
            new.stock_full_life_s,
            new.stock_part_life_s,
            new.longest_life_s,
        ),
        (new.coldest_tenths_celsius, new.warmest_tenths_celsius),
        new.water_warmest_tenths_celsius,
        new.time_points.clone(),
        (new.limit_ph_thousandths, new.bromide_limit_mg_per_litre),
        (new.kit_parts_thousandths.clone(), new.packet_makes_ul),
    )
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
        let id = same.map_or_else(|| book.new_id(), |same| same.id);
        dilutions.push(figures.clone().settled(id));
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
    inductions::tell_supplements(book).await
}
