//! Dilutions: how much water, how much paper, how long.

use super::{Desk, beside, sentence};
use crate::harness::{Answer, scenario};

async fn developer(desk: &mut Desk) -> Answer {
    let page = desk.open("/products").await;
    desk.follow(&page, "Neutral paper developer").await
}

#[test]
fn a_changed_figure_is_common_practice_no_more() {
    scenario(async |stage| {
        let mut desk = Desk::steward(&stage).await;
        let page = developer(&mut desk).await;
        let page = desk.follow(&page, "Change 1+9").await;
        let mut form = page.page().form("Keep the change").unwrap();
        let mut capacities = vec!["90", "50", ""].into_iter();
        for (name, value) in &mut form.fields {
            if name == "capacity" {
                *value = capacities.next().unwrap().to_owned();
            }
        }
        let page = desk.browser.submit_and_follow(&form).await.expect(200);
        let said = page.page().first("section.dilution").unwrap();
        assert!(
            said.contains("A litre, RCset by a steward90 sheets"),
            "{said}"
        );
        assert!(
            said.contains("FBcommon practice, no source50 sheets"),
            "{said}"
        );
        assert!(!said.contains("cool tone"), "{said}");
        assert!(
            said.contains("In the open traycommon practice, no source8 h"),
            "{said}"
        );
        // Sent twice by mistake, it stays as it is.
        desk.browser.submit_and_follow(&form).await.expect(200);
        let page = developer(&mut desk).await;
        assert!(page.page().main().contains("version 2 "));
    });
}

#[test]
fn a_steward_says_where_a_figure_comes_from() {
    scenario(async |stage| {
        let mut desk = Desk::steward(&stage).await;
        let page = developer(&mut desk).await;
        let page = desk.follow(&page, "Change 1+14").await;
        let fields = [
            ("In the open tray", "6.5"),
            ("In a stoppered bottle", "3 days"),
            ("Where these come from", "the maker’s sheet of March"),
        ];
        let page = desk.send_on(&page, "Keep the change", &fields).await;
        let said = page.page().all("section.dilution")[1].clone();
        assert!(
            said.contains("the maker’s sheet of March6 h 30 min"),
            "{said}"
        );
        assert!(said.contains("3 days"), "{said}");
    });
}

#[test]
fn a_dilution_is_added_in_its_place_and_taken_out_again() {
    scenario(async |stage| {
        let mut desk = Desk::steward(&stage).await;
        let page = developer(&mut desk).await;
        let page = desk.follow(&page, "Add a dilution").await;
        let fields = [
            ("Parts of water to one part of concentrate", "11.5"),
            ("In the open tray", "45 min"),
            ("In a stoppered bottle", "12"),
        ];
        desk.send(&page, "Add the dilution", &fields)
            .await
            .expect(303);
        let page = desk.send_on(&page, "Add the dilution", &fields).await;
        assert_eq!(
            page.page().all("h3.dilution-name"),
            ["1+9", "1+11.5", "1+14"]
        );
        let said = page.page().all("section.dilution")[1].clone();
        assert!(
            said.contains("In the open trayset by a steward45 min"),
            "{said}"
        );
        let page = desk.follow(&page, "Change 1+11.5").await;
        let page = desk.follow(&page, "Take it out").await;
        assert!(page.page().heading().starts_with("Take 1+11.5 out of"));
        let page = desk.send_on(&page, "Take it out", &[]).await;
        assert_eq!(page.page().all("h3.dilution-name"), ["1+9", "1+14"]);
    });
}

#[test]
fn everything_wrong_with_a_dilution_is_said_at_once_and_what_was_typed_stays() {
    scenario(async |stage| {
        let mut desk = Desk::steward(&stage).await;
        let page = developer(&mut desk).await;
        let page = desk.follow(&page, "Add a dilution").await;
        let mut form = page.page().form("Add the dilution").unwrap();
        form = form
            .fill("Parts of water to one part of concentrate", "nine")
            .fill("In the open tray", "3 moons");
        let mut capacities = vec!["0", "12", "a lot"].into_iter();
        for (name, value) in &mut form.fields {
            if name == "capacity" {
                *value = capacities.next().unwrap().to_owned();
            }
        }
        let page = desk.browser.submit(&form).await.expect(422);
        let fields = [
            "parts",
            "tray_life",
            "bottle_life",
            "capacity-0",
            "capacity-2",
        ];
        assert_eq!(beside(&page), fields);
        assert!(sentence(&page, "capacity-0").contains("from 1 sheet a litre"));
        let kept = page.page().form("Add the dilution").unwrap();
        assert_eq!(kept.value("parts"), Some("nine"));
        let kept = kept.fields.iter().filter(|(name, _)| name == "capacity");
        let kept: Vec<&str> = kept.map(|(_, value)| value.as_str()).collect();
        assert_eq!(kept, ["0", "12", "a lot"]);
    });
}

#[test]
fn a_dilution_stands_once_in_a_product() {
    scenario(async |stage| {
        let mut desk = Desk::steward(&stage).await;
        let page = developer(&mut desk).await;
        let page = desk.follow(&page, "Add a dilution").await;
        let fields = [
            ("Parts of water to one part of concentrate", "1+9"),
            ("In the open tray", "8"),
            ("In a stoppered bottle", "24"),
        ];
        let page = desk
            .send(&page, "Add the dilution", &fields)
            .await
            .expect(422);
        assert!(sentence(&page, "parts").contains("has this dilution already"));
    });
}
