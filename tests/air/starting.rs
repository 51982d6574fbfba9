//! No toner, glacial acid or ammonia starts in a line whose air nobody measured.

use wetside::error::Error;
use wetside::outages::What;
use wetside::outages::actions::{NewOutage, OutageOver, begin, end};
use wetside::problem::Problem;
use wetside::rights::NoteOutages;

use super::{Toner, Visitor};
use crate::harness::{Stage, new_key, scenario};

#[track_caller]
fn refused<T: std::fmt::Debug>(done: wetside::error::Result<T>) -> Problem {
    match done {
        Err(Error::Refused(problem)) => problem,
        other => panic!("{other:?}"),
    }
}

/// The page to mix into the toner's tray, with what it answers to the amount.
async fn asked(steward: &mut Visitor, toner: &Toner) -> crate::harness::Answer {
    let page = steward.open(&format!("/trays/{}/mix", toner.tray)).await;
    let form = page.page().form("Show what to pour").unwrap();
    steward.browser.submit(&form.fill("Volume", "1")).await
}

#[test]
fn without_measured_exhaust_neither_page_nor_action_mixes_a_toner() {
    scenario(async |stage| {
        let bench = stage.bench().await;
        let toner = stage.toner(bench.line).await;
        let mut steward = Visitor::steward(&stage).await;
        let page = steward.open(&format!("/trays/{}/mix", toner.tray)).await;
        let hint = &page.page().all(".target-hint")[0];
        assert!(
            hint.contains("A toner starts only where exhaust was measured"),
            "{hint}"
        );
        let page = asked(&mut steward, &toner).await.expect(422);
        let summary = page.page().first(".summary").unwrap();
        assert!(summary.contains("nobody measured any"), "{summary}");
        let why = refused(stage.mix_toner(&toner).await);
        assert!(matches!(why, Problem::ExhaustUnmeasured(_)), "{why:?}");
        // What was measured as nothing is unmeasured.
        steward.measure("0").await;
        refused(stage.mix_toner(&toner).await);
        assert!(steward.says().await.is_empty());
        steward.measure("30").await;
        let page = asked(&mut steward, &toner).await.expect(200);
        assert!(page.page().form("It stands in the tray").is_some());
        stage.mix_toner(&toner).await.unwrap();
    });
}

#[test]
fn other_baths_start_without_it() {
    scenario(async |stage| {
        // The bench's own developer was mixed in a room whose air nobody measured.
        let bench = stage.bench().await;
        let mut steward = Visitor::steward(&stage).await;
        let page = steward.open(&format!("/trays/{}", bench.tray)).await;
        assert!(page.page().main().contains("Neutral paper developer"));
        assert!(steward.says().await.is_empty());
    });
}

#[test]
fn a_steward_sets_it_otherwise_naming_who_agreed_and_takes_that_back() {
    scenario(async |stage| {
        let bench = stage.bench().await;
        let toner = stage.toner(bench.line).await;
        let mut steward = Visitor::steward(&stage).await;
        let page = steward.air().await;
        let page = steward.follow(&page, "Set it otherwise").await;
        let button = "Let them start without measured exhaust";
        let refusal = steward.send(&page, button, &[]).await.expect(422);
        assert_eq!(refusal.page().problems()[0].0, "words");
        let who = [(
            "The competent person who agreed",
            "The district safety engineer",
        )];
        let page = steward.send_on(&page, button, &who).await;
        let main = page.page().main();
        assert!(
            main.contains("The district safety engineer agreed to it, written down"),
            "{main}"
        );
        stage.mix_toner(&toner).await.unwrap();
        // It stays unmeasured, and everyone reads that.
        let said = steward.says().await;
        assert_eq!(
            said,
            [
                "The room itself: its exhaust is unmeasured, and Selenium-type toner stands there. \
                 Cover it when nobody prints, and let air in."
            ]
        );
        let page = steward.follow(&page, "Set it otherwise").await;
        let button = "Let them start with measured exhaust only";
        let page = steward.send_on(&page, button, &[]).await;
        assert!(page.page().main().contains("may not start here"));
    });
}

async fn fan_off(stage: &Stage) -> uuid::Uuid {
    let permit = stage.permit::<NoteOutages>(&stage.cast.member).await;
    let off = NewOutage {
        what: What::Fan,
        space_id: None,
        happened_at_us: None,
    };
    let app = &stage.installation.app;
    let done = begin(app, &permit.unwrap(), new_key(), off).await;
    done.unwrap().id("outage").unwrap()
}

async fn fan_on(stage: &Stage, ended_outage_id: uuid::Uuid) {
    let permit = stage.permit::<NoteOutages>(&stage.cast.member).await;
    let over = OutageOver {
        ended_outage_id,
        happened_at_us: None,
    };
    let app = &stage.installation.app;
    end(app, &permit.unwrap(), new_key(), over).await.unwrap();
}

#[test]
fn while_the_fan_is_off_nothing_of_these_starts_and_the_board_says_where_it_stands() {
    scenario(async |stage| {
        let bench = stage.bench().await;
        let toner = stage.toner(bench.line).await;
        let mut steward = Visitor::steward(&stage).await;
        steward.size("20", "2.6").await;
        steward.measure("120").await;
        let off = fan_off(&stage).await;
        let why = refused(stage.mix_toner(&toner).await);
        assert!(matches!(why, Problem::FanStandsStill(_)), "{why:?}");
        fan_on(&stage, off).await;
        stage.mix_toner(&toner).await.unwrap();
        assert!(steward.says().await.is_empty());
        fan_off(&stage).await;
        let said = steward.says().await;
        assert!(
            said[0].starts_with("The room itself: the fan is off, and Selenium-type toner stands"),
            "{said:?}"
        );
    });
}

#[test]
fn the_board_says_by_how_much_exhaust_is_short_where_a_toner_stands() {
    scenario(async |stage| {
        let bench = stage.bench().await;
        let toner = stage.toner(bench.line).await;
        let mut steward = Visitor::steward(&stage).await;
        steward.size("20", "2.6").await;
        steward.measure("80").await;
        assert!(
            steward.says().await.is_empty(),
            "nothing of these stands there"
        );
        stage.mix_toner(&toner).await.unwrap();
        let said = steward.says().await;
        assert!(
            said[0].contains("its exhaust is 21.6 L/s short of what is wanted"),
            "{said:?}"
        );
        steward.measure("120").await;
        assert!(steward.says().await.is_empty());
    });
}

#[test]
fn a_toner_in_its_bottle_goes_back_into_no_unmeasured_line() {
    scenario(async |stage| {
        let bench = stage.bench().await;
        let toner = stage.toner(bench.line).await;
        let mut steward = Visitor::steward(&stage).await;
        steward.measure("80").await;
        let mix = stage.mix_toner(&toner).await.unwrap().id("mix").unwrap();
        let page = steward.open("/bench/bottles").await;
        let bottle = [("Name", "Brown"), ("Holds up to the stopper", "2")];
        steward.send_on(&page, "Add the bottle", &bottle).await;
        let keep = format!("/mixes/{mix}/keep");
        let page = steward.open(&keep).await;
        let form = page.page().form("It is in the bottle").unwrap();
        steward
            .browser
            .submit(&form.choose("Brown"))
            .await
            .expect(303);
        let off = fan_off(&stage).await;
        let page = steward.open(&keep).await;
        let barred = page.page().first(".barred").unwrap();
        assert!(
            barred.contains("does not start while power or fan is off"),
            "{barred}"
        );
        fan_on(&stage, off).await;
        let page = steward.open(&keep).await;
        let main = page.page().main();
        assert!(!main.contains("does not start while"), "{main}");
    });
}

#[test]
fn a_handover_says_what_is_known_of_each_place() {
    scenario(async |stage| {
        let mut steward = Visitor::steward(&stage).await;
        steward.size("20", "2.6").await;
        steward.measure("80").await;
        let page = steward.open("/handover").await;
        let sections = page.page().all(".handed section");
        let section = sections.iter().find(|each| each.starts_with("Room air"));
        assert_eq!(
            section.unwrap().trim_start_matches("Room air").trim(),
            "The room itself: exhaust 80 L/s, 21.6 L/s short."
        );
    });
}
