//! Members, settings, the board and checkpoints through JSON.

use axum::http::{Method, StatusCode};
use serde_json::{Value, json};
use time::Duration;
use wetside::rights::Role;

use super::room::{ALL, Room, START, Sent};

const INVALID: StatusCode = StatusCode::UNPROCESSABLE_ENTITY;

#[tokio::test]
async fn a_member_is_given_a_role_suspended_and_restored() {
    let room = Room::open().await;
    let member = room.person(Role::Member, ALL).await;
    let path = format!("/members/{}", member.person);
    let read = || async { room.get(&room.steward, &path).await.body["data"].clone() };
    assert_eq!(read().await["role"], "member");
    assert_eq!(read().await["member_number"], 2);
    let role = format!("{path}/role");
    let trained = room
        .put(&room.steward, &role, &json!({ "role": "trained" }))
        .await;
    assert_eq!(trained.status, StatusCode::OK, "{}", trained.body);
    assert_eq!(trained.header("location"), Some(room.at(&path).as_str()));
    assert_eq!(read().await["role"], "trained");
    let soup = room
        .put(&room.steward, &role, &json!({ "role": "soup" }))
        .await;
    soup.assert_error(INVALID, "invalid");
    assert_eq!(soup.fields(), ["role"]);
    let nothing = json!({});
    let suspend = format!("{path}/suspend");
    assert_eq!(
        room.post(&room.steward, &suspend, &nothing).await.made(),
        member.person.to_string()
    );
    assert_eq!(read().await["suspended_at"], "2026-11-25T12:00:00Z");
    let answer = room.get(&member, "/board").await;
    answer.assert_error(StatusCode::UNAUTHORIZED, "unauthenticated");
    let again = room.post(&room.steward, &suspend, &nothing).await;
    again.assert_error(StatusCode::CONFLICT, "refused");
    let restored = room
        .post(&room.steward, &format!("{path}/restore"), &nothing)
        .await;
    assert_eq!(restored.status, StatusCode::CREATED);
    assert_eq!(room.get(&member, "/board").await.status, StatusCode::OK);
    let ended = room
        .post(&room.steward, &format!("{path}/end-access"), &nothing)
        .await;
    assert_eq!(ended.status, StatusCode::CREATED);
    assert_eq!(read().await["ended_at"], "2026-11-25T12:00:00Z");
}

#[tokio::test]
async fn members_are_seen_by_stewards_alone() {
    let room = Room::open().await;
    let other = Room::open().await;
    for role in [Role::Member, Role::Trained, Role::Treasurer] {
        let who = room.person(role, ALL).await;
        room.get(&who, "/members")
            .await
            .assert_error(StatusCode::FORBIDDEN, "forbidden");
        room.get(&who, "/open-links")
            .await
            .assert_error(StatusCode::FORBIDDEN, "forbidden");
    }
    let part = room.get(&room.steward, "/members?limit=3").await.body;
    let numbers = |part: &Value| -> Vec<i64> {
        let data = part["data"].as_array().unwrap().iter();
        data.map(|each| each["member_number"].as_i64().unwrap())
            .collect()
    };
    assert_eq!(numbers(&part), [1, 2, 3]);
    let next = part["next"].as_str().unwrap();
    let rest = room
        .get(&room.steward, &format!("/members?after={next}"))
        .await
        .body;
    assert_eq!(numbers(&rest), [4]);
    let theirs = format!("/members/{}", other.steward.person);
    let answer = room.get(&room.steward, &theirs).await;
    answer.assert_error(StatusCode::NOT_FOUND, "not_found");
    let alone = format!("/members/{}/role", room.steward.person);
    let alone = room
        .put(&room.steward, &alone, &json!({ "role": "member" }))
        .await;
    alone.assert_error(StatusCode::CONFLICT, "refused");
    assert!(room.list("/open-links").await.is_empty());
}

#[tokio::test]
async fn settings_are_read_and_set_whole() {
    let room = Room::open().await;
    let read = room.get(&room.steward, "/settings").await.body["data"].clone();
    let mut body = read.clone();
    body.as_object_mut().unwrap().remove("seq");
    body["decimal_mark"] = json!(",");
    body["hours"][6] = Value::Null;
    body["emergency"]["number"] = json!("112");
    let set = room.put(&room.steward, "/settings", &body).await;
    assert_eq!(set.status, StatusCode::OK, "{}", set.body);
    let now = room.get(&room.steward, "/settings").await.body["data"].clone();
    body["seq"] = set.body["data"]["seq"].clone();
    assert_eq!(now, body);
    body.as_object_mut().unwrap().remove("seq");
    for (pointer, value, field, words) in [
        ("/zone", json!("Europe/Nowhere"), "zone", "time zone"),
        (
            "/test_first_ppb",
            json!(1_000_000_000),
            "test_first_ppb",
            "1 % to 99 %",
        ),
        (
            "/late_note_minutes",
            json!(-1),
            "late_note_minutes",
            "0 h to 2160 h",
        ),
        ("/hours/0/closes_minute", json!(0), "hours[0]", "time"),
        ("/hours", json!([]), "hours", "seven days"),
        (
            "/emergency/number",
            json!("1".repeat(401)),
            "emergency.number",
            "at most 400",
        ),
        ("/units", json!("cubits"), "units", "those offered"),
    ] {
        let mut wrong = body.clone();
        *wrong.pointer_mut(pointer).unwrap() = value;
        let answer = room.put(&room.steward, "/settings", &wrong).await;
        answer.assert_error(INVALID, "invalid");
        assert_eq!(answer.fields(), [field]);
        let said = answer.body["error"]["fields"][0]["sentence"]
            .as_str()
            .unwrap();
        assert!(said.contains(words), "{field}: {said}");
    }
    let member = room.person(Role::Member, ALL).await;
    assert_eq!(room.get(&member, "/settings").await.status, StatusCode::OK);
    let theirs = room.put(&member, "/settings", &body).await;
    theirs.assert_error(StatusCode::FORBIDDEN, "forbidden");
}

#[tokio::test]
async fn the_book_is_sealed_by_those_who_may() {
    let room = Room::open().await;
    let treasurer = room.person(Role::Treasurer, ALL).await;
    let member = room.person(Role::Member, ALL).await;
    let seal = |who| Sent::new(Method::POST, &room.at("/book/checkpoints")).by(who);
    room.send(seal(&member))
        .await
        .assert_error(StatusCode::FORBIDDEN, "forbidden");
    room.clock.set(START + Duration::minutes(1));
    let made = room.send(seal(&treasurer)).await;
    assert_eq!(made.status, StatusCode::CREATED, "{}", made.body);
    assert_eq!(made.body["data"]["at"], "2026-11-25T12:01:00Z");
    let listed = room.get(&member, "/book/checkpoints").await.body;
    assert_eq!(listed["data"], json!([made.body["data"]]));
}
