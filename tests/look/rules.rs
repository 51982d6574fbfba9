//! Rules every page keeps: one heading of the first rank, unique ids, labelled fields,
//! nothing inline that the content security policy would refuse.

use std::collections::HashSet;

use scraper::{ElementRef, Html, Selector};
use wetside::web::shell::Display;

use super::{pages, shell};

fn selector(text: &str) -> Selector {
    Selector::parse(text).unwrap()
}

fn each_page(check: impl Fn(&str, &Html)) {
    for (name, page) in pages() {
        for display in Display::ALL {
            let html = Html::parse_document(&page(shell(display)));
            check(&format!("{name} ({})", display.name()), &html);
        }
    }
}

#[test]
fn one_heading_of_the_first_rank_and_a_title() {
    each_page(|name, html| {
        let headings: Vec<_> = html.select(&selector("h1")).collect();
        assert_eq!(headings.len(), 1, "{name}");
        let said: String = headings.iter().flat_map(ElementRef::text).collect();
        assert!(!said.trim().is_empty(), "{name}");
        let title: String = html
            .select(&selector("title"))
            .flat_map(|title| title.text())
            .collect();
        assert!(title.len() > "Wetside".len() + 3, "{name}: {title}");
    });
}

#[test]
fn ids_are_unique_and_what_points_at_them_exists() {
    each_page(|name, html| {
        let mut ids = HashSet::new();
        for element in html.select(&selector("[id]")) {
            let id = element.attr("id").unwrap_or_default();
            assert!(ids.insert(id), "{name}: id {id} twice");
        }
        for attribute in ["for", "aria-describedby", "aria-labelledby"] {
            for element in html.select(&selector(&format!("[{attribute}]"))) {
                for id in element
                    .attr(attribute)
                    .unwrap_or_default()
                    .split_whitespace()
                {
                    assert!(ids.contains(id), "{name}: {attribute} names {id}");
                }
            }
        }
        for link in html.select(&selector("a[href^='#']")) {
            let id = link
                .attr("href")
                .unwrap_or_default()
                .trim_start_matches('#');
            assert!(ids.contains(id), "{name}: link to #{id}");
        }
    });
}

#[test]
fn every_field_is_labelled() {
    let fields = selector("input:not([type=hidden]), select, textarea");
    each_page(|name, html| {
        for field in html.select(&fields) {
            let id = field.attr("id").unwrap_or("");
            let wrapped = field
                .ancestors()
                .filter_map(ElementRef::wrap)
                .any(|above| above.value().name() == "label");
            let labelled = wrapped
                || field.attr("aria-label").is_some()
                || html
                    .select(&selector("label[for]"))
                    .any(|label| label.attr("for") == Some(id));
            assert!(labelled, "{name}: {}", field.html());
        }
        for button in html.select(&selector("button, a")) {
            let words: String = button.text().collect();
            let named = !words.trim().is_empty() || button.attr("aria-label").is_some();
            assert!(named, "{name}: {}", button.html());
        }
        for group in html.select(&selector("fieldset")) {
            assert!(
                group.select(&selector("legend")).next().is_some(),
                "{name}: {}",
                group.html()
            );
        }
    });
}

#[test]
fn nothing_inline_and_nothing_from_elsewhere() {
    each_page(|name, html| {
        for element in html
            .root_element()
            .descendants()
            .filter_map(ElementRef::wrap)
        {
            for (attribute, value) in element.value().attrs() {
                assert!(
                    attribute != "style",
                    "{name}: style on {}",
                    element.value().name()
                );
                assert!(!attribute.starts_with("on"), "{name}: {attribute}");
                let loads = matches!(attribute, "src" | "href" | "action");
                assert!(!(loads && value.contains("//")), "{name}: {value}");
            }
        }
        assert!(
            html.select(&selector("style")).next().is_none(),
            "{name}: a style element"
        );
        for script in html.select(&selector("script")) {
            assert!(
                script.attr("src").is_some() && script.text().next().is_none(),
                "{name}"
            );
        }
    });
}

#[test]
fn emergency_and_the_displays_are_on_every_page() {
    each_page(|name, html| {
        assert!(
            html.select(&selector("a.emergency")).next().is_some(),
            "{name}"
        );
        let pressed = html
            .select(&selector("form.display button[aria-pressed=true]"))
            .count();
        assert_eq!(pressed, 1, "{name}");
    });
}

#[test]
fn a_problem_stands_in_the_summary_and_beside_its_field() {
    let mut seen = 0;
    each_page(|name, html| {
        for wrong in html.select(&selector("[aria-invalid=true]")) {
            let described = wrong.attr("aria-describedby").unwrap_or_default();
            assert!(described.contains("error-"), "{name}: {}", wrong.html());
            assert!(
                html.select(&selector(".summary a")).next().is_some(),
                "{name}"
            );
        }
    });
    for (_, page) in pages() {
        let html = Html::parse_document(&page(shell(Display::Day)));
        seen += html.select(&selector("[aria-invalid=true]")).count();
    }
    assert!(seen > 0, "the gallery holds no form with a problem");
}

/// `|safe` would let text of people into a page as markup; a bare `<input>` would miss
/// label, hint and problem.
#[test]
fn templates_escape_and_leave_fields_to_the_macros() {
    let mut folders = vec![std::path::PathBuf::from("templates")];
    let mut read = 0;
    while let Some(folder) = folders.pop() {
        for item in std::fs::read_dir(&folder).unwrap() {
            let path = item.unwrap().path();
            if path.is_dir() {
                folders.push(path);
                continue;
            }
            let text = std::fs::read_to_string(&path).unwrap();
            let squeezed = text.replace(' ', "");
            assert!(!squeezed.contains("|safe"), "{}", path.display());
            assert!(!text.contains("{% autoescape"), "{}", path.display());
            assert!(text.lines().count() <= 500, "{}", path.display());
            let fields = ["<input", "<select", "<textarea"];
            let raw: usize = fields.iter().map(|field| text.matches(field).count()).sum();
            // The one exception is the display switcher's hidden way back.
            let allowed = match path.file_name().and_then(|name| name.to_str()) {
                Some("fields.html") => raw,
                Some("base.html") => 1,
                _ => 0,
            };
            assert_eq!(raw, allowed, "{}", path.display());
            read += 1;
        }
    }
    assert!(read > 20);
}
