//! Products and dilutions as typed, read and written.

use uuid::Uuid;

use super::actions::{NewDilution, NewProduct};
use super::dilutions::DilutionChange;
use super::entries::group_text;
use super::views::{CapacityField, DilutionForm, ProductForm};
use super::{CapacityFigure, DilutionFigures, Kind, Place, Product, input, parse_group};
use crate::darkroom::incompatibility::Group;
use crate::error::Result;
use crate::input::{date, name, note};
use crate::papers::PaperClass;
use crate::problem::{Problem, Problems};
use crate::web::forms::read_id;
use crate::web::lengths::Lengths;
use crate::web::numbers::{NumberProblem, Numbers};

/// The depth that usual tray lives hold for, in tenths of a millimetre: common
/// practice, no source.
const USUAL_DEPTH_TENTHS_MM: i64 = 80;

const HOUR_S: i64 = 3_600;

/// An empty form.
pub(super) fn new_product(key: String, numbers: Numbers) -> ProductForm {
    ProductForm {
        key,
        depth_reference: numbers.decimal(USUAL_DEPTH_TENTHS_MM, 1),
        ..ProductForm::default()
    }
}

/// A product as its form shows it.
pub(super) fn of_product(product: &Product, key: String, numbers: Numbers) -> Result<ProductForm> {
    let yes = |is_so: bool| if is_so { "yes" } else { "" }.to_owned();
    let groups = product.groups.iter().map(|group| group_text(*group));
    Ok(ProductForm {
        key,
        name: product.name.clone(),
        kind: product.kind.as_str().to_owned(),
        groups: groups.collect::<Result<_>>()?,
        oxidises: yes(product.oxidises),
        depth_reference: numbers.decimal(product.depth_reference_tenths_mm.into(), 1),
        steward_only: yes(product.steward_only),
        hazard_codes: product.hazard_codes.join(", "),
        precaution_codes: product.precaution_codes.join(", "),
        data_sheet_on: product.data_sheet_on.clone().unwrap_or_default(),
    })
}

/// A product as typed, read; its dilutions stay as they are.
pub(super) fn read_product(
    form: &ProductForm,
    old: Option<&Product>,
    numbers: Numbers,
) -> Result<NewProduct, Problems> {
    let mut problems = Problems::default();
    let name = problems.take("name", name(&form.name));
    let kind = Kind::parse(&form.kind).ok_or(Problem::NotAChoice);
    let kind = problems.take("kind", kind);
    let depth = Lengths::new(numbers, false).read(&form.depth_reference);
    let depth = depth.map_err(Problem::Number);
    let depth = problems.take("depth_reference", depth.and_then(input::depth_reference));
    let groups = problems.take("groups", read_groups(&form.groups));
    let hazards = read_codes(&form.hazard_codes, |codes| input::hazard_codes(codes));
    let hazards = problems.take("hazard_codes", hazards);
    let precautions = read_codes(&form.precaution_codes, |codes| {
        input::precaution_codes(codes)
    });
    let precautions = problems.take("precaution_codes", precautions);
    let sheet = match form.data_sheet_on.trim() {
        "" => Ok(None),
        typed => date(typed).map(Some),
    };
    let sheet = problems.take("data_sheet_on", sheet);
    let (Some(name), Some(kind), Some(depth)) = (name, kind, depth) else {
        return Err(problems);
    };
    if !problems.is_empty() {
        return Err(problems);
    }
    Ok(NewProduct {
        id: old.map(|old| old.id),
        name,
        kind,
        groups: groups.unwrap_or_default(),
        oxidises: form.oxidises == "yes",
        depth_reference_tenths_mm: depth,
        steward_only: form.steward_only == "yes",
        hazard_codes: hazards.unwrap_or_default(),
        precaution_codes: precautions.unwrap_or_default(),
        data_sheet_on: sheet.flatten(),
        is_retired: old.is_some_and(|old| old.is_retired),
        ..old.map_or_else(|| NewProduct::named(String::new(), kind), NewProduct::like)
    })
}

fn read_groups(typed: &[String]) -> Result<Vec<Group>, Problem> {
    let read = typed.iter().map(|text| parse_group(text));
    let read = read.collect::<Result<Vec<Group>>>();
    read.map_err(|_| Problem::NotAChoice)
}

/// Codes with spaces, commas or semicolons between them; `P305 + P351` is one.
fn read_codes(
    typed: &str,
    check: impl Fn(Vec<&str>) -> Result<Vec<String>, Problem>,
) -> Result<Vec<String>, Problem> {
    let parts: Vec<&str> = typed.split('+').map(str::trim).collect();
    let joined = parts.join("+");
    let is_between = |each: char| each.is_whitespace() || each == ',' || each == ';';
    let codes = joined.split(is_between).filter(|code| !code.is_empty());
    check(codes.collect())
}

/// An empty form; the classes follow from [`fields`].
pub(super) fn new_dilution(key: String) -> DilutionForm {
    DilutionForm {
        key,
        ..DilutionForm::default()
    }
}

/// A dilution as its form shows it.
pub(super) fn of_dilution(
    figures: &DilutionFigures,
    key: String,
    numbers: Numbers,
) -> DilutionForm {
    let mut form = DilutionForm {
        key,
        parts: numbers.decimal(figures.parts_thousandths, 3),
        tray_life: write_life(figures.tray_life_s, numbers),
        bottle_life: write_life(figures.bottle_life_s, numbers),
        life_basis: figures.life_basis.clone(),
        ..DilutionForm::default()
    };
    for figure in &figures.capacities {
        let sheets = numbers.decimal(figure.sheets_per_litre_thousandths, 3);
        form.paper_class.push(figure.paper_class_id.to_string());
        form.capacity.push(sheets);
        form.basis.push(figure.basis.clone());
    }
    form
}

/// One field a paper class: those offered, and retired ones that have a figure.
pub(super) fn fields(form: &DilutionForm, classes: &[PaperClass]) -> Vec<CapacityField> {
    let typed = |all: &[String], place: Option<usize>| {
        let text = place.and_then(|place| all.get(place));
        text.cloned().unwrap_or_default()
    };
    let fields = classes.iter().filter_map(|class| {
        let id = class.id.to_string();
        let place = form.paper_class.iter().position(|each| *each == id);
        if class.is_retired && place.is_none() {
            return None;
        }
        Some(CapacityField {
            paper_class: id,
            name: class.name.clone(),
            capacity: typed(&form.capacity, place),
            basis: typed(&form.basis, place),
        })
    });
    fields.collect()
}

/// A dilution as typed, read. Problems of a class have its place among `fields`.
pub(super) fn read_dilution(
    form: &DilutionForm,
    fields: &[CapacityField],
    (product_id, dilution_id): (Uuid, Option<Uuid>),
    numbers: Numbers,
) -> Result<DilutionChange, Problems> {
    let mut problems = Problems::default();
    let parts = problems.take("parts", read_parts(&form.parts, numbers));
    let tray = problems.take("tray_life", read_life(&form.tray_life, numbers));
    let bottle = problems.take("bottle_life", read_life(&form.bottle_life, numbers));
    let life_basis = problems.take("life_basis", note(&form.life_basis));
    let (capacities, cleared) = read_capacities(fields, numbers, &mut problems);
    match (parts, tray, bottle, life_basis) {
        (Some(parts_thousandths), Some(tray_life_s), Some(bottle_life_s), Some(life_basis))
            if problems.is_empty() =>
        {
            Ok(DilutionChange {
                product_id,
                dilution_id,
                figures: NewDilution {
                    parts_thousandths,
                    tray_life_s,
                    bottle_life_s,
                    life_basis,
                    capacities,
                    ..NewDilution::default()
                },
                cleared,
            })
        }
        _ => Err(problems),
    }
}

fn read_capacities(
    fields: &[CapacityField],
    numbers: Numbers,
    problems: &mut Problems,
) -> (Vec<CapacityFigure>, Vec<(Uuid, Place)>) {
    let (mut read, mut cleared) = (Vec::new(), Vec::new());
    for (index, field) in fields.iter().enumerate() {
        let at = format!("capacity-{index}");
        let class = problems.take(at.clone(), read_id(&field.paper_class));
        let basis = problems.take(format!("basis-{index}"), note(&field.basis));
        if field.capacity.trim().is_empty() {
            cleared.extend(class.map(|class| (class, Place::Single)));
            continue;
        }
        let sheets = numbers.read_thousandths(&field.capacity);
        let sheets = sheets.map_err(Problem::Number).and_then(input::capacity);
        let sheets = problems.take(at, sheets);
        if let (Some(paper_class_id), Some(basis), Some(sheets)) = (class, basis, sheets) {
            read.push(CapacityFigure {
                paper_class_id,
                place: Place::Single,
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

/// A life in seconds, from hours or the unit typed behind the number; rounded
/// half up to the second.
fn read_life(typed: &str, numbers: Numbers) -> Result<i64, Problem> {
    let typed = typed.trim();
    let unit_at = typed.find(char::is_alphabetic).unwrap_or(typed.len());
    let (number, unit) = typed.split_at(unit_at);
    let unit_s = match unit.to_lowercase().as_str() {
        "" | "h" | "hour" | "hours" => HOUR_S,
        "s" | "second" | "seconds" => 1,
        "min" | "minute" | "minutes" => 60,
        "d" | "day" | "days" => 24 * HOUR_S,
        "week" | "weeks" => 7 * 24 * HOUR_S,
        _ => return Err(Problem::Number(NumberProblem::UnknownUnit)),
    };
    let read = numbers.read_thousandths(number).map_err(Problem::Number)?;
    let seconds = read.checked_mul(unit_s);
    let seconds = seconds.ok_or(Problem::Number(NumberProblem::TooLarge))?;
    input::life(seconds.saturating_add(500) / 1_000)
}

/// A life for its field: in hours where they are exact, so that it is read back
/// as the same.
fn write_life(seconds: i64, numbers: Numbers) -> String {
    match (seconds * 1_000 % HOUR_S, seconds % 60) {
        (0, _) => numbers.decimal(seconds * 1_000 / HOUR_S, 3),
        (_, 0) => format!("{}\u{a0}min", seconds / 60),
        (_, _) => format!("{seconds}\u{a0}s"),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn a_life_is_hours_unless_it_says_otherwise() {
        let point = Numbers::with_mark(".");
        assert_eq!(read_life("8", point), Ok(28_800));
        assert_eq!(read_life("7.5 h", point), Ok(27_000));
        assert_eq!(read_life("45 min", point), Ok(2_700));
        assert_eq!(read_life("6 weeks", point), Ok(3_628_800));
        let unit = Problem::Number(NumberProblem::UnknownUnit);
        assert_eq!(read_life("3 moons", point), Err(unit));
        assert!(matches!(
            read_life("0", point),
            Err(Problem::OutOfRange { .. })
        ));
    }

    #[test]
    fn codes_may_be_parted_by_anything_and_joined_with_room() {
        let read = |typed| read_codes(typed, |codes| input::precaution_codes(codes));
        let codes = ["P280", "P305+P351+P338", "P501"].map(str::to_owned);
        assert_eq!(read("P280, P305 + P351+ P338;\nP501"), Ok(codes.to_vec()));
        assert_eq!(read(" "), Ok(Vec::new()));
        assert_eq!(read("P28"), Err(Problem::NotACode("P28".to_owned())));
    }

    proptest! {
        #[test]
        fn a_life_in_its_field_is_read_back(seconds in 60_i64..157_680_000, comma: bool) {
            let numbers = Numbers::with_mark(if comma { "," } else { "." });
            prop_assert_eq!(read_life(&write_life(seconds, numbers), numbers), Ok(seconds));
        }
    }
}
