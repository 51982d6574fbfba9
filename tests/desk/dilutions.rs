//! Dilutions: how much water, how much paper, how long.

use super::{Desk, beside, sentence};
use crate::harness::{Answer, Form, scenario};

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

async fn fixer(desk: &mut Desk) -> Answer {
    let page = desk.open("/products").await;
    desk.follow(&page, "Ammonium rapid fixer").await
}

/// Fills the nth of the fields of one name.
fn nth(mut form: Form, name: &str, at: usize, value: &str) -> Form {
    let mut fields = form.fields.iter_mut().filter(|(field, _)| field == name);
    fields.nth(at).unwrap().1 = value.to_owned();
    form
}

#[test]
fn a_fixer_takes_paper_by_its_place() {
    scenario(async |stage| {
        let mut desk = Desk::steward(&stage).await;
        let page = fixer(&mut desk).await;
        let said = page.page().first("section.dilution").unwrap();
        // All from memory, and said so.
        for row in [
            "A litre, RCfrom memory40 sheets",
            "A litre, FBfrom memory20 sheets",
            "The first of two baths A litre, RCfrom memory80 sheets",
            "A litre, FBfrom memory40 sheets",
            "Used up from a silver offrom memory2000 mg/L The second of two baths",
            "In any place A litre, filmpaper only",
        ] {
            assert!(said.contains(row), "{row}: {said}");
        }
        let page = desk.follow(&page, "Change 1+4").await;
        assert_eq!(page.page().all("details[open] > summary").len(), 2);
        let form = page.page().form("Keep the change").unwrap();
        let places: Vec<&str> = form
            .fields
            .iter()
            .filter(|(name, _)| name == "place")
            .map(|(_, value)| value.as_str())
            .collect();
        assert_eq!(
            places,
            [
                "single", "single", "single", "first", "first", "first", "second", "second",
                "second"
            ]
        );
        // FB as the first of two; RC cool tone as the second is taken out.
        let form = nth(form, "capacity", 4, "30");
        let form = nth(form, "capacity", 8, "");
        let form = form
            .fill("Rolls of film in a litre", "12")
            .with("silver_single", "500")
            .with("figures_basis", "the sheet of May");
        let page = desk.browser.submit_and_follow(&form).await.expect(200);
        let said = page.page().first("section.dilution").unwrap();
        for row in [
            "A litre, RCfrom memory40 sheets",
            "A litre, FBset by a steward30 sheets",
            "A litre, filmthe sheet of May12 rolls",
            "Used up from a silver ofthe sheet of May500 mg/L",
        ] {
            assert!(said.contains(row), "{row}: {said}");
        }
        assert_eq!(said.matches("RC, cool tone").count(), 2, "{said}");
    });
}

#[test]
fn only_a_fixer_has_places_film_and_silver() {
    scenario(async |stage| {
        let mut desk = Desk::steward(&stage).await;
        let page = developer(&mut desk).await;
        let page = desk.follow(&page, "Change 1+9").await;
        let form = page.page().form("Keep the change").unwrap();
        assert_eq!(form.value("film_rolls"), None);
        let form = form.with("film_rolls", "10").with("silver_first", "30000");
        let page = desk.browser.submit(&form).await.expect(422);
        assert_eq!(beside(&page), ["film_rolls", "silver_first"]);

        // And a fixer with such figures stays one.
        let page = fixer(&mut desk).await;
        let page = desk.follow(&page, "Change the product").await;
        let form = page.page().form("Keep the change").unwrap();
        let page = desk.browser.submit(&form.choose("Toner")).await.expect(422);
        assert_eq!(beside(&page), ["kind"]);
    });
}

#[test]
fn covers_and_part_filled_bottles_have_lives_of_their_own() {
    scenario(async |stage| {
        let mut desk = Desk::steward(&stage).await;
        let page = developer(&mut desk).await;
        let page = desk.follow(&page, "Change 1+9").await;
        let fields = [
            ("In the covered tray", "12"),
            ("In a part-filled bottle", "2 days"),
        ];
        let wrong = desk
            .send(&page, "Keep the change", &fields)
            .await
            .expect(422);
        assert_eq!(beside(&wrong), ["part_bottle_life"]);
        assert!(sentence(&wrong, "part_bottle_life").contains("no longer than a full one"));
        let fields = [fields[0], ("In a part-filled bottle", "18 h")];
        let page = desk.send_on(&page, "Keep the change", &fields).await;
        let said = page.page().first("section.dilution").unwrap();
        // Four lives, and one word on where they come from.
        for row in [
            "In the open trayset by a steward8 h",
            "In the covered trayset by a steward12 h",
            "In a stoppered bottleset by a steward24 h",
            "In a part-filled bottleset by a steward18 h",
        ] {
            assert!(said.contains(row), "{row}: {said}");
        }
    });
}

#[test]
fn the_acid_of_a_stop_bath_stands_at_its_dilution() {
    scenario(async |stage| {
        let mut desk = Desk::steward(&stage).await;
        let page = desk.open("/products").await;
        let page = desk.follow(&page, "Citric stop bath").await;
        let page = desk.follow(&page, "Change 1+19").await;
        let fields = [("Acid in the fresh bath", "6000")];
        let wrong = desk
            .send(&page, "Keep the change", &fields)
            .await
            .expect(422);
        assert!(sentence(&wrong, "acid").contains("to 5000 mmol/L"));
        let fields = [("Acid in the fresh bath", "100")];
        let page = desk.send_on(&page, "Keep the change", &fields).await;
        let said = page.page().first("section.dilution").unwrap();
        assert!(
            said.contains("Acid when freshset by a steward100 mmol/L"),
            "{said}"
        );

        // Where nobody knows the acid, no strength is asked for.
        let page = developer(&mut desk).await;
        let page = desk.follow(&page, "Change 1+9").await;
        let form = page.page().form("Keep the change").unwrap();
        let page = desk
            .browser
            .submit(&form.with("acid", "250"))
            .await
            .expect(422);
        assert!(sentence(&page, "acid").contains("not on file"));
    });
}
