//! Every route of the API, asked by everyone: by role, by scope, from elsewhere.

use axum::http::{Method, StatusCode};
use serde_json::json;
use uuid::Uuid;
use wetside::api::routes;
use wetside::rights::{Role, Row};

use crate::api::room::{ALL, Answer, Bearer, Room, Sent};

/// Every route that takes a right, with a path that names nothing.
fn asked() -> Vec<(Method, String, Row)> {
    let nothing = Uuid::now_v7().to_string();
    let routes = routes::all().into_iter();
    routes
        .filter_map(|route| {
            let path = route.path.strip_prefix("/rooms/{room}")?;
            Some((
                route.method.clone(),
                path.replace("{id}", &nothing),
                route.right?,
            ))
        })
        .collect()
}

/// Asks with an empty object, which no write of a new thing takes.
async fn ask(room: &Room, who: &Bearer, method: &Method, path: &str) -> Answer {
    let sent = Sent::new(method.clone(), &room.at(path)).by(who);
    let sent = match method.is_safe() {
        true => sent,
        false => sent.new_key().json(&json!({})),
    };
    room.send(sent).await
}

#[tokio::test]
async fn a_role_reaches_what_the_table_says() {
    let room = Room::open().await;
    for role in Role::ALL {
        let who = room.person(role, ALL).await;
        for (method, path, right) in asked() {
            let answer = ask(&room, &who, &method, &path).await;
            let place = format!("{} {method} {path}: {}", role.as_str(), answer.body);
            if !right.roles.contains(&role) {
                assert_eq!(answer.status, StatusCode::FORBIDDEN, "{place}");
                continue;
            }
            let kind = answer.body["error"]["kind"].as_str().unwrap_or("none");
            assert!(["none", "not_found", "invalid"].contains(&kind), "{place}");
        }
    }
}

#[tokio::test]
async fn a_scope_reaches_its_own_rights_only() {
    let room = Room::open().await;
    for scope in ALL {
        let others: Vec<&str> = ALL.iter().copied().filter(|each| each != scope).collect();
        let who = room.person(Role::Steward, &others).await;
        for (method, path, right) in asked() {
            let answer = ask(&room, &who, &method, &path).await;
            let lacks = right.reach.scope() == Some(scope);
            let refused = answer.status == StatusCode::FORBIDDEN;
            assert_eq!(
                refused, lacks,
                "without {scope}: {method} {path}: {}",
                answer.body
            );
        }
    }
}

#[tokio::test]
async fn from_another_room_everything_is_nowhere() {
    let (ours, other) = (Room::open().await, Room::open().await);
    let before = ours.get(&ours.steward, "/book?limit=500").await;
    for (method, path, _) in asked() {
        let answer = ask(&ours, &other.steward, &method, &path).await;
        answer.assert_error(StatusCode::NOT_FOUND, "not_found");
    }
    let after = ours.get(&ours.steward, "/book?limit=500").await;
    assert_eq!(before.body, after.body);
}

#[tokio::test]
async fn reading_changes_nothing() {
    let room = Room::open().await;
    let before = room.get(&room.steward, "/book?limit=500").await;
    for (method, path, _) in asked().iter().filter(|(method, _, _)| method.is_safe()) {
        ask(&room, &room.steward, method, path).await;
    }
    let after = room.get(&room.steward, "/book?limit=500").await;
    assert_eq!(before.body, after.body);
}
