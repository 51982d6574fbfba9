//! Sizes and classes.

use super::{Desk, beside, sentence};
use crate::harness::scenario;

#[test]
fn a_size_is_added_changed_retired_and_brought_back() {
    scenario(async |stage| {
        let mut desk = Desk::steward(&stage).await;
        let page = desk.open("/papers").await;
        let fields = [
            ("Name", "13×18 cm"),
            ("Long side", "18 cm"),
            ("Short side", "130"),
        ];
        let page = desk.send_on(&page, "Add the size", &fields).await;
        let row = page.page().all("tr").into_iter();
        let row: Vec<String> = row.filter(|row| row.starts_with("13×18 cm")).collect();
        // 180 × 130 mm over 203.2 × 254 mm (1 in = 25.4 mm exactly) is 0.4534.
        assert_eq!(row, ["13×18 cm180 × 130 mm0.45Change 13×18 cm"]);

        let page = desk.follow(&page, "Change 13×18 cm").await;
        let form = page.page().form("Keep the change").unwrap();
        assert_eq!(form.value("long"), Some("180"));
        let page = desk
            .send_on(&page, "Keep the change", &[("Name", "13×18")])
            .await;
        let page = desk.follow(&page, "Change 13×18").await;
        let page = desk.follow(&page, "Retire the size").await;
        assert_eq!(page.page().heading(), "Retire 13×18?");
        let page = desk.send_on(&page, "Retire it", &[]).await;
        assert!(
            page.page()
                .all("tbody th")
                .iter()
                .all(|name| name != "13×18")
        );
        let page = desk.send_on(&page, "Bring back 13×18", &[]).await;
        assert!(page.page().all("tbody th").contains(&"13×18".to_owned()));
    });
}

#[test]
fn everything_wrong_with_a_size_is_said_at_once_and_what_was_typed_stays() {
    scenario(async |stage| {
        let mut desk = Desk::steward(&stage).await;
        let page = desk.open("/papers").await;
        let fields = [("Long side", "1,5 ft"), ("Short side", "2 mm")];
        let page = desk.send(&page, "Add the size", &fields).await.expect(422);
        assert_eq!(beside(&page), ["size_name", "long", "short"]);
        let form = page.page().form("Add the size").unwrap();
        assert_eq!(form.value("long"), Some("1,5 ft"));
        assert_eq!(form.value("short"), Some("2 mm"));

        let fields = [
            ("Name", "8×10 in"),
            ("Long side", "127"),
            ("Short side", "178"),
        ];
        let page = desk.send(&page, "Add the size", &fields).await.expect(422);
        assert!(sentence(&page, "long").contains("Swap them"));
        let fields = [("Long side", "254"), ("Short side", "203.2")];
        let page = desk.send(&page, "Add the size", &fields).await.expect(422);
        assert!(sentence(&page, "size_name").contains("that name already"));
    });
}

#[test]
fn sending_a_form_twice_adds_one_size() {
    scenario(async |stage| {
        let mut desk = Desk::steward(&stage).await;
        let page = desk.open("/papers").await;
        let fields = [
            ("Name", "Square"),
            ("Long side", "200"),
            ("Short side", "200"),
        ];
        desk.send(&page, "Add the size", &fields).await.expect(303);
        desk.send(&page, "Add the size", &fields).await.expect(303);
        let page = desk.open("/papers").await;
        let names = page.page().all("tbody th");
        assert_eq!(names.iter().filter(|name| *name == "Square").count(), 1);
    });
}

#[test]
fn a_class_is_added_changed_retired_and_brought_back() {
    scenario(async |stage| {
        let mut desk = Desk::steward(&stage).await;
        let page = desk.open("/papers").await;
        let page = desk.send(&page, "Add the class", &[("Class", "FB")]).await;
        let page = page.expect(422);
        assert!(sentence(&page, "class_name").contains("that name already"));
        let fields = [("Class", "Baryta")];
        let page = desk.send_on(&page, "Add the class", &fields).await;
        let page = desk.follow(&page, "Change Baryta").await;
        let page = desk.send(&page, "Keep the change", &[("Class", " ")]).await;
        let page = page.expect(422);
        assert_eq!(beside(&page), ["class_name"]);
        let fields = [("Class", "FB, warm tone")];
        let page = desk.send_on(&page, "Keep the change", &fields).await;
        let page = desk.follow(&page, "Change FB, warm tone").await;
        let page = desk.follow(&page, "Retire the class").await;
        let page = desk.send_on(&page, "Retire it", &[]).await;
        let page = desk.send_on(&page, "Bring back FB, warm tone", &[]).await;
        assert!(page.page().main().contains("Change FB, warm tone"));
    });
}

#[test]
fn an_inch_room_with_a_comma_writes_and_reads_both_its_ways() {
    scenario(async |stage| {
        let mut desk = Desk::steward(&stage).await;
        let page = desk.open("/settings").await;
        let form = page.page().form("Keep these rules").unwrap();
        let form = form.with("units", "inch").with("decimal_mark", ",");
        desk.browser.submit(&form).await.expect(303);
        let page = desk.open("/papers").await;
        // The size's own name; 1 in = 25.4 mm exactly.
        assert!(page.page().main().contains("8×10 in10 × 8 in1"));
        let fields = [
            ("Name", "Panel"),
            ("Long side", "12,5"),
            ("Short side", "254 mm"),
        ];
        let page = desk.send_on(&page, "Add the size", &fields).await;
        assert!(page.page().main().contains("Panel12,5 × 10 in1,56"));
        let fields = [
            ("Name", "Other"),
            ("Long side", "12.5"),
            ("Short side", "10"),
        ];
        let page = desk.send(&page, "Add the size", &fields).await.expect(422);
        assert!(sentence(&page, "long").contains("no other mark"));
    });
}

#[test]
fn what_is_known_of_a_class_s_silver_has_its_range() {
    scenario(async |stage| {
        let mut desk = Desk::steward(&stage).await;
        let page = desk.open("/papers").await;
        assert!(page.page().main().contains("not on file"));
        let page = desk.follow(&page, "Change FB").await;
        // Invented figures: what a paper holds is weak evidence.
        let form = page.page().form("Keep the change").unwrap();
        let form = form
            .with("silver_least", "0.5")
            .with("silver_usual", "1.9")
            .with("silver_most", "1.6")
            .with("kept_least", "20")
            .with("kept_usual", "33 %")
            .with("carry_over", "0.5");
        let wrong = desk.browser.submit(&form).await.expect(422);
        assert_eq!(beside(&wrong), ["kept_most", "carry_over"]);
        let form = form.with("kept_most", "50").with("carry_over", "150");
        let wrong = desk.browser.submit(&form).await.expect(422);
        assert_eq!(beside(&wrong), ["silver_least"]);
        assert!(sentence(&wrong, "silver_least").contains("from the least to the most"));
        let form = form.with("silver_usual", "1.2");
        let page = desk.browser.submit_and_follow(&form).await.expect(200);
        let rows = page.page().all("tr");
        let known = "1.2 g/m² (0.5 to 1.6), of which 33 % (20 to 50) stay in the image";
        let row = format!("FB{known}set by a steward150 ml/m²Change FB");
        assert!(rows.contains(&row), "{rows:?}");

        // Another name keeps them.
        let page = desk.follow(&page, "Change FB").await;
        let page = desk
            .send_on(&page, "Keep the change", &[("Class", "Baryta")])
            .await;
        let rows = page.page().all("tr");
        assert!(
            rows.iter()
                .any(|row| row.starts_with(&format!("Baryta{known}"))),
            "{rows:?}"
        );
        // So does retiring it and bringing it back.
        let page = desk.follow(&page, "Change Baryta").await;
        let page = desk.follow(&page, "Retire the class").await;
        let page = desk.send_on(&page, "Retire it", &[]).await;
        let page = desk.send_on(&page, "Bring back Baryta", &[]).await;
        let rows = page.page().all("tr");
        assert!(
            rows.iter()
                .any(|row| row.starts_with(&format!("Baryta{known}"))),
            "{rows:?}"
        );
    });
}
