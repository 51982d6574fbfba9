//! Templates hold markup and words; style and script are files of their own.

use regex::Regex;

use super::source::{Source, below};

/// Templates with a field of their own, and why.
const OWN_FIELDS: &[(&str, usize, &str)] = &[(
    "templates/base.html",
    1,
    "the way back of the display's switch, which has no label to carry",
)];

fn found(sources: &[Source], pattern: &str) -> Vec<String> {
    let pattern = Regex::new(pattern).unwrap();
    let mut found = Vec::new();
    for source in sources {
        for hit in pattern.find_iter(&source.text) {
            found.push(format!("{}: {}", source.path, hit.as_str()));
        }
    }
    found
}

/// Text of people becomes markup by none of these.
const UNESCAPED: &str = r"\|\s*safe\b|\|\s*escape\s*\(|\bautoescape\b|HtmlSafe";

/// The rules for contents refuse all of these.
const INLINE: &str = r#"(?i)\sstyle\s*=|\son[a-z]+\s*=\s*["']|<style\b|javascript:|<script(?:\s+(?:defer|type="module"))*\s*>"#;

#[test]
fn nothing_is_unescaped_and_nothing_inline() {
    let templates = below("templates", ".html");
    assert!(templates.len() > 20);
    let unescaped = found(&templates, UNESCAPED);
    assert!(unescaped.is_empty(), "{unescaped:#?}");
    let inline = found(&templates, INLINE);
    assert!(inline.is_empty(), "{inline:#?}");
    let foreign = found(&templates, r#"(?:src|href|action)="(?:https?:)?//"#);
    assert!(foreign.is_empty(), "{foreign:#?}");
}

#[test]
fn fields_are_written_by_the_macros_only() {
    for source in below("templates", ".html") {
        if source.path == "templates/fields.html" {
            continue;
        }
        let excused = OWN_FIELDS.iter().find(|(path, ..)| *path == source.path);
        let allowed = excused.map_or(0, |(_, count, _)| *count);
        let path = source.path.clone();
        let raw = found(&[source], r"<(?:input|select|textarea)\b");
        assert_eq!(raw.len(), allowed, "{path}: {raw:?}");
    }
}

#[test]
fn the_search_finds_what_it_searches_for() {
    let bad = [
        "{{ name|safe }}",
        "{% autoescape false %}",
        "<p style=\"a\">",
        "<p onclick=\"a()\">",
        "<script>a()</script>",
        "<script defer>a()</script>",
        "<style>",
    ];
    for text in bad {
        let source = || Source {
            path: "sample".to_owned(),
            text: text.to_owned(),
        };
        let hits = found(&[source()], UNESCAPED).len() + found(&[source()], INLINE).len();
        assert!(hits > 0, "{text}");
    }
}
