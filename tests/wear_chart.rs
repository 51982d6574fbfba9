//! The chart of wear on a tray's page, from notes that were made and taken back.

use std::collections::BTreeSet;

use time::Duration;
use wetside::mixes::actions::{NewTopUp, top_up};
use wetside::rights::{Mix, UndoNote};
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
        let cells = page.all(".wear-chart + table tbody tr > *");
        let rows: Vec<String> = cells.chunks(5).map(|row| row.join(" ")).collect();
        let name = &member.name;
        let wanted = [
            "A 13:00 1 L of Neutral paper developer at 1+9 was mixed in Developer. 0 % 0 %"
                .to_owned(),
            format!(
                "B 14:00 10 sheets of 8×10 in, RC, down First line, noted for {name}. 10 % 12 %"
            ),
            format!(
                "C 15:00 20 sheets of 8×10 in, FB, down First line, noted for {name}. 50 % 25 %"
            ),
            format!(
                "D 16:00 The note of entry 30 by {name} was taken back: Noted twice. 10 % 37 %"
            ),
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

/// Fifty sheets use half of a litre at a hundred sheets a litre; another litre
/// makes that a quarter, and halves its age: by definition of capacity and mixing.
#[test]
fn a_top_up_lowers_both_curves() {
    scenario(async |stage: Stage| {
        let bench = stage.bench().await;
        let member = stage.cast.member.clone();
        stage.note(&member, &bench, 0, 50).await.unwrap();
        stage.pass(Duration::hours(4));
        let permit = stage.permit::<Mix>(&stage.cast.trained).await.unwrap();
        let fresh = NewTopUp {
            mix_id: bench.mix,
            volume_ul: 1_000_000,
            stock_id: None,
            happened_at_us: None,
        };
        let app = &stage.installation.app;
        top_up(app, &permit, new_key(), fresh).await.unwrap();
        let mut browser = stage.browser(&member).await;
        let tray = stage.at(&format!("/trays/{}", bench.tray));
        let page = browser.get(&tray).await.expect(200).page();
        let words = page.all(".chart-word");
        assert_eq!(
            words,
            ["Test first from here", "Life 25 %", "Capacity 25 %"]
        );
    });
}
