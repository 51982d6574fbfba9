//! A check of the house, done once.

use uuid::Uuid;
use wetside::checks::actions::{NewCheck, NewResult, record, set_check};
use wetside::rights::{KeepChecks, RecordCheck};

use crate::harness::{Stage, new_key};

/// The eyewash.
pub(super) async fn check(stage: &Stage) -> Uuid {
    let permit = stage.permit::<KeepChecks>(&stage.cast.steward).await;
    let new = NewCheck {
        id: None,
        name: "Eyewash".to_owned(),
        how: "Let it run".to_owned(),
        every_days: 7,
        basis: "invented for this test".to_owned(),
        on_failure: "Pour nothing".to_owned(),
        is_on_board: true,
        space_id: None,
        measure: None,
        is_retired: false,
    };
    let app = &stage.installation.app;
    let set = set_check(app, &permit.unwrap(), new_key(), new).await;
    set.unwrap().id("room_check").unwrap()
}

/// It ran.
pub(super) async fn check_result(stage: &Stage, room_check_id: Uuid) -> Uuid {
    let permit = stage.permit::<RecordCheck>(&stage.cast.member).await;
    let new = NewResult {
        room_check_id,
        has_passed: true,
        measured_thousandths: None,
        remark: String::new(),
        happened_at_us: None,
    };
    let app = &stage.installation.app;
    let recorded = record(app, &permit.unwrap(), new_key(), new).await;
    recorded.unwrap().id("room_check_result").unwrap()
}
