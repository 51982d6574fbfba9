//! What a steward alone may do: take back, and extend.

use axum::http::StatusCode;
use time::Duration;
use wetside::bench::Step;
use wetside::products::Kind;

use super::Bath;
use crate::harness::{Stage, scenario};

#[test]
fn contamination_counts_at_once_and_a_steward_alone_undoes_it() {
    scenario(async |stage: Stage| {
        let bath = Bath::developer(&stage).await;
        bath.flag("Nobody can say, or not all of it").await;
        assert_eq!(bath.verdict().await, "Replace");
        for person in [&stage.cast.member, &stage.cast.trained] {
            let page = bath.seen_by(person).await.page();
            let links = page.links();
            assert!(
                !links
                    .iter()
                    .any(|(words, _)| words.starts_with("Take back"))
            );
        }
        let page = bath.seen_by(&stage.cast.steward).await.page();
        let links = page.links();
        let back = links
            .iter()
            .find(|(words, _)| words.starts_with("Take back"));
        let path = back.unwrap().1.clone();
        for person in [
            &stage.cast.member,
            &stage.cast.trained,
            &stage.cast.treasurer,
        ] {
            let mut browser = stage.browser(person).await;
            let answer = browser.post(&path, &[]).await;
            assert_eq!(answer.status, StatusCode::FORBIDDEN);
        }
        // Without a reason it stays.
        let mut browser = stage.browser(&stage.cast.steward).await;
        let form = browser.get(&path).await.expect(200).page();
        let form = form.form("Take it back").unwrap();
        let answer = browser.submit(&form).await.expect(422);
        assert_eq!(answer.page().problems()[0].0, "reason");
        assert_eq!(bath.verdict().await, "Replace");
        bath.take_back().await;
        assert_eq!(bath.verdict().await, "Ready");
        let said = bath.page().await.all(".events .undone");
        assert_eq!(said[0], "Contamination: nobody can say what came into it.");
        // Taken back is taken back once.
        let form = form.fill("Why", "Once more");
        browser.submit(&form).await.expect(422);
    });
}

/// Acid and sulfite give off sulfur dioxide. Source: ICSC 1134.
#[test]
fn what_can_do_harm_together_is_said_large() {
    scenario(async |stage: Stage| {
        let bath = Bath::fixer(&stage).await;
        assert!(bath.page().await.first(".alarm").is_none());
        bath.flag("An acid").await;
        let alarm = bath.page().await.first(".alarm").unwrap();
        assert!(alarm.contains("toxic gas"), "{alarm}");
        assert!(alarm.contains("Emergency"), "{alarm}");
        bath.take_back().await;
        assert!(bath.page().await.first(".alarm").is_none());
    });
}

#[test]
fn a_flag_says_what_came_in_or_that_nobody_can() {
    scenario(async |stage: Stage| {
        let bath = Bath::developer(&stage).await;
        let mut browser = stage.browser(&stage.cast.member).await;
        let page = browser.get(&bath.at("flag")).await.expect(200).page();
        let form = page.form("Flag it").unwrap();
        let answer = browser.submit(&form).await.expect(422);
        assert_eq!(answer.page().problems()[0].0, "groups");
        assert_eq!(bath.verdict().await, "Ready");
        bath.flag("Fixer").await;
        let said = bath.page().await.main();
        assert!(
            said.contains("Contamination: fixer came into it."),
            "{said}"
        );
    });
}

#[test]
fn an_extension_reads_test_first_with_name_and_end_and_ends() {
    scenario(async |stage: Stage| {
        let bath = Bath::developer(&stage).await;
        let answer = bath.extend("1").await.expect(422);
        assert!(answer.page().main().contains("need not be replaced yet"));
        bath.note(&stage.cast.member, 100).await;
        assert_eq!(bath.verdict().await, "Replace");
        for hours in ["0", "24.1", "1000000"] {
            let answer = bath.extend(hours).await.expect(422);
            assert_eq!(answer.page().problems()[0].0, "hours", "{hours}");
        }
        bath.extend("2").await.expect(303);
        assert_eq!(bath.verdict().await, "Test first");
        let said = bath.page().await.main();
        let wanted = format!(
            "Extended by {} until 15:00 Wed: Last prints of the evening.",
            stage.cast.steward.name
        );
        assert!(said.contains(&wanted), "{said}");
        let deeds = bath.page().await.all(".next a.button");
        assert_eq!(deeds[0], "Make the test: test print");
        stage.pass(Duration::minutes(119));
        assert_eq!(bath.verdict().await, "Test first");
        stage.pass(Duration::minutes(1));
        assert_eq!(bath.verdict().await, "Replace");
    });
}

/// 24 hours at most: `trade.md` 4.
#[test]
fn an_extension_lasts_a_day_at_most() {
    scenario(async |stage: Stage| {
        let bath = Bath::fixer(&stage).await;
        // 40 sheets of RC a litre as the only bath: from memory.
        bath.note(&stage.cast.member, 40).await;
        bath.extend("24").await.expect(303);
        stage.pass(Duration::minutes(24 * 60 - 1));
        assert_eq!(bath.verdict().await, "Test first");
        stage.pass(Duration::minutes(1));
        assert_eq!(bath.verdict().await, "Replace");
    });
}

#[test]
fn an_extension_ends_with_a_worse_reading() {
    scenario(async |stage: Stage| {
        let bath = Bath::fixer(&stage).await;
        bath.clearing("30", "20", true).await;
        bath.clearing("60", "20", false).await;
        bath.extend("4").await.expect(303);
        assert_eq!(bath.verdict().await, "Test first");
        bath.clearing("60", "20", false).await;
        assert_eq!(bath.verdict().await, "Test first");
        bath.clearing("61", "20", false).await;
        assert_eq!(bath.verdict().await, "Replace");
    });
}

#[test]
fn contamination_is_never_extended_and_ends_an_extension() {
    scenario(async |stage: Stage| {
        let bath = Bath::developer(&stage).await;
        bath.note(&stage.cast.member, 100).await;
        bath.extend("2").await.expect(303);
        bath.flag("Fixer").await;
        assert_eq!(bath.verdict().await, "Replace");
        let answer = bath.extend("2").await.expect(422);
        assert!(
            answer
                .page()
                .main()
                .contains("No extension covers contamination")
        );
        let page = bath.seen_by(&stage.cast.steward).await.page();
        let deeds = page.all(".deeds a.button");
        assert!(!deeds.contains(&"Let it be used a little longer".to_owned()));
    });
}

#[test]
fn nobody_but_a_steward_extends() {
    scenario(async |stage: Stage| {
        let bath = Bath::of(&stage, Kind::WashAid, Step::WashAid, |_| {}).await;
        for person in [
            &stage.cast.member,
            &stage.cast.trained,
            &stage.cast.treasurer,
        ] {
            let mut browser = stage.browser(person).await;
            let answer = browser.get(&bath.at("extend")).await;
            assert_eq!(answer.status, StatusCode::FORBIDDEN);
        }
    });
}
