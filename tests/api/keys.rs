//! One key, one write.

use axum::http::{Method, StatusCode};
use serde_json::json;
use uuid::Uuid;
use wetside::rights::Role;

use super::room::{ALL, Room, Sent};

#[tokio::test]
async fn a_repeat_answers_from_the_first_time() {
    let room = Room::open().await;
    let key = Uuid::now_v7().to_string();
    let class = json!({ "name": "Warm tone" });
    let send = || {
        let sent = Sent::new(Method::POST, &room.at("/papers/classes"));
        room.send(sent.by(&room.steward).key(&key).json(&class))
    };
    let first = send().await;
    assert_eq!(first.status, StatusCode::CREATED);
    assert_eq!(first.header("idempotency-hit"), None);
    let again = send().await;
    assert_eq!(again.status, StatusCode::OK);
    assert_eq!(again.header("idempotency-hit"), Some("true"));
    assert_eq!(again.body, first.body);
    let place = first.header("location").unwrap();
    assert_eq!(again.header("location"), Some(place));
    assert_eq!(first.body["data"]["place"], place);
    let read = room
        .send(Sent::new(Method::GET, place).by(&room.steward))
        .await;
    assert_eq!(read.body["data"]["name"], "Warm tone");
    let named = room.list("/papers/classes").await;
    assert_eq!(
        named
            .iter()
            .filter(|each| each["name"] == "Warm tone")
            .count(),
        1
    );
}

#[tokio::test]
async fn a_key_belongs_to_one_request_of_one_person() {
    let room = Room::open().await;
    let other = room.person(Role::Steward, ALL).await;
    let key = "AAECAwQFBgcICQoLDA0ODw";
    let send = |who, name: &str, method, path: &str| {
        let sent = Sent::new(method, &room.at(path)).by(who).key(key);
        room.send(sent.json(&json!({ "name": name })))
    };
    let first = send(&room.steward, "Warm tone", Method::POST, "/papers/classes").await;
    let id = first.made();
    let differs = send(&room.steward, "Cold tone", Method::POST, "/papers/classes").await;
    differs.assert_error(StatusCode::UNPROCESSABLE_ENTITY, "key_mismatch");
    let theirs = send(&other, "Warm tone", Method::POST, "/papers/classes").await;
    theirs.assert_error(StatusCode::UNPROCESSABLE_ENTITY, "key_mismatch");
    let changes = format!("/papers/classes/{id}");
    let changes = send(&room.steward, "Warm tone", Method::PUT, &changes).await;
    changes.assert_error(StatusCode::UNPROCESSABLE_ENTITY, "key_mismatch");
    // The same 16 bytes as a UUID are the same key.
    let as_uuid = Sent::new(Method::POST, &room.at("/papers/classes"))
        .by(&room.steward)
        .key("00010203-0405-0607-0809-0a0b0c0d0e0f")
        .json(&json!({ "name": "Warm tone" }));
    let hit = room.send(as_uuid).await;
    assert_eq!(hit.header("idempotency-hit"), Some("true"), "{}", hit.body);
    // Another room knows nothing of it.
    let elsewhere = Room::open().await;
    let sent = Sent::new(Method::POST, &elsewhere.at("/papers/classes"));
    let sent = sent.by(&elsewhere.steward).key(key);
    let answer = elsewhere
        .send(sent.json(&json!({ "name": "Warm tone" })))
        .await;
    assert_eq!(answer.status, StatusCode::CREATED);
}

#[tokio::test]
async fn a_write_without_a_key_is_refused() {
    let room = Room::open().await;
    let class = json!({ "name": "Warm tone" });
    let post = || Sent::new(Method::POST, &room.at("/papers/classes")).by(&room.steward);
    let tries = [
        post(),
        post().key(""),
        post().key("short"),
        post().key("000102030405060708090a0b0c0d0e0f"),
        post().key("AAECAwQFBgcICQoLDA0ODx"),
        post().new_key().new_key(),
    ];
    for sent in tries {
        let answer = room.send(sent.json(&class)).await;
        answer.assert_error(StatusCode::UNPROCESSABLE_ENTITY, "invalid");
        assert_eq!(answer.fields(), ["Idempotency-Key"]);
    }
    let named = room.list("/papers/classes").await;
    assert!(named.iter().all(|each| each["name"] != "Warm tone"));
}

#[tokio::test]
async fn a_change_sent_twice_is_one_entry() {
    let room = Room::open().await;
    let id = room.id_of("/papers/classes", "RC").await;
    let (path, key) = (
        room.at(&format!("/papers/classes/{id}")),
        Uuid::now_v7().to_string(),
    );
    let send = || {
        let sent = Sent::new(Method::PUT, &path).by(&room.steward).key(&key);
        room.send(sent.json(&json!({ "name": "RC, glossy" })))
    };
    let (first, again) = (send().await, send().await);
    assert_eq!(
        (first.status, again.status),
        (StatusCode::OK, StatusCode::OK)
    );
    assert_eq!(first.header("idempotency-hit"), None);
    assert_eq!(again.header("idempotency-hit"), Some("true"));
    assert_eq!(first.body["data"]["seq"], again.body["data"]["seq"]);
}
