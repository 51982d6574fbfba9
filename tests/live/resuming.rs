//! Coming back: exactly what was missed, or the page anew.

use futures_util::future::join_all;
use scraper::{Html, Selector};

use super::Room;
use super::reader::Reader;
use crate::harness::scenario;

#[test]
fn whoever_comes_back_gets_what_they_missed() {
    scenario(async |stage| {
        let room = Room::of(stage).await;
        let member = &room.stage.cast.member;
        let mut reader = room.follow(member).await;
        reader.opening().await;
        room.note(6).await;
        let seen = reader.until("change").await.id.unwrap();
        drop(reader);
        room.mix().await;
        let missed = room.resume(member, &seen).await.opening().await;
        assert_eq!(missed.len(), 1);
        let change = &missed[0];
        assert_eq!(
            (change.name.as_str(), &change.id),
            ("change", &Some(room.last_id().await))
        );
        assert_eq!(change.number("from") + 1, change.number("to"));
        let glance = "board-glance".to_owned();
        assert_eq!(change.parts(), [glance, room.second_tray()]);
        // And who has seen everything gets nothing.
        let last = change.id.clone().unwrap();
        assert!(room.resume(member, &last).await.opening().await.is_empty());
    });
}

/// The page says what it shows, so that its stream begins there.
#[test]
fn a_page_is_followed_from_what_it_shows() {
    scenario(async |stage| {
        let room = Room::of(stage).await;
        let mut browser = room.stage.browser(&room.stage.cast.member).await;
        let page = browser.get(&room.stage.at("/board")).await.expect(200);
        let html = Html::parse_document(&page.body);
        let bar = html.select(&Selector::parse("[data-live]").unwrap()).next();
        let bar = bar.unwrap().value();
        let (after, drawn) = (bar.attr("data-live-at"), bar.attr("data-live-drawn"));
        assert_eq!(after, Some(room.last_id().await.as_str()));
        let stream = bar.attr("data-live").unwrap();
        let path = format!("{stream}?after={}&drawn={}", after.unwrap(), drawn.unwrap());
        let opening = Reader::follow(&browser, &path, None).await.opening().await;
        assert!(opening.is_empty(), "{opening:?}");
        room.note(6).await;
        let opening = Reader::follow(&browser, &path, None).await.opening().await;
        assert_eq!(opening[0].parts(), [room.first_tray()]);
        // Another moment's board is brought into line as a whole.
        let path = format!("{stream}?after={}&drawn=1", after.unwrap());
        let opening = Reader::follow(&browser, &path, None).await.opening().await;
        assert!(opening[0].parts().contains(&"board-bench"));
        // Every part has its place on the page.
        for id in opening[0].parts() {
            let element = Selector::parse(&format!("[id=\"{id}\"]")).unwrap();
            assert_eq!(html.select(&element).count(), 1, "{id}");
        }
    });
}

#[test]
fn what_the_book_never_had_is_answered_with_the_page_anew() {
    scenario(async |stage| {
        let room = Room::of(stage).await;
        let last = room.last_id().await;
        let (seq, hash) = last.split_once('.').unwrap();
        let seq: i64 = seq.parse().unwrap();
        let first = if hash.starts_with('0') { "1" } else { "0" };
        let other = format!("{first}{}", &hash[1..]);
        let foreign = [
            format!("{seq}.{other}"),
            format!("{}.{hash}", seq - 1),
            format!("{}.{hash}", seq + 1),
            format!("{seq}"),
            "nonsense".to_owned(),
        ];
        for id in foreign {
            let opening = room
                .resume(&room.stage.cast.member, &id)
                .await
                .opening()
                .await;
            assert_eq!(opening.len(), 1, "{id}");
            assert_eq!(opening[0].name, "resync", "{id}");
            assert_eq!(opening[0].id.as_ref(), Some(&last), "{id}");
        }
    });
}

#[test]
fn who_is_more_than_five_hundred_behind_gets_the_page_anew() {
    scenario(async |stage| {
        let room = Room::of(stage).await;
        let member = &room.stage.cast.member;
        let seen = room.last_id().await;
        for _ in 0..5 {
            join_all((0..100).map(|_| room.note(1))).await;
        }
        let opening = room.resume(member, &seen).await.opening().await;
        assert_eq!(opening[0].name, "change");
        let behind = opening[0].number("to") - opening[0].number("from");
        assert_eq!(behind, 500);
        room.note(1).await;
        let opening = room.resume(member, &seen).await.opening().await;
        assert_eq!(opening[0].name, "resync");
    });
}

#[test]
fn who_does_not_read_holds_nobody_up() {
    scenario(async |stage| {
        let room = Room::of(stage).await;
        let cast = &room.stage.cast;
        let mut slow = room.follow(&cast.member).await;
        let mut quick = room.follow(&cast.member).await;
        slow.opening().await;
        quick.opening().await;
        for _ in 0..40 {
            room.note(1).await;
            let last = room.last_id().await;
            assert_eq!(quick.until("change").await.id, Some(last));
        }
        assert_eq!(slow.next().await.unwrap().name, "resync");
    });
}
