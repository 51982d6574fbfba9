//! Covers, bottles, pouring back, pouring together.

use time::Duration;
use wetside::mixes::Storage;
use wetside::mixes::actions::VesselId;

use super::{HOUR_S, Visitor, barred, form, hint};
use crate::harness::{Stage, scenario};

/// Lives of the room's developer: open 8 h, covered 16 h, full bottle 24 h, part
/// bottle 12 h. Invented.
async fn lives(stage: &Stage) {
    stage
        .stock("Neutral paper developer", |new| {
            for dilution in &mut new.dilutions {
                dilution.covered_life_s = Some(16 * HOUR_S);
                dilution.part_bottle_life_s = Some(12 * HOUR_S);
            }
        })
        .await;
}

/// Half of eight hours used leaves half of sixteen under a cover: 4 h, then 8 h.
#[test]
fn a_cover_prolongs_what_is_left_of_a_life() {
    scenario(async |stage| {
        lives(&stage).await;
        let bench = stage.bench().await;
        stage.pass(Duration::hours(4));
        let mut member = Visitor::of(&stage, &stage.cast.member).await;
        let keep = format!("/mixes/{}/keep", bench.mix);
        let page = member.open(&keep).await;
        let said = page.page().main();
        assert!(said.contains("lives 16 h there"), "{said}");
        // 12:00 UTC and 4 h are 17:00 in the room; 8 h on it is 01:00 on Thursday.
        assert!(said.contains("good until 01:00"), "{said}");
        member.send(&form(&page, "It is covered")).await;
        let covered = stage.mix_of(bench.mix).await;
        assert_eq!(covered.storage, Storage::CoveredTray);
        assert_eq!(
            (covered.age_ppb, covered.life_s),
            (500_000_000, 16 * HOUR_S)
        );
        // Half of what is left, then the cover comes off: a quarter of 8 h is 2 h.
        stage.pass(Duration::hours(4));
        let page = member.open(&keep).await;
        let said = page.page().main();
        assert!(said.contains("good until 23:00"), "{said}");
        member.send(&form(&page, "The cover is off")).await;
        assert_eq!(stage.mix_of(bench.mix).await.age_ppb, 750_000_000);
    });
}

/// From nine tenths on a bottle counts as full: from memory.
#[test]
fn a_bottle_is_full_or_part_and_the_mix_comes_back() {
    scenario(async |stage| {
        lives(&stage).await;
        let bench = stage.bench().await;
        let full = stage.bottle("Brown 1", 1_100_000).await;
        stage.bottle("Accordion", 2_000_000).await;
        stage.bottle("Small", 500_000).await;
        let mut member = Visitor::of(&stage, &stage.cast.member).await;
        let page = member.open(&format!("/mixes/{}/keep", bench.mix)).await;
        let said = hint(&page, "Brown 1");
        assert!(
            said.contains("a full bottle") && said.contains("lives 24 h"),
            "{said}"
        );
        let said = hint(&page, "Accordion");
        assert!(
            said.contains("a part bottle") && said.contains("lives 12 h"),
            "{said}"
        );
        let why = (
            "Small".to_owned(),
            "There is room for 0.5 L only.".to_owned(),
        );
        assert_eq!(barred(&page), [why]);
        let move_to = form(&page, "It is in the bottle");
        let said = member.send_in_vain(&move_to).await;
        assert!(said.contains("Vessel: Choose one"), "{said}");
        let page = member.send(&move_to.choose("Brown 1")).await;
        assert_eq!(page.page().heading(), "Brown 1");
        let mix = stage.mix_of(bench.mix).await;
        assert_eq!(mix.storage, Storage::FullBottle);
        assert_eq!((mix.stand.bottle_id, mix.stand.tray_id), (Some(full), None));
        // The board lists it, and no print wears it.
        let board = member.open("/board").await;
        let row = board.page().all(".in-bottles tbody tr");
        assert!(
            row[0].contains("Brown 1") && row[0].contains("Ready"),
            "{row:?}"
        );
        assert!(row[0].contains("good until 13:00"), "{row:?}");
        let noted = stage.note(&stage.cast.member, &bench, 0, 6).await;
        assert!(noted.is_err(), "{noted:?}");
        // Half a day in the bottle, then back: half of eight hours is left.
        stage.pass(Duration::hours(12));
        let page = member.open(&format!("/mixes/{}/keep", bench.mix)).await;
        let tray = "Developer, First line";
        let said = hint(&page, tray);
        assert!(
            said.contains("20 mm deep") && said.contains("lives 8 h"),
            "{said}"
        );
        let page = member
            .send(&form(&page, "It is back in the tray").choose(tray))
            .await;
        assert_eq!(page.page().heading(), "Developer");
        let mix = stage.mix_of(bench.mix).await;
        assert_eq!((mix.age_ppb, mix.life_s), (500_000_000, 8 * HOUR_S));
        let board = member.open("/board").await;
        assert!(board.page().all(".in-bottles").is_empty());
    });
}

#[test]
fn a_bottle_that_holds_a_mix_is_not_retired() {
    scenario(async |stage| {
        let bottle = stage.bottle("Brown 1", 1_000_000).await;
        let product = stage.stock("Neutral paper developer", |_| ()).await;
        stage
            .mix_into(VesselId::Bottle(bottle), &product, 800_000)
            .await;
        let mut steward = Visitor::of(&stage, &stage.cast.steward).await;
        let page = steward
            .open(&format!("/bench/bottles/{bottle}/retire"))
            .await;
        let said = steward.send_in_vain(&form(&page, "Retire it")).await;
        assert!(said.contains("Something stands in there."), "{said}");
        let page = steward.open(&format!("/bench/bottles/{bottle}")).await;
        let smaller = form(&page, "Keep the change").fill("Holds up to the stopper", "0.7");
        let said = steward.send_in_vain(&smaller).await;
        assert!(said.contains("0.8 L stand in it now"), "{said}");
        let list = steward.open("/bench/bottles").await;
        let said = list.page().all(".rows tbody tr").join(" ");
        assert!(said.contains("of Neutral paper developer 1+9"), "{said}");
    });
}

/// One litre a quarter worn and half a litre fresh make 1.5 litres a sixth worn.
#[test]
fn what_two_mixes_hold_and_have_spent_adds_up() {
    scenario(async |stage| {
        let bench = stage.bench().await;
        stage.note(&stage.cast.member, &bench, 0, 25).await.unwrap();
        let product = stage.product("Neutral paper developer").await;
        let bottle = stage.bottle("Brown 1", 500_000).await;
        let fresh = stage
            .mix_into(VesselId::Bottle(bottle), &product, 500_000)
            .await;
        let mut trained = Visitor::of(&stage, &stage.cast.trained).await;
        let page = trained.open(&format!("/mixes/{fresh}/pour")).await;
        let into = "Neutral paper developer 1+9 in Developer";
        let said = hint(&page, into);
        assert!(said.contains("make 1.5 L of 3 L"), "{said}");
        // 0.25 L of 1.5 L.
        assert!(said.contains("16 % of its capacity"), "{said}");
        let join = form(&page, "They are poured together").choose(into);
        let page = trained.send(&join).await;
        assert_eq!(page.page().heading(), "Developer");
        let both = stage.mix_of(bench.mix).await;
        assert_eq!((both.charged_ul, both.spent_nl), (1_500_000, 250_000_000));
        assert_eq!(stage.mix_of(fresh).await.poured_into, Some(bench.mix));
        // The same form sent twice pours once.
        trained.send(&join).await;
        assert_eq!(stage.mix_of(bench.mix).await.charged_ul, 1_500_000);
    });
}

#[test]
fn dead_solution_joins_nothing_and_the_reason_is_said() {
    scenario(async |stage| {
        let bench = stage.bench().await;
        let product = stage.product("Neutral paper developer").await;
        let acid = stage.stock("Acetic stop bath", |_| ()).await;
        let bottle = stage.bottle("Brown 1", 1_000_000).await;
        let other = stage.bottle("Brown 2", 1_000_000).await;
        let fresh = stage
            .mix_into(VesselId::Bottle(bottle), &product, 500_000)
            .await;
        stage
            .mix_into(VesselId::Bottle(other), &acid, 500_000)
            .await;
        // All of a hundred sheets: the tray is used up.
        stage
            .note(&stage.cast.member, &bench, 0, 100)
            .await
            .unwrap();
        let mut trained = Visitor::of(&stage, &stage.cast.trained).await;
        let page = trained.open(&format!("/mixes/{fresh}/pour")).await;
        assert!(page.page().form("They are poured together").is_none());
        let said = barred(&page);
        let why = |name: &str| {
            let found = said.iter().find(|(each, _)| each.contains(name));
            found.unwrap().1.clone()
        };
        assert!(why("in Developer").contains("is used up"), "{said:?}");
        assert!(why("Acetic").contains("an acid and a"), "{said:?}");
        // Neither is the dead one made good by pouring it into the fresh one.
        let page = trained.open(&format!("/mixes/{}/pour", bench.mix)).await;
        let said = barred(&page);
        assert!(
            said.iter().any(|(name, why)| {
                name.contains("Brown 1") && why.contains("The mix you would pour is used up")
            }),
            "{said:?}"
        );
    });
}
