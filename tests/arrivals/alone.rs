//! Alone in the room: until when, who asks after one, and what is not done alone.

use time::macros::datetime;
use time::{Duration, OffsetDateTime};
use wetside::arrivals::actions::{NewStay, arrive, stay};
use wetside::clock::micros;
use wetside::error::{Error, Result};
use wetside::identity::Person;
use wetside::jobs::tick;
use wetside::logbook::Done;
use wetside::problem::Problem;
use wetside::rights::{Arrive, Role};

use super::book;
use crate::access::house::somebody;
use crate::harness::{Answer, START, Stage, Visitor, new_key, scenario, scenario_alone};

/// The first line of who is there, on the board.
async fn on_board(visitor: &mut Visitor) -> String {
    let board = visitor.open("/board").await;
    board.page().first("#present li").unwrap()
}

/// What a form asks for first, and the field it asks for it in.
fn wrong(refused: &Answer) -> (String, String) {
    refused.page().problems().remove(0)
}

async fn comes_until(stage: &Stage, person: &Person, at: OffsetDateTime) -> Result<Done> {
    let permit = stage.permit::<Arrive>(person).await?;
    let app = &stage.installation.app;
    arrive(app, &permit, new_key(), Some(micros(at))).await
}

async fn stays_until(stage: &Stage, person: &Person, at: OffsetDateTime) -> Result<Done> {
    let permit = stage.permit::<Arrive>(person).await?;
    let new = NewStay {
        presence_id: None,
        until_us: micros(at),
    };
    stay(&stage.installation.app, &permit, new_key(), new).await
}

/// What somebody was told of those who were to have left.
async fn told(stage: &Stage, person: &Person) -> Vec<String> {
    let page = Visitor::of(stage, person).await.open("/notices").await;
    let all = page.page().all(".events li p").into_iter();
    let all = all.map(|said| said.trim_start_matches("new ").to_owned());
    all.filter(|said| said.contains("would leave at")).collect()
}

/// How many each of these was told.
async fn counts<const N: usize>(stage: &Stage, people: [&Person; N]) -> [usize; N] {
    let mut counts = [0; N];
    for (count, person) in counts.iter_mut().zip(people) {
        *count = told(stage, person).await.len();
    }
    counts
}

/// Lets the clock come to an instant, and the program do what is due.
async fn looks_at(stage: &Stage, at: OffsetDateTime) {
    stage.installation.clock.set(at);
    tick(&stage.installation.app).await.unwrap();
}

#[test]
fn whoever_comes_into_an_empty_room_says_until_when() {
    scenario(async |stage| {
        let member = &stage.cast.member;
        let mut visitor = Visitor::of(&stage, member).await;
        let page = visitor.open("/arrive").await;
        // Who is told what, before one says so.
        let said = page.page().first("form.coming").unwrap();
        assert!(said.contains(&stage.cast.steward.name), "{said}");
        let offered = page.page().all(".target-name");
        assert_eq!(
            offered,
            [
                "14:00, in 1 h",
                "15:00, in 2 h",
                "16:00, in 3 h",
                "Another time"
            ]
        );
        let form = page.page().form("I am here").unwrap();
        for (until, time, problem) in [
            ("", "", ("until", Problem::UntilWhen)),
            ("soon", "", ("until", Problem::NotAChoice)),
            ("typed", "later", ("time", Problem::NotATime)),
            ("typed", "12:59", ("until", Problem::NotWhileHere)),
        ] {
            let form = form.clone().with("until", until).with("time", time);
            let refused = visitor.browser.submit(&form).await.expect(422);
            let (field, sentence) = wrong(&refused);
            let words = wetside::web::messages::problem(&problem.1, Default::default());
            assert_eq!((&*field, sentence), (problem.0, format!("Error: {words}")));
            let kept = refused.page().form("I am here").unwrap();
            assert_eq!(kept.value("time"), Some(time), "nothing typed is lost");
        }
        let form = form.with("until", "typed").with("time", "16:30");
        let here = visitor.browser.submit_and_follow(&form).await.expect(200);
        assert_eq!(here.page().heading(), "You are here");
        let alone = format!("{} since 13:00, alone, expected until 16:30", member.name);
        assert_eq!(on_board(&mut visitor).await, alone);
    });
}

#[test]
fn whoever_comes_to_others_is_asked_nothing_until_they_are_alone() {
    scenario(async |stage| {
        let (member, trained) = (&stage.cast.member, &stage.cast.trained);
        let mut visitor = Visitor::of(&stage, member).await;
        let page = visitor.open("/arrive").await;
        let form = page.page().form("I am here").unwrap();
        let form = form.with("until", "typed").with("time", "16:30");
        visitor.browser.submit_and_follow(&form).await.expect(200);
        let mut second = Visitor::of(&stage, trained).await;
        let page = second.open("/arrive").await;
        assert!(page.page().all(".target-name").is_empty());
        second.send_on(&page, "I am here", &[]).await;
        let both = format!("{} since 13:00, expected until 16:30", member.name);
        assert_eq!(on_board(&mut visitor).await, both);
        assert!(
            second
                .open("/arrive")
                .await
                .page()
                .form("I stay until then")
                .is_none()
        );
        // The first leaves, and the second is told that they are alone.
        stage.leaves(member).await.unwrap();
        let alone = format!("{} since 13:00, alone, gave no time to leave", trained.name);
        assert_eq!(on_board(&mut second).await, alone);
        let page = second.open("/arrive").await;
        assert_eq!(
            page.page().first("#stay-title").unwrap(),
            "You are alone here"
        );
        second.send_on(&page, "I stay until then", &[]).await;
        let alone = format!("{} since 13:00, alone, expected until 15:00", trained.name);
        assert_eq!(on_board(&mut second).await, alone);
        let said = book(&stage, &stage.cast.steward).await;
        let wanted = format!("{} is here still, expected until 15:00.", trained.name);
        assert_eq!(said[0], wanted);
    });
}

#[test]
fn a_kept_board_and_the_roll_say_at_that_moment_that_the_time_has_passed() {
    scenario(async |stage| {
        let member = &stage.cast.member;
        comes_until(&stage, member, START + Duration::hours(1))
            .await
            .unwrap();
        let mut visitor = Visitor::of(&stage, &stage.cast.trained).await;
        stage.pass(Duration::hours(1) - Duration::seconds(1));
        assert!(
            on_board(&mut visitor)
                .await
                .ends_with("alone, expected until 14:00")
        );
        stage.pass(Duration::seconds(1));
        let late = "expected to have left at 14:00, not confirmed";
        assert!(on_board(&mut visitor).await.ends_with(late));
        let roll = visitor.open("/present").await;
        assert!(roll.page().main().contains(late));
        let mut own = Visitor::of(&stage, member).await;
        let page = own.open("/arrive").await;
        assert_eq!(
            page.page().first("#stay-title").unwrap(),
            "Are you still here?"
        );
        let here = own.send_on(&page, "I am still here until then", &[]).await;
        assert_eq!(
            here.page().first("#stay-title").unwrap(),
            "You are alone here"
        );
        assert!(
            on_board(&mut visitor)
                .await
                .ends_with("expected until 16:00")
        );
        // No further than the presence itself lasts, and only one's own.
        let end = datetime!(2026-11-25 23:00 UTC);
        stays_until(&stage, member, end).await.unwrap();
        for (person, at) in [(member, end + Duration::seconds(1)), (member, START)] {
            let refused = stays_until(&stage, person, at).await;
            assert!(matches!(refused, Err(Error::Invalid(_))), "{refused:?}");
        }
        let refused = stays_until(&stage, &stage.cast.trained, end).await;
        assert!(matches!(refused, Err(Error::Refused(Problem::NotHere))));
        stage.check_book().await;
    });
}

#[test]
fn they_are_asked_then_the_contacts_in_turn_each_once() {
    scenario_alone(async |stage| {
        let (member, first) = (&stage.cast.member, &stage.cast.steward);
        let second = &somebody(&stage, "second", stage.room, Role::Steward).await;
        let people = [member, first, second, &stage.cast.trained];
        tick(&stage.installation.app).await.unwrap();
        let at = START + Duration::hours(2);
        comes_until(&stage, member, at).await.unwrap();
        for (minutes, seconds, wanted) in [
            (-1, 59, [0, 0, 0, 0]),
            (0, 0, [1, 0, 0, 0]),
            (14, 59, [1, 0, 0, 0]),
            (15, 0, [1, 1, 0, 0]),
            (29, 59, [1, 1, 0, 0]),
            (30, 0, [1, 1, 1, 0]),
            (45, 0, [1, 1, 1, 0]),
            (300, 0, [1, 1, 1, 0]),
        ] {
            let past = Duration::minutes(minutes) + Duration::seconds(seconds);
            looks_at(&stage, at + past).await;
            assert_eq!(counts(&stage, people).await, wanted, "{past} after");
        }
        let asked = told(&stage, member).await.remove(0);
        assert!(
            asked.starts_with("You said that you would leave at 15:00."),
            "{asked}"
        );
        let of = told(&stage, first).await.remove(0);
        assert!(
            of.starts_with(&format!("{} was alone", member.name)),
            "{of}"
        );
        // A later time begins anew; who leaves in time is asked nothing.
        let later = stage.installation.clock.now() + Duration::hours(1);
        stays_until(&stage, member, later).await.unwrap();
        looks_at(&stage, later).await;
        assert_eq!(counts(&stage, people).await, [2, 1, 1, 0]);
        stage.leaves(member).await.unwrap();
        looks_at(&stage, later + Duration::hours(1)).await;
        assert_eq!(counts(&stage, people).await, [2, 1, 1, 0]);
        stage.check_book().await;
    });
}

#[test]
fn a_steward_who_is_alone_is_asked_and_the_other_one_told_first() {
    scenario_alone(async |stage| {
        let first = &stage.cast.steward;
        let second = &somebody(&stage, "second", stage.room, Role::Steward).await;
        tick(&stage.installation.app).await.unwrap();
        let at = START + Duration::hours(1);
        comes_until(&stage, first, at).await.unwrap();
        looks_at(&stage, at + Duration::minutes(15)).await;
        assert_eq!(counts(&stage, [first, second]).await, [1, 1]);
    });
}

#[test]
fn while_others_are_there_nobody_outside_is_told() {
    scenario_alone(async |stage| {
        let (member, trained, steward) =
            (&stage.cast.member, &stage.cast.trained, &stage.cast.steward);
        tick(&stage.installation.app).await.unwrap();
        let at = START + Duration::hours(1);
        comes_until(&stage, member, at).await.unwrap();
        stage.arrives(trained).await.unwrap();
        looks_at(&stage, at + Duration::hours(1)).await;
        assert_eq!(counts(&stage, [member, steward]).await, [1, 0]);
        // Alone again, and still not heard of: the next look tells.
        stage.leaves(trained).await.unwrap();
        looks_at(&stage, at + Duration::minutes(65)).await;
        assert_eq!(counts(&stage, [member, steward]).await, [1, 1]);
    });
}

/// Whoever is taken for gone at midnight is still asked after. Source for the clock
/// changes: IANA time zone database, file europe. In Berlin the day of 28 March 2027 has
/// 23 hours, that of 31 October 25.
#[test]
fn the_turns_go_on_past_midnight_and_over_changes_of_the_clock() {
    scenario_alone(async |stage| {
        let (member, steward) = (&stage.cast.member, &stage.cast.steward);
        let nights = [
            // Ten minutes before midnight.
            (datetime!(2026-11-25 22:50 UTC), "23:50"),
            // Half past one, before the hour that is left out, and half past three.
            (datetime!(2027-03-28 00:30 UTC), "01:30"),
            (datetime!(2027-03-28 01:30 UTC), "03:30"),
            // Half past two, for the first and for the second time.
            (datetime!(2027-10-31 00:30 UTC), "02:30"),
            (datetime!(2027-10-31 01:30 UTC), "02:30"),
        ];
        for (night, (at, clock)) in nights.into_iter().enumerate() {
            looks_at(&stage, at - Duration::minutes(20)).await;
            comes_until(&stage, member, at).await.unwrap();
            looks_at(&stage, at - Duration::seconds(1)).await;
            assert_eq!(counts(&stage, [member, steward]).await, [night; 2], "{at}");
            looks_at(&stage, at).await;
            assert_eq!(counts(&stage, [member, steward]).await, [night + 1, night]);
            looks_at(&stage, at + Duration::minutes(15)).await;
            assert_eq!(counts(&stage, [member, steward]).await, [night + 1; 2]);
            let of = told(&stage, steward).await.remove(0);
            assert!(of.contains(&format!("would leave at {clock},")), "{of}");
            // Whoever was taken for gone at midnight cannot leave any more.
            let left = stage.leaves(member).await;
            assert_eq!(left.is_ok(), night > 0, "{left:?}");
        }
    });
}

#[test]
fn who_is_back_or_was_ended_by_a_steward_is_asked_after_no_more() {
    scenario_alone(async |stage| {
        let (member, steward) = (&stage.cast.member, &stage.cast.steward);
        tick(&stage.installation.app).await.unwrap();
        // Taken for gone at midnight, and back before the first contact's turn.
        comes_until(&stage, member, datetime!(2026-11-25 22:50 UTC))
            .await
            .unwrap();
        looks_at(&stage, datetime!(2026-11-25 23:01 UTC)).await;
        stage.arrives(member).await.unwrap();
        looks_at(&stage, datetime!(2026-11-25 23:30 UTC)).await;
        assert_eq!(counts(&stage, [member, steward]).await, [1, 0]);
        // A steward looked, and ended it.
        let mut visitor = Visitor::steward(&stage).await;
        let roll = visitor.open("/present").await;
        let end = format!("End it: {}", member.name);
        let asked = visitor.follow(&roll, &end).await;
        visitor.send_on(&asked, "End the presence", &[]).await;
        looks_at(&stage, datetime!(2026-11-26 03:00 UTC)).await;
        assert_eq!(counts(&stage, [member, steward]).await, [1, 0]);
    });
}

#[test]
fn a_room_may_forbid_that_anybody_mixes_alone() {
    scenario(async |stage| {
        let bench = stage.bench().await;
        let (trained, member) = (&stage.cast.trained, &stage.cast.member);
        let mut visitor = Visitor::of(&stage, trained).await;
        let top_up = format!("/mixes/{}/top-up", bench.mix);
        // Not before the room says so.
        let page = visitor.open(&top_up).await;
        let form = page.page().form("Show what to pour").unwrap();
        let sheet = visitor
            .browser
            .submit(&form.with("volume", "0.2"))
            .await
            .expect(200);
        let poured = sheet.page().form("It is topped up").unwrap();
        let mut steward = Visitor::steward(&stage).await;
        let page = steward.open("/settings").await;
        let form = page.page().form("Keep these rules").unwrap();
        let form = form.choose("Nobody mixes concentrate alone");
        steward.browser.submit(&form).await.expect(303);
        let page = steward.open("/settings").await;
        let form = page.page().form("Keep these rules").unwrap();
        assert_eq!(form.value("forbids_mixing_alone"), Some("yes"));

        stage.arrives(trained).await.unwrap();
        let refused = visitor.browser.submit(&poured).await.expect(422);
        let said = refused.page().first(".summary").unwrap();
        assert!(
            said.contains("Nobody mixes concentrate alone in this room"),
            "{said}"
        );
        // What was typed is kept, and nothing says what to pour.
        let kept = refused.page().form("Show what to pour").unwrap();
        assert_eq!(kept.value("volume"), poured.value("volume"));
        assert!(refused.page().first("#worksheet").is_none());
        let again = visitor.browser.submit(&kept).await.expect(422);
        assert!(
            again
                .page()
                .main()
                .contains("Nobody mixes concentrate alone")
        );
        // With somebody else there, the same order goes through.
        stage.arrives(member).await.unwrap();
        visitor.browser.submit(&kept).await.expect(200);
        visitor.browser.submit(&poured).await.expect(303);
    });
}
