//! Who is in the room, through JSON.

use axum::http::StatusCode;
use serde_json::json;
use time::Duration;
use wetside::rights::Role;

use crate::api::room::{ALL, Room, START};

const REFUSED: StatusCode = StatusCode::CONFLICT;

#[tokio::test]
async fn the_api_says_the_same() {
    let room = Room::open().await;
    let member = room.person(Role::Member, ALL).await;
    let other = room.person(Role::Treasurer, ALL).await;
    let nothing = json!({});
    // Whoever comes alone says until when.
    let silent = room.post(&member, "/presences", &nothing).await;
    silent.assert_error(StatusCode::UNPROCESSABLE_ENTITY, "invalid");
    assert_eq!(silent.body["error"]["fields"][0]["field"], "expected_at");
    let stays = json!({ "expected_at": "2026-11-25T14:00:00Z" });
    let id = room.post(&member, "/presences", &stays).await.made();
    let again = room.post(&member, "/presences", &nothing).await;
    again.assert_error(REFUSED, "refused");
    let board = room.get(&other, "/board").await.body["data"].clone();
    assert_eq!(board["present"][0]["id"], id.as_str());
    assert_eq!(board["present"][0]["arrived_at"], "2026-11-25T12:00:00Z");
    // Midnight in Berlin: IANA time zone database, file europe.
    assert_eq!(board["present"][0]["over_at"], "2026-11-25T23:00:00Z");
    assert_eq!(board["present"][0]["expected_at"], "2026-11-25T14:00:00Z");
    assert_eq!(board["people_limit"], 10);
    let one = format!("/presences/{id}");
    assert_eq!(room.get(&other, &one).await.status, StatusCode::OK);
    let until = format!("{one}/until");
    let later = json!({ "expected_at": "2026-11-25T15:30:00+01:00" });
    assert_eq!(room.post(&member, &until, &later).await.made(), id);
    let read = room.get(&other, &one).await.body;
    assert_eq!(read["data"]["expected_at"], "2026-11-25T14:30:00Z");
    let past = json!({ "expected_at": "2026-11-25T12:00:00Z" });
    let past = room.post(&member, &until, &past).await;
    past.assert_error(StatusCode::UNPROCESSABLE_ENTITY, "invalid");
    // Somebody else neither stays nor leaves for them, nor ends it.
    let theirs = room.post(&other, &until, &later).await;
    theirs.assert_error(StatusCode::FORBIDDEN, "forbidden");
    let leave = format!("{one}/leave");
    let close = format!("{one}/close");
    for path in [&leave, &close] {
        let answer = room.post(&other, path, &nothing).await;
        answer.assert_error(StatusCode::FORBIDDEN, "forbidden");
    }
    assert_eq!(room.post(&member, &leave, &nothing).await.made(), id);
    for (who, path) in [(&member, &leave), (&room.steward, &close)] {
        let over = room.post(who, path, &nothing).await;
        over.assert_error(REFUSED, "refused");
    }
    // What is over is its person's and the stewards'.
    let gone = room.get(&other, &one).await;
    gone.assert_error(StatusCode::NOT_FOUND, "not_found");
    let own = room.get(&member, &one).await.body;
    assert_eq!(own["data"]["is_confirmed"], true);
    assert_eq!(room.get(&room.steward, &one).await.status, StatusCode::OK);
    assert!(room.list("/presences").await.is_empty());
}

#[tokio::test]
async fn what_ran_out_is_not_listed_and_a_steward_ends_the_rest() {
    let room = Room::open().await;
    let member = room.person(Role::Member, ALL).await;
    let nothing = json!({});
    let stays = json!({ "expected_at": "2026-11-25T14:00:00Z" });
    let id = room.post(&member, "/presences", &stays).await.made();
    assert_eq!(room.list("/presences").await.len(), 1);
    room.clock.set(START + Duration::hours(11));
    assert!(room.list("/presences").await.is_empty());
    let stays = json!({ "expected_at": "2026-11-26T00:30:00Z" });
    let new = room.post(&member, "/presences", &stays).await.made();
    assert_ne!(new, id);
    let old = room.get(&member, &format!("/presences/{id}")).await.body;
    assert_eq!(old["data"]["is_confirmed"], false);
    assert_eq!(old["data"]["ended_at"], "2026-11-25T23:00:00Z");
    let close = format!("/presences/{new}/close");
    assert_eq!(room.post(&room.steward, &close, &nothing).await.made(), new);
}
