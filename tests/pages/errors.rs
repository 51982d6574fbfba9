//! What goes wrong is a page too, and what comes from elsewhere changes nothing.

use axum::body::Body;
use axum::http::header::{AUTHORIZATION, CONTENT_TYPE, COOKIE, HOST, ORIGIN};
use axum::http::{Method, Request};

use super::checks;
use crate::access::house::House;
use crate::access::tables::contents;
use crate::harness::{Answer, Browser, scenario, scenario_alone};

const FORM: &str = "application/x-www-form-urlencoded";

/// Sends a request of our own making, and holds its answer to every rule of pages.
async fn send(browser: &mut Browser, request: Request<Body>, status: u16) -> Answer {
    let answer = browser.send(request).await.expect(status);
    checks::page(&answer, "whoever");
    answer
}

fn with(browser: &Browser, method: Method, path: &str, kind: &str, body: &str) -> Request<Body> {
    let request = browser.request(method, path).header(CONTENT_TYPE, kind);
    request.body(Body::from(body.to_owned())).unwrap()
}

#[test]
fn every_refusal_is_a_page() {
    scenario(async |stage| {
        let house = House::furnish(stage).await;
        let stage = &house.stage;
        let mut nobody = stage.nobody();
        let mut member = stage.browser(&stage.cast.member).await;
        let mut steward = stage.browser(&stage.cast.steward).await;
        let (sheets, sizes) = (stage.at("/sheets"), stage.at("/papers/sizes"));
        let board = stage.at("/board");

        let request = with(&nobody, Method::POST, &sheets, FORM, "");
        send(&mut nobody, request, 401).await;
        let request = with(&member, Method::POST, &sizes, FORM, "");
        send(&mut member, request, 403).await;
        for path in ["/nowhere", "/rooms/nowhere/board"] {
            let request = with(&member, Method::GET, path, FORM, "");
            send(&mut member, request, 404).await;
        }
        for method in [Method::DELETE, Method::PUT, Method::PATCH, Method::POST] {
            let request = with(&member, method, &board, FORM, "");
            let answer = send(&mut member, request, 405).await;
            assert!(answer.headers["allow"].to_str().unwrap().contains("GET"));
        }
        let request = with(&steward, Method::POST, &sizes, FORM, "key=%FF&name=%00");
        send(&mut steward, request, 422).await;
        let unreadable = stage.at("/trays/1");
        let request = with(&member, Method::GET, &unreadable, FORM, "");
        send(&mut member, request, 422).await;
        let request = with(&steward, Method::POST, &sizes, "application/json", "{}");
        send(&mut steward, request, 422).await;
        let spent = with(&nobody, Method::GET, "/join/nothing", FORM, "");
        send(&mut nobody, spent, 410).await;
    });
}

#[test]
fn whoever_is_sent_to_log_in_comes_back() {
    scenario(async |stage| {
        let board = stage.at("/trays/x?y=1");
        let mut nobody = stage.nobody();
        let answer = nobody.get(&board).await.expect(303);
        let log_in = nobody.get(answer.location().unwrap()).await.expect(200);
        checks::page(&log_in, "nobody");
        let form = log_in.page().form("Log in").unwrap();
        assert_eq!(form.value("back"), Some(board.as_str()));
    });
}

#[test]
fn a_body_is_small() {
    scenario_alone(async |stage| {
        let house = House::furnish(stage).await;
        let stage = &house.stage;
        let mut steward = stage.browser(&stage.cast.steward).await;
        let before = contents(&mut stage.installation.db().await).await;
        let long = format!("name={}", "a".repeat(65 * 1_024));
        for path in ["/papers/sizes", "/settings", "/members/invitations"] {
            let request = with(&steward, Method::POST, &stage.at(path), FORM, &long);
            send(&mut steward, request, 413).await;
        }
        let after = contents(&mut stage.installation.db().await).await;
        assert_eq!(before, after);
        let short = format!("name={}", "a".repeat(60 * 1_024));
        let request = with(
            &steward,
            Method::POST,
            &stage.at("/papers/sizes"),
            FORM,
            &short,
        );
        send(&mut steward, request, 422).await;
    });
}

/// A request whose headers are all our own.
fn bare(browser: &Browser, method: Method, path: &str, headers: &[(&str, &str)]) -> Request<Body> {
    let ours = browser.request(method, path).body(Body::empty()).unwrap();
    let mut request = Request::builder()
        .method(ours.method())
        .uri(ours.uri())
        .header(CONTENT_TYPE, FORM);
    if let Some(cookie) = ours.headers().get(COOKIE) {
        request = request.header(COOKIE, cookie);
    }
    for (name, value) in headers {
        request = request.header(*name, *value);
    }
    request.body(Body::empty()).unwrap()
}

const OUR_HOST: (&str, &str) = ("host", "127.0.0.1:8480");

#[test]
fn another_host_is_misdirected() {
    scenario(async |stage| {
        let mut member = stage.browser(&stage.cast.member).await;
        let board = stage.at("/board");
        for host in ["elsewhere.example", "127.0.0.1.elsewhere.example", "8480"] {
            let headers = [(HOST.as_str(), host)];
            let request = bare(&member, Method::GET, &board, &headers);
            send(&mut member, request, 421).await;
        }
        let request = bare(&member, Method::GET, &board, &[]);
        send(&mut member, request, 421).await;
        let request = bare(&member, Method::GET, &board, &[OUR_HOST]);
        send(&mut member, request, 200).await;
    });
}

#[test]
fn a_form_comes_from_our_own_pages() {
    scenario_alone(async |stage| {
        let mut member = stage.browser(&stage.cast.member).await;
        let before = contents(&mut stage.installation.db().await).await;
        let ours = (ORIGIN.as_str(), "http://127.0.0.1:8480");
        let theirs = (ORIGIN.as_str(), "http://elsewhere.example");
        let site = |site| ("sec-fetch-site", site);
        let basic = (AUTHORIZATION.as_str(), "Basic bWU6bWU=");
        let bearer = (AUTHORIZATION.as_str(), "Bearer wetside_1_2_3");
        let refused: [&[(&str, &str)]; 9] = [
            &[OUR_HOST],
            &[OUR_HOST, theirs],
            &[OUR_HOST, (ORIGIN.as_str(), "null")],
            &[OUR_HOST, (ORIGIN.as_str(), "http://127.0.0.1")],
            &[OUR_HOST, site("cross-site"), ours],
            &[OUR_HOST, site("same-site"), ours],
            &[OUR_HOST, site("none"), ours],
            // A proxy's password is sent along by the browser itself.
            &[OUR_HOST, site("cross-site"), theirs, basic],
            &[OUR_HOST, site("cross-site"), theirs, bearer],
        ];
        for path in ["/log-out", "/account/sessions/end-all", "/log-in"] {
            for headers in refused {
                let request = bare(&member, Method::POST, path, headers);
                send(&mut member, request, 403).await;
            }
        }
        let after = contents(&mut stage.installation.db().await).await;
        assert_eq!(before, after, "a form from elsewhere changed something");
        member.get(&stage.at("/board")).await.expect(200);

        for headers in [&[OUR_HOST, site("same-origin")], &[OUR_HOST, ours]] {
            let mut member = stage.browser(&stage.cast.member).await;
            let request = bare(&member, Method::POST, "/log-out", headers);
            member.send(request).await.expect(303);
            member.get(&stage.at("/board")).await.expect(303);
        }
    });
}

/// A link from elsewhere is only a link.
#[test]
fn looking_from_elsewhere_is_allowed() {
    scenario(async |stage| {
        let mut member = stage.browser(&stage.cast.member).await;
        let headers = [OUR_HOST, ("sec-fetch-site", "cross-site")];
        let request = bare(&member, Method::GET, &stage.at("/board"), &headers);
        send(&mut member, request, 200).await;
    });
}
