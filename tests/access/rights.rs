//! Every right has a route.

use std::collections::BTreeSet;

use wetside::api::{Route, routes};
use wetside::rights::{Reach, TABLE};
use wetside::router::Listed;

/// The rights of the table that none of these routes takes.
fn without_a_route(routes: &[Listed], wanted: impl Fn(Reach) -> bool) -> Vec<&'static str> {
    let taken: BTreeSet<&str> = routes.iter().filter_map(|route| route.right).collect();
    let wanted = TABLE.iter().filter(|row| wanted(row.reach));
    wanted
        .map(|row| row.name)
        .filter(|name| !taken.contains(name))
        .collect()
}

fn listed() -> Vec<Listed> {
    routes::all().iter().map(Route::listed).collect()
}

#[test]
fn every_right_that_a_token_can_have_is_used_by_the_api() {
    let missing = without_a_route(&listed(), |reach| reach != Reach::Own);
    assert!(missing.is_empty(), "no API route takes {missing:?}");
}

#[test]
fn a_persons_own_affairs_are_no_tokens_business() {
    let own: BTreeSet<&str> = TABLE
        .iter()
        .filter(|row| row.reach == Reach::Own)
        .map(|row| row.name)
        .collect();
    for route in listed() {
        let right = route.right.unwrap_or("");
        assert!(!own.contains(right), "{} takes {right}", route.path);
    }
}

#[test]
fn only_the_document_is_open_to_everyone() {
    let open: Vec<String> = listed()
        .into_iter()
        .filter(|route| route.right.is_none())
        .map(|route| format!("{} {}", route.method, route.path))
        .collect();
    assert_eq!(open, ["GET /api/v1/openapi.json"]);
}

#[test]
fn what_is_read_is_got_and_what_is_written_is_not() {
    for route in routes::all() {
        let Some(right) = route.right else { continue };
        let reads = right.reach == Reach::Read;
        assert_eq!(
            reads,
            route.method.is_safe(),
            "{} {}",
            route.method,
            route.path
        );
        assert!(route.path.starts_with("/rooms/{room}/"), "{}", route.path);
    }
}
