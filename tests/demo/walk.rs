//! The pages of the demo, of which the longest lists are here.

use std::collections::{BTreeMap, BTreeSet, VecDeque};

use axum::http::Method;
use wetside::identity::{Client, Person, accounts};
use wetside::router;

use super::Made;
use crate::harness::Browser;
use crate::pages::{checks, links};

/// So many pages of one route are looked at: of a list's pages the first ones.
const OF_A_ROUTE: usize = 6;

/// Follows links from the board on; each page is whole and like any other.
pub(super) async fn every_page_of_the_steward(made: &Made) {
    let mut browser = log_in(made).await;
    let pages = router::pages();
    let mut seen: BTreeMap<String, usize> = BTreeMap::new();
    let mut known = BTreeSet::new();
    let mut waiting = VecDeque::from(["/rooms".to_owned()]);
    while let Some(path) = waiting.pop_front() {
        let route = links::route(pages.listed(), &Method::GET, &path);
        let route = route.unwrap_or_else(|| panic!("{path} is no page"));
        let count = seen.entry(route.path.clone()).or_default();
        *count += 1;
        if *count > OF_A_ROUTE {
            continue;
        }
        let answer = browser.get(&path).await;
        let next = match answer.location() {
            Some(onward) => vec![onward.to_owned()],
            None => {
                assert_eq!(answer.status.as_u16(), 200, "{path}");
                if !checks::is_page(&answer) {
                    continue;
                }
                checks::page(&answer, "the demo's steward");
                links::of(&path, &answer.body)
            }
        };
        waiting.extend(next.into_iter().filter(|next| known.insert(next.clone())));
    }
    let looked_at: usize = seen.values().map(|count| (*count).min(OF_A_ROUTE)).sum();
    assert!(
        seen.len() > 70 && looked_at > 200,
        "{} {looked_at}",
        seen.len()
    );
}

/// The first steward's browser.
async fn log_in(made: &Made) -> Browser {
    let app = &made.installation.app;
    let mut db = made.installation.db().await;
    let id = sqlx::query_scalar("select id from person where log_in_name = 'ottilie'");
    let id = id.fetch_one(&mut db).await.unwrap();
    let person = Person {
        id,
        name: "Ottilie Brandvik".to_owned(),
        session: None,
        is_operator: true,
    };
    let client = Client {
        address: std::net::Ipv4Addr::LOCALHOST.into(),
        agent: "tests".to_owned(),
    };
    let entered = accounts::enter(app, &client, None, person.id)
        .await
        .unwrap();
    let mut browser = Browser::new(app);
    browser.keep(app.address().session_cookie(), entered.session.reveal());
    browser
}
