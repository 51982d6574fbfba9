//! A mix begins.

use serde::Serialize;
use uuid::Uuid;

use super::{Vessel, VesselId, happened, life_in, may_mix_alone};
use crate::air;
use crate::app::App;
use crate::darkroom::dilution::{Dilution, parts_for_volume};
use crate::darkroom::incompatibility::Group;
use crate::darkroom::kit::kit_volumes;
use crate::darkroom::quantities::Microlitres;
use crate::darkroom::state::Origin;
use crate::darkroom::stop_bath::LIMIT_PH_THOUSANDTHS;
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::{Book, Done, Key};
use crate::mixes::stock::actions::may_draw;
use crate::mixes::{
    Figures, FrozenCapacity, Mixed, RULES, SilverLimits, StopFigures, UnknownFound, store,
};
use crate::problem::Problem;
use crate::products::{self, DilutionFigures, Place, Product};
use crate::rights::{self, Role};
use crate::rooms;

/// A mix as somebody wants it.
#[derive(Clone, Debug, Serialize)]
pub struct NewMix {
    /// What it goes into.
    pub vessel: VesselId,
    /// From what and how: a dilution of a product.
    pub dilution_id: Uuid,
    /// All of it, in microlitres.
    pub volume_ul: i64,
    /// The stock solution its concentrate is drawn from; nothing where it is not
    /// from stock.
    pub stock_id: Option<Uuid>,
    /// When, where that was not just now: microseconds since 1970.
    pub happened_at_us: Option<i64>,
}

/// A mix that stood there on the first day.
#[derive(Clone, Debug, Serialize)]
pub struct NewOpening {
    /// What and where.
    pub mix: NewMix,
    /// The used part of its capacity by guess, in parts per billion.
    pub used_ppb: i64,
    /// The used part of its life by guess.
    pub age_ppb: i64,
}

/// Liquid that nobody can name.
#[derive(Clone, Debug, Serialize)]
pub struct NewUnknown {
    /// What it stands in.
    pub vessel: VesselId,
    /// About how much, in microlitres.
    pub volume_ul: i64,
    /// What the finder saw.
    pub remark: String,
}

/// What mixing comes to, before anybody pours.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct Recipe {
    /// The concentrate, in microlitres; of a kit, all its parts together.
    pub concentrate_ul: i64,
    /// A kit's parts in their order, in microlitres.
    pub parts_ul: Vec<i64>,
    /// The water, in microlitres.
    pub water_ul: i64,
    /// How deep it stands in a tray, in tenths of a millimetre.
    pub depth_tenths_mm: Option<i64>,
    /// How long it lives there, in seconds.
    pub life_s: i64,
}

/// Mixes a working solution in an empty tray or bottle.
///
/// # Errors
/// A vessel that is full, too small or too large for it, or for another bath; a
/// product without safety data, or one that only a steward mixes; a stock solution
/// of which less remains.
pub async fn mix(app: &App, permit: &Permit<rights::Mix>, key: Key, new: NewMix) -> Result<Done> {
    let role = permit.role();
    permit
        .write(app, key, &new.clone(), move |book| {
            Box::pin(async move { write_mix(book, role, &new, Origin::Mixed, (0, 0)).await })
        })
        .await
}

/// Enters a mix that stood there already on the first day.
///
/// # Errors
/// As mixing; fractions that are not between nothing and all.
pub async fn open(
    app: &App,
    permit: &Permit<rights::OpenBench>,
    key: Key,
    new: NewOpening,
) -> Result<Done> {
    permit
        .write(app, key, &new.clone(), move |book| {
            Box::pin(async move {
                let guess = (new.used_ppb, new.age_ppb);
                write_mix(book, Role::Steward, &new.mix, Origin::Guessed, guess).await
            })
        })
        .await
}

async fn write_mix(
    book: &mut Book<'_>,
    role: Role,
    new: &NewMix,
    origin: Origin,
    (used_ppb, age_ppb): (i64, i64),
) -> Result<()> {
    let settings = rooms::settings(book.tx()).await?;
    let at = happened(book.now(), new.happened_at_us, &settings)?;
    // What stood there on the first day was mixed before anybody asked.
    if origin == Origin::Mixed {
        may_mix_alone(book, &settings, at).await?;
    }
    let vessel = Vessel::find(book.tx(), new.vessel).await?;
    vessel.must_be_empty(book.tx()).await?;
    if let (Some(at), Vessel::Tray(tray)) = (at, &vessel)
        && store::last_emptied(book.tx(), tray.id)
            .await?
            .is_some_and(|emptied| at < emptied)
    {
        return Err(Error::field("happened_at", Problem::SomethingStoodThere));
    }
    let products = products::products(book.tx()).await?;
    let has_it = |product: &&Product| product.dilutions.iter().any(|d| d.id == new.dilution_id);
    let product = products.iter().find(has_it);
    let product = product.ok_or_else(|| Error::field("dilution", Problem::NotAChoice))?;
    let figures = may_mix_in(product, role, new.dilution_id, &vessel)?;
    if let (Vessel::Tray(tray), Origin::Mixed) = (&vessel, origin) {
        air::may_start_in(book.tx(), tray.line_id, product).await?;
    }
    let recipe = recipe(&vessel, product, figures, new.volume_ul)?;
    if let Some(stock) = new.stock_id {
        let then = at.unwrap_or(book.now());
        may_draw(book.tx(), stock, product.id, recipe.concentrate_ul, then).await?;
    }
    let shifts = shifts_of_pair(book, &vessel).await?;
    let entry = Mixed {
        rules: RULES,
        mix_id: book.new_id(),
        stand: vessel.stand(),
        product_id: product.id,
        product_version: product.version,
        parts_thousandths: figures.parts_thousandths,
        charged_ul: new.volume_ul,
        concentrate_ul: recipe.concentrate_ul,
        life_s: recipe.life_s,
        capacities: frozen(figures),
        origin,
        storage: vessel.storage(new.volume_ul),
        guessed_spent_nl: share_of(new.volume_ul, used_ppb)?,
        guessed_age_ppb: age_ppb,
        shifts,
        stock_id: new.stock_id,
        figures: Some(figures_of(product, figures)),
    };
    book.append_at(at, &entry).await?;
    Ok(())
}

/// A share of a volume in microlitres, in nanolitres.
fn share_of(volume_ul: i64, ppb: i64) -> Result<i64> {
    let share = i128::from(volume_ul) * i128::from(ppb) / 1_000_000;
    i64::try_from(share).map_err(Error::fault)
}

/// A second bath joins a pair that moved up before: what stands first says how often.
async fn shifts_of_pair(book: &mut Book<'_>, vessel: &Vessel) -> Result<i32> {
    let stand = vessel.stand();
    if stand.place != Place::Second {
        return Ok(0);
    }
    let standing = store::standing(book.tx()).await?;
    let first = standing
        .iter()
        .find(|mix| mix.stand.line_id == stand.line_id && mix.stand.place == Place::First);
    Ok(first.map_or(0, |mix| mix.shifts))
}

fn frozen(figures: &DilutionFigures) -> Vec<FrozenCapacity> {
    let capacities = figures.capacities.iter().map(|figure| FrozenCapacity {
        paper_class_id: figure.paper_class_id,
        sheets_per_litre_thousandths: figure.sheets_per_litre_thousandths,
        place: figure.place,
    });
    capacities.collect()
}

/// What a mix keeps of its product.
pub(in crate::mixes) fn figures_of(product: &Product, figures: &DilutionFigures) -> Figures {
    let stop = product.stop_acid.zip(figures.acid_mmol_per_litre);
    Figures {
        open_life_s: figures.tray_life_s,
        covered_life_s: figures.covered_life_s.unwrap_or(figures.tray_life_s),
        full_bottle_life_s: figures.bottle_life_s,
        part_bottle_life_s: figures.part_bottle_life_s.unwrap_or(figures.bottle_life_s),
        longest_life_s: product.longest_life_s,
        oxidises: product.oxidises,
        depth_reference_tenths_mm: product.depth_reference_tenths_mm,
        coldest_tenths_celsius: product.coldest_tenths_celsius,
        warmest_tenths_celsius: product.warmest_tenths_celsius,
        time_points: product.time_points.clone(),
        silver_limits: SilverLimits {
            single: figures.silver_limit_single_mg_per_litre,
            first: figures.silver_limit_first_mg_per_litre,
            second: figures.silver_limit_second_mg_per_litre,
        },
        film_rolls_per_litre_thousandths: figures.film_rolls_per_litre_thousandths,
        stop: stop.map(|(acid, acid_mmol_per_litre)| StopFigures {
            acid,
            acid_mmol_per_litre,
            limit_ph_thousandths: product.limit_ph_thousandths.unwrap_or(LIMIT_PH_THOUSANDTHS),
        }),
        bromide_limit_mg_per_litre: product.bromide_limit_mg_per_litre,
    }
}

/// The figures of a dilution that this role may mix now.
///
/// # Errors
/// What stands in the way.
pub fn may_mix(product: &Product, role: Role, dilution: Uuid) -> Result<&DilutionFigures> {
    may_mix_product(product, role)?;
    let found = product.dilutions.iter().find(|each| each.id == dilution);
    found.ok_or_else(|| Error::field("dilution", Problem::NotAChoice))
}

/// Whether this role may mix a product at all.
pub(in crate::mixes) fn may_mix_product(product: &Product, role: Role) -> Result<()> {
    if product.is_retired {
        return Err(Error::Refused(Problem::Retired));
    }
    if product.data_sheet_on.is_none() {
        return Err(Error::Refused(Problem::NoSafetyData));
    }
    if product.groups.contains(&Group::Hypochlorite) {
        return Err(Error::Refused(Problem::NotAtThisBench));
    }
    if product.steward_only && role != Role::Steward {
        return Err(Error::Refused(Problem::StewardOnly));
    }
    Ok(())
}

/// The figures of a dilution that this role may mix into this vessel.
///
/// # Errors
/// What stands in the way.
pub(in crate::mixes) fn may_mix_in<'p>(
    product: &'p Product,
    role: Role,
    dilution: Uuid,
    vessel: &Vessel,
) -> Result<&'p DilutionFigures> {
    let figures = may_mix(product, role, dilution)?;
    vessel.must_be_for(product.kind)?;
    let place = vessel.stand().place;
    let mut places = figures.capacities.iter().map(|figure| figure.place);
    let has_none = matches!(vessel, Vessel::Tray(_)) && places.all(|each| each != place);
    if has_none && !figures.capacities.is_empty() {
        return Err(Error::field("dilution", Problem::NoFiguresForPlace));
    }
    Ok(figures)
}

/// What a volume of a dilution comes to in this vessel.
///
/// # Errors
/// A volume that runs over the rim or does not cover a print.
pub fn recipe(
    vessel: &Vessel,
    product: &Product,
    figures: &DilutionFigures,
    volume_ul: i64,
) -> Result<Recipe> {
    let holds_ul = vessel.holds_ul();
    if volume_ul > holds_ul {
        return Err(Error::field("volume", Problem::OverTheRim { holds_ul }));
    }
    let least_ul = vessel.least_ul();
    if volume_ul < least_ul || volume_ul <= 0 {
        return Err(Error::field("volume", Problem::TooShallow { least_ul }));
    }
    let volume = Microlitres::new(volume_ul).map_err(Error::fault)?;
    let depth = match vessel {
        Vessel::Tray(tray) => {
            let depth = crate::darkroom::age::depth(volume, super::floor_of(tray)?);
            Some(depth.map_err(Error::fault)?.get())
        }
        Vessel::Bottle(_) => None,
    };
    let (concentrate_ul, parts_ul) = parts(product, figures.parts_thousandths, volume)?;
    let keeps = figures_of(product, figures);
    Ok(Recipe {
        concentrate_ul,
        parts_ul,
        water_ul: volume_ul - concentrate_ul,
        depth_tenths_mm: depth,
        life_s: life_in(&keeps, vessel, vessel.storage(volume_ul), volume_ul)?,
    })
}

/// The concentrate in a volume, and a kit's parts one by one.
pub(in crate::mixes) fn parts(
    product: &Product,
    parts_thousandths: i64,
    volume: Microlitres,
) -> Result<(i64, Vec<i64>)> {
    let parts = &product.kit_parts_thousandths;
    if parts.is_empty() {
        let dilution = Dilution::new(parts_thousandths).map_err(Error::fault)?;
        let made = parts_for_volume(dilution, volume).map_err(Error::fault)?;
        return Ok((made.concentrate.get(), Vec::new()));
    }
    let parts = parts.iter().map(|part| u32::try_from(*part));
    let parts = parts
        .collect::<Result<Vec<u32>, _>>()
        .map_err(Error::fault)?;
    // N parts of water to one of all the kit's parts together.
    let all: i64 = parts.iter().copied().map(i64::from).sum();
    let water = i128::from(all) * i128::from(parts_thousandths) / 1_000;
    let water = u32::try_from(water).map_err(Error::fault)?;
    let made = kit_volumes(&parts, water, volume).map_err(Error::fault)?;
    let each: Vec<i64> = made.parts.iter().map(|part| part.get()).collect();
    Ok((each.iter().sum(), each))
}

/// Reports liquid that nobody can name. It is kept like a mix that only a
/// steward deals with.
///
/// # Errors
/// A vessel in which the book knows of a mix.
pub async fn report_unknown(
    app: &App,
    permit: &Permit<rights::TestMix>,
    key: Key,
    new: NewUnknown,
) -> Result<Done> {
    permit
        .write(app, key, &new.clone(), move |book| {
            Box::pin(async move { write_unknown(book, new).await })
        })
        .await
}

async fn write_unknown(book: &mut Book<'_>, new: NewUnknown) -> Result<()> {
    let vessel = Vessel::find(book.tx(), new.vessel).await?;
    if store::in_vessel(book.tx(), vessel.id()).await?.is_some() {
        return Err(Error::Refused(Problem::KnownMixThere));
    }
    let holds_ul = vessel.holds_ul();
    if new.volume_ul > holds_ul {
        return Err(Error::field("volume", Problem::OverTheRim { holds_ul }));
    }
    let entry = UnknownFound {
        rules: RULES,
        mix_id: book.new_id(),
        stand: vessel.stand(),
        storage: vessel.storage(new.volume_ul),
        charged_ul: new.volume_ul,
        remark: new.remark,
    };
    book.append(&entry).await?;
    Ok(())
}
