//! Fresh solution joins what stands there.

use axum::http::Method;
use serde_json::json;
use time::Duration;

use super::{api, pours, reckoned, sheet, standing};
use crate::access::house::House;
use crate::harness::{Stage, scenario};

/// trade.md section 4: V grows, W stays, a ← a·V/(V+v). 60 of 100 sheets in a litre
/// are 60 %, in a litre and a half 40 %; half of a life becomes a third.
#[test]
fn what_is_used_becomes_a_smaller_part() {
    scenario(async |stage: Stage| {
        let bench = stage.bench().await;
        stage.note(&stage.cast.member, &bench, 0, 60).await.unwrap();
        stage.pass(Duration::hours(4));
        let path = stage.at(&format!("/mixes/{}/top-up", bench.mix));
        let mut trained = stage.browser(&stage.cast.trained).await;
        let fields = [("volume", "0.5"), ("weaker", "19")];
        let answer = reckoned(&mut trained, &path, &fields).await.expect(200);
        assert_eq!(pours(&answer), ["450 ml", "50 ml", "500 ml"]);
        let said = sheet(&answer);
        assert!(said.contains("capacity: 60 % before, 40 % after"), "{said}");
        assert!(said.contains("life: 50 % before, 33 % after"), "{said}");
        // 1+N to 1+M adds V(1+M)/(1+N) − V, trade.md section 3: half a litre to
        // 1+14, a litre to 1+19.
        let page = answer.page().main();
        let to_14 = "1 L at 1+9 and 500 ml of water make 1.5 L at 1+14";
        assert!(page.contains(to_14), "{page}");
        let to_19 = "1 L at 1+9 and 1 L of water make 2 L at 1+19";
        assert!(page.contains(to_19), "{page}");
        assert!(page.contains("Acid into water"), "{page}");
        let form = answer.page().form("It is topped up").unwrap();
        trained.submit(&form).await.expect(303);
        let mix = standing(&stage, bench.tray).await.unwrap();
        assert_eq!(mix.charged_ul, 1_500_000);
        assert_eq!(mix.spent_nl, 600_000_000);
        assert_eq!(mix.age_ppb, 333_333_333);
    });
}

#[test]
fn what_may_not_be_added_to_says_why() {
    scenario(async |stage: Stage| {
        let bench = stage.bench().await;
        let path = stage.at(&format!("/mixes/{}/top-up", bench.mix));
        let mut trained = stage.browser(&stage.cast.trained).await;
        // The tray holds 3 L, a litre stands in it: arithmetic.
        let over = reckoned(&mut trained, &path, &[("volume", "2.1")]).await;
        assert_eq!(over.expect(422).page().problems()[0].0, "volume");
        let stronger = [("volume", "1"), ("weaker", "4")];
        let stronger = reckoned(&mut trained, &path, &stronger).await.expect(422);
        assert_eq!(stronger.page().problems()[0].0, "weaker");
        // Dead solution is never laundered, trade.md section 4.
        stage
            .note(&stage.cast.member, &bench, 0, 100)
            .await
            .unwrap();
        let page = trained.get(&path).await.expect(200).page();
        assert!(page.main().contains("is used up"), "{}", page.main());
        assert!(page.form("Show what to pour").is_none());
    });
}

#[test]
fn the_same_through_the_api() {
    crate::harness::scenario_alone(async |stage| {
        let house = House::furnish(stage).await;
        let stage = &house.stage;
        let trained = stage.cast.trained.clone();
        let token = house.token(&trained, &stage.slug, &["read", "bench"]).await;
        let path = format!("/mixes/{}/top-up", house.bench.mix);
        let body = json!({ "volume_ul": 500_000 });
        let (status, answer) = api(stage, &token, Method::POST, &path, Some(body)).await;
        assert_eq!(status, 201, "{answer}");
        let mix = standing(stage, house.bench.tray).await.unwrap();
        assert_eq!((mix.charged_ul, mix.concentrate_ul), (1_500_000, 150_000));
        let over = json!({ "volume_ul": 5_000_000 });
        let (status, answer) = api(stage, &token, Method::POST, &path, Some(over)).await;
        assert_eq!(status, 422);
        assert_eq!(answer["error"]["fields"][0]["field"], "volume_ul");
    });
}
