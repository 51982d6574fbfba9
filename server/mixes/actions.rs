//! What people do with mixes.

use serde::Serialize;
use uuid::Uuid;

use super::store;
use super::{Discarded, FrozenCapacity, Mix, Mixed, RULES};
use crate::app::App;
use crate::bench::{self, Tray};
use crate::darkroom::age::oxidising_life;
use crate::darkroom::dilution::{Dilution, parts_for_volume};
use crate::darkroom::incompatibility::{
    Groups, Liquid, Pour, judge_pour, judge_pour_of_one_product,
};
use crate::darkroom::quantities::{Area, Microlitres, Seconds, TenthsMm};
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::{Book, Done, Key};
use crate::problem::Problem;
use crate::products::{self, DilutionFigures, Place, Product};
use crate::rights;
use crate::rights::Role;

/// A mix as somebody wants it.
#[derive(Clone, Debug, Serialize)]
pub struct NewMix {
    /// The tray it goes into.
    pub tray_id: Uuid,
    /// From what and how: a dilution of a product.
    pub dilution_id: Uuid,
    /// All of it, in microlitres.
    pub volume_ul: i64,
}

/// What mixing comes to, before anybody pours.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct Recipe {
    /// The concentrate, in microlitres.
    pub concentrate_ul: i64,
    /// The water, in microlitres.
    pub water_ul: i64,
    /// How deep it stands, in tenths of a millimetre.
    pub depth_tenths_mm: i64,
    /// How long it lives, open in this tray, in seconds.
    pub life_s: i64,
}

/// Mixes a working solution in an empty tray.
///
/// # Errors
/// A tray that is full, too small or too large for it; a product without safety
/// data, or one that only a steward mixes.
pub async fn mix(app: &App, permit: &Permit<rights::Mix>, key: Key, new: NewMix) -> Result<Done> {
    let role = permit.role();
    permit
        .write(app, key, &new.clone(), move |book| {
            Box::pin(async move { write_mix(book, role, &new).await })
        })
        .await
}

async fn write_mix(book: &mut Book<'_>, role: Role, new: &NewMix) -> Result<()> {
    let tray = bench::tray(book.tx(), new.tray_id).await?;
    let tray = tray.ok_or(Error::NotFound)?;
    if tray.is_retired {
        return Err(Error::Refused(Problem::Retired));
    }
    let standing = store::standing(book.tx()).await?;
    if standing.iter().any(|mix| mix.tray_id == Some(tray.id)) {
        return Err(Error::Refused(Problem::TrayFull));
    }
    let products = products::products(book.tx()).await?;
    let has_it = |product: &&Product| product.dilutions.iter().any(|d| d.id == new.dilution_id);
    let product = products.iter().find(has_it);
    let product = product.ok_or_else(|| Error::field("dilution", Problem::NotAChoice))?;
    let figures = may_mix(product, role, new.dilution_id)?;
    let recipe = recipe(&tray, product, figures, new.volume_ul)?;
    let entry = Mixed {
        rules: RULES,
        mix_id: book.new_id(),
        tray_id: tray.id,
        line_id: tray.line_id,
        product_id: product.id,
        product_version: product.version,
        parts_thousandths: figures.parts_thousandths,
        charged_ul: new.volume_ul,
        concentrate_ul: recipe.concentrate_ul,
        life_s: recipe.life_s,
        capacities: figures
            .capacities_in(Place::Single)
            .map(|figure| FrozenCapacity {
                paper_class_id: figure.paper_class_id,
                sheets_per_litre_thousandths: figure.sheets_per_litre_thousandths,
            })
            .collect(),
    };
    book.append(&entry).await?;
    Ok(())
}

/// The figures of a dilution that this role may mix now.
///
/// # Errors
/// What stands in the way.
pub fn may_mix(product: &Product, role: Role, dilution: Uuid) -> Result<&DilutionFigures> {
    if product.is_retired {
        return Err(Error::Refused(Problem::Retired));
    }
    if product.data_sheet_on.is_none() {
        return Err(Error::Refused(Problem::NoSafetyData));
    }
    if product.steward_only && role != Role::Steward {
        return Err(Error::Refused(Problem::StewardOnly));
    }
    let found = product.dilutions.iter().find(|each| each.id == dilution);
    found.ok_or_else(|| Error::field("dilution", Problem::NotAChoice))
}

/// What a volume of a dilution comes to in this tray.
///
/// # Errors
/// A volume that runs over the rim or does not cover a print.
pub fn recipe(
    tray: &Tray,
    product: &Product,
    figures: &DilutionFigures,
    volume_ul: i64,
) -> Result<Recipe> {
    let wrong = |_| Error::field("volume", Problem::NotANumber);
    let volume = Microlitres::new(volume_ul).map_err(wrong)?;
    let floor = floor_of(tray)?;
    let holds_ul = volume_at(tray, tray.inside_depth_tenths_mm);
    if volume_ul > holds_ul {
        return Err(Error::field("volume", Problem::OverTheRim { holds_ul }));
    }
    let least_ul = volume_at(tray, tray.least_depth_tenths_mm);
    if volume_ul < least_ul || volume_ul <= 0 {
        return Err(Error::field("volume", Problem::TooShallow { least_ul }));
    }
    let dilution = Dilution::new(figures.parts_thousandths).map_err(Error::fault)?;
    let parts = parts_for_volume(dilution, volume).map_err(Error::fault)?;
    let reference = Seconds::new(figures.tray_life_s).map_err(Error::fault)?;
    let life = if product.oxidises {
        let reference_depth =
            TenthsMm::new(product.depth_reference_tenths_mm.into()).map_err(Error::fault)?;
        oxidising_life(reference, volume, floor, reference_depth).map_err(Error::fault)?
    } else {
        reference
    };
    let depth = crate::darkroom::age::depth(volume, floor).map_err(Error::fault)?;
    Ok(Recipe {
        concentrate_ul: parts.concentrate.get(),
        water_ul: parts.water.get(),
        depth_tenths_mm: depth.get(),
        life_s: life.get(),
    })
}

fn floor_of(tray: &Tray) -> Result<Area> {
    let long = TenthsMm::new(tray.inside_long_tenths_mm.into()).map_err(Error::fault)?;
    let short = TenthsMm::new(tray.inside_short_tenths_mm.into()).map_err(Error::fault)?;
    long.by(short).map_err(Error::fault)
}

/// What a tray holds up to a depth, in microlitres: a cubic millimetre is a
/// microlitre, and the sides are in tenths.
#[must_use]
pub fn volume_at(tray: &Tray, depth_tenths_mm: i32) -> i64 {
    i64::from(tray.inside_long_tenths_mm)
        * i64::from(tray.inside_short_tenths_mm)
        * i64::from(depth_tenths_mm)
        / 1_000
}

/// How a mix is discarded.
#[derive(Clone, Debug, Serialize)]
pub struct NewDiscard {
    /// The mix.
    pub mix_id: Uuid,
    /// How much is poured off, in microlitres.
    pub volume_ul: i64,
    /// The container, as the steward named it.
    pub container: String,
}

/// Discards the mix of a tray into a named container.
///
/// # Errors
/// A mix that no longer stands there; more than was in it.
pub async fn discard(
    app: &App,
    permit: &Permit<rights::Discard>,
    key: Key,
    new: NewDiscard,
) -> Result<Done> {
    permit
        .write(app, key, &new.clone(), move |book| {
            Box::pin(async move { write_discard(book, new).await })
        })
        .await
}

async fn write_discard(book: &mut Book<'_>, new: NewDiscard) -> Result<()> {
    let mix = store::mix(book.tx(), new.mix_id).await?;
    let mix = mix.ok_or(Error::NotFound)?;
    let tray_id = mix.tray_id.ok_or(Error::Refused(Problem::MixGone))?;
    if new.volume_ul > mix.charged_ul {
        return Err(Error::field(
            "volume",
            Problem::OverTheRim {
                holds_ul: mix.charged_ul,
            },
        ));
    }
    guard_container(book, &mix, &new.container).await?;
    let tray = bench::tray(book.tx(), tray_id).await?;
    let entry = Discarded {
        mix_id: mix.id,
        tray_id,
        line_id: tray.ok_or(Error::NotFound)?.line_id,
        volume_ul: new.volume_ul,
        destination: "collected".to_owned(),
        container: new.container,
    };
    book.append(&entry).await?;
    Ok(())
}

/// Refuses what must not meet in one container. Nobody can override it.
async fn guard_container(book: &mut Book<'_>, mix: &Mix, container: &str) -> Result<()> {
    let poured = liquid(&mix.groups)?;
    for (product, groups) in store::container(book.tx(), container).await? {
        let judged = if product == mix.product_id {
            judge_pour_of_one_product(poured)
        } else {
            judge_pour(poured, liquid(&groups)?)
        };
        let problem = match judged {
            Pour::Allowed => continue,
            Pour::Never(clash) => Problem::MustNotMeet(clash),
            Pour::NotInOneContainer(clash) => Problem::NotInOneContainer(clash),
            Pour::Unknown => Problem::UnknownGroups,
        };
        return Err(Error::field("container", problem));
    }
    Ok(())
}

/// A product without groups is of an unknown nature.
fn liquid(groups: &[String]) -> Result<Liquid> {
    let groups = products::groups(groups)?;
    Ok(match groups.is_empty() {
        true => Liquid::Unknown,
        false => Liquid::Solution(Groups::from(groups)),
    })
}
