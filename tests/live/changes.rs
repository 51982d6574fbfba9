//! What arrives when something changes: the parts that did, for everyone at once.

use time::Duration;
use tokio_util::sync::CancellationToken;
use wetside::board::{look, watch};
use wetside::rights::UndoNote;
use wetside::sheets::actions::{Undo, undo};

use super::reader::Reader;
use super::{Room, add_tray};
use crate::harness::{new_key, scenario};

#[test]
fn a_note_changes_its_own_tray_and_nothing_else() {
    scenario(async |stage| {
        let room = Room::of(stage).await;
        let before = room.last_id().await;
        let mut reader = room.resume(&room.stage.cast.treasurer, &before).await;
        // Nobody knows when the board that this entry named was drawn: all of it comes.
        let opening = reader.opening().await;
        assert_eq!(opening[0].parts().last(), Some(&"board-bench"));
        let mut spare = room.follow(&room.stage.cast.treasurer).await;
        spare.opening().await;
        room.note(6).await;
        let change = reader.until("change").await;
        assert_eq!(change.id, Some(room.last_id().await));
        assert_eq!(change.number("to"), change.number("from") + 1);
        assert!(before.starts_with(&format!("{}.", change.number("from"))));
        assert_eq!(change.parts(), [room.first_tray()]);
        let tray = change.part(&room.first_tray());
        assert!(
            tray.starts_with("<li ") && tray.ends_with("</li>"),
            "{tray}"
        );
        assert!(tray.contains("6\u{a0}% of its capacity used"), "{tray}");
        // Two of one role get the same bytes.
        assert_eq!(spare.until("change").await.text, change.text);
        assert_eq!(change.data["as_of"]["words"], "13:00 Wed");
    });
}

#[test]
fn a_note_arrives_from_another_server() {
    scenario(async |stage| {
        let room = Room::of(stage).await;
        let other = room.stage.installation.second();
        let stop = CancellationToken::new();
        let watching = tokio::spawn(watch(other.clone(), stop.clone()));
        let here = room.stage.browser(&room.stage.cast.member).await;
        let there = here.at_another_server(&other);
        let path = room.stage.at("/board/stream");
        let mut here = Reader::follow(&here, &path, None).await;
        let mut there = Reader::follow(&there, &path, None).await;
        here.opening().await;
        there.opening().await;
        room.note(6).await;
        let (here, there) = (here.until("change").await, there.until("change").await);
        assert_eq!(here.id, Some(room.last_id().await));
        assert_eq!(there.text, here.text);
        stop.cancel();
        watching.await.unwrap();
        other.database().close().await;
    });
}

#[test]
fn entries_that_change_nothing_on_the_board_only_move_it_on() {
    scenario(async |stage| {
        let room = Room::of(stage).await;
        let mut reader = room.follow(&room.stage.cast.member).await;
        reader.opening().await;
        // Who is suspended is nothing a member sees, and nothing a board shows.
        super::ending::suspend(&room.stage, &room.stage.cast.treasurer).await;
        let change = reader.until("change").await;
        assert_eq!(change.id, Some(room.last_id().await));
        assert!(change.parts().is_empty(), "{:?}", change.parts());
    });
}

#[test]
fn a_tray_more_brings_the_whole_bench() {
    scenario(async |stage| {
        let room = Room::of(stage).await;
        let mut reader = room.follow(&room.stage.cast.member).await;
        reader.opening().await;
        let third = add_tray(&room.stage, &room.bench, "Third developer").await;
        let change = reader.until("change").await;
        assert_eq!(change.parts(), ["board-glance", "board-bench"]);
        let bench = change.part("board-bench");
        assert!(bench.contains(&format!("id=\"tray-{third}\"")), "{bench}");
    });
}

#[test]
fn a_verdict_that_changes_by_itself_has_no_id() {
    scenario(async |stage| {
        let room = Room::of(stage).await;
        let mut reader = room.follow(&room.stage.cast.member).await;
        reader.opening().await;
        // Longer than any working developer lives in a tray.
        room.stage.pass(Duration::days(3));
        look(&room.stage.installation.app).await.unwrap();
        let change = reader.until("change").await;
        assert_eq!(change.id, None);
        assert_eq!(change.number("from"), change.number("to"));
        let tray = change.part(&room.first_tray());
        assert!(tray.contains("data-live-verdict=\"Replace\""), "{tray}");
        assert!(change.parts().contains(&"board-notices"));
        // The next entry goes on from there.
        room.mix().await;
        let next = reader.until("change").await;
        assert_eq!(next.id, Some(room.last_id().await));
        assert_eq!(next.number("from"), change.number("to"));
    });
}

#[test]
fn a_member_is_sent_nothing_that_only_others_may_do() {
    scenario(async |stage| {
        let room = Room::of(stage).await;
        let cast = &room.stage.cast;
        let mut member = room.follow(&cast.member).await;
        let mut trained = room.follow(&cast.trained).await;
        let mixing = format!("/trays/{}/mix", room.second);
        let shown = member.opening().await;
        assert!(!shown[0].text.contains(&mixing));
        let shown = trained.opening().await;
        assert!(shown[0].text.contains(&mixing));
        let third = add_tray(&room.stage, &room.bench, "Third developer").await;
        let mixing = format!("/trays/{third}/mix");
        assert!(!member.until("change").await.text.contains(&mixing));
        assert!(trained.until("change").await.text.contains(&mixing));
    });
}

#[test]
fn ones_own_notices_are_counted_for_oneself() {
    scenario(async |stage| {
        let room = Room::of(stage).await;
        let cast = &room.stage.cast;
        let mut member = room.follow(&cast.member).await;
        let mut spare = room.follow(&cast.trained).await;
        assert_eq!(member.until("notices").await.number("unread"), 0);
        assert_eq!(spare.until("notices").await.number("unread"), 0);
        let noted = room.note(6).await;
        let wrong = Undo {
            pass_id: noted.id("pass").unwrap(),
            reason: "counted twice".to_owned(),
        };
        let permit = room.stage.permit::<UndoNote>(&cast.steward).await.unwrap();
        let app = &room.stage.installation.app;
        undo(app, &permit, new_key(), wrong).await.unwrap();
        let told = member.until("notices").await;
        assert_eq!((told.number("unread"), told.id), (1, None));
        // Nobody else hears of it: the next that comes to them is a change or a beat.
        for _ in 0..3 {
            let event = spare.next().await.unwrap();
            assert_ne!(event.name, "notices");
        }
    });
}
