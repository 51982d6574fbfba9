//! One steward hands the room over, another confirms it: two people, two entries.

#![expect(
    clippy::unwrap_used,
    clippy::panic,
    reason = "what fails here fails the test"
)]

use axum::http::StatusCode;
use serde_json::json;
use time::Duration;
use wetside::handover::{Part, digest};
use wetside::identity::Person;
use wetside::rights::Role;

use crate::access::house::somebody;
use crate::api::room::{ALL, Room};
use crate::harness::{Answer, Browser, Stage, scenario};

async fn second_steward(stage: &Stage) -> Person {
    somebody(stage, "second", stage.room, Role::Steward).await
}

async fn look(browser: &mut Browser, stage: &Stage, path: &str) -> Answer {
    browser.get(&stage.at(path)).await.expect(200)
}

/// The lines under a heading of the list, on a page.
fn lines(answer: &Answer, heading: &str) -> Vec<String> {
    let page = answer.page();
    let headings = page.all(".handed h3");
    let place = headings.iter().position(|each| each == heading);
    let place = place.unwrap_or_else(|| panic!("no {heading:?} in {headings:?}"));
    page.all(&format!(".handed section:nth-of-type({}) li", place + 1))
}

/// Opens a handover by the page and follows to its own.
async fn open(browser: &mut Browser, stage: &Stage, to: &Person) -> Answer {
    let page = look(browser, stage, "/handover").await;
    let form = page.page().form("Hand over").unwrap().choose(&to.name);
    browser.submit_and_follow(&form).await.expect(200)
}

#[test]
fn the_one_who_goes_opens_it_and_the_one_who_comes_confirms_it() {
    scenario(async |stage| {
        stage.bench().await;
        let second = second_steward(&stage).await;
        let mut goes = stage.browser(&stage.cast.steward).await;
        let mut comes = stage.browser(&second).await;
        let waiting = open(&mut goes, &stage, &second).await;
        assert_eq!(waiting.page().heading(), "Handover of the room");
        let standing = lines(&waiting, "What stands in the trays");
        assert_eq!(standing.len(), 1);
        let litre = "1+9, 1\u{a0}L, mixed Wed 25 Nov 2026, 13:00. Ready.";
        let litre = litre.replace('\u{a0}', " ");
        assert!(
            standing[0].replace('\u{a0}', " ").ends_with(&litre),
            "{standing:?}"
        );
        // The one who goes cannot confirm it for the one who comes.
        let confirm = "I have read the list and take over";
        assert!(waiting.page().form(confirm).is_none());
        let confirm_path = format!("{}/confirm", waiting.path);
        let key = waiting.page().form("Take it back").unwrap();
        let key = ("key".to_owned(), key.value("key").unwrap().to_owned());
        let refused = goes.post(&confirm_path, &[key]).await.expect(422);
        let said = refused.page().first(".summary").unwrap();
        assert!(
            said.contains("Only the steward whom the handover names"),
            "{said}"
        );
        // The one who comes is told, and finds it there.
        let board = look(&mut comes, &stage, "/handover").await;
        assert_eq!(board.page().all(".unread"), ["1 unread"]);
        let notices = look(&mut comes, &stage, "/notices").await;
        let links = notices.page().links();
        let told = links
            .iter()
            .find(|(words, _)| words.contains("hands this room over to you"));
        let (words, href) = told.unwrap();
        assert!(words.starts_with(&stage.cast.steward.name), "{words}");
        let page = comes.get(href).await.expect(200);
        assert_eq!(lines(&page, "What stands in the trays"), standing);
        stage.pass(Duration::minutes(5));
        let form = page.page().form(confirm).unwrap();
        let done = comes.submit_and_follow(&form).await.expect(200);
        let state = done.page().first(".lead").unwrap();
        assert!(
            state.contains("confirmed it Wed 25 Nov 2026, 13:05"),
            "{state}"
        );
        // Sent twice it counts once; the one who went is told.
        comes.submit(&form).await.expect(303);
        let notices = look(&mut goes, &stage, "/notices").await;
        assert!(notices.page().main().contains("has confirmed the list"));
        let page = goes.get(&waiting.path).await.expect(200);
        assert!(page.page().main().contains("Change your own role"));
        let book = look(&mut goes, &stage, "/book?noun=handover").await;
        assert_eq!(book.page().all(".ledger-said").len(), 2);
    });
}

#[test]
fn what_changes_while_it_waits_is_shown_beside_the_list() {
    scenario(async |stage| {
        stage.bench().await;
        let second = second_steward(&stage).await;
        let mut goes = stage.browser(&stage.cast.steward).await;
        let waiting = open(&mut goes, &stage, &second).await;
        assert!(!waiting.page().main().contains("New since then"));
        stage.pass(Duration::hours(9));
        let mut comes = stage.browser(&second).await;
        let page = comes.get(&waiting.path).await.expect(200);
        let said = page.page().main();
        assert!(said.contains("New since then"), "{said}");
        assert!(said.contains("First line, Developer: Replace."), "{said}");
        assert!(said.contains("Not so any more"), "{said}");
    });
}

#[test]
fn it_needs_another_steward_and_waits_for_one_at_a_time() {
    scenario(async |stage| {
        let mut goes = stage.browser(&stage.cast.steward).await;
        let page = look(&mut goes, &stage, "/handover").await;
        assert!(page.page().form("Hand over").is_none());
        assert!(page.page().main().contains("no other steward"));
        let second = second_steward(&stage).await;
        let page = look(&mut goes, &stage, "/handover").await;
        let form = page.page().form("Hand over").unwrap();
        let nobody = goes.submit(&form).await.expect(422);
        assert_eq!(nobody.page().problems()[0].0, "successor");
        for id in [stage.cast.member.id, stage.cast.steward.id] {
            let to = form.clone().with("successor", &id.to_string());
            let refused = goes.submit(&to).await.expect(422);
            assert_eq!(refused.page().problems()[0].0, "successor");
        }
        let waiting = open(&mut goes, &stage, &second).await;
        let page = look(&mut goes, &stage, "/handover").await;
        let form = page.page().form("Hand over").unwrap().choose(&second.name);
        let twice = goes.submit(&form).await.expect(422);
        let said = twice.page().first(".summary").unwrap();
        assert!(said.contains("take it back"), "{said}");
        // Taken back by the one who was to come: the other is told, and may try again.
        let mut comes = stage.browser(&second).await;
        let page = comes.get(&waiting.path).await.expect(200);
        let confirm = page
            .page()
            .form("I have read the list and take over")
            .unwrap();
        let back = page.page().form("Take it back").unwrap();
        let page = comes.submit_and_follow(&back).await.expect(200);
        assert!(
            page.page()
                .first(".lead")
                .unwrap()
                .contains("was taken back")
        );
        let fresh = look(&mut comes, &stage, "/handover").await;
        let fresh = fresh.page().form("Hand over").unwrap();
        let late = confirm.with("key", fresh.value("key").unwrap());
        let refused = comes.submit(&late).await.expect(422);
        let said = refused.page().first(".summary").unwrap();
        assert!(said.contains("confirmed or taken back before"), "{said}");
        let notices = look(&mut goes, &stage, "/notices").await;
        assert!(notices.page().main().contains("has taken back a handover"));
        open(&mut goes, &stage, &second).await;
    });
}

#[test]
fn the_list_names_what_is_open() {
    scenario(async |stage| {
        let mut steward = stage.browser(&stage.cast.steward).await;
        let page = look(&mut steward, &stage, "/handover").await;
        let missing = lines(&page, "Products without safety data");
        assert!(!missing.is_empty());
        assert!(lines(&page, "Off now").is_empty());
        assert_eq!(lines(&page, "Not on file for an emergency").len(), 6);
        let book = lines(&page, "The book");
        assert_eq!(book[0], "No checkpoint was made yet.");
        assert_eq!(book[1], "It was not verified yet.");
        let invited = look(&mut steward, &stage, "/members").await;
        let form = invited
            .page()
            .form("Make the link")
            .unwrap()
            .choose("Trained member");
        steward.submit(&form).await.expect(200);
        let outages = look(&mut steward, &stage, "/outages").await;
        let form = outages.page().form("It is off").unwrap().choose("The fan");
        steward.submit(&form).await.expect(303);
        steward
            .post(&stage.at("/checkpoints"), &[])
            .await
            .expect(303);
        let page = look(&mut steward, &stage, "/handover").await;
        let links = lines(&page, "Invitations and links that are open");
        assert_eq!(links.len(), 1);
        assert!(
            links[0].starts_with("Invitation as trained member, made by"),
            "{links:?}"
        );
        let off = lines(&page, "Off now");
        assert_eq!(off, ["The fan has been off since Wed 25 Nov 2026, 13:00."]);
        assert!(lines(&page, "The book")[0].starts_with("The last checkpoint is of entry"));
        let people = lines(&page, "Who keeps the room, and who is suspended");
        assert_eq!(people.len(), 2, "{people:?}");
    });
}

#[test]
fn a_member_sees_neither_the_list_nor_what_the_book_says_of_it() {
    scenario(async |stage| {
        let second = second_steward(&stage).await;
        let mut goes = stage.browser(&stage.cast.steward).await;
        let waiting = open(&mut goes, &stage, &second).await;
        let mut member = stage.browser(&stage.cast.member).await;
        member.get(&stage.at("/handover")).await.expect(403);
        member.get(&waiting.path).await.expect(403);
        let book = look(&mut member, &stage, "/book").await;
        assert!(!book.page().main().contains("hands the room over"));
    });
}

#[tokio::test]
async fn the_api_takes_two_people_as_well() {
    let room = Room::open().await;
    let second = room.person(Role::Steward, ALL).await;
    let sheet = room.get(&room.steward, "/handover").await.body;
    let tokens = sheet["data"]["parts"].as_array().unwrap().iter();
    let mut tokens = tokens.filter(|part| part["heading"] == "Tokens of programs and devices");
    let tokens = tokens.next().unwrap()["lines"].as_array().unwrap().len();
    assert_eq!(tokens, 2);
    let oneself = json!({"to_person_id": room.steward.person});
    let oneself = room.post(&room.steward, "/handovers", &oneself).await;
    assert_eq!(oneself.fields(), ["to_person_id"]);
    let to = json!({"to_person_id": second.person});
    let id = room.post(&room.steward, "/handovers", &to).await.made();
    let confirm = format!("/handovers/{id}/confirm");
    let alone = room.post(&room.steward, &confirm, &json!({})).await;
    alone.assert_error(StatusCode::CONFLICT, "refused");
    assert_eq!(room.post(&second, &confirm, &json!({})).await.made(), id);
    let one = room.get(&second, &format!("/handovers/{id}")).await.body;
    assert!(one["data"]["confirmed_seq"].is_i64(), "{one}");
    // The entry that confirms it holds the digest of the list that was shown.
    let parts: Vec<Part> = serde_json::from_value(one["data"]["parts"].clone()).unwrap();
    let seq = one["data"]["confirmed_seq"].as_i64().unwrap();
    let path = format!("/book?after={}&limit=1", seq - 1);
    let said = room.get(&second, &path).await.body.to_string();
    assert!(said.contains(&digest(&parts).unwrap()), "{said}");
    let back = format!("/handovers/{id}/withdraw");
    let late = room.post(&room.steward, &back, &json!({})).await;
    late.assert_error(StatusCode::CONFLICT, "refused");
}
