//! Room checks through JSON.

use axum::http::StatusCode;
use serde_json::{Value, json};
use wetside::rights::Role;

use crate::api::room::{ALL, Room};

fn eyewash() -> Value {
    json!({
        "name": "Eyewash", "how": "Let it run", "every_days": 7, "basis": "our own rule",
        "on_failure": "Pour nothing", "unit": "L/min", "least_thousandths": 1_500,
    })
}

#[tokio::test]
async fn a_check_is_set_done_and_read() {
    let room = Room::open().await;
    let member = room.person(Role::Member, ALL).await;
    let check = room.post(&room.steward, "/checks", &eyewash()).await.made();
    let path = format!("/checks/{check}");
    let read = room.get(&member, &path).await.body;
    assert_eq!(read["data"]["due"], "today");
    assert_eq!(read["data"]["due_on"], "2026-11-25");
    let passed = json!({
        "has_passed": true, "measured_thousandths": 1_500, "happened_at": "2026-11-24T22:59:00Z",
    });
    let record = format!("{path}/record");
    let result = room.post(&member, &record, &passed).await.made();
    let read = room.get(&member, &path).await.body;
    // 22:59 UTC is the same day in Berlin still.
    assert_eq!(read["data"]["due_on"], "2026-12-01");
    assert_eq!(read["data"]["due"], "later");
    assert_eq!(read["data"]["last_result_id"], result.as_str());
    let kept = room.get(&member, &format!("/check-results/{result}")).await;
    assert_eq!(kept.body["data"]["unit"], "L/min");
    assert_eq!(kept.body["data"]["person_id"], member.person.to_string());
    let failed = json!({ "has_passed": false, "remark": "It drips" });
    room.post(&member, &record, &failed).await.made();
    let read = room.get(&member, &path).await.body;
    assert_eq!(read["data"]["has_failed"], true);
    let back = format!("/check-results/{result}/take-back");
    let why = json!({ "reason": "Another eyewash" });
    room.post(&member, &back, &why)
        .await
        .assert_error(StatusCode::FORBIDDEN, "forbidden");
    assert_eq!(room.post(&room.steward, &back, &why).await.made(), result);
    let twice = room.post(&room.steward, &back, &why).await;
    twice.assert_error(StatusCode::CONFLICT, "refused");
    let list = room.list("/check-results").await;
    assert_eq!(list.len(), 2);
    assert!(list[1]["undone_by"].is_i64());
}

#[tokio::test]
async fn the_starters_are_copied_once() {
    let room = Room::open().await;
    let member = room.person(Role::Member, ALL).await;
    let refused = room.post(&member, "/checks/starters", &json!({})).await;
    refused.assert_error(StatusCode::FORBIDDEN, "forbidden");
    room.post(&room.steward, "/checks/starters", &json!({}))
        .await
        .made();
    let there = room.list("/checks").await.len();
    assert!(there >= 8, "{there}");
    let twice = room
        .post(&room.steward, "/checks/starters", &json!({}))
        .await;
    twice.assert_error(StatusCode::CONFLICT, "refused");
    assert_eq!(room.list("/checks").await.len(), there);
}

#[tokio::test]
async fn what_is_wrong_is_named_as_it_was_sent() {
    let room = Room::open().await;
    let mut wrong = eyewash();
    wrong["every_days"] = json!(0);
    wrong["most_thousandths"] = json!(1_499);
    let refused = room.post(&room.steward, "/checks", &wrong).await;
    assert_eq!(refused.fields(), ["most_thousandths", "every_days"]);
    let mut nowhere = eyewash();
    nowhere["space_id"] = json!(uuid::Uuid::nil());
    let refused = room.post(&room.steward, "/checks", &nowhere).await;
    assert_eq!(refused.fields(), ["space_id"]);
    let check = room.post(&room.steward, "/checks", &eyewash()).await.made();
    let path = format!("/checks/{check}/record");
    for (found, fields) in [
        (json!({ "has_passed": true }), ["measured_thousandths"]),
        (
            json!({ "has_passed": true, "measured_thousandths": 1_499 }),
            ["measured_thousandths"],
        ),
        (json!({ "has_passed": false }), ["remark"]),
        (
            json!({ "has_passed": false, "remark": "x", "happened_at": "2026-11-17T11:59:00Z" }),
            ["happened_at"],
        ),
    ] {
        let refused = room.post(&room.steward, &path, &found).await;
        assert_eq!(refused.fields(), fields, "{found}");
    }
    let mut plain = eyewash();
    plain["name"] = json!("Spill kit");
    for field in ["unit", "least_thousandths"] {
        plain.as_object_mut().unwrap().remove(field);
    }
    let plain = room.post(&room.steward, "/checks", &plain).await.made();
    let measured = json!({ "has_passed": true, "measured_thousandths": 1 });
    let refused = room
        .post(&room.steward, &format!("/checks/{plain}/record"), &measured)
        .await;
    assert_eq!(refused.fields(), ["measured_thousandths"]);
    assert!(room.list("/check-results").await.is_empty());
}
