//! Imports go downward: the trade's arithmetic knows nobody, what is shared knows
//! no noun, and nobody but `main` knows the commands.

use std::collections::BTreeSet;

use regex::Regex;
use syn::visit::Visit;
use syn::{ItemUse, UseTree};

use super::source::{Source, below};

const NOUNS: &[&str] = &[
    "air",
    "arrivals",
    "bench",
    "bench_sheet",
    "board",
    "book",
    "checks",
    "emergency",
    "handover",
    "incidents",
    "inductions",
    "labels",
    "lamps",
    "members",
    "mixes",
    "notices",
    "outages",
    "papers",
    "products",
    "rooms",
    "screens",
    "sheets",
    "topics",
    "trays",
    "workshops",
];

/// What each shared module may import, and nothing else of the program.
const MAY_IMPORT: &[(&str, &[&str])] = &[
    ("darkroom", &[]),
    ("reckon", &["darkroom"]),
    ("rights", &["identity"]),
    ("clock", &[]),
    ("address", &[]),
    ("problem", &["darkroom", "web"]),
    ("error", &["problem"]),
    ("database", &["error"]),
    (
        "logbook",
        &["clock", "database", "error", "problem", "rights"],
    ),
    ("input", &["clock", "darkroom", "identity", "problem"]),
];

/// Shared modules that import no noun.
const SHARED: &[&str] = &["api", "app", "identity", "kinds", "starters", "web"];

/// Files of shared modules that do, and why.
const EXCEPTIONS: &[(&str, &[&str], &str)] = &[
    ("server/kinds.rs", NOUNS, "the list of every noun's entries"),
    (
        "server/starters.rs",
        NOUNS,
        "the list of what a new room begins with",
    ),
    (
        "server/api/routes.rs",
        NOUNS,
        "the list of every noun's routes",
    ),
    (
        "server/app.rs",
        &["board", "screens"],
        "holds the boards that are kept",
    ),
    (
        "server/web/around.rs",
        &["notices", "outages", "rooms"],
        "what every page of a room says beside its own matter",
    ),
    (
        "server/web/messages/air.rs",
        &["air", "outages"],
        "words for what is known of the air, and what is off",
    ),
    (
        "server/web/messages/checks.rs",
        &["checks"],
        "words for what checks found and when they are due",
    ),
    (
        "server/web/messages/handover.rs",
        &["outages"],
        "words for what is off, in the list",
    ),
    (
        "server/web/messages/arrivals.rs",
        &["arrivals"],
        "words for who came and went",
    ),
    (
        "server/web/messages/inductions.rs",
        &["inductions"],
        "words for what people were told",
    ),
    (
        "server/web/messages/scans.rs",
        &["inductions"],
        "words for scans of papers",
    ),
    (
        "server/web/messages/topics.rs",
        &["topics"],
        "words for what asks for a topic",
    ),
    (
        "server/web/messages/ingredients.rs",
        &["products"],
        "words for what products are made of",
    ),
    (
        "server/web/messages/incidents.rs",
        &["incidents"],
        "words for what happened",
    ),
    (
        "server/web/messages/workshops.rs",
        &["workshops"],
        "words for workshops and their guests",
    ),
    (
        "server/web/messages/lamps.rs",
        &["lamps"],
        "words for what tests of lamps found",
    ),
    (
        "server/web/messages/outages.rs",
        &["outages"],
        "words for what is off",
    ),
    (
        "server/web/messages/entries.rs",
        NOUNS,
        "reads every entry into a sentence",
    ),
    (
        "server/web/messages/mix_entries.rs",
        &["mixes"],
        "reads every entry about a mix into a sentence",
    ),
    (
        "server/web/messages/readings.rs",
        &["mixes", "products"],
        "words for what people find of mixes, and what came into them",
    ),
    (
        "server/web/messages/testing.rs",
        &["mixes"],
        "words for how checks are made",
    ),
    (
        "server/web/messages/trays.rs",
        &["mixes"],
        "words for how mixes are kept and tested",
    ),
    (
        "server/web/messages/lines.rs",
        &["bench"],
        "words for what prints do in trays",
    ),
    (
        "server/web/messages/notices.rs",
        &["notices"],
        "reads every notice into a sentence",
    ),
    (
        "server/web/messages/products.rs",
        &["products"],
        "words for what products are",
    ),
];

/// The first names of every path of the crate that a file writes.
fn imports(source: &Source) -> BTreeSet<String> {
    struct Uses(BTreeSet<String>);
    impl Visit<'_> for Uses {
        fn visit_item_use(&mut self, item: &ItemUse) {
            if let UseTree::Path(path) = &item.tree
                && path.ident == "crate"
            {
                first_names(&path.tree, &mut self.0);
            }
        }
    }
    let mut uses = Uses(BTreeSet::new());
    uses.visit_file(&source.parsed());
    let inline = Regex::new(r"\bcrate::([a-z_]+)").unwrap();
    let code = Regex::new(r"(?m)^\s*//.*$")
        .unwrap()
        .replace_all(&source.text, "");
    let inline = inline.captures_iter(&code).map(|found| found[1].to_owned());
    uses.0.extend(inline);
    uses.0.remove(source.module());
    uses.0
}

fn first_names(tree: &UseTree, names: &mut BTreeSet<String>) {
    match tree {
        UseTree::Path(path) => drop(names.insert(path.ident.to_string())),
        UseTree::Name(name) => drop(names.insert(name.ident.to_string())),
        UseTree::Rename(name) => drop(names.insert(name.ident.to_string())),
        UseTree::Group(group) => group.items.iter().for_each(|tree| first_names(tree, names)),
        UseTree::Glob(_) => {}
    }
}

#[test]
fn what_is_below_knows_nothing_above() {
    for source in below("server", ".rs") {
        let found = MAY_IMPORT
            .iter()
            .find(|(module, _)| *module == source.module());
        let Some((_, may)) = found else { continue };
        for import in imports(&source) {
            assert!(
                may.contains(&import.as_str()),
                "{} imports {import}",
                source.path
            );
        }
    }
}

#[test]
fn what_is_shared_knows_no_noun() {
    let mut used = BTreeSet::new();
    for source in below("server", ".rs") {
        if !SHARED.contains(&source.module()) {
            continue;
        }
        let excused = EXCEPTIONS.iter().find(|(path, ..)| *path == source.path);
        for import in imports(&source) {
            let is_noun = NOUNS.contains(&import.as_str());
            let may = excused.is_some_and(|(_, nouns, _)| nouns.contains(&import.as_str()));
            assert!(!is_noun || may, "{} imports {import}", source.path);
            if is_noun {
                used.insert(source.path.clone());
            }
        }
    }
    let excused: BTreeSet<String> = EXCEPTIONS
        .iter()
        .map(|(path, ..)| (*path).to_owned())
        .collect();
    assert_eq!(used, excused, "an exception that nothing needs");
}

#[test]
fn nobody_calls_the_commands_but_main() {
    for source in below("server", ".rs") {
        if ["main", "commands"].contains(&source.module()) {
            continue;
        }
        let imports = imports(&source);
        for above in ["commands", "demo"] {
            assert!(!imports.contains(above), "{} imports {above}", source.path);
        }
    }
}

#[test]
fn every_module_has_its_layer() {
    let known: BTreeSet<&str> = NOUNS
        .iter()
        .chain(SHARED)
        .copied()
        .chain(MAY_IMPORT.iter().map(|(module, _)| *module))
        .chain(["main", "lib", "router", "commands", "demo", "jobs"])
        .collect();
    let sources = below("server", ".rs");
    let found: BTreeSet<&str> = sources.iter().map(Source::module).collect();
    assert_eq!(found, known);
}

#[test]
fn every_way_to_import_is_seen() {
    let source = Source {
        path: "server/sample.rs".to_owned(),
        text: "use crate::a::B;\nuse crate::{c, d::{E, F}};\nfn g() { crate::h::i(); }\n// crate::not\n"
            .to_owned(),
    };
    let found: Vec<String> = imports(&source).into_iter().collect();
    assert_eq!(found, ["a", "c", "d", "h"]);
}
