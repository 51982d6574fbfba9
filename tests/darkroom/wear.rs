//! Conservation and order in wear and age.

use proptest::prelude::*;
use wetside::darkroom::age::{Age, AgeError, depth, oxidising_life};
use wetside::darkroom::quantities::{
    Area, Microlitres, Moment, Nanolitres, Ppb, QuantityError, Seconds, TenthsCelsius, TenthsMm,
};
use wetside::darkroom::sheet::{SheetError, SheetSize};
use wetside::darkroom::wear::{
    Charge, SheetsPerLitre, WearError, second_bath_wear, share_leaving, sheets_left, used_fraction,
    wear_of,
};

prop_compose! {
    fn charge()(v in 1_i64..100_000_000, w in 0_i64..200_000_000_000) -> Charge {
        Charge { charged: Microlitres::new(v).unwrap(), spent: Nanolitres::new(w).unwrap() }
    }
}

fn area() -> impl Strategy<Value = Area> {
    (10_000_i64..50_000_000).prop_map(|a| Area::new(a).unwrap())
}

fn capacity() -> impl Strategy<Value = SheetsPerLitre> {
    (1_000_i64..500_000).prop_map(|k| SheetsPerLitre::new(k).unwrap())
}

fn age() -> impl Strategy<Value = Age> {
    (
        0_i64..2_000_000_000,
        -1_000_000_000_000_i64..2_000_000_000_000_000,
        1_i64..100_000_000,
    )
        .prop_map(|(used, at, life)| {
            Age::new(
                Ppb::new(used).unwrap(),
                Moment::new(at),
                Seconds::new(life).unwrap(),
            )
            .unwrap()
        })
}

proptest! {
    #[test]
    fn wear_is_rounded_to_the_nearest_nanolitre(n in 1_u32..10_000, a in area(), k in capacity()) {
        let wear = i128::from(wear_of(n, a, k).unwrap().get());
        let denominator = i128::from(k.get()) * i128::from(Area::SHEET_8X10.get());
        let off = wear * denominator - i128::from(n) * i128::from(a.get()) * 1_000_000_000_000;
        prop_assert!(2 * off.abs() <= denominator);
    }

    #[test]
    fn more_sheets_wear_more(n in 1_u32..10_000, a in area(), k in capacity()) {
        prop_assert!(wear_of(n + 1, a, k).unwrap() >= wear_of(n, a, k).unwrap());
    }

    #[test]
    fn three_and_three_wear_as_six_to_the_nanolitre_of_rounding(n in 1_u32..1_000, a in area(), k in capacity()) {
        let twice = 2 * wear_of(n, a, k).unwrap().get();
        let together = wear_of(2 * n, a, k).unwrap().get();
        prop_assert!((twice - together).abs() <= 1);
    }

    #[test]
    fn a_reversal_undoes_a_pass_exactly(c in charge(), w in 0_i64..1_000_000_000_000) {
        let wear = Nanolitres::new(w).unwrap();
        prop_assert_eq!(c.worn_by(wear).unwrap().reversed(wear).unwrap(), c);
    }

    #[test]
    fn passes_count_in_any_order(c in charge(), mut wears in prop::collection::vec(0_i64..1_000_000_000, 0..8)) {
        let fold = |wears: &[i64]| wears.iter().fold(c, |c, w| c.worn_by(Nanolitres::new(*w).unwrap()).unwrap());
        let there = fold(&wears);
        wears.reverse();
        prop_assert_eq!(there, fold(&wears));
    }

    #[test]
    fn topping_up_keeps_what_is_spent_and_never_raises_the_fraction(c in charge(), v in 0_i64..100_000_000) {
        let topped = c.topped_up(Microlitres::new(v).unwrap()).unwrap();
        prop_assert_eq!(topped.spent, c.spent);
        prop_assert_eq!(topped.charged.get(), c.charged.get() + v);
        prop_assert!(topped.used().unwrap() <= c.used().unwrap());
    }

    #[test]
    fn pouring_together_adds_both_and_lies_between(a in charge(), b in charge()) {
        let both = a.poured_together(b).unwrap();
        prop_assert_eq!(both, b.poured_together(a).unwrap());
        prop_assert_eq!(both.charged.get(), a.charged.get() + b.charged.get());
        prop_assert_eq!(both.spent.get(), a.spent.get() + b.spent.get());
        let (low, high) = (a.used().unwrap().min(b.used().unwrap()), a.used().unwrap().max(b.used().unwrap()));
        prop_assert!(low <= both.used().unwrap() && both.used().unwrap().get() <= high.get() + 1);
    }

    #[test]
    fn what_leaves_and_what_stays_are_what_was_there(c in charge(), share in 0.0_f64..=1.0) {
        #[expect(clippy::cast_possible_truncation, clippy::cast_precision_loss, reason = "a random share of it")]
        let leaving = ((c.charged.get() as f64 * share) as i64).min(c.charged.get());
        let (gone, stays) = c.poured_off(Microlitres::new(leaving).unwrap()).unwrap();
        prop_assert_eq!(gone.poured_together(stays).unwrap(), c);
        // Half a nanolitre of rounding is all the fraction may move by.
        if stays.charged.get() > 0 {
            let moved = i128::from(stays.spent.get()) * i128::from(c.charged.get())
                - i128::from(c.spent.get()) * i128::from(stays.charged.get());
            prop_assert!(2 * moved.abs() <= i128::from(c.charged.get()));
        }
    }

    #[test]
    fn the_sheets_left_still_fit_and_one_more_does_not(v in 100_000_i64..10_000_000, share in 0_i64..1_000, a in area(), k in capacity()) {
        let charge = Charge { charged: Microlitres::new(v).unwrap(), spent: Nanolitres::new(v * share).unwrap() };
        let left = sheets_left(charge, a, k).unwrap();
        let full = |n: u32| i128::from(n) * i128::from(a.get()) * 1_000_000_000_000
            > i128::from(v * 1_000 - charge.spent.get()) * i128::from(k.get()) * i128::from(Area::SHEET_8X10.get());
        prop_assert!(!full(left));
        prop_assert!(full(left + 1));
    }

    #[test]
    fn what_is_dissolved_leaves_with_its_volume(amount in 0_i64..1_000_000_000, v in 1_i64..10_000_000, share in 0_i64..=1_000) {
        let volume = Microlitres::new(v).unwrap();
        let part = Microlitres::new(v * share / 1_000).unwrap();
        let gone = share_leaving(amount, volume, part).unwrap();
        let rest = share_leaving(amount, volume, volume.minus(part).unwrap()).unwrap();
        prop_assert!((gone + rest - amount).abs() <= 1);
        prop_assert_eq!(share_leaving(amount, volume, volume).unwrap(), amount);
    }

    #[test]
    fn a_pass_counts_in_the_second_bath_by_its_share(w in 0_i64..1_000_000_000, a in 0_i64..=1_000_000_000) {
        let wear = Nanolitres::new(w).unwrap();
        let second = second_bath_wear(wear, Ppb::new(a).unwrap()).unwrap();
        prop_assert!(second <= wear);
        prop_assert_eq!(second_bath_wear(wear, Ppb::ONE).unwrap(), wear);
        prop_assert!((i128::from(second.get()) * 1_000_000_000 - i128::from(w) * i128::from(a)).abs() <= 500_000_000);
    }

    #[test]
    fn age_never_falls_while_time_passes(a in age(), d in 0_i64..10_000_000_000, e in 0_i64..10_000_000_000) {
        let early = Moment::new(a.at().get() + d);
        let late = Moment::new(early.get() + e);
        prop_assert!(a.used_at(early).unwrap() <= a.used_at(late).unwrap());
    }

    #[test]
    fn a_fraction_is_reached_at_that_microsecond_and_not_before(a in age(), f in 0_i64..1_500_000_000) {
        let fraction = Ppb::new(f).unwrap();
        let when = a.reaches(fraction).unwrap();
        prop_assert!(a.used_at(when).unwrap() >= fraction);
        if when > a.at() {
            prop_assert!(a.used_at(Moment::new(when.get() - 1)).unwrap() < fraction);
        }
    }

    #[test]
    fn moving_it_keeps_its_age(a in age(), d in -1_000_000_i64..10_000_000_000, life in 1_i64..100_000_000) {
        let now = Moment::new(a.at().get() + d);
        let moved = a.stored(now, Seconds::new(life).unwrap()).unwrap();
        prop_assert_eq!(moved.used_at(now).unwrap(), a.used_at(now).unwrap());
        prop_assert!(moved.at() >= a.at());
    }

    #[test]
    fn fresh_solution_makes_it_younger_in_proportion(a in age(), v in 1_i64..10_000_000, f in 0_i64..10_000_000) {
        let topped = a.topped_up(a.at(), Microlitres::new(v).unwrap(), Microlitres::new(f).unwrap()).unwrap();
        let off = i128::from(topped.used().get()) * i128::from(v + f) - i128::from(a.used().get()) * i128::from(v);
        prop_assert!(2 * off.abs() <= i128::from(v + f));
    }

    #[test]
    fn two_ages_average_between_them(a in age(), b in age(), v in 1_i64..10_000_000, w in 1_i64..10_000_000) {
        let now = a.at().max(b.at());
        let (x, y) = (a.used_at(now).unwrap(), b.used_at(now).unwrap());
        let joined = a.poured_together(now, Microlitres::new(v).unwrap(), b, Microlitres::new(w).unwrap()).unwrap();
        prop_assert!(joined.used() >= x.min(y) && joined.used() <= x.max(y));
        prop_assert_eq!(joined.life(), a.life());
    }

    #[test]
    fn a_deeper_tray_never_ages_sooner(life in 1_i64..1_000_000, v in 0_i64..5_000_000, more in 0_i64..5_000_000, tray in area()) {
        let life = Seconds::new(life).unwrap();
        let at = |v| oxidising_life(life, Microlitres::new(v).unwrap(), tray, TenthsMm::of(80)).unwrap();
        prop_assert!(at(v) <= at(v + more));
        prop_assert!(at(v + more) <= life);
        prop_assert!(4 * at(v).get() + 2 >= life.get());
    }
}

#[test]
fn wear_refuses_what_makes_no_sense() {
    let hundred = SheetsPerLitre::new(100_000).unwrap();
    assert_eq!(
        wear_of(0, Area::SHEET_8X10, hundred),
        Err(WearError::NoSheets)
    );
    assert_eq!(wear_of(1, Area::ZERO, hundred), Err(WearError::NoSheets));
    assert_eq!(SheetsPerLitre::new(0), Err(WearError::Capacity));
    assert_eq!(
        used_fraction(Nanolitres::ZERO, Microlitres::ZERO),
        Err(WearError::NoVolume)
    );
    let fresh = Charge::fresh(Microlitres::of(10));
    assert_eq!(
        fresh.reversed(Nanolitres::of(1)),
        Err(WearError::MoreThanThereIs)
    );
    assert_eq!(
        fresh.poured_off(Microlitres::of(11)),
        Err(WearError::MoreThanThereIs)
    );
    assert_eq!(
        Age::fresh(Moment::new(0), Seconds::ZERO),
        Err(AgeError::NoLife)
    );
    assert_eq!(
        depth(Microlitres::of(1), Area::ZERO),
        Err(AgeError::NoVolume)
    );
}

#[test]
fn what_is_told_late_takes_effect_at_the_last_event() {
    let used = Ppb::of(500_000_000);
    let age = Age::new(used, Moment::new(1_000), Seconds::of(10)).unwrap();
    let moved = age.stored(Moment::new(400), Seconds::of(20)).unwrap();
    assert_eq!(
        (moved.used(), moved.at(), moved.life()),
        (used, age.at(), Seconds::of(20))
    );
    assert_eq!(
        age.used_at(Moment::new(400)),
        Ok(used),
        "nothing grows younger"
    );
}

#[test]
fn what_is_left_is_never_less_than_nothing() {
    assert_eq!(Ppb::of(840_000_000).rest(), Ppb::of(160_000_000));
    assert_eq!(Ppb::of(1_050_000_000).rest(), Ppb::ZERO);
}

#[test]
fn temperatures_and_sheets_have_ends() {
    assert!(TenthsCelsius::new(-2_731).is_ok() && TenthsCelsius::new(-2_732).is_err());
    assert!(TenthsCelsius::new(10_000).is_ok() && TenthsCelsius::new(10_001).is_err());
    let sheet = |a, b| SheetSize::new(TenthsMm::of(a), TenthsMm::of(b));
    assert!(sheet(10, 100_000).is_ok());
    assert_eq!(sheet(9, 100), Err(SheetError::Side));
    assert_eq!(sheet(100, 100_001), Err(SheetError::Side));
}

#[test]
fn quantities_are_never_negative_and_never_overflow_in_silence() {
    assert_eq!(Microlitres::new(-1), Err(QuantityError::Negative));
    assert_eq!(
        Microlitres::ZERO.minus(Microlitres::of(1)),
        Err(QuantityError::Negative)
    );
    let most = Microlitres::new(i64::MAX).unwrap();
    assert_eq!(most.plus(Microlitres::of(1)), Err(QuantityError::TooLarge));
    assert_eq!(most.times(2), Err(QuantityError::TooLarge));
    assert_eq!(most.to_nanolitres(), Err(QuantityError::TooLarge));
    assert_eq!(
        wear_of(
            u32::MAX,
            Area::new(i64::MAX).unwrap(),
            SheetsPerLitre::new(1).unwrap()
        ),
        Err(WearError::Quantity(QuantityError::TooLarge))
    );
    assert!(serde_json::from_str::<Microlitres>("-1").is_err());
    assert_eq!(serde_json::to_string(&Microlitres::of(5)).unwrap(), "5");
}
