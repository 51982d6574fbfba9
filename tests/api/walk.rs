//! A day at the bench through JSON.

use axum::http::StatusCode;
use serde_json::{Value, json};
use time::Duration;
use wetside::rights::Role;

use super::room::{ALL, Answer, Bearer, Room, START};

const REFUSED: StatusCode = StatusCode::CONFLICT;

/// A room with a tray and a developer that may be mixed.
struct Bench {
    room: Room,
    trained: Bearer,
    member: Bearer,
    line: String,
    tray: String,
    product: String,
    dilution: String,
}

impl Bench {
    async fn lay() -> Self {
        let room = Room::open().await;
        let line = room.id_of("/bench/lines", "First line").await;
        let tray = json!({
            "line_id": line, "name": "Developer",
            "inside_long_tenths_mm": 3_000, "inside_short_tenths_mm": 2_500,
            "inside_depth_tenths_mm": 600, "least_depth_tenths_mm": 50,
        });
        let tray = room.post(&room.steward, "/bench/trays", &tray).await.made();
        let product = room.id_of("/products", "Neutral paper developer").await;
        let read = room
            .get(&room.steward, &format!("/products/{product}"))
            .await;
        let dilutions = read.body["data"]["dilutions"].as_array().unwrap();
        let weak = dilutions
            .iter()
            .find(|each| each["parts_thousandths"] == 9_000);
        Self {
            trained: room.person(Role::Trained, ALL).await,
            member: room.person(Role::Member, ALL).await,
            dilution: weak.unwrap()["id"].as_str().unwrap().to_owned(),
            line,
            tray,
            product,
            room,
        }
    }

    /// Sends the product back as it was read, with the date of its sheet.
    async fn enter_safety_data(&self) {
        let path = format!("/products/{}", self.product);
        let read = self.room.get(&self.room.steward, &path).await;
        let mut body = read.body["data"].clone();
        let fields = body.as_object_mut().unwrap();
        fields.remove("id");
        fields.remove("version");
        for dilution in body["dilutions"].as_array_mut().unwrap() {
            dilution.as_object_mut().unwrap().remove("id");
        }
        body["data_sheet_on"] = json!("2026-01-15");
        body["hazard_codes"] = json!(["H315", "H319", "EUH208"]);
        body["precaution_codes"] = json!(["P280", "P305+P351+P338"]);
        let answer = self.room.put(&self.room.steward, &path, &body).await;
        assert_eq!(answer.status, StatusCode::OK, "{}", answer.body);
        let now = self.room.get(&self.room.steward, &path).await.body;
        assert_eq!(now["data"]["version"], 2);
        // The figures were not changed, so their dilutions are the same.
        assert_eq!(now["data"]["dilutions"], read.body["data"]["dilutions"]);
    }

    async fn mix(&self, who: &Bearer, volume_ul: i64) -> Answer {
        let body = json!({
            "tray_id": self.tray, "dilution_id": self.dilution, "volume_ul": volume_ul,
        });
        self.room.post(who, "/mixes", &body).await
    }

    async fn note(&self, who: &Bearer, sheets: i64) -> Answer {
        self.room
            .post(who, "/notes", &self.sheets(sheets).await)
            .await
    }

    async fn sheets(&self, sheets: i64) -> Value {
        json!({
            "line_id": self.line,
            "paper_class_id": self.room.id_of("/papers/classes", "RC").await,
            "sheet_size_id": self.room.id_of("/papers/sheet-sizes", "8×10 in").await,
            "sheets": sheets,
        })
    }

    async fn read(&self, mix: &str) -> Value {
        let answer = self.room.get(&self.member, &format!("/mixes/{mix}")).await;
        assert_eq!(answer.status, StatusCode::OK, "{}", answer.body);
        answer.body["data"].clone()
    }
}

#[tokio::test]
async fn mix_note_undo_discard() {
    let bench = Bench::lay().await;
    let room = &bench.room;
    bench
        .mix(&bench.trained, 1_000_000)
        .await
        .assert_error(REFUSED, "refused");
    bench.enter_safety_data().await;
    let early = bench.note(&bench.member, 6).await;
    early.assert_error(StatusCode::UNPROCESSABLE_ENTITY, "invalid");
    assert_eq!(early.fields(), ["line_id"]);

    let mix = bench.mix(&bench.trained, 1_000_000).await.made();
    let fresh = bench.read(&mix).await;
    assert_eq!(fresh["charged_ul"], 1_000_000);
    // One part in ten: arithmetic.
    assert_eq!(fresh["concentrate_ul"], 100_000);
    assert_eq!(fresh["spent_nl"], 0);
    assert_eq!(fresh["mixed_at"], "2026-11-25T12:00:00Z");
    assert_eq!(fresh["tray_id"], json!(bench.tray));
    let full = bench.mix(&bench.trained, 1_000_000).await;
    full.assert_error(REFUSED, "refused");

    // One litre at 1+9 takes 100 sheets of 8×10 in RC: common practice, no source.
    let hundred = bench.note(&bench.member, 100).await.made();
    assert_eq!(bench.read(&mix).await["spent_nl"], 1_000_000_000);
    let six = bench.note(&bench.member, 6).await.made();
    assert_eq!(bench.read(&mix).await["spent_nl"], 1_060_000_000);

    let undo = format!("/notes/{six}/undo");
    let undone = room.post(&bench.member, &undo, &json!({})).await;
    assert_eq!(undone.made(), six);
    assert_eq!(bench.read(&mix).await["spent_nl"], 1_000_000_000);
    let twice = room.post(&bench.member, &undo, &json!({})).await;
    twice.assert_error(REFUSED, "refused");
    let note = room.get(&bench.member, &format!("/notes/{six}")).await.body;
    assert_eq!(note["data"]["reversed_by"], undone.body["data"]["seq"]);

    room.clock.set(START + Duration::minutes(11));
    let late = format!("/notes/{hundred}/undo");
    let refused = room.post(&bench.member, &late, &json!({})).await;
    refused.assert_error(REFUSED, "refused");
    let why = room.post(&room.steward, &late, &json!({})).await;
    why.assert_error(StatusCode::UNPROCESSABLE_ENTITY, "invalid");
    assert_eq!(why.fields(), ["reason"]);

    let discard = json!({ "volume_ul": 950_000, "container": "Developer waste" });
    let path = format!("/mixes/{mix}/discard");
    room.post(&bench.member, &path, &discard)
        .await
        .assert_error(StatusCode::FORBIDDEN, "forbidden");
    assert_eq!(room.post(&bench.trained, &path, &discard).await.made(), mix);
    let gone = bench.read(&mix).await;
    assert_eq!(
        (gone["tray_id"].clone(), gone["discarded_at"].clone()),
        (Value::Null, json!("2026-11-25T12:11:00Z"))
    );
    assert!(room.list("/mixes").await.is_empty());
    let again = room.post(&bench.trained, &path, &discard).await;
    again.assert_error(REFUSED, "refused");
}

#[tokio::test]
async fn the_board_follows_the_bench() {
    let bench = Bench::lay().await;
    bench.enter_safety_data().await;
    let tray = || async {
        let board = bench.room.get(&bench.member, "/board").await.body;
        board["data"]["lines"][0]["trays"][0].clone()
    };
    assert_eq!(tray().await["verdict"], "nothing_recorded");
    assert_eq!(tray().await["mix_id"], Value::Null);
    let mix = bench.mix(&bench.trained, 1_000_000).await.made();
    let ready = tray().await;
    assert_eq!(ready["verdict"], "ready");
    assert_eq!(ready["mix_id"], json!(mix));
    // The specification's section 4: from 80 % of a life on, test before use.
    assert_eq!(ready["changes"]["to"], "test_first");
    // One litre at 1+9 takes 100 sheets of 8×10 in RC: common practice, no source.
    for (sheets, verdict) in [
        (79, "ready"),
        (1, "test_first"),
        (19, "test_first"),
        (1, "replace"),
    ] {
        bench.note(&bench.member, sheets).await.made();
        assert_eq!(tray().await["verdict"], verdict);
    }
    assert!(tray().await["reason"].as_str().unwrap().contains("100"));
}

#[tokio::test]
async fn volumes_are_held_to_the_tray() {
    let bench = Bench::lay().await;
    bench.enter_safety_data().await;
    // 300 × 250 × 60 mm hold 4.5 L; 5 mm cover a print with 0.375 L: arithmetic.
    for (volume_ul, words) in [
        (4_500_001, "4.5\u{a0}L at most"),
        (374_999, "0.375\u{a0}L at least"),
        (999, "1 ml to 1000 L"),
    ] {
        let answer = bench.mix(&bench.trained, volume_ul).await;
        answer.assert_error(StatusCode::UNPROCESSABLE_ENTITY, "invalid");
        assert_eq!(answer.fields(), ["volume_ul"]);
        let said = answer.body["error"]["fields"][0]["sentence"]
            .as_str()
            .unwrap();
        assert!(said.contains(words), "{said}");
    }
    let mix = bench.mix(&bench.trained, 4_500_000).await.made();
    let path = format!("/mixes/{mix}/discard");
    let more = json!({ "volume_ul": 4_500_001, "container": "Developer waste" });
    let answer = bench.room.post(&bench.trained, &path, &more).await;
    answer.assert_error(StatusCode::UNPROCESSABLE_ENTITY, "invalid");
    assert_eq!(answer.fields(), ["volume_ul"]);
}

#[tokio::test]
async fn notes_say_when() {
    let bench = Bench::lay().await;
    bench.enter_safety_data().await;
    bench.mix(&bench.trained, 1_000_000).await.made();
    let room = &bench.room;
    room.clock.set(START + Duration::hours(2));
    let mut body = bench.sheets(6).await;
    body["happened_at"] = json!("2026-11-25T14:30:00+01:00");
    let answer = room.post(&bench.member, "/notes", &body).await;
    let note = answer.made();
    let read = bench
        .room
        .get(&bench.member, &format!("/notes/{note}"))
        .await
        .body;
    assert_eq!(read["data"]["happened_at"], "2026-11-25T13:30:00Z");
    assert_eq!(read["data"]["recorded_at"], "2026-11-25T14:00:00Z");
    for (text, words) in [
        ("2026-11-25T14:02:01Z", "in the future"),
        ("2026-11-18T13:59:59Z", "too long ago"),
        ("yesterday", "no date and time"),
        ("2026-11-25", "no date and time"),
    ] {
        let mut body = bench.sheets(6).await;
        body["happened_at"] = json!(text);
        let answer = bench.room.post(&bench.member, "/notes", &body).await;
        answer.assert_error(StatusCode::UNPROCESSABLE_ENTITY, "invalid");
        assert_eq!(answer.fields(), ["happened_at"], "{text}");
        let said = answer.body["error"]["fields"][0]["sentence"]
            .as_str()
            .unwrap();
        assert!(said.contains(words), "{said}");
    }
    for count in [0, -1, 1_000] {
        let answer = bench.note(&bench.member, count).await;
        answer.assert_error(StatusCode::UNPROCESSABLE_ENTITY, "invalid");
        assert_eq!(answer.fields(), ["sheets"]);
    }
}

#[tokio::test]
async fn notes_come_newest_first_and_in_parts() {
    let bench = Bench::lay().await;
    bench.enter_safety_data().await;
    bench.mix(&bench.trained, 1_000_000).await.made();
    for sheets in 1..=5 {
        bench.note(&bench.member, sheets).await.made();
    }
    let part = bench.room.get(&bench.member, "/notes?limit=3").await.body;
    let counts = |part: &Value| -> Vec<i64> {
        let data = part["data"].as_array().unwrap();
        data.iter()
            .map(|each| each["sheets"].as_i64().unwrap())
            .collect()
    };
    assert_eq!(counts(&part), [5, 4, 3]);
    let next = part["next"].as_str().unwrap();
    let rest = bench
        .room
        .get(&bench.member, &format!("/notes?limit=3&after={next}"))
        .await
        .body;
    assert_eq!(counts(&rest), [2, 1]);
    assert!(rest.get("next").is_none());
}
