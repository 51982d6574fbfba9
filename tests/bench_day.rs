//! The main job: a room's day at the bench, with the figures of the trade.

#![expect(clippy::unwrap_used, reason = "what fails here fails the test")]

use time::Duration;
use uuid::Uuid;
use wetside::darkroom::verdict::Verdict;
use wetside::database::Scope;
use wetside::error::Error;
use wetside::logbook::Entry;
use wetside::mixes::RULES;
use wetside::problem::Problem;
use wetside::rights::UndoNote;
use wetside::sheets::actions::{Undo, undo};
use wetside::sheets::{Noted, Wear};
use wetside::{board, mixes, rooms};

use crate::harness::{Bench, Stage, new_key, scenario};

impl Stage {
    async fn spent_nl(&self, bench: &Bench) -> i64 {
        let (scope, mix) = (self.everything(), bench.mix);
        let app = &self.installation.app;
        let found = app.database().reading(scope, move |tx| {
            Box::pin(async move { mixes::mix(tx, mix).await })
        });
        found.await.unwrap().unwrap().spent_nl
    }

    fn everything(&self) -> Scope {
        Scope {
            room: self.room,
            person: None,
        }
    }

    async fn verdict(&self) -> Verdict {
        let app = &self.installation.app;
        let now = app.clock().now();
        let lines = app.database().reading(self.everything(), move |tx| {
            Box::pin(async move {
                let settings = rooms::settings(tx).await?;
                board::lines_now(tx, now, &settings).await
            })
        });
        lines.await.unwrap()[0].trays[0].judgement.verdict
    }
}

/// One litre at 1+9 develops 100 sheets of 8×10 in on RC, or 50 on FB.
/// Source: common practice, no source.
#[test]
fn a_litre_at_one_and_nine_takes_a_hundred_sheets() {
    scenario(async |stage: Stage| {
        let bench = stage.bench().await;
        let member = stage.cast.member.clone();
        assert_eq!(stage.verdict().await, Verdict::Ready);
        stage.note(&member, &bench, 0, 50).await.unwrap();
        assert_eq!(stage.spent_nl(&bench).await, 500_000_000);
        stage.note(&member, &bench, 1, 15).await.unwrap();
        assert_eq!(stage.spent_nl(&bench).await, 800_000_000);
        assert_eq!(stage.verdict().await, Verdict::TestFirst);
        stage.note(&member, &bench, 0, 20).await.unwrap();
        assert_eq!(stage.verdict().await, Verdict::Replace);
    });
}

/// In an open tray it lasts 7 to 8 hours. Source: common practice, no source.
#[test]
fn an_open_tray_is_dead_after_eight_hours() {
    scenario(async |stage: Stage| {
        stage.bench().await;
        stage.pass(Duration::minutes(6 * 60));
        assert_eq!(stage.verdict().await, Verdict::Ready);
        stage.pass(Duration::minutes(30));
        assert_eq!(stage.verdict().await, Verdict::TestFirst);
        stage.pass(Duration::minutes(90));
        assert_eq!(stage.verdict().await, Verdict::Replace);
    });
}

#[test]
fn a_note_taken_back_gives_back_exactly_what_it_took() {
    scenario(async |stage: Stage| {
        let bench = stage.bench().await;
        let member = stage.cast.member.clone();
        stage.note(&member, &bench, 1, 7).await.unwrap();
        let before = stage.spent_nl(&bench).await;
        let done = stage.note(&member, &bench, 2, 3).await.unwrap();
        let wanted = Undo {
            pass_id: done.id("pass").unwrap(),
            reason: String::new(),
        };
        let app = &stage.installation.app;
        let permit = stage.permit::<UndoNote>(&member).await.unwrap();
        undo(app, &permit, new_key(), wanted.clone()).await.unwrap();
        assert_eq!(stage.spent_nl(&bench).await, before);
        let again = undo(app, &permit, new_key(), wanted).await;
        assert!(matches!(again, Err(Error::Refused(Problem::AlreadyUndone))));
    });
}

#[test]
fn a_member_takes_back_only_their_own_and_only_for_ten_minutes() {
    scenario(async |stage: Stage| {
        let bench = stage.bench().await;
        let done = stage.note(&stage.cast.member, &bench, 0, 6).await.unwrap();
        let wanted = Undo {
            pass_id: done.id("pass").unwrap(),
            reason: String::new(),
        };
        let app = &stage.installation.app;
        let other = stage.permit::<UndoNote>(&stage.cast.trained).await.unwrap();
        let refused = undo(app, &other, new_key(), wanted.clone()).await;
        assert!(matches!(refused, Err(Error::Forbidden)), "{refused:?}");
        stage.pass(Duration::minutes(11));
        let own = stage.permit::<UndoNote>(&stage.cast.member).await.unwrap();
        let late = undo(app, &own, new_key(), wanted.clone()).await;
        assert!(matches!(
            late,
            Err(Error::Refused(Problem::UndoTimeOver { .. }))
        ));
        let steward = stage.permit::<UndoNote>(&stage.cast.steward).await.unwrap();
        let silent = undo(app, &steward, new_key(), wanted.clone()).await;
        assert!(matches!(silent, Err(Error::Invalid(_))), "{silent:?}");
        let with_reason = Undo {
            reason: "Noted twice".to_owned(),
            ..wanted
        };
        undo(app, &steward, new_key(), with_reason).await.unwrap();
    });
}

/// Six sheets of 8×10 in at 100 a litre are 60 ml. Source: common practice, no source.
#[test]
fn a_note_whose_wear_is_not_its_own_arithmetic_is_named() {
    let noted = |spent_nl: i64| Noted {
        rules: RULES,
        pass_id: Uuid::nil(),
        line_id: Uuid::nil(),
        person_id: Uuid::nil(),
        paper_class_id: Uuid::nil(),
        sheet_size_id: Uuid::nil(),
        long_tenths_mm: 2_540,
        short_tenths_mm: 2_032,
        sheets: 6,
        is_estimated: false,
        corrects_seq: None,
        workshop_id: None,
        wear: vec![Wear {
            mix_id: Uuid::nil(),
            tray_id: Uuid::nil(),
            sheets_per_litre_thousandths: 100_000,
            spent_nl,
            share_ppb: None,
            brought: None,
        }],
    };
    assert_eq!(noted(60_000_000).recheck().unwrap(), None);
    let named = noted(59_999_999).recheck().unwrap().unwrap();
    assert!(
        named.contains("59999999") && named.contains("60000000"),
        "{named}"
    );
}
