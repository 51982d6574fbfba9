//! The change feed of the book.

use axum::http::StatusCode;
use serde_json::{Value, json};
use wetside::rights::Role;

use super::room::{ALL, Answer, Room};

fn seqs(answer: &Answer) -> Vec<i64> {
    assert_eq!(answer.status, StatusCode::OK, "{}", answer.body);
    let data = answer.body["data"].as_array().unwrap();
    data.iter()
        .map(|each| each["seq"].as_i64().unwrap())
        .collect()
}

#[tokio::test]
async fn it_gives_every_number_once_and_goes_on_from_any() {
    let room = Room::open().await;
    let whole = room.get(&room.steward, "/book?limit=500").await;
    let numbers = seqs(&whole);
    let last = i64::try_from(numbers.len()).unwrap();
    assert_eq!(numbers, (1..=last).collect::<Vec<_>>());
    assert!(last > 10 && whole.body.get("next").is_none());
    let (mut seen, mut after) = (Vec::new(), 0);
    loop {
        let part = room
            .get(&room.steward, &format!("/book?after={after}&limit=4"))
            .await;
        seen.extend(part.body["data"].as_array().unwrap().clone());
        match part.body["next"].as_str() {
            Some(next) => after = next.parse().unwrap(),
            None => break,
        }
    }
    assert_eq!(json!(seen), whole.body["data"]);
    let none = room
        .get(&room.steward, &format!("/book?after={last}"))
        .await;
    assert_eq!(none.body, json!({ "data": [] }));
    let made = room
        .post(
            &room.steward,
            "/papers/classes",
            &json!({ "name": "Warm tone" }),
        )
        .await;
    let new = room
        .get(&room.steward, &format!("/book?after={last}"))
        .await;
    assert_eq!(seqs(&new), [last + 1]);
    let entry = &new.body["data"][0]["shown"];
    assert_eq!(made.body["data"]["seq"], last + 1);
    assert_eq!(entry["kind"], "paper_class_set");
    assert_eq!(entry["actor"], json!(room.steward.person));
    assert_eq!(entry["payload"]["name"], "Warm tone");
    assert_eq!(
        entry["about"],
        json!([{ "noun": "paper_class", "id": made.body["data"]["id"] }])
    );
    for (query, field) in [
        ("limit=501", "limit"),
        ("limit=0", "limit"),
        ("after=x", "after"),
    ] {
        let answer = room.get(&room.steward, &format!("/book?{query}")).await;
        answer.assert_error(StatusCode::UNPROCESSABLE_ENTITY, "invalid");
        assert_eq!(answer.fields(), [field]);
    }
}

#[tokio::test]
async fn what_is_not_shown_keeps_its_number() {
    let room = Room::open().await;
    let one = room.person(Role::Member, ALL).await;
    let other = room.person(Role::Member, ALL).await;
    let joined = |answer: &Answer| -> Vec<Value> {
        let data = answer.body["data"].as_array().unwrap().iter();
        let shown = data.filter(|each| each["shown"]["kind"] == "joined");
        shown
            .map(|each| each["shown"]["payload"]["person"].clone())
            .collect()
    };
    let all = room.get(&room.steward, "/book?limit=500").await;
    assert_eq!(
        joined(&all),
        [
            json!(room.steward.person),
            json!(one.person),
            json!(other.person)
        ]
    );
    for who in [&one, &other] {
        let theirs = room.get(who, "/book?limit=500").await;
        assert_eq!(seqs(&theirs), seqs(&all));
        assert_eq!(joined(&theirs), [json!(who.person)]);
        let hidden = theirs.body["data"].as_array().unwrap().iter();
        let hidden: Vec<&Value> = hidden.filter(|each| each["shown"].is_null()).collect();
        assert_eq!(hidden.len(), 2);
        for entry in hidden {
            assert_eq!(entry.as_object().unwrap().len(), 2, "{entry}");
        }
    }
}
