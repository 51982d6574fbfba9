//! When a stream ends: with the log-in, with the membership, with the role.

use std::time::{Duration, Instant};

use wetside::identity::{Person, sessions};
use wetside::members::actions::{self, NewRole};
use wetside::rights::{KeepMembers, Role};

use super::Room;
use super::reader::Reader;
use crate::harness::{Stage, new_key, scenario};

/// Within a second or so: what is known of a log-in is read again every 700 ms and a
/// stream looks every 300 ms; the rest is for a busy machine.
const SOON: Duration = Duration::from_secs(3);

pub(super) async fn suspend(stage: &Stage, person: &Person) {
    let permit = stage.permit::<KeepMembers>(&stage.cast.steward).await;
    let app = &stage.installation.app;
    let done = actions::suspend(app, &permit.unwrap(), new_key(), person.id).await;
    done.unwrap();
}

/// Follows as the member at this instance and at another one, lets `end` happen, and sees
/// both streams end without another change.
async fn both_end(room: &Room, end: impl AsyncFnOnce(&Room)) {
    let other = room.stage.installation.second();
    let browser = room.stage.browser(&room.stage.cast.member).await;
    let path = room.stage.at("/board/stream");
    let mut here = Reader::follow(&browser, &path, None).await;
    let there = browser.at_another_server(&other);
    let mut there = Reader::follow(&there, &path, None).await;
    here.opening().await;
    there.opening().await;
    end(room).await;
    let began = Instant::now();
    // What happens from now on is nothing to them.
    room.mix().await;
    let more = here.changes_until_end().await;
    assert!(more <= 1, "{more} changes: the end itself may be one");
    there.changes_until_end().await;
    assert!(began.elapsed() < SOON, "{:?}", began.elapsed());
    other.database().close().await;
}

#[test]
fn a_stream_ends_with_the_log_in() {
    scenario(async |stage| {
        let room = Room::of(stage).await;
        both_end(&room, async |room| {
            let app = &room.stage.installation.app;
            let ended = sessions::end_all(app, room.stage.cast.member.id).await;
            assert_eq!(ended.unwrap(), 1);
        })
        .await;
    });
}

#[test]
fn a_stream_ends_with_the_membership() {
    scenario(async |stage| {
        let room = Room::of(stage).await;
        both_end(&room, async |room| {
            suspend(&room.stage, &room.stage.cast.member).await;
        })
        .await;
    });
}

#[test]
fn a_stream_ends_with_the_role() {
    scenario(async |stage| {
        let room = Room::of(stage).await;
        both_end(&room, async |room| {
            let stage = &room.stage;
            let permit = stage.permit::<KeepMembers>(&stage.cast.steward).await;
            let app = &stage.installation.app;
            let new = NewRole {
                person: stage.cast.member.id,
                role: Role::Trained,
            };
            let done = actions::change_role(app, &permit.unwrap(), new_key(), new).await;
            done.unwrap();
        })
        .await;
    });
}
