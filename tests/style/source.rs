//! The tree as text.

use std::path::{Path, PathBuf};

/// The top of the repository.
pub(super) fn root() -> &'static Path {
    Path::new(env!("CARGO_MANIFEST_DIR"))
}

/// One file: its path from the top, and what it holds.
#[derive(Debug)]
pub(super) struct Source {
    pub(super) path: String,
    pub(super) text: String,
}

impl Source {
    /// The module that the file belongs to: the folder below `server/`, or the
    /// file's own name.
    pub(super) fn module(&self) -> &str {
        let below = self.path.strip_prefix("server/").unwrap_or(&self.path);
        let first = below.split('/').next().unwrap();
        first.strip_suffix(".rs").unwrap_or(first)
    }

    pub(super) fn parsed(&self) -> syn::File {
        syn::parse_file(&self.text).unwrap()
    }
}

/// Every file below a folder that ends so.
pub(super) fn below(folder: &str, end: &str) -> Vec<Source> {
    let mut found = Vec::new();
    collect(&root().join(folder), end, &mut found);
    found.sort();
    let sources: Vec<Source> = found.into_iter().map(|path| read(&path)).collect();
    assert!(!sources.is_empty(), "no {end} below {folder}");
    sources
}

fn collect(folder: &Path, end: &str, found: &mut Vec<PathBuf>) {
    for item in std::fs::read_dir(folder).unwrap() {
        let path = item.unwrap().path();
        if path.is_dir() {
            collect(&path, end, found);
        } else if path.to_string_lossy().ends_with(end) {
            found.push(path);
        }
    }
}

fn read(path: &Path) -> Source {
    let from_top = path.strip_prefix(root()).unwrap();
    Source {
        path: from_top.to_string_lossy().into_owned(),
        text: std::fs::read_to_string(path).unwrap(),
    }
}

/// Every source of the program and of the tests.
pub(super) fn rust() -> Vec<Source> {
    let mut all = below("server", ".rs");
    all.extend(below("tests", ".rs"));
    all
}
