//! Film, what nobody counted, corrections and a sheet kept on paper, through JSON.

use axum::http::StatusCode;
use serde_json::{Value, json};
use time::Duration;
use wetside::rights::Role;

use super::room::{ALL, Bearer, Room};

const INVALID: StatusCode = StatusCode::UNPROCESSABLE_ENTITY;

/// A room with a fixer in a tray: 40 sheets and 20 rolls a litre, invented.
struct Bench {
    room: Room,
    member: Bearer,
    trained: Bearer,
    line: String,
    tray: String,
    mix: String,
}

impl Bench {
    async fn lay() -> Self {
        let room = Room::open().await;
        let line = room.id_of("/bench/lines", "First line").await;
        let class = room.id_of("/papers/classes", "RC").await;
        let tray = json!({
            "line_id": line, "name": "Fixer", "inside_long_tenths_mm": 3_000,
            "inside_short_tenths_mm": 2_500, "inside_depth_tenths_mm": 600,
            "least_depth_tenths_mm": 50,
        });
        let tray = room.post(&room.steward, "/bench/trays", &tray).await.made();
        let fixer = json!({
            "name": "Film and paper fixer", "kind": "fixer",
            "groups": ["fixer", "ammonium", "thiosulfate"], "oxidises": false,
            "depth_reference_tenths_mm": 80, "data_sheet_on": "2026-01-15",
            "dilutions": [{
                "parts_thousandths": 4_000, "tray_life_s": 86_400, "bottle_life_s": 604_800,
                "life_basis": "invented", "film_rolls_per_litre_thousandths": 20_000,
                "figures_basis": "invented",
                "capacities": [{
                    "paper_class_id": class, "sheets_per_litre_thousandths": 40_000,
                    "basis": "invented",
                }],
            }],
        });
        let fixer = room.post(&room.steward, "/products", &fixer).await.made();
        let read = room.get(&room.steward, &format!("/products/{fixer}")).await;
        let dilution = &read.body["data"]["dilutions"][0]["id"];
        let mix = json!({ "tray_id": tray, "dilution_id": dilution, "volume_ul": 1_000_000 });
        let mix = room.post(&room.steward, "/mixes", &mix).await.made();
        Self {
            member: room.person(Role::Member, ALL).await,
            trained: room.person(Role::Trained, ALL).await,
            room,
            line,
            tray,
            mix,
        }
    }

    async fn sheets(&self) -> Value {
        json!({
            "line_id": self.line,
            "paper_class_id": self.room.id_of("/papers/classes", "RC").await,
            "sheet_size_id": self.room.id_of("/papers/sheet-sizes", "8×10 in").await,
        })
    }

    async fn spent(&self) -> Value {
        let path = format!("/mixes/{}", self.mix);
        let read = self.room.get(&self.member, &path).await;
        read.body["data"]["spent_nl"].clone()
    }
}

/// A litre of 40 sheets or 20 rolls: a sheet is 25 ml, a roll 50. Source: arithmetic.
#[tokio::test]
async fn film_and_what_nobody_counted() {
    let bench = Bench::lay().await;
    let (room, member) = (&bench.room, &bench.member);
    let film = json!({ "line_id": bench.line, "rolls": 2 });
    let film = room.post(member, "/notes/film", &film).await.made();
    assert_eq!(bench.spent().await, 100_000_000);
    let read = room.get(member, &format!("/notes/{film}")).await.body;
    assert_eq!(read["data"]["is_film"], true);
    assert_eq!(read["data"]["baths"][0]["spent_nl"], 100_000_000);
    assert_eq!(read["data"]["baths"][0]["tray_id"], json!(bench.tray));
    let none = json!({ "line_id": bench.line, "rolls": 0 });
    let none = room.post(member, "/notes/film", &none).await;
    none.assert_error(INVALID, "invalid");
    assert_eq!(none.fields(), ["rolls"]);

    let mut sheets = bench.sheets().await;
    let neither = room.post(member, "/notes", &sheets).await;
    assert_eq!(neither.fields(), ["sheets"]);
    sheets["is_uncounted"] = json!(true);
    let note = room.post(member, "/notes", &sheets).await.made();
    let read = room.get(member, &format!("/notes/{note}")).await.body;
    assert_eq!(read["data"]["is_estimated"], true);
    // Five where nobody ever counted: from memory.
    assert_eq!(read["data"]["sheets"], 5);
    sheets["sheets"] = json!(3);
    let both = room.post(member, "/notes", &sheets).await;
    assert_eq!(both.fields(), ["sheets"]);
    sheets["is_uncounted"] = json!(false);
    sheets["is_toned"] = json!(true);
    let toned = room.post(member, "/notes", &sheets).await;
    assert_eq!(toned.fields(), ["is_toned"]);
    sheets["is_toned"] = json!(false);
    sheets["happened_at"] = json!("2026-11-25T09:00:00Z");
    let early = room.post(member, "/notes", &sheets).await;
    assert_eq!(early.fields(), ["line_id"]);
    sheets["is_unknown_tray"] = json!(true);
    let note = room.post(member, "/notes", &sheets).await.made();
    let read = room.get(member, &format!("/notes/{note}")).await.body;
    assert_eq!(read["data"]["baths"], json!([]));
}

#[tokio::test]
async fn a_steward_sets_a_note_right() {
    let bench = Bench::lay().await;
    let (room, member) = (&bench.room, &bench.member);
    let mut sheets = bench.sheets().await;
    sheets["sheets"] = json!(4);
    let note = room.post(member, "/notes", &sheets).await.made();
    let path = format!("/notes/{note}/correct");
    let wanted = json!({
        "paper_class_id": sheets["paper_class_id"], "sheet_size_id": sheets["sheet_size_id"],
        "sheets": 8, "reason": "Both boxes were counted",
    });
    let own = room.post(member, &path, &wanted).await;
    own.assert_error(StatusCode::FORBIDDEN, "forbidden");
    let mut silent = wanted.clone();
    silent["reason"] = json!("");
    let silent = room.post(&room.steward, &path, &silent).await;
    assert_eq!(silent.fields(), ["reason"]);
    let right = room.post(&room.steward, &path, &wanted).await;
    right.made();
    assert_eq!(bench.spent().await, 200_000_000);
    let notes = room.list("/notes").await;
    assert_eq!(notes[0]["sheets"], 8);
    assert_eq!(notes[0]["person_id"], json!(member.person));
    assert_eq!(notes[1]["reversed_by"], right.body["data"]["seq"]);
    let twice = room.post(&room.steward, &path, &wanted).await;
    twice.assert_error(StatusCode::CONFLICT, "refused");
}

#[tokio::test]
async fn a_sheet_kept_on_paper_is_whole_or_nothing() {
    let bench = Bench::lay().await;
    let room = &bench.room;
    room.clock.set(room.clock.now() + Duration::hours(3));
    let note = |at: &str, count: i64, mut note: Value| {
        note["person_id"] = json!(bench.member.person);
        note["happened_at"] = json!(at);
        note["sheets"] = json!(count);
        note
    };
    let check = json!({
        "person_id": bench.trained.person, "tray_id": bench.tray, "kind": "temperature",
        "value": 205, "happened_at": "2026-11-25T12:30:00Z",
    });
    let sheet = json!({
        "notes": [
            note("2026-11-25T13:00:00Z", 2, bench.sheets().await),
            note("2026-11-25T11:00:00Z", 2, bench.sheets().await),
        ],
        "checks": [check],
    });
    let path = "/bench-sheet";
    let refused = room.post(&bench.trained, path, &sheet).await;
    refused.assert_error(INVALID, "invalid");
    assert_eq!(refused.fields(), ["notes[1].line_id"]);
    assert_eq!(bench.spent().await, 0);
    let mut right = sheet.clone();
    right["notes"][1]["happened_at"] = json!("2026-11-25T12:10:00Z");
    let may_not = room.post(&bench.member, path, &right).await;
    may_not.assert_error(StatusCode::FORBIDDEN, "forbidden");
    let entered = room.post(&bench.trained, path, &right).await;
    let first = entered.made();
    let read = room.get(&bench.member, &format!("/notes/{first}")).await;
    assert_eq!(read.body["data"]["happened_at"], "2026-11-25T12:10:00Z");
    assert_eq!(read.body["data"]["person_id"], json!(bench.member.person));
    assert_eq!(bench.spent().await, 100_000_000);
    let readings = room.list("/readings").await;
    assert_eq!(readings[0]["person_id"], json!(bench.trained.person));
    let empty = room.post(&bench.trained, path, &json!({})).await;
    empty.assert_error(INVALID, "invalid");
    assert_eq!(empty.fields(), ["notes"]);
}
