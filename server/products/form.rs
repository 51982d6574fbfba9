//! Products as typed, read and written.

use super::actions::NewProduct;
use super::entries::{acid_text, group_text, parse_acid};
use super::spans::{if_any, read_life_if_any, read_time, write_life_if_any};
use super::views::ProductForm;
use super::wanted::USUAL_DEPTH_TENTHS_MM;
use super::{Form, Kind, Product, TimePoint, check, input, parse_group};
use crate::darkroom::incompatibility::Group;
use crate::darkroom::stop_bath::StopAcid;
use crate::error::Result;
use crate::input::{date, name, note};
use crate::problem::{Problem, Problems};
use crate::web::desk::renamed;
use crate::web::lengths::Lengths;
use crate::web::numbers::Numbers;

/// What the fields of the form are called, beside the figures they hold.
pub(super) const FIELDS: &[(&str, &str)] = &[
    ("kit_parts_thousandths", "kit_parts"),
    ("packet_makes_ul", "packet_makes"),
    ("stock_full_life_s", "stock_full_life"),
    ("stock_part_life_s", "stock_part_life"),
    ("longest_life_s", "longest_life"),
    ("coldest_tenths_celsius", "coldest"),
    ("warmest_tenths_celsius", "warmest"),
    ("water_warmest_tenths_celsius", "water_warmest"),
    ("time_points", "time_1"),
    ("limit_ph_thousandths", "limit_ph"),
    ("bromide_limit_mg_per_litre", "bromide_limit"),
];

/// An empty form.
pub(super) fn new_product(key: String, numbers: Numbers) -> ProductForm {
    ProductForm {
        key,
        form: Form::default().as_str().to_owned(),
        depth_reference: numbers.decimal(USUAL_DEPTH_TENTHS_MM.into(), 1),
        ..ProductForm::default()
    }
}

/// A product as its form shows it.
pub(super) fn of_product(product: &Product, key: String, numbers: Numbers) -> Result<ProductForm> {
    let yes = |is_so: bool| if is_so { "yes" } else { "" }.to_owned();
    let groups = product.groups.iter().map(|group| group_text(*group));
    let life = |seconds| write_life_if_any(seconds, numbers);
    let decimal = |value: Option<i64>, places| {
        value.map_or_else(String::new, |value| numbers.decimal(value, places))
    };
    let degrees = |tenths: Option<i32>| decimal(tenths.map(i64::from), 1);
    let parts = product.kit_parts_thousandths.iter();
    let parts: Vec<String> = parts.map(|part| numbers.decimal(*part, 3)).collect();
    let point = |at: usize| product.time_points.get(at);
    let time = |at| decimal(point(at).map(|point| point.seconds), 0);
    let at = |at| degrees(point(at).map(|point| point.tenths_celsius));
    Ok(ProductForm {
        key,
        name: product.name.clone(),
        kind: product.kind.as_str().to_owned(),
        form: product.form.as_str().to_owned(),
        kit_parts: parts.join(":"),
        packet_makes: decimal(product.packet_makes_ul, 6),
        packets_may_be_divided: yes(product.packets_may_be_divided),
        stock_full_life: life(product.stock_full_life_s),
        stock_part_life: life(product.stock_part_life_s),
        longest_life: life(product.longest_life_s),
        coldest: degrees(product.coldest_tenths_celsius),
        warmest: degrees(product.warmest_tenths_celsius),
        water_warmest: degrees(product.water_warmest_tenths_celsius),
        time_1: time(0),
        at_1: at(0),
        time_2: time(1),
        at_2: at(1),
        stop_acid: match product.stop_acid {
            Some(acid) => acid_text(acid)?,
            None => String::new(),
        },
        limit_ph: decimal(product.limit_ph_thousandths, 3),
        bromide_limit: decimal(product.bromide_limit_mg_per_litre, 0),
        figures_basis: product.figures_basis.clone(),
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
    let mut new = NewProduct {
        id: old.map(|old| old.id),
        is_retired: old.is_some_and(|old| old.is_retired),
        oxidises: form.oxidises == "yes",
        steward_only: form.steward_only == "yes",
        ..NewProduct::named(name.unwrap_or_default(), kind.unwrap_or(Kind::Developer))
    };
    read_form(form, numbers, &mut new, &mut problems);
    let depth = Lengths::new(numbers, false).read(&form.depth_reference);
    let depth = depth.map_err(Problem::Number);
    let depth = problems.take("depth_reference", depth.and_then(input::depth_reference));
    new.depth_reference_tenths_mm = depth.unwrap_or(USUAL_DEPTH_TENTHS_MM);
    read_temperatures(form, numbers, &mut new, &mut problems);
    read_limits(form, numbers, &mut new, &mut problems);
    read_safety(form, &mut new, &mut problems);
    if kind.is_some() {
        let found = renamed(&check::product(&new), FIELDS);
        for (field, problem) in found.iter() {
            // What could not be read is empty here, and has its problem; one point
            // that could not is no reason to ask for two.
            let is_point = |name: &str| matches!(name, "time_1" | "at_1" | "time_2" | "at_2");
            let is_said = |there: &str| there == field || (is_point(there) && is_point(field));
            if !problems.iter().any(|(there, _)| is_said(there)) {
                problems.add(field, problem.clone());
            }
        }
    }
    match problems.is_empty() {
        true => Ok(new),
        false => Err(problems),
    }
}

fn read_form(form: &ProductForm, numbers: Numbers, new: &mut NewProduct, problems: &mut Problems) {
    let read = Form::parse(&form.form).ok_or(Problem::NotAChoice);
    new.form = problems.take("form", read).unwrap_or_default();
    let parts = read_kit_parts(&form.kit_parts, numbers);
    new.kit_parts_thousandths = problems.take("kit_parts", parts).unwrap_or_default();
    let makes = if_any(&form.packet_makes, |typed| {
        numbers.read_litres(typed).map_err(Problem::Number)
    });
    new.packet_makes_ul = problems.take("packet_makes", makes).flatten();
    new.packets_may_be_divided = form.packets_may_be_divided == "yes";
    let mut life = |field: &str, typed: &str| {
        let read = read_life_if_any(typed, numbers);
        problems.take(field, read).flatten()
    };
    new.stock_full_life_s = life("stock_full_life", &form.stock_full_life);
    new.stock_part_life_s = life("stock_part_life", &form.stock_part_life);
    new.longest_life_s = life("longest_life", &form.longest_life);
}

/// Parts with colons or plus signs between them.
fn read_kit_parts(typed: &str, numbers: Numbers) -> Result<Vec<i64>, Problem> {
    if typed.trim().is_empty() {
        return Ok(Vec::new());
    }
    let parts = typed.split([':', '+']);
    let parts = parts.map(|part| numbers.read_thousandths(part).map_err(Problem::Number));
    parts.collect()
}

fn read_temperatures(
    form: &ProductForm,
    numbers: Numbers,
    new: &mut NewProduct,
    problems: &mut Problems,
) {
    let mut degrees = |field: &str, typed: &str| {
        let read = if_any(typed, |typed| {
            let tenths = numbers.read_celsius(typed).map_err(Problem::Number)?;
            // Beyond 32 bits is beyond every bound.
            Ok(i32::try_from(tenths).unwrap_or(i32::MAX))
        });
        problems.take(field, read).flatten()
    };
    new.coldest_tenths_celsius = degrees("coldest", &form.coldest);
    new.warmest_tenths_celsius = degrees("warmest", &form.warmest);
    new.water_warmest_tenths_celsius = degrees("water_warmest", &form.water_warmest);
    let at = [degrees("at_1", &form.at_1), degrees("at_2", &form.at_2)];
    let typed = [
        ("time_1", &form.time_1, "at_1", &form.at_1),
        ("time_2", &form.time_2, "at_2", &form.at_2),
    ];
    for ((time_field, time, at_field, degrees), tenths_celsius) in typed.into_iter().zip(at) {
        let seconds = if_any(time, |typed| read_time(typed, numbers));
        let seconds = problems.take(time_field, seconds).flatten();
        match (time.trim().is_empty(), degrees.trim().is_empty()) {
            (true, false) => problems.add(time_field, Problem::Missing),
            (false, true) => problems.add(at_field, Problem::Missing),
            _ => {}
        }
        if let (Some(seconds), Some(tenths_celsius)) = (seconds, tenths_celsius) {
            new.time_points.push(TimePoint {
                seconds,
                tenths_celsius,
            });
        }
    }
}

fn read_limits(
    form: &ProductForm,
    numbers: Numbers,
    new: &mut NewProduct,
    problems: &mut Problems,
) {
    let acid = if_any(&form.stop_acid, read_acid);
    new.stop_acid = problems.take("stop_acid", acid).flatten();
    let limit = if_any(&form.limit_ph, |typed| {
        numbers.read_thousandths(typed).map_err(Problem::Number)
    });
    new.limit_ph_thousandths = problems.take("limit_ph", limit).flatten();
    let bromide = if_any(&form.bromide_limit, |typed| {
        numbers.read_count(typed).map_err(Problem::Number)
    });
    new.bromide_limit_mg_per_litre = problems.take("bromide_limit", bromide).flatten();
    let basis = problems.take("figures_basis", note(&form.figures_basis));
    new.figures_basis = basis.unwrap_or_default();
}

fn read_acid(typed: &str) -> Result<StopAcid, Problem> {
    parse_acid(typed).map_err(|_| Problem::NotAChoice)
}

fn read_safety(form: &ProductForm, new: &mut NewProduct, problems: &mut Problems) {
    let groups = problems.take("groups", read_groups(&form.groups));
    let hazards = read_codes(&form.hazard_codes, |codes| input::hazard_codes(codes));
    let hazards = problems.take("hazard_codes", hazards);
    let precautions = read_codes(&form.precaution_codes, |codes| {
        input::precaution_codes(codes)
    });
    let precautions = problems.take("precaution_codes", precautions);
    let sheet = if_any(&form.data_sheet_on, date);
    let sheet = problems.take("data_sheet_on", sheet);
    new.groups = groups.unwrap_or_default();
    new.hazard_codes = hazards.unwrap_or_default();
    new.precaution_codes = precautions.unwrap_or_default();
    new.data_sheet_on = sheet.flatten();
}

fn read_groups(typed: &[String]) -> Result<Vec<Group>, Problem> {
    let read = typed.iter().map(|text| parse_group(text));
    let read = read.collect::<Result<Vec<Group>>>();
    read.map_err(|_| Problem::NotAChoice)
}

/// Codes with spaces, commas or semicolons between them; `P305 + P351` is one.
pub(super) fn read_codes(
    typed: &str,
    check: impl Fn(Vec<&str>) -> Result<Vec<String>, Problem>,
) -> Result<Vec<String>, Problem> {
    let parts: Vec<&str> = typed.split('+').map(str::trim).collect();
    let joined = parts.join("+");
    let is_between = |each: char| each.is_whitespace() || each == ',' || each == ';';
    let codes = joined.split(is_between).filter(|code| !code.is_empty());
    check(codes.collect())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn codes_may_be_parted_by_anything_and_joined_with_room() {
        let read = |typed| read_codes(typed, |codes| input::precaution_codes(codes));
        let codes = ["P280", "P305+P351+P338", "P501"].map(str::to_owned);
        assert_eq!(read("P280, P305 + P351+ P338;\nP501"), Ok(codes.to_vec()));
        assert_eq!(read(" "), Ok(Vec::new()));
        assert_eq!(read("P28"), Err(Problem::NotACode("P28".to_owned())));
    }

    #[test]
    fn parts_of_a_kit_have_colons_between_them() {
        let comma = Numbers::with_mark(",");
        let parts = vec![1_000, 1_000, 500];
        assert_eq!(read_kit_parts("1:1: 0,5", comma), Ok(parts.clone()));
        assert_eq!(read_kit_parts("1+1+0,5", comma), Ok(parts));
        assert!(read_kit_parts("1:1:", comma).is_err());
    }

    #[test]
    fn what_is_shown_reads_back_as_it_was() {
        let numbers = Numbers::with_mark(",");
        let new = NewProduct {
            form: Form::Powder,
            packet_makes_ul: Some(3_785_000),
            packets_may_be_divided: true,
            stock_full_life_s: Some(180 * 86_400),
            stock_part_life_s: Some(60 * 86_400),
            longest_life_s: Some(90_000),
            coldest_tenths_celsius: Some(185),
            warmest_tenths_celsius: Some(240),
            water_warmest_tenths_celsius: Some(380),
            time_points: vec![
                TimePoint {
                    seconds: 120,
                    tenths_celsius: 200,
                },
                TimePoint {
                    seconds: 90,
                    tenths_celsius: 235,
                },
            ],
            bromide_limit_mg_per_litre: Some(4_000),
            figures_basis: "the sheet of March".to_owned(),
            ..NewProduct::named("Some powder".to_owned(), Kind::Developer)
        };
        let product = new.settled(uuid::Uuid::nil(), 1, Vec::new());
        let form = of_product(&product, String::new(), numbers).unwrap();
        assert_eq!(form.packet_makes, "3,785");
        let read = read_product(&form, Some(&product), numbers).unwrap();
        assert_eq!(read.settled(product.id, 1, Vec::new()), product);
    }
}
