//! A neutral liquid paper developer as printers know it. Every figure: common
//! practice, no source. And the other products a room starts with: what each of
//! their figures is called, and that what they are made of may be mixed as they say.

use uuid::Uuid;
use wetside::darkroom::age::Age;
use wetside::darkroom::dilution::{Dilution, parts_for_volume, volume_from_concentrate};
use wetside::darkroom::quantities::{Area, Microlitres, Moment, Nanolitres, Ppb, Seconds};
use wetside::darkroom::sheet::sheet_equivalents;
use wetside::darkroom::state::{MixState, TrayState};
use wetside::darkroom::stop_bath::{StopAcid, StopBath};
use wetside::darkroom::verdict::{Verdict, judge};
use wetside::darkroom::wear::{Charge, SheetsPerLitre, wear_of};
use wetside::papers::PaperClass;
use wetside::products::starter::{self, FROM_MEMORY};
use wetside::products::{Kind, Place};

use super::{COMMON_PRACTICE, same};

const LITRE: Microlitres = Microlitres::of(1_000_000);

fn sheets_a_litre_takes(capacity: i64) -> u32 {
    let capacity = SheetsPerLitre::new(capacity * 1_000).unwrap();
    let mut sheets = 0;
    loop {
        let charge = Charge {
            charged: LITRE,
            spent: wear_of(sheets + 1, Area::SHEET_8X10, capacity).unwrap(),
        };
        sheets += 1;
        if charge.used().unwrap() >= Ppb::LIMIT {
            return sheets;
        }
    }
}

#[test]
pub(super) fn a_litre_takes_its_capacity_and_is_then_replaced() {
    for (what, capacity) in [
        ("1+9, RC", 100),
        ("1+9, FB", 50),
        ("1+9, cool-tone RC", 50),
        ("1+14, RC", 70),
        ("1+14, FB", 40),
    ] {
        same(
            what,
            i64::from(sheets_a_litre_takes(capacity)),
            capacity,
            COMMON_PRACTICE,
        );
    }
}

#[test]
pub(super) fn a_litre_of_concentrate_serves_a_thousand_sheets() {
    let nine = Dilution::new(9_000).unwrap();
    let made = volume_from_concentrate(nine, LITRE).unwrap();
    same(
        "1 l of concentrate at 1+9",
        made,
        Microlitres::of(10_000_000),
        COMMON_PRACTICE,
    );
    let wear = wear_of(
        1_000,
        Area::SHEET_8X10,
        SheetsPerLitre::new(100_000).unwrap(),
    )
    .unwrap();
    same(
        "1,000 RC sheets",
        wear,
        made.to_nanolitres().unwrap(),
        COMMON_PRACTICE,
    );
}

#[test]
pub(super) fn half_a_litre_is_a_usual_fill() {
    let nine = Dilution::new(9_000).unwrap();
    let parts = parts_for_volume(nine, Microlitres::of(500_000)).unwrap();
    same(
        "concentrate",
        parts.concentrate,
        Microlitres::of(50_000),
        COMMON_PRACTICE,
    );
    let six = wear_of(6, Area::SHEET_8X10, SheetsPerLitre::new(100_000).unwrap()).unwrap();
    same(
        "six RC sheets",
        six,
        Nanolitres::of(60_000_000),
        COMMON_PRACTICE,
    );
    let charge = Charge::fresh(Microlitres::of(500_000))
        .worn_by(six)
        .unwrap();
    same(
        "used by six sheets",
        charge.used().unwrap(),
        Ppb::of(120_000_000),
        COMMON_PRACTICE,
    );
}

fn verdict_after(hours: u16, life: Seconds) -> Verdict {
    let mixed = Moment::new(0);
    let mix = MixState {
        age: Some(Age::fresh(mixed, life).unwrap()),
        ..MixState::default()
    };
    judge(
        &TrayState::Mix(Box::new(mix)),
        mixed.after(Seconds::from_hours(hours)),
    )
    .unwrap()
    .verdict
}

#[test]
pub(super) fn an_open_tray_lasts_a_working_day_and_is_dead_by_morning() {
    let open = Seconds::from_minutes(450);
    same(
        "after 5 h in the tray",
        verdict_after(5, open),
        Verdict::Ready,
        COMMON_PRACTICE,
    );
    same(
        "after 8 h in the tray",
        verdict_after(8, open),
        Verdict::Replace,
        COMMON_PRACTICE,
    );
    same(
        "overnight in the tray",
        verdict_after(14, open),
        Verdict::Replace,
        COMMON_PRACTICE,
    );
    let stoppered = Seconds::from_hours(24);
    same(
        "overnight in a bottle",
        verdict_after(14, stoppered),
        Verdict::Ready,
        COMMON_PRACTICE,
    );
    same(
        "a day in a bottle",
        verdict_after(24, stoppered),
        Verdict::Replace,
        COMMON_PRACTICE,
    );
}

#[test]
pub(super) fn an_evening_in_the_tray_counts_when_it_is_bottled() {
    let evening = Moment::new(0).after(Seconds::from_hours(4));
    let morning = evening.after(Seconds::from_hours(12));
    let tray = Age::fresh(Moment::new(0), Seconds::from_hours(8)).unwrap();
    let bottled = tray.stored(evening, Seconds::from_hours(24)).unwrap();
    same(
        "4 of 8 h and 12 of 24 h",
        bottled.used_at(morning).unwrap(),
        Ppb::ONE,
        COMMON_PRACTICE,
    );
}

#[test]
pub(super) fn in_a_small_room_a_developer_dies_of_age_before_its_capacity() {
    let hundred = SheetsPerLitre::new(100_000).unwrap();
    let evening = wear_of(20, Area::SHEET_8X10, hundred).unwrap();
    let charge = Charge::fresh(LITRE).worn_by(evening).unwrap();
    let age = Age::fresh(Moment::new(0), Seconds::from_hours(8)).unwrap();
    let closing = Moment::new(0).after(Seconds::from_hours(8));
    assert!(
        age.used_at(closing).unwrap() >= Ppb::LIMIT,
        "{COMMON_PRACTICE}"
    );
    assert!(
        charge.used().unwrap() < Ppb::of(300_000_000),
        "{COMMON_PRACTICE}"
    );
}

#[test]
pub(super) fn capacity_is_counted_in_sheets_of_8x10() {
    let four = Area::new(Area::SHEET_8X10.get() * 4).unwrap();
    let equivalents = sheet_equivalents(25, four).unwrap().get();
    same(
        "25 sheets of 16×20 in",
        equivalents,
        100_000_000,
        "1 in = 25.4 mm exactly; by area",
    );
}

fn classes() -> Vec<PaperClass> {
    let class = |position: i32, name: &str| PaperClass {
        id: Uuid::from_u128(position.unsigned_abs().into()),
        name: name.to_owned(),
        position,
        is_retired: false,
        silver: None,
        carry_over_ul_per_m2: None,
    };
    vec![class(1, "RC"), class(2, "FB"), class(3, "RC, cool tone")]
}

/// Whether somebody who reads it knows that the figure has no source.
fn is_flagged(basis: &str) -> bool {
    basis == COMMON_PRACTICE || basis == FROM_MEMORY
}

#[test]
pub(super) fn every_starter_figure_says_that_it_has_no_source() {
    let all = starter::all(&classes());
    for kind in Kind::ALL {
        assert!(all.iter().any(|product| product.kind == kind), "{kind:?}");
    }
    for product in all {
        let name = &product.name;
        let has_figures = product.coldest_tenths_celsius.is_some()
            || product.warmest_tenths_celsius.is_some()
            || product.water_warmest_tenths_celsius.is_some()
            || product.longest_life_s.is_some()
            || product.packet_makes_ul.is_some()
            || product.stock_full_life_s.is_some()
            || product.stock_part_life_s.is_some()
            || product.limit_ph_thousandths.is_some()
            || product.bromide_limit_mg_per_litre.is_some()
            || !product.time_points.is_empty()
            || !product.kit_parts_thousandths.is_empty();
        assert_eq!(is_flagged(&product.figures_basis), has_figures, "{name}");
        assert!(!product.dilutions.is_empty(), "{name}");
        for dilution in &product.dilutions {
            let at = format!("{name} 1+{}", dilution.parts_thousandths / 1_000);
            assert!(is_flagged(&dilution.life_basis), "{at}");
            let has_limits = dilution.film_rolls_per_litre_thousandths.is_some()
                || dilution.acid_mmol_per_litre.is_some()
                || dilution.silver_limit_single_mg_per_litre.is_some()
                || dilution.silver_limit_first_mg_per_litre.is_some()
                || dilution.silver_limit_second_mg_per_litre.is_some();
            assert_eq!(is_flagged(&dilution.figures_basis), has_limits, "{at}");
            assert!(!dilution.capacities.is_empty(), "{at}");
            for figure in &dilution.capacities {
                assert!(is_flagged(&figure.basis), "{at}: {figure:?}");
            }
        }
    }
}

#[test]
pub(super) fn no_starter_product_has_safety_data_so_none_is_mixed_before_a_steward_copied_it() {
    for product in starter::all(&classes()) {
        let name = &product.name;
        assert_eq!(product.data_sheet_on, None, "{name}");
        assert!(product.hazard_codes.is_empty(), "{name}");
        assert!(product.precaution_codes.is_empty(), "{name}");
        // The unknown goes with nothing; what is known of each is said.
        assert!(!product.groups.is_empty(), "{name}");
        let is_toner = product.kind == Kind::Toner;
        assert_eq!(
            product.steward_only, is_toner,
            "{name}: trade.md section 14"
        );
    }
}

#[test]
pub(super) fn a_litre_of_a_second_fixer_takes_what_one_of_the_first_does() {
    let all = starter::all(&classes());
    let fixer = all
        .iter()
        .find(|product| product.kind == Kind::Fixer)
        .unwrap();
    for dilution in &fixer.dilutions {
        let of = |place: Place, class: Uuid| {
            let mut figures = dilution.capacities.iter();
            let found = figures.find(|each| each.place == place && each.paper_class_id == class);
            found.unwrap().sheets_per_litre_thousandths
        };
        for class in classes() {
            let (first, second) = (of(Place::First, class.id), of(Place::Second, class.id));
            same("a litre of the second", second, first, FROM_MEMORY);
        }
        same(
            "the first of two is used up at 2 g/L",
            dilution.silver_limit_first_mg_per_litre,
            Some(2_000),
            "a public teaching site",
        );
    }
}

#[test]
pub(super) fn a_fresh_stop_bath_is_as_acid_as_its_acid_makes_it() {
    let all = starter::all(&classes());
    let acetic = all
        .iter()
        .find(|product| product.stop_acid == Some(StopAcid::Acetic))
        .unwrap();
    let strength = acetic.dilutions[0].acid_mmol_per_litre.unwrap();
    same(
        "1.5 % of acetic acid, mmol/L",
        strength,
        250,
        COMMON_PRACTICE,
    );
    let bath = StopBath::new(StopAcid::Acetic, 0.25).unwrap();
    let ph = bath.ph_with(0.0).unwrap();
    assert!(
        (ph - 2.68).abs() < 0.01,
        "pH {ph} fresh, 2.68 by the charge balance with pKa 4.76"
    );
    // 192.12 g/mol from the standard atomic weights: 78 mmol are 15.0 g.
    let citric = all
        .iter()
        .find(|product| product.stop_acid == Some(StopAcid::Citric))
        .unwrap();
    let strength = citric.dilutions[0].acid_mmol_per_litre.unwrap();
    same(
        "1.5 % of citric acid, mg/L",
        strength * 19_212 / 100,
        14_985,
        FROM_MEMORY,
    );
}
