//! Workshops through JSON.

use axum::http::StatusCode;
use serde_json::{Value, json};
use wetside::rights::Role;

use crate::api::room::{ALL, Bearer, Room};

fn plan(leader: &Bearer) -> Value {
    json!({
        "title": "First prints", "leader_id": leader.person, "most_guests": 3,
        "begins_at": "2026-11-25T13:00:00Z", "ends_at": "2026-11-25T16:00:00Z",
    })
}

#[tokio::test]
async fn a_workshop_is_planned_opened_and_ended() {
    let room = Room::open().await;
    let member = room.person(Role::Member, ALL).await;
    let trained = room.person(Role::Trained, ALL).await;
    let id = room
        .post(&room.steward, "/workshops", &plan(&member))
        .await
        .made();
    let path = |rest: &str| format!("/workshops/{id}{rest}");
    let mut later = plan(&member);
    later["most_guests"] = json!(4);
    let put = room.put(&room.steward, &path(""), &later).await;
    assert_eq!(put.status, StatusCode::OK, "{}", put.body);
    let expected = json!({ "expected_at": "2026-11-25T18:00:00Z" });
    room.post(&member, "/presences", &expected).await.made();
    let read = room.get(&member, "/workshop-cautions").await.body["data"]["read"].clone();
    let unread = room
        .post(&member, &path("/open"), &json!({ "read": "" }))
        .await;
    unread.assert_error(StatusCode::CONFLICT, "refused");
    assert_eq!(
        room.post(&member, &path("/open"), &json!({ "read": read }))
            .await
            .made(),
        id
    );

    let names = json!({ "names": ["Ada Moss", "Bo Lind", "Cam Reed", "Dina Holt", "Eli Frost"] });
    let refused = room.post(&member, &path("/guests"), &names).await;
    assert_eq!(refused.fields(), ["names"]);
    let names = json!({ "names": ["Ada Moss", "Bo Lind"] });
    room.post(&trained, &path("/guests"), &names)
        .await
        .assert_error(StatusCode::FORBIDDEN, "forbidden");
    room.post(&member, &path("/guests"), &names).await.made();
    let names = async |who: &Bearer| {
        let read = room.get(who, &path("/guests")).await.body;
        let guests = read["data"]["guests"].as_array().unwrap().clone();
        guests
            .iter()
            .map(|guest| guest["name"].clone())
            .collect::<Vec<_>>()
    };
    assert_eq!(names(&member).await, ["Ada Moss", "Bo Lind"]);
    assert_eq!(names(&trained).await, [Value::Null, Value::Null]);
    let board = room.get(&trained, "/board").await.body["data"].clone();
    assert_eq!(board["guests"][0]["guests"], 2);
    assert_eq!(board["guests"][0]["workshop_id"], id.as_str());
    let one = room.get(&trained, &path("")).await.body["data"].clone();
    assert_eq!(one["standing"], "open");
    assert_eq!(one["most_guests"], 4);
    assert!(!one.to_string().contains("Moss"));

    goes_on_with_another(&room, &id, &trained).await;
}

/// Another member takes it over, and ends it.
async fn goes_on_with_another(room: &Room, id: &str, trained: &Bearer) {
    let path = |rest: &str| format!("/workshops/{id}{rest}");
    room.post(trained, &path("/take-over"), &json!({}))
        .await
        .assert_error(StatusCode::CONFLICT, "refused");
    room.post(trained, "/presences", &json!({})).await.made();
    room.post(trained, &path("/take-over"), &json!({}))
        .await
        .made();
    room.post(trained, &path("/sign-out"), &json!({ "guest_ids": [] }))
        .await
        .made();
    room.post(trained, &path("/end"), &json!({})).await.made();
    let list = room.list("/workshops").await;
    assert_eq!(list.len(), 1);
    assert_eq!(list[0]["standing"], "over");
    assert_eq!(list[0]["leader_id"], trained.person.to_string());
    assert_eq!(list[0]["is_confirmed"], true);
}

#[tokio::test]
async fn what_is_wrong_is_named_as_it_was_sent() {
    let room = Room::open().await;
    let member = room.person(Role::Member, ALL).await;
    let mut wrong = plan(&member);
    wrong["title"] = json!("");
    wrong["most_guests"] = json!(0);
    wrong["begins_at"] = json!("soon");
    let refused = room.post(&room.steward, "/workshops", &wrong).await;
    let mut fields = refused.fields();
    fields.sort_unstable();
    assert_eq!(fields, ["begins_at", "most_guests", "title"]);
    let mut wrong = plan(&member);
    wrong["leader_id"] = json!(uuid::Uuid::nil());
    let refused = room.post(&room.steward, "/workshops", &wrong).await;
    assert_eq!(refused.fields(), ["leader_id"]);
    let id = room
        .post(&room.steward, "/workshops", &plan(&member))
        .await
        .made();
    let path = format!("/workshops/{id}/call-off");
    let refused = room
        .post(&room.steward, &path, &json!({ "reason": " " }))
        .await;
    assert_eq!(refused.fields(), ["reason"]);
    let off = json!({ "reason": "The fan is away" });
    room.post(&room.steward, &path, &off).await.made();
    let one = room.get(&member, &format!("/workshops/{id}")).await.body["data"].clone();
    assert_eq!(one["standing"], "called_off");
    assert_eq!(one["called_off_reason"], "The fan is away");
}

#[tokio::test]
async fn a_note_says_for_which_workshop_it_is() {
    let room = Room::open().await;
    let member = room.person(Role::Member, ALL).await;
    let id = room
        .post(&room.steward, "/workshops", &plan(&member))
        .await
        .made();
    let expected = json!({ "expected_at": "2026-11-25T18:00:00Z" });
    room.post(&member, "/presences", &expected).await.made();
    let read = room.get(&member, "/workshop-cautions").await.body["data"]["read"].clone();
    let line = room.list("/bench/lines").await[0]["id"].clone();
    let note = json!({
        "line_id": line, "paper_class_id": room.id_of("/papers/classes", "RC").await,
        "sheet_size_id": room.list("/papers/sheet-sizes").await[0]["id"],
        "sheets": 3, "is_unknown_tray": true, "workshop_id": id,
    });
    let early = room.post(&member, "/notes", &note).await;
    assert_eq!(early.fields(), ["workshop_id"]);
    room.post(
        &member,
        &format!("/workshops/{id}/open"),
        &json!({ "read": read }),
    )
    .await
    .made();
    let made = room.post(&member, "/notes", &note).await.made();
    let kept = room.get(&member, &format!("/notes/{made}")).await.body;
    assert_eq!(kept["data"]["workshop_id"], id.as_str());
}
