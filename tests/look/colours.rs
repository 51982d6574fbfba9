//! The arithmetic of the three displays, read from the style sheets.
//!
//! Source of the formulas: WCAG 2.2, relative luminance and contrast ratio; success
//! criteria 1.4.3 (4.5 for text) and 1.4.11 (3 for controls and graphics).

use std::collections::HashMap;

use regex::Regex;

const SHEETS: [&str; 5] = [
    include_str!("../../static/wetside.css"),
    include_str!("../../static/bench.css"),
    include_str!("../../static/desk.css"),
    include_str!("../../static/live.css"),
    include_str!("../../static/paper.css"),
];

type Colour = [u8; 3];

fn colour(text: &str) -> Option<Colour> {
    let hex = text.trim().strip_prefix('#')?;
    let wide: String = if hex.len() == 3 {
        hex.chars().flat_map(|digit| [digit, digit]).collect()
    } else {
        hex.to_owned()
    };
    let part = |at: usize| u8::from_str_radix(wide.get(at..at + 2)?, 16).ok();
    Some([part(0)?, part(2)?, part(4)?])
}

fn luminance(colour: Colour) -> f64 {
    let [red, green, blue] = colour.map(|channel| {
        let share = f64::from(channel) / 255.0;
        if share <= 0.040_45 {
            share / 12.92
        } else {
            ((share + 0.055) / 1.055).powf(2.4)
        }
    });
    0.2126 * red + 0.7152 * green + 0.0722 * blue
}

fn contrast(one: Colour, other: Colour) -> f64 {
    let (one, other) = (luminance(one), luminance(other));
    (one.max(other) + 0.05) / (one.min(other) + 0.05)
}

/// The colours a display sets, by name.
fn display(opening: &str) -> HashMap<String, Colour> {
    let sheet = SHEETS[0];
    let start = sheet.find(opening).unwrap() + opening.len();
    let block = &sheet[start..start + sheet[start..].find('}').unwrap()];
    let one = Regex::new(r"--([a-z-]+):\s*(#[0-9a-f]+)").unwrap();
    let colours: HashMap<String, Colour> = one
        .captures_iter(block)
        .map(|found| (found[1].to_owned(), colour(&found[2]).unwrap()))
        .collect();
    assert!(colours.len() >= 13, "{opening}: {}", colours.len());
    colours
}

fn displays() -> [HashMap<String, Colour>; 3] {
    [
        display(":root {"),
        display("[data-display=\"dim\"] {"),
        display("[data-display=\"safelight\"] {"),
    ]
}

#[test]
fn the_formula_gives_the_published_figures() {
    // Source: WCAG 2.2 understanding documents: black on white is 21; reference table of
    // single-hue pairs: #ff0000 on black 5.25, on #370000 4.5, #b70000 on black 3.
    let near = |one: f64, other: f64| (one - other).abs() < 0.01;
    assert!(near(contrast([0; 3], [255; 3]), 21.0));
    assert!(near(contrast([255, 0, 0], [0; 3]), 5.25));
    assert!(contrast([255, 0, 0], [0x37, 0, 0]) >= 4.5);
    assert!(contrast([0xb7, 0, 0], [0; 3]) >= 3.0);
}

#[test]
fn text_and_lines_stand_out_in_every_display() {
    for colours in displays() {
        let of = |name: &str| colours[name];
        for text in ["ink", "soft", "mark"] {
            for ground in ["ground", "sheet", "bench", "wall", "floor"] {
                let ratio = contrast(of(text), of(ground));
                assert!(ratio >= 4.5, "{text} on {ground}: {ratio:.2}");
            }
        }
        assert!(contrast(of("ink"), of("liquid")) >= 4.5);
        assert!(contrast(of("on-shout"), of("shout")) >= 4.5);
        for ground in ["ground", "sheet", "floor", "wall"] {
            let ratio = contrast(of("line"), of(ground));
            assert!(ratio >= 3.0, "line on {ground}: {ratio:.2}");
        }
    }
}

#[test]
fn safelight_lights_only_the_red_channel() {
    let colours = display("[data-display=\"safelight\"] {");
    for (name, [red, green, blue]) in &colours {
        assert_eq!((*green, *blue), (0, 0), "{name}");
        match name.as_str() {
            "ink" | "soft" | "mark" | "shout" => assert_eq!(*red, 0xff, "{name}"),
            "line" | "hair" | "edge" | "contour" => assert!(*red >= 0xb7, "{name}"),
            _ => assert!(*red <= 0x37, "{name}"),
        }
    }
}

/// Every display must set every colour, and no rule may bring its own.
#[test]
fn colours_come_from_the_displays_alone() {
    let [day, dim, safelight] = displays();
    for name in day.keys() {
        assert!(safelight.contains_key(name), "safelight lacks {name}");
        assert!(dim.contains_key(name), "dim lacks {name}");
    }
    let literal =
        Regex::new(r"(?i)#[0-9a-f]{3,8}\b|\brgba?\(|\bhsl|\b(white|black|gray|grey|red)\b")
            .unwrap();
    let custom = Regex::new(r"^\s*--[a-z-]+:").unwrap();
    let comments = Regex::new(r"(?s)/\*.*?\*/").unwrap();
    for sheet in SHEETS {
        for line in comments.replace_all(sheet, "").lines() {
            if custom.is_match(line) {
                continue;
            }
            let plain = line
                .replace("#pattern-ready", "")
                .replace("white-space", "");
            assert!(!literal.is_match(&plain), "{line}");
            assert!(!plain.contains("opacity: 0."), "dimmed: {line}");
        }
    }
}
