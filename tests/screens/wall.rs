//! The board on the wall.

use axum::body::Body;
use axum::http::Method;
use time::Duration;

use super::{look, state};
use crate::access::screens::paired;
use crate::harness::{Answer, Browser, scenario};

async fn ask(wall: &mut Browser, tag: &str) -> Answer {
    let request = wall
        .request(Method::GET, "/screen")
        .header("if-none-match", tag);
    wall.send(request.body(Body::empty()).unwrap()).await
}

fn tag(answer: &Answer) -> String {
    answer.headers["etag"].to_str().unwrap().to_owned()
}

#[test]
fn the_wall_shows_the_board_and_leads_nowhere_but_to_emergency() {
    scenario(async |stage| {
        let bench = stage.bench().await;
        let (_, mut wall) = paired(&stage, "board").await;
        let board = look(&mut wall, "/screen").await;
        let page = board.page();
        assert_eq!(page.all(".verdict-word"), ["Ready"]);
        assert_eq!(
            page.first("#present .present-count").unwrap(),
            "0 of 10 places taken"
        );
        assert_eq!(page.all(".as-of"), ["Drawn at 13:00 Wed"]);
        let emergency = stage.at("/emergency");
        assert_eq!(page.links(), [("Emergency".to_owned(), emergency.clone())]);
        let help = look(&mut wall, &emergency).await;
        let back = help.page().links();
        let back = back.iter().find(|(words, _)| words == "Back to the screen");
        assert_eq!(back.unwrap().1, "/screen");
        // The same bench as its members see it, a note later.
        let tag = tag(&board);
        ask(&mut wall, &tag).await.expect(304);
        stage.note(&stage.cast.member, &bench, 0, 80).await.unwrap();
        let board = ask(&mut wall, &tag).await.expect(200);
        assert_eq!(board.page().all(".verdict-word"), ["Test first"]);
    });
}

/// What is kept is never older than the book, whichever server wrote in it, nor
/// than the next moment at which something on it changes.
#[test]
fn what_is_kept_is_drawn_anew_after_an_entry_elsewhere_and_with_time() {
    scenario(async |stage| {
        let bench = stage.bench().await;
        let (_, wall) = paired(&stage, "board").await;
        let second = stage.installation.second();
        let mut there = wall.at_another_server(&second);
        let first = tag(&look(&mut there, "/screen").await);
        stage.note(&stage.cast.member, &bench, 0, 1).await.unwrap();
        let next = tag(&ask(&mut there, &first).await.expect(200));
        assert_ne!(next, first);
        // An open tray of it lasts eight hours: common practice, no source.
        stage.pass(Duration::hours(8));
        let over = ask(&mut there, &next).await.expect(200);
        assert_eq!(over.page().all(".verdict-word"), ["Replace"]);
        assert_eq!(over.page().all("#wall-notices li").len(), 1);
        second.database().close().await;
    });
}

/// A board can do nothing, and read nothing else.
#[test]
fn a_board_is_no_door_and_no_member() {
    scenario(async |stage| {
        let bench = stage.bench().await;
        let (_, mut wall) = paired(&stage, "board").await;
        for path in [
            "/screen/arrive",
            "/screen/note",
            "/screen/flag",
            "/screen/done",
        ] {
            wall.get(path).await.expect(403);
        }
        wall.post("/screen/arrive", &[]).await.expect(403);
        for path in [
            "/board".to_owned(),
            "/book".to_owned(),
            "/present".to_owned(),
            format!("/trays/{}", bench.tray),
        ] {
            let sent = wall.get(&stage.at(&path)).await.expect(303);
            assert!(sent.location().unwrap().starts_with("/log-in"), "{path}");
        }
        let api = format!("/api/v1/rooms/{}/board", stage.slug);
        wall.get(&api).await.expect(401);
        // Nor another room's board: the secret is one screen's.
        let board = look(&mut wall, "/screen").await;
        assert_eq!(state(&board), "board");
        assert!(!board.body.contains(&stage.other_slug));
    });
}
