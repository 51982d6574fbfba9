//! The questions of `reckon`: every example runs, every public function is
//! reached, every number names its unit, and no line ends the run.

use std::collections::BTreeSet;
use std::fs;
use std::io::Cursor;
use std::path::{Path, PathBuf};

use proptest::prelude::*;
use serde_json::{Value, json};
use syn::visit::{self, Visit};
use wetside::commands::reckon::answer;
use wetside::reckon::{examples, reckon};

fn ask(line: &str) -> Value {
    serde_json::from_str(&reckon(line.as_bytes())).unwrap()
}

/// The field a refused line is told to mend, with its sentence.
#[track_caller]
fn refused(line: &str, field: Value) -> String {
    let answer = ask(line);
    assert_eq!(answer["field"], field, "{answer}");
    assert!(answer.get("answer").is_none(), "{answer}");
    let sentence = answer["refused"].as_str().unwrap();
    assert!(
        sentence.ends_with('.') && !sentence.starts_with(char::is_lowercase),
        "{sentence}"
    );
    sentence.to_owned()
}

#[test]
fn every_example_is_answered() {
    for example in examples() {
        let asked: Value = serde_json::from_str(&example).unwrap();
        let answered = ask(&example);
        assert_eq!(answered["ask"], asked["ask"], "{example}");
        assert!(answered["answer"].is_object(), "{example} gave {answered}");
    }
    let names: BTreeSet<_> = examples()
        .map(|line| ask(&line)["ask"].as_str().unwrap().to_owned())
        .collect();
    assert_eq!(names.len(), examples().count(), "two questions of one name");
}

#[test]
fn every_field_of_an_example_matters() {
    for example in examples() {
        let asked: serde_json::Map<String, Value> = serde_json::from_str(&example).unwrap();
        for field in asked.keys().filter(|field| *field != "ask") {
            let mut spoilt = asked.clone();
            spoilt.insert(field.clone(), json!({ "no": "such" }));
            let answered = ask(&Value::Object(spoilt).to_string());
            assert_eq!(answered["field"], json!(field), "{example} gave {answered}");
        }
        let mut more = asked.clone();
        more.insert("surprise".to_owned(), json!(1));
        let answered = ask(&Value::Object(more).to_string());
        assert_eq!(
            answered["field"],
            json!("surprise"),
            "{example} gave {answered}"
        );
    }
}

#[test]
fn a_refusal_names_the_field_to_mend() {
    let weaken = |from: i64, to: i64| {
        format!(
            r#"{{"ask":"water_to_weaken","volume_microlitres":1000,
            "from_parts_of_water_thousandths":{from},"to_parts_of_water_thousandths":{to}}}"#
        )
    };
    let sentence = refused(
        &weaken(14_000, 9_000),
        json!("to_parts_of_water_thousandths"),
    );
    assert_eq!(sentence, "Adding water only ever makes a solution weaker.");
    refused(&weaken(-1, 9_000), json!("from_parts_of_water_thousandths"));
    refused(
        r#"{"ask":"used_capacity","charged_microlitres":1}"#,
        json!("spent_nanolitres"),
    );
    let negative = r#"{"ask":"used_capacity","charged_microlitres":-1,"spent_nanolitres":0}"#;
    assert_eq!(
        refused(negative, json!("charged_microlitres")),
        "A quantity below zero."
    );
    refused(
        r#"{"ask":"used_capacity","charged_microlitres":0.5}"#,
        json!("charged_microlitres"),
    );
    let dead = json!({
        "ask": "may_pour_together", "same_product": true, "same_dilution": true, "now_us": 0,
        "receiving": {}, "poured": { "contaminated_us": 0 },
    });
    refused(&dead.to_string(), json!("poured"));
}

#[test]
fn a_bad_line_is_refused_and_the_next_one_answered() {
    refused(r#"{"ask":"no_such_question"}"#, json!("ask"));
    refused(r#"{"volume_microlitres":1}"#, json!("ask"));
    let bad = [
        "",
        "[]",
        "{",
        "1",
        "nonsense",
        r#"{"ask":"bromide","ask":"bromide"}"#,
        "\u{0}",
    ];
    for line in bad {
        refused(line, Value::Null);
    }
    let twice = r#"{"ask":"factor","emergence_seconds":9,"emergence_seconds":30}"#;
    assert!(refused(twice, Value::Null).contains("stands twice"));
    let input = b"nonsense\n\xff\xfe\n{\"ask\":\"standard_sizes\"}\r\n".as_slice();
    let mut out = Vec::new();
    answer(Cursor::new(input), &mut out).unwrap();
    let lines: Vec<Value> = String::from_utf8(out)
        .unwrap()
        .lines()
        .map(|l| serde_json::from_str(l).unwrap())
        .collect();
    assert_eq!(lines.len(), 3);
    assert!(lines[0]["refused"].is_string() && lines[1]["refused"].is_string());
    assert_eq!(
        lines[2]["answer"]["sizes"][1]["long_tenths_mm"],
        json!(2_540)
    );
}

#[test]
fn the_list_is_input_and_keeps_its_order() {
    let input: String = examples().map(|line| line + "\n").collect();
    let mut out = Vec::new();
    answer(Cursor::new(input.as_bytes()), &mut out).unwrap();
    let answered: Vec<Value> = String::from_utf8(out)
        .unwrap()
        .lines()
        .map(|l| serde_json::from_str(l).unwrap())
        .collect();
    let asked: Vec<Value> = examples()
        .map(|l| serde_json::from_str(&l).unwrap())
        .collect();
    let names = |lines: &[Value]| lines.iter().map(|l| l["ask"].clone()).collect::<Vec<_>>();
    assert_eq!(names(&answered), names(&asked));
}

/// What a number's name may end in.
const UNITS: &[&str] = &[
    "_microlitres",
    "_nanolitres",
    "_micrograms",
    "_seconds",
    "_per_second",
    "_tenths",
    "_us",
    "_mm",
    "_mm2",
    "_ppb",
    "_thousandths",
    "_millionths",
    "_celsius",
    "_per_litre",
    "_per_m2",
    "_nanoequivalents",
    "_fraction",
];

/// Numbers that are counts, pH, or thousandths of a unit named beside them.
const COUNTS: &[&str] = &[
    "sheets",
    "rolls",
    "shifts_done",
    "shifts_allowed",
    "ph",
    "limit_ph",
    "thousandths",
];

fn numbers(name: &str, value: &Value, found: &mut BTreeSet<String>) {
    match value {
        Value::Number(_) => drop(found.insert(name.to_owned())),
        Value::Array(items) => items.iter().for_each(|item| numbers(name, item, found)),
        Value::Object(fields) => {
            fields
                .iter()
                .for_each(|(name, value)| numbers(name, value, found));
        }
        _ => {}
    }
}

#[test]
fn every_number_names_its_unit() {
    let mut found = BTreeSet::new();
    for example in examples() {
        numbers("", &serde_json::from_str(&example).unwrap(), &mut found);
        numbers("", &ask(&example), &mut found);
    }
    let has_unit = |name: &String| {
        UNITS.iter().any(|unit| name.ends_with(unit)) || COUNTS.contains(&name.as_str())
    };
    let nameless: Vec<_> = found.into_iter().filter(|name| !has_unit(name)).collect();
    assert!(nameless.is_empty(), "{nameless:?}");
}

proptest! {
    #[test]
    fn no_numbers_end_the_run(
        numbers in prop::collection::vec(prop_oneof![
            Just(i64::MIN), Just(-1), Just(0), Just(1), Just(i64::MAX), any::<i64>(), 0_i64..1_000_000,
        ], 1..12),
    ) {
        for example in examples() {
            let mut asked: Value = serde_json::from_str(&example).unwrap();
            let mut next = numbers.iter().cycle().copied();
            replace_numbers(&mut asked, &mut next);
            let answered = ask(&asked.to_string());
            prop_assert!(answered["answer"].is_object() || answered["refused"].is_string());
        }
    }

    #[test]
    fn no_bytes_end_the_run(line in prop::collection::vec(any::<u8>(), 0..200)) {
        let answered: Value = serde_json::from_str(&reckon(&line)).unwrap();
        prop_assert!(answered["refused"].is_string());
    }
}

fn replace_numbers(value: &mut Value, next: &mut impl Iterator<Item = i64>) {
    match value {
        Value::Number(_) => *value = json!(next.next()),
        Value::Array(items) => items
            .iter_mut()
            .for_each(|item| replace_numbers(item, next)),
        Value::Object(fields) => {
            fields
                .values_mut()
                .for_each(|field| replace_numbers(field, next));
        }
        _ => {}
    }
}

/// Public functions no question reaches, and why that is right.
const HELPERS: &[(&str, &str)] = &[
    ("Age::at", "reads a field"),
    ("Age::life", "reads a field"),
    ("Age::fresh", "makes a value; every question takes an age"),
    (
        "Charge::fresh",
        "makes a value; every question takes a charge",
    ),
    ("Cleared::tenfolds", "counts the tenths of a tenth"),
    ("Groups::and", "joins two lists of groups"),
    ("Groups::has", "looks into a list of groups"),
    ("Groups::with", "adds to a list of groups"),
    ("Microlitres::from_millilitres", "volume_of_unit converts"),
    ("Microlitres::to_nanolitres", "times a thousand"),
    ("MixingFactor::tenths", "reads a field"),
    ("Moment::after", "adds two numbers"),
    ("Nanolitres::to_microlitres", "divides by a thousand"),
    ("Seconds::from_hours", "writes a constant"),
    ("Seconds::from_minutes", "writes a constant"),
    ("TenthsCelsius::celsius", "divides by ten"),
    ("TenthsCelsius::degrees", "writes a constant"),
];

/// Public functions and inherent methods a file declares, as `name` or `Type::name`.
#[derive(Default)]
struct Declared(BTreeSet<String>);

impl<'ast> Visit<'ast> for Declared {
    fn visit_item_fn(&mut self, item: &'ast syn::ItemFn) {
        if matches!(item.vis, syn::Visibility::Public(_)) {
            self.0.insert(item.sig.ident.to_string());
        }
    }

    fn visit_item_impl(&mut self, item: &'ast syn::ItemImpl) {
        let syn::Type::Path(path) = &*item.self_ty else {
            return;
        };
        let owner = &path.path.segments.last().unwrap().ident;
        for member in &item.items {
            if let syn::ImplItem::Fn(method) = member
                && matches!(method.vis, syn::Visibility::Public(_))
            {
                self.0.insert(format!("{owner}::{}", method.sig.ident));
            }
        }
    }
}

/// Names a file calls: functions, methods, and what stands before a bracket in `json!`.
#[derive(Default)]
struct Called(BTreeSet<String>);

impl<'ast> Visit<'ast> for Called {
    fn visit_expr_call(&mut self, call: &'ast syn::ExprCall) {
        if let syn::Expr::Path(path) = &*call.func {
            self.0
                .extend(path.path.segments.last().map(|last| last.ident.to_string()));
        }
        visit::visit_expr_call(self, call);
    }

    fn visit_expr_method_call(&mut self, call: &'ast syn::ExprMethodCall) {
        self.0.insert(call.method.to_string());
        visit::visit_expr_method_call(self, call);
    }

    fn visit_macro(&mut self, called: &'ast syn::Macro) {
        if called.path.is_ident("json") {
            // Every other piece between quotation marks is code.
            for code in called.tokens.to_string().split('"').step_by(2) {
                let before_brackets = code.split('(').map(str::trim_end);
                let word = |code: &str| code.rsplit([' ', '.', ':', '(']).next().map(str::to_owned);
                self.0.extend(before_brackets.filter_map(word));
            }
        }
    }
}

fn sources(folder: &str) -> Vec<PathBuf> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR"))
        .join("server")
        .join(folder);
    let files = fs::read_dir(folder)
        .unwrap()
        .map(|file| file.unwrap().path());
    files
        .filter(|path| path.extension().is_some_and(|end| end == "rs"))
        .collect()
}

fn visited<V: Default + for<'ast> Visit<'ast>>(folder: &str) -> V {
    let mut visitor = V::default();
    for path in sources(folder) {
        let file = syn::parse_file(&fs::read_to_string(path).unwrap()).unwrap();
        visitor.visit_file(&file);
    }
    visitor
}

#[test]
fn every_public_function_is_reached_by_a_question() {
    let Declared(declared) = visited("darkroom");
    let Called(called) = visited("reckon");
    assert!(
        declared.len() > 80,
        "only {} functions found",
        declared.len()
    );
    // What every type that holds one number has; a question takes and gives that number.
    let plain = |name: &str| name.ends_with("::new") || name.ends_with("::get");
    let reached = |name: &str| called.contains(name.rsplit("::").next().unwrap_or(name));
    let helper = |name: &str| HELPERS.iter().any(|(helper, _)| *helper == name);
    let missed: Vec<_> = declared
        .iter()
        .filter(|name| !plain(name) && !reached(name) && !helper(name))
        .collect();
    assert!(missed.is_empty(), "no question reaches {missed:?}");
    let stale: Vec<_> = HELPERS
        .iter()
        .filter(|(name, _)| !declared.contains(*name) || reached(name))
        .collect();
    assert!(stale.is_empty(), "no longer helpers: {stale:?}");
}
