//! A steward keeps the checks.

use super::{Visitor, lead};
use crate::harness::scenario;

#[test]
fn a_room_without_checks_is_told_so_and_gets_the_starters_with_one_press() {
    scenario(async |stage| {
        let mut steward = Visitor::of(&stage, &stage.cast.steward).await;
        let mut member = Visitor::of(&stage, &stage.cast.member).await;
        assert!(member.on_board().await.is_empty());
        let page = member.open("/checks").await;
        let empty = page.page().first(".empty").unwrap();
        assert!(empty.contains("nobody here knows"), "{empty}");
        assert!(page.page().form("Copy in the starter checks").is_none());
        // A check of the room's own keeps its name and its words.
        steward.add_check("Eyewash", "3", &[]).await;
        let page = steward.open("/checks").await;
        let form = page.page().form("Copy in the starter checks").unwrap();
        let page = steward.browser.submit_and_follow(&form).await.expect(200);
        let names = page.page().all(".lamp h3");
        assert!(names.len() >= 8, "{names:?}");
        assert_eq!(names.iter().filter(|name| *name == "Eyewash").count(), 1);
        assert_eq!(page.page().all(".lamp b"), vec!["Due today."; names.len()]);
        assert!(page.page().form("Copy in the starter checks").is_none());
        // Sent twice by mistake, nothing is there twice.
        let page = steward.browser.submit_and_follow(&form).await.expect(200);
        assert_eq!(page.page().all(".lamp h3"), names);
        let page = steward.follow(&page, "Fire extinguisher").await;
        let said = page.page().main();
        assert!(
            said.contains("Every 30 days: looked at monthly: 29 CFR 1910.157(e)(2), from memory."),
            "{said}"
        );
    });
}

#[test]
fn everything_wrong_with_a_check_is_said_at_once_and_what_was_typed_stays() {
    scenario(async |stage| {
        let mut steward = Visitor::of(&stage, &stage.cast.steward).await;
        let page = steward.open("/checks/new").await;
        let wrong = [
            ("Name", ""),
            ("How it is done", " "),
            ("Do it again after", "0"),
            ("The least that passes", "4"),
            ("The most that passes", "x"),
        ];
        let refused = steward.send(&page, "Add it", &wrong).await.expect(422);
        let problems = refused.page().problems();
        let mut fields: Vec<&str> = problems.iter().map(|(field, _)| field.as_str()).collect();
        fields.sort_unstable();
        assert_eq!(
            fields,
            ["basis", "days", "how", "most", "name", "on_failure", "unit"]
        );
        let form = refused.page().form("Add it").unwrap();
        assert_eq!(form.value("days"), Some("0"));
        assert_eq!(form.value("least"), Some("4"));
        steward.add_check("Eyewash", "7", &[]).await;
        let page = steward.open("/checks/new").await;
        let form = page.page().form("Add it").unwrap();
        let same = form
            .fill("Name", "Eyewash")
            .fill("How it is done", "x")
            .fill("What to do where it fails", "x")
            .fill("Do it again after", "7")
            .fill("Where the number of days comes from", "x");
        let swapped = same
            .clone()
            .fill("Unit", "L/s")
            .fill("The least that passes", "5")
            .fill("The most that passes", "4");
        let refused = steward.browser.submit(&swapped).await.expect(422);
        assert_eq!(refused.page().problems()[0].0, "most");
        let refused = steward.browser.submit(&same).await.expect(422);
        assert_eq!(refused.page().problems()[0].0, "name");
    });
}

#[test]
fn a_changed_check_keeps_its_day_and_a_retired_one_is_never_due() {
    scenario(async |stage| {
        let mut steward = Visitor::of(&stage, &stage.cast.steward).await;
        let check = steward.add_check("Eyewash", "7", &[]).await;
        let check = steward.do_check(&check, super::WELL, "").await;
        let page = steward.follow(&check, "Change it").await;
        let form = page.page().form("Keep the change").unwrap();
        assert_eq!(form.value("days"), Some("7"));
        let form = form.fill("Do it again after", "1");
        let page = steward.browser.submit_and_follow(&form).await.expect(200);
        assert!(
            lead(&page).starts_with("Due by Wed 2 Dec 2026."),
            "{}",
            lead(&page)
        );
        stage.pass(time::Duration::days(8));
        let mut steward = Visitor::of(&stage, &stage.cast.steward).await;
        assert_eq!(steward.on_board().await.len(), 1);
        let page = steward.browser.get(&check.path).await.expect(200);
        let ask = steward.follow(&page, "Retire it").await;
        let page = steward.send_on(&ask, "Retire it", &[]).await;
        assert!(page.page().all(".lamp h3").is_empty());
        assert!(steward.on_board().await.is_empty());
        let record = format!("{}/record", check.path);
        let form = steward.browser.get(&record).await.expect(200);
        let form = form.page().form(super::RECORD).unwrap().choose(super::WELL);
        steward.browser.submit(&form).await.expect(422);
        let page = steward.open("/checks").await;
        let form = page.page().form("Bring back Eyewash").unwrap();
        let page = steward.browser.submit_and_follow(&form).await.expect(200);
        assert_eq!(page.page().all(".lamp h3"), ["Eyewash"]);
    });
}
