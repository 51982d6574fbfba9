//! Development time at the bath's temperature.

use super::Bath;
use crate::harness::{Page, Stage, scenario};
use wetside::bench::Step;
use wetside::products::Kind;

async fn at(bath: &Bath, celsius: &str) -> Page {
    let mut browser = bath.stage.browser(&bath.stage.cast.member).await;
    let path = format!("/trays/{}?celsius={celsius}", bath.bench.tray);
    let path = bath.stage.at(&path);
    browser.get(&path).await.expect(200).page()
}

/// t(21) = 90 s · (60/90)^(1/4) = 81.3 s; t(22) = 73.48 s. Source: the definition of
/// Q. The range of 18 to 22 °C is from memory.
#[test]
fn the_time_follows_the_temperature_within_the_range_only() {
    scenario(async |stage: Stage| {
        let bath = Bath::developer(&stage).await;
        let said = bath.page().await.main();
        assert!(said.contains("Nobody took its temperature yet"), "{said}");
        let said = [("Temperature of the bath", "21")];
        bath.check("temperature", &said).await;
        let said = bath.page().await.main();
        assert!(said.contains("1 min 21 s at 21 °C"), "{said}");
        assert!(
            said.contains("1 min 30 s at 20 °C and 1 min at 24 °C"),
            "{said}"
        );
        let said = at(&bath, "22").await.main();
        assert!(said.contains("1 min 13 s at 22 °C"), "{said}");
        for outside in ["22.1", "17.9"] {
            let said = at(&bath, outside).await.main();
            assert!(
                said.contains("outside its range of 18 °C to 22 °C"),
                "{said}"
            );
            assert!(!said.contains("Reckoned from its data sheet"), "{said}");
        }
        let page = at(&bath, "warm").await;
        assert_eq!(page.problems()[0].0, "celsius");
    });
}

#[test]
fn without_two_points_there_is_no_time_and_of_other_baths_none_is_asked() {
    scenario(async |stage: Stage| {
        let bath = Bath::of(&stage, Kind::Developer, Step::Developer, |_| {}).await;
        let said = at(&bath, "20").await.main();
        assert!(said.contains("so no time is reckoned"), "{said}");
        bath.emergence("12", "20", true).await;
        bath.emergence("15", "20", false).await;
        let said = bath.page().await.main();
        assert!(said.contains("1.25 times as long to show"), "{said}");
        let bath = Bath::fixer(&stage).await;
        assert!(!bath.page().await.main().contains("How long to develop"));
    });
}
