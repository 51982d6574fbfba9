//! Lines and trays.

use super::{Desk, beside, sentence};
use crate::harness::{Answer, scenario};

async fn add_tray(desk: &mut Desk, name: &str) -> Answer {
    let page = desk.open("/bench").await;
    let first = "Add the first tray to First line";
    let is_first = page.page().links().iter().any(|(words, _)| words == first);
    let words = if is_first {
        first
    } else {
        "Add a tray to First line"
    };
    let page = desk.follow(&page, words).await;
    let fields = [
        ("Name", name),
        ("Long edge", "300"),
        ("Short edge", "25 cm"),
        ("Floor to rim", "65"),
    ];
    desk.send_on(&page, "Add the tray", &fields).await
}

#[test]
fn trays_stand_in_the_order_prints_travel_and_change_places() {
    scenario(async |stage| {
        let mut desk = Desk::steward(&stage).await;
        for name in ["Developer", "Fixer", "Stop"] {
            add_tray(&mut desk, name).await;
        }
        let page = desk.open("/bench").await;
        // 300 × 250 × 10 mm is 750 ml, × 65 mm 4.875 L.
        let said = page.page().first(".set-tray .hint").unwrap();
        let measured = "Inside 300 × 250 mm, 65 mm deep; least depth 10 mm; \
            750 ml covers a print, 4.88 L fills it to the rim";
        assert_eq!(said, measured);
        let page = desk.send_on(&page, "Earlier: Stop", &[]).await;
        let names = page.page().all(".set-tray h3 a");
        assert_eq!(names, ["Developer", "Stop", "Fixer"]);
        let page = desk.send_on(&page, "Later: Developer", &[]).await;
        let names = page.page().all(".set-tray h3 a");
        assert_eq!(names, ["Stop", "Developer", "Fixer"]);
    });
}

#[test]
fn everything_wrong_with_a_tray_is_said_at_once_and_what_was_typed_stays() {
    scenario(async |stage| {
        let mut desk = Desk::steward(&stage).await;
        let page = desk.open("/bench").await;
        let page = desk.follow(&page, "Add the first tray to First line").await;
        let form = page.page().form("Add the tray").unwrap();
        // 10 mm: common practice, no source.
        assert_eq!(form.value("least_depth"), Some("10"));
        let fields = [
            ("Long edge", "wide"),
            ("Short edge", "4 mm"),
            ("Floor to rim", "5"),
            ("Least depth for a print", ""),
        ];
        let page = desk.send(&page, "Add the tray", &fields).await.expect(422);
        let wrong = [
            "name",
            "inside_long",
            "inside_short",
            "inside_depth",
            "least_depth",
        ];
        assert_eq!(beside(&page), wrong);
        let kept = page.page().form("Add the tray").unwrap();
        assert_eq!(kept.value("inside_long"), Some("wide"));
        let fields = [
            ("Name", "Developer"),
            ("Long edge", "250"),
            ("Short edge", "300"),
            ("Floor to rim", "60"),
            ("Least depth for a print", "70"),
        ];
        let page = desk.send(&page, "Add the tray", &fields).await.expect(422);
        assert!(sentence(&page, "inside_long").contains("Swap them"));
        assert!(sentence(&page, "least_depth").contains("not that deep"));
    });
}

#[test]
fn a_tray_is_changed_retired_and_brought_back() {
    scenario(async |stage| {
        let mut desk = Desk::steward(&stage).await;
        add_tray(&mut desk, "Stop").await;
        let page = add_tray(&mut desk, "Developer").await;
        let page = desk.follow(&page, "Developer").await;
        let fields = [("Name", "Stop")];
        let page = desk
            .send(&page, "Keep the change", &fields)
            .await
            .expect(422);
        assert!(sentence(&page, "name").contains("that name already"));
        let fields = [("Name", "Second bath"), ("Floor to rim", "70,5")];
        let page = desk
            .send(&page, "Keep the change", &fields)
            .await
            .expect(422);
        assert!(sentence(&page, "inside_depth").contains("no other mark"));
        let fields = [("Floor to rim", "70.5")];
        let page = desk.send_on(&page, "Keep the change", &fields).await;
        let page = desk.follow(&page, "Second bath").await;
        let page = desk.follow(&page, "Retire the tray").await;
        assert_eq!(page.page().heading(), "Retire Second bath?");
        let page = desk.send_on(&page, "Retire it", &[]).await;
        assert_eq!(page.page().all(".set-tray h3 a"), ["Stop"]);
        let words = "Bring back Second bath, of First line";
        let page = desk.send_on(&page, words, &[]).await;
        assert_eq!(page.page().all(".set-tray h3 a"), ["Stop", "Second bath"]);
    });
}

#[test]
fn neither_a_full_tray_nor_its_line_is_retired() {
    scenario(async |stage| {
        let bench = stage.bench().await;
        let mut desk = Desk::steward(&stage).await;
        let page = desk
            .open(&format!("/bench/trays/{}/retire", bench.tray))
            .await;
        let page = desk.send(&page, "Retire it", &[]).await.expect(422);
        let said = page.page().first(".summary").unwrap();
        assert!(said.contains("Something stands in there. Discard it first."));
        let form = page.page().form("Keep the change").unwrap();
        assert_eq!(form.value("name"), Some("Developer"));

        let page = desk
            .open(&format!("/bench/lines/{}/retire", bench.line))
            .await;
        let page = desk.send(&page, "Retire it", &[]).await.expect(422);
        let said = page.page().first(".summary").unwrap();
        assert!(said.contains("Something stands in a tray of this line."));
        let page = desk.open("/bench").await;
        assert_eq!(page.page().all(".set-tray h3 a"), ["Developer"]);
    });
}

#[test]
fn a_line_is_added_renamed_retired_and_brought_back() {
    scenario(async |stage| {
        let mut desk = Desk::steward(&stage).await;
        let page = desk.open("/bench").await;
        let name = "Name of the line";
        let page = desk
            .send(&page, "Add the line", &[(name, "First line")])
            .await;
        let page = page.expect(422);
        assert!(sentence(&page, "name").contains("that name already"));
        let page = desk
            .send_on(&page, "Add the line", &[(name, "By the door")])
            .await;
        let page = desk.follow(&page, "Rename or retire By the door").await;
        let page = desk
            .send(&page, "Keep this name", &[(name, "")])
            .await
            .expect(422);
        assert_eq!(beside(&page), ["name"]);
        let page = desk
            .send_on(&page, "Keep this name", &[(name, "Door line")])
            .await;
        let page = desk.follow(&page, "Rename or retire Door line").await;
        let page = desk.follow(&page, "Retire the line").await;
        let page = desk.send_on(&page, "Retire it", &[]).await;
        assert_eq!(page.page().all(".set-line h2"), ["First line"]);
        let page = desk.send_on(&page, "Bring back Door line", &[]).await;
        assert_eq!(page.page().all(".set-line h2"), ["First line", "Door line"]);
    });
}
