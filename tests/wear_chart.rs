//! The chart of wear on a tray's page, from notes that were made and taken back.

use std::collections::BTreeSet;

use time::Duration;
use wetside::rights::UndoNote;
use wetside::sheets::actions::{Undo, undo};

use crate::access::house::House;
use crate::harness::{Stage, new_key, scenario};

/// A litre at 1+9 develops 100 sheets of 8×10 in on RC and keeps eight hours in an open
/// tray. Source: common practice, no source.
#[test]
fn the_chart_tells_what_happened() {
    scenario(async |stage: Stage| {
        let bench = stage.bench().await;
        let member = stage.cast.member.clone();
        stage.pass(Duration::hours(1));
        stage.note(&member, &bench, 0, 10).await.unwrap();
        stage.pass(Duration::hours(1));
        let wrong = stage.note(&member, &bench, 1, 20).await.unwrap();
        stage.pass(Duration::minutes(60));
        let wanted = Undo {
            pass_id: wrong.id("pass").unwrap(),
            reason: "Noted twice".to_owned(),
        };
        let permit = stage.permit::<UndoNote>(&stage.cast.steward).await.unwrap();
        let app = &stage.installation.app;
        undo(app, &permit, new_key(), wanted).await.unwrap();
        stage.pass(Duration::hours(1));

        let mut browser = stage.browser(&member).await;
        let tray = stage.at(&format!("/trays/{}", bench.tray));
        let page = browser.get(&tray).await.expect(200).page();
        let cells = page.all(".wear-chart tbody tr > *");
        let rows: Vec<String> = cells.chunks(5).map(|row| row.join(" ")).collect();
        let wanted = [
            "A 13:00 1 L mixed. 0 % 0 %",
            "B 14:00 10 sheets of 8×10 in, RC, noted. 10 % 12 %",
            "C 15:00 20 sheets of 8×10 in, FB, noted. 50 % 25 %",
            "D 16:00 The note of 20 sheets of 8×10 in, FB, undone. 10 % 37 %",
        ];
        assert_eq!(rows, wanted);
        let letters = page.all(".chart-letter");
        assert_eq!(letters, ["A", "B", "C", "D"]);
        let words = page.all(".chart-word");
        assert_eq!(
            words,
            ["Test first from here", "Life 50 %", "Capacity 10 %"]
        );
    });
}

#[test]
fn an_empty_tray_has_no_chart() {
    scenario(async |stage: Stage| {
        let house = House::furnish(stage.clone()).await;
        let mut browser = stage.browser(&stage.cast.member).await;
        let board = browser.get(&stage.at("/board")).await.expect(200);
        let trays = board.page().links();
        let trays: BTreeSet<&String> = trays
            .iter()
            .filter(|(_, to)| to.contains("/trays/"))
            .map(|(_, to)| to)
            .collect();
        assert_eq!(trays.len(), 2, "{trays:?}");
        for tray in trays {
            let page = browser.get(tray).await.expect(200).page();
            let is_full = tray.ends_with(&house.bench.tray.to_string());
            assert_eq!(
                page.all(".wear-chart").len(),
                usize::from(is_full),
                "{tray}"
            );
        }
    });
}
