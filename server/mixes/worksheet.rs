//! The arithmetic of a mix, shown before anybody pours.

use time::{Duration, OffsetDateTime};

use super::actions::{may_mix_in, recipe};
use super::pages::{Ground, read_mix};
use super::views::{Cylinder, MixForm, Worksheet};
use crate::error::{Error, Result};
use crate::problem::Problem;
use crate::products::{DilutionFigures, Place, Product};
use crate::rights::Role;
use crate::trays::views::Step;
use crate::web::messages::bench as words;
use crate::web::numbers::Numbers;

/// What to pour and what it will be.
///
/// # Errors
/// What stands in the way of that mix.
pub(super) fn worksheet(
    ground: &Ground,
    form: &MixForm,
    role: Role,
    now: OffsetDateTime,
) -> Result<Worksheet> {
    let numbers = ground.settings.numbers();
    let zone = ground.settings.time_zone()?;
    let new = read_mix(form, ground.tray.id, numbers).map_err(Error::Invalid)?;
    let wrong = || Error::field("dilution", Problem::NotAChoice);
    let (product, figures) = ground.dilution(new.dilution_id).ok_or_else(wrong)?;
    may_mix_in(product, role, figures.id, &ground.vessel)?;
    let recipe = recipe(&ground.vessel, product, figures, new.volume_ul)?;
    let total = numbers.volume(new.volume_ul);
    let concentrate = numbers.volume(recipe.concentrate_ul);
    let water = numbers.volume(recipe.water_ul);
    let (what, how, all_parts) = words::parts(figures.parts_thousandths, numbers);
    let whole = numbers.decimal(figures.parts_thousandths + 1_000, 3);
    let long = numbers.millimetres(ground.tray.inside_long_tenths_mm.into());
    let short = numbers.millimetres(ground.tray.inside_short_tenths_mm.into());
    let until = zone.clock_and_weekday(now + Duration::seconds(recipe.life_s));
    Ok(Worksheet {
        title: title(product, figures, numbers),
        steps: vec![
            step(&what, how, all_parts),
            step(
                words::CONCENTRATE,
                format!("{total} ÷ {whole}"),
                concentrate.clone(),
            ),
            step(
                words::WATER,
                format!("{total} − {concentrate}"),
                water.clone(),
            ),
            step(
                words::DEPTH,
                words::over_floor(&total, &long, &short),
                numbers.millimetres(recipe.depth_tenths_mm.unwrap_or_default()),
            ),
        ],
        concentrate,
        water,
        total,
        cylinder: Cylinder::of_dilution(figures.parts_thousandths),
        takes: takes(ground, figures, new.volume_ul, numbers),
        keeps: words::keeps(recipe.life_s, &until.words),
        basis: basis(figures),
    })
}

fn title(product: &Product, figures: &DilutionFigures, numbers: Numbers) -> String {
    let dilution = numbers.dilution(figures.parts_thousandths);
    format!("{} {dilution}", product.name)
}

pub(crate) fn step(what: &str, how: String, figure: String) -> Step {
    Step {
        what: what.to_owned(),
        how,
        figure,
    }
}

/// Whole sheets of 8×10 in that this volume takes, class by class.
fn takes(
    ground: &Ground,
    figures: &DilutionFigures,
    volume_ul: i64,
    numbers: Numbers,
) -> Vec<String> {
    let mut takes = Vec::new();
    for class in &ground.classes {
        let mut all = figures.capacities_in(Place::Single);
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
