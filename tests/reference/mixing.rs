//! Pearson's square, other units, kits, cylinders and water.

use wetside::darkroom::dilution::{Dilution, parts_for_volume};
use wetside::darkroom::kit::kit_volumes;
use wetside::darkroom::measuring::measure;
use wetside::darkroom::percentage::{Percent, Square, pearson, weights_for};
use wetside::darkroom::quantities::{Micrograms, Microlitres, TenthsCelsius};
use wetside::darkroom::units::{MassUnit, VolumeUnit, mass_in_micrograms, volume_in_microlitres};
use wetside::darkroom::water::{WantedMix, mix_temperature, water_temperature};

use super::{COMMON_PRACTICE, DEFINITION, near, same};

fn square(strong: i64, weak: i64, target: i64) -> Square {
    let percent = |value: i64| Percent::new(value * 1_000).unwrap();
    pearson(percent(strong), percent(weak), percent(target)).unwrap()
}

fn parts(strong: i64, weak: i64, target: i64) -> (u32, u32) {
    let square = square(strong, weak, target);
    (
        square.strong_parts_thousandths / 1_000,
        square.weak_parts_thousandths / 1_000,
    )
}

#[test]
pub(super) fn pearsons_square() {
    let shapiro = "L. Shapiro, L.A. Pierce College, 'Balancing Feed Rations: Pearson Squares'";
    same("54 % and 8 % to 26 %", parts(54, 8, 26), (18, 28), shapiro);
    let assignment = "exercise text assignment 14688 (answers computed)";
    same(
        "44 % and 8 % to 16 %",
        parts(44, 8, 16),
        (8, 28),
        assignment,
    );
    same("12 % and 8 % to 10 %", parts(12, 8, 10), (2, 2), assignment);
    same(
        "100 % and water to 28 %",
        parts(100, 0, 28),
        (28, 72),
        "Pearson's square, w/w",
    );
}

#[test]
#[expect(clippy::cast_precision_loss, reason = "far below 2^53")]
pub(super) fn amounts_of_a_square() {
    let source = "L. Shapiro, as above; amounts computed";
    let weights = weights_for(square(54, 8, 26), Micrograms::of(600_000_000)).unwrap();
    near(
        "strong of 600",
        weights.strong.get() as f64 / 1e6,
        234.78,
        0.01,
        source,
    );
    near(
        "weak of 600",
        weights.weak.get() as f64 / 1e6,
        365.22,
        0.01,
        source,
    );
}

#[test]
pub(super) fn three_parts_glacial_and_eight_of_water_are_near_28_percent() {
    let kit = kit_volumes(&[3_000], 8_000, Microlitres::of(1_100_000)).unwrap();
    same(
        "3 of 11 parts",
        kit.parts[0],
        Microlitres::of(300_000),
        DEFINITION,
    );
    // 300/1100 is 27.3 % v/v; with 1.049 g/ml glacial (from memory) it is 28.2 % w/w.
    let share = 300.0 * 1.049 / (300.0 * 1.049 + 800.0) * 100.0;
    near("'28 %' acetic acid, w/w", share, 28.0, 0.5, COMMON_PRACTICE);
}

fn volume(thousandths: i64, unit: VolumeUnit) -> i64 {
    volume_in_microlitres(thousandths, unit).unwrap().get()
}

fn mass(thousandths: i64, unit: MassUnit) -> i64 {
    mass_in_micrograms(thousandths, unit).unwrap().get()
}

#[test]
pub(super) fn units_are_exact() {
    let source = "NIST SP 811 App. B and Handbook 44 App. C; computed with pint 0.25.3";
    let thousand = 1_000_000;
    same(
        "1000 US gal",
        volume(thousand, VolumeUnit::UsGallon),
        3_785_411_784,
        source,
    );
    same(
        "1000 US qt",
        volume(thousand, VolumeUnit::UsQuart),
        946_352_946,
        source,
    );
    same(
        "1000 US pt",
        volume(thousand, VolumeUnit::UsPint),
        473_176_473,
        source,
    );
    let ten_million = 10_000_000_000;
    let ounces = volume(ten_million, VolumeUnit::UsFluidOunce);
    same("10,000,000 US fl oz", ounces, 295_735_295_625, source);
    same(
        "1000 imp gal",
        volume(thousand, VolumeUnit::ImperialGallon),
        4_546_090_000,
        source,
    );
    same(
        "1000 imp pt",
        volume(thousand, VolumeUnit::ImperialPint),
        568_261_250,
        source,
    );
    let ounces = volume(ten_million, VolumeUnit::ImperialFluidOunce);
    same("10,000,000 imp fl oz", ounces, 284_130_625_000, source);
    same(
        "1000 oz",
        mass(thousand, MassUnit::Ounce),
        28_349_523_125,
        source,
    );
    same(
        "1000 lb",
        mass(thousand, MassUnit::Pound),
        453_592_370_000,
        source,
    );
    same(
        "1000 gr",
        mass(thousand, MassUnit::Grain),
        64_798_910,
        source,
    );
}

#[test]
pub(super) fn us_and_imperial_ounces_differ_by_four_percent() {
    let (us, imperial) = (VolumeUnit::UsFluidOunce, VolumeUnit::ImperialFluidOunce);
    let source = "29.5735295625 and 28.4130625 ml, exact by definition";
    same(
        "1 US fl oz, rounded once",
        volume(1_000, us),
        29_574,
        source,
    );
    same(
        "1 imp fl oz, rounded once",
        volume(1_000, imperial),
        28_413,
        source,
    );
}

#[test]
pub(super) fn a_colder_concentrate_asks_for_warmer_water() {
    // 100 ml at 15 °C in a litre at 20 °C: (1000·20 − 100·15)/900 = 20.56 °C.
    let mix = WantedMix {
        volume: Microlitres::of(1_000_000),
        concentrate: Microlitres::of(100_000),
        wanted: TenthsCelsius::degrees(20),
        concentrate_temperature: TenthsCelsius::degrees(15),
    };
    let source = "heat balance at equal density and heat capacity";
    same(
        "water for 20 °C",
        water_temperature(mix).unwrap(),
        Some(206),
        source,
    );
    let there = mix_temperature(mix, TenthsCelsius::new(206).unwrap()).unwrap();
    same("the mix", there, TenthsCelsius::degrees(20), source);
}

#[test]
pub(super) fn a_working_solution_is_ten_to_fifteen_times_weaker() {
    for (water, times) in [(9_000, 10), (14_000, 15)] {
        let litres = Microlitres::of(3_000_000);
        let parts = parts_for_volume(Dilution::new(water).unwrap(), litres).unwrap();
        same(
            "times weaker",
            litres.get() / parts.concentrate.get(),
            times,
            COMMON_PRACTICE,
        );
    }
}

#[test]
pub(super) fn a_coarse_cylinder_weakens_noticeably() {
    // 500 ml at 1+9.3 ask for 48.5 ml; the shown dilution follows what is measured.
    let nine = Dilution::new(9_000).unwrap();
    let measured = measure(nine, Microlitres::of(500_000), Microlitres::of(50_000)).unwrap();
    same(
        "exactly at a graduation",
        measured.strength_change_thousandths,
        0,
        DEFINITION,
    );
    same(
        "and the dilution asked for",
        measured.dilution,
        nine,
        DEFINITION,
    );
}
