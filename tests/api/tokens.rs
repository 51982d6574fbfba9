//! Whose token opens what.

use axum::http::{Method, StatusCode};
use serde_json::json;
use time::Duration;
use uuid::Uuid;
use wetside::rights::Role;

use super::room::{ALL, Room, START, Sent};

#[tokio::test]
async fn a_token_knows_its_own_room_only() {
    let (ours, other) = (Room::open().await, Room::open().await);
    let there = other.at("/papers/sheet-sizes");
    let answer = ours
        .send(Sent::new(Method::GET, &there).by(&ours.steward))
        .await;
    answer.assert_error(StatusCode::NOT_FOUND, "not_found");
    let nowhere = Sent::new(Method::GET, "/api/v1/rooms/no-such-room/papers/classes");
    let nowhere = ours.send(nowhere.by(&ours.steward)).await;
    nowhere.assert_error(StatusCode::NOT_FOUND, "not_found");
    assert_eq!(
        nowhere.body["error"]["sentence"],
        answer.body["error"]["sentence"]
    );
    let class = json!({ "name": "Ours" });
    let sent = Sent::new(Method::POST, &other.at("/papers/classes"));
    let sent = sent.by(&ours.steward).new_key().json(&class);
    ours.send(sent)
        .await
        .assert_error(StatusCode::NOT_FOUND, "not_found");
}

#[tokio::test]
async fn what_stands_in_another_room_is_nowhere() {
    let (ours, other) = (Room::open().await, Room::open().await);
    for (list, name) in [
        ("/papers/sheet-sizes", "A4"),
        ("/papers/classes", "RC"),
        ("/products", "Neutral paper developer"),
        ("/bench/lines", "First line"),
    ] {
        let id = other.id_of(list, name).await;
        let answer = ours.get(&ours.steward, &format!("{list}/{id}")).await;
        answer.assert_error(StatusCode::NOT_FOUND, "not_found");
        let no_id = ours.get(&ours.steward, &format!("{list}/not-an-id")).await;
        no_id.assert_error(StatusCode::NOT_FOUND, "not_found");
    }
}

#[tokio::test]
async fn without_a_good_token_nobody_reads() {
    let room = Room::open().await;
    let classes = room.at("/papers/classes");
    let get = || Sent::new(Method::GET, &classes);
    let late = room
        .token(room.steward.person, ALL, START - Duration::seconds(1))
        .await;
    let revoked = room
        .token(room.steward.person, ALL, START + Duration::days(1))
        .await;
    let revoke = "update token set revoked_at = now() where room_id = $1 and id = $2";
    room.as_owner(revoke, revoked.token).await;
    let mut forged = room.steward.clone();
    forged.text.pop();
    forged.text.push('#');
    let basic = get().with("authorization", "Basic c3Rld2FyZDp3ZXQ=");
    let cookie = get().with("cookie", "__Host-session=anything");
    let tries = [
        get(),
        get().by(&late),
        get().by(&revoked),
        get().by(&forged),
        basic,
        cookie,
    ];
    for sent in tries {
        let answer = room.send(sent).await;
        answer.assert_error(StatusCode::UNAUTHORIZED, "unauthenticated");
        assert_eq!(answer.header("www-authenticate"), Some("Bearer"));
    }
    let write = Sent::new(Method::POST, &classes).new_key();
    let write = room.send(write.json(&json!({ "name": "Mine" }))).await;
    write.assert_error(StatusCode::UNAUTHORIZED, "unauthenticated");
    assert_eq!(
        room.get(&room.steward, "/papers/classes").await.status,
        StatusCode::OK
    );
}

#[tokio::test]
async fn a_token_ends_with_its_time_and_its_membership() {
    let room = Room::open().await;
    let member = room.person(Role::Member, &["read"]).await;
    assert_eq!(
        room.get(&member, "/papers/classes").await.status,
        StatusCode::OK
    );
    let suspend =
        "update membership set suspended_at = now() where room_id = $1 and person_id = $2";
    room.as_owner(suspend, member.person).await;
    let answer = room.get(&member, "/papers/classes").await;
    answer.assert_error(StatusCode::UNAUTHORIZED, "unauthenticated");
    room.clock.set(START + Duration::days(30));
    let answer = room.get(&room.steward, "/papers/classes").await;
    answer.assert_error(StatusCode::UNAUTHORIZED, "unauthenticated");
}

#[tokio::test]
async fn scope_and_role_are_both_needed() {
    let room = Room::open().await;
    let reader = room.person(Role::Steward, &["read"]).await;
    let class = json!({ "name": "Warm tone" });
    let answer = room.post(&reader, "/papers/classes", &class).await;
    answer.assert_error(StatusCode::FORBIDDEN, "forbidden");
    let member = room.person(Role::Member, ALL).await;
    let answer = room.post(&member, "/papers/classes", &class).await;
    answer.assert_error(StatusCode::FORBIDDEN, "forbidden");
    let keeper = room.person(Role::Steward, &["keep"]).await;
    let answer = room.get(&keeper, "/papers/classes").await;
    answer.assert_error(StatusCode::FORBIDDEN, "forbidden");
    assert_eq!(
        room.post(&keeper, "/papers/classes", &class).await.status,
        StatusCode::CREATED
    );
}

#[tokio::test]
async fn a_site_cannot_use_a_token_it_does_not_have() {
    let room = Room::open().await;
    let sent = Sent::new(Method::POST, &room.at("/papers/classes"))
        .with("sec-fetch-site", "cross-site")
        .with("cookie", "__Host-session=anything")
        .new_key()
        .json(&json!({ "name": "Theirs" }));
    room.send(sent)
        .await
        .assert_error(StatusCode::UNAUTHORIZED, "unauthenticated");
    let id = Uuid::now_v7().to_string();
    let sent = Sent::new(Method::GET, &room.at("/papers/classes")).with("x-request-id", &id);
    let answer = room.send(sent.by(&room.steward)).await;
    assert_eq!(answer.status, StatusCode::OK);
}
