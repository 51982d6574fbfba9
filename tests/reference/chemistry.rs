//! Process chemistry: bromide, stop bath, silver, emergence, temperature.

use wetside::darkroom::age::oxidising_life;
use wetside::darkroom::film::{Clearing, clearing_ratio};
use wetside::darkroom::quantities::{
    Area, Micrograms, Microlitres, Ppb, Seconds, TenthsCelsius, TenthsMm, Thousandths,
};
use wetside::darkroom::replenishment::{bromide_released, potassium_bromide_released};
use wetside::darkroom::sheet::sheet_equivalents;
use wetside::darkroom::silver::{
    ARCHIVAL_LIMIT_MG_PER_LITRE, FIRST_BATH_LIMIT_MG_PER_LITRE, SilverBath, sheets_until_silver,
    silver_dissolved,
};
use wetside::darkroom::stop_bath::{StopAcid, StopBath, carried_over};
use wetside::darkroom::time_temperature::{
    Agent, Coefficient, Timed, factor, factor_of_agents, factorial_time,
};
use wetside::darkroom::verdict::CLEARING_LIMIT;
use wetside::darkroom::wear::{SheetsPerLitre, wear_of};

use super::{COMMON_PRACTICE, near, same};

#[test]
#[expect(clippy::cast_precision_loss, reason = "far below 2^53")]
pub(super) fn bromide_from_developed_silver() {
    let source = "1 mol of bromide a mol of silver; weights of periodictable 2.1.0 (CIAAW)";
    let gram = Micrograms::of(1_000_000);
    near(
        "Br",
        bromide_released(gram).unwrap().get() as f64 / 1e6,
        0.740_76,
        0.000_5,
        source,
    );
    let kbr = potassium_bromide_released(gram).unwrap().get() as f64 / 1e6;
    near("KBr", kbr, 1.103_2, 0.000_5, source);
    // Silver bromide is 57.446 % silver: a gram of silver and its bromide weigh 1/0.57446 g.
    let whole = 1.0 + bromide_released(gram).unwrap().get() as f64 / 1e6;
    near("Ag in AgBr", 1.0 / whole, 0.574_46, 0.000_5, source);
}

fn acetic() -> StopBath {
    StopBath::new(StopAcid::Acetic, 0.25).unwrap()
}

#[test]
pub(super) fn a_fresh_stop_bath() {
    let source = "weak-acid quadratic, 0.25 mol/l (about 1.5 %), pKa 4.76";
    near("pH", acetic().ph_with(0.0).unwrap(), 2.683, 0.005, source);
}

#[test]
pub(super) fn a_stop_bath_turns_long_after_half_its_acid_is_gone() {
    let source = "Henderson-Hasselbalch, pKa 4.76 of the University of Sydney's table at 298 K";
    for (ph, neutralised) in [(5.2, 0.7336), (6.0, 0.9456)] {
        let alkali = acetic().alkali_at_ph(ph).unwrap();
        let share = acetic().neutralised(alkali).unwrap();
        near(
            &format!("share at pH {ph}"),
            share,
            neutralised,
            0.000_5,
            source,
        );
    }
    let half = acetic().ph_with(0.125).unwrap();
    near(
        "pH with half the acid neutralised",
        half,
        4.76,
        0.01,
        source,
    );
}

#[test]
pub(super) fn the_indicator_is_purple_at_99_percent() {
    let source = "Henderson-Hasselbalch; bromocresol purple 5.2 to 6.8 (teaching page)";
    let alkali = acetic().alkali_at_ph(6.8).unwrap();
    near(
        "share at pH 6.8",
        acetic().neutralised(alkali).unwrap(),
        0.991,
        0.000_5,
        source,
    );
}

#[test]
pub(super) fn citric_acid_is_buffered_three_times() {
    let source = "charge balance, pKa 3.13, 4.76, 6.40 (from memory)";
    let citric = StopBath::new(StopAcid::Citric, 0.1).unwrap();
    // A hand solution at pH 4.76: h/K1 = 0.02344, K3/h = 0.02291, so the mean
    // charge is (1 + 2 + 3·0.02291)/(0.02344 + 1 + 1 + 0.02291) = 1.4997.
    let alkali = citric.alkali_at_ph(4.76).unwrap();
    near(
        "alkali at pH 4.76, eq/l",
        alkali,
        0.149_97 - 0.000_017,
        0.000_05,
        source,
    );
}

#[test]
pub(super) fn developing_by_emergence() {
    let seconds = Seconds::of;
    let encyclopaedia = "Cyclopedia of Photography (1911), 'Pyro-soda factors', public domain";
    let time = factorial_time(seconds(9), Thousandths::of(15_000)).unwrap();
    same("9 s × 15", time, seconds(135), encyclopaedia);
    let dictionary = "Dictionary of Photography (c. 1902), public domain";
    let time = factorial_time(seconds(45), Thousandths::of(5_000)).unwrap();
    same("45 s × 5", time, seconds(225), dictionary);
    let practical = "Practical Photography (c. 1909), para 506, public domain";
    let found = factor(seconds(1_200), seconds(30)).unwrap();
    same("1200 s / 30 s", found, Thousandths::of(40_000), practical);
}

#[test]
pub(super) fn factors_of_mixed_agents() {
    let source = "Cyclopedia of Photography (1911), 'Pyro-soda factors', public domain";
    let agent = |factor: u32, parts: u32| Agent {
        factor: Thousandths::of(factor * 1_000),
        parts_thousandths: parts * 1_000,
    };
    let mixed = factor_of_agents(&[agent(6, 4), agent(30, 2)]).unwrap();
    same(
        "6 × 4 and 30 × 2 parts",
        mixed,
        Thousandths::of(14_000),
        source,
    );
    let equal = factor_of_agents(&[agent(6, 1), agent(30, 1)]).unwrap();
    same(
        "6 and 30, equal parts",
        equal,
        Thousandths::of(18_000),
        source,
    );
}

#[test]
pub(super) fn a_fixer_of_1909() {
    let source = "Practical Photography (c. 1909), para 463: thirty 4×5 in 16 ounces";
    let four_by_five = TenthsMm::of(1_016).by(TenthsMm::of(1_270)).unwrap();
    let sheets = sheet_equivalents(30, four_by_five).unwrap();
    same(
        "thirty 4×5 in sheets of 8×10",
        sheets.get(),
        7_500_000,
        source,
    );
    // 7.5 sheets in 16 US fl oz, 0.4732 l, are 15.85 a litre.
    let capacity = SheetsPerLitre::new(15_850).unwrap();
    let wear = wear_of(30, four_by_five, capacity).unwrap();
    near(
        "16 US fl oz in ml",
        float(wear.get()) / 1e6,
        473.176,
        0.05,
        source,
    );
}

#[expect(clippy::cast_precision_loss, reason = "far below 2^53")]
fn float(value: i64) -> f64 {
    value as f64
}

#[test]
pub(super) fn silver_of_a_worked_sheet() {
    let source = "1.2 g/m² × 75 % × 8×10 in = 0.0465 g; computed";
    let quarter = Ppb::of(250_000_000);
    let sheet = silver_dissolved(1, Area::SHEET_8X10, 1_200, quarter).unwrap();
    near(
        "one sheet, g",
        float(sheet.get()) / 1e6,
        0.046_5,
        0.000_05,
        source,
    );
    let litre = SilverBath {
        volume: Microlitres::of(1_000_000),
        silver: Micrograms::ZERO,
    };
    let until = |limit| sheets_until_silver(litre, limit, Area::SHEET_8X10, 1_200, quarter);
    same(
        "sheets to 0.5 g/l",
        until(ARCHIVAL_LIMIT_MG_PER_LITRE).unwrap(),
        10,
        source,
    );
    same(
        "sheets to 2 g/l",
        until(FIRST_BATH_LIMIT_MG_PER_LITRE).unwrap(),
        43,
        source,
    );
}

#[test]
pub(super) fn fixing_limits_in_grams() {
    let source = "a public teaching site; handbook origin from memory";
    same(
        "first of two baths, mg/l",
        FIRST_BATH_LIMIT_MG_PER_LITRE,
        2_000,
        source,
    );
    same(
        "archival single bath, mg/l",
        ARCHIVAL_LIMIT_MG_PER_LITRE,
        500,
        source,
    );
}

#[test]
pub(super) fn coating_weights_of_papers() {
    // A square metre of paper, nothing kept, coated with so many mg/ft².
    let source = "50, 150 and 300 mg/ft²; 1 ft² = 0.09290304 m² exactly";
    let square_foot = TenthsMm::of(3_048).by(TenthsMm::of(3_048)).unwrap();
    for (per_square_foot, mg_per_m2) in [(50.0, 538), (150.0, 1_615), (300.0, 3_229)] {
        let silver = silver_dissolved(1, square_foot, mg_per_m2, Ppb::ZERO).unwrap();
        near(
            "mg on a square foot",
            float(silver.get()) / 1e3,
            per_square_foot,
            0.1,
            source,
        );
    }
}

#[test]
pub(super) fn four_fifths_of_the_silver_may_reach_the_fixer() {
    let source =
        "Silver Recovery Systems and Waste Reduction in Photoprocessing: 'as much as 80 percent'";
    let coated = silver_dissolved(1_000, Area::SHEET_8X10, 1_000, Ppb::ZERO).unwrap();
    let dissolved = silver_dissolved(1_000, Area::SHEET_8X10, 1_000, Ppb::of(200_000_000)).unwrap();
    near(
        "share",
        float(dissolved.get()) / float(coated.get()),
        0.8,
        0.000_1,
        source,
    );
}

#[test]
pub(super) fn clearing_time_doubled_means_spent() {
    let clearing = |seconds| Clearing {
        time: Seconds::of(seconds),
        temperature: TenthsCelsius::degrees(20),
    };
    let ratio = clearing_ratio(clearing(40), clearing(80)).unwrap();
    assert!(ratio >= CLEARING_LIMIT, "{COMMON_PRACTICE}");
    let ratio = clearing_ratio(clearing(40), clearing(79)).unwrap();
    assert!(ratio < CLEARING_LIMIT, "{COMMON_PRACTICE}");
}

#[test]
pub(super) fn temperature_coefficients_come_out_of_two_points() {
    // A developer with a coefficient of 1.9 takes 90 s at 20 °C and 90·1.9^-0.4 = 69.6 s at 24 °C.
    let source = "Q10 about 1.9 for metol-hydroquinone, from memory";
    let timed = |seconds, degrees| Timed {
        time: Seconds::of(seconds),
        temperature: TenthsCelsius::degrees(degrees),
    };
    let q = Coefficient::from_points(timed(900, 20), timed(696, 24)).unwrap();
    near("Q", q.get(), 1.9, 0.01, source);
}

#[test]
pub(super) fn a_litre_in_a_tray_dies_sooner_the_shallower_it_stands() {
    let litre = Microlitres::of(1_000_000);
    let day = Seconds::from_hours(8);
    let reference = TenthsMm::of(80);
    // A tray for 8×10 in, and one for 20×24 in, inside measurements about the paper's.
    let small = oxidising_life(day, litre, Area::SHEET_8X10, reference).unwrap();
    let large = Area::new(Area::SHEET_8X10.get() * 6).unwrap();
    let large = oxidising_life(day, litre, large, reference).unwrap();
    same("deep enough", small, day, COMMON_PRACTICE);
    assert!(
        large < Seconds::from_hours(4),
        "{large:?} ({COMMON_PRACTICE})"
    );
}

#[test]
pub(super) fn carry_over_of_a_sheet_stays_in_its_doubtful_range() {
    let source = "20 to 50 ml/m² RC, 100 to 300 FB: doubtful, no source found; area exact";
    let sheet = |ml_per_m2: u32| {
        carried_over(1, Area::SHEET_8X10, Microlitres::of(ml_per_m2 * 1_000))
            .unwrap()
            .get()
    };
    same("RC, 20 ml/m²", sheet(20), 1_032, source);
    same("FB, 300 ml/m²", sheet(300), 15_484, source);
}
