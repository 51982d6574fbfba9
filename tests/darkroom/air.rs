//! Room air: laws that hold for every floor, flow and mixing factor.

use proptest::prelude::*;
use wetside::darkroom::air::{
    AirError, Cleared, Exhaust, MixingFactor, NeedsExhaust, air_changes, average_air_changes,
    clearing_time, exhaust_wanted, judge_exhaust, needs_exhaust, space_volume,
};
use wetside::darkroom::incompatibility::{Group, Groups};
use wetside::darkroom::quantities::{Area, Flow, Microlitres, Seconds, TenthsMm, Thousandths};
use wetside::darkroom::units::{
    AreaUnit, FlowUnit, area_in_unit_thousandths, area_of_unit, flow_in_unit_thousandths,
    flow_of_unit,
};

fn flow(ul_per_s: i64) -> Flow {
    Flow::new(ul_per_s).unwrap()
}

fn volume(ul: i64) -> Microlitres {
    Microlitres::new(ul).unwrap()
}

fn mixing(tenths: i64) -> MixingFactor {
    MixingFactor::new(tenths).unwrap()
}

fn clears(q: i64, v: i64, cleared: Cleared, tenths: i64) -> i64 {
    let time = clearing_time(flow(q), volume(v), cleared, mixing(tenths));
    time.unwrap().get()
}

/// A fan of 1 to 1,000 L/s.
fn flows() -> impl Strategy<Value = i64> {
    1_000_000_i64..1_000_000_000
}

/// A space of 1 to 1,000 m³.
fn volumes() -> impl Strategy<Value = i64> {
    1_000_000_000_i64..1_000_000_000_000
}

proptest! {
    #[test]
    fn each_tenth_takes_as_long_as_the_first(q in flows(), v in volumes(), tenths in 10_i64..=100) {
        let [one, two, three] = Cleared::ALL.map(|cleared| clears(q, v, cleared, tenths));
        // Each is rounded up to a second.
        prop_assert!((2 * one - two).abs() <= 2 && (3 * one - three).abs() <= 3);
        prop_assert!(one <= two && two <= three);
    }

    #[test]
    fn more_air_never_takes_longer_and_more_room_never_less(
        q in flows(), more in 0_i64..100_000_000, v in volumes(), larger in 0_i64..100_000_000,
    ) {
        let now = clears(q, v, Cleared::NinetyNine, 30);
        prop_assert!(clears(q + more, v, Cleared::NinetyNine, 30) <= now);
        prop_assert!(clears(q, v + larger, Cleared::NinetyNine, 30) >= now);
        prop_assert!(clears(q, v, Cleared::NinetyNine, 31) >= now);
    }

    #[test]
    fn it_is_never_told_shorter_than_it_is(q in flows(), v in volumes()) {
        let told = clears(q, v, Cleared::Ninety, 10);
        #[expect(clippy::cast_precision_loss, reason = "within a second is enough")]
        let exact = std::f64::consts::LN_10 * v as f64 / q as f64;
        #[expect(clippy::cast_precision_loss, reason = "far below 2^53")]
        let told = told as f64;
        prop_assert!(told >= exact - 0.001 && told < exact + 1.001, "{told} {exact}");
    }

    #[test]
    fn what_is_missing_and_what_is_there_are_what_is_wanted(measured in 0_i64..1_000_000_000, wanted in 1_i64..1_000_000_000) {
        let judged = judge_exhaust(Some(flow(measured)), Some(flow(wanted)));
        match judged {
            Exhaust::Unmeasured => prop_assert_eq!(measured, 0),
            Exhaust::Short(missing) => prop_assert_eq!(missing.get() + measured, wanted),
            Exhaust::AsWanted => prop_assert!(measured >= wanted),
            Exhaust::Measured => prop_assert!(false, "what is wanted was known"),
        }
    }

    #[test]
    fn twice_the_floor_wants_twice_as_much(floor in 1_i64..1_000_000_000, per in 1_u32..10_000_000) {
        let wanted = |floor: i64| exhaust_wanted(Area::new(floor).unwrap(), Flow::of(per)).unwrap().get();
        prop_assert!((wanted(2 * floor) - 2 * wanted(floor)).abs() <= 1);
    }

    #[test]
    fn airing_for_a_part_of_the_time_is_no_more_than_for_all_of_it(
        changes in 0_u32..1_000_000, aired in 0_i64..100_000, over in 1_i64..100_000,
    ) {
        let seconds = |count| Seconds::new(count).unwrap();
        let average = average_air_changes(Thousandths::of(changes), seconds(aired), seconds(over));
        let average = average.unwrap().get();
        prop_assert!(average <= i64::from(changes));
        prop_assert_eq!(average == i64::from(changes), aired >= over || changes == 0);
    }

    #[test]
    fn units_are_read_back(thousandths in 0_i64..1_000_000_000) {
        for unit in [FlowUnit::LitrePerSecond, FlowUnit::CubicMetrePerHour, FlowUnit::CubicFootPerMinute] {
            let flow = flow_of_unit(thousandths, unit).unwrap();
            prop_assert_eq!(flow_in_unit_thousandths(flow, unit).unwrap(), thousandths);
        }
        for unit in [AreaUnit::SquareMetre, AreaUnit::SquareFoot] {
            let area = area_of_unit(thousandths, unit).unwrap();
            prop_assert_eq!(area_in_unit_thousandths(area, unit).unwrap(), thousandths);
        }
    }

    #[test]
    fn any_flow_and_volume_are_answered(q: i64, v: i64) {
        let (q, v) = (flow(q.saturating_abs()), volume(v.saturating_abs()));
        let time = clearing_time(q, v, Cleared::NinetyNinePointNine, MixingFactor::USUAL);
        match time {
            Ok(_) => prop_assert!(q > Flow::ZERO && v > Microlitres::ZERO),
            Err(AirError::NoFlow) => prop_assert_eq!(q, Flow::ZERO),
            Err(AirError::NoVolume) => prop_assert_eq!(v, Microlitres::ZERO),
            // Longer than the ages: what is left is beyond 64 bits.
            Err(why) => prop_assert!(matches!(why, AirError::Quantity(_)) && q.get() < 100),
        }
    }
}

#[test]
fn nothing_clears_where_nothing_moves() {
    let some = volume(1_000_000);
    let still = clearing_time(Flow::ZERO, some, Cleared::Ninety, MixingFactor::USUAL);
    assert_eq!(still, Err(AirError::NoFlow));
    let nowhere = clearing_time(
        flow(1),
        Microlitres::ZERO,
        Cleared::Ninety,
        MixingFactor::USUAL,
    );
    assert_eq!(nowhere, Err(AirError::NoVolume));
    assert_eq!(
        air_changes(flow(1), Microlitres::ZERO),
        Err(AirError::NoVolume)
    );
    assert_eq!(air_changes(Flow::ZERO, some), Ok(Thousandths::ZERO));
    let over_nothing = average_air_changes(Thousandths::of(1), Seconds::ZERO, Seconds::ZERO);
    assert_eq!(over_nothing, Err(AirError::NoTime));
}

#[test]
fn a_mixing_factor_lies_between_one_and_ten() {
    for tenths in [i64::MIN, 0, 9, 101, 300, i64::MAX] {
        assert_eq!(MixingFactor::new(tenths), Err(AirError::Mixing), "{tenths}");
    }
    assert_eq!(mixing(10).tenths(), 10);
    assert_eq!(mixing(100).tenths(), 100);
}

#[test]
fn what_is_nothing_or_unknown_is_never_fine() {
    let some = Some(flow(100));
    assert_eq!(judge_exhaust(None, some), Exhaust::Unmeasured);
    assert_eq!(judge_exhaust(None, None), Exhaust::Unmeasured);
    assert_eq!(judge_exhaust(Some(Flow::ZERO), some), Exhaust::Unmeasured);
    assert_eq!(judge_exhaust(Some(Flow::ZERO), None), Exhaust::Unmeasured);
    assert_eq!(judge_exhaust(some, None), Exhaust::Measured);
    assert_eq!(judge_exhaust(some, some), Exhaust::AsWanted);
}

#[test]
fn the_largest_space_there_is_does_not_run_over() {
    let huge = space_volume(
        Area::new(i64::MAX).unwrap(),
        TenthsMm::new(i64::MAX).unwrap(),
    );
    assert!(huge.is_err());
    let most = i64::MAX;
    assert_eq!(clears(most, most, Cleared::NinetyNinePointNine, 100), 70);
    let slow = clearing_time(flow(1), volume(most), Cleared::Ninety, MixingFactor::USUAL);
    assert!(matches!(slow, Err(AirError::Quantity(_))));
}

fn groups(all: &[Group]) -> Groups {
    Groups::from(all.to_vec())
}

fn codes(all: &str) -> Vec<String> {
    all.split_whitespace().map(str::to_owned).collect()
}

#[test]
fn toner_glacial_acid_and_ammonia_are_known_by_kind_groups_and_codes() {
    let fixer = &[Group::Fixer, Group::Thiosulfate, Group::Ammonium];
    for (is_toner, of, says, needs) in [
        (true, &[][..], "", Some(NeedsExhaust::Toner)),
        (
            false,
            &[Group::Acid, Group::Organic],
            "H226 H314",
            Some(NeedsExhaust::GlacialAcid),
        ),
        // Weaker acid is corrosive and does not burn.
        (false, &[Group::Acid, Group::StopBath], "H314", None),
        (false, &[Group::Acid, Group::StopBath], "", None),
        (false, &[Group::Organic], "H226 H314", None),
        (
            false,
            &[Group::Ammonium],
            "H314 H335 H400",
            Some(NeedsExhaust::Ammonia),
        ),
        (
            false,
            &[Group::Ammonium, Group::Alkali],
            "",
            Some(NeedsExhaust::Ammonia),
        ),
        // A rapid fixer holds an ammonium salt, and its acid keeps the ammonia in.
        (false, fixer, "H319", None),
        (
            false,
            &[Group::Ammonium, Group::Acid, Group::Fixer],
            "H314",
            None,
        ),
        (false, &[Group::StrongAlkali], "H314 H335", None),
    ] {
        let found = needs_exhaust(is_toner, groups(of), &codes(says));
        assert_eq!(found, needs, "{of:?} {says}");
    }
}
