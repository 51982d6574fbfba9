//! Two fixing baths: the second moves up as often as the room allows.

use time::Duration;
use uuid::Uuid;
use wetside::bench::Step;
use wetside::darkroom::incompatibility::Group;
use wetside::mixes::actions::VesselId;
use wetside::products::{Place, Product};

use super::{Visitor, form};
use crate::harness::{Bench, Stage, scenario};

struct Pair {
    bench: Bench,
    fixer: Product,
    trays: (Uuid, Uuid),
    mixes: (Uuid, Uuid),
}

async fn pair(stage: &Stage) -> Pair {
    let bench = stage.bench().await;
    let fixer = stage.stock("Ammonium rapid fixer", |_| ()).await;
    let first = stage
        .tray(bench.line, "First fixer", Step::FirstFixer)
        .await;
    let second = stage
        .tray(bench.line, "Second fixer", Step::SecondFixer)
        .await;
    let mixes = (
        stage
            .mix_into(VesselId::Tray(first), &fixer, 1_000_000)
            .await,
        stage
            .mix_into(VesselId::Tray(second), &fixer, 1_000_000)
            .await,
    );
    Pair {
        bench,
        fixer,
        trays: (first, second),
        mixes,
    }
}

/// Three moves are the room's number to begin with: from memory.
#[test]
fn the_second_bath_moves_up_three_times_and_then_both_are_replaced() {
    scenario(async |stage| {
        let mut pair = pair(&stage).await;
        stage
            .note(&stage.cast.member, &pair.bench, 0, 40)
            .await
            .unwrap();
        let mut trained = Visitor::of(&stage, &stage.cast.trained).await;
        for number in 1..=3 {
            let spent = stage.mix_of(pair.mixes.1).await.spent_nl;
            let page = trained
                .open(&format!("/mixes/{}/shift", pair.mixes.0))
                .await;
            let said = page.page().main();
            let this = format!("This is move {number} of the 3");
            assert!(said.contains(&this), "{said}");
            assert!(said.contains("from Second fixer into First fixer: 1 L of 3 L"));
            let done = form(&page, "The second bath stands in First fixer")
                .with("container", "Fixer drum")
                .with("confirmed", "yes");
            let page = trained.send(&done).await;
            assert_eq!(page.page().heading(), "First fixer");
            let moved = stage.mix_of(pair.mixes.1).await;
            assert_eq!(moved.stand.tray_id, Some(pair.trays.0));
            assert_eq!((moved.stand.place, moved.shifts), (Place::First, number));
            // It keeps all it has spent.
            assert_eq!(moved.spent_nl, spent);
            let second = VesselId::Tray(pair.trays.1);
            let fresh = stage.mix_into(second, &pair.fixer, 1_000_000).await;
            pair.mixes = (pair.mixes.1, fresh);
        }
        let page = trained
            .open(&format!("/mixes/{}/shift", pair.mixes.0))
            .await;
        let said = page.page().main();
        assert!(
            said.contains("has moved up as often as this room allows"),
            "{said}"
        );
        let button = "The second bath stands in First fixer";
        assert!(page.page().form(button).is_none());
    });
}

#[test]
fn a_used_up_second_bath_does_not_move_up() {
    scenario(async |stage| {
        let pair = pair(&stage).await;
        // Two days in an open tray: the starter's life of a fixer, from memory.
        stage.pass(Duration::hours(49));
        let mut trained = Visitor::of(&stage, &stage.cast.trained).await;
        let page = trained
            .open(&format!("/mixes/{}/shift", pair.mixes.0))
            .await;
        let said = page.page().main();
        assert!(said.contains("The second bath is used up"), "{said}");
    });
}

/// The second bath would go into the first one's tray before anybody rinsed it.
/// Hypochlorite with ammonium: ATSDR medical management guideline.
#[test]
fn nothing_moves_up_into_a_tray_that_held_household_bleach() {
    scenario(async |stage| {
        let pair = pair(&stage).await;
        let page = format!("/mixes/{}/shift", pair.mixes.0);
        let mut trained = Visitor::of(&stage, &stage.cast.trained).await;
        let served = trained.open(&page).await;
        stage.flag(pair.mixes.0, vec![Group::Hypochlorite]).await;
        let said = trained.open(&page).await.page().main();
        assert!(said.contains("This held household bleach."), "{said}");
        let sent = form(&served, "The second bath stands in First fixer")
            .with("container", "Fixer drum")
            .with("confirmed", "yes");
        let refused = trained.browser.submit(&sent).await.expect(422);
        let said = refused.page().main();
        assert!(said.contains("This held household bleach."), "{said}");
    });
}
