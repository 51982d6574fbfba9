//! What is written nowhere.

use regex::Regex;

use super::source::{Source, below, rust};

/// Files that name what is banned, to ban it.
const NAMES_THEM: &str = "tests/style/words.rs";

fn found(sources: &[Source], pattern: &str) -> Vec<String> {
    let pattern = Regex::new(pattern).unwrap();
    let mut found = Vec::new();
    for source in sources.iter().filter(|source| source.path != NAMES_THEM) {
        for (number, line) in source.text.lines().enumerate() {
            if pattern.is_match(line) {
                found.push(format!("{}:{}: {}", source.path, number + 1, line.trim()));
            }
        }
    }
    found
}

#[test]
fn nothing_is_left_to_do() {
    let mut all = rust();
    for folder in ["templates", "static", "migrations", "deploy", ".ci"] {
        all.extend(below(folder, ""));
    }
    let left = found(&all, r"\b(TODO|FIXME|XXX|HACK)\b|\b(todo|unimplemented)!");
    assert!(left.is_empty(), "{left:#?}");
}

#[test]
fn lints_are_expected_with_a_reason_and_never_allowed() {
    let all = rust();
    let allowed = found(&all, r"#!?\[\s*allow\b|#!?\[cfg_attr\(.*\ballow\(");
    assert!(allowed.is_empty(), "{allowed:#?}");
    let expect = Regex::new(r"(?s)#!?\[expect\((.*?)\)\]").unwrap();
    let mut seen = 0;
    for source in all.iter().filter(|source| source.path != NAMES_THEM) {
        for expected in expect.captures_iter(&source.text) {
            let inside = &expected[1];
            assert!(inside.contains("reason = \""), "{}: {inside}", source.path);
            seen += 1;
        }
    }
    assert!(seen > 10, "{seen}");
}

#[test]
fn no_test_is_skipped() {
    let tests = rust();
    let skipped = found(&tests, r"#\[ignore|#\[should_panic\]");
    assert!(skipped.is_empty(), "{skipped:#?}");
}

#[test]
fn the_search_finds_what_it_searches_for() {
    let source = Source {
        path: "server/x.rs".to_owned(),
        text: "fn a() {}\n// TODO: b\n#[allow(dead_code)]\n".to_owned(),
    };
    let sources = [source];
    assert_eq!(found(&sources, r"\bTODO\b"), ["server/x.rs:2: // TODO: b"]);
    assert_eq!(found(&sources, r"#!?\[\s*allow\b").len(), 1);
}
