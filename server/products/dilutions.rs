//! What a steward does with one dilution of a product.

use serde::Serialize;
use uuid::Uuid;

use super::actions::{NewDilution, check_classes, write_next};
use super::starter::COMMON_PRACTICE;
use super::{CapacityFigure, DilutionFigures, Place, Product, input, store};
use crate::app::App;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::{Book, Done, Key};
use crate::problem::Problem;
use crate::rights::KeepProducts;

/// Where a figure comes from when nobody said.
pub const SET_BY_STEWARD: &str = "set by a steward";

/// A dilution as somebody wants it, by itself.
#[derive(Clone, Debug, Serialize)]
pub struct DilutionChange {
    /// The product it is one of.
    pub product_id: Uuid,
    /// The one to change; nothing for a new one.
    pub dilution_id: Option<Uuid>,
    /// Its figures. Where nobody says where one comes from, a steward set it.
    pub figures: NewDilution,
    /// Paper classes it takes no more, and in which place; those that nobody names
    /// keep their figures.
    pub cleared: Vec<(Uuid, Place)>,
}

/// A dilution to take out.
#[derive(Clone, Copy, Debug, Serialize)]
pub struct DilutionRemoval {
    /// The product it is one of.
    pub product_id: Uuid,
    /// Which.
    pub removed_dilution_id: Uuid,
}

/// Adds or changes one dilution and leaves the others alone. What is changed and
/// still called common practice is so no more: a steward set it.
///
/// # Errors
/// A dilution that is there already; a paper class that is not there; too many.
pub async fn set_dilution(
    app: &App,
    permit: &Permit<KeepProducts>,
    key: Key,
    change: DilutionChange,
) -> Result<Done> {
    permit
        .write(app, key, &change.clone(), move |book| {
            Box::pin(async move { write_dilution(book, change).await })
        })
        .await
}

async fn write_dilution(book: &mut Book<'_>, change: DilutionChange) -> Result<()> {
    let product = store::product(book.tx(), change.product_id).await?;
    let mut product = product.ok_or(Error::NotFound)?;
    check_classes(book, std::slice::from_ref(&change.figures)).await?;
    let parts = change.figures.parts_thousandths;
    let is_other = |each: &DilutionFigures| Some(each.id) != change.dilution_id;
    let mut others = product.dilutions.iter().filter(|each| is_other(each));
    if others.any(|each| each.parts_thousandths == parts) {
        return Err(Error::field("parts", Problem::DilutionTaken));
    }
    let old = take(&mut product, change.dilution_id)?;
    let id = old
        .as_ref()
        .map_or_else(|| book.new_id(), |figures| figures.id);
    product.dilutions.push(settled(id, old.as_ref(), change));
    let count = input::dilution_count(product.dilutions.len());
    count.map_err(Error::Refused)?;
    product
        .dilutions
        .sort_by_key(|figures| figures.parts_thousandths);
    write_next(book, product).await
}

/// The dilution that is to be changed, taken out of its product.
fn take(product: &mut Product, id: Option<Uuid>) -> Result<Option<DilutionFigures>> {
    let Some(id) = id else {
        return Ok(None);
    };
    let place = product.dilutions.iter().position(|each| each.id == id);
    Ok(Some(
        product.dilutions.remove(place.ok_or(Error::NotFound)?),
    ))
}

/// The figures wanted, each with where it comes from.
fn settled(id: Uuid, old: Option<&DilutionFigures>, change: DilutionChange) -> DilutionFigures {
    let wanted = change.figures;
    let there = old.map_or(&[][..], |old| old.capacities.as_slice());
    let is_life_changed = old.is_some_and(|old| {
        (old.tray_life_s, old.bottle_life_s) != (wanted.tray_life_s, wanted.bottle_life_s)
    });
    let kept = there.iter().filter(|figure| {
        let cleared = (figure.paper_class_id, figure.place);
        let mut named = wanted.capacities.iter();
        !change.cleared.contains(&cleared) && !named.any(|each| is_of_one(each, figure))
    });
    let kept: Vec<CapacityFigure> = kept.cloned().collect();
    let capacities = wanted.capacities.into_iter().map(|figure| {
        let is_same_class = |old: &&CapacityFigure| is_of_one(old, &figure);
        let is_changed = there.iter().find(is_same_class).is_some_and(|old| {
            old.sheets_per_litre_thousandths != figure.sheets_per_litre_thousandths
        });
        CapacityFigure {
            basis: basis(figure.basis, is_changed),
            ..figure
        }
    });
    let capacities = capacities.chain(kept).collect();
    let settled = NewDilution {
        life_basis: basis(wanted.life_basis, is_life_changed),
        capacities,
        ..wanted
    };
    settled.settled(id)
}

/// Whether both are of one paper class in one place.
fn is_of_one(one: &CapacityFigure, other: &CapacityFigure) -> bool {
    (one.paper_class_id, one.place) == (other.paper_class_id, other.place)
}

fn basis(typed: String, is_changed: bool) -> String {
    match typed.is_empty() || (is_changed && typed == COMMON_PRACTICE) {
        true => SET_BY_STEWARD.to_owned(),
        false => typed,
    }
}

/// Takes a dilution out of its product. Mixes that stand carry their own figures.
///
/// # Errors
/// None of that id.
pub async fn remove_dilution(
    app: &App,
    permit: &Permit<KeepProducts>,
    key: Key,
    wanted: DilutionRemoval,
) -> Result<Done> {
    permit
        .write(app, key, &wanted, move |book| {
            Box::pin(async move {
                let product = store::product(book.tx(), wanted.product_id).await?;
                let mut product = product.ok_or(Error::NotFound)?;
                take(&mut product, Some(wanted.removed_dilution_id))?;
                write_next(book, product).await
            })
        })
        .await
}
