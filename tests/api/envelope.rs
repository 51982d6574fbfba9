//! What is refused, how it is said, and lists in parts.

use axum::http::{Method, StatusCode};
use serde_json::{Value, json};

use super::room::{Room, Sent};

const UNPROCESSABLE: StatusCode = StatusCode::UNPROCESSABLE_ENTITY;

fn tray(line: &str) -> Value {
    json!({
        "line_id": line,
        "name": "Developer",
        "inside_long_tenths_mm": 3_000,
        "inside_short_tenths_mm": 2_500,
        "inside_depth_tenths_mm": 600,
        "least_depth_tenths_mm": 50,
    })
}

/// The good tray with one field of another value.
fn with(good: &Value, field: &str, value: Value) -> Value {
    let mut body = good.clone();
    body[field] = value;
    body
}

async fn assert_named(room: &Room, body: &Value, field: &str, words: &str) {
    let answer = room.post(&room.steward, "/bench/trays", body).await;
    answer.assert_error(UNPROCESSABLE, "invalid");
    assert_eq!(answer.fields(), [field], "{body}");
    let said = answer.body["error"]["fields"][0]["sentence"]
        .as_str()
        .unwrap();
    assert!(said.contains(words), "{field}: {said}");
}

#[tokio::test]
async fn unknown_missing_and_wrong_fields_are_named() {
    let room = Room::open().await;
    let good = tray(&room.id_of("/bench/lines", "First line").await);
    let mut without = good.clone();
    without.as_object_mut().unwrap().remove("name");
    assert_named(&room, &without, "name", "Fill this in").await;
    assert_named(
        &room,
        &with(&good, "colour", json!("red")),
        "colour",
        "no such field",
    )
    .await;
    for (field, value) in [
        ("inside_depth_tenths_mm", json!("deep")),
        ("inside_depth_tenths_mm", json!(60.5)),
        ("line_id", json!("first")),
        ("name", Value::Null),
    ] {
        assert_named(&room, &with(&good, field, value), field, "kind of value").await;
    }
    assert!(room.list("/bench/trays").await.is_empty());
}

#[tokio::test]
async fn values_are_held_to_what_they_may_be() {
    let room = Room::open().await;
    let good = tray(&room.id_of("/bench/lines", "First line").await);
    let (long, least) = ("inside_long_tenths_mm", "least_depth_tenths_mm");
    for (field, value, words) in [
        ("name", json!(" \u{7} "), "Fill this in"),
        ("name", json!("x".repeat(81)), "at most 80"),
        (long, json!(499), "50 mm to 3000 mm"),
        (long, json!(i64::MAX), "3000 mm"),
        (long, json!(2_499), "Swap them"),
        (least, json!(601), "not that deep"),
        ("line_id", json!(room.id), "those offered"),
    ] {
        assert_named(&room, &with(&good, field, value), field, words).await;
    }
    assert!(room.list("/bench/trays").await.is_empty());
    let made = room.post(&room.steward, "/bench/trays", &good).await;
    assert_eq!(made.status, StatusCode::CREATED);
}

#[tokio::test]
async fn everything_wrong_is_said_at_once() {
    let room = Room::open().await;
    let class = room.id_of("/papers/classes", "RC").await;
    let capacity = |sheets: i64, basis: &str| json!({ "paper_class_id": class, "sheets_per_litre_thousandths": sheets, "basis": basis });
    let body = json!({
        "name": "",
        "kind": "fixer",
        "groups": ["fixer"],
        "oxidises": false,
        "depth_reference_tenths_mm": 0,
        "hazard_codes": ["H315", "Harmful"],
        "precaution_codes": ["P280", "P280"],
        "data_sheet_on": "25.11.2026",
        "dilutions": [
            {
                "parts_thousandths": 4_000, "tray_life_s": 59, "bottle_life_s": 86_400,
                "life_basis": "sheet", "capacities": [capacity(999, "sheet"), capacity(50_000, "")],
            },
            {
                "parts_thousandths": 4_000, "tray_life_s": 60, "bottle_life_s": 60,
                "life_basis": "sheet",
            },
        ],
    });
    let answer = room.post(&room.steward, "/products", &body).await;
    answer.assert_error(UNPROCESSABLE, "invalid");
    let mut fields = answer.fields();
    fields.sort_unstable();
    assert_eq!(
        fields,
        [
            "data_sheet_on",
            "depth_reference_tenths_mm",
            "dilutions[0].capacities[0].sheets_per_litre_thousandths",
            "dilutions[0].capacities[1].basis",
            "dilutions[0].capacities[1].paper_class_id",
            "dilutions[0].tray_life_s",
            "dilutions[1].parts_thousandths",
            "hazard_codes",
            "name",
            "precaution_codes",
        ]
    );
    for (field, value, named) in [
        ("kind", json!("soup"), "kind"),
        ("groups", json!(["soup"]), "groups[0]"),
        (
            "dilutions",
            json!([{ "parts_thousandths": 1 }]),
            "dilutions[0].tray_life_s",
        ),
        ("dilutions", json!([{ "parts": 1 }]), "dilutions[0].parts"),
    ] {
        let mut body = body.clone();
        body[field] = value;
        let answer = room.post(&room.steward, "/products", &body).await;
        answer.assert_error(UNPROCESSABLE, "invalid");
        assert_eq!(answer.fields(), [named]);
    }
}

#[tokio::test]
async fn a_body_must_be_json_and_not_too_large() {
    let room = Room::open().await;
    let post = || {
        let sent = Sent::new(Method::POST, &room.at("/papers/classes"));
        sent.by(&room.steward).new_key()
    };
    let typed = || post().with("content-type", "application/json");
    let broken = room.send(typed().bytes(b"{\"name\": ".to_vec())).await;
    broken.assert_error(StatusCode::BAD_REQUEST, "broken_json");
    let untyped = room
        .send(post().bytes(b"{\"name\": \"RC\"}".to_vec()))
        .await;
    untyped.assert_error(StatusCode::UNSUPPORTED_MEDIA_TYPE, "not_json");
    let of = |length: usize| format!("{{\"name\":\"{}\"}}", "x".repeat(length - 11)).into_bytes();
    let large = room.send(typed().bytes(of(64 * 1_024 + 1))).await;
    large.assert_error(StatusCode::PAYLOAD_TOO_LARGE, "too_large");
    let full = room.send(typed().bytes(of(64 * 1_024))).await;
    full.assert_error(UNPROCESSABLE, "invalid");
    assert_eq!(full.fields(), ["name"]);
    let twice = typed().bytes(b"{\"name\":\"a\",\"name\":\"b\"}".to_vec());
    let twice = room.send(twice).await;
    twice.assert_error(UNPROCESSABLE, "invalid");
    assert_eq!(twice.fields(), ["name"]);
}

#[tokio::test]
async fn what_is_not_there_and_what_is_not_taken() {
    let room = Room::open().await;
    for path in [
        "/api/v1/no-such-thing",
        "/api/v1/rooms",
        "/api/v1/rooms/x/soup",
    ] {
        let answer = room
            .send(Sent::new(Method::GET, path).by(&room.steward))
            .await;
        answer.assert_error(StatusCode::NOT_FOUND, "no_such_route");
    }
    let sent = Sent::new(Method::DELETE, &room.at("/papers/classes")).by(&room.steward);
    let answer = room.send(sent).await;
    answer.assert_error(StatusCode::METHOD_NOT_ALLOWED, "method_not_allowed");
    let mut allowed: Vec<&str> = answer.header("allow").unwrap().split(',').collect();
    allowed.sort_unstable();
    assert_eq!(allowed, ["GET", "HEAD", "POST"]);
    let foreign = Sent::to("elsewhere.example", Method::GET, "/api/v1/openapi.json");
    let foreign = room.send(foreign).await;
    foreign.assert_error(StatusCode::MISDIRECTED_REQUEST, "other_host");
}

#[tokio::test]
async fn every_answer_carries_the_headers_of_safety() {
    let room = Room::open().await;
    let missing = Sent::new(Method::GET, "/api/v1/nothing");
    for answer in [
        room.get(&room.steward, "/papers/classes").await,
        room.send(missing).await,
    ] {
        assert_eq!(answer.header("cache-control"), Some("no-store"));
        assert_eq!(answer.header("x-content-type-options"), Some("nosniff"));
        let policy = answer.header("content-security-policy").unwrap();
        assert!(policy.starts_with("default-src 'none'"));
    }
}

#[tokio::test]
async fn lists_come_in_parts() {
    let room = Room::open().await;
    let whole = room.list("/papers/sheet-sizes").await;
    assert_eq!(whole.len(), 9);
    let (mut seen, mut after, mut parts) = (Vec::new(), String::new(), 0);
    loop {
        let path = format!("/papers/sheet-sizes?limit=4{after}");
        let part = room.get(&room.steward, &path).await.body;
        seen.extend(part["data"].as_array().unwrap().clone());
        parts += 1;
        match part.get("next") {
            Some(next) => after = format!("&after={}", next.as_str().unwrap()),
            None => break,
        }
    }
    assert_eq!((seen, parts), (whole, 3));
    for (query, field) in [
        ("limit=0", "limit"),
        ("limit=201", "limit"),
        ("limit=many", "limit"),
        ("after=nothing", "after"),
        ("offset=1", ""),
    ] {
        let answer = room
            .get(&room.steward, &format!("/papers/sheet-sizes?{query}"))
            .await;
        answer.assert_error(UNPROCESSABLE, "invalid");
        assert_eq!(answer.fields(), [field], "{query}");
    }
    let most = room
        .get(&room.steward, "/papers/sheet-sizes?limit=200")
        .await;
    assert_eq!(most.status, StatusCode::OK);
}
