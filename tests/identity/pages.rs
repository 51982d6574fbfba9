//! The pages of identity, members and rooms, as a browser asks for them.

use std::collections::BTreeMap;

use axum::body::Body;
use axum::http::header::{
    CONTENT_LENGTH, CONTENT_TYPE, COOKIE, HOST, LOCATION, REFERRER_POLICY, SET_COOKIE,
};
use axum::http::{HeaderMap, Method, Request, StatusCode};
use http_body_util::BodyExt;
use percent_encoding::{NON_ALPHANUMERIC, utf8_percent_encode};
use scraper::{Html, Selector};
use tower::ServiceExt;
use wetside::app::App;
use wetside::identity::links;
use wetside::members;
use wetside::rights::{LookAtBoard, Role};
use wetside::router;

use super::helpers::{Home, PASSWORD, Somebody, empty_app, permit, run, secret_of, unique};

struct Answer {
    status: StatusCode,
    headers: HeaderMap,
    body: String,
}

impl Answer {
    fn to(&self) -> &str {
        self.headers[LOCATION].to_str().unwrap()
    }

    fn all(&self, selector: &str) -> Vec<String> {
        let html = Html::parse_document(&self.body);
        let selector = Selector::parse(selector).unwrap();
        html.select(&selector)
            .map(|found| found.text().collect::<String>().trim().to_owned())
            .collect()
    }

    fn heading(&self) -> String {
        self.all("h1").join("|")
    }

    /// The fields of the form that goes to this path, as they were served.
    fn form(&self, action: &str) -> BTreeMap<String, String> {
        let html = Html::parse_document(&self.body);
        let forms = Selector::parse(&format!("form[action=\"{action}\"]")).unwrap();
        let inputs = Selector::parse("input[name]").unwrap();
        let form = html.select(&forms).next().unwrap();
        form.select(&inputs)
            .filter(|input| {
                let is_radio = input.attr("type") == Some("radio");
                !is_radio || input.attr("checked").is_some()
            })
            .map(|input| {
                let value = input.attr("value").unwrap_or_default();
                (input.attr("name").unwrap().to_owned(), value.to_owned())
            })
            .collect()
    }

    /// What the browser keeps of this answer.
    fn cookies(&self) -> BTreeMap<String, String> {
        let set = self.headers.get_all(SET_COOKIE).iter();
        set.map(|cookie| {
            let pair = cookie.to_str().unwrap().split(';').next().unwrap();
            let (name, value) = pair.split_once('=').unwrap();
            (name.to_owned(), value.to_owned())
        })
        .collect()
    }
}

async fn send(app: &App, request: Request<Body>) -> Answer {
    let service = router::service(app).unwrap();
    let (parts, body) = service.oneshot(request).await.unwrap().into_parts();
    let body = body.collect().await.unwrap().to_bytes();
    Answer {
        status: parts.status,
        headers: parts.headers,
        body: String::from_utf8(body.to_vec()).unwrap(),
    }
}

fn asked(method: Method, path: &str, cookie: &str) -> axum::http::request::Builder {
    Request::builder()
        .method(method)
        .uri(path)
        .header(HOST, "127.0.0.1:4711")
        .header("sec-fetch-site", "same-origin")
        .header(COOKIE, cookie)
}

async fn get(app: &App, path: &str, cookie: &str) -> Answer {
    let request = asked(Method::GET, path, cookie).body(Body::empty());
    send(app, request.unwrap()).await
}

async fn post(app: &App, path: &str, cookie: &str, fields: &[(&str, &str)]) -> Answer {
    let encode = |text: &str| utf8_percent_encode(text, NON_ALPHANUMERIC).to_string();
    let body: Vec<String> = fields
        .iter()
        .map(|(name, value)| format!("{}={}", encode(name), encode(value)))
        .collect();
    let request = asked(Method::POST, path, cookie)
        .header(CONTENT_TYPE, "application/x-www-form-urlencoded")
        .body(Body::from(body.join("&")));
    send(app, request.unwrap()).await
}

fn cookie_of(somebody: &Somebody) -> String {
    format!("__Host-session={}", somebody.session.reveal())
}

async fn log_in(app: &App, name: &str, password: &str) -> Answer {
    let fields = [("log_in_name", name), ("password", password), ("back", "")];
    post(app, "/log-in", "", &fields).await
}

/// Everything an attacker sees, with the name they typed, and its length, taken out.
fn seen(mut answer: Answer, typed: &str) -> (StatusCode, Vec<(String, String)>, String) {
    let length = answer.body.len() - typed.len();
    assert_eq!(
        answer.headers[CONTENT_LENGTH],
        answer.body.len().to_string()
    );
    answer.headers.insert(CONTENT_LENGTH, length.into());
    let headers = answer.headers.iter();
    let headers = headers
        .filter(|(name, _)| name.as_str() != "x-request-id")
        .map(|(name, value)| (name.to_string(), value.to_str().unwrap().to_owned()));
    let body = answer.body.replace(typed, "TYPED");
    (answer.status, headers.collect(), body)
}

#[test]
fn every_failed_log_in_is_answered_byte_for_byte_alike() {
    run(async {
        let home = Home::new().await;
        let app = &home.app;
        let shut_out = home.member("tomas", Role::Member).await;
        members::set_suspended(app, shut_out.id, true)
            .await
            .unwrap();
        let (steward, unknown) = (home.steward.log_in_name.clone(), unique("nobody"));
        let mut answers = vec![
            seen(log_in(app, &steward, "wrong").await, &steward),
            seen(log_in(app, &unknown, "wrong").await, &unknown),
            seen(log_in(app, &unknown, PASSWORD).await, &unknown),
            seen(
                log_in(app, &shut_out.log_in_name, PASSWORD).await,
                &shut_out.log_in_name,
            ),
        ];
        for name in [&steward, &unknown] {
            for _ in 0..12 {
                log_in(app, name, "wrong").await;
            }
            answers.push(seen(log_in(app, name, PASSWORD).await, name));
        }
        assert_eq!(answers[0].0, StatusCode::UNPROCESSABLE_ENTITY);
        for other in &answers[1..] {
            assert_eq!(other, &answers[0]);
        }
    });
}

#[test]
fn logging_in_and_out_by_the_forms() {
    run(async {
        let home = Home::new().await;
        let (app, name) = (&home.app, &home.steward.log_in_name);
        let stranger = get(app, "/rooms", "").await;
        assert_eq!(stranger.status, StatusCode::SEE_OTHER);
        assert!(stranger.to().starts_with("/log-in?next="));
        let form = get(app, stranger.to(), "").await;
        assert_eq!(form.form("/log-in")["back"], "/rooms");
        let into = log_in(app, name, PASSWORD).await;
        assert_eq!((into.status, into.to()), (StatusCode::SEE_OTHER, "/rooms"));
        for cookie in into.headers.get_all(SET_COOKIE) {
            let cookie = cookie.to_str().unwrap();
            for part in ["; Path=/;", "; Secure", "; HttpOnly", "; SameSite=Lax"] {
                assert!(cookie.contains(part), "{cookie}");
            }
        }
        let kept = into.cookies();
        assert!(kept["__Host-device"].len() >= 43);
        let cookie = format!("__Host-session={}", kept["__Host-session"]);
        let rooms = get(app, "/rooms", &cookie).await;
        assert_eq!(rooms.all(".door-name"), std::slice::from_ref(&home.slug));
        assert_eq!(get(app, "/log-out", &cookie).await.status.as_u16() / 100, 4);
        let out = post(app, "/log-out", &cookie, &[]).await;
        assert_eq!(out.headers["clear-site-data"], "\"cache\"");
        assert_eq!(out.cookies()["__Host-session"], "");
        let gone = get(app, "/rooms", &cookie).await;
        assert_eq!(gone.status, StatusCode::SEE_OTHER);
    });
}

#[test]
fn a_log_in_leads_only_to_pages_of_ours_and_ends_the_one_before() {
    run(async {
        let home = Home::new().await;
        let (app, name) = (&home.app, home.steward.log_in_name.as_str());
        let before = cookie_of(&home.steward);
        for (back, wanted) in [
            ("/account", "/account"),
            ("//elsewhere.example/", "/rooms"),
            ("https://elsewhere.example/", "/rooms"),
            ("/\\elsewhere.example", "/rooms"),
        ] {
            let fields = [
                ("log_in_name", name),
                ("password", PASSWORD),
                ("back", back),
            ];
            let into = post(app, "/log-in", &before, &fields).await;
            assert_eq!(into.to(), wanted);
        }
        let gone = get(app, "/account", &before).await;
        assert_eq!(gone.status, StatusCode::SEE_OTHER);
    });
}

#[test]
fn an_invitation_is_looked_at_and_then_accepted() {
    run(async {
        let home = Home::new().await;
        let app = &home.app;
        let secret = home.invitation(Role::Trained).await;
        let path = format!("/join/{}", secret.reveal());
        for _ in 0..2 {
            let page = get(app, &path, "").await;
            assert_eq!(page.status, StatusCode::OK);
            assert_eq!(page.headers[REFERRER_POLICY], "no-referrer");
        }
        let name = unique("rita");
        let easy = [
            ("name", "Rita"),
            ("log_in_name", &name),
            ("password", "password12"),
        ];
        let refused = post(app, &path, "", &easy).await;
        assert_eq!(refused.status, StatusCode::UNPROCESSABLE_ENTITY);
        assert_eq!(refused.form(&path)["name"], "Rita");
        assert!(!refused.body.contains("password12"));
        let fields = [
            ("name", "Rita"),
            ("log_in_name", &name),
            ("password", PASSWORD),
        ];
        let into = post(app, &path, "", &fields).await;
        assert_eq!(into.to(), format!("/rooms/{}/board", home.slug));
        let session =
            wetside::identity::secret::Secret::received(&into.cookies()["__Host-session"]);
        let permit = permit::<LookAtBoard>(app, &session, &home.slug)
            .await
            .unwrap();
        assert_eq!(permit.role(), Role::Trained);
        for answer in [
            get(app, &path, "").await,
            post(app, &path, "", &fields).await,
        ] {
            assert_eq!(answer.status, StatusCode::GONE);
        }
        // Somebody who has an account joins with it.
        let other = Home::of(app.clone()).await;
        let secret = home.invitation(Role::Member).await;
        let path = format!("/join/{}", secret.reveal());
        let into = post(app, &path, &cookie_of(&other.steward), &[]).await;
        assert_eq!(into.to(), format!("/rooms/{}/board", home.slug));
        home.by::<LookAtBoard>(&other.steward).await.unwrap();
    });
}

#[test]
fn a_steward_acts_on_a_member_by_the_forms() {
    run(async {
        let home = Home::new().await;
        let app = &home.app;
        let (steward, tomas) = (
            cookie_of(&home.steward),
            home.member("tomas", Role::Member).await,
        );
        let page = format!("/rooms/{}/members/{}", home.slug, tomas.id);
        let list = get(app, &format!("/rooms/{}/members", home.slug), &steward).await;
        assert_eq!(list.all("tbody th"), ["ines", "tomas"]);
        let act = async |what: &str, more: &[(&str, &str)]| {
            let served = get(app, &page, &steward).await;
            let form = served.form(&format!("{page}/{what}"));
            let mut fields = vec![("key", form["key"].as_str())];
            fields.extend_from_slice(more);
            post(app, &format!("{page}/{what}"), &steward, &fields).await
        };
        assert_eq!(act("role", &[("role", "trained")]).await.to(), page);
        let unchanged = act("role", &[("role", "trained")]).await;
        assert_eq!(unchanged.status, StatusCode::UNPROCESSABLE_ENTITY);
        act("suspend", &[]).await;
        assert!(home.by::<LookAtBoard>(&tomas).await.is_err());
        act("restore", &[]).await;
        let link = act("reset-link", &[]).await;
        let address = link.all(".secret code").pop().unwrap();
        assert!(
            address.starts_with("http://127.0.0.1:4711/reset/"),
            "{address}"
        );
        let reset = address.strip_prefix("http://127.0.0.1:4711").unwrap();
        assert_eq!(get(app, reset, "").await.status, StatusCode::OK);
        let taken = post(app, reset, "", &[("password", "seven quiet enlargers")]).await;
        assert_eq!(taken.to(), "/log-in");
        home.advance(time::Duration::minutes(1));
        let into = log_in(app, &tomas.log_in_name, "seven quiet enlargers").await;
        assert_eq!(into.to(), "/account", "what was done is seen first");
        let cookie = format!("__Host-session={}", into.cookies()["__Host-session"]);
        let account = get(app, "/account", &cookie).await;
        assert_eq!(account.all(".told li").len(), 1);
        let until = account.form("/account/seen")["until"].clone();
        post(app, "/account/seen", &cookie, &[("until", &until)]).await;
        assert!(
            get(app, "/account", &cookie)
                .await
                .all(".told li")
                .is_empty()
        );
        // Ending asks first.
        let question = get(app, &format!("{page}/end"), &steward).await;
        let key = question.form(&format!("{page}/end"))["key"].clone();
        let ended = post(app, &format!("{page}/end"), &steward, &[("key", &key)]).await;
        assert_eq!(ended.to(), page);
        assert_eq!(get(app, &page, &cookie).await.status, StatusCode::NOT_FOUND);
    });
}

#[test]
fn an_invitation_form_sent_twice_shows_its_link_once() {
    run(async {
        let home = Home::new().await;
        let (app, steward) = (&home.app, cookie_of(&home.steward));
        let list = format!("/rooms/{}/members", home.slug);
        let form = format!("{list}/invitations");
        let key = get(app, &list, &steward).await.form(&form)["key"].clone();
        let fields = [("key", key.as_str()), ("role", "member")];
        let first = post(app, &form, &steward, &fields).await;
        assert_eq!(first.all(".secret code").len(), 1);
        let again = post(app, &form, &steward, &fields).await;
        assert_eq!(again.status, StatusCode::OK);
        assert!(again.all(".secret code").is_empty());
        assert!(again.body.contains("shown once already"));
    });
}

#[test]
fn the_settings_form_keeps_what_is_right_and_says_what_is_not() {
    run(async {
        let home = Home::new().await;
        let (app, steward) = (&home.app, cookie_of(&home.steward));
        let path = format!("/rooms/{}/settings", home.slug);
        let served = get(app, &path, &steward).await;
        let fields = |key: &'static str, value: &'static str| {
            let mut form = served.form(&path);
            form.insert("zone".to_owned(), "Europe/Berlin".to_owned());
            form.insert(key.to_owned(), value.to_owned());
            // A map holds one of the seven; the others are closed days.
            form.insert("opens".to_owned(), "18:00".to_owned());
            form.insert("closes".to_owned(), "22:00".to_owned());
            form
        };
        let send = async |form: BTreeMap<String, String>| {
            let fields: Vec<(&str, &str)> = form
                .iter()
                .map(|(name, value)| (name.as_str(), value.as_str()))
                .collect();
            post(app, &path, &steward, &fields).await
        };
        let refused = send(fields("people_limit", "none")).await;
        assert_eq!(refused.status, StatusCode::UNPROCESSABLE_ENTITY);
        assert_eq!(refused.form(&path)["people_limit"], "none");
        assert_eq!(refused.all("p.error").len(), 1);
        let kept = send(fields("name", "The quiet room")).await;
        assert_eq!(kept.status, StatusCode::SEE_OTHER);
        let after = get(app, &path, &steward).await;
        assert_eq!(after.form(&path)["name"], "The quiet room");
        assert_eq!(after.all("option[selected]"), ["Europe/Berlin"]);
        assert_eq!(
            get(app, "/rooms", &steward).await.all(".door-name"),
            ["The quiet room"]
        );
        let member = home.member("tomas", Role::Member).await;
        let foreign = post(app, &path, &cookie_of(&member), &[]).await;
        assert_eq!(foreign.status, StatusCode::FORBIDDEN);
    });
}

#[test]
fn a_token_is_made_shown_and_revoked_by_the_forms() {
    run(async {
        let home = Home::new().await;
        let (app, steward) = (&home.app, cookie_of(&home.steward));
        let path = format!("/rooms/{}/tokens", home.slug);
        let fields = [
            ("name", "a scale"),
            ("scopes", "read"),
            ("scopes", "keep"),
            ("days", "7"),
        ];
        let made = post(app, &path, &steward, &fields).await;
        let token = made.all(".secret code").pop().unwrap();
        let found = wetside::identity::tokens::find(app, &token).await.unwrap();
        assert_eq!(found.unwrap().scopes, ["keep", "read"]);
        let list = get(app, &path, &steward).await;
        assert!(!list.body.contains(&token));
        let revoke = Html::parse_document(&list.body);
        let form = Selector::parse("form[action$=\"/revoke\"]").unwrap();
        let action = revoke.select(&form).next().unwrap().attr("action").unwrap();
        post(app, action, &steward, &[]).await;
        assert!(
            wetside::identity::tokens::find(app, &token)
                .await
                .unwrap()
                .is_none()
        );
        let none = [("name", "a scale"), ("days", "soon")];
        let refused = post(app, &path, &steward, &none).await;
        assert_eq!(refused.status, StatusCode::UNPROCESSABLE_ENTITY);
    });
}

#[test]
fn the_first_room_is_set_up_once_by_the_newest_link() {
    run(async {
        let app = &empty_app().await;
        let old = links::new_set_up(app).await.unwrap().unwrap();
        let new = links::new_set_up(app).await.unwrap().unwrap();
        let path = |address: &str| format!("/set-up/{}", secret_of(address).reveal());
        assert_eq!(get(app, &path(&old), "").await.status, StatusCode::GONE);
        assert_eq!(
            get(app, &path(&new), "").await.heading(),
            "Set up the first room"
        );
        let fields = |name: &'static str| {
            [
                ("room_name", "North Quay"),
                ("zone", "Europe/Berlin"),
                ("currency", "eur"),
                ("units", "inch"),
                ("name", "Ines Vatry"),
                ("log_in_name", name),
                ("password", PASSWORD),
            ]
        };
        let mut wrong = fields("ines");
        wrong[0].1 = "";
        wrong[6].1 = "north quay north";
        let refused = post(app, &path(&new), "", &wrong).await;
        assert_eq!(refused.status, StatusCode::UNPROCESSABLE_ENTITY);
        let (one, other) = (fields("ines"), fields("olga"));
        let new = path(&new);
        let (one, other) =
            futures_util::future::join(post(app, &new, "", &one), post(app, &new, "", &other))
                .await;
        let (won, lost) = match one.status {
            StatusCode::SEE_OTHER => (one, other),
            _ => (other, one),
        };
        assert_eq!(won.to(), "/rooms/north-quay/board");
        assert_eq!(lost.status, StatusCode::GONE);
        let accounts = members::accounts(app).await.unwrap();
        assert_eq!(accounts.len(), 1, "whoever lost has no account");
        assert!(accounts[0].is_operator);
        assert_eq!(accounts[0].rooms[0].2, Role::Steward);
        let cookie = format!("__Host-session={}", won.cookies()["__Host-session"]);
        let board = get(app, won.to(), &cookie).await;
        assert_eq!(board.status, StatusCode::OK);
        assert_eq!(links::new_set_up(app).await.unwrap(), None);
        assert_eq!(get(app, &new, "").await.status, StatusCode::GONE);
        app.database().close().await;
    });
}
