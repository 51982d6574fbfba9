//! What stood somewhere already, and liquid that nobody can name.

use axum::http::Method;
use serde_json::json;
use wetside::darkroom::state::Origin;

use super::{api, bottle, standing, tray};
use crate::access::house::House;
use crate::harness::{Stage, scenario};

/// trade.md section 3: a known mix of unknown age starts as Test first with guessed
/// fractions.
#[test]
fn a_known_mix_of_unknown_age() {
    scenario(async |stage: Stage| {
        let bench = stage.bench().await;
        let tray = tray(&stage, bench.line, "Old", None).await;
        let path = stage.at(&format!("/trays/{tray}/open"));
        let mut trained = stage.browser(&stage.cast.trained).await;
        trained.get(&path).await.expect(403);
        let mut steward = stage.browser(&stage.cast.steward).await;
        let page = steward.get(&path).await.expect(200).page();
        let form = page.form("Enter it").unwrap();
        let odd = form
            .clone()
            .with("volume", "1")
            .with("capacity_used", "101");
        let odd = steward.submit(&odd).await.expect(422).page();
        let problems = odd.problems();
        let fields: Vec<&str> = problems.iter().map(|(field, _)| field.as_str()).collect();
        assert_eq!(fields, ["capacity_used", "life_used"]);
        let form = form
            .with("volume", "1")
            .with("capacity_used", "30 %")
            .with("life_used", "50");
        steward.submit(&form).await.expect(303);
        let mix = standing(&stage, tray).await.unwrap();
        assert_eq!(mix.origin, Origin::Guessed);
        assert_eq!((mix.spent_nl, mix.age_ppb), (300_000_000, 500_000_000));
        let seen = stage.at(&format!("/trays/{tray}"));
        let seen = steward.get(&seen).await.expect(200).page().main();
        assert!(seen.contains("Test first"), "{seen}");
        let again = steward.get(&path).await.expect(200).page();
        assert!(again.form("Enter it").is_none(), "{}", again.main());
    });
}

#[test]
fn liquid_nobody_can_name() {
    scenario(async |stage: Stage| {
        let bench = stage.bench().await;
        let tray = tray(&stage, bench.line, "Spare", None).await;
        let mut member = stage.browser(&stage.cast.member).await;
        let path = stage.at(&format!("/trays/{tray}/unknown"));
        let page = member.get(&path).await.expect(200).page();
        assert!(page.main().contains("do not pour it away"));
        let form = page.form("Report it").unwrap();
        let none = member.submit(&form).await.expect(422).page();
        assert_eq!(none.problems()[0].0, "volume");
        let form = form
            .with("volume", "0.4")
            .with("remark", "Brown, smells sour");
        member.submit(&form).await.expect(303);
        let mix = standing(&stage, tray).await.unwrap();
        assert_eq!((mix.origin, mix.product_id), (Origin::Unknown, None));
        // Nothing is mixed into it, and nothing is added to it.
        let mut trained = stage.browser(&stage.cast.trained).await;
        let page = trained.get(&stage.at(&format!("/trays/{tray}/mix"))).await;
        assert!(page.expect(200).page().main().contains("nobody can name"));
        let known = stage.at(&format!("/trays/{}/unknown", bench.tray));
        let known = member.get(&known).await.expect(200).page();
        assert!(
            known.main().contains("flag it as contaminated"),
            "{}",
            known.main()
        );
    });
}

#[test]
fn the_same_through_the_api() {
    crate::harness::scenario_alone(async |stage| {
        let house = House::furnish(stage).await;
        let stage = &house.stage;
        let steward = stage.cast.steward.clone();
        let token = house
            .token(&steward, &stage.slug, &["read", "bench", "keep"])
            .await;
        let tray = tray(stage, house.bench.line, "Old", None).await;
        let opening = json!({
            "dilution_id": house.bench.dilution, "volume_ul": 1_000_000,
            "capacity_used_ppb": 300_000_000, "life_used_ppb": 500_000_000,
        });
        let path = format!("/trays/{tray}/open");
        let (status, body) = api(stage, &token, Method::POST, &path, Some(opening.clone())).await;
        assert_eq!(status, 201, "{body}");
        assert_eq!(standing(stage, tray).await.unwrap().spent_nl, 300_000_000);
        let mut odd = opening;
        odd["life_used_ppb"] = json!(1_000_000_001);
        let (status, body) = api(stage, &token, Method::POST, &path, Some(odd)).await;
        assert_eq!(
            (status, body["error"]["fields"][0]["field"].as_str()),
            (422, Some("life_used_ppb"))
        );
        let bottle = bottle(stage).await;
        let path = format!("/bottles/{bottle}/unknown");
        let found = json!({ "volume_ul": 200_000, "remark": "No label" });
        let (status, body) = api(stage, &token, Method::POST, &path, Some(found)).await;
        assert_eq!(status, 201, "{body}");
        assert_eq!(
            standing(stage, bottle).await.unwrap().origin,
            Origin::Unknown
        );
    });
}
