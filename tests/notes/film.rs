//! Rolls of film. That a fixer takes paper only unless its sheet has a figure for film
//! is the trade's rule; the figure itself is invented.

use wetside::bench::Step;
use wetside::products::Kind;
use wetside::products::actions::NewProduct;

use super::{follow, note_form};
use crate::harness::{Stage, scenario};

fn takes_twenty_rolls(product: &mut NewProduct) {
    product.dilutions[0].film_rolls_per_litre_thousandths = Some(20_000);
}

#[test]
fn a_fixer_without_a_figure_for_film_takes_paper_only() {
    scenario(async |stage: Stage| {
        let bench = stage.bench().await;
        let remove = |product: &mut NewProduct| {
            for dilution in &mut product.dilutions {
                dilution.film_rolls_per_litre_thousandths = None;
            }
        };
        stage
            .bath(bench.line, Kind::Fixer, Step::Fixer, remove)
            .await;
        let mut browser = stage.browser(&stage.cast.member).await;
        let page = browser.get(&stage.at("/sheets/new")).await.expect(200);
        let page = follow(&mut browser, &page, "Film? See why none is noted here").await;
        assert!(page.page().form("Note them").is_none());
        let said = page.page().main();
        assert!(said.contains("takes paper only"), "{said}");
    });
}

/// Two rolls of twenty a litre are a tenth of a litre. Source: arithmetic.
#[test]
fn rolls_wear_the_fixer_and_can_be_undone() {
    scenario(async |stage: Stage| {
        let bench = stage.bench().await;
        let fixer = stage
            .bath(bench.line, Kind::Fixer, Step::Fixer, takes_twenty_rolls)
            .await;
        let mut browser = stage.browser(&stage.cast.member).await;
        let page = browser.get(&stage.at("/sheets/new")).await.expect(200);
        let page = follow(&mut browser, &page, "Note rolls of film").await;
        let form = page.page().form("Note them").unwrap();
        let wrong = form.clone().fill("How many rolls", "0");
        let wrong = browser.submit(&wrong).await.expect(422);
        assert_eq!(super::beside(&wrong), ["rolls"]);
        let noted = browser
            .submit_and_follow(&form.fill("How many rolls", "2"))
            .await;
        let said = noted.page().main();
        assert!(said.contains("2 rolls of film"), "{said}");
        assert!(said.contains("100 ml used up; now 10 %"), "{said}");
        assert_eq!(stage.spent(fixer).await, 100_000_000);
        assert_eq!(
            stage.spent(bench.mix).await,
            0,
            "no developer for film here"
        );

        let links = noted.page().links();
        let undo = links.iter().find(|(_, to)| to.ends_with("/undo")).unwrap();
        let page = browser.get(&undo.1).await.expect(200);
        let form = page.page().form("Undo the note").unwrap();
        let undone = browser.submit_and_follow(&form).await;
        assert_eq!(undone.page().heading(), "This note was undone");
        assert_eq!(stage.spent(fixer).await, 0);
        // The last choice of sheets knows nothing of film.
        let form = note_form(&stage, &mut browser).await;
        assert_eq!(form.value("sheets"), Some("1"));
    });
}
