//! The board is the one page a browser may keep: its tag is good for those who see
//! the same board, and for nobody else.

use axum::body::Body;
use axum::http::Method;
use axum::http::header::{ETAG, IF_NONE_MATCH};
use time::Duration;
use wetside::board::look;
use wetside::members::actions;
use wetside::rights::KeepMembers;

use super::checks;
use crate::access::house::House;
use crate::harness::{Answer, Browser, new_key, scenario};

/// Asks for a board that the browser may already have.
async fn ask(browser: &mut Browser, path: &str, tag: &str) -> Answer {
    let request = browser.request(Method::GET, path);
    let request = request.header(IF_NONE_MATCH, tag);
    browser.send(request.body(Body::empty()).unwrap()).await
}

fn tag_of(answer: &Answer) -> String {
    answer.headers[ETAG].to_str().unwrap().to_owned()
}

#[test]
fn a_tag_is_good_for_the_same_board_only() {
    scenario(async |stage| {
        let house = House::furnish(stage).await;
        let (stage, board) = (&house.stage, house.stage.at("/board"));
        let mut member = stage.browser(&stage.cast.member).await;
        let first = member.get(&board).await.expect(200);
        let tag = tag_of(&first);
        let again = ask(&mut member, &board, &tag).await.expect(304);
        assert_eq!(tag_of(&again), tag);
        assert!(again.body.is_empty());
        checks::headers(&again, "the board that is known");
        let among_others = format!("\"other\", {tag}");
        ask(&mut member, &board, &among_others).await.expect(304);

        // Somebody else of the same role sees the same bytes, without a name.
        let mut spare = stage.browser(&house.spare).await;
        let theirs = spare.get(&board).await.expect(200);
        assert_eq!(theirs.body, first.body);
        assert!(!first.body.contains(&stage.cast.member.name));
        ask(&mut spare, &board, &tag).await.expect(304);

        // Another role, a room of another steward, another display: other boards.
        let mut steward = stage.browser(&stage.cast.steward).await;
        ask(&mut steward, &board, &tag).await.expect(200);
        let mut stranger = stage.browser(&stage.cast.stranger).await;
        let elsewhere = format!("/rooms/{}/board", stage.other_slug);
        ask(&mut stranger, &elsewhere, &tag).await.expect(200);
        for display in ["dim", "safelight"] {
            member.keep("display", display);
            let other = ask(&mut member, &board, &tag).await.expect(200);
            assert_ne!(tag_of(&other), tag);
        }
    });
}

#[test]
fn a_tag_lets_nobody_in() {
    scenario(async |stage| {
        let house = House::furnish(stage).await;
        let (stage, board) = (&house.stage, house.stage.at("/board"));
        let mut spare = stage.browser(&house.spare).await;
        let tag = tag_of(&spare.get(&board).await.expect(200));
        let mut stranger = stage.browser(&stage.cast.stranger).await;
        ask(&mut stranger, &board, &tag).await.expect(404);
        let mut nobody = stage.nobody();
        ask(&mut nobody, &board, &tag).await.expect(303);

        let permit = stage.permit::<KeepMembers>(&stage.cast.steward).await;
        let app = &stage.installation.app;
        let suspended = actions::suspend(app, &permit.unwrap(), new_key(), house.spare.id).await;
        suspended.unwrap();
        // That entry moved the head; what matters is that the permit comes first.
        let mut member = stage.browser(&stage.cast.member).await;
        let now = tag_of(&member.get(&board).await.expect(200));
        for tag in [&tag, &now] {
            ask(&mut spare, &board, tag).await.expect(404);
        }
    });
}

#[test]
fn a_tag_grows_old_with_the_next_entry_and_with_time() {
    scenario(async |stage| {
        let house = House::furnish(stage).await;
        let (stage, board) = (&house.stage, house.stage.at("/board"));
        let mut member = stage.browser(&stage.cast.member).await;
        let first = tag_of(&member.get(&board).await.expect(200));
        let noted = stage.note(&stage.cast.member, &house.bench, 0, 1).await;
        noted.unwrap();
        let second = tag_of(&ask(&mut member, &board, &first).await.expect(200));
        assert_ne!(second, first);
        stage.pass(Duration::days(2));
        let mut member = stage.browser(&stage.cast.member).await;
        let third = ask(&mut member, &board, &second).await.expect(200);
        assert_ne!(tag_of(&third), second);
    });
}

/// Two servers over one database show one board, by one tag.
#[test]
fn a_tag_is_good_at_every_server() {
    scenario(async |stage| {
        let house = House::furnish(stage).await;
        let (stage, board) = (&house.stage, house.stage.at("/board"));
        let mut here = stage.browser(&stage.cast.member).await;
        let tag = tag_of(&here.get(&board).await.expect(200));
        let second = stage.installation.second();
        let mut there = here.at_another_server(&second);
        ask(&mut there, &board, &tag).await.expect(304);
        let noted = stage.note(&stage.cast.member, &house.bench, 0, 1).await;
        noted.unwrap();
        ask(&mut here, &board, &tag).await.expect(200);
        // What the second server does by itself several times a second.
        look(&second).await.unwrap();
        ask(&mut there, &board, &tag).await.expect(200);
        second.database().close().await;
    });
}
