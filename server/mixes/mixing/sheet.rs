//! The arithmetic of a mix, shown before anybody pours.

use time::{Duration, OffsetDateTime};
use uuid::Uuid;

use super::form::{Asked, Wishes};
use super::ground::{Ground, title};
use super::views::{Aside, Cylinder, Pour, Worksheet};
use super::warmth::{self, Water};
use crate::clock::moment;
use crate::darkroom::dilution::Dilution;
use crate::darkroom::measuring::{Measured, MeasuringError, measure};
use crate::darkroom::quantities::Microlitres;
use crate::error::{Error, Result};
use crate::mixes::actions::{Recipe, Vessel, may_mix_in, recipe};
use crate::mixes::stock::input::packets_of;
use crate::problem::Problem;
use crate::products::{DilutionFigures, Form, Product};
use crate::rights::Role;
use crate::trays::views::Step;
use crate::web::messages::{bench as words, mixing};
use crate::web::numbers::Numbers;

/// What to pour and what it will be.
///
/// # Errors
/// What stands in the way of that mix.
pub(super) fn worksheet(ground: &Ground, asked: &Asked, role: Role) -> Result<Worksheet> {
    let new = &asked.new;
    let (product, figures) = ground.dilution(new.dilution_id)?;
    may_mix_in(product, role, figures.id, &ground.vessel)?;
    ground.may_start(product)?;
    let recipe = recipe(&ground.vessel, product, figures, new.volume_ul)?;
    let numbers = ground.numbers();
    let is_tray = matches!(ground.vessel, Vessel::Tray(_));
    let at = new.happened_at_us.map_or(ground.now, moment);
    let made = Made {
        product,
        parts_thousandths: figures.parts_thousandths,
        volume_ul: new.volume_ul,
        recipe: &recipe,
    };
    let pours = pours(&made, numbers);
    Ok(Worksheet {
        title: title(product, figures, ground),
        said: said(&pours),
        pours,
        total: numbers.volume(new.volume_ul),
        place: mixing::in_the(is_tray).to_owned(),
        cylinder: cylinder(&made),
        steps: steps(&made, &ground.vessel, numbers),
        asides: asides(ground, &made, &asked.wishes, new.stock_id)?,
        takes: takes(ground, figures, new.volume_ul),
        keeps: keeps(ground, recipe.life_s, at)?,
        basis: basis(figures),
        verb: mixing::it_stands(is_tray).to_owned(),
    })
}

/// Fresh solution, and what it is made of.
pub(super) struct Made<'p> {
    pub(super) product: &'p Product,
    pub(super) parts_thousandths: i64,
    pub(super) volume_ul: i64,
    pub(super) recipe: &'p Recipe,
}

/// What is poured, in order: acid and alkali go into water, so water comes first.
pub(super) fn pours(made: &Made<'_>, numbers: Numbers) -> Vec<Pour> {
    let pour = |volume_ul: i64, what: &str, is_water| Pour {
        amount: numbers.volume(volume_ul),
        what: what.to_owned(),
        is_water,
    };
    let recipe = made.recipe;
    if recipe.water_ul == 0 && recipe.parts_ul.is_empty() {
        return vec![pour(made.volume_ul, mixing::AS_IT_IS, false)];
    }
    let mut pours = Vec::new();
    if recipe.water_ul > 0 {
        pours.push(pour(recipe.water_ul, mixing::WATER_FIRST, true));
    }
    if recipe.parts_ul.is_empty() {
        let what = match made.product.form {
            Form::Powder => mixing::STOCK_INTO_IT,
            _ => mixing::CONCENTRATE_INTO_IT,
        };
        pours.push(pour(recipe.concentrate_ul, what, false));
    }
    for (number, part) in (1..).zip(&recipe.parts_ul) {
        pours.push(pour(*part, &mixing::part_into_it(number), false));
    }
    pours
}

pub(super) fn said(pours: &[Pour]) -> String {
    let all = pours.iter();
    let all: Vec<String> = all
        .map(|pour| format!("{} {}", pour.amount, pour.what))
        .collect();
    mixing::said(&all.join(", "))
}

pub(super) fn cylinder(made: &Made<'_>) -> Option<Cylinder> {
    let is_diluted = made.recipe.water_ul > 0;
    is_diluted.then(|| Cylinder::of_dilution(made.parts_thousandths))
}

pub(super) fn steps(made: &Made<'_>, vessel: &Vessel, numbers: Numbers) -> Vec<Step> {
    let mut steps = match made.recipe.parts_ul.is_empty() {
        true => of_concentrate(made, numbers),
        false => of_kit(made, numbers),
    };
    if let (Vessel::Tray(tray), Some(depth)) = (vessel, made.recipe.depth_tenths_mm) {
        let total = numbers.volume(made.volume_ul);
        let long = numbers.millimetres(tray.inside_long_tenths_mm.into());
        let short = numbers.millimetres(tray.inside_short_tenths_mm.into());
        steps.push(step(
            words::DEPTH,
            words::over_floor(&total, &long, &short),
            numbers.millimetres(depth),
        ));
    }
    steps
}

fn of_concentrate(made: &Made<'_>, numbers: Numbers) -> Vec<Step> {
    if made.recipe.water_ul == 0 {
        return Vec::new();
    }
    let total = numbers.volume(made.volume_ul);
    let concentrate = numbers.volume(made.recipe.concentrate_ul);
    let (what, how, all) = words::parts(made.parts_thousandths, numbers);
    let whole = numbers.decimal(made.parts_thousandths + 1_000, 3);
    vec![
        step(&what, how, all),
        step(
            words::CONCENTRATE,
            format!("{total} ÷ {whole}"),
            concentrate.clone(),
        ),
        step(
            words::WATER,
            format!("{total} − {concentrate}"),
            numbers.volume(made.recipe.water_ul),
        ),
    ]
}

/// A kit's parts one by one: its water is N times all of them together.
fn of_kit(made: &Made<'_>, numbers: Numbers) -> Vec<Step> {
    let parts = &made.product.kit_parts_thousandths;
    let together: i64 = parts.iter().sum();
    let water = i128::from(together) * i128::from(made.parts_thousandths) / 1_000;
    let water = i64::try_from(water).unwrap_or_default();
    let decimal = |thousandths: i64| numbers.decimal(thousandths, 3);
    let all = decimal(together + water);
    let total = numbers.volume(made.volume_ul);
    let each: Vec<String> = parts.iter().map(|part| decimal(*part)).collect();
    let how = format!("{} + {}", each.join(" + "), decimal(water));
    let mut steps = vec![step(mixing::ALL_PARTS, how, words::count_of_parts(&all))];
    for ((number, part), volume) in (1..).zip(&each).zip(&made.recipe.parts_ul) {
        let how = mixing::share(&total, part, &all);
        steps.push(step(&mixing::part(number), how, numbers.volume(*volume)));
    }
    if made.recipe.water_ul > 0 {
        let how = mixing::share(&total, &decimal(water), &all);
        let water = numbers.volume(made.recipe.water_ul);
        steps.push(step(words::WATER, how, water));
    }
    steps
}

/// Temperature, cylinder and stock solution, as far as they matter.
pub(super) fn asides(
    ground: &Ground,
    made: &Made<'_>,
    wishes: &Wishes,
    stock: Option<Uuid>,
) -> Result<Vec<Aside>> {
    let numbers = ground.numbers();
    let mut asides = Vec::new();
    let mut add = |heading: &str, lines| {
        asides.push(Aside {
            heading: heading.to_owned(),
            lines,
        });
    };
    if let Some(warmth) = wishes.warmth {
        let water = Water {
            volume_ul: made.volume_ul,
            concentrate_ul: made.recipe.concentrate_ul,
        };
        let lines = warmth::lines(warmth, &water, made.product, numbers)?;
        add(mixing::TEMPERATURE, lines);
    }
    if let Some(graduation_ul) = wishes.graduation_ul {
        add(
            mixing::CYLINDER,
            vec![measured_words(made, graduation_ul, numbers)?],
        );
    }
    if made.product.form == Form::Powder {
        add(mixing::STOCK, stock_lines(ground, made, stock)?);
    }
    Ok(asides)
}

/// What a cylinder with this graduation makes of a dilution, in words.
fn measured_words(made: &Made<'_>, graduation_ul: i64, numbers: Numbers) -> Result<String> {
    if !made.recipe.parts_ul.is_empty() {
        return Ok(mixing::KIT_BY_PART.to_owned());
    }
    let Some(measured) = measured(made, graduation_ul)? else {
        return Ok(mixing::NOTHING_TO_ROUND.to_owned());
    };
    let makes = measured.dilution.parts_of_water_thousandths();
    Ok(mixing::measured(
        &numbers.millilitres(measured.parts.concentrate.get()),
        &numbers.volume(measured.parts.water.get()),
        &format!("1+{}", numbers.rounded(makes, 3, 1)),
        measured.strength_change_thousandths,
        numbers,
    ))
}

/// What a cylinder with this graduation makes of a dilution; nothing where nothing
/// is diluted, and where there are more parts than one.
///
/// # Errors
/// A cylinder that is too coarse.
pub(super) fn measured(made: &Made<'_>, graduation_ul: i64) -> Result<Option<Measured>> {
    if !made.recipe.parts_ul.is_empty() || made.recipe.water_ul == 0 {
        return Ok(None);
    }
    let dilution = Dilution::new(made.parts_thousandths).map_err(Error::fault)?;
    let volume = Microlitres::new(made.volume_ul).map_err(Error::fault)?;
    let graduation = Microlitres::new(graduation_ul).map_err(Error::fault)?;
    let measured = measure(dilution, volume, graduation).map_err(|cause| match cause {
        MeasuringError::TooCoarse | MeasuringError::MoreThanTheVolume => {
            Error::field("graduation", Problem::TooCoarse)
        }
        cause => Error::fault(cause),
    })?;
    Ok(Some(measured))
}

/// What of stock solution a mix of a powder takes, and from where.
fn stock_lines(ground: &Ground, made: &Made<'_>, stock: Option<Uuid>) -> Result<Vec<String>> {
    let numbers = ground.numbers();
    let draws_ul = made.recipe.concentrate_ul;
    let draws = numbers.volume(draws_ul);
    let mut lines = Vec::new();
    // More packets than anybody makes up are not told of.
    if let Ok(packets) = packets_of(made.product, draws_ul) {
        lines.push(mixing::packets_needed(
            &draws,
            packets.packets_thousandths,
            &numbers.volume(packets.volume.get()),
            numbers,
        ));
    }
    lines.push(mixing::stock_keeps(
        made.product.stock_full_life_s,
        made.product.stock_part_life_s,
    ));
    let stock = stock.and_then(|id| ground.stocks.iter().find(|stock| stock.id == id));
    lines.push(match stock {
        Some(stock) => {
            let made_at = ground.settings.time_zone()?.day(stock.made_at).words;
            let leaves = numbers.volume(stock.left_ul() - draws_ul);
            mixing::drawn_from(&made_at, &draws, &leaves)
        }
        None => mixing::NOT_FROM_STOCK.to_owned(),
    });
    Ok(lines)
}

fn keeps(ground: &Ground, life_s: i64, at: OffsetDateTime) -> Result<String> {
    let zone = ground.settings.time_zone()?;
    let until = at + Duration::seconds(life_s);
    Ok(match ground.vessel {
        Vessel::Tray(_) => words::keeps(life_s, &zone.clock_and_weekday(until).words),
        Vessel::Bottle(_) => mixing::keeps_bottled(life_s, &zone.words(until, at).words),
    })
}

/// A step of a sum.
pub(crate) fn step(what: &str, how: String, figure: String) -> Step {
    Step {
        what: what.to_owned(),
        how,
        figure,
    }
}

/// Whole sheets of 8×10 in that this volume takes where it stands, class by class.
fn takes(ground: &Ground, figures: &DilutionFigures, volume_ul: i64) -> Vec<String> {
    let numbers = ground.numbers();
    let place = ground.vessel.stand().place;
    let mut takes = Vec::new();
    for class in &ground.classes {
        let mut all = figures.capacities_in(place);
        if let Some(figure) = all.find(|figure| figure.paper_class_id == class.id) {
            let sheets = i128::from(figure.sheets_per_litre_thousandths) * i128::from(volume_ul);
            let whole = i64::try_from(sheets / 1_000_000_000).unwrap_or(i64::MAX);
            let sheets = numbers.decimal(whole, 0);
            takes.push(words::takes(takes.is_empty(), &sheets, &class.name));
        }
    }
    takes
}

fn basis(figures: &DilutionFigures) -> String {
    let mut bases = vec![figures.life_basis.as_str()];
    bases.extend(
        figures
            .capacities
            .iter()
            .map(|figure| figure.basis.as_str()),
    );
    bases.sort_unstable();
    bases.dedup();
    words::basis(&bases)
}
