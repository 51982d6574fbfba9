//! How long paper may lie in the light of a lamp.

use wetside::darkroom::fog::{SafeTime, Steps, safe_time};
use wetside::darkroom::quantities::Seconds;

use super::{COMMON_PRACTICE, near, same};

fn minutes(minutes: u16) -> Option<Seconds> {
    Some(Seconds::from_minutes(minutes))
}

#[test]
#[expect(clippy::cast_precision_loss, reason = "far below 2^53")]
pub(super) fn half_the_geometric_mean_of_the_last_clean_and_the_first_fogged_time() {
    let source = "ANSI IT2.26-1998: safe time is at most 0.5 √(t1 t0)";
    for (clean, fogged, safe_minutes) in [(4, 8, 2.83), (3, 6, 2.12)] {
        let steps = Steps {
            longest_clean: minutes(clean),
            shortest_fogged: minutes(fogged),
        };
        let found = safe_time(steps).unwrap().seconds().unwrap();
        // Whole seconds, rounded down; the figure itself has two places of a minute.
        near(
            &format!("safe seconds from {clean} and {fogged} min"),
            found.get() as f64,
            safe_minutes * 60.0 - 0.5,
            0.8,
            source,
        );
    }
}

#[test]
pub(super) fn one_end_alone_never_gives_more_than_half_of_it() {
    let clean = Steps {
        longest_clean: minutes(16),
        shortest_fogged: None,
    };
    let half = SafeTime::NothingFogged(Seconds::from_minutes(8));
    let found = safe_time(clean).unwrap();
    same("16 min and no fog", found, half, COMMON_PRACTICE);
    let fogged = Steps {
        longest_clean: None,
        shortest_fogged: minutes(1),
    };
    let found = safe_time(fogged).unwrap();
    same(
        "fog from 1 min on",
        found,
        SafeTime::AllFogged,
        COMMON_PRACTICE,
    );
}
