//! A steward keeps what is known of a space; everyone reads it.

use super::{FLOOR, HEIGHT, Visitor, figures, word};
use crate::harness::scenario;

#[test]
fn a_room_of_which_nobody_knows_anything_is_unmeasured() {
    scenario(async |stage| {
        let mut member = Visitor::of(&stage, &stage.cast.member).await;
        let page = member.air().await;
        assert_eq!(word(&page), "Unmeasured");
        let main = page.page().main();
        assert!(main.contains("Treat the air as standing still."), "{main}");
        assert!(main.contains("may not start here: no exhaust was measured"));
        assert_eq!(figures(&page), ["unmeasured"]);
        assert!(page.page().all(".safe-time").is_empty());
        assert!(!main.contains("Record a measurement"), "{main}");
        assert!(main.contains("Nothing yet."));
    });
}

#[test]
fn every_figure_is_shown_with_its_arithmetic() {
    scenario(async |stage| {
        let mut steward = Visitor::steward(&stage).await;
        let page = steward.size("20", "2.6").await;
        assert_eq!(word(&page), "Unmeasured");
        let page = steward.measure("80").await;
        assert_eq!(word(&page), "Short");
        // 5.08 L/s for each of 20 m²: International Mechanical Code 2018, Table 403.3.1.1.
        let said = page.page().main();
        assert!(
            said.contains("80 L/s were measured Wed 25 Nov 2026. It is 21.6 L/s less"),
            "{said}"
        );
        // 80 L/s are 288 m³ an hour.
        assert_eq!(
            figures(&page),
            ["52 m³", "80 L/s", "5.54 an hour", "101.6 L/s", "21.6 L/s"]
        );
        let how = page.page().all(".sum .how");
        for (how, start) in how.iter().zip([
            "20 m² × 2.6 m",
            "Wed 25 Nov 2026. By steward",
            "80 L/s for an hour ÷ 52 m³",
            "20 m² of floor × 5.08 L/s for each m² (IMC 2018, Table 403.3.1.1)",
            "101.6 L/s − 80 L/s",
        ]) {
            assert!(how.starts_with(start), "{how}");
        }
        // ln 10 ÷ 5.538 an hour × 3 is 74.8 min: CDC 2003, Table B.1.
        let times = page.page().all(".safe-time");
        assert_eq!(times[0], "1 h 15 min");
        assert_eq!(times.len(), 3);
        let how = &page.page().all(".safe-said")[0];
        assert!(how.contains("2.303 ÷ 5.54 an hour × 3"), "{how}");
        assert!(said.contains("the mixing factor here is 3, of 1 to 10"));
    });
}

#[test]
fn enough_is_said_to_be_as_much_as_wanted_and_no_more() {
    scenario(async |stage| {
        let mut steward = Visitor::steward(&stage).await;
        steward.size("20", "2.6").await;
        let page = steward.measure("101.6").await;
        assert_eq!(word(&page), "As much as wanted");
        let said = page.page().main();
        assert!(
            said.contains("it says nothing of what you breathe over a tray"),
            "{said}"
        );
        let mut member = Visitor::of(&stage, &stage.cast.member).await;
        let list = member.open("/air").await;
        assert_eq!(word(&list), "As much as wanted");
    });
}

#[test]
fn nothing_measured_is_unmeasured() {
    scenario(async |stage| {
        let mut steward = Visitor::steward(&stage).await;
        steward.size("20", "2.6").await;
        let page = steward.measure("0").await;
        assert_eq!(word(&page), "Unmeasured");
        let said = page.page().main();
        assert!(said.contains("is no exhaust at all"), "{said}");
        assert!(page.page().all(".safe-time").is_empty());
    });
}

#[test]
fn what_is_wrong_with_a_record_is_said_beside_it() {
    scenario(async |stage| {
        let mut steward = Visitor::steward(&stage).await;
        let page = steward.air().await;
        let page = steward.follow(&page, "Floor, height and rule").await;
        let form = page.page().form("Keep the change").unwrap();
        assert_eq!(form.value("mixing"), Some("3"));
        let wrong = [
            (FLOOR, "0.2"),
            (HEIGHT, "60"),
            ("Mixing factor", "11"),
            ("Your own figure", "5 m"),
        ];
        let refused = steward.send(&page, "Keep the change", &wrong).await;
        let refused = refused.expect(422);
        let problems = refused.page().problems();
        let fields: Vec<&str> = problems.iter().map(|(field, _)| field.as_str()).collect();
        assert_eq!(fields, ["floor", "height", "mixing", "own"]);
        assert!(problems[2].1.contains("from 1 to 10"), "{problems:?}");
        let form = page.page().form("Keep the change").unwrap();
        let own = form.choose("A figure of your own");
        let refused = steward.browser.submit(&own).await.expect(422);
        assert_eq!(refused.page().problems()[0].0, "own");
        let own = own.fill("Your own figure", "60");
        let refused = steward.browser.submit(&own).await.expect(422);
        assert_eq!(refused.page().problems()[0].0, "basis");
        let form = page.page().form("Keep the change").unwrap();
        let odd = form.fill("Your own figure", "60");
        let refused = steward.browser.submit(&odd).await.expect(422);
        let said = &refused.page().problems()[0].1;
        assert!(said.contains("belongs to a rule of your own"), "{said}");
    });
}

#[test]
fn a_figure_of_ones_own_needs_no_floor() {
    scenario(async |stage| {
        let mut steward = Visitor::steward(&stage).await;
        let page = steward.air().await;
        let page = steward.follow(&page, "Floor, height and rule").await;
        let form = page.page().form("Keep the change").unwrap();
        let form = form
            .choose("A figure of your own")
            .fill("Your own figure", "60")
            .fill("Where that figure comes from", "Building permit, page 4");
        steward.browser.submit_and_follow(&form).await.expect(200);
        let page = steward.measure("90 m³/h").await;
        assert_eq!(word(&page), "Short");
        let how = page.page().all(".sum .how");
        assert!(how[1].contains("Building permit, page 4"), "{how:?}");
        // 90 m³/h are 25 L/s.
        assert_eq!(figures(&page), ["25 L/s", "60 L/s", "35 L/s"]);
        // Without a volume nobody can say how long it takes.
        assert!(
            page.page()
                .main()
                .contains("None: it takes measured exhaust")
        );
    });
}

#[test]
fn each_space_has_air_of_its_own() {
    scenario(async |stage| {
        let mut steward = Visitor::steward(&stage).await;
        let page = steward.open("/bench/spaces").await;
        let name = [("Name of the space", "Cellar")];
        steward.send_on(&page, "Add the space", &name).await;
        steward.size("20", "2.6").await;
        steward.measure("120").await;
        let page = steward.open("/air").await;
        assert_eq!(
            page.page().all(".air-word"),
            ["As much as wanted", "Unmeasured"]
        );
        let page = steward.follow(&page, "Cellar").await;
        assert_eq!(page.page().heading(), "Air: Cellar");
        assert_eq!(figures(&page).len(), 1);
    });
}
