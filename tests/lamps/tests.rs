//! What a test found, typed as people type it, and taken back where it was mistaken.

use super::{CLEAN, FOGGED, RECORD, Visitor, large, said};
use crate::harness::scenario;

/// Safe times from the formula of ANSI IT2.26-1998: half of √(240 · 480) s is 169.7 s,
/// half of √(270 · 540) s is 190.9 s.
#[test]
fn times_are_read_as_people_type_them_and_the_safe_time_is_reckoned() {
    scenario(async |stage| {
        let mut steward = Visitor::of(&stage, &stage.cast.steward).await;
        let mut member = Visitor::of(&stage, &stage.cast.member).await;
        steward.add_lamp("Red lamp", "1200").await;
        let page = member.open("/lamps").await;
        let mut page = member.follow(&page, "Red lamp").await;
        for (clean, fogged, time, beside) in [
            ("4", "8 min", "2 min 49 s", ""),
            ("4:30", "540 s", "3 min 10 s", ""),
            ("16", "", "8 min", "Nothing fogged up to 16 min"),
            (
                "",
                "1",
                "No safe time",
                "fogged at its shortest step of 1 min",
            ),
        ] {
            page = member.test(&page, "RC", (clean, fogged)).await;
            assert_eq!(large(&page)[0], time);
            let said = &said(&page)[0];
            assert!(said.contains(beside), "{said}");
        }
        let found = page.page().all(".ledger-said p:first-child");
        assert_eq!(
            found,
            [
                "RC: fogged at 1 min already. No safe time.",
                "RC: nothing fogged up to 16 min. Safe time 8 min, a lower figure.",
                "RC: clean up to 4 min 30 s, fogged from 9 min on. Safe time 3 min 10 s.",
                "RC: clean up to 4 min, fogged from 8 min on. Safe time 2 min 49 s.",
            ]
        );
        let book = member.open("/book?kind=fog_tested").await;
        let said = book.page().all(".ledger-said");
        assert_eq!(
            said[3],
            "Fog test of Red lamp. RC: clean up to 4 min, fogged from 8 min on. Safe time 2 min 49 s."
        );
    });
}

#[test]
fn steps_that_say_nothing_are_mended_beside_their_field() {
    scenario(async |stage| {
        let mut steward = Visitor::of(&stage, &stage.cast.steward).await;
        let page = steward.add_lamp("Red lamp", "1200").await;
        let page = steward.follow(&page, "Record a fog test").await;
        let form = page.page().form(RECORD).unwrap();
        let sent = steward.browser.submit(&form).await.expect(422);
        assert_eq!(sent.page().problems()[0].0, "paper_class");
        let form = form.choose("RC");
        for (clean, fogged, field, words) in [
            ("", "", "clean", "or both"),
            ("8", "4", "fogged", "Look at the strips again"),
            ("4", "4", "fogged", "Look at the strips again"),
            ("1 s", "4", "clean", "from 2 s to 24 h"),
            ("4", "25 h", "fogged", "from 2 s to 24 h"),
            ("4:75", "8", "clean", "as a number"),
            ("4 days", "8", "clean", "This unit"),
        ] {
            let typed = form.clone().fill(CLEAN, clean).fill(FOGGED, fogged);
            let sent = steward.browser.submit(&typed).await.expect(422);
            let problems = sent.page().problems();
            assert_eq!(problems.len(), 1, "{clean} {fogged}: {problems:?}");
            assert_eq!(problems[0].0, field, "{clean} {fogged}");
            assert!(problems[0].1.contains(words), "{problems:?}");
            let again = sent.page().form(RECORD).unwrap();
            assert_eq!(again.value("clean"), Some(clean));
        }
        let nothing = steward.open("/book?kind=fog_tested").await;
        assert!(nothing.page().all(".ledger-said").is_empty());
    });
}

#[test]
fn a_test_of_yesterday_holds_from_yesterday_on_and_the_later_one_counts() {
    scenario(async |stage| {
        let mut steward = Visitor::of(&stage, &stage.cast.steward).await;
        let page = steward.add_lamp("Red lamp", "1200").await;
        let page = steward.test(&page, "RC", ("4", "8")).await;
        // Today is Wed 25 Nov 2026.
        let today = "Tested Wed 25 Nov 2026, again by Thu 25 Nov 2027.";
        assert_eq!(said(&page)[0], today);
        let form = steward.follow(&page, "Record a fog test").await;
        let form = form.page().form(RECORD).unwrap().choose("RC");
        let form = form.fill(CLEAN, "8").fill(FOGGED, "16").choose("Earlier");
        let form = form.choose("Tue 24 Nov 2026").fill("Time", "18:00");
        let page = steward.browser.submit_and_follow(&form).await.expect(200);
        assert_eq!(large(&page)[0], "2 min 49 s");
        assert_eq!(said(&page)[0], today);
        let more = page.page().all(".ledger-said p:nth-child(2)");
        assert!(more[0].ends_with("again by Wed 24 Nov 2027."), "{more:?}");
        let form = form.fill("Time", "25:00");
        let fresh = steward.follow(&page, "Record a fog test").await;
        let fresh = fresh.page().form(RECORD).unwrap();
        let form = form.with("key", fresh.value("key").unwrap());
        let sent = steward.browser.submit(&form).await.expect(422);
        assert_eq!(sent.page().problems()[0].0, "time");
    });
}

#[test]
fn a_mistaken_test_is_taken_back_by_a_steward_and_the_one_before_counts_again() {
    scenario(async |stage| {
        let mut steward = Visitor::of(&stage, &stage.cast.steward).await;
        let mut trained = Visitor::of(&stage, &stage.cast.trained).await;
        let page = steward.add_lamp("Red lamp", "1200").await;
        let page = steward.test(&page, "RC", ("4", "8")).await;
        stage.pass(time::Duration::minutes(1));
        let page = steward.test(&page, "RC", ("16", "32")).await;
        assert_eq!(large(&page)[0], "11 min 18 s");
        let seq = page.page().first(".ledger-seq").unwrap();
        let words = format!(
            "Take it back: the test of entry {}",
            seq.trim_start_matches("Entry ")
        );
        let ask = steward.follow(&page, &words).await;
        let links = page.page().links();
        let (_, path) = links.iter().find(|(text, _)| *text == words).unwrap();
        trained.browser.get(path).await.expect(403);
        trained.browser.post(path, &[]).await.expect(403);
        let refused = steward.send(&ask, "Take it back", &[("Why", " ")]).await;
        assert_eq!(refused.expect(422).page().problems()[0].0, "reason");
        let why = [("Why", "The enlarger was on")];
        let page = steward.send_on(&ask, "Take it back", &why).await;
        assert_eq!(large(&page)[0], "2 min 49 s");
        assert_eq!(page.page().all(".ledger-said .undone").len(), 1);
        let again = steward.browser.get(path).await.expect(200);
        assert!(again.page().form("Take it back").is_none());
        let book = trained.open("/book?kind=fog_test_taken_back").await;
        let said = book.page().first(".ledger-said").unwrap();
        assert!(
            said.ends_with("of Red lamp, was taken back: The enlarger was on."),
            "{said}"
        );
    });
}

#[test]
fn a_treasurer_reads_the_record_and_writes_nothing_in_it() {
    scenario(async |stage| {
        let mut steward = Visitor::of(&stage, &stage.cast.steward).await;
        let page = steward.add_lamp("Red lamp", "1200").await;
        let mut treasurer = Visitor::of(&stage, &stage.cast.treasurer).await;
        let list = treasurer.open("/lamps").await;
        assert_eq!(large(&list)[0], "Never tested");
        let test = format!("{}/test", page.path);
        treasurer.browser.get(&test).await.expect(403);
        treasurer.browser.post(&test, &[]).await.expect(403);
        let mut member = Visitor::of(&stage, &stage.cast.member).await;
        let change = format!("{}/change", page.path);
        member.browser.post(&change, &[]).await.expect(403);
        let mut neighbour = stage.browser(&stage.cast.neighbour).await;
        neighbour.get(&page.path).await.expect(404);
    });
}
