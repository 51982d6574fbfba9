//! When a test is to be made again: on the board at that very moment, to stewards once,
//! and in a handover.

use time::Duration;
use time::macros::datetime;
use wetside::identity::Person;
use wetside::jobs::tick;
use wetside::lamps::{FogTested, Hanging, LampKind, RULES};
use wetside::logbook::Entry;

use super::{PAPERS, Visitor, large, said};
use crate::harness::{Answer, Stage, scenario, scenario_alone};

/// A lamp that is tested every month, with every paper, tested now.
async fn tested(steward: &mut Visitor) -> Answer {
    let page = steward.open("/lamps/new").await;
    let fields = [
        (super::NAME, "Red lamp"),
        (super::DISTANCE, "1200"),
        ("Test again after", "1"),
    ];
    let mut page = steward.send_on(&page, "Add it", &fields).await;
    for paper in PAPERS {
        page = steward.test(&page, paper, ("4", "8")).await;
    }
    page
}

#[test]
fn a_kept_board_says_that_a_test_is_overdue_when_its_day_is_over() {
    scenario(async |stage| {
        let mut steward = Visitor::of(&stage, &stage.cast.steward).await;
        let lamp = tested(&mut steward).await;
        let clock = &stage.installation.clock;
        // The day ends at midnight in Berlin, 23:00 UTC (IANA time zone database, europe).
        clock.set(datetime!(2026-12-25 22:59:59 UTC));
        // A log-in does not last a month.
        let mut member = Visitor::of(&stage, &stage.cast.member).await;
        assert!(member.notices().await.is_empty());
        let page = member.open("/lamps").await;
        assert_eq!(large(&page)[0], "2 min 49 s");
        stage.pass(Duration::seconds(1));
        assert_eq!(
            member.notices().await,
            ["Red lamp: its fog test is overdue since Fri 25 Dec 2026. Treat its light as unsafe."]
        );
        let page = member.open("/lamps").await;
        assert_eq!(large(&page)[0], "Test overdue");
        let beside = &said(&page)[0];
        assert!(
            beside.contains("gave 2 min 49 s. The next test is overdue since Fri 25 Dec 2026"),
            "{beside}"
        );
        let mut steward = Visitor::of(&stage, &stage.cast.steward).await;
        steward.test(&lamp, "FB", ("4", "8")).await;
        let notices = member.notices().await;
        assert_eq!(
            notices,
            [
                "Red lamp: its fog test is overdue since Fri 25 Dec 2026 for RC and RC, cool \
                 tone. Treat its light as unsafe for those papers."
            ]
        );
    });
}

#[test]
fn stewards_are_told_once_of_each_day_a_test_was_due() {
    scenario_alone(async |stage| {
        let app = stage.installation.app.clone();
        let clock = stage.installation.clock.clone();
        let mut steward = Visitor::of(&stage, &stage.cast.steward).await;
        let lamp = tested(&mut steward).await;
        tick(&app).await.unwrap();
        clock.set(datetime!(2026-12-25 12:00 UTC));
        tick(&app).await.unwrap();
        assert!(told(&stage, &stage.cast.steward).await.is_empty());
        for night in [
            datetime!(2026-12-26 06:00 UTC),
            datetime!(2026-12-27 06:00 UTC),
        ] {
            clock.set(night);
            tick(&app).await.unwrap();
        }
        let first = told(&stage, &stage.cast.steward).await;
        assert_eq!(first.len(), 1, "{first:?}");
        let of_lamp = "The fog test of Red lamp is overdue since Fri 25 Dec 2026.";
        assert!(first[0].contains(of_lamp), "{first:?}");
        assert!(told(&stage, &stage.cast.member).await.is_empty());
        // Tested again on the 27th, it is due again a month later.
        let mut steward = Visitor::of(&stage, &stage.cast.steward).await;
        for paper in PAPERS {
            steward.test(&lamp, paper, ("4", "8")).await;
        }
        clock.set(datetime!(2027-01-28 06:00 UTC));
        tick(&app).await.unwrap();
        let second = told(&stage, &stage.cast.steward).await;
        assert_eq!(second.len(), 2, "{second:?}");
        assert!(second[0].contains("since Wed 27 Jan 2027."), "{second:?}");
    });
}

/// What somebody's notices say, newest first.
async fn told(stage: &Stage, person: &Person) -> Vec<String> {
    let page = Visitor::of(stage, person).await.open("/notices").await;
    page.page().all(".events li p")
}

#[test]
fn a_handover_says_what_is_to_be_tested_and_when_the_next_test_is_due() {
    scenario(async |stage| {
        let mut steward = Visitor::of(&stage, &stage.cast.steward).await;
        tested(&mut steward).await;
        steward.add_lamp("Wall screen", "500").await;
        let page = steward.open("/handover").await;
        let sections = page.page().all(".handed section");
        let heading = "Fog tests of lamps and screens";
        let section = sections.iter().find(|each| each.starts_with(heading));
        assert_eq!(
            section.unwrap().trim_start_matches(heading).trim(),
            "Red lamp: fog test again by Fri 25 Dec 2026. \
             Wall screen: no fog test yet. Treat its light as unsafe."
        );
    });
}

#[test]
fn verifying_reckons_a_kept_safe_time_again() {
    let test = FogTested {
        rules: RULES,
        fog_test_id: uuid::Uuid::nil(),
        lamp_id: uuid::Uuid::nil(),
        paper_class_id: uuid::Uuid::nil(),
        hangs: Hanging {
            kind: LampKind::Screen,
            light: String::new(),
            distance_tenths_mm: 5_000,
            space_id: None,
        },
        clean_s: Some(240),
        fogged_s: Some(480),
        safe_s: Some(169),
        again_by: "2027-11-25".to_owned(),
    };
    assert_eq!(test.recheck().unwrap(), None);
    let wrong = FogTested {
        safe_s: Some(170),
        ..test.clone()
    };
    let said = wrong.recheck().unwrap().unwrap();
    assert!(said.contains("170 s") && said.contains("169 s"), "{said}");
    let none = FogTested {
        clean_s: None,
        ..test
    };
    assert!(none.recheck().unwrap().is_some());
}
