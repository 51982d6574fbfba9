//! The verdict's table, row by row.

use wetside::darkroom::age::Age;
use wetside::darkroom::quantities::{
    Microlitres, Moment, Nanolitres, Ppb, Seconds, TenthsCelsius, Thousandths,
};
use wetside::darkroom::state::{
    CheckKind, FailedCheck, MixState, Origin, PassedCheck, RatioReading, SilverReading,
    SilverWatch, TemperatureReading, TemperatureWatch, TrayState,
};
use wetside::darkroom::verdict::{Judgement, Measure, Reason, Verdict, judge};
use wetside::darkroom::wear::Charge;

const MINUTE: i64 = 60_000_000;
pub(super) const HOUR: i64 = 60 * MINUTE;

pub(super) fn at(minutes: i64) -> Moment {
    Moment::new(minutes * MINUTE)
}

/// A litre mixed at minute 0 with a tray life of 8 h, this many millilitres of it spent.
pub(super) fn litre(spent_ml: u32) -> MixState {
    MixState {
        charge: Some(Charge {
            charged: Microlitres::of(1_000_000),
            spent: Nanolitres::new(i64::from(spent_ml) * 1_000_000).unwrap(),
        }),
        age: Some(Age::fresh(at(0), Seconds::from_hours(8)).unwrap()),
        ..MixState::default()
    }
}

pub(super) fn judged(mix: &MixState, now: Moment) -> Judgement {
    judge(&TrayState::Mix(Box::new(mix.clone())), now).unwrap()
}

pub(super) fn verdict(mix: &MixState, now: Moment) -> Verdict {
    judged(mix, now).verdict
}

#[test]
fn an_empty_tray_and_an_unknown_liquid_have_their_own_words() {
    let empty = judge(&TrayState::Empty, at(0)).unwrap();
    assert_eq!(
        (empty.verdict, empty.changes_at),
        (Verdict::NothingRecorded, None)
    );
    let unknown = judge(&TrayState::UnknownLiquid, at(0)).unwrap();
    assert_eq!(unknown.verdict, Verdict::Unknown);
    let mix = MixState {
        origin: Origin::Unknown,
        contaminated: Some(at(0)),
        ..litre(0)
    };
    assert_eq!(
        verdict(&mix, at(1)),
        Verdict::Unknown,
        "not even to be poured away"
    );
}

#[test]
fn a_fresh_mix_is_ready_until_four_fifths_of_its_life() {
    let judgement = judged(&litre(100), at(60));
    assert_eq!(judgement.verdict, Verdict::Ready);
    let life = Reason::Used(Measure::Life, Ppb::of(125_000_000));
    let capacity = Reason::Used(Measure::Capacity, Ppb::of(100_000_000));
    assert_eq!(judgement.reasons, [life, capacity]);
    assert_eq!(judgement.changes_at, Some((at(384), Verdict::TestFirst)));
}

#[test]
fn from_four_fifths_it_is_tested_first_and_at_one_replaced() {
    assert_eq!(verdict(&litre(799), at(0)), Verdict::Ready);
    let judgement = judged(&litre(840), at(312));
    assert_eq!(judgement.verdict, Verdict::TestFirst);
    let capacity = Reason::Used(Measure::Capacity, Ppb::of(840_000_000));
    let life = Reason::Used(Measure::Life, Ppb::of(650_000_000));
    assert_eq!(
        judgement.reasons,
        [capacity, life],
        "84 % of capacity, 65 % of its life"
    );
    assert_eq!(
        judgement.changes_at.map(|(_, verdict)| verdict),
        Some(Verdict::Replace)
    );
    assert_eq!(verdict(&litre(1_000), at(0)), Verdict::Replace);
    assert_eq!(verdict(&litre(0), at(480)), Verdict::Replace);
    assert_eq!(verdict(&litre(0), at(479)), Verdict::TestFirst);
}

#[test]
fn a_limit_is_met_a_millionth_early() {
    let spent = |nanolitres: u32| MixState {
        charge: Some(Charge {
            charged: Microlitres::of(1_000_000),
            spent: Nanolitres::of(nanolitres),
        }),
        ..MixState::default()
    };
    assert_eq!(verdict(&spent(999_999_000), at(0)), Verdict::Replace);
    assert_eq!(verdict(&spent(999_998_999), at(0)), Verdict::TestFirst);
}

pub(super) fn passed(minute: i64, spent_ml: i64) -> Option<PassedCheck> {
    let spent = Nanolitres::new(spent_ml * 1_000_000).unwrap();
    Some(PassedCheck {
        kind: CheckKind::TestPrint,
        at: at(minute),
        spent,
    })
}

#[test]
fn a_passed_check_is_good_for_an_hour_or_a_tenth_of_capacity() {
    let tested = MixState {
        passed_check: passed(100, 840),
        ..litre(840)
    };
    let judgement = judged(&tested, at(110));
    assert_eq!(judgement.verdict, Verdict::Ready);
    assert_eq!(
        judgement.reasons[0],
        Reason::Tested(CheckKind::TestPrint, at(100), at(160))
    );
    assert_eq!(judgement.changes_at, Some((at(160), Verdict::TestFirst)));
    assert_eq!(verdict(&tested, at(160)), Verdict::TestFirst);
    let worn = |ml| MixState {
        passed_check: passed(100, 840),
        ..litre(ml)
    };
    assert_eq!(verdict(&worn(939), at(110)), Verdict::Ready);
    assert_eq!(verdict(&worn(940), at(110)), Verdict::TestFirst);
    let never_past_one = MixState {
        passed_check: passed(100, 960),
        ..litre(1_000)
    };
    assert_eq!(verdict(&never_past_one, at(110)), Verdict::Replace);
    let late_in_life = MixState {
        passed_check: passed(470, 0),
        ..litre(0)
    };
    let judgement = judged(&late_in_life, at(471));
    assert_eq!(judgement.verdict, Verdict::Ready);
    assert_eq!(
        judgement.changes_at.map(|(_, verdict)| verdict),
        Some(Verdict::Replace)
    );
}

fn slow(thousandths: u32) -> Option<RatioReading> {
    Some(RatioReading {
        ratio: Thousandths::of(thousandths),
        at: at(3),
    })
}

/// A first fixing bath: limit 2 g/l, estimated low, measured at minute 3.
fn silver_measured(milligrams_per_litre: u32) -> Option<SilverWatch> {
    let spent = Nanolitres::ZERO;
    Some(SilverWatch {
        limit_milligrams_per_litre: 2_000,
        estimated_milligrams_per_litre: 100,
        measured: Some(SilverReading {
            milligrams_per_litre,
            at: at(3),
            spent,
        }),
    })
}

#[test]
fn what_is_wrong_with_the_solution_is_replaced_at_once() {
    let failed = FailedCheck {
        kind: CheckKind::IndicatorColour,
        at: at(3),
    };
    let replaced = [
        MixState {
            contaminated: Some(at(3)),
            ..litre(0)
        },
        MixState {
            failed_check: Some(failed),
            ..litre(0)
        },
        MixState {
            clearing: slow(2_000),
            ..litre(0)
        },
        MixState {
            emergence: slow(1_500),
            ..litre(0)
        },
        MixState {
            silver: silver_measured(2_000),
            ..litre(0)
        },
        MixState {
            acid_used_ppb: Some(Ppb::ONE),
            ..litre(0)
        },
        MixState {
            bromide_used_ppb: Some(Ppb::ONE),
            ..litre(0)
        },
    ];
    for mix in replaced {
        assert_eq!(verdict(&mix, at(5)), Verdict::Replace, "{mix:?}");
        let tested = MixState {
            passed_check: passed(4, 0),
            ..mix
        };
        assert_eq!(
            verdict(&tested, at(5)),
            Verdict::Replace,
            "a passed check mends nothing"
        );
    }
}

#[test]
fn a_reading_just_below_its_limit_changes_nothing() {
    let kept = [
        MixState {
            clearing: slow(1_999),
            ..litre(0)
        },
        MixState {
            emergence: slow(1_499),
            ..litre(0)
        },
        MixState {
            silver: silver_measured(1_999),
            ..litre(0)
        },
    ];
    for mix in kept {
        assert_eq!(verdict(&mix, at(5)), Verdict::Ready, "{mix:?}");
    }
}

#[test]
fn estimated_silver_asks_to_be_measured() {
    let watch = |measured| SilverWatch {
        limit_milligrams_per_litre: 2_000,
        estimated_milligrams_per_litre: 2_000,
        measured,
    };
    let reading = SilverReading {
        milligrams_per_litre: 1_500,
        at: at(10),
        spent: Nanolitres::ZERO,
    };
    let estimated = MixState {
        silver: Some(watch(None)),
        ..litre(0)
    };
    let judgement = judged(&estimated, at(20));
    assert_eq!(judgement.reasons[0], Reason::SilverEstimated(2_000, 2_000));
    assert_eq!(judgement.verdict, Verdict::TestFirst);
    let tested = MixState {
        passed_check: passed(15, 0),
        ..estimated
    };
    assert_eq!(
        verdict(&tested, at(20)),
        Verdict::TestFirst,
        "no other check measures silver"
    );
    let measured = MixState {
        silver: Some(watch(Some(reading))),
        ..litre(0)
    };
    assert_eq!(verdict(&measured, at(20)), Verdict::Ready);
    assert_eq!(
        judged(&measured, at(20)).changes_at,
        Some((at(70), Verdict::TestFirst))
    );
}

#[test]
fn temperature_is_in_range_and_taken_in_an_unheated_room() {
    let watch = |last: Option<(u8, i64)>, unheated_since| {
        let last = last.map(|(degrees, minute)| TemperatureReading {
            temperature: TenthsCelsius::degrees(degrees),
            at: at(minute),
        });
        let (lowest, highest) = (TenthsCelsius::degrees(18), TenthsCelsius::degrees(22));
        MixState {
            temperature: Some(TemperatureWatch {
                lowest,
                highest,
                last,
                unheated_since,
            }),
            ..litre(0)
        }
    };
    assert_eq!(
        verdict(&watch(Some((17, 5)), None), at(10)),
        Verdict::TestFirst
    );
    assert_eq!(
        verdict(&watch(Some((23, 5)), None), at(10)),
        Verdict::TestFirst
    );
    assert_eq!(verdict(&watch(Some((18, 5)), None), at(10)), Verdict::Ready);
    assert_eq!(verdict(&watch(Some((22, 5)), None), at(10)), Verdict::Ready);
    let taken_elsewhere = watch(Some((20, 10)), Some(at(100)));
    let change = judged(&taken_elsewhere, at(240)).changes_at;
    assert_eq!(change, Some((at(340), Verdict::TestFirst)));
    assert_eq!(
        verdict(&watch(None, None), at(300)),
        Verdict::Ready,
        "a heated room"
    );
    assert_eq!(
        verdict(&watch(None, Some(at(0))), at(240)),
        Verdict::TestFirst
    );
    let taken = watch(Some((20, 60)), Some(at(0)));
    assert_eq!(
        judged(&taken, at(240)).changes_at,
        Some((at(300), Verdict::TestFirst))
    );
    let tested = MixState {
        passed_check: passed(9, 0),
        ..watch(Some((17, 5)), None)
    };
    assert_eq!(
        verdict(&tested, at(10)),
        Verdict::TestFirst,
        "a test print is no thermometer"
    );
}

#[test]
fn sheets_of_unknown_number_and_guessed_starts_are_tested_first() {
    let unknown = MixState {
        unknown_sheets: Some(at(50)),
        ..litre(0)
    };
    assert_eq!(verdict(&unknown, at(51)), Verdict::TestFirst);
    let before = MixState {
        passed_check: passed(49, 0),
        ..unknown.clone()
    };
    assert_eq!(
        verdict(&before, at(51)),
        Verdict::TestFirst,
        "tested before they went through"
    );
    let after = MixState {
        passed_check: passed(50, 0),
        ..unknown
    };
    assert_eq!(verdict(&after, at(51)), Verdict::Ready);
    let guessed = MixState {
        origin: Origin::Guessed,
        ..litre(0)
    };
    assert_eq!(verdict(&guessed, at(1)), Verdict::TestFirst);
}
