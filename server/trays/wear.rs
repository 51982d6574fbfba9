//! What a mix's chart is drawn from: its notes, and those that were taken back.

use time::OffsetDateTime;

use crate::board::{life_ends, life_used_ppb, ppb};
use crate::mixes::{Mix, WornAt};
use crate::rooms::Settings;
use crate::web::chart::{Event, Point, WearOverTime};
use crate::web::messages::drawing as words;

/// So many notes of a mix the chart tells apart; what older ones used up it begins with.
pub(super) const MOST_NOTES: i64 = 500;

/// A mix since it was mixed.
pub(super) fn over_time(
    mix: &Mix,
    notes: &[WornAt],
    settings: &Settings,
    now: OffsetDateTime,
) -> WearOverTime {
    let numbers = settings.numbers();
    let mut events = vec![Event {
        at: mix.mixed_at,
        what: words::mixed(mix.charged_ul, numbers),
    }];
    for note in notes {
        let paper = note.sheet_size.as_deref().zip(note.paper_class.as_deref());
        let what = words::what_went_through(note.sheets, paper);
        events.push(Event {
            at: note.happened_at,
            what: words::noted(&what),
        });
        if let Some(at) = note.undone_at {
            let what = words::undone(&what);
            events.push(Event { at, what });
        }
    }
    WearOverTime {
        began: mix.mixed_at,
        now,
        capacity: capacity(mix, notes),
        life: life(mix, now),
        life_ends: life_ends(mix),
        test_first_ppb: settings.test_first_ppb,
        events,
    }
}

/// Life, as far as anybody knows it.
fn life(mix: &Mix, now: OffsetDateTime) -> Vec<Point> {
    if mix.life_s <= 0 {
        return Vec::new();
    }
    vec![
        point(mix.mixed_at, 0),
        point(mix.age_at, mix.age_ppb),
        point(now, life_used_ppb(mix, now)),
    ]
}

fn point(at: OffsetDateTime, used_ppb: i64) -> Point {
    Point { at, used_ppb }
}

/// Capacity, step by step: every note takes its share when the sheets went through, and
/// gives it back when it was taken back.
fn capacity(mix: &Mix, notes: &[WornAt]) -> Vec<Point> {
    if !mix.has_capacity {
        return Vec::new();
    }
    let taken = notes.iter().map(|note| (note.happened_at, note.spent_nl));
    let given = notes.iter().filter_map(|note| {
        let at = note.undone_at?;
        Some((at, -note.spent_nl))
    });
    let mut changes: Vec<(OffsetDateTime, i64)> = taken.chain(given).collect();
    changes.sort_by_key(|(at, _)| *at);
    let told: i64 = changes.iter().map(|(_, spent_nl)| spent_nl).sum();
    let mut spent_nl = mix.spent_nl - told;
    let share = |spent_nl: i64| ppb(spent_nl, mix.charged_ul.saturating_mul(1_000));
    let mut points = vec![point(mix.mixed_at, share(spent_nl))];
    for (at, change_nl) in changes {
        spent_nl += change_nl;
        points.push(point(at, share(spent_nl)));
    }
    points
}
