//! A lamp of the house, tested once.

use uuid::Uuid;
use wetside::lamps::actions::{NewFogTest, NewLamp, set_lamp, test_lamp};
use wetside::lamps::{Hanging, LampKind};
use wetside::rights::{KeepLamps, TestLamps};

use crate::harness::{Stage, new_key};

/// A lamp over the sink.
pub(super) async fn lamp(stage: &Stage) -> Uuid {
    let permit = stage.permit::<KeepLamps>(&stage.cast.steward).await;
    let new = NewLamp {
        id: None,
        name: "Red lamp".to_owned(),
        hangs: Hanging {
            kind: LampKind::Safelight,
            light: String::new(),
            distance_tenths_mm: 12_000,
            space_id: None,
        },
        test_months: 12,
        is_retired: false,
    };
    let app = &stage.installation.app;
    let set = set_lamp(app, &permit.unwrap(), new_key(), new).await;
    set.unwrap().id("lamp").unwrap()
}

/// A test of it with one of the papers.
pub(super) async fn fog_test(stage: &Stage, lamp_id: Uuid, paper_class_id: Uuid) -> Uuid {
    let permit = stage.permit::<TestLamps>(&stage.cast.member).await;
    let new = NewFogTest {
        lamp_id,
        paper_class_id,
        clean_s: Some(240),
        fogged_s: Some(480),
        happened_at_us: None,
    };
    let app = &stage.installation.app;
    let tested = test_lamp(app, &permit.unwrap(), new_key(), new).await;
    tested.unwrap().id("fog_test").unwrap()
}
