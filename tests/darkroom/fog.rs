//! Fog tests: the safe time lies between the halves of what was found, never above.

use proptest::prelude::*;
use wetside::darkroom::fog::{FogError, SafeTime, Steps, safe_time};
use wetside::darkroom::quantities::Seconds;

fn steps(clean: Option<i64>, fogged: Option<i64>) -> Steps {
    let seconds = |step: i64| Seconds::new(step).unwrap();
    Steps {
        longest_clean: clean.map(seconds),
        shortest_fogged: fogged.map(seconds),
    }
}

fn safe(clean: i64, fogged: i64) -> i64 {
    let found = safe_time(steps(Some(clean), Some(fogged))).unwrap();
    assert!(matches!(found, SafeTime::Reckoned(_)));
    found.seconds().unwrap().get()
}

proptest! {
    #[test]
    fn it_lies_between_half_of_the_clean_and_half_of_the_fogged_step(clean in 1_i64..100_000, more in 1_i64..100_000) {
        let found = safe(clean, clean + more);
        prop_assert!(clean / 2 <= found && 2 * found <= clean + more);
    }

    #[test]
    fn it_is_the_largest_whole_second_the_formula_allows(clean in 1_i64..1_000_000, more in 1_i64..1_000_000) {
        // s ≤ ½·√(t0·t1) is 4·s² ≤ t0·t1: no root, no rounding.
        let found = i128::from(safe(clean, clean + more));
        let product = i128::from(clean) * i128::from(clean + more);
        prop_assert!(4 * found * found <= product);
        prop_assert!(4 * (found + 1) * (found + 1) > product);
    }

    #[test]
    fn longer_steps_never_give_less(clean in 1_i64..50_000, more in 1_i64..50_000, cleaner in 0_i64..50_000, later in 0_i64..50_000) {
        let fogged = clean + more;
        prop_assert!(safe(clean, fogged + later) >= safe(clean, fogged));
        prop_assert!(safe(clean + cleaner.min(more - 1), fogged) >= safe(clean, fogged));
    }

    #[test]
    fn to_see_no_fog_at_all_gives_less_than_to_see_where_it_begins(clean in 1_i64..100_000, more in 1_i64..100_000) {
        let alone = safe_time(steps(Some(clean), None)).unwrap();
        prop_assert_eq!(alone, SafeTime::NothingFogged(Seconds::new(clean / 2).unwrap()));
        prop_assert!(alone.seconds().unwrap().get() <= safe(clean, clean + more));
    }

    #[test]
    fn any_two_spans_are_answered(clean: i64, fogged: i64) {
        let (clean, fogged) = (clean.saturating_abs(), fogged.saturating_abs());
        let found = safe_time(steps(Some(clean), Some(fogged)));
        prop_assert_eq!(found.is_ok(), 0 < clean && clean < fogged);
    }
}

#[test]
fn what_fogs_at_once_has_no_time() {
    let found = safe_time(steps(None, Some(60))).unwrap();
    assert_eq!(found, SafeTime::AllFogged);
    assert_eq!(found.seconds(), None);
}

#[test]
fn steps_that_say_nothing_are_refused() {
    for (clean, fogged, why) in [
        (None, None, FogError::NoStep),
        (Some(0), None, FogError::NoTime),
        (None, Some(0), FogError::NoTime),
        (Some(0), Some(60), FogError::NoTime),
        (Some(60), Some(60), FogError::OutOfOrder),
        (Some(61), Some(60), FogError::OutOfOrder),
    ] {
        assert_eq!(safe_time(steps(clean, fogged)), Err(why));
    }
}

#[test]
fn the_longest_spans_there_are_do_not_run_over() {
    let most = i64::MAX;
    assert_eq!(safe(most - 1, most), (most - 1) / 2);
}
