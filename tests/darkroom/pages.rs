//! What the arithmetic's own pages promise: every formula names its source, every
//! failure is told, floating point stands only where the trade is approximate,
//! and the arithmetic knows nobody.

use std::fs;
use std::path::{Path, PathBuf};

use syn::visit::Visit;

fn files() -> Vec<(String, String)> {
    let folder: PathBuf = Path::new(env!("CARGO_MANIFEST_DIR")).join("server/darkroom");
    let paths = fs::read_dir(folder)
        .unwrap()
        .map(|file| file.unwrap().path());
    let name = |path: &Path| path.file_name().unwrap().to_str().unwrap().to_owned();
    paths
        .map(|path| (name(&path), fs::read_to_string(path).unwrap()))
        .collect()
}

fn docs(attributes: &[syn::Attribute]) -> String {
    let text = |attribute: &syn::Attribute| match &attribute.meta {
        syn::Meta::NameValue(pair) if pair.path.is_ident("doc") => match &pair.value {
            syn::Expr::Lit(syn::ExprLit {
                lit: syn::Lit::Str(text),
                ..
            }) => text.value() + "\n",
            _ => String::new(),
        },
        _ => String::new(),
    };
    attributes.iter().map(text).collect()
}

#[test]
fn every_module_names_where_its_rules_come_from() {
    // `state` holds figures and computes nothing; `mod` lists the modules.
    for (name, source) in files()
        .iter()
        .filter(|(name, _)| name != "state.rs" && name != "mod.rs")
    {
        let page = docs(&syn::parse_file(source).unwrap().attrs).to_lowercase();
        let page = page.replace('\n', " ");
        let named = [
            "source",
            "definition",
            "common  practice",
            "common practice",
            "from memory",
        ];
        assert!(
            named.iter().any(|word| page.contains(word)),
            "{name} names no source"
        );
    }
}

/// Public functions that may fail and do not say when.
struct Silent(Vec<String>);

impl Silent {
    fn look(&mut self, vis: &syn::Visibility, sig: &syn::Signature, attributes: &[syn::Attribute]) {
        let syn::ReturnType::Type(_, result) = &sig.output else {
            return;
        };
        let syn::Type::Path(path) = &**result else {
            return;
        };
        let fails = path
            .path
            .segments
            .last()
            .is_some_and(|last| last.ident == "Result");
        let public = matches!(vis, syn::Visibility::Public(_));
        if public && fails && !docs(attributes).contains("# Errors") {
            self.0.push(sig.ident.to_string());
        }
    }
}

impl<'ast> Visit<'ast> for Silent {
    fn visit_item_fn(&mut self, item: &'ast syn::ItemFn) {
        self.look(&item.vis, &item.sig, &item.attrs);
    }

    fn visit_impl_item_fn(&mut self, item: &'ast syn::ImplItemFn) {
        self.look(&item.vis, &item.sig, &item.attrs);
    }
}

#[test]
fn every_function_that_may_fail_says_when() {
    let mut silent = Silent(Vec::new());
    for (_, source) in files() {
        silent.visit_file(&syn::parse_file(&source).unwrap());
    }
    assert!(
        silent.0.is_empty(),
        "{:?} do not say when they fail",
        silent.0
    );
}

#[test]
fn floating_point_stands_only_where_the_trade_is_approximate() {
    // pH, time and temperature, and the one place a temperature is handed to them.
    let approximate = ["stop_bath.rs", "time_temperature.rs", "quantities.rs"];
    for (name, source) in files() {
        let floats = source.matches("f64").count() + source.matches("f32").count();
        assert!(
            floats == 0 || approximate.contains(&name.as_str()),
            "{name} uses floating point"
        );
        assert!(
            name != "quantities.rs" || floats <= 2,
            "quantities are whole numbers"
        );
    }
}

#[test]
fn the_arithmetic_knows_nobody() {
    for (name, source) in files() {
        for foreign in [
            "crate::",
            "sqlx",
            "axum",
            "tokio",
            "SystemTime",
            "std::fs",
            "std::env",
        ] {
            assert!(!source.contains(foreign), "{name} speaks of {foreign}");
        }
    }
}
