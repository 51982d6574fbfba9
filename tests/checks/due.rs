//! When a check is due: by the calendar on the room's wall, on the board at that very
//! moment, to stewards once, and in a handover.

use time::Duration;
use time::macros::datetime;
use wetside::checks::{Measure, RoomChecked};
use wetside::identity::Person;
use wetside::jobs::tick;
use wetside::logbook::Entry;

use super::{FAILED, Visitor, WELL, lead};
use crate::harness::{Stage, scenario, scenario_alone};

/// Source: IANA time zone database, file europe: Berlin goes forward on 28 March 2027, so
/// the seven days from Monday are an hour short.
#[test]
fn a_week_over_the_change_of_the_clock_ends_at_midnight_all_the_same() {
    scenario(async |stage| {
        let clock = &stage.installation.clock;
        let mut steward = Visitor::of(&stage, &stage.cast.steward).await;
        let check = steward.add_check("Eyewash", "7", &[]).await;
        // Half past eleven on Monday evening there.
        clock.set(datetime!(2027-03-22 22:30 UTC));
        let mut member = Visitor::of(&stage, &stage.cast.member).await;
        let page = member.do_check(&check, WELL, "").await;
        assert!(
            lead(&page).starts_with("Due by Mon 29 Mar 2027."),
            "{}",
            lead(&page)
        );
        // Monday is over at 22:00 UTC, in summer time.
        clock.set(datetime!(2027-03-29 21:59:59 UTC));
        let mut member = Visitor::of(&stage, &stage.cast.member).await;
        assert!(member.on_board().await.is_empty());
        let page = member.open("/checks").await;
        assert_eq!(page.page().all(".lamp b"), ["Due today."]);
        stage.pass(Duration::seconds(1));
        let overdue = "Eyewash: its check is overdue since Mon 29 Mar 2027. Do it before you \
                       rely on it.";
        assert_eq!(member.on_board().await, [overdue]);
        let page = member.open("/checks").await;
        assert_eq!(page.page().all(".safe-none"), ["Overdue"]);
    });
}

#[test]
fn the_leap_day_is_a_day() {
    scenario(async |stage| {
        let clock = &stage.installation.clock;
        let mut steward = Visitor::of(&stage, &stage.cast.steward).await;
        let check = steward.add_check("Spill kit", "30", &[]).await;
        clock.set(datetime!(2028-01-30 12:00 UTC));
        let mut member = Visitor::of(&stage, &stage.cast.member).await;
        let page = member.do_check(&check, WELL, "").await;
        assert!(
            lead(&page).starts_with("Due by Tue 29 Feb 2028."),
            "{}",
            lead(&page)
        );
    });
}

#[test]
fn a_check_that_is_not_for_the_board_is_on_the_page_alone() {
    scenario(async |stage| {
        let mut steward = Visitor::of(&stage, &stage.cast.steward).await;
        let check = steward.add_check("Spill kit", "30", &[]).await;
        let page = steward.follow(&check, "Change it").await;
        let mut form = page.page().form("Keep the change").unwrap();
        form.fields.retain(|(name, _)| name != "is_on_board");
        let check = steward.browser.submit_and_follow(&form).await.expect(200);
        steward.do_check(&check, FAILED, "It is empty").await;
        stage.pass(Duration::days(1));
        assert!(steward.on_board().await.is_empty());
        let page = steward.open("/checks").await;
        assert_eq!(page.page().all(".safe-none"), ["Failed"]);
    });
}

#[test]
fn stewards_are_told_once_of_each_day_a_check_was_due() {
    scenario_alone(async |stage| {
        let app = stage.installation.app.clone();
        let clock = stage.installation.clock.clone();
        let mut steward = Visitor::of(&stage, &stage.cast.steward).await;
        let check = steward.add_check("Eyewash", "7", &[]).await;
        tick(&app).await.unwrap();
        assert!(told(&stage, &stage.cast.steward).await.is_empty());
        for night in [
            datetime!(2026-11-26 06:00 UTC),
            datetime!(2026-11-27 06:00 UTC),
        ] {
            clock.set(night);
            tick(&app).await.unwrap();
        }
        let since = |day: &str| format!("The room check Eyewash is overdue since {day} 2026.");
        let first = told(&stage, &stage.cast.steward).await;
        assert_eq!(first, [since("Wed 25 Nov")]);
        assert!(told(&stage, &stage.cast.member).await.is_empty());
        let mut member = Visitor::of(&stage, &stage.cast.member).await;
        member.do_check(&check, WELL, "").await;
        clock.set(datetime!(2026-12-05 06:00 UTC));
        tick(&app).await.unwrap();
        let second = told(&stage, &stage.cast.steward).await;
        assert_eq!(second, [since("Fri 4 Dec"), since("Wed 25 Nov")]);
    });
}

/// What somebody's notices say, newest first.
async fn told(stage: &Stage, person: &Person) -> Vec<String> {
    let page = Visitor::of(stage, person).await.open("/notices").await;
    let said = page.page().all(".events li p");
    let words = said.iter().map(|each| each.trim_start_matches("new "));
    words.map(str::to_owned).collect()
}

#[test]
fn a_handover_says_what_is_to_be_checked_and_when() {
    scenario(async |stage| {
        let mut steward = Visitor::of(&stage, &stage.cast.steward).await;
        let eyewash = steward.add_check("Eyewash", "7", &[]).await;
        let page = steward.add_check("Spill kit", "30", &[]).await;
        steward.do_check(&page, WELL, "").await;
        steward.do_check(&eyewash, FAILED, "No water").await;
        stage.pass(Duration::days(8));
        let mut steward = Visitor::of(&stage, &stage.cast.steward).await;
        let page = steward.open("/handover").await;
        let sections = page.page().all(".handed section");
        let heading = "Room checks";
        let section = sections.iter().find(|each| each.starts_with(heading));
        assert_eq!(
            section.unwrap().trim_start_matches(heading).trim(),
            "Eyewash: its check of Wed 25 Nov 2026 failed. Leave it alone. The next check is \
             overdue since Wed 2 Dec 2026. Spill kit: due by Fri 25 Dec 2026."
        );
    });
}

#[test]
fn fog_tests_are_listed_with_a_link_and_are_no_second_record() {
    scenario(async |stage| {
        let mut steward = Visitor::of(&stage, &stage.cast.steward).await;
        let page = steward.open("/lamps/new").await;
        let fields = [
            ("Name", "Red lamp"),
            ("Distance to the nearest paper", "1200"),
        ];
        let lamp = steward.send_on(&page, "Add it", &fields).await;
        let page = steward.open("/checks").await;
        assert_eq!(
            page.page().all(".checks li"),
            ["Red lampRed lamp: no fog test yet. Treat its light as unsafe."]
        );
        let page = steward.follow(&page, "Red lamp").await;
        assert_eq!(page.path, lamp.path);
    });
}

#[test]
fn verifying_holds_a_passed_figure_against_its_own_limit() {
    let kept = RoomChecked {
        result_id: uuid::Uuid::nil(),
        room_check_id: uuid::Uuid::nil(),
        has_passed: true,
        remark: String::new(),
        measured_thousandths: Some(50_000),
        measure: Some(Measure {
            unit: "L/s".to_owned(),
            least_thousandths: Some(50_000),
            most_thousandths: None,
        }),
        due_on: "2026-12-02".to_owned(),
    };
    assert_eq!(kept.recheck().unwrap(), None);
    let lower = RoomChecked {
        measured_thousandths: Some(49_999),
        ..kept
    };
    assert!(lower.recheck().unwrap().is_some());
    let failed = RoomChecked {
        has_passed: false,
        ..lower
    };
    assert_eq!(failed.recheck().unwrap(), None);
}
