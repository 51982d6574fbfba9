//! Products.

use super::{Desk, beside, sentence};
use crate::harness::{Form, scenario};

#[test]
fn a_new_room_has_a_developer_that_nobody_can_mix_yet() {
    scenario(async |stage| {
        let mut desk = Desk::steward(&stage).await;
        let page = desk.open("/products").await;
        assert!(
            page.page()
                .main()
                .contains("no safety data: cannot be mixed")
        );
        let page = desk.follow(&page, "Neutral paper developer").await;
        let said = page.page().main();
        assert!(said.contains("nobody can mix this product"), "{said}");
        // 100 sheets of RC a litre at 1+9: common practice, no source.
        assert!(
            said.contains("A litre, RCcommon practice, no source100 sheets"),
            "{said}"
        );
        assert!(said.contains("That says nothing about it"), "{said}");
    });
}

#[test]
fn a_product_is_added_with_its_codes_and_groups() {
    scenario(async |stage| {
        let mut desk = Desk::steward(&stage).await;
        let page = desk.open("/products/new").await;
        let form = page.page().form("Add the product").unwrap();
        // 8 mm: common practice, no source.
        assert_eq!(form.value("depth_reference"), Some("8"));
        let form = form
            .fill("Name", "Grey heron fixer")
            .choose("Fixer")
            .choose("A thiosulfate")
            .fill("H codes", "H319, EUH031;H412")
            .fill("P codes", "P280 P305 + P351 + P338")
            .fill("Date of the data sheet", "2026-03-01");
        let page = desk.browser.submit_and_follow(&form).await.expect(200);
        assert_eq!(page.page().heading(), "Grey heron fixer");
        let codes = page.page().all("dl.statements dt");
        assert_eq!(codes, ["H319", "EUH031", "H412", "P280", "P305+P351+P338"]);
        let said = page.page().main();
        assert!(said.contains("Sun 1 Mar 2026"), "{said}");
        assert!(!said.contains("nobody can mix this product"), "{said}");

        let page = desk.follow(&page, "Change the product").await;
        let form = page.page().form("Keep the change").unwrap();
        assert_eq!(form.value("groups"), Some("thiosulfate"));
        assert_eq!(form.value("kind"), Some("fixer"));
        assert_eq!(form.value("precaution_codes"), Some("P280, P305+P351+P338"));
    });
}

#[test]
fn everything_wrong_with_a_product_is_said_at_once_and_what_was_typed_stays() {
    scenario(async |stage| {
        let mut desk = Desk::steward(&stage).await;
        let page = desk.open("/products/new").await;
        let form = page.page().form("Add the product").unwrap();
        let form = form
            .choose("A sulfide")
            .choose("It oxidises in an open tray")
            .fill("Its tray life is given for a depth of", "8,5")
            .fill("H codes", "H317, H31")
            .fill("P codes", "P280 P280")
            .fill("Date of the data sheet", "1 March");
        let page = desk.browser.submit(&form).await.expect(422);
        let fields = [
            "name",
            "kind",
            "depth_reference",
            "hazard_codes",
            "precaution_codes",
            "data_sheet_on",
        ];
        assert_eq!(beside(&page), fields);
        assert!(sentence(&page, "hazard_codes").contains("\"H31\""));
        assert!(sentence(&page, "depth_reference").contains("no other mark"));
        let kept = page.page().form("Add the product").unwrap();
        assert_eq!(kept.value("groups"), Some("sulfide"));
        assert_eq!(kept.value("oxidises"), Some("yes"));
        assert_eq!(kept.value("depth_reference"), Some("8,5"));
        assert_eq!(kept.value("hazard_codes"), Some("H317, H31"));
        assert_eq!(kept.value("data_sheet_on"), Some("1 March"));
    });
}

#[test]
fn changing_a_product_keeps_its_dilutions() {
    scenario(async |stage| {
        let mut desk = Desk::steward(&stage).await;
        let page = desk.open("/products").await;
        let page = desk.follow(&page, "Neutral paper developer").await;
        let page = desk.follow(&page, "Change the product").await;
        let fields = [("Name", "Usual developer")];
        let again = desk.send(&page, "Keep the change", &fields).await;
        again.expect(303);
        // Twice by mistake: the second one finds what the first one wrote.
        let page = desk.send_on(&page, "Keep the change", &fields).await;
        assert_eq!(page.page().all("h3.dilution-name"), ["1+9", "1+14"]);
        assert!(page.page().main().contains("version 2 "));
    });
}

#[test]
fn a_product_is_retired_after_a_question_and_brought_back() {
    scenario(async |stage| {
        let mut desk = Desk::steward(&stage).await;
        let page = desk.open("/products").await;
        let page = desk.follow(&page, "Neutral paper developer").await;
        let page = desk.follow(&page, "Change the product").await;
        let page = desk.follow(&page, "Retire it").await;
        assert_eq!(page.page().heading(), "Retire Neutral paper developer?");
        let page = desk.send_on(&page, "Retire it", &[]).await;
        assert!(
            page.page()
                .main()
                .contains("Bring back Neutral paper developer")
        );
        let page = desk
            .send_on(&page, "Bring back Neutral paper developer", &[])
            .await;
        assert_eq!(page.page().heading(), "Neutral paper developer");
        assert_eq!(page.page().all("h3.dilution-name"), ["1+9", "1+14"]);
    });
}

/// A form for a new product that wants nothing but what its test is about.
async fn new_form(desk: &mut Desk, name: &str, kind: &str) -> Form {
    let page = desk.open("/products/new").await;
    let form = page.page().form("Add the product").unwrap();
    form.fill("Name", name).choose(kind)
}

#[test]
fn a_kit_has_parts() {
    scenario(async |stage| {
        let mut desk = Desk::steward(&stage).await;
        let kit = new_form(&mut desk, "Two-part developer", "Developer").await;
        let kit = kit.choose("A kit");
        let page = desk.browser.submit(&kit).await.expect(422);
        assert_eq!(beside(&page), ["kit_parts"]);
        assert!(sentence(&page, "kit_parts").contains("like 1:1:0.5"));
        let kit = kit.fill("Parts of the kit", "1:1:0.5");
        let page = desk.browser.submit_and_follow(&kit).await.expect(200);
        let said = page.page().main();
        assert!(said.contains("A kit of several parts."), "{said}");
        let rows = page.page().all("table.sum tr");
        assert!(
            rows.contains(&"Parts of the kitset by a steward1:1:0.5".to_owned()),
            "{rows:?}"
        );

        let page = desk.follow(&page, "Change the product").await;
        let liquid = page
            .page()
            .form("Keep the change")
            .unwrap()
            .choose("One liquid");
        let page = desk.browser.submit(&liquid).await.expect(422);
        assert!(sentence(&page, "kit_parts").contains("no such figure"));
    });
}

#[test]
fn a_powder_makes_a_stock_solution() {
    scenario(async |stage| {
        let mut desk = Desk::steward(&stage).await;
        let powder = new_form(&mut desk, "Powder developer", "Developer").await;
        let powder = powder
            .choose("A powder")
            .fill("Stock solution keeps in a full bottle", "6 weeks")
            .fill("And in a part-filled one", "8 weeks");
        let page = desk.browser.submit(&powder).await.expect(422);
        assert_eq!(beside(&page), ["packet_makes", "stock_part_life"]);
        let powder = powder
            .fill("A packet makes", "3.8")
            .fill("And in a part-filled one", "2 weeks")
            .with("figures_basis", "the sheet of March");
        let page = desk.browser.submit_and_follow(&powder).await.expect(200);
        let rows = page.page().all("table.sum tr");
        for row in [
            "A packet makesthe sheet of March3.8 L, whole packets only",
            "Stock solution in a full bottlethe sheet of March42 days",
            "Stock solution in a part-filled bottlethe sheet of March14 days",
        ] {
            assert!(rows.contains(&row.to_owned()), "{row}: {rows:?}");
        }
        let page = desk.follow(&page, "Add a dilution").await;
        let labels = page.page().all("label");
        let parts = "Parts of water to one part of stock solution".to_owned();
        assert!(labels.contains(&parts), "{labels:?}");
    });
}

#[test]
fn what_is_ready_to_use_takes_no_water() {
    scenario(async |stage| {
        let mut desk = Desk::steward(&stage).await;
        let ready = new_form(&mut desk, "Ready fixer", "Fixer").await;
        let ready = ready.choose("Ready to use");
        let page = desk.browser.submit_and_follow(&ready).await.expect(200);
        let page = desk.follow(&page, "Add a dilution").await;
        let lives = [("In the open tray", "24"), ("In a stoppered bottle", "72")];
        let form = page.page().form("Add the dilution").unwrap();
        assert_eq!(form.value("parts"), Some("0"));
        let wet = form
            .with("parts", "4")
            .with("tray_life", "24")
            .with("bottle_life", "72");
        let wrong = desk.browser.submit(&wet).await.expect(422);
        assert!(sentence(&wrong, "parts").contains("used as it is"));
        let page = desk.send_on(&page, "Add the dilution", &lives).await;
        assert_eq!(page.page().all("h3.dilution-name"), ["1+0"]);

        // The developer has dilutions with water, so it cannot become ready to use.
        let page = desk.open("/products").await;
        let page = desk.follow(&page, "Neutral paper developer").await;
        let page = desk.follow(&page, "Change the product").await;
        let form = page.page().form("Keep the change").unwrap();
        let page = desk
            .browser
            .submit(&form.choose("Ready to use"))
            .await
            .expect(422);
        assert_eq!(beside(&page), ["form"]);
        assert!(sentence(&page, "form").contains("Change or take out the dilutions"));
    });
}

#[test]
fn temperatures_and_times_are_those_of_the_sheet() {
    scenario(async |stage| {
        let mut desk = Desk::steward(&stage).await;
        let page = desk.open("/products").await;
        let page = desk.follow(&page, "Neutral paper developer").await;
        let rows = page.page().all("table.sum tr");
        // 18 to 22 °C: from memory. 40 °C: common practice, no source.
        for row in [
            "It works atfrom memory18 °C to 22 °C",
            "The warmest water to mix it withcommon practice, no source40 °C",
        ] {
            assert!(rows.contains(&row.to_owned()), "{row}: {rows:?}");
        }
        let page = desk.follow(&page, "Change the product").await;
        let form = page.page().form("Keep the change").unwrap();
        let form = form
            .fill("It works from", "25 °C")
            .fill("One time", "90")
            .fill("At this temperature", "20")
            .fill("Another time", "1 min")
            .fill("At another temperature", "21");
        let page = desk.browser.submit(&form).await.expect(422);
        assert_eq!(beside(&page), ["coldest", "time_1"]);
        assert!(sentence(&page, "coldest").contains("Swap them"));
        assert!(sentence(&page, "time_1").contains("less than 2 °C apart"));
        let half = form
            .clone()
            .fill("It works from", "19")
            .fill("Another time", "");
        let wrong = desk.browser.submit(&half).await.expect(422);
        assert_eq!(beside(&wrong), ["time_2"]);
        let form = form
            .fill("It works from", "19")
            .fill("At another temperature", "24");
        let page = desk.browser.submit_and_follow(&form).await.expect(200);
        let rows = page.page().all("table.sum tr");
        // What was from memory was changed without a word.
        for row in [
            "It works atset by a steward19 °C to 22 °C",
            "Times of its sheetset by a steward90 s at 20 °C, 60 s at 24 °C",
        ] {
            assert!(rows.contains(&row.to_owned()), "{row}: {rows:?}");
        }
    });
}

#[test]
fn a_stop_bath_has_an_acid_and_a_limit() {
    scenario(async |stage| {
        let mut desk = Desk::steward(&stage).await;
        let page = desk.open("/products").await;
        let page = desk.follow(&page, "Acetic stop bath").await;
        let rows = page.page().all("table.sum tr");
        let acid = "Acid when freshcommon practice, no source250 mmol/L".to_owned();
        assert!(rows.contains(&acid), "{rows:?}");
        let page = desk.follow(&page, "Change the product").await;
        let form = page.page().form("Keep the change").unwrap();
        assert_eq!(form.value("stop_acid"), Some("acetic"));
        // 0.25 mol/l of acetic acid is of pH 2.68 fresh: charge balance, pKa 4.76.
        let low = form.clone().fill("Used up from a pH of", "2.6");
        let wrong = desk.browser.submit(&low).await.expect(422);
        assert_eq!(beside(&wrong), ["limit_ph"]);
        assert!(sentence(&wrong, "limit_ph").contains("past its limit pH when fresh"));
        let unknown = form.clone().choose("Not known");
        let wrong = desk.browser.submit(&unknown).await.expect(422);
        assert_eq!(beside(&wrong), ["stop_acid"]);
        let toner = form.choose("Toner");
        let wrong = desk.browser.submit(&toner).await.expect(422);
        assert_eq!(beside(&wrong), ["stop_acid"]);
        assert!(sentence(&wrong, "stop_acid").contains("of this kind"));
    });
}

#[test]
fn every_starter_product_is_shown_and_none_can_be_mixed() {
    scenario(async |stage| {
        let mut desk = Desk::steward(&stage).await;
        let page = desk.open("/products").await;
        let names = page.page().all("p.card-name");
        assert_eq!(
            names,
            [
                "Acetic stop bath",
                "Ammonium rapid fixer",
                "Citric stop bath",
                "Holding water",
                "Neutral paper developer",
                "Selenium-type toner",
                "Wash aid",
            ]
        );
        assert_eq!(page.page().all("span.tag").len(), names.len());
        let toner = desk.follow(&page, "Selenium-type toner").await;
        assert!(toner.page().main().contains("Only a steward mixes it."));
    });
}
