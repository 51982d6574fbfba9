//! What the page says a note did: used up, carried over, gained. The figures of the
//! paper are invented; what follows from them is arithmetic.

use wetside::bench::Step;
use wetside::papers::SilverFigures;
use wetside::products::Kind;

use super::note_form;
use crate::harness::{Stage, scenario};

/// Ten sheets of 8×10 in are 0.516128 m²: an inch is 25.4 mm, by the international
/// yard and pound agreement of 1959.
#[test]
fn a_note_says_what_it_did_to_each_bath() {
    scenario(async |stage: Stage| {
        let bench = stage.bench().await;
        stage
            .bath(bench.line, Kind::Fixer, Step::Fixer, |_| {})
            .await;
        stage
            .paper(|class| {
                class.carry_over_ul_per_m2 = Some(20_000);
                class.silver = Some(SilverFigures {
                    least_mg_per_m2: 1_000,
                    usual_mg_per_m2: 1_500,
                    most_mg_per_m2: 2_000,
                    least_kept_ppb: 250_000_000,
                    usual_kept_ppb: 500_000_000,
                    most_kept_ppb: 750_000_000,
                    basis: "invented".to_owned(),
                });
            })
            .await;
        let member = stage.cast.member.clone();
        let mut browser = stage.browser(&member).await;
        let form = note_form(&stage, &mut browser).await;
        let noted = browser
            .submit_and_follow(&form.fill("How many sheets", "10"))
            .await;
        let effects = noted.page().all(".effects li");
        assert_eq!(effects.len(), 2, "{effects:?}");
        // 100 sheets a litre: common practice, no source.
        assert!(effects[0].contains("100 ml used up; now 10 % of its capacity is used."));
        // 0.516128 m² × 20 ml.
        assert!(
            effects[0].contains("By estimate 10.3 ml of it went along with the prints."),
            "{effects:?}"
        );
        assert!(effects[1].contains("By estimate 10.3 ml of the bath before came in"));
        // 0.516128 m² × 1500 mg × one half is 387.1 mg, of which 10.3 ml in a litre go on.
        assert!(
            effects[1].contains("By estimate it gained 383.1 mg of silver, between 127.7 mg and"),
            "{effects:?}"
        );
        assert!(effects[1].contains("now about 0.38 g/L."), "{effects:?}");
    });
}
