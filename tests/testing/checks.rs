//! Checks and what they are held against.

use time::Duration;
use wetside::bench::Step;
use wetside::products::Kind;

use super::Bath;
use crate::harness::{Stage, scenario};

/// Twice the fresh time means exhausted. Source: common practice, no source.
#[test]
fn a_fixer_that_clears_in_twice_the_fresh_time_is_replaced() {
    scenario(async |stage: Stage| {
        let bath = Bath::fixer(&stage).await;
        bath.clearing("30", "20", true).await;
        assert_eq!(bath.verdict().await, "Ready");
        bath.clearing("59", "21.9", false).await;
        assert_eq!(bath.verdict().await, "Ready");
        let said = bath.page().await.main();
        assert!(said.contains("1.97 times the fresh time: passed"), "{said}");
        bath.clearing("60", "22", false).await;
        assert_eq!(bath.verdict().await, "Replace");
        let reason = bath.reason().await;
        assert!(reason.contains("2 times as long as when fresh"), "{reason}");
    });
}

/// Two clearing times compare within 2 °C only: `trade.md` 4, common practice.
#[test]
fn what_does_not_compare_has_no_ratio_and_hides_none() {
    scenario(async |stage: Stage| {
        let bath = Bath::fixer(&stage).await;
        bath.clearing("70", "20", false).await;
        assert_eq!(bath.verdict().await, "Ready");
        let said = bath.page().await.main();
        assert!(said.contains("with no fresh time to compare"), "{said}");
        bath.clearing("30", "20", true).await;
        bath.clearing("70", "22.1", false).await;
        assert_eq!(bath.verdict().await, "Ready");
        bath.clearing("70", "22", false).await;
        assert_eq!(bath.verdict().await, "Replace");
        // What compares with nothing says nothing against it.
        bath.clearing("31", "25", false).await;
        assert_eq!(bath.verdict().await, "Replace");
    });
}

/// 1.25 times shows the time by factor, 1.5 times is Replace. Source: from memory.
#[test]
fn a_developer_that_slows_develops_by_the_factor_and_then_is_replaced() {
    scenario(async |stage: Stage| {
        let bath = Bath::developer(&stage).await;
        bath.emergence("12", "20", true).await;
        bath.emergence("14", "20", false).await;
        assert!(!bath.page().await.main().contains("by the factor"));
        bath.emergence("15", "20", false).await;
        assert_eq!(bath.verdict().await, "Ready");
        // 90 s ÷ 12 s = 7.5, and 7.5 × 15 s = 112.5 s: the definition of the factor.
        let said = bath.page().await.main();
        assert!(
            said.contains("15 s until it showed × 7.5 = 1 min 53 s"),
            "{said}"
        );
        bath.emergence("18", "20", false).await;
        assert_eq!(bath.verdict().await, "Replace");
        let reason = bath.reason().await;
        assert!(reason.contains("1.5 times as long to show"), "{reason}");
    });
}

/// At another temperature the fresh time is carried there by Q first:
/// 12 s · (60/90)^(2/4) = 9.798 s at 22 °C, and 14 s are 1.43 of that, 15 s 1.53.
/// Source: the definition of Q.
#[test]
fn emergence_at_another_temperature_is_corrected_first() {
    scenario(async |stage: Stage| {
        let bath = Bath::developer(&stage).await;
        bath.emergence("12", "20", true).await;
        bath.emergence("14", "22", false).await;
        assert_eq!(bath.verdict().await, "Ready");
        bath.emergence("15", "22", false).await;
        assert_eq!(bath.verdict().await, "Replace");
    });
}

#[test]
fn a_used_bath_gives_no_fresh_time() {
    scenario(async |stage: Stage| {
        let bath = Bath::developer(&stage).await;
        let member = stage.cast.member.clone();
        bath.note(&member, 9).await;
        bath.emergence("12", "20", true).await;
        bath.note(&member, 1).await;
        let said = [
            ("Until the image showed", "20"),
            ("Temperature of the bath", "20"),
            ("Paper", "The room’s RC"),
            (
                "The bath is fresh: later times are held against this one",
                "",
            ),
        ];
        let answer = bath.sent(&member, "emergence", &said).await.expect(422);
        let problems = answer.page().problems();
        assert_eq!(problems[0].0, "fresh");
        assert!(problems[0].1.contains("fresh no more"), "{problems:?}");
        let kept = answer.page().form("Record it").unwrap();
        assert_eq!(kept.value("seconds"), Some("20"));
    });
}

/// A passed test is good for an hour. Source: `trade.md` 4, from memory.
#[test]
fn a_passed_test_is_good_for_an_hour() {
    scenario(async |stage: Stage| {
        let bath = Bath::developer(&stage).await;
        bath.note(&stage.cast.member, 80).await;
        assert_eq!(bath.verdict().await, "Test first");
        bath.check("test_print", &[("Good, as when fresh", "")])
            .await;
        assert_eq!(bath.verdict().await, "Ready");
        let reason = bath.reason().await;
        assert!(
            reason.contains("The test print passed at 13:00"),
            "{reason}"
        );
        stage.pass(Duration::minutes(59));
        assert_eq!(bath.verdict().await, "Ready");
        stage.pass(Duration::minutes(1));
        assert_eq!(bath.verdict().await, "Test first");
    });
}

/// … or for a tenth of the capacity, and never past all of it.
#[test]
fn a_passed_test_is_good_for_a_tenth_of_the_capacity() {
    scenario(async |stage: Stage| {
        let bath = Bath::developer(&stage).await;
        let member = stage.cast.member.clone();
        bath.note(&member, 80).await;
        bath.check("test_print", &[("Good, as when fresh", "")])
            .await;
        bath.note(&member, 9).await;
        assert_eq!(bath.verdict().await, "Ready");
        bath.note(&member, 1).await;
        assert_eq!(bath.verdict().await, "Test first");
        bath.check("test_print", &[("Good, as when fresh", "")])
            .await;
        bath.note(&member, 9).await;
        assert_eq!(bath.verdict().await, "Ready");
        bath.note(&member, 1).await;
        assert_eq!(bath.verdict().await, "Replace");
        bath.check("test_print", &[("Good, as when fresh", "")])
            .await;
        assert_eq!(bath.verdict().await, "Replace");
    });
}

/// A test of an hour ago is worth no more for being written down now.
#[test]
fn a_check_counts_from_when_it_was_made() {
    scenario(async |stage: Stage| {
        let bath = Bath::developer(&stage).await;
        bath.note(&stage.cast.member, 80).await;
        stage.pass(Duration::hours(2));
        // 12:00 UTC is 13:00 in Berlin in winter.
        let earlier = |time: &'static str| {
            [
                ("Good, as when fresh", ""),
                ("Earlier", ""),
                ("Wed 25 Nov 2026", ""),
                ("Time", time),
            ]
        };
        bath.check("test_print", &earlier("13:30")).await;
        assert_eq!(bath.verdict().await, "Test first");
        bath.check("test_print", &earlier("14:30")).await;
        assert_eq!(bath.verdict().await, "Ready");
        let member = stage.cast.member.clone();
        let answer = bath.sent(&member, "test_print", &earlier("12:30")).await;
        let problems = answer.expect(422).page().problems();
        assert_eq!(problems[0].0, "time");
    });
}

#[test]
fn only_checks_that_fit_the_bath_are_offered_and_taken() {
    scenario(async |stage: Stage| {
        let wanted: [(Kind, Step, &[&str]); 5] = [
            (
                Kind::Developer,
                Step::Developer,
                &["Test print", "Emergence time", "Temperature", "pH"],
            ),
            (
                Kind::StopBath,
                Step::StopBath,
                &["Indicator’s colour", "pH", "Temperature"],
            ),
            (
                Kind::Fixer,
                Step::FirstFixer,
                &["Clearing time", "Silver test", "Temperature"],
            ),
            (
                Kind::HoldingWater,
                Step::HoldingWater,
                &["Temperature", "pH"],
            ),
            (Kind::WashAid, Step::WashAid, &["Temperature", "pH"]),
        ];
        for (kind, step, kinds) in wanted {
            let bath = Bath::of(&stage, kind, step, |_| {}).await;
            let mut browser = stage.browser(&stage.cast.member).await;
            let page = browser.get(&bath.at("check")).await.expect(200);
            assert_eq!(page.page().all(".kinds a"), kinds);
            let form = page.page().form("Record it").unwrap();
            let other = form.with("kind", "residual_silver").with("outcome", "good");
            let answer = browser.submit(&other).await.expect(422);
            assert_eq!(answer.page().problems()[0].0, "kind");
        }
    });
}

#[test]
fn everything_wrong_with_a_check_is_said_at_once() {
    scenario(async |stage: Stage| {
        let bath = Bath::fixer(&stage).await;
        let member = stage.cast.member.clone();
        let said = [
            ("Until the film was clear", "half a minute"),
            ("Temperature of the bath", "70"),
            ("Film", " "),
        ];
        let answer = bath.sent(&member, "clearing", &said).await.expect(422);
        let problems = answer.page().problems();
        let fields: Vec<&str> = problems.iter().map(|(field, _)| field.as_str()).collect();
        assert_eq!(fields, ["seconds", "bath_temperature", "sample"]);
        assert!(problems[1].1.contains("60 °C"), "{problems:?}");
        let answer = bath.sent(&member, "residual_silver", &[]).await.expect(422);
        assert_eq!(answer.page().problems()[0].0, "outcome");
    });
}
