//! Silver, stop bath, film, times and finishing: conservation and order.

use proptest::prelude::*;
use wetside::darkroom::film::{Clearing, FilmError, clearing_ratio, wear_of_rolls};
use wetside::darkroom::finishing::{lacks, notes_in_doubt, wash_ends};
use wetside::darkroom::noting::{LATE, NoteRefused, may_note, silent_since};
use wetside::darkroom::quantities::{
    Area, Micrograms, Microlitres, Moment, Nanolitres, Ppb, Seconds, TenthsCelsius, TenthsMm,
    Thousandths,
};
use wetside::darkroom::replenishment::{replenishment, silver_developed};
use wetside::darkroom::silver::{
    CoatingRange, Shift, SilverBath, SilverError, SilverPair, pass_one_bath, pass_two_baths,
    sheets_until_silver, shift, silver_dissolved, silver_from_rolls, silver_range,
};
use wetside::darkroom::stop_bath::{StopAcid, StopBath, StopBathError, carried_over, level_after};
use wetside::darkroom::time_temperature::{
    Coefficient, EmergenceAdvice, TimeError, Timed, WorkingRange, emergence_advice,
    emergence_ratio, factor, factorial_time, time_at,
};
use wetside::darkroom::wear::SheetsPerLitre;

prop_compose! {
    fn bath()(volume in 500_000_i64..5_000_000, silver in 0_i64..20_000_000) -> SilverBath {
        SilverBath { volume: Microlitres::new(volume).unwrap(), silver: Micrograms::new(silver).unwrap() }
    }
}

fn ppb() -> impl Strategy<Value = Ppb> {
    (0_i64..=1_000_000_000).prop_map(|p| Ppb::new(p).unwrap())
}

fn timed(seconds: i64, tenths: i64) -> Timed {
    let temperature = TenthsCelsius::new(tenths).unwrap();
    Timed {
        time: Seconds::new(seconds).unwrap(),
        temperature,
    }
}

proptest! {
    #[test]
    fn silver_on_paper_is_in_the_image_or_dissolved(n in 1_u32..1_000, a in 10_000_i64..50_000_000, s in 0_u32..5_000, f in ppb()) {
        let area = Area::new(a).unwrap();
        let dissolved = silver_dissolved(n, area, s, f).unwrap();
        let kept = silver_developed(n, area, s, f).unwrap();
        let all = silver_developed(n, area, s, Ppb::ONE).unwrap();
        prop_assert!((dissolved.get() + kept.get() - all.get()).abs() <= 1);
    }

    #[test]
    fn no_silver_is_lost_in_one_bath(b in bath(), m in 0_u32..10_000_000, q in 0_u32..500_000) {
        let after = pass_one_bath(b, Micrograms::of(m), Microlitres::of(q)).unwrap();
        let brought = b.silver.plus(Micrograms::of(m)).unwrap();
        prop_assert_eq!(after.bath.silver.plus(after.carried_out).unwrap(), brought);
    }

    #[test]
    fn no_silver_is_lost_in_two_baths(first in bath(), second in bath(), m in 0_u32..10_000_000, beta in ppb(), q in 0_u32..500_000) {
        let pair = SilverPair { first, second };
        let after = pass_two_baths(pair, Micrograms::of(m), beta, Microlitres::of(q)).unwrap();
        let before = first.silver.get() + second.silver.get() + i64::from(m);
        let there = after.baths.first.silver.get() + after.baths.second.silver.get();
        prop_assert_eq!(there + after.carried_out.get(), before);
    }

    #[test]
    fn topping_up_dilutes_and_pouring_together_averages(a in bath(), b in bath(), v in 0_u32..5_000_000) {
        let topped = a.topped_up(Microlitres::of(v)).unwrap();
        prop_assert_eq!(topped.silver, a.silver);
        prop_assert!(topped.milligrams_per_litre().unwrap() <= a.milligrams_per_litre().unwrap());
        let both = a.poured_together(b).unwrap().milligrams_per_litre().unwrap();
        let (x, y) = (a.milligrams_per_litre().unwrap(), b.milligrams_per_litre().unwrap());
        prop_assert!(x.min(y) <= both && both <= x.max(y));
    }

    #[test]
    fn the_second_bath_stays_cleaner(passes in 1_usize..60, v in 500_000_u32..5_000_000, m in 1_000_u32..500_000, q in 0_u32..20_000) {
        let fresh = SilverBath { volume: Microlitres::of(v), silver: Micrograms::ZERO };
        let mut pair = SilverPair { first: fresh, second: fresh };
        for _ in 0..passes {
            pair = pass_two_baths(pair, Micrograms::of(m), Ppb::of(100_000_000), Microlitres::of(q)).unwrap().baths;
        }
        // A carry-over of a fifth of the bath in all cannot even the two out.
        if u64::from(q) * 60 < u64::from(v) / 5 {
            prop_assert!(pair.second.silver <= pair.first.silver);
        }
    }

    #[test]
    fn an_estimate_lies_in_its_range(n in 1_u32..500, low in 0_u32..2_000, more in 0_u32..2_000, f in 0_i64..500_000_000, g in 0_i64..500_000_000) {
        let (least_kept_ppb, most_kept_ppb) = (Ppb::new(f).unwrap(), Ppb::new(f + g).unwrap());
        let coating = CoatingRange { lowest_mg_per_m2: low, highest_mg_per_m2: low + more, least_kept_ppb, most_kept_ppb };
        let range = silver_range(n, Area::SHEET_8X10, coating).unwrap();
        let middle = silver_dissolved(n, Area::SHEET_8X10, low + more / 2, Ppb::new(f + g / 2).unwrap()).unwrap();
        prop_assert!(range.least <= middle && middle <= range.most);
    }

    #[test]
    fn sheets_until_silver_stay_below_it_and_one_more_does_not(b in bath(), limit in 100_u32..5_000, s in 300_u32..3_000) {
        let kept = Ppb::of(250_000_000);
        let left = sheets_until_silver(b, limit, Area::SHEET_8X10, s, kept).unwrap();
        let silver = |n: u32| if n == 0 { 0 } else { silver_dissolved(n, Area::SHEET_8X10, s, kept).unwrap().get() };
        let at = |n: u32| i128::from(b.silver.get() + silver(n)) * 1_000;
        let full = i128::from(limit) * i128::from(b.volume.get());
        prop_assert!(left == 0 || at(left) <= full + 500);
        prop_assert!(at(left + 1) >= full - 500);
    }

    #[test]
    fn alkali_only_ever_raises_the_ph(c in 0.01_f64..2.0, b in 0.0_f64..1.0, more in 0.001_f64..0.5, citric: bool) {
        let acid = if citric { StopAcid::Citric } else { StopAcid::Acetic };
        let bath = StopBath::new(acid, c).unwrap();
        prop_assert!(bath.ph_with(b + more).unwrap() > bath.ph_with(b).unwrap());
    }

    #[test]
    fn ph_and_alkali_are_each_others_answer(c in 0.01_f64..2.0, ph in 4.0_f64..9.0, citric: bool) {
        let acid = if citric { StopAcid::Citric } else { StopAcid::Acetic };
        let bath = StopBath::new(acid, c).unwrap();
        let alkali = bath.alkali_at_ph(ph).unwrap();
        prop_assume!((0.0..=10.0).contains(&alkali));
        prop_assert!((bath.ph_with(alkali).unwrap() - ph).abs() < 1e-6);
    }

    #[test]
    fn what_prints_carry_leaves_the_tray(v in 0_u32..5_000_000, n in 1_u32..500, q in 0_u32..400_000) {
        let carried = carried_over(n, Area::SHEET_8X10, Microlitres::of(q)).unwrap();
        let left = level_after(Microlitres::of(v), carried);
        prop_assert_eq!(left.get(), (i64::from(v) - carried.get()).max(0));
    }

    #[test]
    fn warmer_is_quicker(q in 1.1_f64..4.0, t in 30_i64..1_000, at in 180_i64..220, more in 0_i64..20) {
        #[expect(clippy::cast_possible_truncation, reason = "a made-up second point")]
        let warm = (1e6 / q.sqrt()) as i64;
        let coefficient = Coefficient::from_points(timed(1_000_000, 200), timed(warm, 250)).unwrap();
        prop_assert!((coefficient.get() - q).abs() < 1e-3);
        let range = WorkingRange { lowest: TenthsCelsius::degrees(18), highest: TenthsCelsius::degrees(25) };
        let at_temperature = |tenths| time_at(timed(t, 200), coefficient, TenthsCelsius::new(tenths).unwrap(), range).unwrap();
        prop_assert!(at_temperature(at + more) <= at_temperature(at));
        prop_assert_eq!(at_temperature(200), Seconds::new(t).unwrap());
    }

    #[test]
    fn a_factor_gives_its_time_back(t in 30_i64..1_000, e in 1_i64..60) {
        let (time, emergence) = (Seconds::new(t).unwrap(), Seconds::new(e).unwrap());
        let back = factorial_time(emergence, factor(time, emergence).unwrap()).unwrap();
        prop_assert!((back.get() - t).abs() <= 1);
    }

    #[test]
    fn a_tray_filled_by_what_it_lacks_lacks_nothing(v in 0_u32..3_000_000, tray in 1_000_000_u32..50_000_000, depth in 1_u32..300) {
        let (volume, tray, depth) = (Microlitres::of(v), Area::of(tray), TenthsMm::of(depth));
        if let Some(missing) = lacks(volume, tray, depth) {
            let needed = i128::from(tray.get()) * i128::from(depth.get());
            prop_assert!(i128::from(volume.get() + missing.get()) * 1_000 >= needed);
            prop_assert_eq!(lacks(volume.plus(missing).unwrap(), tray, depth), None);
        }
    }

    #[test]
    fn replenishing_at_full_use_is_one_sheets_wear(k in 1_000_i64..500_000) {
        let capacity = SheetsPerLitre::new(k).unwrap();
        let wear = wetside::darkroom::wear::wear_of(1, Area::SHEET_8X10, capacity).unwrap();
        prop_assert_eq!(replenishment(capacity, Ppb::ONE).unwrap(), wear);
    }
}

#[test]
fn shares_and_volumes_have_limits() {
    let bath = SilverBath {
        volume: Microlitres::of(1_000),
        silver: Micrograms::of(5),
    };
    let above = Ppb::of(1_000_000_001);
    assert_eq!(
        silver_dissolved(1, Area::SHEET_8X10, 1_000, above),
        Err(SilverError::Share)
    );
    assert_eq!(
        silver_from_rolls(1, Micrograms::of(9), above),
        Err(SilverError::Share)
    );
    let too_much = pass_one_bath(bath, Micrograms::ZERO, Microlitres::of(1_001));
    assert_eq!(too_much, Err(SilverError::CarriesTooMuch));
    let all = pass_one_bath(bath, Micrograms::ZERO, Microlitres::of(1_000)).unwrap();
    assert_eq!(
        (all.bath.silver, all.carried_out),
        (Micrograms::ZERO, Micrograms::of(5))
    );
    let none = SilverBath::default().milligrams_per_litre();
    assert_eq!(none, Err(SilverError::NoVolume));
}

#[test]
fn a_second_bath_moves_up_until_it_is_worn_or_has_done_so_often_enough() {
    assert_eq!(shift(0, 3, false), Shift::MoveUp);
    assert_eq!(shift(2, 3, false), Shift::MoveUp);
    assert_eq!(shift(3, 3, false), Shift::ReplaceBoth);
    assert_eq!(shift(0, 3, true), Shift::ReplaceBoth);
}

#[test]
fn film_goes_only_where_it_is_allowed() {
    let ten = Some(Thousandths::of(10_000));
    assert_eq!(wear_of_rolls(1, ten), Ok(Nanolitres::of(100_000_000)));
    assert_eq!(wear_of_rolls(1, None), Err(FilmError::PaperOnly));
    assert_eq!(
        wear_of_rolls(1, Some(Thousandths::ZERO)),
        Err(FilmError::PaperOnly)
    );
    assert_eq!(wear_of_rolls(0, ten), Err(FilmError::NoRolls));
}

#[test]
fn clearing_times_compare_within_two_degrees() {
    let clearing = |seconds, tenths| Clearing {
        time: Seconds::of(seconds),
        temperature: TenthsCelsius::new(tenths).unwrap(),
    };
    assert_eq!(
        clearing_ratio(clearing(40, 200), clearing(60, 220)),
        Ok(Thousandths::of(1_500))
    );
    let apart = clearing_ratio(clearing(40, 200), clearing(60, 221));
    assert_eq!(apart, Err(FilmError::OtherTemperature));
    assert_eq!(
        clearing_ratio(clearing(0, 200), clearing(60, 200)),
        Err(FilmError::NoTime)
    );
}

#[test]
fn times_are_given_only_where_the_sheet_supports_them() {
    let points = |a, b| Coefficient::from_points(a, b).map(|_| ());
    assert_eq!(
        points(timed(90, 200), timed(70, 219)),
        Err(TimeError::PointsTooClose)
    );
    assert_eq!(points(timed(90, 200), timed(70, 220)), Ok(()));
    assert_eq!(
        points(timed(90, 200), timed(90, 240)),
        Err(TimeError::NotQuicker)
    );
    assert_eq!(
        points(timed(0, 200), timed(90, 240)),
        Err(TimeError::NoTime)
    );
    let q = Coefficient::from_points(timed(90, 200), timed(60, 240)).unwrap();
    let range = WorkingRange {
        lowest: TenthsCelsius::degrees(18),
        highest: TenthsCelsius::degrees(22),
    };
    let outside = time_at(timed(90, 200), q, TenthsCelsius::degrees(23), range);
    assert_eq!(outside, Err(TimeError::OutsideRange));
    assert_eq!(
        time_at(timed(90, 200), q, TenthsCelsius::degrees(22), range)
            .unwrap()
            .get(),
        73
    );
}

#[test]
fn emergence_compares_at_one_temperature_or_through_the_coefficient() {
    let fresh = timed(10, 200);
    assert_eq!(
        emergence_ratio(fresh, timed(15, 200), None),
        Ok(Thousandths::of(1_500))
    );
    assert_eq!(
        emergence_ratio(fresh, timed(15, 180), None),
        Err(TimeError::NotComparable)
    );
    // Q = 2: at 10 °C a fresh bath takes 20 s, so 25 s are a quarter slower.
    let q = Coefficient::from_points(timed(200, 100), timed(100, 200)).unwrap();
    assert_eq!(
        emergence_ratio(fresh, timed(25, 100), Some(q)),
        Ok(Thousandths::of(1_250))
    );
    assert_eq!(
        emergence_advice(Thousandths::of(1_249)),
        EmergenceAdvice::AsUsual
    );
    assert_eq!(
        emergence_advice(Thousandths::of(1_250)),
        EmergenceAdvice::ByFactor
    );
    assert_eq!(
        emergence_advice(Thousandths::of(1_500)),
        EmergenceAdvice::Replace
    );
}

#[test]
fn a_stop_bath_is_used_from_its_fresh_ph_to_its_limit() {
    let bath = StopBath::new(StopAcid::Acetic, 0.25).unwrap();
    let litre = Microlitres::of(1_000_000);
    assert_eq!(bath.used(litre, 0, 5.2), Ok(Ppb::ZERO));
    assert_eq!(
        bath.used(Microlitres::ZERO, 0, 5.2),
        Err(StopBathError::NoVolume)
    );
    assert_eq!(bath.used(litre, 0, 2.0), Err(StopBathError::FreshPastLimit));
    assert_eq!(bath.used(litre, 0, 15.0), Err(StopBathError::Ph));
    let full = bath.alkali_at_ph(5.2).unwrap();
    #[expect(clippy::cast_possible_truncation, reason = "well within 64 bits")]
    let nanoequivalents = (full * 1e9).round() as i64;
    let used = bath.used(litre, nanoequivalents, 5.2).unwrap();
    assert!((used.get() - 1_000_000_000).abs() <= 10, "{used:?}");
}

#[test]
fn a_joining_print_restarts_the_wash_for_all() {
    let minute = |m: i64| Moment::new(m * 60_000_000);
    let wash = Seconds::from_minutes(5);
    assert_eq!(wash_ends(&[], wash), None);
    assert_eq!(
        wash_ends(&[minute(0), minute(4), minute(2)], wash),
        Some(minute(9))
    );
}

#[test]
fn a_failed_residual_test_doubts_the_notes_since_the_last_passed_one() {
    let notes = [1, 2, 3, 4, 5].map(Moment::new);
    let since = notes_in_doubt(&notes, Some(Moment::new(2)), Moment::new(4));
    assert_eq!(since, [3, 4].map(Moment::new));
    assert_eq!(notes_in_doubt(&notes, None, Moment::new(4)).len(), 4);
}

#[test]
fn a_note_is_taken_up_to_its_window_and_two_minutes_ahead() {
    let minute = |m: i64| Moment::new(m * 60_000_000);
    let week = 7 * 24 * 60;
    assert_eq!(may_note(minute(2), minute(0), LATE), Ok(()));
    let ahead = Moment::new(minute(2).get() + 1);
    assert_eq!(may_note(ahead, minute(0), LATE), Err(NoteRefused::Future));
    assert_eq!(may_note(minute(0), minute(week), LATE), Ok(()));
    assert_eq!(
        may_note(minute(0), minute(week + 1), LATE),
        Err(NoteRefused::TooLate)
    );
}

#[test]
fn a_busy_room_that_notes_nothing_is_told_so() {
    let minute = |m: i64| Moment::new(m * 60_000_000);
    assert_eq!(
        silent_since(None, Some(minute(0)), minute(500)),
        None,
        "nobody is there"
    );
    assert_eq!(silent_since(Some(minute(30)), None, minute(89)), None);
    assert_eq!(
        silent_since(Some(minute(30)), None, minute(90)),
        Some(minute(30))
    );
    assert_eq!(
        silent_since(Some(minute(30)), Some(minute(0)), minute(90)),
        Some(minute(30))
    );
    assert_eq!(
        silent_since(Some(minute(30)), Some(minute(80)), minute(100)),
        None
    );
}
