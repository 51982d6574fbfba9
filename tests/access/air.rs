//! The air of the house's cellar: known, measured, agreed on, and being let in.

use uuid::Uuid;
use wetside::air::actions::{
    NewAir, NewAiring, NewMeasurement, NewWaiver, air, measure, set_air, set_waiver,
};
use wetside::air::{Air, ExhaustRule, FlowOf};
use wetside::rights::{KeepAir, NoteAiring};

use crate::harness::{Stage, new_key};

/// Sets and measures the air of a space, and answers the measurement.
pub(super) async fn measured(stage: &Stage, place_id: Uuid) -> Uuid {
    let app = &stage.installation.app;
    let permit = stage.permit::<KeepAir>(&stage.cast.steward).await.unwrap();
    let new = NewAir {
        place_id,
        air: Air {
            floor_hundredths_mm2: Some(2_000_000_000),
            height_tenths_mm: Some(26_000),
            mixing_tenths: 30,
            rule: ExhaustRule::Imc2018,
            own_ul_per_s: None,
            basis: String::new(),
            has_fan: true,
        },
    };
    set_air(app, &permit, new_key(), new).await.unwrap();
    let new = NewWaiver {
        place_id,
        agreed_by: Some("The district safety engineer".to_owned()),
    };
    set_waiver(app, &permit, new_key(), new).await.unwrap();
    let new = NewMeasurement {
        place_id,
        of: FlowOf::Exhaust,
        ul_per_s: 80_000_000,
        measured_on: "2026-11-20".to_owned(),
        measured_by: String::new(),
        how: "Vane anemometer at the grille".to_owned(),
    };
    let done = measure(app, &permit, new_key(), new).await;
    done.unwrap().id("flow_measurement").unwrap()
}

/// A space that is being aired.
pub(super) async fn aired(stage: &Stage, aired_place_id: Uuid) -> Uuid {
    let permit = stage.permit::<NoteAiring>(&stage.cast.member).await;
    let new = NewAiring {
        aired_place_id,
        seconds: None,
        happened_at_us: None,
    };
    let app = &stage.installation.app;
    let done = air(app, &permit.unwrap(), new_key(), new).await;
    done.unwrap().id("airing").unwrap()
}
