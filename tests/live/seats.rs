//! Who may follow, and how many boards at once.

use axum::http::header::{LOCATION, RETRY_AFTER};

use super::Room;
use super::reader::Reader;
use crate::harness::scenario;

#[test]
fn nobody_follows_a_board_they_cannot_see() {
    scenario(async |stage| {
        let path = stage.at("/board/stream");
        let stranger = stage.browser(&stage.cast.stranger).await;
        let refused = Reader::ask(&stranger, &path, None).await;
        assert_eq!(refused.err().unwrap().0.as_u16(), 404);
        let (status, headers) = Reader::ask(&stage.nobody(), &path, None)
            .await
            .err()
            .unwrap();
        assert_eq!(status.as_u16(), 303);
        let to = headers[LOCATION].to_str().unwrap();
        assert!(to.starts_with("/log-in"), "{to}");
    });
}

#[test]
fn one_log_in_follows_six_boards_and_not_seven() {
    scenario(async |stage| {
        let room = Room::of(stage).await;
        let browser = room.stage.browser(&room.stage.cast.member).await;
        let path = |tab: usize| room.stage.at(&format!("/board/stream?tab={tab}"));
        let mut open = Vec::new();
        for tab in 0..6 {
            let mut reader = Reader::follow(&browser, &path(tab), None).await;
            reader.opening().await;
            open.push(reader);
        }
        let (status, headers) = Reader::ask(&browser, &path(6), None).await.err().unwrap();
        assert_eq!(status.as_u16(), 503);
        assert_eq!(headers[RETRY_AFTER], "2");
        // Another log-in of the same person has its own.
        let other = room.stage.browser(&room.stage.cast.member).await;
        Reader::follow(&other, &path(0), None).await.opening().await;
        // A page that comes back takes its own place, and its old stream ends.
        let mut again = Reader::follow(&browser, &path(3), None).await;
        again.opening().await;
        assert_eq!(open[3].changes_until_end().await, 0);
        // Who leaves makes room.
        open.truncate(3);
        Reader::follow(&browser, &path(6), None)
            .await
            .opening()
            .await;
    });
}
