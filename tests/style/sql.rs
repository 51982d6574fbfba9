//! SQL stands in `store.rs` files, in a form that the checker of queries can trust.

use std::collections::BTreeSet;

use regex::Regex;
use syn::visit::Visit;
use syn::{LitStr, Macro};

use super::source::{Source, below};

/// Files that name the database's driver outside of stores, and why.
const KNOW_THE_DRIVER: &[(&str, &str)] = &[
    (
        "server/error.rs",
        "reads what the driver answers into meanings",
    ),
    (
        "server/commands/installation.rs",
        "reads the address of a database",
    ),
];

fn is_store(path: &str) -> bool {
    path.ends_with("/store.rs")
}

#[test]
fn only_stores_and_the_database_speak_sql() {
    let mut used = BTreeSet::new();
    for source in below("server", ".rs") {
        if is_store(&source.path) || source.module() == "database" {
            continue;
        }
        if !source.text.contains("sqlx") {
            continue;
        }
        let excused = KNOW_THE_DRIVER.iter().any(|(path, _)| *path == source.path);
        assert!(excused, "{} names sqlx", source.path);
        assert!(!source.text.contains("query"), "{} asks", source.path);
        used.insert(source.path);
    }
    let excused: BTreeSet<String> = KNOW_THE_DRIVER
        .iter()
        .map(|(path, _)| (*path).to_owned())
        .collect();
    assert_eq!(used, excused, "an exception that nothing needs");
}

/// The statements of a store: what its query macros are given.
fn statements(source: &Source) -> Vec<String> {
    struct Queries(Vec<String>);
    impl Visit<'_> for Queries {
        fn visit_macro(&mut self, item: &Macro) {
            let mut path = item.path.segments.iter();
            if path.next().is_some_and(|first| first.ident == "sqlx") {
                for token in item.tokens.clone() {
                    if let Ok(text) = syn::parse2::<LitStr>(token.into()) {
                        self.0.push(text.value());
                    }
                }
            }
        }
    }
    let mut queries = Queries(Vec::new());
    queries.visit_file(&source.parsed());
    queries.0
}

fn stores() -> Vec<Source> {
    let mut all = below("server", ".rs");
    all.retain(|source| is_store(&source.path));
    assert!(all.len() > 10);
    all
}

#[test]
fn stores_ask_with_the_checked_macros_only() {
    let unchecked = Regex::new(r"sqlx::(?:query|query_as|query_scalar|raw_sql)\s*(?:::<[^>]*>)?\(|QueryBuilder|AssertSqlSafe|\.begin\(").unwrap();
    let mut asked = 0;
    for source in stores() {
        let found = unchecked.find(&source.text).map(|found| found.as_str());
        assert_eq!(found, None, "{}", source.path);
        asked += statements(&source).len();
    }
    assert!(asked > 100, "{asked}");
}

#[test]
fn time_zones_and_todays_date_are_not_the_databases_business() {
    let banned = Regex::new(
        r"(?i)at\s+time\s+zone|date_trunc|current_date|current_timestamp|localtime|\bnow\s*\(\)",
    )
    .unwrap();
    for source in stores() {
        for statement in statements(&source) {
            let found = banned.find(&statement).map(|found| found.as_str());
            assert_eq!(found, None, "{}: {statement}", source.path);
        }
    }
}

#[test]
fn statements_are_lower_case_and_name_their_columns() {
    let shouted =
        Regex::new(r"\b(SELECT|FROM|WHERE|INSERT|UPDATE|DELETE|JOIN|AND|ORDER)\b").unwrap();
    let everything = Regex::new(r"select\s+(?:[a-z_]+\.)?\*|returning\s+\*").unwrap();
    for source in stores() {
        for statement in statements(&source) {
            for rule in [&shouted, &everything] {
                let found = rule.find(&statement).map(|found| found.as_str());
                assert_eq!(found, None, "{}: {statement}", source.path);
            }
        }
    }
}

/// The names of the tables that an outer join may leave empty.
fn outer_names(statement: &str) -> BTreeSet<String> {
    let word = Regex::new(r"[a-z_]+|\S").unwrap();
    let words: Vec<&str> = word.find_iter(statement).map(|it| it.as_str()).collect();
    let (mut outer, mut before) = (BTreeSet::new(), BTreeSet::new());
    for (at, word) in words.iter().enumerate() {
        if !["join", "from"].contains(word) {
            continue;
        }
        let mut sides = words[..at].iter().rev().filter(|word| **word != "outer");
        let side = if *word == "join" { sides.next() } else { None };
        let name = name_of(&words[at + 1..]);
        if matches!(side, Some(&"right" | &"full")) {
            outer.extend(before.iter().cloned());
        }
        if matches!(side, Some(&"left" | &"full")) {
            outer.insert(name.clone());
        }
        before.insert(name);
    }
    outer
}

/// What a joined table is called from here on: its alias, or its own name.
fn name_of(words: &[&str]) -> String {
    let mut rest = words
        .iter()
        .copied()
        .filter(|word| *word != "lateral")
        .peekable();
    let (mut name, mut depth) = (String::new(), 0);
    // The table itself, a function with what it is given, or a whole query.
    while let Some(word) = rest.peek() {
        match *word {
            "(" => depth += 1,
            ")" => depth -= 1,
            word if depth == 0 && name.is_empty() => name = word.to_owned(),
            _ if depth == 0 => break,
            _ => {}
        }
        rest.next();
    }
    let ends = [
        "on",
        "where",
        "left",
        "right",
        "full",
        "join",
        "cross",
        "order",
        "group",
        "limit",
        "for",
        "union",
        "set",
        "returning",
    ];
    let mut alias = rest.skip_while(|word| ["as", "with", "ordinality"].contains(word));
    match alias.next() {
        Some(word) if word.starts_with(char::is_alphabetic) && !ends.contains(&word) => {
            word.to_owned()
        }
        _ => name,
    }
}

/// The items of every list of columns in a statement, subqueries' too.
fn selected(statement: &str) -> Vec<String> {
    let start = Regex::new(r"\bselect\b(?:\s+distinct(?:\s+on\s*\([^)]*\))?)?").unwrap();
    let mut items = Vec::new();
    for found in start.find_iter(statement) {
        let (mut depth, mut item) = (0_i32, String::new());
        let rest = &statement[found.end()..];
        for (at, letter) in rest.char_indices() {
            let ends =
                depth == 0 && (rest[at..].starts_with("from ") || rest[at..].starts_with("from\n"));
            match letter {
                '(' => depth += 1,
                ')' => depth -= 1,
                _ => {}
            }
            if ends || depth < 0 {
                break;
            }
            if letter == ',' && depth == 0 {
                items.push(std::mem::take(&mut item));
            } else {
                item.push(letter);
            }
        }
        items.push(item);
    }
    items.iter().map(|item| item.trim().to_owned()).collect()
}

/// Columns of an outer side that do not say that they may be missing.
fn too_sure(statement: &str) -> Vec<String> {
    let outer = outer_names(statement);
    let says = Regex::new(r#"as "[a-z0-9_]+[?!]"$"#).unwrap();
    let takes = |item: &str| {
        outer.iter().any(|name| {
            let column = Regex::new(&format!(r"\b{}\.", regex::escape(name))).unwrap();
            column.is_match(item)
        })
    };
    let plain = Regex::new(r#"^[a-z_]+\.[a-z0-9_]+(?: as "[a-z0-9_]+!")?$"#).unwrap();
    selected(statement)
        .into_iter()
        .filter(|item| takes(item))
        // A bare column may be missing and says so; an expression says which.
        .filter(|item| !says.is_match(item) || plain.is_match(item))
        .collect()
}

#[test]
fn what_an_outer_join_may_leave_out_says_so() {
    let mut joined = 0;
    for source in stores() {
        for statement in statements(&source) {
            joined += usize::from(!outer_names(&statement).is_empty());
            let sure = too_sure(&statement);
            assert!(sure.is_empty(), "{}: {sure:?} in {statement}", source.path);
        }
    }
    assert!(joined >= 4, "{joined}");
}

#[test]
fn the_rule_sees_every_side() {
    let sure = |statement: &str| too_sure(statement);
    let left = "select a.id, b.name from a left join b on b.id = a.id where a.x";
    assert_eq!(sure(left), ["b.name"]);
    let good = r#"select a.id, b.name as "name?" from a left join b on b.id = a.id"#;
    assert!(sure(good).is_empty());
    let forced = r#"select b.name as "name!" from a left join b on b.id = a.id"#;
    assert_eq!(sure(forced).len(), 1);
    let right = "select x.id, y.name from a x right join b as y on y.id = x.id";
    assert_eq!(sure(right), ["x.id"]);
    let full = "select x.id, y.name from a x full outer join b y on y.id = x.id";
    assert_eq!(sure(full), ["x.id", "y.name"]);
    let inner = "select a.id, b.name from a join b on b.id = a.id";
    assert!(sure(inner).is_empty());
    let expressed = r#"select coalesce(b.n, 0) as "n!" from a left join b on b.id = a.id"#;
    assert!(sure(expressed).is_empty());
    let unsaid = "select coalesce(b.n, 0) from a left join b on b.id = a.id";
    assert_eq!(sure(unsaid).len(), 1);
}
