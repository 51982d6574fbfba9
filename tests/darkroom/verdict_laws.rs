//! Extensions, what may join a mix, and what holds for every tray.

use super::verdict::{HOUR, at, judged, litre, passed, verdict};
use proptest::prelude::*;
use wetside::darkroom::age::Age;
use wetside::darkroom::joining::{JoinRefused, Side, may_pour_together, may_top_up};
use wetside::darkroom::quantities::{
    Microlitres, Moment, Nanolitres, Seconds, TenthsCelsius, Thousandths,
};
use wetside::darkroom::state::{
    CheckKind, Extension, FailedCheck, MixState, Origin, RatioReading, TemperatureReading,
    TemperatureWatch,
};
use wetside::darkroom::verdict::{ExtensionRefused, Measure, Reason, Verdict, extend};
use wetside::darkroom::wear::Charge;

#[test]
fn an_extension_shows_as_test_first_and_ends_with_a_worse_reading() {
    let spent = litre(1_050);
    let extension = extend(&spent, at(10), at(100)).unwrap();
    let extended = MixState {
        extension: Some(extension),
        ..spent
    };
    let judgement = judged(&extended, at(20));
    assert_eq!(judgement.verdict, Verdict::TestFirst);
    assert_eq!(judgement.reasons[0], Reason::ExtendedUntil(at(100)));
    assert_eq!(judgement.changes_at, Some((at(100), Verdict::Replace)));
    let tested = MixState {
        passed_check: passed(19, 1_050),
        ..extended.clone()
    };
    assert_eq!(verdict(&tested, at(20)), Verdict::TestFirst, "never past 1");
    let reading = |at| {
        Some(RatioReading {
            ratio: Thousandths::of(2_100),
            at,
        })
    };
    let worse = MixState {
        clearing: reading(at(15)),
        ..extended.clone()
    };
    assert_eq!(verdict(&worse, at(20)), Verdict::Replace);
    let flagged = MixState {
        contaminated: Some(at(15)),
        ..extended
    };
    assert_eq!(verdict(&flagged, at(20)), Verdict::Replace);
}

#[test]
fn an_extension_holds_while_readings_are_no_worse_than_when_it_was_given() {
    let slow = |thousandths, minute| {
        Some(RatioReading {
            ratio: Thousandths::of(thousandths),
            at: at(minute),
        })
    };
    let spent = MixState {
        clearing: slow(2_100, 5),
        ..litre(0)
    };
    let extension = Some(extend(&spent, at(10), at(100)).unwrap());
    let extended = |clearing, emergence| {
        let mix = MixState {
            clearing,
            emergence,
            extension,
            ..spent.clone()
        };
        verdict(&mix, at(20))
    };
    assert_eq!(extended(slow(2_100, 5), None), Verdict::TestFirst);
    assert_eq!(
        extended(slow(2_100, 15), None),
        Verdict::TestFirst,
        "no worse"
    );
    assert_eq!(extended(slow(2_101, 15), None), Verdict::Replace);
    assert_eq!(
        extended(slow(2_101, 8), None),
        Verdict::Replace,
        "told late"
    );
    assert_eq!(
        extended(slow(2_100, 5), slow(1_500, 15)),
        Verdict::Replace,
        "another reading"
    );
    assert_eq!(
        extended(slow(2_100, 5), slow(1_499, 15)),
        Verdict::TestFirst
    );
    let mix = MixState { extension, ..spent };
    assert_eq!(
        verdict(&mix, at(9)),
        Verdict::Replace,
        "before it was given"
    );
}

#[test]
fn an_extension_is_short_needed_and_safe() {
    let spent = litre(1_050);
    assert_eq!(
        extend(&spent, at(10), at(10)),
        Err(ExtensionRefused::Length)
    );
    assert_eq!(
        extend(&spent, at(10), at(10 + 24 * 60 + 1)),
        Err(ExtensionRefused::Length)
    );
    assert!(extend(&spent, at(10), at(10 + 24 * 60)).is_ok());
    assert_eq!(
        extend(&litre(0), at(10), at(20)),
        Err(ExtensionRefused::NotNeeded)
    );
    let unknown = MixState {
        origin: Origin::Unknown,
        ..spent.clone()
    };
    assert_eq!(
        extend(&unknown, at(10), at(20)),
        Err(ExtensionRefused::Unsafe)
    );
    let flagged = MixState {
        contaminated: Some(at(1)),
        ..spent.clone()
    };
    assert_eq!(
        extend(&flagged, at(10), at(20)),
        Err(ExtensionRefused::Unsafe)
    );
    let year = Extension {
        given: at(0),
        until: at(525_600),
        clearing: None,
        emergence: None,
    };
    let stale = MixState {
        extension: Some(year),
        age: None,
        ..spent
    };
    assert_eq!(verdict(&stale, at(24 * 60 - 1)), Verdict::TestFirst);
    assert_eq!(
        verdict(&stale, at(24 * 60)),
        Verdict::Replace,
        "24 h at most, whatever is stored"
    );
}

#[test]
fn dead_solution_is_never_laundered() {
    let good = litre(300);
    assert_eq!(may_top_up(&good, true, true, at(1)), Ok(()));
    assert_eq!(
        may_top_up(&good, false, true, at(1)),
        Err(JoinRefused::OtherProduct)
    );
    assert_eq!(
        may_top_up(&good, true, false, at(1)),
        Err(JoinRefused::OtherDilution)
    );
    let dead = litre(1_000);
    let used_up = |side| Err(JoinRefused::UsedUp(side, Measure::Capacity));
    assert_eq!(
        may_top_up(&dead, true, true, at(1)),
        used_up(Side::Receiving)
    );
    assert_eq!(
        may_pour_together(&good, &dead, true, true, at(1)),
        used_up(Side::Poured)
    );
    let old = Err(JoinRefused::UsedUp(Side::Receiving, Measure::Life));
    assert_eq!(may_top_up(&good, true, true, at(480)), old);
    let flagged = MixState {
        contaminated: Some(at(0)),
        ..litre(0)
    };
    let contaminated = Err(JoinRefused::Contaminated(Side::Poured));
    assert_eq!(
        may_pour_together(&good, &flagged, true, true, at(1)),
        contaminated
    );
    let unknown = MixState {
        origin: Origin::Unknown,
        ..litre(0)
    };
    let refused = Err(JoinRefused::UnknownStart(Side::Poured));
    assert_eq!(
        may_pour_together(&good, &unknown, true, true, at(1)),
        refused
    );
}

#[test]
fn what_failed_a_check_or_a_reading_is_not_topped_up() {
    let failed = FailedCheck {
        kind: CheckKind::Silver,
        at: at(0),
    };
    let failed = MixState {
        failed_check: Some(failed),
        ..litre(0)
    };
    let refused = Err(JoinRefused::CheckFailed(Side::Receiving));
    assert_eq!(may_top_up(&failed, true, true, at(1)), refused);
    let clearing = Some(RatioReading {
        ratio: Thousandths::of(2_000),
        at: at(0),
    });
    let slow = MixState {
        clearing,
        ..litre(0)
    };
    assert_eq!(
        may_top_up(&slow, true, true, at(1)),
        Err(JoinRefused::ReadingOver(Side::Receiving))
    );
}

prop_compose! {
    fn any_mix()(
        spent in 0_i64..1_300_000_000, life in 1_i64..100_000, guessed: bool,
        checked in prop::option::of((0_i64..600, 0_i64..1_000)),
        unknown in prop::option::of(0_i64..600),
        extended in prop::option::of((0_i64..600, 1_i64..2_000)),
        cold in prop::option::of((150_u8..250, 0_i64..600)),
    ) -> MixState {
        let charged = Microlitres::of(1_000_000);
        MixState {
            charge: Some(Charge { charged, spent: Nanolitres::new(spent).unwrap() }),
            age: Some(Age::fresh(at(0), Seconds::new(life).unwrap()).unwrap()),
            origin: if guessed { Origin::Guessed } else { Origin::Mixed },
            passed_check: checked.and_then(|(minute, ml)| passed(minute, ml)),
            unknown_sheets: unknown.map(at),
            extension: extended.map(|(given, span)| Extension {
                given: at(given), until: at(given + span), clearing: None, emergence: None,
            }),
            temperature: cold.map(|(tenths, minute)| TemperatureWatch {
                lowest: TenthsCelsius::degrees(18), highest: TenthsCelsius::degrees(22),
                last: Some(TemperatureReading {
                    temperature: TenthsCelsius::new(i64::from(tenths)).unwrap(), at: at(minute),
                }),
                unheated_since: Some(at(0)),
            }),
            ..MixState::default()
        }
    }
}

proptest! {
    #[test]
    fn the_verdict_changes_exactly_when_it_says(mix in any_mix(), minute in 0_i64..700, share in 0.0_f64..1.0) {
        let now = at(minute);
        let judgement = judged(&mix, now);
        let horizon = now.get() + 48 * HOUR;
        let until = judgement.changes_at.map_or(horizon, |(moment, _)| moment.get());
        #[expect(clippy::cast_possible_truncation, clippy::cast_precision_loss, reason = "a random instant between")]
        let between = now.get() + ((until - 1 - now.get()) as f64 * share) as i64;
        // A check or an extension of a later time is not part of what is known now.
        let known = mix.passed_check.is_none_or(|check| check.at <= now)
            && mix.extension.is_none_or(|extension| extension.given <= now);
        if known {
            prop_assert_eq!(verdict(&mix, Moment::new(between)), judgement.verdict);
            prop_assert_eq!(verdict(&mix, Moment::new(until - 1)), judgement.verdict);
        }
        if let Some((moment, then)) = judgement.changes_at {
            prop_assert!(moment > now && then != judgement.verdict);
            prop_assert_eq!(verdict(&mix, moment), then);
        }
    }

    #[test]
    fn more_wear_never_improves_the_verdict(mix in any_mix(), minute in 0_i64..700, more in 0_i64..500_000_000) {
        let charge = mix.charge.unwrap().worn_by(Nanolitres::new(more).unwrap()).unwrap();
        let worn = MixState { charge: Some(charge), ..mix.clone() };
        prop_assert!(verdict(&worn, at(minute)) >= verdict(&mix, at(minute)));
    }

    #[test]
    fn every_verdict_has_reasons_and_none_twice(mix in any_mix(), minute in 0_i64..700) {
        let reasons = judged(&mix, at(minute)).reasons;
        prop_assert!(!reasons.is_empty());
        for (index, reason) in reasons.iter().enumerate() {
            prop_assert!(!reasons[..index].contains(reason), "{reason:?} twice");
        }
    }
}
