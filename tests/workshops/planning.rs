//! Planning a workshop, and what stands against it.

use time::macros::datetime;
use time::{Duration, OffsetDateTime};
use uuid::Uuid;
use wetside::error::{Error, Result};
use wetside::problem::Problem;
use wetside::rights::{KeepTopics, LeadWorkshop, PlanWorkshop};
use wetside::topics::Required;
use wetside::topics::actions::{NewTopic, set_topic};
use wetside::workshops::actions::{CallOff, NewWorkshop, call_off};

use crate::harness::{START, Stage, new_key, scenario};

/// What is wrong with which field.
fn wrong<T: std::fmt::Debug>(outcome: Result<T>) -> (String, Problem) {
    match outcome {
        Err(Error::Invalid(problems)) => {
            let (field, problem) = problems.iter().next().unwrap();
            (field.to_owned(), problem.clone())
        }
        other => panic!("{other:?}"),
    }
}

async fn is_asked_for(stage: &Stage, title: &str) {
    let permit = stage.permit::<KeepTopics>(&stage.cast.steward).await;
    let new = NewTopic {
        id: None,
        title: title.to_owned(),
        body: "Say it aloud.".to_owned(),
        required: Required::Always,
        good_months: Some(24),
        asks_anew: true,
        is_retired: false,
    };
    let app = &stage.installation.app;
    set_topic(app, &permit.unwrap(), new_key(), new)
        .await
        .unwrap();
}

#[test]
fn a_leader_without_an_induction_is_refused_with_what_is_missing() {
    scenario(async |stage| {
        let id = stage.planned().await;
        stage.arrives(&stage.cast.member).await.unwrap();
        is_asked_for(&stage, "Acids and water").await;
        let plan = stage.plan_of(&stage.cast.member, START + Duration::hours(1));
        let (field, problem) = wrong(stage.plans(plan).await);
        let missing = vec!["Acids and water".to_owned()];
        let lacks = Problem::LeaderLacks { missing };
        assert_eq!((field.as_str(), &problem), ("leader", &lacks));
        // Neither does one begin that was planned before.
        let opened = stage.opens(&stage.cast.member, id).await;
        assert!(matches!(opened, Err(Error::Refused(why)) if why == lacks));
        let mut steward = stage.browser(&stage.cast.steward).await;
        let page = steward.get(&stage.at("/workshops/new")).await.expect(200);
        let form = page.page().form("Plan it").unwrap();
        let form = form
            .with("title", "First prints")
            .with("leader", &stage.cast.member.id.to_string())
            .with("begins", "14:00")
            .with("ends", "17:00")
            .with("most", "5");
        let refused = steward.submit(&form).await.expect(422);
        let said = refused.page().problems();
        assert!(
            said[0].1.contains("This is missing: Acids and water."),
            "{said:?}"
        );
    });
}

/// Plans that are refused: the field, and what is wrong with it.
fn refused(stage: &Stage) -> Vec<(NewWorkshop, &'static str, Problem)> {
    let plan = || stage.plan_of(&stage.cast.member, START + Duration::hours(1));
    let none = Problem::NotAChoice;
    let led_by = |leader_id| NewWorkshop {
        leader_id,
        ..plan()
    };
    let paid_by = NewWorkshop {
        paid_by_id: Some(stage.cast.stranger.id),
        ..plan()
    };
    let on_no_line = NewWorkshop {
        line_ids: vec![Uuid::nil()],
        ..plan()
    };
    let nowhere = NewWorkshop {
        space_id: Some(Uuid::nil()),
        ..plan()
    };
    let of_ten = NewWorkshop {
        most_guests: 10,
        ..plan()
    };
    let to_nine = Problem::OutOfRange {
        least: "1".to_owned(),
        most: "9".to_owned(),
    };
    let mut backwards = plan();
    std::mem::swap(&mut backwards.begins_at_us, &mut backwards.ends_at_us);
    let before = stage.plan_of(&stage.cast.member, START - Duration::hours(4));
    // From 21:00 UTC three hours on it is another day in Berlin.
    let at_night = stage.plan_of(&stage.cast.member, datetime!(2026-11-25 21:00 UTC));
    vec![
        (led_by(stage.cast.treasurer.id), "leader", none.clone()),
        (led_by(stage.cast.stranger.id), "leader", none.clone()),
        (paid_by, "paid_by", none.clone()),
        (on_no_line, "lines", none.clone()),
        (nowhere, "space", none),
        (of_ten, "most", to_nine),
        (backwards, "ends", Problem::EndsBeforeBeginning),
        (before, "ends", Problem::HasPassed),
        (at_night, "ends", Problem::NotOnOneDay),
    ]
}

#[test]
fn what_cannot_be_is_refused() {
    scenario(async |stage| {
        for (new, field, problem) in refused(&stage) {
            let said = format!("{new:?}");
            let found = wrong(stage.plans(new).await);
            assert_eq!((found.0.as_str(), &found.1), (field, &problem), "{said}");
        }
    });
}

#[test]
fn it_is_changed_and_called_off_until_it_is_opened() {
    scenario(async |stage| {
        let id = stage.planned().await;
        let later = stage.plan_of(&stage.cast.trained, START + Duration::days(1));
        let later = NewWorkshop {
            id: Some(id),
            ..later
        };
        stage.plans(later.clone()).await.unwrap();
        stage.arrives(&stage.cast.trained).await.unwrap();
        // It is another's, and of another day now.
        let opened = stage.opens(&stage.cast.member, id).await;
        assert!(matches!(opened, Err(Error::Forbidden)));
        let opened = stage.opens(&stage.cast.trained, id).await;
        assert!(matches!(
            opened,
            Err(Error::Refused(Problem::WorkshopNotToday))
        ));
        let board = stage.looks(&stage.cast.member, "/board").await;
        assert!(!board.page().main().contains("First prints"));

        let permit = stage.permit::<PlanWorkshop>(&stage.cast.steward).await;
        let permit = permit.unwrap();
        let app = &stage.installation.app;
        let off = |reason: &str| CallOff {
            workshop_id: id,
            reason: reason.to_owned(),
        };
        let (field, problem) = wrong(call_off(app, &permit, new_key(), off("")).await);
        assert_eq!((field.as_str(), problem), ("reason", Problem::Missing));
        call_off(app, &permit, new_key(), off("The fan is away"))
            .await
            .unwrap();
        let twice = call_off(app, &permit, new_key(), off("Again")).await;
        assert!(matches!(
            twice,
            Err(Error::Refused(Problem::WorkshopNotPlanned))
        ));
        let changed = stage.plans(later).await;
        assert!(matches!(
            changed,
            Err(Error::Refused(Problem::WorkshopNotPlanned))
        ));
        let page = stage
            .looks(&stage.cast.member, &format!("/workshops/{id}"))
            .await;
        assert!(page.page().main().contains("Called off. The fan is away"));
        let nobody = stage.permit::<PlanWorkshop>(&stage.cast.member).await;
        assert!(matches!(nobody, Err(Error::Forbidden)));
        let nobody = stage.permit::<LeadWorkshop>(&stage.cast.treasurer).await;
        assert!(matches!(nobody, Err(Error::Forbidden)));
    });
}

/// Source for the clock changes: IANA time zone database, file europe. In Berlin the clock
/// goes from 2:00 to 3:00 on 28 March 2027, and from 3:00 back to 2:00 on 31 October.
#[test]
fn the_day_and_its_hours_are_the_rooms_own() {
    scenario(async |stage| {
        for (day, begins, ends, from, until) in [
            (
                "2027-03-28",
                "01:00",
                "04:00",
                datetime!(2027-03-28 00:00 UTC),
                datetime!(2027-03-28 02:00 UTC),
            ),
            // 2:30 is left out: the clock says 3:30 then.
            (
                "2027-03-28",
                "02:30",
                "05:00",
                datetime!(2027-03-28 01:30 UTC),
                datetime!(2027-03-28 03:00 UTC),
            ),
            (
                "2027-10-31",
                "01:00",
                "04:00",
                datetime!(2027-10-30 23:00 UTC),
                datetime!(2027-10-31 03:00 UTC),
            ),
        ] {
            let planned = planned_on(&stage, day, begins, ends).await;
            assert_eq!(planned, (from, until), "{day} {begins}");
        }
        // On the day that has 25 hours it is of today in all of them.
        let now = datetime!(2027-10-31 22:30 UTC);
        stage.installation.clock.set(now);
        let plan = stage.plan_of(&stage.cast.member, now);
        let late = NewWorkshop {
            ends_at_us: plan.begins_at_us + 60_000_000,
            ..plan
        };
        let id = stage.plans(late).await.unwrap();
        let board = stage.looks(&stage.cast.member, "/board").await;
        assert!(board.page().main().contains("Workshop 23:30–23:31"));
        stage.arrives(&stage.cast.member).await.unwrap();
        stage.opens(&stage.cast.member, id).await.unwrap();
    });
}

/// Plans one by the form, and answers when it begins and ends.
async fn planned_on(
    stage: &Stage,
    day: &str,
    begins: &str,
    ends: &str,
) -> (OffsetDateTime, OffsetDateTime) {
    let mut steward = stage.browser(&stage.cast.steward).await;
    let page = steward.get(&stage.at("/workshops/new")).await.expect(200);
    let form = page.page().form("Plan it").unwrap();
    let form = form
        .with("title", "At night")
        .with("leader", &stage.cast.member.id.to_string())
        .with("day", day)
        .with("begins", begins)
        .with("ends", ends)
        .with("most", "3");
    let done = steward.submit(&form).await.expect(303);
    let (_, id) = done.location().unwrap().rsplit_once('/').unwrap();
    sqlx::query_as("select begins_at, ends_at from workshop where room_id = $1 and id = $2")
        .bind(stage.room)
        .bind(id.parse::<Uuid>().unwrap())
        .fetch_one(&mut stage.installation.db().await)
        .await
        .unwrap()
}
