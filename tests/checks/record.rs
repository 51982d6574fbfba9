//! Whoever prints here does a check and writes down what was found.

use super::{FAILED, RECORD, REMARK, Visitor, WELL, lead};
use crate::harness::scenario;

#[test]
fn a_check_is_done_in_two_pages_and_is_due_again_by_its_days() {
    scenario(async |stage| {
        let mut steward = Visitor::of(&stage, &stage.cast.steward).await;
        let mut member = Visitor::of(&stage, &stage.cast.member).await;
        let check = steward.add_check("Eyewash", "7", &[]).await;
        assert_eq!(lead(&check), "Due today. Never done here.");
        let list = member.open("/checks").await;
        assert_eq!(list.page().all(".lamp h3"), ["Eyewash"]);
        let form = member.follow(&list, "Do this check: Eyewash").await;
        let form = form.page().form(RECORD).unwrap().choose(WELL);
        let page = member.browser.submit_and_follow(&form).await.expect(200);
        assert_eq!(
            lead(&page),
            "Due by Wed 2 Dec 2026. Last on Wed 25 Nov 2026. Passed."
        );
        // Sent twice by mistake, it is recorded once.
        let page = member.browser.submit_and_follow(&form).await.expect(200);
        assert_eq!(page.page().all(".ledger li").len(), 1);
        let list = member.open("/checks").await;
        assert!(list.page().all(".lamp h3").is_empty());
        assert_eq!(list.page().all(".check-name"), ["Eyewash"]);
    });
}

#[test]
fn a_failure_wants_a_remark_and_says_what_to_do_on_page_board_and_notice() {
    scenario(async |stage| {
        let mut steward = Visitor::of(&stage, &stage.cast.steward).await;
        let mut member = Visitor::of(&stage, &stage.cast.member).await;
        let check = steward.add_check("Eyewash", "7", &[]).await;
        let page = member.follow(&check, "Do this check").await;
        assert!(page.page().main().contains("If it failed: Leave it alone."));
        let form = page.page().form(RECORD).unwrap();
        let refused = member.browser.submit(&form).await.expect(422);
        assert_eq!(refused.page().problems()[0].0, "outcome");
        let refused = member
            .browser
            .submit(&form.choose(FAILED))
            .await
            .expect(422);
        assert_eq!(refused.page().problems()[0].0, "remark");
        let form = refused.page().form(RECORD).unwrap();
        assert_eq!(
            form.value("outcome"),
            Some("failed"),
            "what was chosen stays"
        );
        let form = form.fill(REMARK, "It only drips.");
        let page = member.browser.submit_and_follow(&form).await.expect(200);
        assert_eq!(
            page.page().first(".flash").unwrap(),
            "It failed. Leave it alone."
        );
        let failed = "Eyewash: its check of Wed 25 Nov 2026 failed. Leave it alone.";
        assert_eq!(member.on_board().await, [failed]);
        let notices = steward.open("/notices").await;
        let said = notices.page().all(".events li p");
        assert_eq!(said[0], "new The room check Eyewash failed: It only drips.");
        // Passed again, nothing is left of it.
        let page = member.do_check(&page, WELL, "New hose").await;
        assert!(page.page().first(".flash").is_none());
        assert!(member.on_board().await.is_empty());
    });
}

#[test]
fn what_is_measured_outside_the_limit_does_not_pass() {
    scenario(async |stage| {
        let mut steward = Visitor::of(&stage, &stage.cast.steward).await;
        let limit = [("Unit", "L/s"), ("The least that passes", "60.5")];
        let check = steward.add_check("Fan flow", "90", &limit).await;
        let page = steward.follow(&check, "Do this check").await;
        let form = page.page().form(RECORD).unwrap().choose(WELL);
        let refused = steward.browser.submit(&form).await.expect(422);
        assert_eq!(refused.page().problems()[0].0, "measured");
        let low = form.clone().fill("Measured", "60.499");
        let refused = steward.browser.submit(&low).await.expect(422);
        let (field, sentence) = &refused.page().problems()[0];
        assert_eq!(field, "measured");
        assert!(sentence.contains("outside the limit"), "{sentence}");
        let at = form.clone().fill("Measured", "60.5");
        let page = steward.browser.submit_and_follow(&at).await.expect(200);
        assert!(
            lead(&page).ends_with("Passed, 60.5 L/s."),
            "{}",
            lead(&page)
        );
        let page = steward.follow(&page, "Do this check").await;
        let form = page.page().form(RECORD).unwrap().choose(FAILED);
        let form = form.fill("Measured", "12").fill(REMARK, "A bird’s nest");
        let page = steward.browser.submit_and_follow(&form).await.expect(200);
        assert!(
            lead(&page).ends_with("Failed, 12 L/s: A bird’s nest."),
            "{}",
            lead(&page)
        );
    });
}

#[test]
fn a_mistaken_result_is_taken_back_by_a_steward_and_the_one_before_holds_again() {
    scenario(async |stage| {
        let mut steward = Visitor::of(&stage, &stage.cast.steward).await;
        let mut member = Visitor::of(&stage, &stage.cast.member).await;
        let check = steward.add_check("Eyewash", "7", &[]).await;
        member.do_check(&check, WELL, "").await;
        stage.pass(time::Duration::days(1));
        let page = member.do_check(&check, FAILED, "No water").await;
        assert!(page.page().all(".take-back").is_empty());
        let page = steward.browser.get(&page.path).await.expect(200);
        let seq = page.page().first(".ledger-seq").unwrap();
        let words = format!(
            "Take it back: the check of entry {}",
            seq.trim_start_matches("Entry ")
        );
        let links = page.page().links();
        let (_, path) = links.iter().find(|(text, _)| *text == words).unwrap();
        member.browser.get(path).await.expect(403);
        member.browser.post(path, &[]).await.expect(403);
        let ask = steward.follow(&page, &words).await;
        let refused = steward.send(&ask, "Take it back", &[("Why", " ")]).await;
        assert_eq!(refused.expect(422).page().problems()[0].0, "reason");
        let why = [("Why", "The tap was shut")];
        let page = steward.send_on(&ask, "Take it back", &why).await;
        assert_eq!(
            lead(&page),
            "Due by Wed 2 Dec 2026. Last on Wed 25 Nov 2026. Passed."
        );
        assert_eq!(page.page().all(".ledger-said .undone").len(), 1);
        let again = steward.browser.get(path).await.expect(200);
        assert!(again.page().form("Take it back").is_none());
        let book = member.open("/book?kind=room_check_taken_back").await;
        let said = book.page().first(".ledger-said").unwrap();
        assert!(
            said.ends_with("Eyewash, was taken back: The tap was shut."),
            "{said}"
        );
    });
}

#[test]
fn a_treasurer_reads_the_checks_and_writes_nothing() {
    scenario(async |stage| {
        let mut steward = Visitor::of(&stage, &stage.cast.steward).await;
        let page = steward.add_check("Eyewash", "7", &[]).await;
        let mut treasurer = Visitor::of(&stage, &stage.cast.treasurer).await;
        let list = treasurer.open("/checks").await;
        assert_eq!(list.page().all(".lamp h3"), ["Eyewash"]);
        assert!(!list.page().main().contains("Do this check"));
        let record = format!("{}/record", page.path);
        treasurer.browser.get(&record).await.expect(403);
        treasurer.browser.post(&record, &[]).await.expect(403);
        let mut member = Visitor::of(&stage, &stage.cast.member).await;
        let change = format!("{}/change", page.path);
        member.browser.get(&change).await.expect(403);
        member.browser.post(&change, &[]).await.expect(403);
        let starters = stage.at("/checks/starters");
        member.browser.post(&starters, &[]).await.expect(403);
    });
}
