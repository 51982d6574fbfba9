//! Notes that waited on a phone: whose they are, when they were made, and that each
//! reaches the book once.

use time::{Duration, OffsetDateTime};
use wetside::database::Scope;
use wetside::sheets;

use super::{beside, note_form};
use crate::harness::{Form, Stage, scenario};

/// The form as a phone sends it: made so long ago by its clock, which is wrong by `off`.
fn waited(stage: &Stage, form: Form, ago: Duration, off: Duration) -> Form {
    let now = stage.installation.clock.now() + off;
    form.with("noted_at", &milliseconds(now - ago))
        .with("sent_at", &milliseconds(now))
}

fn milliseconds(at: OffsetDateTime) -> String {
    (at.unix_timestamp_nanos() / 1_000_000).to_string()
}

/// When the last note happened, before now.
async fn happened_ago(stage: &Stage) -> Duration {
    let scope = Scope {
        room: stage.room,
        person: None,
    };
    let database = stage.installation.app.database();
    let notes = database
        .reading(scope, |tx| {
            Box::pin(async move { sheets::passes(tx, None, 10).await })
        })
        .await
        .unwrap();
    stage.installation.clock.now() - notes[0].happened_at
}

#[test]
fn a_note_is_put_to_the_time_at_which_it_was_made_however_wrong_the_phones_clock() {
    scenario(async |stage: Stage| {
        stage.bench().await;
        stage.pass(Duration::hours(2));
        let mut browser = stage.browser(&stage.cast.member).await;
        for off in [Duration::ZERO, Duration::hours(3), Duration::hours(-3)] {
            let form = note_form(&stage, &mut browser).await;
            let form = waited(&stage, form, Duration::minutes(40), off);
            browser.submit_and_follow(&form).await.expect(200);
            assert_eq!(happened_ago(&stage).await, Duration::minutes(40), "{off}");
        }
    });
}

#[test]
fn what_took_a_moment_is_of_just_now() {
    scenario(async |stage: Stage| {
        stage.bench().await;
        let mut browser = stage.browser(&stage.cast.member).await;
        for ago in [Duration::seconds(20), Duration::minutes(-5)] {
            let form = note_form(&stage, &mut browser).await;
            let form = waited(&stage, form, ago, Duration::ZERO);
            browser.submit_and_follow(&form).await.expect(200);
            assert_eq!(happened_ago(&stage).await, Duration::ZERO, "{ago}");
        }
    });
}

#[test]
fn sent_again_later_it_is_answered_from_its_entry() {
    scenario(async |stage: Stage| {
        let bench = stage.bench().await;
        let mut browser = stage.browser(&stage.cast.member).await;
        let form = note_form(&stage, &mut browser).await;
        let first = waited(&stage, form, Duration::seconds(5), Duration::ZERO);
        let once = browser.submit(&first).await.expect(303);
        let spent = stage.spent(bench.mix).await;

        stage.pass(Duration::minutes(30));
        let now = milliseconds(stage.installation.clock.now());
        let again = first.with("sent_at", &now);
        let twice = browser.submit(&again).await.expect(303);
        assert_eq!(once.location(), twice.location());
        assert_eq!(stage.spent(bench.mix).await, spent);

        let other = again.with("sheets", "9");
        browser.submit(&other).await.expect(422);
        assert_eq!(stage.spent(bench.mix).await, spent);
    });
}

#[test]
fn another_person_on_the_same_phone_does_not_send_it() {
    scenario(async |stage: Stage| {
        let bench = stage.bench().await;
        let mut browser = stage.browser(&stage.cast.member).await;
        let form = note_form(&stage, &mut browser).await;
        let mut other = stage.browser(&stage.cast.trained).await;
        let refused = other.submit(&form).await.expect(409);
        assert!(refused.page().main().contains("opened by somebody else"));
        assert_eq!(stage.spent(bench.mix).await, 0);
        browser.submit(&form).await.expect(303);
    });
}

#[test]
fn what_waited_longer_than_the_room_takes_late_notes_is_refused_beside_the_time() {
    scenario(async |stage: Stage| {
        let bench = stage.bench().await;
        stage.pass(Duration::days(11));
        let mut browser = stage.browser(&stage.cast.member).await;
        let form = note_form(&stage, &mut browser).await;
        let form = waited(&stage, form, Duration::days(10), Duration::ZERO);
        let refused = browser.submit(&form).await.expect(422);
        assert_eq!(beside(&refused), ["time"]);
        assert_eq!(stage.spent(bench.mix).await, 0);

        let broken = form.with("noted_at", "yesterday");
        let refused = browser.submit(&broken).await.expect(422);
        assert_eq!(beside(&refused), ["time"]);
    });
}
