//! What the book of the tests says of the room itself: its checks, its lamps, its air, and
//! what was off.

use uuid::Uuid;
use wetside::air::{
    Air, AirSet, Aired, AiringBegan, AiringEnded, ExhaustRule, ExhaustWaiverSet, FlowMeasured,
    FlowOf, FlowTakenBack,
};
use wetside::checks::{Measure, RoomCheckSet, RoomCheckTakenBack, RoomChecked};
use wetside::error::Result;
use wetside::lamps::{FogTestTakenBack, FogTested, Hanging, LampKind, LampSet};
use wetside::logbook::Book;
use wetside::outages::{OutageBegan, OutageEnded, What};

/// A check that passed and one that failed, by mistake.
pub(super) async fn checks(book: &mut Book<'_>) -> Result<()> {
    for has_passed in [true, false] {
        let check = RoomCheckSet {
            id: book.new_id(),
            name: format!("A fan that runs: {has_passed}"),
            how: "Hold the meter to the grille".to_owned(),
            every_days: 7,
            basis: "invented for this test".to_owned(),
            on_failure: "Open the door".to_owned(),
            is_on_board: true,
            space_id: None,
            measure: Some(Measure {
                unit: "L/s".to_owned(),
                least_thousandths: Some(50_000),
                most_thousandths: Some(90_000),
            }),
            first_due_on: "2026-11-25".to_owned(),
            is_retired: false,
        };
        book.append(&check).await?;
        let found = RoomChecked {
            result_id: book.new_id(),
            room_check_id: check.id,
            has_passed,
            remark: "Felt so".to_owned(),
            measured_thousandths: Some(60_000),
            measure: check.measure,
            due_on: "2026-12-02".to_owned(),
        };
        let result_seq = book.append(&found).await?;
        if !has_passed {
            let back = RoomCheckTakenBack {
                result_id: found.result_id,
                result_seq,
                room_check_id: check.id,
                reason: "Another fan".to_owned(),
            };
            book.append(&back).await?;
        }
    }
    Ok(())
}

/// A lamp and a screen, each tested; one test was a mistake.
pub(super) async fn lamps(book: &mut Book<'_>, paper_class_id: Uuid) -> Result<()> {
    for kind in LampKind::ALL {
        let lamp = LampSet {
            id: book.new_id(),
            name: format!("A {}", kind.as_str()),
            hangs: Hanging {
                kind,
                light: "Red filter".to_owned(),
                distance_tenths_mm: 12_000,
                space_id: None,
            },
            test_months: 12,
            is_retired: false,
        };
        book.append(&lamp).await?;
        let test = FogTested {
            rules: wetside::lamps::RULES,
            fog_test_id: book.new_id(),
            lamp_id: lamp.id,
            paper_class_id,
            hangs: lamp.hangs,
            clean_s: Some(240),
            fogged_s: Some(480),
            // Half of √(240 · 480) s is 169.7 s.
            safe_s: Some(169),
            again_by: "2027-11-25".to_owned(),
        };
        let fog_test_seq = book.append(&test).await?;
        if kind == LampKind::Screen {
            let back = FogTestTakenBack {
                fog_test_id: test.fog_test_id,
                fog_test_seq,
                lamp_id: lamp.id,
                reason: "Another screen".to_owned(),
            };
            book.append(&back).await?;
        }
    }
    Ok(())
}

/// The air of the room itself: known by a figure of its own, measured twice, once by
/// mistake, agreed on, aired and being aired.
pub(super) async fn air(book: &mut Book<'_>, space: Uuid) -> Result<()> {
    let space_id = None;
    let air = Air {
        floor_hundredths_mm2: Some(2_000_000_000),
        height_tenths_mm: Some(26_000),
        mixing_tenths: 30,
        rule: ExhaustRule::Own,
        own_ul_per_s: Some(60_000_000),
        basis: "Building permit".to_owned(),
        has_fan: true,
    };
    book.append(&AirSet { space_id, air }).await?;
    for of in FlowOf::ALL {
        let measured = FlowMeasured {
            flow_measurement_id: book.new_id(),
            space_id,
            of,
            ul_per_s: 80_000_000,
            measured_on: "2026-11-20".to_owned(),
            measured_by: "The chimney sweep".to_owned(),
            how: "At the grille".to_owned(),
        };
        let flow_measurement_seq = book.append(&measured).await?;
        if of == FlowOf::Airing {
            let back = FlowTakenBack {
                flow_measurement_id: measured.flow_measurement_id,
                flow_measurement_seq,
                space_id,
                reason: "Another door".to_owned(),
            };
            book.append(&back).await?;
        }
    }
    let waiver = ExhaustWaiverSet {
        space_id,
        agreed_by: Some("The district safety engineer".to_owned()),
    };
    book.append(&waiver).await?;
    airings(book, space).await
}

/// The room itself was aired twice; a space is being aired.
async fn airings(book: &mut Book<'_>, space: Uuid) -> Result<()> {
    let space_id = None;
    let aired = Aired {
        airing_id: book.new_id(),
        space_id,
        seconds: 120,
    };
    book.append(&aired).await?;
    // A place is aired once at a time.
    for space_id in [None, Some(space)] {
        let airing_id = book.new_id();
        let began = AiringBegan {
            airing_id,
            space_id,
        };
        book.append(&began).await?;
        if space_id.is_none() {
            let ended = AiringEnded {
                airing_id,
                space_id,
            };
            book.append(&ended).await?;
        }
    }
    Ok(())
}

/// The fan was off, and the power is.
pub(super) async fn outages(book: &mut Book<'_>) -> Result<()> {
    for what in [What::Fan, What::Power] {
        let began = OutageBegan {
            outage_id: book.new_id(),
            what,
            space_id: None,
        };
        book.append(&began).await?;
        if what == What::Fan {
            let ended = OutageEnded {
                outage_id: began.outage_id,
                what,
                space_id: None,
            };
            book.append(&ended).await?;
        }
    }
    Ok(())
}
