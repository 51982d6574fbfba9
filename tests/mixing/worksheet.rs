//! What the sheet says to pour, before anybody pours.

use axum::http::Method;
use time::Duration;
use wetside::bench::Step;
use wetside::products::Form;
use wetside::products::actions::NewProduct;

use super::{api, bottle, pours, product, reckoned, set, sheet, standing, tray};
use crate::access::house::House;
use crate::harness::{START, Stage, scenario};

#[test]
fn both_directions_of_a_dilution() {
    scenario(async |stage: Stage| {
        let bench = stage.bench().await;
        let tray = tray(&stage, bench.line, "Second", None).await;
        let path = stage.at(&format!("/trays/{tray}/mix"));
        let mut trained = stage.browser(&stage.cast.trained).await;
        // check-values section 7: 1+9 in 1000 ml is 100 + 900; 1+14 in 1500 ml, 100 + 1400.
        let litre = reckoned(&mut trained, &path, &[("volume", "1")]).await;
        let litre = litre.expect(200);
        assert_eq!(pours(&litre), ["900 ml", "100 ml", "1 L"]);
        let page = trained.get(&path).await.page();
        let form = page.form("Show what to pour").unwrap();
        let weak = form
            .choose("Neutral paper developer 1+14")
            .with("volume", "1.5");
        let weak = trained.submit(&weak).await.expect(200);
        assert_eq!(pours(&weak), ["1.4 L", "100 ml", "1.5 L"]);
        // The same the other way: 100 ml make c(1+N), trade.md section 3.
        let from = reckoned(&mut trained, &path, &[("concentrate", "100")]).await;
        let from = from.expect(200);
        assert_eq!(pours(&from), ["900 ml", "100 ml", "1 L"]);
        let again = from.page().form("It stands in the tray").unwrap();
        assert_eq!(again.value("volume"), Some("1"));
        // Too much concentrate for the tray is said beside the concentrate's volume.
        let much = reckoned(&mut trained, &path, &[("concentrate", "400")]).await;
        let much = much.expect(422).page();
        assert!(!much.problems().is_empty(), "{}", much.main());
    });
}

#[test]
fn water_from_two_taps() {
    scenario(async |stage: Stage| {
        let bench = stage.bench().await;
        let tray = tray(&stage, bench.line, "Second", None).await;
        let path = stage.at(&format!("/trays/{tray}/mix"));
        let mut trained = stage.browser(&stage.cast.trained).await;
        let mut said = async |fields: &[(&str, &str)]| {
            let mut all = vec![("volume", "1")];
            all.extend(fields);
            let answer = reckoned(&mut trained, &path, &all).await.expect(200);
            sheet(&answer)
        };
        let wanted = [("mix_temperature", "20"), ("concentrate_temperature", "15")];
        // Heat balance at equal density and heat capacity, trade.md section 3:
        // (1000·20 − 100·15)/900 = 20.56 °C.
        let alone = said(&wanted).await;
        assert!(alone.contains("Draw water at 20.6 °C."), "{alone}");
        // Share of hot (20.6 − 13)/(55 − 13) = 18.1 %: 162.9 of 900 ml.
        let taps = said(&[&wanted[..], &[("hot_tap", "55"), ("cold_tap", "13")]].concat()).await;
        let drawn = "20.6 °C: 18 % from the hot tap, 163 ml, and 737 ml from the cold one";
        assert!(taps.contains(drawn), "{taps}");
        // No hotter than the hot tap: (100·15 + 900·18)/1000 = 17.7 °C.
        let cold = said(&[&wanted[..], &[("hot_tap", "18"), ("cold_tap", "12")]].concat()).await;
        assert!(cold.contains("it will have 17.7 °C"), "{cold}");
        assert!(cold.contains("Stand the tray in warm water"), "{cold}");
        assert!(cold.contains("Never heat concentrate directly"), "{cold}");
        // No hotter than 40 °C where the product says nothing (common practice, no
        // source): (100·15 + 900·40)/1000 = 37.5 °C.
        let hot = said(&[
            ("mix_temperature", "45"),
            ("concentrate_temperature", "15"),
            ("hot_tap", "60"),
            ("cold_tap", "13"),
        ])
        .await;
        assert!(hot.contains("Draw water at 40 °C"), "{hot}");
        assert!(hot.contains("it will have 37.5 °C"), "{hot}");
        assert!(hot.contains("works at 18 °C to 22 °C"), "{hot}");
    });
}

#[test]
fn a_temperature_lacks_nothing_or_says_what() {
    scenario(async |stage: Stage| {
        let bench = stage.bench().await;
        let tray = tray(&stage, bench.line, "Second", None).await;
        let path = stage.at(&format!("/trays/{tray}/mix"));
        let mut trained = stage.browser(&stage.cast.trained).await;
        for (fields, wrong) in [
            (
                &[("hot_tap", "50")][..],
                &["mix_temperature", "concentrate_temperature", "cold_tap"][..],
            ),
            (&[("mix_temperature", "20")], &["concentrate_temperature"]),
            (&[("mix_temperature", "warm")], &["mix_temperature"]),
            (&[("graduation", "2000")], &["graduation"]),
            // A tenth of a litre rounds to no mark of a 250 ml cylinder's 250 ml.
            (&[("graduation", "250")], &["graduation"]),
        ] {
            let answer = reckoned(&mut trained, &path, fields).await.expect(422);
            let problems = answer.page().problems();
            let found: Vec<&str> = problems.iter().map(|(field, _)| field.as_str()).collect();
            assert_eq!(found, wrong, "{fields:?}");
        }
    });
}

/// trade.md section 3: "1+9.3, 3 % weaker". 515 ml at 1+9 ask for 51.5 ml; to the
/// nearest 10 ml that is 50 and 465 of water, and 50·10/515 is 2.9 % less.
#[test]
fn a_cylinder_rounds_and_says_what_results() {
    scenario(async |stage: Stage| {
        let bench = stage.bench().await;
        let tray = tray(&stage, bench.line, "Second", None).await;
        let path = stage.at(&format!("/trays/{tray}/mix"));
        let mut trained = stage.browser(&stage.cast.trained).await;
        let fields = [("volume", "0.515"), ("graduation", "10")];
        let answer = reckoned(&mut trained, &path, &fields).await.expect(200);
        let said = sheet(&answer);
        assert!(said.contains("50 ml and 465 ml of water"), "{said}");
        assert!(said.contains("1+9.3, 2.9 % weaker"), "{said}");
        let exact = [("volume", "0.5"), ("graduation", "5")];
        let exact = reckoned(&mut trained, &path, &exact).await.expect(200);
        assert!(sheet(&exact).contains("1+9, as strong as asked"));
    });
}

/// By the definition of parts: 1 and 2 of a kit and 7 of water to one of both are
/// 24 in all; 1.2 L of it are 50 ml, 100 ml and 1050 ml.
#[test]
fn a_kit_part_by_part_and_what_is_used_as_it_is() {
    scenario(async |stage: Stage| {
        let bench = stage.bench().await;
        let tray = tray(&stage, bench.line, "Second", None).await;
        let kit = NewProduct {
            kit_parts_thousandths: vec![1_000, 2_000],
            ..product("Two-part developer", Form::Kit, 7_000)
        };
        set(&stage, kit).await;
        let ready = product("Poured developer", Form::ReadyToUse, 0);
        set(&stage, ready).await;
        let path = stage.at(&format!("/trays/{tray}/mix"));
        let mut trained = stage.browser(&stage.cast.trained).await;
        let page = trained.get(&path).await.expect(200).page();
        let form = page.form("Show what to pour").unwrap();
        let kit = form
            .clone()
            .choose("Two-part developer 1+7")
            .with("volume", "1.2");
        let kit = trained.submit(&kit).await.expect(200);
        assert_eq!(pours(&kit), ["1.05 L", "50 ml", "100 ml", "1.2 L"]);
        let said = sheet(&kit);
        let (first, second) = (said.find("part 1 into it"), said.find("part 2 into it"));
        assert!(first.is_some() && first < second, "{said}");
        let ready = form.choose("Poured developer 1+0").with("volume", "1");
        let ready = trained.submit(&ready).await.expect(200);
        assert!(sheet(&ready).contains("as it is, no water"));
        let mixed = ready.page().form("It stands in the tray").unwrap();
        trained.submit_and_follow(&mixed).await.expect(200);
        let mix = standing(&stage, tray).await.unwrap();
        assert_eq!((mix.charged_ul, mix.concentrate_ul), (1_000_000, 1_000_000));
    });
}

#[test]
fn only_what_serves_the_step_is_offered_and_only_once() {
    scenario(async |stage: Stage| {
        let bench = stage.bench().await;
        let stop = tray(&stage, bench.line, "Stop", Some(Step::StopBath)).await;
        let mut trained = stage.browser(&stage.cast.trained).await;
        let page = trained.get(&stage.at(&format!("/trays/{stop}/mix"))).await;
        let page = page.expect(200).page();
        assert!(page.form("Show what to pour").is_none(), "{}", page.main());
        assert!(page.main().contains("Acid into water"), "{}", page.main());
        let full = trained
            .get(&stage.at(&format!("/trays/{}/mix", bench.tray)))
            .await;
        let full = full.expect(200).page();
        assert!(
            full.main()
                .contains("stands 1 L of Neutral paper developer 1+9")
        );
        assert!(full.links().iter().any(|(words, _)| words == "Top it up"));
    });
}

/// A bottle keeps a stoppered bottle's life; from nine tenths on it is full (from memory).
#[test]
fn into_a_bottle_and_earlier() {
    scenario(async |stage: Stage| {
        let bench = stage.bench().await;
        let bottle = bottle(&stage).await;
        let path = stage.at(&format!("/bottles/{bottle}/mix"));
        let mut trained = stage.browser(&stage.cast.trained).await;
        let over = reckoned(&mut trained, &path, &[("volume", "1.1")]).await;
        assert_eq!(over.expect(422).page().problems()[0].0, "volume");
        stage.pass(Duration::hours(2));
        // The room is at UTC+1: 13:30 there is an hour and a half ago.
        let fields = [
            ("volume", "0.9"),
            ("when", "earlier"),
            ("day", "2026-11-25"),
            ("time", "13:30"),
        ];
        let answer = reckoned(&mut trained, &path, &fields).await.expect(200);
        let form = answer.page().form("It stands in the bottle").unwrap();
        let page = trained.submit_and_follow(&form).await.expect(200).page();
        assert_eq!(page.heading(), "Mixed");
        let mix = standing(&stage, bottle).await.unwrap();
        assert_eq!(mix.storage, wetside::mixes::Storage::FullBottle);
        assert_eq!(mix.mixed_at, START + Duration::minutes(30));
        assert_eq!(mix.life_s, 24 * 3_600);
        assert_eq!(mix.concentrate_ul, 90_000);
        let late = tray_late(&stage, bench.line).await;
        assert!(late.contains("in the future"), "{late}");
    });
}

async fn tray_late(stage: &Stage, line: uuid::Uuid) -> String {
    let tray = tray(stage, line, "Late", None).await;
    let path = stage.at(&format!("/trays/{tray}/mix"));
    let mut trained = stage.browser(&stage.cast.trained).await;
    let fields = [
        ("volume", "1"),
        ("when", "earlier"),
        ("day", "2026-11-25"),
        ("time", "15:30"),
    ];
    let answer = reckoned(&mut trained, &path, &fields).await.expect(200);
    let form = answer.page().form("It stands in the tray").unwrap();
    trained.submit(&form).await.expect(422).page().main()
}

#[test]
fn the_same_reckoning_through_the_api() {
    crate::harness::scenario_alone(async |stage| {
        let house = House::furnish(stage).await;
        let stage = &house.stage;
        let trained = stage.cast.trained.clone();
        let token = house.token(&trained, &stage.slug, &["read", "bench"]).await;
        let tray = tray(stage, house.bench.line, "Second", None).await;
        let dilution = house.bench.dilution;
        let query = format!(
            "/trays/{tray}/worksheet?dilution_id={dilution}&concentrate_ul=100000\
             &mix_tenths_celsius=200&concentrate_tenths_celsius=150\
             &hot_tenths_celsius=550&cold_tenths_celsius=130&graduation_ul=10000"
        );
        let (status, body) = api(stage, &token, Method::GET, &query, None).await;
        assert_eq!(status, 200, "{body}");
        let data = &body["data"];
        // As on the page above: the same sources.
        assert_eq!(data["volume_ul"], 1_000_000);
        assert_eq!(data["water_ul"], 900_000);
        assert_eq!(data["water"]["water_tenths_celsius"], 206);
        assert_eq!(data["water"]["hot_ul"], 162_857);
        assert_eq!(data["measured"]["strength_change_thousandths"], 0);
        // 1 L over 250 × 200 mm: arithmetic.
        assert_eq!(data["depth_tenths_mm"], 200);
        let none = format!("/trays/{tray}/worksheet?volume_ul=1000000");
        let (status, body) = api(stage, &token, Method::GET, &none, None).await;
        assert_eq!(
            (status, body["error"]["fields"][0]["field"].as_str()),
            (422, Some("dilution_id"))
        );
        let odd = format!("/trays/{tray}/worksheet?dilution_id=none");
        let (status, _) = api(stage, &token, Method::GET, &odd, None).await;
        assert_eq!(status, 422);
    });
}
