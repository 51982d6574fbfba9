//! Papers, products and the bench: set, retired, kept apart by name.

use axum::http::StatusCode;
use serde_json::json;

use super::room::Room;

const INVALID: StatusCode = StatusCode::UNPROCESSABLE_ENTITY;

#[tokio::test]
async fn a_size_is_added_changed_and_retired() {
    let room = Room::open().await;
    let size = json!({ "name": "10×12 in", "long_tenths_mm": 3_048, "short_tenths_mm": 2_540 });
    let id = room
        .post(&room.steward, "/papers/sheet-sizes", &size)
        .await
        .made();
    let path = format!("/papers/sheet-sizes/{id}");
    let read = room.get(&room.steward, &path).await.body;
    assert_eq!(
        read["data"],
        json!({
            "id": id, "name": "10×12 in", "long_tenths_mm": 3_048, "short_tenths_mm": 2_540,
            "is_retired": false,
        })
    );
    let mut retired = size.clone();
    retired["is_retired"] = json!(true);
    assert_eq!(
        room.put(&room.steward, &path, &retired).await.status,
        StatusCode::OK
    );
    let last = room.list("/papers/sheet-sizes").await.pop().unwrap();
    assert_eq!(
        (last["id"].clone(), last["is_retired"].clone()),
        (json!(id), json!(true))
    );
    let taken = room.post(&room.steward, "/papers/sheet-sizes", &size).await;
    taken.assert_error(INVALID, "invalid");
    assert_eq!(taken.fields(), ["name"]);
    let mut other = size;
    other["name"] = json!("Else");
    let nowhere = format!("/papers/sheet-sizes/{}", room.id);
    let nowhere = room.put(&room.steward, &nowhere, &other).await;
    nowhere.assert_error(StatusCode::NOT_FOUND, "not_found");
}

#[tokio::test]
async fn a_full_tray_is_not_retired() {
    let room = Room::open().await;
    let second = json!({ "name": "Second", "position": 2 });
    let line = room
        .post(&room.steward, "/bench/lines", &second)
        .await
        .made();
    let tray = json!({
        "line_id": line, "name": "Fixer", "inside_long_tenths_mm": 3_000,
        "inside_short_tenths_mm": 2_500, "inside_depth_tenths_mm": 600, "least_depth_tenths_mm": 50,
    });
    let id = room.post(&room.steward, "/bench/trays", &tray).await.made();
    let fixer = json!({
        "name": "Rapid fixer", "kind": "fixer", "groups": ["fixer", "ammonium", "thiosulfate"],
        "oxidises": false, "depth_reference_tenths_mm": 80, "data_sheet_on": "2026-01-15",
        "dilutions": [{
            "parts_thousandths": 4_000, "tray_life_s": 86_400, "bottle_life_s": 604_800,
            "life_basis": "common practice, no source",
        }],
    });
    let fixer = room.post(&room.steward, "/products", &fixer).await.made();
    let read = room
        .get(&room.steward, &format!("/products/{fixer}"))
        .await
        .body;
    let dilution = &read["data"]["dilutions"][0]["id"];
    let mix = json!({ "tray_id": id, "dilution_id": dilution, "volume_ul": 2_000_000 });
    let mix = room.post(&room.steward, "/mixes", &mix).await.made();
    let mut retired = tray.clone();
    retired["is_retired"] = json!(true);
    let path = format!("/bench/trays/{id}");
    room.put(&room.steward, &path, &retired)
        .await
        .assert_error(StatusCode::CONFLICT, "refused");

    let discard = json!({ "volume_ul": 2_000_000, "container": "Fixer waste" });
    let done = room
        .post(&room.steward, &format!("/mixes/{mix}/discard"), &discard)
        .await;
    assert_eq!(done.made(), mix);
    assert_eq!(
        room.put(&room.steward, &path, &retired).await.status,
        StatusCode::OK
    );
}

#[tokio::test]
async fn what_must_not_meet_is_refused_with_its_danger() {
    let room = Room::open().await;
    let line = room.id_of("/bench/lines", "First line").await;
    let mut mixes = Vec::new();
    for (name, kind, groups) in [
        ("Rapid fixer", "fixer", json!(["fixer", "thiosulfate"])),
        ("Stop bath", "stop_bath", json!(["acid", "stop_bath"])),
    ] {
        let tray = json!({
            "line_id": line, "name": name, "inside_long_tenths_mm": 3_000,
            "inside_short_tenths_mm": 2_500, "inside_depth_tenths_mm": 600,
            "least_depth_tenths_mm": 50,
        });
        let tray = room.post(&room.steward, "/bench/trays", &tray).await.made();
        let product = json!({
            "name": name, "kind": kind, "groups": groups, "oxidises": false,
            "depth_reference_tenths_mm": 80, "data_sheet_on": "2026-01-15",
            "dilutions": [{
                "parts_thousandths": 4_000, "tray_life_s": 86_400, "bottle_life_s": 604_800,
                "life_basis": "common practice, no source",
            }],
        });
        let product = room.post(&room.steward, "/products", &product).await.made();
        let read = room
            .get(&room.steward, &format!("/products/{product}"))
            .await
            .body;
        let dilution = &read["data"]["dilutions"][0]["id"];
        let mix = json!({ "tray_id": tray, "dilution_id": dilution, "volume_ul": 1_000_000 });
        mixes.push(room.post(&room.steward, "/mixes", &mix).await.made());
    }
    let into = json!({ "volume_ul": 1_000_000, "container": "Waste A" });
    let fixer = format!("/mixes/{}/discard", mixes[0]);
    assert_eq!(
        room.post(&room.steward, &fixer, &into).await.status,
        StatusCode::CREATED
    );
    let stop = format!("/mixes/{}/discard", mixes[1]);
    let answer = room.post(&room.steward, &stop, &into).await;
    answer.assert_error(INVALID, "invalid");
    assert_eq!(answer.fields(), ["container"]);
    let said = answer.body["error"]["fields"][0]["sentence"]
        .as_str()
        .unwrap();
    assert!(
        said.contains("sulfur dioxide") && said.contains("another container"),
        "{said}"
    );
}
