//! Room air through JSON.

use axum::http::StatusCode;
use serde_json::{Value, json};
use wetside::rights::Role;

use crate::api::room::{ALL, Room};

fn twenty_square_metres() -> Value {
    json!({
        "floor_hundredths_mm2": 2_000_000_000_i64, "height_tenths_mm": 26_000,
        "has_fan": true, "rule": "imc_2018",
    })
}

fn measured(ul_per_s: i64) -> Value {
    json!({
        "of": "exhaust", "ul_per_s": ul_per_s, "measured_on": "2026-11-25",
        "how": "Vane anemometer at the grille",
    })
}

#[tokio::test]
async fn air_is_set_measured_taken_back_and_read() {
    let room = Room::open().await;
    let member = room.person(Role::Member, ALL).await;
    let here = format!("/air/{}", room.id);
    let list = room.list("/air").await;
    assert_eq!(list.len(), 1);
    assert_eq!(list[0]["id"], room.id.to_string());
    assert_eq!(list[0]["exhaust"], "unmeasured");
    let put = room
        .put(&room.steward, &here, &twenty_square_metres())
        .await;
    assert_eq!(put.status, StatusCode::OK, "{}", put.body);
    let measure = format!("{here}/measure");
    let id = room
        .post(&room.steward, &measure, &measured(80_000_000))
        .await
        .made();
    let read = room.get(&member, &here).await.body["data"].clone();
    assert_eq!(read["exhaust"], "short");
    assert_eq!(read["wanted_ul_per_s"], 101_600_000);
    assert_eq!(read["short_ul_per_s"], 21_600_000);
    assert_eq!(read["volume_ul"], 52_000_000_000_i64);
    assert_eq!(read["changes_per_hour_thousandths"], 5_538);
    assert_eq!(read["clearing_s"].as_array().unwrap().len(), 3);
    let one = room
        .get(&member, &format!("/air-measurements/{id}"))
        .await
        .body;
    assert_eq!(one["data"]["ul_per_s"], 80_000_000);
    let back = format!("/air-measurements/{id}/take-back");
    let why = json!({ "reason": "Another grille" });
    room.post(&member, &back, &why)
        .await
        .assert_error(StatusCode::FORBIDDEN, "forbidden");
    assert_eq!(room.post(&room.steward, &back, &why).await.made(), id);
    let twice = room.post(&room.steward, &back, &why).await;
    twice.assert_error(StatusCode::CONFLICT, "refused");
    let read = room.get(&member, &here).await.body["data"].clone();
    assert_eq!(read["exhaust"], "unmeasured");
    assert!(read["clearing_s"].as_array().unwrap().is_empty());
}

#[tokio::test]
async fn a_place_is_aired_and_a_waiver_names_somebody() {
    let room = Room::open().await;
    let member = room.person(Role::Member, ALL).await;
    let here = format!("/air/{}", room.id);
    let airing = format!("{here}/airing");
    let id = room.post(&member, &airing, &json!({})).await.made();
    let twice = room.post(&member, &airing, &json!({})).await;
    twice.assert_error(StatusCode::CONFLICT, "refused");
    let read = room.get(&member, &here).await.body["data"].clone();
    assert_eq!(read["airing_id"], id.as_str());
    let end = format!("/airings/{id}/end");
    assert_eq!(room.post(&member, &end, &json!({})).await.made(), id);
    let before = json!({ "seconds": 600, "happened_at": "2026-11-25T11:30:00Z" });
    room.post(&member, &airing, &before).await.made();
    let read = room.get(&member, &here).await.body["data"].clone();
    assert_eq!(read["aired_s"], 600);
    assert_eq!(read["aired_changes_per_hour_thousandths"], Value::Null);
    assert_eq!(room.list("/airings").await.len(), 2);
    let treasurer = room.person(Role::Treasurer, ALL).await;
    room.post(&treasurer, &airing, &json!({}))
        .await
        .assert_error(StatusCode::FORBIDDEN, "forbidden");
    let waiver = format!("{here}/waiver");
    let agreed = json!({ "agreed_by": "The district safety engineer" });
    room.post(&member, &waiver, &agreed)
        .await
        .assert_error(StatusCode::FORBIDDEN, "forbidden");
    room.post(&room.steward, &waiver, &agreed).await.made();
    let again = room.post(&room.steward, &waiver, &agreed).await;
    again.assert_error(StatusCode::CONFLICT, "refused");
    let read = room.get(&member, &here).await.body["data"].clone();
    assert_eq!(read["agreed_by"], "The district safety engineer");
}

#[tokio::test]
async fn what_is_wrong_is_named_as_it_was_sent() {
    let room = Room::open().await;
    let here = format!("/air/{}", room.id);
    let mut wrong = twenty_square_metres();
    wrong["floor_hundredths_mm2"] = json!(1);
    wrong["height_tenths_mm"] = json!(1);
    wrong["mixing_tenths"] = json!(9);
    let refused = room.put(&room.steward, &here, &wrong).await;
    assert_eq!(
        refused.fields(),
        ["floor_hundredths_mm2", "height_tenths_mm", "mixing_tenths"]
    );
    let mut own = twenty_square_metres();
    own["rule"] = json!("own");
    let refused = room.put(&room.steward, &here, &own).await;
    assert_eq!(refused.fields(), ["own_ul_per_s"]);
    let mut late = measured(1);
    late["measured_on"] = json!("2026-11-26");
    late["how"] = json!("By ear");
    let measure = format!("{here}/measure");
    let refused = room.post(&room.steward, &measure, &late).await;
    assert_eq!(refused.fields(), ["measured_on"]);
    let airing = format!("{here}/airing");
    for body in [
        json!({ "seconds": 59 }),
        json!({ "seconds": 7_200, "happened_at": "2026-11-25T11:00:00Z" }),
    ] {
        let refused = room.post(&room.steward, &airing, &body).await;
        assert_eq!(refused.fields(), ["seconds"], "{body}");
    }
    let nowhere = room
        .put(
            &room.steward,
            &format!("/air/{}", uuid::Uuid::nil()),
            &twenty_square_metres(),
        )
        .await;
    nowhere.assert_error(StatusCode::NOT_FOUND, "not_found");
}
