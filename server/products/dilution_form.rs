//! Dilutions as typed, read and written.

use uuid::Uuid;

use super::actions::{NewDilution, NewProduct};
use super::dilutions::DilutionChange;
use super::spans::{if_any, read_life, read_life_if_any, write_life, write_life_if_any};
use super::views::{CapacityField, DilutionForm};
use super::{CapacityFigure, DilutionFigures, Form, Kind, Place, Product, check, input};
use crate::input::note;
use crate::papers::PaperClass;
use crate::problem::{Problem, Problems};
use crate::web::desk::renamed;
use crate::web::forms::read_id;
use crate::web::numbers::Numbers;

/// What the fields of the form are called, beside the figures they hold.
pub(super) const FIELDS: &[(&str, &str)] = &[
    ("parts_thousandths", "parts"),
    ("covered_life_s", "covered_life"),
    ("part_bottle_life_s", "part_bottle_life"),
    ("film_rolls_per_litre_thousandths", "film_rolls"),
    ("acid_mmol_per_litre", "acid"),
    ("silver_limit_single_mg_per_litre", "silver_single"),
    ("silver_limit_first_mg_per_litre", "silver_first"),
    ("silver_limit_second_mg_per_litre", "silver_second"),
];

/// An empty form; the classes follow from [`fields`].
pub(super) fn new_dilution(key: String, product: &Product) -> DilutionForm {
    DilutionForm {
        key,
        parts: match product.form {
            Form::ReadyToUse => "0".to_owned(),
            _ => String::new(),
        },
        ..DilutionForm::default()
    }
}

/// A dilution as its form shows it.
pub(super) fn of_dilution(
    figures: &DilutionFigures,
    key: String,
    numbers: Numbers,
) -> DilutionForm {
    let decimal = |value: Option<i64>, places| {
        value.map_or_else(String::new, |value| numbers.decimal(value, places))
    };
    let mut form = DilutionForm {
        key,
        parts: numbers.decimal(figures.parts_thousandths, 3),
        tray_life: write_life(figures.tray_life_s, numbers),
        covered_life: write_life_if_any(figures.covered_life_s, numbers),
        bottle_life: write_life(figures.bottle_life_s, numbers),
        part_bottle_life: write_life_if_any(figures.part_bottle_life_s, numbers),
        life_basis: figures.life_basis.clone(),
        film_rolls: decimal(figures.film_rolls_per_litre_thousandths, 3),
        acid: decimal(figures.acid_mmol_per_litre, 0),
        silver_single: decimal(figures.silver_limit_single_mg_per_litre, 0),
        silver_first: decimal(figures.silver_limit_first_mg_per_litre, 0),
        silver_second: decimal(figures.silver_limit_second_mg_per_litre, 0),
        figures_basis: figures.figures_basis.clone(),
        ..DilutionForm::default()
    };
    for figure in &figures.capacities {
        let sheets = numbers.decimal(figure.sheets_per_litre_thousandths, 3);
        form.paper_class.push(figure.paper_class_id.to_string());
        form.place.push(figure.place.as_str().to_owned());
        form.capacity.push(sheets);
        form.basis.push(figure.basis.clone());
    }
    form
}

/// The places a bath of this kind can stand in.
pub(super) const fn places(kind: Kind) -> &'static [Place] {
    match kind {
        Kind::Fixer => &Place::ALL,
        _ => &[Place::Single],
    }
}

/// One field a place and paper class: classes offered, and retired ones that
/// have a figure there.
pub(super) fn fields(
    form: &DilutionForm,
    classes: &[PaperClass],
    kind: Kind,
) -> Vec<CapacityField> {
    let typed = |all: &[String], at: Option<usize>| {
        let text = at.and_then(|at| all.get(at));
        text.cloned().unwrap_or_default()
    };
    let mut fields: Vec<CapacityField> = Vec::new();
    for place in places(kind) {
        for class in classes {
            let id = class.id.to_string();
            let mut named = form.paper_class.iter().enumerate();
            let at = named.find(|(at, each)| **each == id && place_at(form, *at) == Some(*place));
            let at = at.map(|(at, _)| at);
            if class.is_retired && at.is_none() {
                continue;
            }
            fields.push(CapacityField {
                index: fields.len(),
                paper_class: id,
                place: *place,
                name: class.name.clone(),
                capacity: typed(&form.capacity, at),
                basis: typed(&form.basis, at),
            });
        }
    }
    fields
}

/// The place sent beside a class; by itself where none was.
fn place_at(form: &DilutionForm, at: usize) -> Option<Place> {
    let sent = form.place.get(at);
    sent.map_or(Some(Place::Single), |text| Place::parse(text))
}

/// A dilution as typed, read. Problems of a class have its place among `fields`.
pub(super) fn read_dilution(
    form: &DilutionForm,
    fields: &[CapacityField],
    (product, dilution_id): (&Product, Option<Uuid>),
    numbers: Numbers,
) -> Result<DilutionChange, Problems> {
    let mut problems = Problems::default();
    let parts = problems.take("parts", read_parts(&form.parts, numbers));
    let tray = problems.take("tray_life", read_life(&form.tray_life, numbers));
    let covered = read_life_if_any(&form.covered_life, numbers);
    let covered = problems.take("covered_life", covered);
    let bottle = problems.take("bottle_life", read_life(&form.bottle_life, numbers));
    let part_bottle = read_life_if_any(&form.part_bottle_life, numbers);
    let part_bottle = problems.take("part_bottle_life", part_bottle);
    let life_basis = problems.take("life_basis", note(&form.life_basis));
    let limits = read_limits(form, numbers, &mut problems);
    let (capacities, cleared) = read_capacities(fields, numbers, &mut problems);
    let figures = NewDilution {
        parts_thousandths: parts.unwrap_or_default(),
        tray_life_s: tray.unwrap_or_default(),
        bottle_life_s: bottle.unwrap_or(i64::MAX),
        covered_life_s: covered.flatten(),
        part_bottle_life_s: part_bottle.flatten(),
        life_basis: life_basis.unwrap_or_default(),
        capacities,
        ..limits
    };
    let found = check::dilution(&figures, &NewProduct::like(product));
    for (field, problem) in renamed(&found, FIELDS).iter() {
        // What could not be read is empty here, and has its problem.
        if problems.iter().all(|(there, _)| there != field) {
            problems.add(field, problem.clone());
        }
    }
    match problems.is_empty() {
        true => Ok(DilutionChange {
            product_id: product.id,
            dilution_id,
            figures,
            cleared,
        }),
        false => Err(problems),
    }
}

/// Film, acid and silver.
fn read_limits(form: &DilutionForm, numbers: Numbers, problems: &mut Problems) -> NewDilution {
    let rolls = if_any(&form.film_rolls, |typed| {
        numbers.read_thousandths(typed).map_err(Problem::Number)
    });
    let rolls = problems.take("film_rolls", rolls).flatten();
    let mut count = |field: &str, typed: &str| {
        let read = if_any(typed, |typed| {
            numbers.read_count(typed).map_err(Problem::Number)
        });
        problems.take(field, read).flatten()
    };
    let new = NewDilution {
        film_rolls_per_litre_thousandths: rolls,
        acid_mmol_per_litre: count("acid", &form.acid),
        silver_limit_single_mg_per_litre: count("silver_single", &form.silver_single),
        silver_limit_first_mg_per_litre: count("silver_first", &form.silver_first),
        silver_limit_second_mg_per_litre: count("silver_second", &form.silver_second),
        ..NewDilution::default()
    };
    let basis = problems.take("figures_basis", note(&form.figures_basis));
    NewDilution {
        figures_basis: basis.unwrap_or_default(),
        ..new
    }
}

fn read_capacities(
    fields: &[CapacityField],
    numbers: Numbers,
    problems: &mut Problems,
) -> (Vec<CapacityFigure>, Vec<(Uuid, Place)>) {
    let (mut read, mut cleared) = (Vec::new(), Vec::new());
    for field in fields {
        let at = format!("capacity-{}", field.index);
        let class = problems.take(at.clone(), read_id(&field.paper_class));
        let basis = problems.take(format!("basis-{}", field.index), note(&field.basis));
        if field.capacity.trim().is_empty() {
            cleared.extend(class.map(|class| (class, field.place)));
            continue;
        }
        let sheets = numbers.read_thousandths(&field.capacity);
        let sheets = sheets.map_err(Problem::Number).and_then(input::capacity);
        let sheets = problems.take(at, sheets);
        if let (Some(paper_class_id), Some(basis), Some(sheets)) = (class, basis, sheets) {
            read.push(CapacityFigure {
                paper_class_id,
                place: field.place,
                sheets_per_litre_thousandths: sheets,
                basis,
            });
        }
    }
    (read, cleared)
}

/// The N of 1+N, with or without the 1+ before it.
fn read_parts(typed: &str, numbers: Numbers) -> Result<i64, Problem> {
    let typed = typed.trim();
    let typed = typed.strip_prefix("1+").unwrap_or(typed);
    let read = numbers.read_thousandths(typed).map_err(Problem::Number);
    read.and_then(input::parts)
}
