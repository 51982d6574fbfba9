//! The other rows of the verdict, reached by what people do.

use time::Duration;
use wetside::bench::Step;
use wetside::products::Kind;

use super::{Bath, set};
use crate::harness::{Stage, scenario};

/// Teaching's limit of a first bath is 2 g/L. Source: ICI teaching figures by
/// `trade.md` 4; the starter product carries it.
#[test]
fn silver_measured_at_the_limit_is_replaced_and_never_extended() {
    scenario(async |stage: Stage| {
        let bath = Bath::of(&stage, Kind::Fixer, Step::FirstFixer, |_| {}).await;
        bath.check("silver", &[("Silver", "1999")]).await;
        assert_eq!(bath.verdict().await, "Ready");
        bath.check("silver", &[("Silver", "2000")]).await;
        assert_eq!(bath.verdict().await, "Replace");
        let reason = bath.reason().await;
        assert!(reason.contains("2000 mg/L"), "{reason}");
        let answer = bath.extend("1").await.expect(422);
        assert!(
            answer
                .page()
                .main()
                .contains("measured silver over its limit")
        );
    });
}

/// The starter developer works from 18 to 22 °C. Source: from memory.
#[test]
fn a_temperature_out_of_range_asks_for_another() {
    scenario(async |stage: Stage| {
        let bath = Bath::developer(&stage).await;
        for (celsius, verdict) in [
            ("17.9", "Test first"),
            ("18", "Ready"),
            ("22.1", "Test first"),
            ("22", "Ready"),
        ] {
            let said = [("Temperature of the bath", celsius)];
            bath.check("temperature", &said).await;
            assert_eq!(bath.verdict().await, verdict, "{celsius}");
        }
        let links = {
            let said = [("Temperature of the bath", "17")];
            bath.check("temperature", &said).await;
            bath.page().await.all(".next a.button")
        };
        assert_eq!(links, ["Take the temperature", "Note sheets"]);
    });
}

/// An unheated room asks for a temperature every four hours: `trade.md` 4.
#[test]
fn an_unheated_room_asks_for_the_temperature_after_four_hours() {
    scenario(async |stage: Stage| {
        set(&stage, |settings| settings.is_unheated = true).await;
        let bath = Bath::developer(&stage).await;
        stage.pass(Duration::minutes(239));
        assert_eq!(bath.verdict().await, "Ready");
        stage.pass(Duration::minutes(1));
        assert_eq!(bath.verdict().await, "Test first");
        let reason = bath.reason().await;
        assert!(
            reason.contains("No temperature was taken since 13:00"),
            "{reason}"
        );
        let said = [("Temperature of the bath", "20")];
        bath.check("temperature", &said).await;
        assert_eq!(bath.verdict().await, "Ready");
    });
}

#[test]
fn a_bath_of_turned_colour_is_replaced() {
    scenario(async |stage: Stage| {
        let bath = Bath::of(&stage, Kind::StopBath, Step::StopBath, |_| {}).await;
        let fresh = [("The colour of a fresh bath", "")];
        bath.check("indicator_colour", &fresh).await;
        assert_eq!(bath.verdict().await, "Ready");
        bath.check("indicator_colour", &[("It has turned", "")])
            .await;
        assert_eq!(bath.verdict().await, "Replace");
    });
}

/// A stop bath is used up from pH 5.2 on: `trade.md` 4, common practice.
#[test]
fn the_ph_of_a_stop_bath_passes_below_its_limit() {
    scenario(async |stage: Stage| {
        let bath = Bath::of(&stage, Kind::StopBath, Step::StopBath, |_| {}).await;
        bath.check("ph", &[("pH", "5.199")]).await;
        assert_eq!(bath.verdict().await, "Ready");
        assert!(bath.page().await.main().contains("pH: 5.199: passed"));
        bath.check("ph", &[("pH", "5.2")]).await;
        assert_eq!(bath.verdict().await, "Replace");
    });
}

#[test]
fn sheets_of_unknown_number_ask_for_the_test_of_the_bath() {
    scenario(async |stage: Stage| {
        let bath = Bath::developer(&stage).await;
        bath.note_uncounted().await;
        assert_eq!(bath.verdict().await, "Test first");
        let deeds = bath.page().await.all(".next a.button");
        assert_eq!(deeds, ["Make the test: test print", "Note sheets"]);
        bath.check("test_print", &[("Good, as when fresh", "")])
            .await;
        assert_eq!(bath.verdict().await, "Ready");
    });
}

#[test]
fn a_failed_check_is_replaced_and_a_later_good_one_does_not_wash_it_off() {
    scenario(async |stage: Stage| {
        let bath = Bath::developer(&stage).await;
        bath.check("test_print", &[("Not good", "")]).await;
        assert_eq!(bath.verdict().await, "Replace");
        bath.check("test_print", &[("Good, as when fresh", "")])
            .await;
        assert_eq!(bath.verdict().await, "Replace");
        let answer = bath.extend("1").await.expect(422);
        assert!(answer.page().main().contains("a failed check"));
    });
}
