//! Handlers are short and say nothing themselves: they read, act and show.

use std::collections::BTreeSet;

use regex::Regex;
use syn::visit::{self, Visit};
use syn::{Attribute, Expr, ExprCall, ExprMethodCall, ItemFn, ItemMod, Lit, Macro};

use super::source::{Source, below};

/// So many lines a handler's body has at most.
const LINES: usize = 15;

/// Files whose functions answer requests.
fn answering() -> Vec<Source> {
    let mut all = below("server", ".rs");
    all.retain(|source| {
        let name = source.path.rsplit('/').next().unwrap();
        source.module() != "web"
            && (name == "page.rs" || name.ends_with("pages.rs") || name == "api.rs")
    });
    assert!(all.len() > 15);
    all
}

/// The functions that a file's tables of routes name.
fn handlers(source: &Source) -> BTreeSet<String> {
    struct Routes(BTreeSet<String>);
    impl Visit<'_> for Routes {
        fn visit_expr_method_call(&mut self, call: &ExprMethodCall) {
            let names = ["get", "post", "open_get", "open_post"];
            if call.args.len() == 2 && names.iter().any(|name| call.method == name) {
                self.take(&call.args[1]);
            }
            visit::visit_expr_method_call(self, call);
        }

        fn visit_expr_call(&mut self, call: &ExprCall) {
            if let Expr::Path(path) = &*call.func
                && path.path.segments[0].ident == "Route"
                && let Some(last) = call.args.last()
            {
                self.take(last);
            }
            visit::visit_expr_call(self, call);
        }
    }
    impl Routes {
        fn take(&mut self, handler: &Expr) {
            if let Expr::Path(path) = handler
                && let Some(name) = path.path.get_ident()
            {
                self.0.insert(name.to_string());
            }
        }
    }
    let mut routes = Routes(BTreeSet::new());
    routes.visit_file(&source.parsed());
    routes.0
}

/// How many lines a function's body has, in the format that rustfmt keeps.
fn lines_of(source: &Source, name: &str) -> Option<usize> {
    let pattern =
        format!(r"(?m)^(?:pub(?:\([a-z]+\))? )?async fn {name}\b[^{{]*\{{\n((?:.*\n)*?)\}}\n");
    let found = Regex::new(&pattern).unwrap().captures(&source.text)?;
    Some(
        found[1]
            .lines()
            .filter(|line| !line.trim().is_empty())
            .count(),
    )
}

#[test]
fn handlers_are_short() {
    let (mut seen, mut long) = (0, Vec::new());
    for source in answering() {
        for name in handlers(&source) {
            let Some(lines) = lines_of(&source, &name) else {
                continue;
            };
            seen += 1;
            if lines > LINES {
                long.push(format!("{}: {name} has {lines} lines", source.path));
            }
        }
    }
    assert!(seen > 90, "{seen}");
    assert!(long.is_empty(), "{long:#?}");
}

/// Values of headers, which look like words.
const HEADERS: &[&str] = &[
    "text/html; charset=utf-8",
    "text/csv; charset=utf-8",
    "private, no-cache",
    "{name}={value}; Path={path}; Max-Age=31536000; SameSite=Lax; HttpOnly{secure}",
    "attachment; filename=\"{name}\"",
];

/// Literals that a person would read as words.
#[derive(Default)]
struct Sentences(Vec<String>);

impl Sentences {
    fn look_at(&mut self, text: String) {
        let words = Regex::new(r"[A-Za-z’']{2,}[,;:]? [A-Za-z]{2,}").unwrap();
        if words.is_match(&text) && !HEADERS.contains(&text.as_str()) {
            self.0.push(text);
        }
    }
}

impl Visit<'_> for Sentences {
    fn visit_attribute(&mut self, _: &Attribute) {}

    fn visit_item_mod(&mut self, _: &ItemMod) {}

    // What a fault says is for the log.
    fn visit_expr_call(&mut self, call: &ExprCall) {
        if let Expr::Path(path) = &*call.func
            && path
                .path
                .segments
                .last()
                .is_some_and(|last| last.ident == "fault")
        {
            return;
        }
        visit::visit_expr_call(self, call);
    }

    fn visit_lit(&mut self, lit: &Lit) {
        if let Lit::Str(text) = lit {
            self.look_at(text.value());
        }
    }

    fn visit_macro(&mut self, item: &Macro) {
        if item.path.segments[0].ident == "tracing" {
            return;
        }
        for token in item.tokens.clone() {
            if let Ok(Lit::Str(text)) = syn::parse2(token.into()) {
                self.look_at(text.value());
            }
        }
    }
}

fn sentences(source: &Source) -> Vec<String> {
    struct Functions(Sentences);
    impl Visit<'_> for Functions {
        fn visit_item_fn(&mut self, function: &ItemFn) {
            self.0.visit_item_fn(function);
        }
    }
    let mut functions = Functions(Sentences::default());
    functions.visit_file(&source.parsed());
    functions.0.0
}

/// What the document of the API says of its routes stands beside them.
fn is_of_document(source: &Source) -> bool {
    source.path.ends_with("/api.rs")
}

#[test]
fn handlers_say_nothing_themselves() {
    let mut read = 0;
    for source in answering().iter().filter(|source| !is_of_document(source)) {
        let said = sentences(source);
        assert!(said.is_empty(), "{}: {said:?}", source.path);
        read += 1;
    }
    for path in [
        "forms",
        "frame",
        "desk",
        "display",
        "error_pages",
        "guards",
        "journal",
    ] {
        let path = format!("server/web/{path}.rs");
        let mut all = below("server/web", ".rs");
        all.retain(|source| source.path == path);
        let said: Vec<String> = all.iter().flat_map(sentences).collect();
        assert_eq!(all.len(), 1, "{path}");
        let meant_for_the_log = ["a handler panicked: {what}", "a panic without words"];
        let said = said
            .iter()
            .filter(|said| !meant_for_the_log.contains(&said.as_str()));
        assert_eq!(said.collect::<Vec<_>>(), Vec::<&String>::new(), "{path}");
    }
    assert!(read > 10, "{read}");
}

#[test]
fn both_rules_see_what_they_look_for() {
    let source = Source {
        path: "server/x/pages.rs".to_owned(),
        text: "fn pages() { Pages::new().get(\"/a\", a).post(\"/b\", b); }\n\
               async fn a(\n    x: X,\n) -> Response {\n    one();\n\n    two(\"Not so fast.\")\n}\n\
               async fn b() -> Response {\n    Error::fault(\"a cause for the log\")\n}\n"
            .to_owned(),
    };
    let found: Vec<String> = handlers(&source).into_iter().collect();
    assert_eq!(found, ["a", "b"]);
    assert_eq!(lines_of(&source, "a"), Some(2));
    assert_eq!(sentences(&source), ["Not so fast."]);
}
