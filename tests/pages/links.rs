//! Where a page leads, and which route that is.

use axum::http::Method;
use scraper::Html;
use wetside::router::Listed;

use super::checks::selector;

/// A reference as a browser would resolve it on a page of ours.
pub(super) fn resolved(page: &str, reference: &str) -> String {
    let page = page.split(['?', '#']).next().unwrap();
    let reference = reference.split('#').next().unwrap();
    match reference {
        "" => page.to_owned(),
        query if query.starts_with('?') => format!("{page}{query}"),
        path if path.starts_with('/') => path.to_owned(),
        other => panic!("{page} links to {other}"),
    }
}

/// The pages that a page links to.
pub(crate) fn of(page: &str, body: &str) -> Vec<String> {
    let html = Html::parse_document(body);
    let (anchors, forms) = (selector("a[href]"), selector("form"));
    let links = html
        .select(&anchors)
        .filter_map(|link| link.attr("href"))
        .filter(|href| !href.starts_with('#'))
        .map(|href| resolved(page, href));
    // A form that looks is a link as well.
    let forms = html
        .select(&forms)
        .filter(|form| !is_sent(form.attr("method")))
        .map(|form| resolved(page, form.attr("action").unwrap_or("")));
    links.chain(forms).collect()
}

/// The files a page is made of.
pub(super) fn assets(body: &str) -> Vec<String> {
    let html = Html::parse_document(body);
    let wanted =
        selector("link[rel=stylesheet][href], link[rel=icon][href], script[src], img[src]");
    html.select(&wanted)
        .filter_map(|it| it.attr("href").or_else(|| it.attr("src")))
        .map(str::to_owned)
        .collect()
}

fn is_sent(method: Option<&str>) -> bool {
    method.is_some_and(|method| method.eq_ignore_ascii_case("post"))
}

/// Where a page's forms are sent to.
pub(super) fn targets(page: &str, body: &str) -> Vec<String> {
    let html = Html::parse_document(body);
    html.select(&selector("form"))
        .filter(|form| is_sent(form.attr("method")))
        .map(|form| resolved(page, form.attr("action").unwrap_or("")))
        .collect()
}

/// The route that answers to a path: of two that fit, the more literal one.
pub(crate) fn route<'a>(routes: &'a [Listed], method: &Method, path: &str) -> Option<&'a Listed> {
    let path = path.split('?').next().unwrap();
    let parts: Vec<&str> = path.split('/').collect();
    let fits = |route: &&Listed| {
        let pattern: Vec<&str> = route.path.split('/').collect();
        pattern.len() == parts.len()
            && pattern
                .iter()
                .zip(&parts)
                .all(|(wanted, part)| wanted.starts_with('{') || wanted == part)
    };
    routes
        .iter()
        .filter(|route| route.method == *method)
        .filter(fits)
        .min_by_key(|route| route.path.matches('{').count())
}
