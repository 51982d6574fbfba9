//! Lamps and their tests as pages show them.

use super::standing::{LampNow, PaperNow, Standing};
use super::store::FogTest;
use super::views::{LampShown, PaperShown, TestRow};
use crate::rooms::Settings;
use crate::web::dates::Zone;
use crate::web::days;
use crate::web::messages::lamps as words;

/// A lamp with what is known of every paper.
pub(super) fn lamp_shown(now: &LampNow, settings: &Settings, zone: &Zone) -> LampShown {
    let papers = now.papers.iter();
    LampShown {
        id: now.lamp.id.to_string(),
        name: now.lamp.name.clone(),
        about: about(now, settings),
        papers: papers
            .map(|paper| paper_shown(paper, now, settings, zone))
            .collect(),
    }
}

/// What it is and how it hangs.
pub(super) fn about(now: &LampNow, settings: &Settings) -> String {
    let hangs = &now.lamp.hangs;
    let distance = settings.lengths().words(hangs.distance_tenths_mm.into());
    words::about(hangs.kind, &hangs.light, &distance, now.space.as_deref())
}

fn paper_shown(paper: &PaperNow, now: &LampNow, settings: &Settings, zone: &Zone) -> PaperShown {
    let test = paper.test.as_ref();
    let said = test.map_or_else(
        || words::NEVER_TESTED.to_owned(),
        |test| said_of(test, paper.standing, settings, zone),
    );
    let holds = paper.standing == Standing::Tested;
    let time = test.filter(|_| holds).and_then(|test| test.safe_s);
    PaperShown {
        name: paper.name.clone(),
        word: words::word(paper.standing, is_moved(test, now)),
        time: time.map(words::time),
        said,
    }
}

/// Whether the lamp shines as it did and only hangs elsewhere.
fn is_moved(test: Option<&FogTest>, now: &LampNow) -> bool {
    let hangs = &now.lamp.hangs;
    test.is_some_and(|test| test.hangs.kind == hangs.kind && test.hangs.light == hangs.light)
}

fn said_of(test: &FogTest, standing: Standing, settings: &Settings, zone: &Zone) -> String {
    let [tested, again_by] = [
        zone.day(test.happened_at).words,
        days::words(&test.again_by),
    ]
    .map(unbroken);
    let steps = (test.clean_s, test.fogged_s);
    match standing {
        Standing::Never => words::NEVER_TESTED.to_owned(),
        Standing::Tested => words::tested(&tested, &again_by, steps),
        Standing::Overdue => words::overdue(&tested, test.safe_s, &again_by),
        Standing::NoSafeTime => words::no_safe_time(&tested, test.fogged_s),
        Standing::Changed => {
            let distance = settings.lengths();
            let distance = distance.words(test.hangs.distance_tenths_mm.into());
            words::changed(&tested, &test.hangs.light, &distance)
        }
    }
}

/// A day that no end of a line comes between.
fn unbroken(day: String) -> String {
    day.replace(' ', "\u{a0}")
}

/// A test in its lamp's history.
pub(super) fn test_row(test: &FogTest, settings: &Settings, zone: &Zone) -> TestRow {
    let distance = settings.lengths();
    let distance = distance.words(test.hangs.distance_tenths_mm.into());
    let again_by = days::words(&test.again_by);
    TestRow {
        seq: test.seq,
        id: test.id.to_string(),
        at: zone.minute_in_full(test.happened_at),
        found: found(test),
        more: words::with(
            &test.hangs.light,
            &distance,
            test.person.as_deref(),
            &again_by,
        ),
        undone_by: test.undone_by,
    }
}

/// What a test found.
pub(super) fn found(test: &FogTest) -> String {
    words::found(
        &test.paper_class,
        (test.clean_s, test.fogged_s),
        test.safe_s,
    )
}
