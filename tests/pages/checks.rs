//! What holds for every page that leaves the program, with its headers.

use std::collections::HashSet;

use axum::http::header::CONTENT_TYPE;
use scraper::{ElementRef, Html, Selector};

use crate::harness::Answer;

/// Of a file that somebody brought.
const SANDBOX: &str = "sandbox; default-src 'none'";

/// No script, style or picture but our own, and nobody's frame around us.
const CONTENT_RULES: &str = "default-src 'none'; style-src 'self'; script-src 'self'; \
    img-src 'self'; font-src 'self'; connect-src 'self'; manifest-src 'self'; worker-src 'self'; \
    form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

pub(super) fn selector(text: &str) -> Selector {
    Selector::parse(text).unwrap()
}

fn text_of(element: ElementRef<'_>) -> String {
    element.text().collect::<String>().trim().to_owned()
}

/// A page's headers and its markup.
pub(crate) fn page(answer: &Answer, who: &str) {
    let place = format!("{who}: {} {}", answer.method, answer.path);
    headers(answer, &place);
    assert_eq!(
        header(answer, "content-type"),
        "text/html; charset=utf-8",
        "{place}"
    );
    let html = Html::parse_document(&answer.body);
    heading_and_title(&html, &place);
    if let Some(number) = html.select(&selector(".trouble-number")).next() {
        assert_eq!(text_of(number), answer.status.as_str(), "{place}");
    }
    ids(&html, &place);
    labels(&html, &place);
    nothing_inline(&html, &place);
}

fn header<'a>(answer: &'a Answer, name: &str) -> &'a str {
    answer
        .headers
        .get(name)
        .map_or("", |value| value.to_str().unwrap())
}

/// The headers of every answer, whatever it holds.
pub(super) fn headers(answer: &Answer, place: &str) {
    let path = answer.path.split('?').next().unwrap();
    let (status, caching) = (answer.status, header(answer, "cache-control"));
    let is_there = status.is_success() || status.as_u16() == 304;
    let wanted = match is_there {
        true if path.ends_with("/board") => "private, no-cache",
        true if path.ends_with("/board/stream") => "no-store, no-transform",
        _ => "no-store",
    };
    assert_eq!(caching, wanted, "{place}");
    // What people brought may do nothing at all.
    let rules = match is_there && path.contains("/inductions/scans/") && !is_page(answer) {
        true => SANDBOX,
        false => CONTENT_RULES,
    };
    assert_eq!(header(answer, "content-security-policy"), rules, "{place}");
    assert_eq!(
        header(answer, "x-content-type-options"),
        "nosniff",
        "{place}"
    );
    assert_eq!(header(answer, "x-frame-options"), "DENY", "{place}");
    assert_eq!(
        header(answer, "cross-origin-opener-policy"),
        "same-origin",
        "{place}"
    );
    assert_eq!(
        header(answer, "cross-origin-resource-policy"),
        "same-origin",
        "{place}"
    );
    let referrer = header(answer, "referrer-policy");
    let holds_a_secret = ["/set-up/", "/join/", "/reset/"]
        .iter()
        .any(|start| answer.path.starts_with(start));
    let wanted = match holds_a_secret && status.as_u16() != 404 {
        true => "no-referrer",
        false => "same-origin",
    };
    assert_eq!(referrer, wanted, "{place}");
    assert!(!header(answer, "x-request-id").is_empty(), "{place}");
}

fn heading_and_title(html: &Html, place: &str) {
    let headings: Vec<_> = html.select(&selector("h1")).collect();
    assert_eq!(headings.len(), 1, "{place}: headings of the first rank");
    assert!(!text_of(headings[0]).is_empty(), "{place}");
    let titles: Vec<String> = html
        .select(&selector("head > title"))
        .map(text_of)
        .collect();
    assert_eq!(titles.len(), 1, "{place}");
    assert!(titles[0].len() > " · Wetside".len(), "{place}: {titles:?}");
    assert_eq!(html.root_element().attr("lang"), Some("en"), "{place}");
}

fn ids(html: &Html, place: &str) {
    let mut ids = HashSet::new();
    for element in html.select(&selector("[id]")) {
        let id = element.attr("id").unwrap();
        assert!(ids.insert(id), "{place}: id {id} twice");
    }
    for attribute in [
        "for",
        "aria-describedby",
        "aria-labelledby",
        "aria-controls",
    ] {
        for element in html.select(&selector(&format!("[{attribute}]"))) {
            for id in element.attr(attribute).unwrap().split_whitespace() {
                assert!(ids.contains(id), "{place}: {attribute} names {id}");
            }
        }
    }
    for link in html.select(&selector("a[href^='#']")) {
        let id = link.attr("href").unwrap().trim_start_matches('#');
        assert!(ids.contains(id), "{place}: a link to #{id}");
    }
}

fn labels(html: &Html, place: &str) {
    let labelled: HashSet<&str> = html
        .select(&selector("label[for]"))
        .filter_map(|label| label.attr("for"))
        .collect();
    for field in html.select(&selector("input:not([type=hidden]), select, textarea")) {
        let is_in_label = field
            .ancestors()
            .filter_map(ElementRef::wrap)
            .any(|above| above.value().name() == "label");
        let is_named = field.attr("aria-label").is_some()
            || field.attr("id").is_some_and(|id| labelled.contains(id));
        assert!(is_in_label || is_named, "{place}: {}", field.html());
    }
    for target in html.select(&selector("button, a[href]")) {
        let is_named = !text_of(target).is_empty() || target.attr("aria-label").is_some();
        assert!(is_named, "{place}: {}", target.html());
    }
}

fn nothing_inline(html: &Html, place: &str) {
    assert!(html.select(&selector("style")).next().is_none(), "{place}");
    for script in html.select(&selector("script")) {
        assert!(
            script.attr("src").is_some(),
            "{place}: a script in the page"
        );
        assert!(text_of(script).is_empty(), "{place}: a script in the page");
    }
    let elements = html
        .root_element()
        .descendants()
        .filter_map(ElementRef::wrap);
    for element in elements {
        for (name, value) in element.value().attrs() {
            assert!(
                name != "style" && !name.starts_with("on"),
                "{place}: {name}={value}"
            );
            let loads = ["src", "href", "action", "formaction"].contains(&name);
            let is_foreign = value.contains("://") || value.starts_with("//");
            assert!(!(loads && is_foreign), "{place}: {value}");
        }
    }
}

/// Whether an answer is a page at all, and no file.
pub(crate) fn is_page(answer: &Answer) -> bool {
    let kind = answer.headers.get(CONTENT_TYPE);
    kind.is_some_and(|kind| kind.to_str().unwrap().starts_with("text/html"))
}
