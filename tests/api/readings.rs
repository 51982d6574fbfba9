//! Checks, contamination, extensions and taking back, as JSON.

use axum::http::StatusCode;
use serde_json::{Value, json};
use wetside::rights::Role;

use super::room::{ALL, Room};

const INVALID: StatusCode = StatusCode::UNPROCESSABLE_ENTITY;

impl Room {
    /// A litre of a developer that works from 18 to 22 °C, in the room's only tray.
    async fn full_tray(&self) -> String {
        let line = self.list("/bench/lines").await[0]["id"].clone();
        let tray = json!({
            "line_id": line, "name": "Developer", "inside_long_tenths_mm": 3_000,
            "inside_short_tenths_mm": 2_500, "inside_depth_tenths_mm": 600,
            "least_depth_tenths_mm": 50,
        });
        let tray = self.post(&self.steward, "/bench/trays", &tray).await.made();
        let developer = json!({
            "name": "Grey heron developer", "kind": "developer",
            "groups": ["developer", "alkali", "sulfite", "organic"],
            "oxidises": true, "depth_reference_tenths_mm": 80, "data_sheet_on": "2026-01-15",
            "coldest_tenths_celsius": 180, "warmest_tenths_celsius": 220,
            "dilutions": [{
                "parts_thousandths": 9_000, "tray_life_s": 28_800, "bottle_life_s": 86_400,
                "life_basis": "common practice, no source",
            }],
        });
        let developer = self
            .post(&self.steward, "/products", &developer)
            .await
            .made();
        let read = self
            .get(&self.steward, &format!("/products/{developer}"))
            .await;
        let dilution = &read.body["data"]["dilutions"][0]["id"];
        let mix = json!({ "tray_id": tray, "dilution_id": dilution, "volume_ul": 1_000_000 });
        self.post(&self.steward, "/mixes", &mix).await.made()
    }
}

/// The verdict of the room's one full tray.
async fn verdict(room: &Room) -> Value {
    let board = room.get(&room.steward, "/board").await.body;
    board["data"]["lines"][0]["trays"][0]["verdict"].clone()
}

#[tokio::test]
async fn a_mix_is_checked_flagged_and_taken_back() {
    let room = Room::open().await;
    let mix = room.full_tray().await;
    let member = room.person(Role::Member, ALL).await;
    let path = format!("/mixes/{mix}/check");
    // 17 °C is outside its 18 to 22 °C.
    let cold = json!({ "kind": "temperature", "value": 170 });
    let id = room.post(&member, &path, &cold).await.made();
    assert_eq!(verdict(&room).await, "test_first");
    let read = room.get(&member, &format!("/readings/{id}")).await.body;
    assert_eq!(read["data"]["kind"], "temperature");
    assert_eq!(read["data"]["value"], 170);
    assert_eq!(read["data"]["outcome"], "read");
    let flag = json!({ "groups": ["fixer"], "remark": "A print fell in" });
    let path = format!("/mixes/{mix}/flag");
    let flagged = room.post(&member, &path, &flag).await.made();
    assert_eq!(verdict(&room).await, "replace");
    let back = format!("/readings/{flagged}/take-back");
    let why = json!({ "reason": "The other tray" });
    let refused = room.post(&member, &back, &why).await;
    refused.assert_error(StatusCode::FORBIDDEN, "forbidden");
    room.post(&room.steward, &back, &why).await.made();
    assert_eq!(verdict(&room).await, "test_first");
    let again = room.post(&room.steward, &back, &why).await;
    again.assert_error(StatusCode::CONFLICT, "refused");
    let all = room.list("/readings").await;
    let ids: Vec<&Value> = all.iter().map(|one| &one["id"]).collect();
    assert_eq!(ids, [&json!(flagged), &json!(id)]);
    assert!(all[0]["undone_by"].is_i64(), "{}", all[0]);
}

#[tokio::test]
async fn what_is_wrong_with_a_check_is_named_by_the_fields_sent() {
    let room = Room::open().await;
    let mix = room.full_tray().await;
    let path = format!("/mixes/{mix}/check");
    let timed = json!({ "kind": "emergence", "value": 0, "tenths_celsius": 900 });
    let answer = room.post(&room.steward, &path, &timed).await;
    answer.assert_error(INVALID, "invalid");
    assert_eq!(answer.fields(), ["value", "tenths_celsius", "sample"]);
    let by_eye = json!({ "kind": "test_print" });
    let answer = room.post(&room.steward, &path, &by_eye).await;
    assert_eq!(answer.fields(), ["passed"]);
    // It is a developer.
    let other = json!({ "kind": "residual_silver", "passed": false });
    let answer = room.post(&room.steward, &path, &other).await;
    assert_eq!(answer.fields(), ["kind"]);
    let flagged = json!({ "kind": "contamination", "passed": false });
    let answer = room.post(&room.steward, &path, &flagged).await;
    assert_eq!(answer.fields(), ["kind"]);
    let path = format!("/mixes/{mix}/flag");
    let answer = room.post(&room.steward, &path, &json!({})).await;
    assert_eq!(answer.fields(), ["groups"]);
}

#[tokio::test]
async fn an_extension_is_refused_where_none_is_needed_or_none_may_be() {
    let room = Room::open().await;
    let mix = room.full_tray().await;
    let path = format!("/mixes/{mix}/extend");
    let hour = json!({ "minutes": 60, "reason": "Last prints" });
    let answer = room.post(&room.steward, &path, &hour).await;
    answer.assert_error(StatusCode::CONFLICT, "refused");
    for minutes in [-1, 0, 1_441, i64::MAX] {
        let endless = json!({ "minutes": minutes, "reason": "Last prints" });
        let answer = room.post(&room.steward, &path, &endless).await;
        assert_eq!(answer.fields(), ["minutes"], "{minutes}");
    }
}
