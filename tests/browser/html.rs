//! The HTML of every page of every role, held against the standard.

use std::collections::BTreeMap;
use std::path::PathBuf;

use axum::http::Method;
use wetside::router;

use super::tools;
use crate::access::house::House;
use crate::harness::scenario;
use crate::pages::checks;

#[test]
fn every_page_of_every_role_is_html_as_the_standard_has_it() {
    scenario(async |stage| {
        let house = House::furnish(stage).await;
        let folder = house.stage.installation.data.join("html");
        std::fs::create_dir_all(&folder).unwrap();
        let mut files: BTreeMap<PathBuf, String> = BTreeMap::new();
        for actor in &house.actors {
            let mut browser = house.browser(actor).await;
            for route in router::pages().listed() {
                let path = house.page_path(&route.path);
                let answer = match route.method {
                    Method::GET => browser.get(&path).await,
                    // Sent with nothing in it, it comes back with what is missing.
                    _ if route.right.is_some() => browser.post(&path, &[]).await,
                    _ => continue,
                };
                if checks::is_page(&answer) {
                    let file = folder.join(format!("{}.html", files.len()));
                    std::fs::write(&file, &answer.body).unwrap();
                    let place = format!("{}: {} {path}", actor.0, route.method);
                    files.insert(file, place);
                }
            }
        }
        assert!(files.len() > 300, "{}", files.len());
        let paths: Vec<PathBuf> = files.keys().cloned().collect();
        let said = tools::check_html(&paths);
        let named: Vec<String> = said
            .iter()
            .map(|line| with_its_page(line, &files))
            .collect();
        assert!(named.is_empty(), "{}", named.join("\n"));
    });
}

/// A message with the page in the place of the file.
fn with_its_page(line: &str, files: &BTreeMap<PathBuf, String>) -> String {
    let found = files.iter().find_map(|(file, place)| {
        let (_, rest) = line.split_once(&format!("{}\":", file.display()))?;
        Some(format!("{place}: {rest}"))
    });
    found.unwrap_or_else(|| line.to_owned())
}
