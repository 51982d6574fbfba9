//! Screens through JSON.

use axum::http::{HeaderMap, StatusCode};
use serde_json::json;
use wetside::identity::devices::{Pairing, look, show_code};
use wetside::rights::Role;

use crate::access::screens::{COOKIE, from_elsewhere};
use crate::api::room::{ALL, Room};

const INVALID: StatusCode = StatusCode::UNPROCESSABLE_ENTITY;

#[tokio::test]
async fn the_api_pairs_renames_and_ends() {
    let room = Room::open().await;
    let secret = show_code(&room.app, &from_elsewhere(), &HeaderMap::new()).await;
    let secret = secret.unwrap().unwrap();
    let mut headers = HeaderMap::new();
    let cookie = format!("{COOKIE}={}", secret.reveal());
    headers.insert("cookie", cookie.parse().unwrap());
    let Pairing::Waiting(code, _) = look(&room.app, &headers).await.unwrap() else {
        panic!("it shows no code");
    };
    let (first, second) = code.halves();
    let wrong = json!({"code": "ACDE FHJK", "kind": "lamp", "name": "", "display": "pink"});
    let wrong = room.post(&room.steward, "/screens", &wrong).await;
    wrong.assert_error(INVALID, "invalid");
    assert_eq!(wrong.fields(), ["kind", "name", "display"]);
    let code = format!("{first} {second}");
    let new = json!({"code": code, "kind": "door", "name": "Door", "display": "dim"});
    let member = room.person(Role::Trained, ALL).await;
    let refused = room.post(&member, "/screens", &new).await;
    refused.assert_error(StatusCode::FORBIDDEN, "forbidden");
    let id = room.post(&room.steward, "/screens", &new).await.made();
    assert!(matches!(
        look(&room.app, &headers).await,
        Ok(Pairing::Paired(_))
    ));
    let path = format!("/screens/{id}");
    let named = room
        .put(&room.steward, &path, &json!({"name": "Entrance"}))
        .await;
    assert_eq!(named.status, StatusCode::OK, "{}", named.body);
    let list = room.list("/screens").await;
    assert_eq!(list.len(), 1);
    assert_eq!(
        (&list[0]["name"], &list[0]["kind"]),
        (&json!("Entrance"), &json!("door"))
    );
    let end = format!("{path}/end");
    assert_eq!(room.post(&room.steward, &end, &json!({})).await.made(), id);
    let again = room.post(&room.steward, &end, &json!({})).await;
    again.assert_error(StatusCode::CONFLICT, "refused");
    assert!(matches!(
        look(&room.app, &headers).await,
        Ok(Pairing::Nothing)
    ));
    assert!(room.list("/screens").await.is_empty());
    let one = room.get(&room.steward, &path).await.body;
    assert_eq!(one["data"]["ended_at"], "2026-11-25T12:00:00Z");
}
