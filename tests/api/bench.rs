//! The bench set up through JSON: steps, spaces, bottles, times and the wash. The
//! times are invented; that the last print that joins restarts the wash for all is
//! `common practice, no source`.

use axum::http::StatusCode;
use serde_json::{Value, json};
use time::Duration;
use wetside::rights::Role;

use super::room::{ALL, Room};

fn tray(line: &str, name: &str, step: Option<&str>) -> Value {
    let mut tray = json!({
        "line_id": line, "name": name,
        "inside_long_tenths_mm": 3_000, "inside_short_tenths_mm": 2_500,
        "inside_depth_tenths_mm": 600, "least_depth_tenths_mm": 50,
    });
    if let Some(step) = step {
        tray["step"] = json!(step);
    }
    tray
}

#[tokio::test]
async fn a_tray_has_a_step_and_a_line_a_space() {
    let room = Room::open().await;
    let line = room.id_of("/bench/lines", "First line").await;
    let fixer = tray(&line, "Fix", Some("first_fixer"));
    let id = room
        .post(&room.steward, "/bench/trays", &fixer)
        .await
        .made();
    let path = format!("/bench/trays/{id}");
    let read = room.get(&room.steward, &path).await;
    assert_eq!(read.body["data"]["step"], "first_fixer");
    // A client that knows no steps leaves the step alone.
    let renamed = tray(&line, "Fix 1", None);
    let answer = room.put(&room.steward, &path, &renamed).await;
    assert_eq!(answer.status, StatusCode::OK, "{}", answer.body);
    let read = room.get(&room.steward, &path).await;
    assert_eq!(read.body["data"]["step"], "first_fixer");
    assert_eq!(read.body["data"]["name"], "Fix 1");
    let unknown = tray(&line, "Fix 1", Some("third_fixer"));
    let answer = room.put(&room.steward, &path, &unknown).await;
    assert_eq!(answer.status, StatusCode::UNPROCESSABLE_ENTITY);

    let cellar = json!({ "name": "Cellar" });
    let space = room
        .post(&room.steward, "/bench/spaces", &cellar)
        .await
        .made();
    let path = format!("/bench/lines/{line}");
    let moved = json!({ "name": "First line", "space_id": space });
    let answer = room.put(&room.steward, &path, &moved).await;
    assert_eq!(answer.status, StatusCode::OK, "{}", answer.body);
    let read = room.get(&room.steward, &path).await;
    assert_eq!(read.body["data"]["space_id"], space.as_str());
    let gone = json!({ "name": "Cellar", "is_retired": true });
    let of_space = format!("/bench/spaces/{space}");
    let answer = room.put(&room.steward, &of_space, &gone).await;
    assert_eq!(answer.status, StatusCode::CONFLICT, "{}", answer.body);
    let answer = room
        .put(&room.steward, &path, &json!({ "name": "First line" }))
        .await;
    assert_eq!(answer.status, StatusCode::OK, "{}", answer.body);
    let answer = room.put(&room.steward, &of_space, &gone).await;
    assert_eq!(answer.status, StatusCode::OK, "{}", answer.body);
    // A space that is used no more takes no line.
    let answer = room.put(&room.steward, &path, &moved).await;
    assert_eq!(answer.fields(), ["space_id"]);
}

#[tokio::test]
async fn a_bottle_holds_what_a_bottle_can_hold() {
    let room = Room::open().await;
    let wrong = json!({ "name": "", "holds_ul": 49_999 });
    let answer = room.post(&room.steward, "/bench/bottles", &wrong).await;
    assert_eq!(answer.fields(), ["name", "holds_ul"]);
    let bottle = json!({ "name": "Brown", "holds_ul": 1_000_000 });
    let id = room
        .post(&room.steward, "/bench/bottles", &bottle)
        .await
        .made();
    let again = room.post(&room.steward, "/bench/bottles", &bottle).await;
    assert_eq!(again.fields(), ["name"]);
    let list = room.list("/bench/bottles").await;
    assert_eq!(list.len(), 1);
    assert_eq!(list[0]["id"], id.as_str());
    assert_eq!(list[0]["holds_ul"], 1_000_000);
}

/// Times of a class: the wash after the wash aid, where it goes through one, and
/// without it.
fn times(class: &str, with: Option<i64>, without: i64) -> Value {
    json!({
        "paper_class_id": class, "fix_s": 60, "longest_fix_s": 300, "rinse_s": 30,
        "wash_aid_s": with.map(|_| 600), "wash_with_aid_s": with,
        "wash_without_aid_s": without, "basis": "invented for this test",
    })
}

#[tokio::test]
async fn the_wash_goes_on_from_the_last_print_that_joined() {
    let room = Room::open().await;
    let member = room.person(Role::Member, ALL).await;
    let line = room.id_of("/bench/lines", "First line").await;
    let classes = room.list("/papers/classes").await;
    let class = |at: usize| classes[at]["id"].as_str().unwrap().to_owned();
    let path = format!("/bench/lines/{line}/finishing");
    let wash = format!("/bench/lines/{line}/wash");
    let print = json!({ "paper_class_id": class(0) });
    let unknown = room.post(&member, &wash, &print).await;
    assert_eq!(unknown.fields(), ["paper_class_id"]);
    let contrary = times(&class(0), Some(301), 300);
    let answer = room.put(&room.steward, &path, &contrary).await;
    assert_eq!(answer.fields(), ["wash_with_aid_s"]);
    for new in [
        times(&class(0), None, 300),
        times(&class(1), Some(1_200), 3_600),
    ] {
        let answer = room.put(&room.steward, &path, &new).await;
        assert_eq!(answer.status, StatusCode::OK, "{}", answer.body);
    }
    let read = room.get(&member, &path).await;
    assert_eq!(read.body["data"]["classes"].as_array().unwrap().len(), 2);
    assert_eq!(read.body["data"]["classes"][1]["wash_with_aid_s"], 1_200);

    let nothing = room.get(&member, &wash).await;
    assert_eq!(nothing.body["data"]["load"], Value::Null);
    let aided = json!({ "paper_class_id": class(1), "had_wash_aid": true });
    assert_eq!(
        room.post(&member, &wash, &aided).await.status,
        StatusCode::CREATED
    );
    room.clock.set(room.clock.now() + Duration::minutes(10));
    assert_eq!(
        room.post(&member, &wash, &print).await.status,
        StatusCode::CREATED
    );
    // No time is entered for this class after a wash aid.
    let never = json!({ "paper_class_id": class(0), "had_wash_aid": true });
    assert_eq!(
        room.post(&member, &wash, &never).await.fields(),
        ["paper_class_id"]
    );
    let load = room.get(&member, &wash).await.body["data"]["load"].clone();
    // Begun at 12:00, restarted at 12:10, and the longer 20 min counts.
    assert_eq!(load["first_joined_at"], "2026-11-25T12:00:00Z");
    assert_eq!(load["last_joined_at"], "2026-11-25T12:10:00Z");
    assert_eq!(load["ends_at"], "2026-11-25T12:30:00Z");
    assert_eq!(load["paper_class_id"], class(1).as_str());

    let empty = format!("{wash}/empty");
    let emptied = room.post(&member, &empty, &json!({})).await;
    assert_eq!(emptied.status, StatusCode::CREATED, "{}", emptied.body);
    let nothing = room.get(&member, &wash).await;
    assert_eq!(nothing.body["data"]["load"], Value::Null);
    let again = room.post(&member, &empty, &json!({})).await;
    assert_eq!(again.status, StatusCode::CONFLICT, "{}", again.body);
}
