//! Kits, powders, percentages, cylinders and water: parts make the whole.

use proptest::prelude::*;
use wetside::darkroom::dilution::{Dilution, parts_for_volume};
use wetside::darkroom::kit::{BottleLife, KitError, kit_volumes, packets_for, use_by};
use wetside::darkroom::measuring::{MeasuringError, measure};
use wetside::darkroom::percentage::{Percent, PercentageError, pearson, weights_for};
use wetside::darkroom::quantities::{Micrograms, Microlitres, Moment, Seconds, TenthsCelsius};
use wetside::darkroom::units::{VolumeUnit, volume_in_microlitres, volume_in_unit_thousandths};
use wetside::darkroom::water::{
    Drawn, Taps, WantedMix, WaterError, WaterPlan, mix_temperature, plan_water, water_temperature,
};

fn ml(millilitres: i64) -> Microlitres {
    Microlitres::from_millilitres(millilitres).unwrap()
}

fn tenths(value: i64) -> TenthsCelsius {
    TenthsCelsius::new(value).unwrap()
}

proptest! {
    #[test]
    fn a_kit_makes_its_volume_exactly(
        parts in prop::collection::vec(1_u32..20_000, 1..8), water in 0_u32..50_000, v in 1_i64..100_000_000,
    ) {
        let volume = Microlitres::new(v).unwrap();
        let kit = kit_volumes(&parts, water, volume).unwrap();
        let all = kit.parts.iter().try_fold(kit.water, |sum, part| sum.plus(*part)).unwrap();
        prop_assert_eq!(all, volume);
        prop_assert_eq!(kit.parts.len(), parts.len());
        if water == 0 {
            prop_assert_eq!(kit.water, Microlitres::ZERO);
        }
    }

    #[test]
    fn a_kit_of_one_part_is_a_dilution(n in 0_u32..50_000, v in 1_i64..100_000_000) {
        let volume = Microlitres::new(v).unwrap();
        let kit = kit_volumes(&[1_000], n, volume).unwrap();
        let parts = parts_for_volume(Dilution::new(i64::from(n)).unwrap(), volume).unwrap();
        prop_assert_eq!((kit.parts[0], kit.water), (parts.concentrate, parts.water));
    }

    #[test]
    fn packets_make_enough_and_one_fewer_would_not(wanted in 1_i64..100_000_000, makes in 500_000_i64..10_000_000) {
        let (wanted, makes) = (Microlitres::new(wanted).unwrap(), Microlitres::new(makes).unwrap());
        let whole = packets_for(wanted, makes, false).unwrap();
        prop_assert_eq!(whole.packets_thousandths % 1_000, 0);
        prop_assert!(whole.volume >= wanted);
        prop_assert!(whole.volume.minus(makes).unwrap() < wanted);
        let part = packets_for(wanted, makes, true).unwrap();
        prop_assert!(part.packets_thousandths <= whole.packets_thousandths);
        prop_assert!(part.packets_thousandths * makes.get() >= wanted.get() * 1_000);
        prop_assert!((part.packets_thousandths - 1) * makes.get() < wanted.get() * 1_000);
    }

    #[test]
    fn opening_never_makes_a_bottle_last_longer(full in 0_u32..10_000_000, part in 0_u32..10_000_000, opened in 0_i64..1_000_000_000_000) {
        let life = BottleLife { full: Seconds::of(full), part: Seconds::of(part) };
        let closed = use_by(Moment::new(0), None, life);
        prop_assert!(use_by(Moment::new(0), Some(Moment::new(opened)), life) <= closed);
    }

    #[test]
    fn the_weighted_mean_of_a_square_is_the_target(s in 1_i64..=100_000, w in 0_i64..100_000, at in 0_i64..=100_000, total in 1_u32..) {
        prop_assume!(s > w);
        let t = w + at % (s - w + 1);
        let square = pearson(Percent::new(s).unwrap(), Percent::new(w).unwrap(), Percent::new(t).unwrap()).unwrap();
        let (a, b) = (i64::from(square.strong_parts_thousandths), i64::from(square.weak_parts_thousandths));
        prop_assert_eq!(a * s + b * w, t * (a + b));
        let weights = weights_for(square, Micrograms::of(total)).unwrap();
        prop_assert_eq!(weights.strong.plus(weights.weak).unwrap(), Micrograms::of(total));
    }

    #[test]
    fn a_measured_concentrate_stands_at_a_graduation(n in 0_i64..20_000, v in 100_000_i64..10_000_000, graduation in 100_i64..20_000) {
        let (volume, graduation) = (Microlitres::new(v).unwrap(), Microlitres::new(graduation).unwrap());
        let dilution = Dilution::new(n).unwrap();
        if let Ok(measured) = measure(dilution, volume, graduation) {
            prop_assert_eq!(measured.parts.concentrate.get() % graduation.get(), 0);
            prop_assert_eq!(measured.parts.concentrate.plus(measured.parts.water).unwrap(), volume);
            let asked = parts_for_volume(dilution, volume).unwrap().concentrate;
            prop_assert!((asked.get() - measured.parts.concentrate.get()).abs() * 2 <= graduation.get());
            if measured.strength_change_thousandths > 1 {
                prop_assert!(measured.dilution <= dilution);
            }
            if measured.strength_change_thousandths < -1 {
                prop_assert!(measured.dilution >= dilution);
            }
        }
    }

    #[test]
    fn planned_water_brings_the_mix_there(
        c in 1_i64..1_000_000, water in 100_000_i64..5_000_000, wanted in 150_i64..300, concentrate in 0_i64..350,
        cold in 0_i64..250, above in 1_i64..500,
    ) {
        let mix = WantedMix {
            volume: Microlitres::new(c + water).unwrap(), concentrate: Microlitres::new(c).unwrap(),
            wanted: tenths(wanted), concentrate_temperature: tenths(concentrate),
        };
        let taps = Taps { hot: tenths(cold + above), cold: tenths(cold), warmest: tenths(400) };
        let ideal = i128::from(water_temperature(mix).unwrap().unwrap());
        let heat = i128::from(c + water) * i128::from(wanted) - i128::from(c) * i128::from(concentrate);
        prop_assert!(2 * (ideal * i128::from(water) - heat).abs() <= i128::from(water));
        match plan_water(mix, taps).unwrap() {
            WaterPlan::Reached(drawn) => {
                let reached = mix_temperature(mix, drawn.temperature).unwrap();
                prop_assert!((reached.get() - mix.wanted.get()).abs() <= 1);
                drawn_within(drawn, mix, taps)?;
            }
            WaterPlan::Nearest(drawn, reached) => {
                let highest = taps.hot.min(taps.warmest);
                prop_assert!(drawn.temperature == taps.cold || drawn.temperature == highest);
                let ideal = water_temperature(mix).unwrap().unwrap();
                prop_assert!(ideal < i64::from(taps.cold) || ideal > i64::from(highest));
                prop_assert_eq!(reached, mix_temperature(mix, drawn.temperature).unwrap());
                drawn_within(drawn, mix, taps)?;
            }
            WaterPlan::AsItIs(_) => prop_assert!(false, "there is water and the taps differ"),
        }
    }

    #[test]
    fn other_units_come_back(thousandths in 0_i64..1_000_000) {
        for unit in [VolumeUnit::UsFluidOunce, VolumeUnit::ImperialPint, VolumeUnit::UsGallon] {
            let there = volume_in_microlitres(thousandths, unit).unwrap();
            prop_assert_eq!(volume_in_unit_thousandths(there, unit).unwrap(), thousandths);
        }
    }
}

fn drawn_within(drawn: Drawn, mix: WantedMix, taps: Taps) -> Result<(), TestCaseError> {
    prop_assert_eq!(
        drawn.hot.plus(drawn.cold).unwrap(),
        mix.volume.minus(mix.concentrate).unwrap()
    );
    prop_assert!(drawn.temperature >= taps.cold && drawn.temperature <= taps.warmest);
    prop_assert!(drawn.temperature <= taps.hot);
    // What comes from the two taps is as warm as the water was meant to be.
    let heat = i128::from(drawn.hot.get()) * i128::from(taps.hot.get())
        + i128::from(drawn.cold.get()) * i128::from(taps.cold.get());
    let all = i128::from(drawn.hot.plus(drawn.cold).unwrap().get());
    let off = heat - all * i128::from(drawn.temperature.get());
    prop_assert!(off.abs() <= i128::from(taps.hot.get() - taps.cold.get()));
    Ok(())
}

#[test]
fn a_kit_has_parts_and_a_volume() {
    assert_eq!(kit_volumes(&[], 1_000, ml(1_000)), Err(KitError::Parts));
    assert_eq!(kit_volumes(&[1_000, 0], 0, ml(1_000)), Err(KitError::Parts));
    assert_eq!(kit_volumes(&[1; 9], 0, ml(1_000)), Err(KitError::Parts));
    assert_eq!(
        kit_volumes(&[1_000], 0, Microlitres::ZERO),
        Err(KitError::Nothing)
    );
    assert_eq!(
        packets_for(ml(1), Microlitres::ZERO, false),
        Err(KitError::Nothing)
    );
    assert_eq!(
        packets_for(ml(20_000_000), ml(1_000), false),
        Err(KitError::Packets)
    );
}

#[test]
fn parts_that_all_round_up_still_fit() {
    let kit = kit_volumes(&[1_000; 5], 1_000, Microlitres::of(3)).unwrap();
    let three_of_one = [1, 1, 1, 0, 0].map(Microlitres::of);
    assert_eq!(
        (kit.parts.as_slice(), kit.water),
        (three_of_one.as_slice(), Microlitres::ZERO)
    );
}

#[test]
fn pearson_gives_either_solution_alone_at_the_ends() {
    let percent = |value: i64| Percent::new(value * 1_000).unwrap();
    let at = |target| pearson(percent(44), percent(8), percent(target)).unwrap();
    assert_eq!(
        (
            at(44).strong_parts_thousandths,
            at(44).weak_parts_thousandths
        ),
        (36_000, 0)
    );
    assert_eq!(
        (at(8).strong_parts_thousandths, at(8).weak_parts_thousandths),
        (0, 36_000)
    );
}

#[test]
fn pearson_refuses_what_has_no_answer() {
    let percent = |value: i64| Percent::new(value * 1_000).unwrap();
    let square = |s, w, t| pearson(percent(s), percent(w), percent(t));
    assert_eq!(square(8, 8, 8), Err(PercentageError::NotStronger));
    assert_eq!(square(8, 44, 16), Err(PercentageError::NotStronger));
    assert_eq!(square(44, 8, 7), Err(PercentageError::TargetOutside));
    assert_eq!(square(44, 8, 45), Err(PercentageError::TargetOutside));
    assert_eq!(Percent::new(100_001), Err(PercentageError::Percent));
}

#[test]
fn a_coarse_cylinder_says_so() {
    let nine = Dilution::new(9_000).unwrap();
    assert_eq!(measure(nine, ml(10), ml(5)), Err(MeasuringError::TooCoarse));
    assert_eq!(
        measure(nine, ml(10), Microlitres::ZERO),
        Err(MeasuringError::NoGraduation)
    );
    assert_eq!(
        measure(Dilution::NONE, ml(7), ml(5)).map(|m| m.parts.concentrate),
        Ok(ml(5))
    );
    assert_eq!(
        measure(Dilution::NONE, ml(8), ml(5)),
        Err(MeasuringError::MoreThanTheVolume)
    );
}

#[test]
fn a_cylinder_that_rounds_shows_the_dilution_that_results() {
    // 485 ml at 1+9 ask for 48.5 ml; a cylinder graduated in 2 ml shows 48.
    let nine = Dilution::new(9_000).unwrap();
    let measured = measure(nine, ml(485), ml(2)).unwrap();
    assert_eq!(measured.parts.concentrate, ml(48));
    assert_eq!(measured.dilution.parts_of_water_thousandths(), 9_104);
    assert_eq!(measured.strength_change_thousandths, -10);
}

fn wanted(volume: i64, concentrate: i64, wanted: i64, at: i64) -> WantedMix {
    let (wanted, concentrate_temperature) = (tenths(wanted), tenths(at));
    let (volume, concentrate) = (ml(volume), ml(concentrate));
    WantedMix {
        volume,
        concentrate,
        wanted,
        concentrate_temperature,
    }
}

#[test]
fn water_between_two_tenths_is_rounded_up() {
    // (3 · 200 − 1 · 199) / 2 = 200.5, and below the freezing point (3 · 0 − 1 · 1) / 2 = −0.5.
    let mix = |wanted, at| {
        let (wanted, concentrate_temperature) = (tenths(wanted), tenths(at));
        let (volume, concentrate) = (Microlitres::of(3), Microlitres::of(1));
        WantedMix {
            volume,
            concentrate,
            wanted,
            concentrate_temperature,
        }
    };
    assert_eq!(water_temperature(mix(200, 199)), Ok(Some(201)));
    assert_eq!(water_temperature(mix(0, 1)), Ok(Some(0)));
}

#[test]
fn water_that_cannot_be_drawn_is_said() {
    let taps = |hot, cold, warmest| Taps {
        hot: tenths(hot),
        cold: tenths(cold),
        warmest: tenths(warmest),
    };
    let mix = wanted(1_000, 500, 200, 20);
    let plan = plan_water(mix, taps(600, 100, 300)).unwrap();
    assert!(
        matches!(plan, WaterPlan::Nearest(drawn, reached) if drawn.temperature == tenths(300) && reached == tenths(160))
    );
    assert_eq!(
        plan_water(mix, taps(100, 200, 400)),
        Err(WaterError::TapsSwapped)
    );
    assert_eq!(
        plan_water(mix, taps(600, 410, 400)),
        Err(WaterError::ColdTooWarm)
    );
    assert_eq!(
        plan_water(wanted(1, 2, 200, 200), taps(600, 100, 400)),
        Err(WaterError::Volume)
    );
    let undiluted = wanted(1_000, 1_000, 200, 170);
    assert_eq!(
        plan_water(undiluted, taps(600, 100, 400)),
        Ok(WaterPlan::AsItIs(tenths(170)))
    );
    let one_tap = plan_water(wanted(1_000, 100, 200, 220), taps(120, 120, 400));
    assert_eq!(one_tap, Ok(WaterPlan::AsItIs(tenths(130))));
}
