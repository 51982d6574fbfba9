//! Every route, asked by everyone. What a room's right decides is checked against
//! the table of rights; the whole is compared with a snapshot that was read line
//! by line.

use std::collections::BTreeMap;

use axum::body::Body;
use axum::http::header::{CONTENT_DISPOSITION, CONTENT_TYPE};
use axum::http::{Method, StatusCode};
use time::Duration;
use wetside::api::{Route, routes};
use wetside::rights::{Reach, Role, Row, TABLE};
use wetside::router::{self, Listed};

use super::house::{Actor, House};
use super::tables::{contents, said};
use crate::harness::{Answer, Browser, scenario_alone};

/// What an answer amounts to.
fn class(answer: &Answer) -> &'static str {
    let is_file = answer.headers.contains_key(CONTENT_DISPOSITION);
    match answer.status {
        StatusCode::OK if is_file => "file",
        StatusCode::OK => "seen",
        StatusCode::CREATED => "made",
        StatusCode::SEE_OTHER if leads_to_log_in(answer) => "to log-in",
        StatusCode::SEE_OTHER if answer.location() == Some("/screen") => "to screen",
        StatusCode::SEE_OTHER => "done",
        StatusCode::UNAUTHORIZED => "not logged in",
        StatusCode::FORBIDDEN => "not allowed",
        StatusCode::NOT_FOUND => "not there",
        StatusCode::CONFLICT => "refused",
        StatusCode::GONE => "spent",
        StatusCode::UNPROCESSABLE_ENTITY => "wants input",
        other => panic!("{} {}: {other}", answer.method, answer.path),
    }
}

fn leads_to_log_in(answer: &Answer) -> bool {
    answer
        .location()
        .is_some_and(|to| to.starts_with("/log-in"))
}

/// The role by which an actor is in the room, if they are.
fn role_of(actor: &str) -> Option<Role> {
    let actor = match actor {
        "member-here-steward-there" => "member",
        other => other,
    };
    Role::parse(actor)
}

fn row(name: &str) -> &'static Row {
    TABLE.iter().find(|row| row.name == name).unwrap()
}

/// What the table of rights makes of an actor at a route of the room.
fn check(route: &Listed, actor: &str, class: &str) {
    let Some(right) = route.right else { return };
    let place = format!("{actor}: {} {}: {class}", route.method, route.path);
    match role_of(actor) {
        // A screen is nobody to every room's pages.
        None if ["nobody", "board-screen", "door-screen"].contains(&actor) => {
            assert!(["to log-in", "not logged in"].contains(&class), "{place}");
        }
        None => assert_eq!(class, "not there", "{place}"),
        Some(role) => {
            let may = row(right).roles.contains(&role);
            assert_eq!(class == "not allowed", !may, "{place}");
            assert!(!["to log-in", "not logged in"].contains(&class), "{place}");
        }
    }
}

/// One route as the snapshot has it: who gets what.
fn line(route: &Listed, found: &[(&str, &'static str)]) -> String {
    let mut by_class: BTreeMap<&str, Vec<&str>> = BTreeMap::new();
    for (actor, class) in found {
        by_class.entry(class).or_default().push(actor);
    }
    let mut text = format!("{}\n", said(&route.method, &route.path, route.right));
    for (class, actors) in by_class {
        text.push_str(&format!("    {class}: {}\n", actors.join(" ")));
    }
    text
}

/// Asks every page of a method. What is asked to look is asked by one browser of
/// each; what acts may log its browser out, so it gets one of its own.
async fn walk_pages(house: &House, method: &Method) -> String {
    let mut browsers = Vec::new();
    for actor in &house.actors {
        browsers.push(house.browser(actor).await);
    }
    // So that a session's last moment is written where it can be.
    house.stage.pass(Duration::minutes(2));
    let before = contents(&mut house.stage.installation.db().await).await;
    let mut text = String::new();
    for route in router::pages().listed() {
        if route.method != *method {
            continue;
        }
        let path = house.page_path(&route.path);
        let mut found = Vec::new();
        for (actor, browser) in house.actors.iter().zip(&mut browsers) {
            let answer = match method.is_safe() {
                true => browser.get(&path).await,
                false => house.browser(actor).await.post(&path, &[]).await,
            };
            let class = class(&answer);
            check(route, actor.0, class);
            found.push((actor.0, class));
        }
        text.push_str(&line(route, &found));
    }
    let after = contents(&mut house.stage.installation.db().await).await;
    if method.is_safe() {
        for (before, after) in before.iter().zip(&after) {
            assert_eq!(before, after, "looking changed the table {}", before.0);
        }
    } else {
        assert!(before != after, "the comparison sees no change at all");
    }
    text
}

#[test]
fn pages_by_everyone() {
    scenario_alone(async |stage| {
        let house = House::furnish(stage).await;
        let looked = walk_pages(&house, &Method::GET).await;
        insta::assert_snapshot!("pages_looked_at", looked);
        let sent = walk_pages(&house, &Method::POST).await;
        insta::assert_snapshot!("pages_sent", sent);
    });
}

/// Everyone's tokens, and one of each scope of the steward's.
async fn bearers(house: &House) -> Vec<(&'static str, Option<String>)> {
    let all = ["read", "bench", "keep"];
    let (ours, theirs) = (house.stage.slug.clone(), house.stage.other_slug.clone());
    let mut bearers = Vec::new();
    for (name, person) in &house.actors {
        let Some(person) = person else {
            bearers.push((*name, None));
            continue;
        };
        let is_from_elsewhere = ["stranger", "steward-of-another-room"].contains(name);
        let slug = if is_from_elsewhere { &theirs } else { &ours };
        bearers.push((*name, Some(house.token(person, slug, &all).await)));
        if *name == "member-here-steward-there" {
            let there = house.token(person, &theirs, &all).await;
            bearers.push(("steward-there-member-here", Some(there)));
        }
    }
    let steward = house.stage.cast.steward.clone();
    for (name, scope) in [
        ("steward-to-read", "read"),
        ("steward-at-bench", "bench"),
        ("steward-to-keep", "keep"),
    ] {
        bearers.push((name, Some(house.token(&steward, &ours, &[scope]).await)));
    }
    bearers
}

/// Asks a route of the API, an empty object and no key where something is sent.
async fn ask(browser: &mut Browser, route: &Listed, path: &str, token: Option<&String>) -> Answer {
    let mut request = browser.request(route.method.clone(), path);
    if let Some(token) = token {
        request = request.header("authorization", format!("Bearer {token}"));
    }
    let body = match route.method.is_safe() {
        true => Body::empty(),
        false => {
            request = request.header(CONTENT_TYPE, "application/json");
            Body::from("{}")
        }
    };
    browser.send(request.body(body).unwrap()).await
}

/// What the table of rights makes of a bearer at a route of the API.
fn check_bearer(route: &Listed, bearer: &str, class: &str) {
    let Some(right) = route.right else { return };
    let place = format!("{bearer}: {} {}: {class}", route.method, route.path);
    let scope = match bearer {
        "steward-to-read" => "read",
        "steward-at-bench" => "bench",
        "steward-to-keep" => "keep",
        // A token of a membership that is not in force is no token.
        "suspended-steward" => return assert_eq!(class, "not logged in", "{place}"),
        "steward-there-member-here" => return assert_eq!(class, "not there", "{place}"),
        other => return check(route, other, class),
    };
    let has = row(right).reach.scope() == Some(scope);
    assert_eq!(class == "not allowed", !has, "{place}");
}

#[test]
fn api_by_every_token() {
    scenario_alone(async |stage| {
        let house = House::furnish(stage).await;
        let bearers = bearers(&house).await;
        let mut browser = house.stage.nobody();
        house.stage.pass(Duration::minutes(2));
        let mut before = contents(&mut house.stage.installation.db().await).await;
        let mut routes: Vec<Listed> = routes::all().iter().map(Route::listed).collect();
        // Looking first: it changes nothing.
        routes.sort_by_key(|route| !route.method.is_safe());
        let mut text = String::new();
        for route in routes {
            if !route.method.is_safe() && !before.is_empty() {
                let after = contents(&mut house.stage.installation.db().await).await;
                assert_eq!(before, after);
                before.clear();
            }
            let path = house.api_path(&route.path);
            let mut found = Vec::new();
            for (name, token) in &bearers {
                let answer = ask(&mut browser, &route, &path, token.as_ref()).await;
                let class = class(&answer);
                check_bearer(&route, name, class);
                found.push((*name, class));
            }
            text.push_str(&line(&route, &found));
        }
        insta::assert_snapshot!("api", text);
    });
}

/// A session is no token: the API takes no cookie, and a page no token.
#[test]
fn neither_skin_takes_the_others_proof() {
    scenario_alone(async |stage| {
        let house = House::furnish(stage).await;
        let steward: Actor = ("steward", Some(house.stage.cast.steward.clone()));
        let mut browser = house.browser(&steward).await;
        let board = format!("/api/v1/rooms/{}/board", house.stage.slug);
        browser.get(&board).await.expect(401);
        let person = house.stage.cast.steward.clone();
        let token = house.token(&person, &house.stage.slug, &["read"]).await;
        let mut nobody = house.stage.nobody();
        let board = house.stage.at("/board");
        let request = nobody
            .request(Method::GET, &board)
            .header("authorization", format!("Bearer {token}"));
        let answer = nobody.send(request.body(Body::empty()).unwrap()).await;
        assert!(leads_to_log_in(&answer), "{}", answer.status);
    });
}

/// What is somebody's own is nobody else's: a session and a token are ended by
/// whose they are, and are not there for the steward.
#[test]
fn what_is_ones_own_is_nobody_elses() {
    scenario_alone(async |stage| {
        let house = House::furnish(stage).await;
        let stage = &house.stage;
        let (member, steward) = (stage.cast.member.clone(), stage.cast.steward.clone());
        house.token(&member, &stage.slug, &["read"]).await;
        let mut db = stage.installation.db().await;
        let token: uuid::Uuid = sqlx::query_scalar("select id from token where person_id = $1")
            .bind(member.id)
            .fetch_one(&mut db)
            .await
            .unwrap();
        let revoke = stage.at(&format!("/tokens/{token}/revoke"));
        stage
            .browser(&steward)
            .await
            .post(&revoke, &[])
            .await
            .expect(404);
        stage
            .browser(&member)
            .await
            .post(&revoke, &[])
            .await
            .expect(303);
        let mut theirs = stage.browser(&member).await;
        let session: uuid::Uuid = sqlx::query_scalar(
            "select id from session where person_id = $1 order by created_at desc, id desc limit 1",
        )
        .bind(member.id)
        .fetch_one(&mut db)
        .await
        .unwrap();
        let end = format!("/account/sessions/{session}/end");
        stage.browser(&steward).await.post(&end, &[]).await;
        theirs.get(&stage.at("/board")).await.expect(200);
        stage
            .browser(&member)
            .await
            .post(&end, &[])
            .await
            .expect(303);
        stage.pass(Duration::seconds(2));
        let left: i64 = sqlx::query_scalar("select count(*) from session where id = $1")
            .bind(session)
            .fetch_one(&mut db)
            .await
            .unwrap();
        assert_eq!(left, 0);
    });
}

#[test]
fn every_right_has_a_page_and_every_one_for_tokens_a_route() {
    let pages = router::pages();
    let api: Vec<Listed> = routes::all().iter().map(Route::listed).collect();
    let takes = |routes: &[Listed], row: &Row| routes.iter().any(|it| it.right == Some(row.name));
    for row in TABLE {
        assert!(takes(pages.listed(), row), "no page takes {}", row.name);
        let wanted = row.reach != Reach::Own;
        assert_eq!(takes(&api, row), wanted, "the API and {}", row.name);
    }
    for route in pages.listed() {
        let is_of_room = route.path.starts_with("/rooms/{room}/");
        let is_open = route.path == "/rooms/{room}/emergency";
        assert_eq!(
            route.right.is_some(),
            is_of_room && !is_open,
            "{}",
            route.path
        );
    }
}
