//! Lamps and their tests through JSON.

use axum::http::StatusCode;
use serde_json::{Value, json};
use wetside::rights::Role;

use crate::api::room::{ALL, Room};

fn red_lamp() -> Value {
    json!({ "name": "Red lamp", "kind": "safelight", "distance_tenths_mm": 12_000 })
}

#[tokio::test]
async fn a_lamp_is_set_tested_and_read() {
    let room = Room::open().await;
    let member = room.person(Role::Member, ALL).await;
    let lamp = room.post(&room.steward, "/lamps", &red_lamp()).await.made();
    let rc = room.id_of("/papers/classes", "RC").await;
    let standing = || async {
        let read = room.get(&member, &format!("/lamps/{lamp}")).await.body;
        let papers = read["data"]["papers"].as_array().unwrap().clone();
        papers
            .into_iter()
            .find(|each| each["paper_class_id"] == rc)
            .unwrap()
    };
    assert_eq!(standing().await["standing"], "never");
    let path = format!("/lamps/{lamp}/test");
    let steps = json!({
        "paper_class_id": rc, "longest_clean_s": 240, "shortest_fogged_s": 480,
        "happened_at": "2026-11-24T22:59:00Z",
    });
    let test = room.post(&member, &path, &steps).await.made();
    let read = standing().await;
    assert_eq!(read["standing"], "tested");
    assert_eq!(read["safe_s"], 169);
    // 22:59 UTC is the same day in Berlin still.
    assert_eq!(read["again_by"], "2027-11-24");
    assert_eq!(read["fog_test_id"], test.as_str());
    let kept = room.get(&member, &format!("/fog-tests/{test}")).await.body;
    assert_eq!(kept["data"]["distance_tenths_mm"], 12_000);
    assert_eq!(kept["data"]["person_id"], member.person.to_string());
    let mut nearer = red_lamp();
    nearer["distance_tenths_mm"] = json!(9_000);
    let put = room
        .put(&room.steward, &format!("/lamps/{lamp}"), &nearer)
        .await;
    assert_eq!(put.status, StatusCode::OK, "{}", put.body);
    let read = standing().await;
    assert_eq!(read["standing"], "changed");
    assert_eq!(read["safe_s"], 169);
    let back = format!("/fog-tests/{test}/take-back");
    let why = json!({ "reason": "Another lamp" });
    room.post(&member, &back, &why)
        .await
        .assert_error(StatusCode::FORBIDDEN, "forbidden");
    assert_eq!(room.post(&room.steward, &back, &why).await.made(), test);
    assert_eq!(standing().await["standing"], "never");
    let twice = room.post(&room.steward, &back, &why).await;
    twice.assert_error(StatusCode::CONFLICT, "refused");
    let list = room.list("/fog-tests").await;
    assert_eq!(list.len(), 1);
    assert!(list[0]["undone_by"].is_i64());
}

#[tokio::test]
async fn what_is_wrong_is_named_as_it_was_sent() {
    let room = Room::open().await;
    let mut wrong = red_lamp();
    wrong["distance_tenths_mm"] = json!(499);
    wrong["test_months"] = json!(61);
    let refused = room.post(&room.steward, "/lamps", &wrong).await;
    assert_eq!(refused.fields(), ["distance_tenths_mm", "test_months"]);
    let mut nowhere = red_lamp();
    nowhere["space_id"] = json!(uuid::Uuid::nil());
    let refused = room.post(&room.steward, "/lamps", &nowhere).await;
    assert_eq!(refused.fields(), ["space_id"]);
    let lamp = room.post(&room.steward, "/lamps", &red_lamp()).await.made();
    let rc = room.id_of("/papers/classes", "RC").await;
    let path = format!("/lamps/{lamp}/test");
    for (steps, fields) in [
        (json!({}), vec!["longest_clean_s"]),
        (json!({ "longest_clean_s": 1 }), vec!["longest_clean_s"]),
        (
            json!({ "longest_clean_s": 60, "shortest_fogged_s": 60 }),
            vec!["shortest_fogged_s"],
        ),
        (
            json!({ "longest_clean_s": 60, "happened_at": "2026-11-17T11:59:00Z" }),
            vec!["happened_at"],
        ),
    ] {
        let mut steps = steps;
        steps["paper_class_id"] = json!(rc);
        let refused = room.post(&room.steward, &path, &steps).await;
        assert_eq!(refused.fields(), fields, "{steps}");
    }
    let unknown = json!({ "paper_class_id": uuid::Uuid::nil(), "longest_clean_s": 60 });
    let refused = room.post(&room.steward, &path, &unknown).await;
    assert_eq!(refused.fields(), ["paper_class_id"]);
    assert!(room.list("/fog-tests").await.is_empty());
}
