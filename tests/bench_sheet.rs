//! The bench on paper: one tap from the board, and all that is needed in the dark.

#![expect(clippy::unwrap_used, reason = "what fails here fails the test")]

use time::Duration;
use wetside::bench::actions::{NewTray, set_tray};
use wetside::rights::{KeepBench, Role};

use crate::access::house::somebody;
use crate::harness::{Answer, Browser, Stage, new_key, scenario, tray_on};

async fn from_board(stage: &Stage, browser: &mut Browser) -> Answer {
    let board = browser.get(&stage.at("/board")).await.expect(200);
    let links = board.page().links();
    let found = links.iter().find(|(_, to)| to.ends_with("/bench-sheet"));
    browser.get(&found.unwrap().1).await.expect(200)
}

/// A litre at 1+9 keeps eight hours in an open tray, and half of its 100 sheets is the
/// half of its capacity. Source: common practice, no source.
#[test]
fn everyone_has_it_one_tap_from_the_board() {
    scenario(async |stage: Stage| {
        let bench = stage.bench().await;
        let member = stage.cast.member.clone();
        stage.note(&member, &bench, 0, 50).await.unwrap();
        stage.pass(Duration::hours(2));
        for person in [
            &stage.cast.member,
            &stage.cast.trained,
            &stage.cast.steward,
            &stage.cast.treasurer,
        ] {
            let mut browser = stage.browser(person).await;
            let page = from_board(&stage, &mut browser).await.page();
            assert_eq!(page.heading(), "Bench sheet");
            let said = page.main();
            for words in [
                "The cellar, drawn Wed 25 Nov 2026, 15:00",
                "Wed 25 Nov 2026, 13:00",
                "Wed 25 Nov 2026, 21:00",
                "As supplied: H317",
                "Ready",
                "50 % of its capacity used, 25 % of its life",
                "Gloves and tongs, never bare hands.",
                "Read the supplier’s safety data sheet before you pour.",
                "White light on.",
                "running water at once",
                "P305+P351+P338",
                "Write here",
            ] {
                assert!(said.contains(words), "{words} in {said}");
            }
        }
        let mut stranger = stage.browser(&stage.cast.stranger).await;
        stranger.get(&stage.at("/bench-sheet")).await.expect(404);
    });
}

/// What is written by hand: time, name, line, paper, size, count; checks; temperatures.
#[test]
fn there_are_rows_to_write_in() {
    scenario(async |stage: Stage| {
        stage.bench().await;
        let mut browser = stage.browser(&stage.cast.member).await;
        let page = from_board(&stage, &mut browser).await.page();
        let captions = page.all(".blank-rows caption");
        assert_eq!(captions, ["Sheets", "Checks", "Temperatures"]);
        let columns = page.all(".blank-rows:first-of-type th");
        let sheets = ["Day, time", "Name", "Line", "Paper", "Size", "Sheets"];
        assert_eq!(columns, sheets);
        let blank = page.all(".blank-rows td");
        assert_eq!(blank.len(), 16 * 6 + 5 * 5 + 5 * 4);
        assert!(blank.iter().all(String::is_empty));
        let hint = page.first(".sheet-blank p").unwrap();
        for choice in ["RC", "FB", "8×10"] {
            assert!(hint.contains(choice), "{choice} in {hint}");
        }
    });
}

/// Trays that fill the first side push Emergency to the second, and leave fewer rows.
#[test]
fn a_long_bench_leaves_fewer_rows() {
    scenario(async |stage: Stage| {
        let bench = stage.bench().await;
        let permit = stage.permit::<KeepBench>(&stage.cast.steward).await;
        let permit = permit.unwrap();
        for place in 0..16 {
            let tray = NewTray {
                name: format!("Tray {place}"),
                ..tray_on(bench.line)
            };
            let app = &stage.installation.app;
            set_tray(app, &permit, new_key(), tray).await.unwrap();
        }
        let mut browser = stage.browser(&stage.cast.member).await;
        let page = from_board(&stage, &mut browser).await.page();
        assert_eq!(page.all(".sheet-table tbody tr").len(), 17);
        assert_eq!(page.all("body.bench-sheet.is-long").len(), 1);
        let blank = page.all(".blank-rows td");
        assert_eq!(blank.len(), 8 * 6 + 3 * 5 + 3 * 4);
    });
}

#[test]
fn a_bench_without_mixes_says_to_look_first() {
    scenario(async |stage: Stage| {
        let newcomer = somebody(&stage, "newcomer", stage.room, Role::Member).await;
        let mut browser = stage.browser(&newcomer).await;
        let page = from_board(&stage, &mut browser).await.page();
        let said = page.main();
        assert!(said.contains("No trays stand on this line."), "{said}");
        // None of the suppliers' statements are asked for, so the general ones stand there.
        assert!(said.contains("these are the general ones"), "{said}");
        assert!(said.contains("P304+P340"), "{said}");
    });
}

/// The room's own numbers stand on it as on the Emergency page.
#[test]
fn it_says_what_the_emergency_page_says() {
    scenario(async |stage: Stage| {
        stage.bench().await;
        let mut steward = stage.browser(&stage.cast.steward).await;
        let settings = steward.get(&stage.at("/settings")).await.expect(200);
        let form = settings.page().form("Keep these rules").unwrap();
        let form = form
            .with("poison_centre", "Centre 000 111")
            .with("address", "4 Quay Lane");
        steward.submit(&form).await.expect(303);
        let sheet = from_board(&stage, &mut steward).await.page();
        let alarm = steward.get(&stage.at("/emergency")).await.expect(200);
        for part in [".first li", ".help dd", ".statements dt"] {
            let (here, there) = (sheet.all(part), alarm.page().all(part));
            assert!(!here.is_empty(), "{part}");
            assert_eq!(here, there, "{part}");
        }
        let help = sheet.all(".help dd");
        assert!(help.contains(&"Centre 000 111".to_owned()), "{help:?}");
    });
}
