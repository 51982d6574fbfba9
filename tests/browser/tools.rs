//! What judges pages besides our own rules: axe-core in the page, and the checker of
//! HTML. `deploy/browser-tools` puts both where they are looked for.

use std::ffi::OsStr;
use std::path::PathBuf;
use std::process::Command;

use serde_json::Value;

const WANTED: &str = include_str!("tools/package.json");

fn folder() -> PathBuf {
    if let Some(named) = std::env::var_os("WETSIDE_BROWSER_TOOLS") {
        return PathBuf::from(named);
    }
    let cache = std::env::var_os("XDG_CACHE_HOME").map(PathBuf::from);
    let home = || PathBuf::from(std::env::var_os("HOME").unwrap()).join(".cache");
    cache.unwrap_or_else(home).join("wetside/browser-tools")
}

/// A file of a package, in the version that `tests/browser/tools` names.
fn file(package: &str, path: &str) -> PathBuf {
    let wanted: Value = serde_json::from_str(WANTED).unwrap();
    let wanted = wanted["dependencies"][package].as_str().unwrap();
    let place = folder().join("node_modules").join(package);
    let about = std::fs::read_to_string(place.join("package.json")).unwrap_or_default();
    let about: Value = serde_json::from_str(&about).unwrap_or_default();
    assert_eq!(
        about["version"].as_str(),
        Some(wanted),
        "{package} {wanted} is not in {}: run deploy/browser-tools, which puts it there",
        place.display()
    );
    place.join(path)
}

/// The script that looks for what keeps people out of a page.
pub(super) fn axe() -> String {
    std::fs::read_to_string(file("axe-core", "axe.min.js")).unwrap()
}

/// What the checker of HTML says about files, one message a line; nothing is well.
pub(super) fn check_html(files: &[PathBuf]) -> Vec<String> {
    let checker = file("vnu-jar", "build/dist/vnu.jar");
    let said = Command::new("java")
        .arg("-jar")
        .arg(checker)
        .args(["--format", "gnu"])
        .args(files)
        .output();
    let said = said.unwrap_or_else(|cause| panic!("java ({cause}): run deploy/browser-tools"));
    let words = String::from_utf8_lossy(&said.stderr).into_owned();
    let lines: Vec<String> = words.lines().map(str::to_owned).collect();
    assert!(said.status.success() || !lines.is_empty(), "{said:?}");
    lines
}

/// What a program of poppler says of a printed page.
pub(super) fn poppler(program: &str, arguments: &[&OsStr]) -> String {
    let said = Command::new(program).args(arguments).output();
    let said = said.unwrap_or_else(|cause| panic!("{program} ({cause}): run deploy/browser-tools"));
    assert!(said.status.success(), "{said:?}");
    String::from_utf8(said.stdout).unwrap()
}
