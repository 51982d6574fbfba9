//! From the chooser of rooms to every page that a person may see.

use std::collections::{BTreeMap, BTreeSet, VecDeque};

use axum::http::Method;
use wetside::rights::{Role, TABLE};
use wetside::router::{self, Listed};

use super::{checks, links};
use crate::access::house::{Actor, House};
use crate::harness::{Browser, scenario_alone};

/// Pages that no link leads these people to, and why.
const UNLINKED: &[(&str, &str, &str)] = &[
    ("/", EVERYONE, "the address itself, which leads on"),
    ("/join/{secret}", EVERYONE, "a link that is handed over"),
    ("/reset/{secret}", EVERYONE, "a link that is handed over"),
    ("/offline", EVERYONE, "shown by the phone itself"),
    (
        "/rooms/{room}/board/stream",
        EVERYONE,
        "what the board's own script listens to",
    ),
    (
        "/rooms/{room}/bottles/{bottle}/rinse",
        "trained steward",
        "asked for where household bleach was",
    ),
    (
        "/rooms/{room}/mixes/{mix}",
        "trained steward",
        "where mixing leads to",
    ),
    (
        "/rooms/{room}/mixes/{mix}/extend",
        "steward",
        "offered where the mix would be replaced",
    ),
    (
        "/rooms/{room}/mixes/{mix}/shift",
        "trained steward",
        "offered for the first of two fixing baths only",
    ),
    (
        "/rooms/{room}/mixes/{mix}/undo-discard",
        "steward",
        "offered where a discard may be undone",
    ),
    (
        "/rooms/{room}/incidents/{incident}/erase",
        "steward",
        "offered on an incident that was opened",
    ),
    (
        "/rooms/{room}/workshops/{workshop}/change",
        "steward",
        "offered until it is opened",
    ),
    (
        "/rooms/{room}/workshops/{workshop}/call-off",
        "steward",
        "offered until it is opened",
    ),
    (
        "/rooms/{room}/workshops/{workshop}/open",
        "member trained steward",
        "offered on its day, until it is opened",
    ),
    (
        "/rooms/{room}/workshops/{workshop}/guests",
        "member trained",
        "offered to whoever leads it",
    ),
    (
        "/rooms/{room}/workshops/{workshop}/end",
        "member trained",
        "offered to whoever leads it",
    ),
    (
        "/rooms/{room}/workshops/{workshop}/take-over",
        "member trained steward",
        "offered to whoever is in the room",
    ),
    (
        "/rooms/{room}/bench-sheet/entered/{seq}",
        "trained steward",
        "where entering a sheet leads to",
    ),
    (
        "/rooms/{room}/sheets/{seq}/undo",
        "trained",
        "offered for one's own notes only",
    ),
    (
        "/rooms/{room}/leave",
        EVERYONE,
        "offered to those who are there",
    ),
    (
        "/safelight",
        EVERYONE,
        "shown once, on the way to Safelight",
    ),
    (
        "/rooms/{room}/trays/{tray}/rinse",
        "trained steward",
        "asked for where household bleach was",
    ),
    (
        "/screen",
        EVERYONE,
        "opened on a screen that is to be paired",
    ),
    ("/screen/arrive", EVERYONE, "a door's, not a person's"),
    ("/screen/done", EVERYONE, "a door's, not a person's"),
    ("/screen/flag", EVERYONE, "a door's, not a person's"),
    ("/screen/flag/{tray}", EVERYONE, "a door's, not a person's"),
    ("/screen/leave", EVERYONE, "a door's, not a person's"),
    ("/screen/note", EVERYONE, "a door's, not a person's"),
    ("/set-up/{secret}", EVERYONE, "a link that is handed over"),
];

const EVERYONE: &str = "member trained steward treasurer";

/// What a walk has seen.
#[derive(Default)]
struct Walk {
    visited: BTreeSet<String>,
    patterns: BTreeSet<String>,
    assets: BTreeSet<String>,
}

impl Walk {
    /// Follows every link from these pages on.
    async fn follow(&mut self, who: &str, browser: &mut Browser, from: &[String]) {
        let pages = router::pages();
        let mut waiting: VecDeque<(String, String)> = from
            .iter()
            .map(|path| ("the address bar".to_owned(), path.clone()))
            .collect();
        while let Some((linked_from, path)) = waiting.pop_front() {
            if !self.visited.insert(path.clone()) {
                continue;
            }
            let place = format!("{who}, from {linked_from}");
            let route = links::route(pages.listed(), &Method::GET, &path);
            let route = route.unwrap_or_else(|| panic!("{place}: {path} is no page"));
            self.patterns.insert(route.path.clone());
            let answer = browser.get(&path).await;
            if answer.status.is_redirection() {
                let onward = answer.location().unwrap().to_owned();
                waiting.push_back((path, onward));
                continue;
            }
            assert_eq!(answer.status.as_u16(), 200, "{place}: {path}");
            if !checks::is_page(&answer) {
                checks::headers(&answer, &place);
                continue;
            }
            checks::page(&answer, &place);
            self.assets.extend(links::assets(&answer.body));
            targets_exist(pages.listed(), &place, &path, &answer.body);
            for next in links::of(&path, &answer.body) {
                waiting.push_back((path.clone(), next));
            }
        }
        for asset in std::mem::take(&mut self.assets) {
            let answer = browser.get(&asset).await.expect(200);
            let kept = &answer.headers["cache-control"];
            assert_eq!(kept, "public, max-age=31536000, immutable", "{asset}");
            assert_eq!(answer.headers["x-content-type-options"], "nosniff");
        }
    }
}

/// Every form goes to a route that takes forms.
fn targets_exist(routes: &[Listed], place: &str, path: &str, body: &str) {
    for target in links::targets(path, body) {
        let found = links::route(routes, &Method::POST, &target);
        assert!(found.is_some(), "{place}: {path} has a form to {target}");
    }
}

/// The patterns a role may look at.
fn may_see(role: Role) -> BTreeSet<String> {
    let may = |right: &str| {
        let row = TABLE.iter().find(|row| row.name == right).unwrap();
        row.roles.contains(&role)
    };
    router::pages()
        .listed()
        .iter()
        .filter(|route| route.method == Method::GET && route.right.is_none_or(may))
        .map(|route| route.path.clone())
        .collect()
}

#[test]
fn every_page_by_every_role() {
    scenario_alone(async |stage| {
        let house = House::furnish(stage).await;
        let mut unlinked: BTreeMap<String, Vec<&str>> = BTreeMap::new();
        for actor in &house.actors {
            let Some(role) = Role::parse(actor.0) else {
                continue;
            };
            let mut browser = house.browser(actor).await;
            let mut walk = Walk::default();
            walk.follow(actor.0, &mut browser, &["/rooms".to_owned()])
                .await;
            for pattern in may_see(role).difference(&walk.patterns.clone()) {
                unlinked.entry(pattern.clone()).or_default().push(actor.0);
                if !pattern.contains("{secret}") {
                    let path = house.page_path(pattern);
                    walk.follow(actor.0, &mut browser, &[path]).await;
                }
            }
        }
        let excused = UNLINKED
            .iter()
            .map(|(pattern, who, _)| ((*pattern).to_owned(), who.split(' ').collect()));
        assert_eq!(unlinked, excused.collect());
    });
}

/// Who belongs to no room of ours, and who does not belong any more, has pages too.
#[test]
fn every_page_outside_the_room() {
    scenario_alone(async |stage| {
        let house = House::furnish(stage).await;
        let suspended: Actor = ("suspended", Some(house.suspended.clone()));
        let mut browser = house.browser(&suspended).await;
        let from = ["/rooms".to_owned(), house.stage.at("/emergency")];
        Walk::default()
            .follow("suspended", &mut browser, &from)
            .await;
        let mut nobody = house.stage.nobody();
        let open = ["/", "/log-in", "/emergency", "/safelight", "/screen"].map(str::to_owned);
        let mut walk = Walk::default();
        walk.follow("nobody", &mut nobody, &open).await;
        walk.follow("nobody", &mut nobody, &[house.stage.at("/emergency")])
            .await;
        let seen = walk.patterns.iter().map(String::as_str);
        let open = [
            "/",
            "/emergency",
            "/log-in",
            "/rooms",
            "/rooms/{room}/emergency",
            "/safelight",
            "/screen",
        ];
        assert_eq!(seen.collect::<Vec<_>>(), open);
    });
}

/// What a screen leads to: its own pages and Emergency, nothing else.
#[test]
fn every_page_of_a_screen() {
    scenario_alone(async |stage| {
        let house = House::furnish(stage).await;
        let always = ["/rooms/{room}/emergency", "/screen"];
        let at_a_door = [
            "/rooms/{room}/emergency",
            "/screen",
            "/screen/arrive",
            "/screen/done",
            "/screen/flag",
            "/screen/flag/{tray}",
            "/screen/leave",
            "/screen/note",
        ];
        for (who, pages) in [("board-screen", &always[..]), ("door-screen", &at_a_door)] {
            let mut browser = house.browser(&(who, None)).await;
            let mut walk = Walk::default();
            let from = match who {
                "door-screen" => vec!["/screen".to_owned(), "/screen/done?what=arrived".to_owned()],
                _ => vec!["/screen".to_owned()],
            };
            walk.follow(who, &mut browser, &from).await;
            let seen = walk.patterns.iter().map(String::as_str);
            assert_eq!(seen.collect::<Vec<_>>(), pages, "{who}");
        }
    });
}

/// A form sent empty comes back as a page like any other.
#[test]
fn every_form_that_wants_input() {
    scenario_alone(async |stage| {
        let house = House::furnish(stage).await;
        let steward: Actor = ("steward", Some(house.stage.cast.steward.clone()));
        let mut seen = 0;
        for route in router::pages().listed() {
            if route.method != Method::POST {
                continue;
            }
            let mut browser = house.browser(&steward).await;
            let answer = browser.post(&house.page_path(&route.path), &[]).await;
            match answer.status.as_u16() {
                303 => checks::headers(&answer, &route.path),
                _ => checks::page(&answer, "steward"),
            }
            seen += usize::from(answer.status.as_u16() == 422);
        }
        assert!(seen > 25, "{seen}");
    });
}
