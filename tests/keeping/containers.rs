//! Discarding: into which container, why, and what if it was a mistake.

use time::Duration;
use wetside::bench::Step;
use wetside::darkroom::incompatibility::Group;
use wetside::mixes::actions::VesselId;

use super::{Visitor, barred, discard_into, form, hint};
use crate::harness::scenario;

/// Acid with sulfite, which developers and fixers carry: ICSC 1134.
#[test]
fn a_container_takes_nothing_that_must_not_meet_what_it_holds() {
    scenario(async |stage| {
        let bench = stage.bench().await;
        let acid = stage.stock("Acetic stop bath", |_| ()).await;
        let stop = stage.tray(bench.line, "Stop bath", Step::StopBath).await;
        let stop = stage.mix_into(VesselId::Tray(stop), &acid, 1_000_000).await;
        let mut trained = Visitor::of(&stage, &stage.cast.trained).await;
        discard_into(&mut trained, bench.mix, "Drum A").await;
        let page = trained.open(&format!("/mixes/{stop}/discard")).await;
        let said = barred(&page);
        assert_eq!(said[0].0, "Drum A");
        assert!(
            said[0].1.starts_with("Holds Neutral paper developer."),
            "{said:?}"
        );
        assert!(
            said[0].1.contains("Keep these apart: an acid and a"),
            "{said:?}"
        );
        // Written all the same, the name is refused, however it is written.
        let sent = form(&page, "Discard it")
            .fill("Collected in container", "drum a")
            .with("confirmed", "yes");
        let said = trained.send_in_vain(&sent).await;
        assert!(said.contains("Keep these apart"), "{said}");
        trained
            .send(&sent.fill("Collected in container", "Drum B"))
            .await;
        // What no rule keeps out is offered by name, and never called harmless.
        let developer = stage.product("Neutral paper developer").await;
        let again = VesselId::Tray(bench.tray);
        let again = stage.mix_into(again, &developer, 1_000_000).await;
        let page = trained.open(&format!("/mixes/{again}/discard")).await;
        let said = hint(&page, "Drum A");
        assert!(said.contains("Read its label"), "{said}");
        let both = form(&page, "Discard it")
            .choose("Drum A")
            .fill("Name of another container", "Drum C")
            .with("confirmed", "yes");
        let said = trained.send_in_vain(&both).await;
        assert!(said.contains("Keep one of the two"), "{said}");
        trained
            .send(&both.fill("Name of another container", ""))
            .await;
        let gone = stage.mix_of(again).await;
        assert_eq!(gone.discarded_into.as_deref(), Some("Drum A"));
    });
}

/// What came into a mix goes into its container with it; what nobody can name goes
/// with nothing.
#[test]
fn contaminated_and_unknown_liquid_spoil_a_container_for_the_rest() {
    scenario(async |stage| {
        let bench = stage.bench().await;
        let developer = stage.product("Neutral paper developer").await;
        stage.flag(bench.mix, vec![Group::OxidisingBleach]).await;
        let mut steward = Visitor::of(&stage, &stage.cast.steward).await;
        let page = steward.open(&format!("/mixes/{}/discard", bench.mix)).await;
        // The reason is filled in from what was reported.
        assert_eq!(form(&page, "Discard it").value("why"), Some("contaminated"));
        discard_into(&mut steward, bench.mix, "Drum A").await;
        let tray = VesselId::Tray(bench.tray);
        let fresh = stage.mix_into(tray, &developer, 1_000_000).await;
        let said = barred(&steward.open(&format!("/mixes/{fresh}/discard")).await);
        assert!(
            said[0].1.contains("oxidising_bleach") || said[0].1.contains("bleach"),
            "{said:?}"
        );
        assert!(said[0].1.contains("Never pour these together"), "{said:?}");
        // A bottle of something nobody can name: left alone but for a steward.
        let bottle = stage.bottle("Brown 1", 1_000_000).await;
        let unknown = stage.unknown(VesselId::Bottle(bottle), 500_000).await;
        let path = format!("/mixes/{unknown}/discard");
        let mut trained = Visitor::of(&stage, &stage.cast.trained).await;
        let page = trained.open(&path).await;
        assert!(page.page().form("Discard it").is_none());
        let page = steward.open(&path).await;
        let said = barred(&page);
        assert!(
            said[0].1.contains("the unknown goes with nothing"),
            "{said:?}"
        );
        discard_into(&mut steward, unknown, "Drum U").await;
        let page = steward.open(&format!("/mixes/{fresh}/discard")).await;
        let said = barred(&page);
        let drum = said.iter().find(|(name, _)| name == "Drum U").unwrap();
        assert!(drum.1.contains("liquid that nobody can name"), "{said:?}");
    });
}

/// Four hours of eight, discarded for two: six of eight hours are used after.
#[test]
fn a_mistaken_discard_is_undone_and_the_mix_has_aged_on() {
    scenario(async |stage| {
        let bench = stage.bench().await;
        let bottle = stage.bottle("Brown 1", 1_000_000).await;
        stage.pass(Duration::hours(4));
        let mut trained = Visitor::of(&stage, &stage.cast.trained).await;
        discard_into(&mut trained, bench.mix, "Drum A").await;
        stage.pass(Duration::hours(2));
        let path = format!("/mixes/{}/undo-discard", bench.mix);
        let mut steward = Visitor::of(&stage, &stage.cast.steward).await;
        let page = steward.open(&path).await;
        let said = page.page().main();
        assert!(said.contains("75 % of its life"), "{said}");
        let undo = form(&page, "It was never discarded");
        let said = steward.send_in_vain(&undo).await;
        assert!(said.contains("Reason"), "{said}");
        let label = "How the mistake came about";
        let page = steward.send(&undo.fill(label, "The wrong tray")).await;
        assert_eq!(page.page().heading(), "Developer");
        let said = page.page().main();
        assert!(said.contains("75 % of its life"), "{said}");
        // Prints wear it as before, and once it is in a bottle no print does, even
        // after a discard from there was undone.
        stage.note(&stage.cast.member, &bench, 0, 6).await.unwrap();
        let keep = trained.open(&format!("/mixes/{}/keep", bench.mix)).await;
        let bottled = form(&keep, "It is in the bottle").choose("Brown 1");
        let page = trained.send(&bottled).await;
        assert_eq!(page.page().heading(), "Brown 1");
        discard_into(&mut trained, bench.mix, "Drum A").await;
        let page = steward.open(&format!("/bottles/{bottle}")).await;
        let link = page.page().links();
        assert!(
            link.iter()
                .any(|(text, href)| text == "Bring it back" && href.ends_with(&path))
        );
        let page = steward.open(&path).await;
        let undo = form(&page, "It was never discarded").fill(label, "The wrong bottle");
        steward.send(&undo).await;
        let noted = stage.note(&stage.cast.member, &bench, 0, 6).await;
        assert!(noted.is_err(), "{noted:?}");
    });
}

#[test]
fn a_discard_is_not_undone_once_something_else_stands_there() {
    scenario(async |stage| {
        let bench = stage.bench().await;
        let mut steward = Visitor::of(&stage, &stage.cast.steward).await;
        discard_into(&mut steward, bench.mix, "Drum A").await;
        let developer = stage.product("Neutral paper developer").await;
        let tray = VesselId::Tray(bench.tray);
        stage.mix_into(tray, &developer, 1_000_000).await;
        let page = steward
            .open(&format!("/mixes/{}/undo-discard", bench.mix))
            .await;
        assert!(page.page().form("It was never discarded").is_none());
        let said = page.page().main();
        assert!(said.contains("Something stands in it."), "{said}");
    });
}

/// Hypochlorite has no use at this bench; what held it is rinsed first (trade.md 12).
#[test]
fn what_held_household_bleach_is_rinsed_before_anything_goes_in() {
    scenario(async |stage| {
        let bench = stage.bench().await;
        let bottle = stage.bottle("Brown 1", 1_000_000).await;
        let developer = stage.product("Neutral paper developer").await;
        let spoilt = VesselId::Bottle(bottle);
        let spoilt = stage.mix_into(spoilt, &developer, 1_000_000).await;
        stage.flag(spoilt, vec![Group::Hypochlorite]).await;
        let mut trained = Visitor::of(&stage, &stage.cast.trained).await;
        let page = discard_into(&mut trained, spoilt, "Drum H").await;
        assert_eq!(page.page().heading(), "Brown 1");
        assert!(
            page.page()
                .main()
                .contains("Rinse it before anything goes in")
        );
        let keep = format!("/mixes/{}/keep", bench.mix);
        let said = barred(&trained.open(&keep).await);
        assert!(said[0].1.contains("held household bleach"), "{said:?}");
        let page = trained.open(&format!("/bottles/{bottle}/rinse")).await;
        assert_eq!(page.page().heading(), "Was Brown 1 rinsed?");
        let page = trained.send(&form(&page, "It is rinsed with water")).await;
        assert!(!page.page().main().contains("Rinse it before"));
        let page = trained.open(&keep).await;
        assert!(barred(&page).is_empty());
        let page = trained
            .send(&form(&page, "It is in the bottle").choose("Brown 1"))
            .await;
        assert_eq!(page.page().heading(), "Brown 1");
    });
}

#[test]
fn a_bath_poured_off_an_hour_ago_says_when_and_why() {
    scenario(async |stage| {
        let bench = stage.bench().await;
        stage.pass(Duration::hours(2));
        let mut trained = Visitor::of(&stage, &stage.cast.trained).await;
        let page = trained.open(&format!("/mixes/{}/discard", bench.mix)).await;
        let sent = form(&page, "Discard it")
            .fill("Collected in container", "Drum A")
            .choose("It was mixed wrongly")
            .choose("Earlier")
            .with("day", "2026-11-25")
            .fill("Time", "12:30")
            .with("confirmed", "yes");
        // Before the room's clock says 13:00 it did not stand there.
        let said = trained.send_in_vain(&sent).await;
        assert!(
            said.contains("Time: The mix did not stand there yet"),
            "{said}"
        );
        let page = trained.send(&sent.fill("Time", "14:00")).await;
        let said = page.page().all(".events li").join(" ");
        assert!(said.contains("it was mixed wrongly"), "{said}");
        let gone = stage.mix_of(bench.mix).await.discarded_at.unwrap();
        assert_eq!((gone.hour(), gone.minute()), (13, 0));
    });
}
