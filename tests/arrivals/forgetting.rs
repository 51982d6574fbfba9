//! Those who do not say that they left.

use time::macros::datetime;
use time::{Duration, OffsetDateTime};
use wetside::error::Error;
use wetside::jobs::tick;
use wetside::problem::Problem;

use super::{book, look, names};
use crate::harness::{Stage, scenario, scenario_alone};

/// The notes in a book that somebody was not confirmed as gone: who wrote them,
/// when they happened, and the local date they hold.
async fn closings(stage: &Stage) -> Vec<(bool, OffsetDateTime, String)> {
    let rows: Vec<(Option<uuid::Uuid>, OffsetDateTime, Vec<u8>)> = sqlx::query_as(
        "select actor, happened_at, payload from entry
        where room_id = $1 and kind = 'not_confirmed_left' order by seq",
    )
    .bind(stage.room)
    .fetch_all(&mut stage.installation.db().await)
    .await
    .unwrap();
    rows.into_iter()
        .map(|(actor, at, payload)| {
            let says: serde_json::Value = serde_json::from_slice(&payload).unwrap();
            let date = says["local_date"].as_str().unwrap().to_owned();
            (actor.is_some(), at, date)
        })
        .collect()
}

#[test]
fn the_day_ends_a_presence_before_any_job_has_run() {
    scenario(async |stage| {
        let member = &stage.cast.member;
        stage.arrives(member).await.unwrap();
        let board = stage.looks(member, "/board").await;
        assert_eq!(names(&board).len(), 1);
        // 23:00 UTC is midnight in Berlin.
        stage.pass(Duration::hours(11) - Duration::seconds(1));
        assert_eq!(names(&stage.looks(member, "/board").await).len(), 1);
        stage.pass(Duration::seconds(1));
        assert!(names(&stage.looks(member, "/board").await).is_empty());
        let roll = stage.looks(&stage.cast.trained, "/present").await;
        let said = roll.page().all("td").join(" ");
        assert!(said.contains("Wed 25 Nov, 13:00"), "{said}");
        assert!(said.contains("00:00, not confirmed left"), "{said}");
        // They come again: what ran out is written first.
        stage.arrives(member).await.unwrap();
        assert_eq!(names(&stage.looks(member, "/board").await).len(), 1);
        let midnight = datetime!(2026-11-25 23:00 UTC);
        let closed = (false, midnight, "2026-11-25".to_owned());
        assert_eq!(closings(&stage).await, [closed]);
        let said = book(&stage, &stage.cast.steward).await;
        let gone = format!("{}: not confirmed left, 2026-11-25.", member.name);
        assert_eq!(said[1], gone);
        // A day later it is on the roll no more.
        stage.pass(Duration::days(1) + Duration::seconds(1));
        let roll = stage.looks(&stage.cast.trained, "/present").await;
        assert!(!roll.page().main().contains("Wed 25 Nov"));
    });
}

/// Source for the clock changes: IANA time zone database, file europe. In Berlin
/// the day of 28 March 2027 has 23 hours, that of 31 October 25.
#[test]
fn a_job_writes_it_down_on_every_night() {
    scenario_alone(async |stage| {
        let app = &stage.installation.app;
        let nights = [
            (
                datetime!(2026-11-25 12:00 UTC),
                datetime!(2026-11-25 23:00 UTC),
                "2026-11-25",
            ),
            (
                datetime!(2027-03-27 22:59:59 UTC),
                datetime!(2027-03-27 23:00 UTC),
                "2027-03-27",
            ),
            (
                datetime!(2027-03-27 23:00 UTC),
                datetime!(2027-03-28 22:00 UTC),
                "2027-03-28",
            ),
            (
                datetime!(2027-10-30 21:59:59 UTC),
                datetime!(2027-10-30 22:00 UTC),
                "2027-10-30",
            ),
            (
                datetime!(2027-10-31 00:30 UTC),
                datetime!(2027-10-31 23:00 UTC),
                "2027-10-31",
            ),
        ];
        let mut wanted = Vec::new();
        for (from, over, date) in nights {
            stage.installation.clock.set(from);
            tick(app).await.unwrap();
            stage.arrives(&stage.cast.member).await.unwrap();
            stage.installation.clock.set(over - Duration::seconds(1));
            tick(app).await.unwrap();
            assert_eq!(closings(&stage).await, wanted, "a second early, {date}");
            stage.installation.clock.set(over);
            tick(app).await.unwrap();
            wanted.push((false, over, date.to_owned()));
            assert_eq!(closings(&stage).await, wanted);
            // Another look finds nothing more to write.
            tick(app).await.unwrap();
            assert_eq!(closings(&stage).await, wanted);
        }
    });
}

#[test]
fn a_steward_ends_a_presence_that_was_forgotten() {
    scenario(async |stage| {
        let member = &stage.cast.member;
        stage.arrives(member).await.unwrap();
        let roll = stage.looks(&stage.cast.trained, "/present").await;
        let words = |links: Vec<(String, String)>| {
            let end = links
                .into_iter()
                .find(|(words, _)| words.starts_with("End it"));
            end.map(|(_, href)| href)
        };
        assert_eq!(words(roll.page().links()), None);
        let mut steward = stage.browser(&stage.cast.steward).await;
        let roll = look(&mut steward, &stage, "/present").await;
        let end = words(roll.page().links()).unwrap();
        let mut other = stage.browser(&stage.cast.trained).await;
        other.get(&end).await.expect(403);
        let asked = steward.get(&end).await.expect(200);
        assert_eq!(asked.page().heading(), format!("Has {} left?", member.name));
        let form = asked.page().form("End the presence").unwrap();
        let roll = steward.submit_and_follow(&form).await.expect(200);
        assert!(roll.page().main().contains("not confirmed left"));
        assert_eq!(closings(&stage).await[0].2, "2026-11-25");
        assert!(closings(&stage).await[0].0);
        // Neither of them ends it again.
        let again = steward.get(&end).await.expect(200);
        let form = again.page().form("End the presence").unwrap();
        steward.submit(&form).await.expect(409);
        let left = stage.leaves(member).await;
        assert!(matches!(left, Err(Error::Refused(Problem::NotHere))));
    });
}
