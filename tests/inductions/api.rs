//! Topics, inductions and the gate as JSON.

use axum::http::StatusCode;
use serde_json::json;
use wetside::rights::Role;

use crate::api::room::{ALL, Room};

#[tokio::test]
async fn a_topic_keeps_people_out_until_they_are_inducted() {
    let room = Room::open().await;
    let member = room.person(Role::Member, ALL).await;
    let mut spills = json!({
        "title": "Spills", "body": "Say it aloud.", "required": "always", "good_months": null,
    });
    let topic = room.post(&room.steward, "/topics", &spills).await.made();
    let nothing = json!({});
    let barred = room.post(&member, "/presences", &nothing).await;
    barred.assert_error(StatusCode::CONFLICT, "refused");
    assert!(
        barred.body.to_string().contains("not inducted on Spills"),
        "{}",
        barred.body
    );

    let told = json!({ "person_ids": [member.person], "topic_ids": [topic] });
    let record = room.post(&room.steward, "/inductions", &told).await.made();
    let own = room.get(&member, "/own-inductions").await.body;
    assert_eq!(own["data"][0]["id"], record.as_str());
    assert_eq!(own["data"][0]["topics"][0]["good_until"], json!(null));
    assert_eq!(own["data"][0]["confirmed_at"], json!(null));
    // Confirming is the person's own affair: no token does it.
    room.post(&member, "/presences", &nothing)
        .await
        .assert_error(StatusCode::CONFLICT, "refused");
    let supervised = json!({ "person_id": member.person, "expected_at": "2026-11-25T14:00:00Z" });
    let presence = room.post(&room.steward, "/presences/supervised", &supervised);
    let presence = presence.await.made();
    let read = room
        .get(&member, &format!("/presences/{presence}"))
        .await
        .body;
    assert!(read["data"]["supervised_by"].is_string(), "{read}");

    let why = json!({ "reason": "Somebody else" });
    let path = format!("/inductions/{record}/withdraw");
    assert_eq!(room.post(&room.steward, &path, &why).await.made(), record);
    let twice = room.post(&room.steward, &path, &why).await;
    twice.assert_error(StatusCode::CONFLICT, "refused");
    let read = room
        .get(&member, &format!("/inductions/{record}"))
        .await
        .body;
    assert_eq!(read["data"]["withdrawn_reason"], "Somebody else");
    spills["body"] = json!("Say it aloud.\n\nThen wipe it up.");
    spills["asks_anew"] = json!(true);
    let put = room
        .put(&room.steward, &format!("/topics/{topic}"), &spills)
        .await;
    assert_eq!(put.status, StatusCode::OK, "{}", put.body);
    let read = room.get(&member, &format!("/topics/{topic}")).await.body;
    assert_eq!(read["data"]["counts_from_version"], 2);
}

#[tokio::test]
async fn others_records_are_nobodys() {
    let room = Room::open().await;
    let (one, other) = (
        room.person(Role::Member, ALL).await,
        room.person(Role::Treasurer, ALL).await,
    );
    let spills = json!({ "title": "Spills", "body": "Aloud.", "required": "offered" });
    let topic = room.post(&room.steward, "/topics", &spills).await.made();
    let told = json!({ "person_ids": [one.person], "topic_ids": [topic] });
    let record = room.post(&room.steward, "/inductions", &told).await.made();
    room.get(&other, "/inductions")
        .await
        .assert_error(StatusCode::FORBIDDEN, "forbidden");
    room.get(&other, &format!("/inductions/{record}"))
        .await
        .assert_error(StatusCode::NOT_FOUND, "not_found");
    let own = room.get(&other, "/own-inductions").await.body;
    assert_eq!(own["data"], json!([]));
    assert_eq!(room.list("/inductions").await.len(), 1);
}

#[tokio::test]
async fn what_is_wrong_is_named_as_it_was_sent() {
    let room = Room::open().await;
    let refused = room
        .post(
            &room.steward,
            "/topics",
            &json!({ "title": "", "body": " \n ", "required": "by_trait", "good_months": 0 }),
        )
        .await;
    assert_eq!(refused.fields(), ["title", "body", "good_months"]);
    for (more, field) in [
        (json!({ "required": "by_trait" }), "traits"),
        (json!({ "required": "by_product" }), "product_ids"),
        (
            json!({ "required": "by_product", "product_ids": [uuid::Uuid::nil()] }),
            "product_ids",
        ),
        (
            json!({ "required": "by_trait", "traits": ["toner", "toner"] }),
            "traits",
        ),
    ] {
        let mut topic = more.clone();
        topic["title"] = json!("Spills");
        topic["body"] = json!("Say it aloud.");
        let refused = room.post(&room.steward, "/topics", &topic).await;
        assert_eq!(refused.fields(), [field], "{more}");
    }
    let spills = json!({ "title": "Spills", "body": "Aloud.", "required": "offered" });
    let topic = room.post(&room.steward, "/topics", &spills).await.made();
    let member = room.person(Role::Member, ALL).await;
    for (told, field) in [
        (
            json!({ "person_ids": [], "topic_ids": [topic] }),
            "person_ids",
        ),
        (
            json!({ "person_ids": [member.person], "topic_ids": [] }),
            "topic_ids",
        ),
        (
            json!({ "person_ids": [uuid::Uuid::nil()], "topic_ids": [topic] }),
            "person_ids",
        ),
        (
            json!({ "person_ids": [member.person], "topic_ids": [topic], "given_on": "2126-01-01" }),
            "given_on",
        ),
    ] {
        let refused = room.post(&room.steward, "/inductions", &told).await;
        assert_eq!(refused.fields(), [field], "{told}");
    }
}
