//! The demo's air: a fan that takes out as much as is wanted, one that falls short, and
//! a room without any, which is aired. The figures are invented.

use uuid::Uuid;

use super::missing;
use super::people::{OTTILIE, Who};
use super::stage::Stage;
use crate::air::actions::{
    AiringOver, NewAir, NewAiring, NewMeasurement, NewWaiver, UndoMeasurement, air, end_airing,
    measure, set_air, set_waiver, take_back,
};
use crate::air::input::MIXING_TENTHS;
use crate::air::{Air, AirNow, ExhaustRule, FlowOf, air_now};
use crate::bench::spaces::actions::{NewSpace, set_space};
use crate::error::Result;
use crate::web::dates::Zone;

/// Where prints are dried and mounted: it has no fan and no trays.
const FINISHING: &str = "Finishing room";

/// A floor and a height, and by which rule exhaust is wanted.
type Size = (i64, i32, ExhaustRule);

/// 31.5 m² by 2.7 m.
const MAIN: Size = (3_150_000_000, 27_000, ExhaustRule::Imc2018);
/// 14 m² by 2.5 m.
const BACK: Size = (1_400_000_000, 25_000, ExhaustRule::Imc2018);
/// 11 m² by 2.5 m.
const DRY: Size = (1_100_000_000, 25_000, ExhaustRule::Ashrae621);

/// The steward writes down what is known, and what was measured.
pub(super) async fn set_up(stage: &mut Stage) -> Result<()> {
    let new = NewSpace {
        id: None,
        name: FINISHING.to_owned(),
        position: None,
        is_retired: false,
    };
    let dry = stage.act(OTTILIE, set_space, new).await?.id("space")?;
    let places = places(stage).await?;
    let mut others = places.iter().filter(|each| each.place.id != dry);
    let main = others.next().ok_or_else(|| missing("room"))?.place.id;
    let back = others.next().ok_or_else(|| missing("back room"))?.place.id;
    for (place, size, has_fan) in [(main, MAIN, true), (back, BACK, true), (dry, DRY, false)] {
        sets(stage, place, size, has_fan).await?;
    }
    flows(stage, main, FlowOf::Exhaust, 172_000_000).await?;
    let mistaken = flows(stage, back, FlowOf::Exhaust, 580_000_000).await?;
    let undo = UndoMeasurement {
        flow_measurement_id: mistaken,
        reason: "A digit too many".to_owned(),
    };
    stage.act(OTTILIE, take_back, undo).await?;
    flows(stage, back, FlowOf::Exhaust, 58_000_000).await?;
    flows(stage, dry, FlowOf::Airing, 46_000_000).await?;
    for agreed_by in [Some("The safety engineer of the house".to_owned()), None] {
        let new = NewWaiver {
            place_id: dry,
            agreed_by,
        };
        stage.act(OTTILIE, set_waiver, new).await?;
    }
    Ok(())
}

async fn places(stage: &Stage) -> Result<Vec<AirNow>> {
    let now = stage.now();
    stage.reads(move |tx| Box::pin(air_now(tx, now))).await
}

async fn sets(
    stage: &mut Stage,
    place_id: Uuid,
    (floor, height, rule): Size,
    has_fan: bool,
) -> Result<()> {
    let air = Air {
        floor_hundredths_mm2: Some(floor),
        height_tenths_mm: Some(height),
        mixing_tenths: MIXING_TENTHS,
        rule,
        own_ul_per_s: None,
        basis: String::new(),
        has_fan,
    };
    stage
        .act(OTTILIE, set_air, NewAir { place_id, air })
        .await?;
    Ok(())
}

async fn flows(stage: &mut Stage, place_id: Uuid, of: FlowOf, ul_per_s: i64) -> Result<Uuid> {
    let how = match of {
        FlowOf::Exhaust => "Vane anemometer at the grille, nine points",
        FlowOf::Airing => "Vane anemometer in the open window, nine points",
    };
    let new = NewMeasurement {
        place_id,
        of,
        ul_per_s,
        measured_on: Zone::utc().date_value(stage.now()),
        measured_by: String::new(),
        how: how.to_owned(),
    };
    let done = stage.act(OTTILIE, measure, new).await?;
    done.id("flow_measurement")
}

/// The room without a fan, as it is now.
async fn finishing(stage: &Stage) -> Result<AirNow> {
    let mut places = places(stage).await?.into_iter();
    let found = places.find(|each| each.place.name.as_deref() == Some(FINISHING));
    found.ok_or_else(|| missing("finishing room"))
}

/// Somebody opens the window there, or says that it stood open for so long.
pub(super) async fn airs(stage: &mut Stage, who: Who, seconds: Option<i64>) -> Result<()> {
    let new = NewAiring {
        aired_place_id: finishing(stage).await?.place.id,
        seconds,
        happened_at_us: None,
    };
    stage.act(who, air, new).await?;
    Ok(())
}

/// Somebody closes it.
pub(super) async fn airs_no_more(stage: &mut Stage, who: Who) -> Result<()> {
    let airing = finishing(stage).await?.aired_now;
    let over = AiringOver {
        ended_airing_id: airing.ok_or_else(|| missing("airing"))?.id,
        happened_at_us: None,
    };
    stage.act(who, end_airing, over).await?;
    Ok(())
}
