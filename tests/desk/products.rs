//! Products.

use super::{Desk, beside, sentence};
use crate::harness::scenario;

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
        assert!(page.page().main().contains("No product yet"));
        let page = desk
            .send_on(&page, "Bring back Neutral paper developer", &[])
            .await;
        assert_eq!(page.page().heading(), "Neutral paper developer");
        assert_eq!(page.page().all("h3.dilution-name"), ["1+9", "1+14"]);
    });
}
