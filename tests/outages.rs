//! Power and fan: said once, shown everywhere until it is over. That people leave,
//! let air in and come back is common practice, no source.

#![expect(clippy::unwrap_used, reason = "what fails here fails the test")]

use serde_json::json;
use time::Duration;
use wetside::identity::Person;

use crate::api::room::{ALL, Room};
use crate::harness::{Answer, Browser, Stage, scenario};

use axum::http::StatusCode;
use wetside::rights::Role;

const ADVICE: &str = "Leave the room, let air in, and come back when it is over.";

/// What the pages of the room say is off.
fn off(answer: &Answer) -> Vec<String> {
    answer.page().all(".off .off-head")
}

async fn look(browser: &mut Browser, stage: &Stage, path: &str) -> Answer {
    browser.get(&stage.at(path)).await.expect(200)
}

/// Says that something went off just now.
async fn say_off(stage: &Stage, person: &Person, what: &str) -> Answer {
    let mut browser = stage.browser(person).await;
    let page = look(&mut browser, stage, "/outages").await;
    let form = page.page().form("It is off").unwrap().choose(what);
    browser.submit_and_follow(&form).await.expect(200)
}

#[test]
fn every_page_of_the_room_says_so_until_it_is_over() {
    scenario(async |stage| {
        let bench = stage.bench().await;
        let pages = [
            "/board".to_owned(),
            "/sheets/new".to_owned(),
            format!("/trays/{}", bench.tray),
            "/book".to_owned(),
        ];
        let mut member = stage.browser(&stage.cast.member).await;
        for path in &pages {
            assert!(off(&look(&mut member, &stage, path).await).is_empty());
        }
        let said = say_off(&stage, &stage.cast.trained, "The fan").await;
        // 12:00 UTC is 13:00 in Berlin (IANA time zone database, file europe).
        let since = said.page().first(".off-now h2").unwrap();
        assert_eq!(since, "The fan has been off since 13:00.");
        for path in &pages {
            let page = look(&mut member, &stage, path).await;
            assert_eq!(
                off(&page),
                ["The fan has been off since 13:00 Wed."],
                "{path}"
            );
            assert!(page.page().main().contains(ADVICE), "{path}");
        }
        let mut nobody = stage.nobody();
        let help = look(&mut nobody, &stage, "/emergency").await;
        assert_eq!(off(&help).len(), 1);
        // It is over: said by somebody else.
        let page = look(&mut member, &stage, "/outages").await;
        stage.pass(Duration::minutes(25));
        let form = page.page().form("The fan is on again").unwrap();
        let page = member.submit_and_follow(&form).await.expect(200);
        let was = page.page().first(".ledger-said").unwrap();
        let whole = "The fan was off from 13:00 until 13:25.";
        assert!(was.starts_with(whole), "{was}");
        for path in &pages {
            assert!(off(&look(&mut member, &stage, path).await).is_empty());
        }
        assert!(off(&look(&mut nobody, &stage, "/emergency").await).is_empty());
    });
}

#[test]
fn ages_run_on_while_the_power_is_off() {
    scenario(async |stage| {
        stage.bench().await;
        say_off(&stage, &stage.cast.member, "The power").await;
        // An open tray of it lasts eight hours: common practice, no source.
        stage.pass(Duration::hours(8));
        let mut member = stage.browser(&stage.cast.member).await;
        let board = look(&mut member, &stage, "/board").await;
        assert_eq!(off(&board), ["The power has been off since 13:00 Wed."]);
        let notices = board.page().all(".notice-board li");
        assert_eq!(notices.len(), 1, "{notices:?}");
    });
}

#[test]
fn the_same_thing_is_off_once_and_over_once() {
    scenario(async |stage| {
        say_off(&stage, &stage.cast.member, "The power").await;
        let mut browser = stage.browser(&stage.cast.trained).await;
        let page = look(&mut browser, &stage, "/outages").await;
        let form = page.page().form("It is off").unwrap();
        let again = browser
            .submit(&form.clone().choose("The power"))
            .await
            .expect(422);
        let said = again.page().problems();
        assert_eq!(said[0].0, "what");
        assert!(said[0].1.contains("Say that it is over first"), "{said:?}");
        // The fan is another thing.
        browser.submit(&form.choose("The fan")).await.expect(303);
        let page = look(&mut browser, &stage, "/board").await;
        assert_eq!(off(&page).len(), 2);
        let list = look(&mut browser, &stage, "/outages").await;
        let over = list.page().form("The power is on again").unwrap();
        browser.submit(&over).await.expect(303);
        // The same form counts once; another one is told that it is over.
        browser.submit(&over).await.expect(303);
        let key = list.page().form("It is off").unwrap();
        let mut other = stage.browser(&stage.cast.member).await;
        let fresh = other.get(&stage.at("/outages")).await.expect(200);
        let fresh = fresh.page().form("It is off").unwrap();
        assert_ne!(fresh.value("key"), key.value("key"));
        let late = over.with("key", fresh.value("key").unwrap());
        let refused = other.submit(&late).await.expect(422);
        let said = refused.page().first(".summary").unwrap();
        assert!(said.contains("already that this is over"), "{said}");
    });
}

#[test]
fn what_happened_earlier_is_said_with_its_time_and_mended_beside_it() {
    scenario(async |stage| {
        let mut browser = stage.browser(&stage.cast.member).await;
        let page = look(&mut browser, &stage, "/outages").await;
        let form = page.page().form("It is off").unwrap();
        let earlier = form.choose("The power").choose("Earlier");
        for (time, wrong) in [("evening", "no date and time"), ("14:00", "in the future")] {
            let mended = browser.submit(&earlier.clone().fill("Time", time)).await;
            let problems = mended.expect(422).page().problems();
            assert_eq!(problems[0].0, "time");
            assert!(problems[0].1.contains(wrong), "{problems:?}");
        }
        let from = earlier.fill("Time", "11:10");
        let page = browser.submit_and_follow(&from).await.expect(200);
        let since = page.page().first(".off-now h2").unwrap();
        assert_eq!(since, "The power has been off since 11:10.");
        let links = page.page().links();
        let ends = links
            .iter()
            .find(|(words, _)| words.starts_with("It was on again"));
        let (_, href) = ends.unwrap();
        let page = browser.get(href).await.expect(200);
        let earlier = page.page().form("It is over").unwrap().choose("Earlier");
        let before = browser.submit(&earlier.clone().fill("Time", "11:00")).await;
        let problems = before.expect(422).page().problems();
        assert!(problems[0].1.contains("before it went off"), "{problems:?}");
        let until = earlier.fill("Time", "11:50");
        let page = browser.submit_and_follow(&until).await.expect(200);
        let was = page.page().first(".ledger-said").unwrap();
        assert!(
            was.starts_with("The power was off from 11:10 until 11:50."),
            "{was}"
        );
        // The page of one that is over offers no form.
        let over = browser.get(href).await.expect(200);
        assert!(over.page().form("It is over").is_none());
        let book = look(&mut browser, &stage, "/book?kind=outage_began").await;
        let said = book.page().all(".ledger-said");
        assert_eq!(said, ["The power went off."]);
    });
}

#[test]
fn only_those_who_note_say_so_and_no_other_room_hears_of_it() {
    scenario(async |stage| {
        let mut treasurer = stage.browser(&stage.cast.treasurer).await;
        let page = look(&mut treasurer, &stage, "/outages").await;
        assert!(page.page().form("It is off").is_none());
        treasurer.post(&stage.at("/outages"), &[]).await.expect(403);
        say_off(&stage, &stage.cast.steward, "The fan").await;
        let page = look(&mut treasurer, &stage, "/board").await;
        assert_eq!(off(&page).len(), 1);
        let mut neighbour = stage.browser(&stage.cast.neighbour).await;
        let board = format!("/rooms/{}/board", stage.other_slug);
        assert!(off(&neighbour.get(&board).await.expect(200)).is_empty());
    });
}

#[tokio::test]
async fn the_api_says_the_same() {
    let room = Room::open().await;
    let member = room.person(Role::Member, ALL).await;
    let soup = room
        .post(&member, "/outages", &json!({"what": "soup"}))
        .await;
    soup.assert_error(StatusCode::UNPROCESSABLE_ENTITY, "invalid");
    let early = json!({"what": "power", "happened_at": "2026-11-25T12:03:00Z"});
    let early = room.post(&member, "/outages", &early).await;
    assert_eq!(early.fields(), ["happened_at"]);
    let power = json!({"what": "power", "happened_at": "2026-11-25T11:30:00Z"});
    let id = room.post(&member, "/outages", &power).await.made();
    let board = room.get(&member, "/board").await.body["data"]["off"].clone();
    assert_eq!(board[0]["id"], id.as_str());
    assert_eq!(board[0]["began_at"], "2026-11-25T11:30:00Z");
    let again = room
        .post(&member, "/outages", &json!({"what": "power"}))
        .await;
    assert_eq!(again.fields(), ["what"]);
    let end = format!("/outages/{id}/end");
    let sooner = json!({"happened_at": "2026-11-25T11:29:00Z"});
    let sooner = room.post(&member, &end, &sooner).await;
    assert_eq!(sooner.fields(), ["happened_at"]);
    assert_eq!(room.post(&member, &end, &json!({})).await.made(), id);
    let over = room.post(&member, &end, &json!({})).await;
    over.assert_error(StatusCode::CONFLICT, "refused");
    let board = room.get(&member, "/board").await.body["data"]["off"].clone();
    assert_eq!(board, json!([]));
    let one = room.get(&member, &format!("/outages/{id}")).await.body;
    assert_eq!(one["data"]["ended_at"], "2026-11-25T12:00:00Z");
}
