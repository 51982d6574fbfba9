//! The products a new room starts with: one generic of each kind. None has safety
//! data: the steward copies that from the sheet of what the room really bought,
//! and until then nobody mixes it. Every figure says what it is.

use super::actions::{NewDilution, NewProduct};
use super::{CapacityFigure, Form, Kind, Place};
use crate::darkroom::incompatibility::Group;
use crate::darkroom::silver::FIRST_BATH_LIMIT_MG_PER_LITRE;
use crate::darkroom::stop_bath::StopAcid;
use crate::darkroom::time_temperature::{STARTER_HIGHEST, STARTER_LOWEST};
use crate::error::Result;
use crate::logbook::Book;
use crate::papers::{self, PaperClass};

/// What most figures here are.
pub const COMMON_PRACTICE: &str = "common practice, no source";
/// What the others are.
pub const FROM_MEMORY: &str = "from memory";

const HOUR_S: i64 = 3_600;
const DAY_S: i64 = 24 * HOUR_S;

/// Sheets of 8×10 in a litre takes by class: RC, FB, RC cool tone; nothing where
/// practice gives none.
type Sheets = [Option<i64>; 3];

/// Writes the products into a new room's book, after its papers.
///
/// # Errors
/// The database's.
pub async fn write(book: &mut Book<'_>) -> Result<()> {
    let classes = papers::paper_classes(book.tx()).await?;
    for new in all(&classes) {
        let mut dilutions = Vec::new();
        for figures in &new.dilutions {
            dilutions.push(figures.clone().settled(book.new_id()));
        }
        let id = book.new_id();
        book.append(&new.settled(id, 1, dilutions)).await?;
    }
    Ok(())
}

/// The starter products.
#[must_use]
pub fn all(classes: &[PaperClass]) -> Vec<NewProduct> {
    vec![
        developer(classes),
        acetic_stop_bath(classes),
        citric_stop_bath(classes),
        rapid_fixer(classes),
        holding_water(classes),
        wash_aid(classes),
        selenium_toner(classes),
    ]
}

fn capacities(
    classes: &[PaperClass],
    place: Place,
    sheets: Sheets,
    basis: &str,
) -> Vec<CapacityFigure> {
    let figures = classes.iter().zip(sheets).filter_map(|(class, sheets)| {
        sheets.map(|sheets| CapacityFigure {
            paper_class_id: class.id,
            place,
            sheets_per_litre_thousandths: sheets * 1_000,
            basis: basis.to_owned(),
        })
    });
    figures.collect()
}

/// A dilution from memory: parts of water, lives in tray and bottle, sheets.
fn remembered(
    classes: &[PaperClass],
    parts: i64,
    (tray_life_s, bottle_life_s): (i64, i64),
    sheets: Sheets,
) -> NewDilution {
    NewDilution {
        parts_thousandths: parts * 1_000,
        tray_life_s,
        bottle_life_s,
        life_basis: FROM_MEMORY.to_owned(),
        capacities: capacities(classes, Place::Single, sheets, FROM_MEMORY),
        ..NewDilution::default()
    }
}

/// Seven to eight hours in an open tray, no more than a day in a bottle.
fn developer(classes: &[PaperClass]) -> NewProduct {
    let dilution = |parts: i64, sheets| NewDilution {
        parts_thousandths: parts * 1_000,
        tray_life_s: 8 * HOUR_S,
        bottle_life_s: 24 * HOUR_S,
        life_basis: COMMON_PRACTICE.to_owned(),
        capacities: capacities(classes, Place::Single, sheets, COMMON_PRACTICE),
        ..NewDilution::default()
    };
    NewProduct {
        groups: vec![
            Group::Developer,
            Group::Alkali,
            Group::Sulfite,
            Group::Organic,
        ],
        oxidises: true,
        coldest_tenths_celsius: Some(STARTER_LOWEST.get()),
        warmest_tenths_celsius: Some(STARTER_HIGHEST.get()),
        figures_basis: FROM_MEMORY.to_owned(),
        dilutions: vec![
            dilution(9, [Some(100), Some(50), Some(50)]),
            dilution(14, [Some(70), Some(40), None]),
        ],
        ..NewProduct::named("Neutral paper developer".to_owned(), Kind::Developer)
    }
}

/// 1.5 % of acetic acid (0.25 mol/l) fresh.
fn acetic_stop_bath(classes: &[PaperClass]) -> NewProduct {
    let sheets = [Some(80), Some(40), Some(80)];
    NewProduct {
        groups: vec![Group::Acid, Group::StopBath, Group::Organic],
        stop_acid: Some(StopAcid::Acetic),
        dilutions: vec![NewDilution {
            acid_mmol_per_litre: Some(250),
            figures_basis: COMMON_PRACTICE.to_owned(),
            ..remembered(classes, 19, (DAY_S, 30 * DAY_S), sheets)
        }],
        ..NewProduct::named("Acetic stop bath".to_owned(), Kind::StopBath)
    }
}

/// About 1.5 % of citric acid fresh: 78 mmol/l.
fn citric_stop_bath(classes: &[PaperClass]) -> NewProduct {
    let sheets = [Some(70), Some(35), Some(70)];
    NewProduct {
        groups: vec![Group::Acid, Group::StopBath, Group::Organic],
        stop_acid: Some(StopAcid::Citric),
        dilutions: vec![NewDilution {
            acid_mmol_per_litre: Some(78),
            figures_basis: FROM_MEMORY.to_owned(),
            ..remembered(classes, 19, (DAY_S, 30 * DAY_S), sheets)
        }],
        ..NewProduct::named("Citric stop bath".to_owned(), Kind::StopBath)
    }
}

/// Strong for one bath or two, weak for two only. A pass counts in the second
/// bath by the room's share; a litre of it takes as much as a litre of the first.
fn rapid_fixer(classes: &[PaperClass]) -> NewProduct {
    let dilution = |parts, single: Sheets, first: Sheets| {
        let mut dilution = NewDilution {
            silver_limit_first_mg_per_litre: Some(FIRST_BATH_LIMIT_MG_PER_LITRE.into()),
            figures_basis: FROM_MEMORY.to_owned(),
            ..remembered(classes, parts, (2 * DAY_S, 30 * DAY_S), single)
        };
        for (place, sheets) in [(Place::First, first), (Place::Second, first)] {
            let more = capacities(classes, place, sheets, FROM_MEMORY);
            dilution.capacities.extend(more);
        }
        dilution
    };
    NewProduct {
        groups: vec![
            Group::Fixer,
            Group::Thiosulfate,
            Group::Ammonium,
            Group::Sulfite,
        ],
        dilutions: vec![
            dilution(
                4,
                [Some(40), Some(20), Some(40)],
                [Some(80), Some(40), Some(80)],
            ),
            dilution(9, [None; 3], [Some(40), Some(20), Some(40)]),
        ],
        ..NewProduct::named("Ammonium rapid fixer".to_owned(), Kind::Fixer)
    }
}

/// Tap water; what prints bring into it comes from the fixer.
fn holding_water(classes: &[PaperClass]) -> NewProduct {
    let sheets = [Some(40), Some(20), Some(40)];
    NewProduct {
        groups: vec![
            Group::Fixer,
            Group::Thiosulfate,
            Group::Ammonium,
            Group::Sulfite,
        ],
        form: Form::ReadyToUse,
        dilutions: vec![remembered(classes, 0, (4 * HOUR_S, 4 * HOUR_S), sheets)],
        ..NewProduct::named("Holding water".to_owned(), Kind::HoldingWater)
    }
}

/// For fibre-base paper; RC goes to the wash without it.
fn wash_aid(classes: &[PaperClass]) -> NewProduct {
    NewProduct {
        groups: vec![Group::Sulfite],
        dilutions: vec![remembered(
            classes,
            9,
            (DAY_S, 7 * DAY_S),
            [None, Some(40), None],
        )],
        ..NewProduct::named("Wash aid".to_owned(), Kind::WashAid)
    }
}

/// Selenium-type toners hold a thiosulfate; only a steward mixes them.
fn selenium_toner(classes: &[PaperClass]) -> NewProduct {
    let sheets = [Some(20), Some(20), Some(20)];
    let lives = (DAY_S, 180 * DAY_S);
    NewProduct {
        groups: vec![Group::Thiosulfate, Group::Ammonium, Group::Sulfite],
        steward_only: true,
        dilutions: vec![
            remembered(classes, 9, lives, sheets),
            remembered(classes, 19, lives, [Some(10); 3]),
        ],
        ..NewProduct::named("Selenium-type toner".to_owned(), Kind::Toner)
    }
}
