//! Room air: clearing, exhaust, and the units of flow.

use wetside::darkroom::air::{
    ASHRAE_62_1_PER_M2, Cleared, Exhaust, IMC_2018_PER_M2, MixingFactor, air_changes,
    average_air_changes, clearing_time, exhaust_wanted, judge_exhaust, space_volume,
};
use wetside::darkroom::quantities::{Area, Flow, Microlitres, Seconds, TenthsMm, Thousandths};
use wetside::darkroom::units::{
    AreaUnit, FlowUnit, area_of_unit, flow_in_unit_thousandths, flow_of_unit,
};

use super::{COMMON_PRACTICE, near, same};

const CDC: &str = "CDC, Guidelines for Environmental Infection Control 2003, Table B.1";
const IMC: &str = "International Mechanical Code 2018, Table 403.3.1.1";
const EXACT: &str = "1 ft = 0.3048 m exactly: international yard and pound agreement of 1959";

fn perfect() -> MixingFactor {
    MixingFactor::new(10).unwrap()
}

/// A space of 3.6 m³: so many litres a second are so many changes an hour.
fn changing(times: u32) -> (Flow, Microlitres) {
    let flow = Flow::of(times * 1_000_000);
    (flow, Microlitres::new(3_600_000_000).unwrap())
}

/// Air changes an hour, and minutes until 90, 99 and 99.9 % have gone.
const TABLE: [(u32, [i64; 3]); 8] = [
    (2, [69, 138, 207]),
    (4, [35, 69, 104]),
    (6, [23, 46, 69]),
    (8, [17, 35, 52]),
    (10, [14, 28, 41]),
    (12, [12, 23, 35]),
    (15, [9, 18, 28]),
    (20, [7, 14, 21]),
];

#[test]
pub(super) fn every_row_of_the_clearing_table() {
    for (times, minutes) in TABLE {
        let (flow, volume) = changing(times);
        let changes = air_changes(flow, volume).unwrap().get();
        assert_eq!(changes, i64::from(times) * 1_000);
        for (cleared, minutes) in Cleared::ALL.into_iter().zip(minutes) {
            let found = clearing_time(flow, volume, cleared, perfect()).unwrap();
            // Whole minutes, to the nearest one, as they were published.
            let found = (found.get() + 30) / 60;
            let what = format!("minutes at {times} changes until {cleared:?} % have gone");
            same(&what, found, minutes, CDC);
        }
    }
}

#[test]
pub(super) fn a_misprint_is_no_row_of_the_table() {
    let (flow, volume) = changing(13);
    let found = clearing_time(flow, volume, Cleared::NinetyNinePointNine, perfect()).unwrap();
    // One reprint has 3 here.
    same(
        "minutes at 13 changes until 99.9 % have gone",
        (found.get() + 30) / 60,
        32,
        CDC,
    );
}

#[test]
pub(super) fn mixing_multiplies_the_time() {
    let (flow, volume) = changing(6);
    let time = |tenths| {
        let mixing = MixingFactor::new(tenths).unwrap();
        clearing_time(flow, volume, Cleared::Ninety, mixing).unwrap()
    };
    // Ten times 23.03 min.
    near(
        "seconds at a mixing factor of 10",
        f64::from(i32::try_from(time(100).get()).unwrap()),
        13_816.0,
        1.0,
        CDC,
    );
    same(
        "the usual mixing factor, in tenths",
        MixingFactor::USUAL.tenths(),
        30,
        "from memory",
    );
}

fn feet(count: i64) -> TenthsMm {
    TenthsMm::new(count * 3_048).unwrap()
}

#[test]
pub(super) fn exhaust_of_two_darkrooms() {
    let floor = area_of_unit(200_000, AreaUnit::SquareFoot).unwrap();
    let wanted = exhaust_wanted(floor, IMC_2018_PER_M2).unwrap();
    let cfm = flow_in_unit_thousandths(wanted, FlowUnit::CubicFootPerMinute).unwrap();
    same("thousandths of cfm for 200 ft²", cfm, 200_000, IMC);
    let changes = air_changes(wanted, space_volume(floor, feet(9)).unwrap()).unwrap();
    same("thousandths of changes in 9 ft", changes.get(), 6_667, IMC);

    let floor = Area::new(2_000_000_000).unwrap();
    let wanted = exhaust_wanted(floor, IMC_2018_PER_M2).unwrap();
    same("µl/s for 20 m²", wanted.get(), 101_600_000, IMC);
    let volume = space_volume(floor, TenthsMm::of(26_000)).unwrap();
    same("µl in 20 m² by 2.6 m", volume.get(), 52_000_000_000, EXACT);
    let changes = air_changes(wanted, volume).unwrap();
    same("thousandths of changes in 2.6 m", changes.get(), 7_034, IMC);
    let short = judge_exhaust(Some(Flow::of(80_000_000)), Some(wanted));
    same(
        "80 L/s there",
        short,
        Exhaust::Short(Flow::of(21_600_000)),
        IMC,
    );
}

#[test]
pub(super) fn a_cubic_foot_a_minute_for_a_square_foot_is_5_08() {
    let foot = area_of_unit(1_000, AreaUnit::SquareFoot).unwrap();
    let one = flow_of_unit(1_000, FlowUnit::CubicFootPerMinute).unwrap();
    same(
        "1.0 cfm for one ft², by 5.08 L/s·m²",
        exhaust_wanted(foot, IMC_2018_PER_M2).unwrap(),
        one,
        IMC,
    );
    same("µl/s of 1 cfm", one.get(), 471_947, EXACT);
    let hour = flow_of_unit(360_000, FlowUnit::CubicMetrePerHour).unwrap();
    same("µl/s of 360 m³/h", hour.get(), 100_000_000, "by definition");
    same(
        "µl/s for one m²",
        ASHRAE_62_1_PER_M2.get(),
        5_000_000,
        "ASHRAE 62.1, from memory",
    );
}

#[test]
pub(super) fn airing_every_fifteen_minutes() {
    // Two minutes of every fifteen with doors and windows open.
    let average = average_air_changes(
        Thousandths::of(15_000),
        Seconds::from_minutes(2),
        Seconds::from_minutes(15),
    );
    same(
        "15 changes for 2 min of 15",
        average.unwrap().get(),
        2_000,
        COMMON_PRACTICE,
    );
}
