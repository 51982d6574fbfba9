//! Measurements: each stays, one that was mistaken is taken back, and what stands still
//! or gives off is said.

use time::Duration;
use wetside::outages::What;
use wetside::outages::actions::{NewOutage, begin};
use wetside::rights::NoteOutages;

use super::{FLOW, HOW, Visitor, word};
use crate::harness::{new_key, scenario};

#[test]
fn the_last_one_by_its_day_counts_and_each_stays() {
    scenario(async |stage| {
        let mut steward = Visitor::steward(&stage).await;
        steward.size("20", "2.6").await;
        steward.measure("120").await;
        // An older certificate that is entered later.
        let page = steward.air().await;
        let page = steward.follow(&page, "Record a measurement").await;
        let fields = [
            (FLOW, "50"),
            ("Day", "2025-03-04"),
            ("Who measured", "The chimney sweep"),
            (HOW, "Certificate in the folder"),
        ];
        let page = steward.send_on(&page, "Record it", &fields).await;
        assert_eq!(word(&page), "As much as wanted");
        let ledger = page.page().all(".ledger li");
        assert_eq!(ledger.len(), 2);
        assert!(ledger[0].contains("Exhaust: 50 L/s."), "{ledger:?}");
        assert!(ledger[0].contains("By The chimney sweep: Certificate in the folder."));
        assert!(ledger[0].contains("Tue 4 Mar 2025"), "{ledger:?}");
    });
}

#[test]
fn a_measurement_is_taken_back_once_with_the_reason() {
    scenario(async |stage| {
        let mut steward = Visitor::steward(&stage).await;
        steward.size("20", "2.6").await;
        steward.measure("60").await;
        let page = steward.measure("600").await;
        assert_eq!(word(&page), "As much as wanted");
        let links = page.page().links();
        let back = links
            .iter()
            .find(|(words, _)| words.starts_with("Take it back"))
            .unwrap();
        let ask = steward.browser.get(&back.1).await.expect(200);
        let refused = steward.send(&ask, "Take it back", &[]).await.expect(422);
        assert_eq!(refused.page().problems()[0].0, "words");
        let why = [("Why", "A digit too many")];
        let page = steward.send_on(&ask, "Take it back", &why).await;
        assert_eq!(word(&page), "Short");
        let again = steward.browser.get(&back.1).await.expect(200);
        assert!(again.page().main().contains("taken back before"));
        let twice = steward
            .send(&ask, "Take it back", &[("Why", "Twice")])
            .await;
        // The same form under the same key, with other words.
        twice.expect(422);
        let mut member = Visitor::of(&stage, &stage.cast.member).await;
        let page = member.air().await;
        assert!(!page.page().main().contains("Take it back"));
        assert!(page.page().main().contains("Taken back by entry"));
    });
}

#[test]
fn what_is_wrong_with_a_measurement_is_said_beside_it() {
    scenario(async |stage| {
        let mut steward = Visitor::steward(&stage).await;
        let page = steward.air().await;
        let page = steward.follow(&page, "Record a measurement").await;
        let wrong = [(FLOW, "much"), ("Day", "yesterday"), (HOW, "")];
        let refused = steward.send(&page, "Record it", &wrong).await.expect(422);
        let problems = refused.page().problems();
        let fields: Vec<&str> = problems.iter().map(|(field, _)| field.as_str()).collect();
        assert_eq!(fields, ["flow", "measured_on", "how"]);
        let ahead = [(FLOW, "80"), ("Day", "2026-11-26"), (HOW, "By ear")];
        let refused = steward.send(&page, "Record it", &ahead).await.expect(422);
        assert_eq!(refused.page().problems()[0].0, "measured_on");
    });
}

#[test]
fn no_clearing_time_is_told_while_a_tray_stands_open() {
    scenario(async |stage| {
        let bench = stage.bench().await;
        let mut steward = Visitor::steward(&stage).await;
        steward.size("20", "2.6").await;
        let page = steward.measure("120").await;
        assert!(page.page().all(".safe-time").is_empty());
        let main = page.page().main();
        assert!(
            main.contains("None while a tray stands open")
                && main.contains("First line, Developer"),
            "{main}"
        );
        let keep = steward.open(&format!("/mixes/{}/keep", bench.mix)).await;
        let form = keep.page().form("It is covered").unwrap();
        steward.browser.submit(&form).await.expect(303);
        let page = steward.air().await;
        assert_eq!(page.page().all(".safe-time").len(), 3);
        let main = page.page().main();
        assert!(main.contains("Counted from the moment the trays are covered"));
    });
}

#[test]
fn while_the_fan_is_off_the_figures_say_so() {
    scenario(async |stage| {
        let mut steward = Visitor::steward(&stage).await;
        steward.size("20", "2.6").await;
        steward.measure("120").await;
        let permit = stage.permit::<NoteOutages>(&stage.cast.member).await;
        let off = NewOutage {
            what: What::Fan,
            space_id: None,
            happened_at_us: None,
        };
        let app = &stage.installation.app;
        begin(app, &permit.unwrap(), new_key(), off).await.unwrap();
        stage.pass(Duration::minutes(1));
        let page = steward.air().await;
        assert_eq!(word(&page), "Fan off");
        let main = page.page().main();
        assert!(main.contains("none of these figures holds now"), "{main}");
        assert!(page.page().all(".safe-time").is_empty());
    });
}

#[test]
fn without_a_fan_no_exhaust_is_measured() {
    scenario(async |stage| {
        let mut steward = Visitor::steward(&stage).await;
        let page = steward.air().await;
        let measure = steward.follow(&page, "Record a measurement").await;
        let page = steward.follow(&page, "Floor, height and rule").await;
        let form = page.page().form("Keep the change").unwrap().choose("No");
        steward.browser.submit_and_follow(&form).await.expect(200);
        // A form that was served before.
        let late = [(FLOW, "80"), (HOW, "By ear")];
        let refused = steward.send(&measure, "Record it", &late).await.expect(422);
        assert_eq!(refused.page().problems()[0].0, "of");
        let page = steward.air().await;
        assert!(page.page().main().contains("No fan takes air out here."));
        let page = steward.follow(&page, "Record a measurement").await;
        assert_eq!(page.page().all(".target-name"), ["Airing"]);
    });
}
