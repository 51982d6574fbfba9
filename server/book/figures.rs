//! An entry's text as a table of figures: each field in words, its value in the
//! unit its name ends in. For a field no rule knows, the value as written.

use serde_json::Value;
use time::OffsetDateTime;
use uuid::Uuid;

use super::names::Names;
use crate::clock::moment;
use crate::web::dates::Zone;
use crate::web::numbers::Numbers;

/// One line of the table.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct Figure {
    /// The field, in words.
    pub label: String,
    /// Its value.
    pub value: String,
}

/// What values are put into words with.
#[derive(Clone, Copy, Debug)]
pub struct Wording<'w> {
    /// Names for ids.
    pub names: &'w Names,
    /// How the room writes numbers.
    pub numbers: Numbers,
    /// How the room writes times.
    pub zone: &'w Zone,
}

/// The fields of an entry's text by name; nothing where it is not a JSON object.
#[must_use]
pub fn figures(payload: &[u8], wording: Wording<'_>) -> Vec<Figure> {
    let mut found = Vec::new();
    if let Ok(value @ Value::Object(_)) = serde_json::from_slice(payload) {
        walk(&value, "", &mut found, wording);
    }
    found
}

fn walk(value: &Value, path: &str, found: &mut Vec<Figure>, wording: Wording<'_>) {
    match value {
        Value::Object(fields) => {
            for (name, value) in fields {
                let inner = if path.is_empty() {
                    name.clone()
                } else {
                    format!("{path}, {name}")
                };
                walk(value, &inner, found, wording);
            }
        }
        Value::Array(all) if all.iter().any(|one| one.is_object() || one.is_array()) => {
            for (place, one) in all.iter().enumerate() {
                walk(one, &format!("{path} {}", place + 1), found, wording);
            }
        }
        Value::Array(all) => {
            let each: Vec<String> = all.iter().map(|one| plain(one, wording)).collect();
            found.push(Figure {
                label: words(path),
                value: each.join(", "),
            });
        }
        Value::Number(number) => found.push(measured(path, number, wording)),
        other => found.push(Figure {
            label: words(path),
            value: plain(other, wording),
        }),
    }
}

type Unit = fn(i64, Wording<'_>) -> String;

/// What the ends of names mean; longer ones first.
const UNITS: &[(&str, Unit)] = &[
    ("sheets_per_litre_thousandths", |value, w| {
        format!("{} sheets 8×10 in a litre", w.numbers.decimal(value, 3))
    }),
    ("parts_thousandths", |value, w| w.numbers.dilution(value)),
    ("_thousandths", |value, w| w.numbers.decimal(value, 3)),
    ("_tenths_mm", |value, w| w.numbers.millimetres(value)),
    ("_minutes", |value, _| format!("{value}\u{a0}min")),
    ("_ppb", |value, w| {
        format!("{}\u{a0}%", w.numbers.decimal(value, 7))
    }),
    ("_ul", |value, w| w.numbers.millilitres(value)),
    ("_nl", |value, w| {
        format!("{}\u{a0}ml", w.numbers.decimal(value, 6))
    }),
    ("_us", |value, w| instant(moment(value), w)),
    ("_s", |value, _| duration(value)),
];

fn measured(path: &str, number: &serde_json::Number, wording: Wording<'_>) -> Figure {
    let field = path.rsplit(", ").next().unwrap_or(path);
    let unit = UNITS.iter().find(|(end, _)| field.ends_with(end));
    match (unit, number.as_i64()) {
        (Some((end, put)), Some(value)) => Figure {
            label: words(label(path, end)),
            value: put(value, wording),
        },
        _ => Figure {
            label: words(path),
            value: number.to_string(),
        },
    }
}

/// A name without its unit, where something of it is left.
fn label<'p>(path: &'p str, end: &str) -> &'p str {
    let kept = path.strip_suffix(end).unwrap_or(path);
    match kept.trim_end_matches([',', ' ', '_']) {
        "" if path == "parts_thousandths" => "dilution",
        "" => path,
        kept => kept,
    }
}

fn plain(value: &Value, wording: Wording<'_>) -> String {
    match value {
        Value::Null => "—".to_owned(),
        Value::Bool(true) => "yes".to_owned(),
        Value::Bool(false) => "no".to_owned(),
        Value::String(text) => match Uuid::parse_str(text) {
            Ok(id) => wording.names.find(id).unwrap_or(text).to_owned(),
            Err(_) => text.clone(),
        },
        other => other.to_string(),
    }
}

fn instant(at: OffsetDateTime, wording: Wording<'_>) -> String {
    wording.zone.in_full(at).words
}

fn duration(seconds: i64) -> String {
    let (hours, rest) = (seconds / 3_600, seconds % 3_600);
    let (minutes, left) = (rest / 60, rest % 60);
    let parts = [(hours, "h"), (minutes, "min"), (left, "s")];
    let shown: Vec<String> = parts
        .iter()
        .filter(|(count, _)| *count != 0)
        .map(|(count, unit)| format!("{count}\u{a0}{unit}"))
        .collect();
    if shown.is_empty() {
        "0\u{a0}s".to_owned()
    } else {
        shown.join(" ")
    }
}

fn words(path: &str) -> String {
    let text = path.replace('_', " ");
    let text = text
        .trim()
        .trim_end_matches(" id")
        .trim_start_matches("is ");
    text.to_owned()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_field_is_written_in_the_unit_its_name_ends_in() {
        let tray = Uuid::from_u128(7);
        let names = Names::known([(tray, "Tray 1".to_owned())]);
        let zone = Zone::utc();
        let wording = Wording {
            names: &names,
            numbers: Numbers::with_mark("."),
            zone: &zone,
        };
        let text = format!(
            r#"{{"rules":1,"tray_id":"{tray}","parts_thousandths":9000,"charged_ul":500000,
            "life_s":27000,"is_retired":false,"inside_long_tenths_mm":2032,"used_ppb":841234567,
            "at_us":0,"groups":["a","b"],"reason":null,
            "capacities":[{{"sheets_per_litre_thousandths":100000}}]}}"#
        );
        let table: Vec<(String, String)> = figures(text.as_bytes(), wording)
            .into_iter()
            .map(|figure| (figure.label, figure.value))
            .collect();
        let expected = [
            ("at", "Thursday 1 January 1970, 00:00:00"),
            ("capacities 1", "100 sheets 8×10 in a litre"),
            ("charged", "500\u{a0}ml"),
            ("groups", "a, b"),
            ("inside long", "203.2\u{a0}mm"),
            ("retired", "no"),
            ("life", "7\u{a0}h 30\u{a0}min"),
            ("dilution", "1+9"),
            ("reason", "—"),
            ("rules", "1"),
            ("tray", "Tray 1"),
            ("used", "84.1234567\u{a0}%"),
        ];
        let expected = expected.map(|(label, value)| (label.to_owned(), value.to_owned()));
        assert_eq!(table, expected);
    }

    #[test]
    fn text_that_is_no_object_has_no_figures() {
        let names = Names::default();
        let zone = Zone::utc();
        let wording = Wording {
            names: &names,
            numbers: Numbers::with_mark("."),
            zone: &zone,
        };
        assert!(figures(b"\xff", wording).is_empty());
        assert!(figures(b"[1]", wording).is_empty());
    }
}
