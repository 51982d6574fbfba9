//! Every meaning has words of its own.

use std::path::Path;

use syn::{Item, ItemEnum};

fn source(path: &str) -> String {
    std::fs::read_to_string(Path::new(env!("CARGO_MANIFEST_DIR")).join(path)).unwrap()
}

fn variants(path: &str, name: &str) -> Vec<String> {
    let file = syn::parse_file(&source(path)).unwrap();
    let found = file.items.into_iter().find_map(|item| match item {
        Item::Enum(found) if found.ident == name => Some(found),
        _ => None,
    });
    let ItemEnum { variants, .. } = found.unwrap();
    variants
        .into_iter()
        .map(|each| each.ident.to_string())
        .collect()
}

#[test]
fn every_problem_has_a_sentence() {
    let words = [
        "problems",
        "mix_problems",
        "inductions",
        "scans",
        "sheets",
        "air",
        "workshops",
    ]
    .map(|file| {
        let path = format!("server/web/messages/{file}.rs");
        source(&path)
    });
    let words = words.concat();
    let problems = variants("server/problem.rs", "Problem");
    assert!(problems.len() > 40, "{}", problems.len());
    for problem in problems {
        let named = regex::Regex::new(&format!(r"Problem::{problem}\b")).unwrap();
        assert!(named.is_match(&words), "Problem::{problem} has no sentence");
    }
}

#[test]
fn nothing_is_called_harmless() {
    let banned =
        regex::Regex::new(r"(?i)harmless|non-?toxic|\bsafe to\b|no risk|no danger").unwrap();
    let mut files = [
        "problems",
        "air",
        "api",
        "bench",
        "checks",
        "inductions",
        "ingredients",
        "keeping",
        "sheets",
        "topics",
        "verdicts",
        "workshops",
    ]
    .map(|file| format!("server/web/messages/{file}.rs"))
    .to_vec();
    files.push("server/topics/starter.rs".to_owned());
    for file in files {
        let words = source(&file);
        let found = banned.find(&words).map(|found| found.as_str());
        assert_eq!(found, None, "{file}");
    }
}
