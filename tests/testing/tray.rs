//! The page of a tray: the verdict, what to do now, and what else may be done.

use wetside::bench::Step;
use wetside::bench::actions::{NewTray, set_tray};
use wetside::mixes::actions::{NewUnknown, VesselId, report_unknown};
use wetside::products::Kind;
use wetside::rights;

use super::Bath;
use crate::harness::{Stage, new_key, scenario, tray_on};

#[test]
fn a_test_first_says_which_test_and_who_may_make_it() {
    scenario(async |stage: Stage| {
        let bath = Bath::fixer(&stage).await;
        bath.note(&stage.cast.member, 32).await;
        let sentence = "Before anybody prints: clearing time. Every member, trained member and \
            steward may test and record it.";
        let page = bath.page().await;
        assert_eq!(page.first(".next p").unwrap(), sentence);
        let deeds = page.all(".next a.button");
        assert_eq!(deeds, ["Make the test: clearing time", "Note sheets"]);
        let page = bath.seen_by(&stage.cast.treasurer).await.page();
        assert_eq!(page.first(".next p").unwrap(), sentence);
        assert!(page.all(".next a.button").is_empty());
        assert_eq!(page.all(".deeds a.button"), ["Label"]);
        let bath = Bath::of(&stage, Kind::WashAid, Step::WashAid, |_| {}).await;
        // 40 sheets of FB a litre: from memory.
        stage
            .note(&stage.cast.member, &bath.bench, 1, 4)
            .await
            .unwrap();
        assert_eq!(bath.verdict().await, "Ready");
    });
}

#[test]
fn a_replace_leads_to_the_container_for_those_who_may() {
    scenario(async |stage: Stage| {
        let bath = Bath::developer(&stage).await;
        bath.note(&stage.cast.member, 100).await;
        let page = bath.page().await;
        assert!(page.all(".next a.button").is_empty());
        let said = page.first(".next p").unwrap();
        assert!(
            said.contains("A trained member or a steward discards it"),
            "{said}"
        );
        let page = bath.seen_by(&stage.cast.trained).await.page();
        assert_eq!(page.all(".next a.button"), ["Discard"]);
        let deeds = page.all(".deeds a.button");
        assert!(!deeds.contains(&"Let it be used a little longer".to_owned()));
        let page = bath.seen_by(&stage.cast.steward).await.page();
        let deeds = page.all(".deeds a.button");
        assert!(deeds.contains(&"Let it be used a little longer".to_owned()));
    });
}

#[test]
fn liquid_nobody_can_name_is_the_stewards() {
    scenario(async |stage: Stage| {
        let bath = Bath::fixer(&stage).await;
        let app = &stage.installation.app;
        let steward = &stage.cast.steward;
        let permit = stage.permit::<rights::KeepBench>(steward).await.unwrap();
        let tray = set_tray(app, &permit, new_key(), tray_on(bath.bench.line));
        let tray = tray.await.unwrap().id("tray").unwrap();
        let permit = stage.permit::<rights::TestMix>(&stage.cast.member).await;
        let new = NewUnknown {
            vessel: VesselId::Tray(tray),
            volume_ul: 500_000,
            remark: "Clear, no smell".to_owned(),
        };
        report_unknown(app, &permit.unwrap(), new_key(), new)
            .await
            .unwrap();
        let path = stage.at(&format!("/trays/{tray}"));
        let mut browser = stage.browser(&stage.cast.trained).await;
        let page = browser.get(&path).await.expect(200).page();
        assert_eq!(page.first(".tray-said .verdict-word").unwrap(), "Unknown");
        assert!(page.all(".next a.button").is_empty());
        let said = page.first(".next p").unwrap();
        assert!(said.contains("call a steward"), "{said}");
        let mut browser = stage.browser(steward).await;
        let page = browser.get(&path).await.expect(200).page();
        assert_eq!(page.all(".next a.button"), ["Discard"]);
    });
}

/// Where prints wash no mix stands, and prints are tested on what fixed them last.
#[test]
fn a_wash_has_no_mix_and_leads_to_the_tests_of_the_last_fixer() {
    scenario(async |stage: Stage| {
        let bath = Bath::fixer(&stage).await;
        let app = &stage.installation.app;
        let steward = &stage.cast.steward;
        let permit = stage.permit::<rights::KeepBench>(steward).await.unwrap();
        let tray = NewTray {
            name: "Wash".to_owned(),
            step: Some(Step::Wash),
            ..tray_on(bath.bench.line)
        };
        let tray = set_tray(app, &permit, new_key(), tray).await.unwrap();
        let path = stage.at(&format!("/trays/{}", tray.id("tray").unwrap()));
        let mut browser = stage.browser(&stage.cast.member).await;
        let board = browser.get(&stage.at("/board")).await.expect(200).page();
        let stations = board.all(".station");
        assert!(stations[1].contains("Prints wash here"), "{stations:?}");
        assert!(!stations[1].contains("Nothing recorded"), "{stations:?}");
        let page = browser.get(&path).await.expect(200).page();
        assert!(page.all(".verdict-word").is_empty());
        let links = page.links();
        let test = links
            .iter()
            .find(|(words, _)| words == "Test a washed print");
        let page = browser.get(&test.unwrap().1).await.expect(200).page();
        let chosen = page.first(".kinds a[aria-current]").unwrap();
        assert_eq!(chosen, "Spot test for residual thiosulfate");
        let mut browser = stage.browser(&stage.cast.treasurer).await;
        let page = browser.get(&path).await.expect(200).page();
        assert!(
            !page
                .links()
                .iter()
                .any(|(words, _)| words == "Test a washed print")
        );
    });
}
