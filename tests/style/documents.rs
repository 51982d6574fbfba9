//! What README.md and DEVELOPERS.md name exists, and the rights they list are the
//! rights there are.

use std::collections::BTreeSet;
use std::process::Command;

use regex::Regex;
use wetside::rights::{Role, TABLE};

use super::source::{below, root};

const DOCUMENTS: &[&str] = &["README.md", "DEVELOPERS.md"];

/// What `cargo` is asked to do in the documents.
const CARGO: &[&str] = &[
    "build", "check", "clippy", "deny", "doc", "fmt", "install", "run", "test",
];

fn read(name: &str) -> String {
    let text = std::fs::read_to_string(root().join(name));
    text.unwrap_or_else(|cause| panic!("{name}: {cause}"))
}

/// Everything in backticks: words in a line, and each line of a block.
fn quoted(text: &str) -> Vec<String> {
    let block = Regex::new(r"(?ms)^```[a-z]*\n(.*?)^```$").unwrap();
    let mut quoted: Vec<String> = block
        .captures_iter(text)
        .flat_map(|found| found[1].lines().map(str::to_owned).collect::<Vec<_>>())
        .collect();
    let prose = block.replace_all(text, "");
    let words = Regex::new(r"`([^`\n]+)`").unwrap();
    quoted.extend(words.captures_iter(&prose).map(|found| found[1].to_owned()));
    quoted.iter().map(|text| text.trim().to_owned()).collect()
}

/// A path of the tree, if the text is one: no address, no absolute path.
fn as_path(text: &str) -> Option<&str> {
    let path = text
        .strip_prefix("./")
        .unwrap_or(text)
        .trim_end_matches('/');
    let is_path = Regex::new(r"^[.A-Za-z0-9_-]+(?:/[A-Za-z0-9_.-]+)+$").unwrap();
    let is_file = Regex::new(r"^[A-Za-z0-9_.-]+\.(?:rs|md|toml|html|css|js|sql|py|lock)$").unwrap();
    let is_folder = text.ends_with('/') && Regex::new(r"^[.a-z_-]+$").unwrap().is_match(path);
    (is_path.is_match(path) || is_file.is_match(path) || is_folder).then_some(path)
}

fn exists(path: &str, names: &BTreeSet<String>) -> bool {
    // `server/NOUN/store.rs`: there is one such file.
    if path.contains("NOUN") {
        let any = regex::escape(path).replace("NOUN", "[a-z]+");
        let any = Regex::new(&format!("^{any}(?:/|$)")).unwrap();
        let folder = path.split('/').next().unwrap();
        return below(folder, "")
            .iter()
            .any(|source| any.is_match(&source.path));
    }
    let below_server = root().join("server").join(path);
    root().join(path).exists() || below_server.exists() || names.contains(path)
}

/// Every file's name, for those that are named without their folder.
fn names() -> BTreeSet<String> {
    [
        "server",
        "tests",
        "templates",
        "static",
        "migrations",
        "deploy",
    ]
    .iter()
    .flat_map(|folder| below(folder, ""))
    .map(|source| source.path.rsplit('/').next().unwrap().to_owned())
    .collect()
}

#[test]
fn every_path_that_is_named_exists() {
    let names = names();
    let mut seen = 0;
    for document in DOCUMENTS {
        for text in quoted(&read(document)) {
            // A command's first word is a program; a script of ours is a path.
            let first = text.split_whitespace().next().unwrap_or_default();
            if let Some(path) = as_path(first) {
                assert!(exists(path, &names), "{document} names {path}");
                seen += 1;
            }
        }
    }
    assert!(seen > 10, "{seen}");
}

/// What the program says of a command, or nothing where there is none.
fn help(words: &[&str]) -> Option<String> {
    let asked = Command::new(env!("CARGO_BIN_EXE_wetside"))
        .args(words)
        .arg("--help")
        .output()
        .unwrap();
    let said = String::from_utf8(asked.stdout).unwrap();
    asked.status.success().then_some(said)
}

/// A command's words before its first value, and the options it is given.
fn command(text: &str) -> Option<(Vec<&str>, Vec<&str>)> {
    let text = text.split(['|', '#', '>']).next().unwrap().trim();
    let rest = text.strip_prefix("wetside ")?;
    let is_word = |word: &&str| {
        word.chars()
            .all(|letter| letter.is_ascii_lowercase() || letter == '-')
    };
    let words: Vec<&str> = rest
        .split_whitespace()
        .take_while(|word| !word.starts_with('-') && is_word(word))
        .collect();
    let options = rest
        .split_whitespace()
        .filter(|word| word.starts_with("--"))
        .map(|word| word.split('=').next().unwrap())
        .collect();
    Some((words, options))
}

#[test]
fn every_command_that_is_named_is_one() {
    let mut seen = 0;
    for document in DOCUMENTS {
        for text in quoted(&read(document)) {
            if let Some(rest) = text.strip_prefix("cargo ") {
                let what = rest.split_whitespace().next().unwrap();
                assert!(CARGO.contains(&what), "{document}: {text}");
            }
            let Some((words, options)) = command(&text) else {
                continue;
            };
            let said = help(&words).unwrap_or_else(|| panic!("{document}: no command {text}"));
            for option in options {
                assert!(said.contains(option), "{document}: {text} has no {option}");
            }
            seen += 1;
        }
    }
    assert!(seen > 5, "{seen}");
    assert_eq!(help(&["no-such-command"]), None);
}

#[test]
fn every_setting_that_is_named_is_read() {
    let setting = Regex::new(r"\bWETSIDE_[A-Z_]+\b").unwrap();
    let mut known = BTreeSet::new();
    for folder in ["server", "deploy", "tests"] {
        for source in below(folder, "") {
            if source.path != "tests/style/documents.rs" {
                known.extend(
                    setting
                        .find_iter(&source.text)
                        .map(|it| it.as_str().to_owned()),
                );
            }
        }
    }
    for document in DOCUMENTS {
        let text = read(document);
        for named in setting.find_iter(&text) {
            // A secret may stand in a file, which NAME_FILE names.
            let of_file = named.as_str().strip_suffix("_FILE");
            assert!(
                known.contains(named.as_str()) || of_file.is_some_and(|name| known.contains(name)),
                "{document} names {}",
                named.as_str()
            );
        }
    }
}

/// The table of rights as DEVELOPERS.md has it.
fn table() -> String {
    let mut text =
        "| right | what | member | trained | steward | treasurer |\n|---|---|---|---|---|---|\n"
            .to_owned();
    for row in TABLE {
        let may = Role::ALL.map(|role| if row.roles.contains(&role) { "yes" } else { "" });
        let (name, what) = (row.name, row.what);
        text.push_str(&format!("| {name} | {what} | {} |\n", may.join(" | ")));
    }
    text
}

#[test]
fn the_rights_are_those_of_the_table() {
    let text = read("DEVELOPERS.md");
    let (_, rest) = text.split_once("<!-- rights -->").unwrap();
    let (found, _) = rest.split_once("<!-- /rights -->").unwrap();
    let wanted = table();
    assert_eq!(
        found.trim(),
        wanted.trim(),
        "DEVELOPERS.md wants between its marks:\n{wanted}"
    );
}

#[test]
fn paths_and_commands_are_told_from_other_words() {
    let text = "Run `deploy/try --once`, see `server/web/`, not `/rooms/x`.\n```sh\nwetside member reset NAME\n```\n";
    let quoted = quoted(text);
    assert_eq!(quoted.len(), 4, "{quoted:?}");
    assert_eq!(as_path("deploy/try"), Some("deploy/try"));
    assert_eq!(as_path("server/web/"), Some("server/web"));
    assert_eq!(as_path("/rooms/x"), None);
    assert_eq!(as_path("Permit<Right>"), None);
    assert_eq!(as_path("templates/"), Some("templates"));
    let (words, options) = command("wetside member reset NAME --data=x # why").unwrap();
    assert_eq!((words, options), (vec!["member", "reset"], vec!["--data"]));
}
