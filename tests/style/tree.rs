//! What stands where, and how long it is.

use std::collections::BTreeSet;

use super::source::{Source, below, root, rust};

/// The top of the repository, and why each stands there.
const TOP: &[(&str, &str)] = &[
    (".cargo", "the build's own settings"),
    (".ci", "what continuous integration runs"),
    (".gitignore", "what is no part of the tree"),
    (".sqlx", "the checked form of every query"),
    ("Cargo.lock", "the versions that were tested"),
    ("Cargo.toml", "the package"),
    ("DEVELOPERS.md", "how it is made"),
    ("LICENSE", "under which it is given away"),
    ("README.md", "how it is used"),
    ("askama.toml", "where templates are"),
    ("clippy.toml", "the limits clippy keeps"),
    ("deny.toml", "what dependencies may be"),
    ("deploy", "scripts to try, test and run it"),
    ("migrations", "the tables"),
    ("rustfmt.toml", "the format"),
    ("server", "the program"),
    ("static", "styles and script"),
    ("templates", "the pages"),
    ("tests", "the tests"),
];

/// What a clone may have beside that.
const NOT_OURS: &[&str] = &[".git", "target"];

#[test]
fn the_top_is_exactly_this() {
    let found: BTreeSet<String> = std::fs::read_dir(root())
        .unwrap()
        .map(|item| item.unwrap().file_name().into_string().unwrap())
        .filter(|name| !NOT_OURS.contains(&name.as_str()))
        .collect();
    let wanted: BTreeSet<String> = TOP.iter().map(|(name, _)| (*name).to_owned()).collect();
    assert_eq!(found, wanted);
}

/// A file has so many lines at most.
const LINES: usize = 500;

#[test]
fn no_file_is_too_long_to_read() {
    let mut all = rust();
    for (folder, end) in [
        ("templates", ".html"),
        ("static", ".css"),
        ("static", ".js"),
        ("migrations", ".sql"),
        ("tests", ".py"),
        ("deploy", ""),
    ] {
        all.extend(below(folder, end));
    }
    let long = |file: &&Source| file.text.lines().count() > LINES;
    let long: Vec<&str> = all
        .iter()
        .filter(long)
        .map(|file| file.path.as_str())
        .collect();
    assert!(long.is_empty(), "{long:?}");
}

#[test]
fn every_file_says_what_it_is_for() {
    let silent = |file: &&Source| !file.text.starts_with("//!");
    let silent: Vec<String> = rust()
        .iter()
        .filter(silent)
        .map(|file| file.path.clone())
        .collect();
    assert!(silent.is_empty(), "{silent:?}");
}
