//! The form to note sheets: its last choice, what nobody counted, what went through
//! the toner, and trays that nobody knows.

use time::Duration;
use wetside::bench::Step;
use wetside::products::Kind;

use super::{beside, follow, note_form, verdict};
use crate::harness::{Stage, scenario};

#[test]
fn the_same_again_takes_three_taps_at_most_from_the_board() {
    scenario(async |stage: Stage| {
        let bench = stage.bench().await;
        let member = stage.cast.member.clone();
        let mut browser = stage.browser(&member).await;
        let form = note_form(&stage, &mut browser).await;
        browser
            .submit(&form.fill("How many sheets", "7"))
            .await
            .expect(303);
        let once = stage.spent(bench.mix).await;
        assert!(once > 0);

        let board = browser.get(&stage.at("/board")).await.expect(200);
        let mut taps = 0;
        let page = follow(&mut browser, &board, "Note sheets on First line").await;
        taps += 1;
        let form = page.page().form("Note them").unwrap();
        assert_eq!(form.value("sheets"), Some("7"));
        let noted = browser.submit_and_follow(&form).await.expect(200);
        taps += 1;
        assert!(taps <= 3, "{taps}");
        assert_eq!(noted.page().heading(), "Noted");
        assert_eq!(stage.spent(bench.mix).await, 2 * once);
    });
}

/// The middle one of three counts. Source: arithmetic.
#[test]
fn where_nobody_counted_the_usual_number_is_taken_and_a_test_is_asked_for() {
    scenario(async |stage: Stage| {
        let bench = stage.bench().await;
        let member = stage.cast.member.clone();
        for count in [2, 9, 4] {
            stage.note(&member, &bench, 0, count).await.unwrap();
        }
        assert_eq!(verdict(&stage, &member).await, "Ready");
        let before = stage.spent(bench.mix).await;
        let mut browser = stage.browser(&member).await;
        let form = note_form(&stage, &mut browser).await;
        // What stands in the field counts nothing then.
        let form = form
            .fill("How many sheets", "many")
            .choose("Nobody counted");
        let noted = browser.submit_and_follow(&form).await.expect(200);
        let said = noted.page().main();
        assert!(
            said.contains("Nobody counted: 4 sheets are taken"),
            "{said}"
        );
        // Four sheets of 8×10 in at 100 a litre: common practice, no source.
        assert_eq!(stage.spent(bench.mix).await - before, 40_000_000);
        assert_eq!(verdict(&stage, &member).await, "Test first");
    });
}

#[test]
fn toned_is_asked_only_where_the_line_has_a_toner() {
    scenario(async |stage: Stage| {
        let bench = stage.bench().await;
        let member = stage.cast.member.clone();
        let mut browser = stage.browser(&member).await;
        let page = browser.get(&stage.at("/sheets/new")).await.expect(200);
        assert!(
            !page
                .page()
                .all(".target-name")
                .contains(&"Toned".to_owned())
        );

        stage.measured_exhaust().await;
        let toner = stage
            .bath(bench.line, Kind::Toner, Step::Toner, |_| {})
            .await;
        let form = note_form(&stage, &mut browser).await;
        browser.submit(&form.clone()).await.expect(303);
        assert_eq!(stage.spent(toner).await, 0, "not every print is toned");
        let form = note_form(&stage, &mut browser).await;
        let noted = browser.submit_and_follow(&form.choose("Toned")).await;
        let said = noted.page().main();
        assert!(said.contains("Selenium-type toner"), "{said}");

        // Before it stood there no print can have gone through it.
        let form = note_form(&stage, &mut browser).await.choose("Toned");
        stage.pass(Duration::hours(1));
        let form = form
            .choose("Earlier")
            .with("day", "2026-11-25")
            .fill("Time", "12:00");
        let page = browser.submit(&form).await.expect(422);
        assert_eq!(beside(&page), ["line"]);
    });
}

#[test]
fn an_unknown_tray_is_offered_after_the_refusal_and_not_before() {
    scenario(async |stage: Stage| {
        let bench = stage.bench().await;
        let member = stage.cast.member.clone();
        let mut browser = stage.browser(&member).await;
        let tick = "Note it as an unknown tray".to_owned();
        let page = browser.get(&stage.at("/sheets/new")).await.expect(200);
        assert!(!page.page().all(".target-name").contains(&tick));
        let form = note_form(&stage, &mut browser).await;
        // It was mixed at one o'clock.
        let form = form
            .fill("How many sheets", "3")
            .choose("Earlier")
            .with("day", "2026-11-25")
            .fill("Time", "12.15");
        let page = browser.submit(&form).await.expect(422);
        assert_eq!(beside(&page), ["line"]);
        let form = page.page().form("Note them").unwrap();
        assert_eq!(form.value("sheets"), Some("3"));
        assert_eq!(form.value("time"), Some("12.15"));
        let noted = browser.submit_and_follow(&form.choose(&tick)).await;
        let said = noted.page().main();
        assert!(
            said.contains("Nothing recorded stood in this line then"),
            "{said}"
        );
        assert_eq!(stage.spent(bench.mix).await, 0);
        // The time itself stands beside its own field.
        let form = note_form(&stage, &mut browser).await.choose("Earlier");
        let form = form.with("day", "2026-11-25").fill("Time", "23:00");
        let page = browser.submit(&form).await.expect(422);
        assert_eq!(beside(&page), ["time"]);
    });
}
