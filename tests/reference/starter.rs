//! A neutral liquid paper developer as printers know it. Every figure: common
//! practice, no source.

use wetside::darkroom::age::Age;
use wetside::darkroom::dilution::{Dilution, parts_for_volume, volume_from_concentrate};
use wetside::darkroom::quantities::{Area, Microlitres, Moment, Nanolitres, Ppb, Seconds};
use wetside::darkroom::sheet::sheet_equivalents;
use wetside::darkroom::state::{MixState, TrayState};
use wetside::darkroom::verdict::{Verdict, judge};
use wetside::darkroom::wear::{Charge, SheetsPerLitre, wear_of};

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
fn a_litre_takes_its_capacity_and_is_then_replaced() {
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
fn a_litre_of_concentrate_serves_a_thousand_sheets() {
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
fn half_a_litre_is_a_usual_fill() {
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
fn an_open_tray_lasts_a_working_day_and_is_dead_by_morning() {
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
fn an_evening_in_the_tray_counts_when_it_is_bottled() {
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
fn in_a_small_room_a_developer_dies_of_age_before_its_capacity() {
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
fn capacity_is_counted_in_sheets_of_8x10() {
    let four = Area::new(Area::SHEET_8X10.get() * 4).unwrap();
    let equivalents = sheet_equivalents(25, four).unwrap().get();
    same(
        "25 sheets of 16×20 in",
        equivalents,
        100_000_000,
        "1 in = 25.4 mm exactly; by area",
    );
}
