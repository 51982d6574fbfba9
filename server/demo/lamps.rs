//! The demo's lamps: one tested with every paper, one with a paper that nobody tested
//! it with, and a screen that hangs nearer than it was tested. The figures are invented.

use uuid::Uuid;

use super::people::OTTILIE;
use super::stage::Stage;
use crate::error::Result;
use crate::lamps::actions::{NewFogTest, NewLamp, UndoFogTest, set_lamp, take_back, test_lamp};
use crate::lamps::input::TEST_MONTHS;
use crate::lamps::{Hanging, LampKind};
use crate::papers;

/// The longest clean and the first fogged step of a paper, in seconds.
type Steps = (i64, Option<i64>);

/// What the lamp over the sink did to each paper, by turns.
const SINK: [Steps; 3] = [(240, Some(480)), (360, Some(720)), (240, None)];
/// What the lamp by the door did.
const DOOR: [Steps; 2] = [(480, Some(960)), (720, None)];

/// Hangs the lamps and tests them.
pub(super) async fn hang(stage: &mut Stage) -> Result<()> {
    let classes = stage
        .reads(|tx| Box::pin(papers::paper_classes(tx)))
        .await?;
    let classes: Vec<Uuid> = classes.into_iter().map(|class| class.id).collect();
    let sink = lamp("Red lamp over the sink", "15 W behind a red filter", 12_000);
    let sink = set(stage, sink).await?;
    let door = lamp(
        "Amber lamp by the door",
        "25 W behind an amber filter",
        18_000,
    );
    let door = set(stage, door).await?;
    let screen = screen(7_000);
    let wall = set(stage, screen.clone()).await?;
    for (class, steps) in classes.iter().zip(SINK.into_iter().cycle()) {
        test(stage, sink, *class, steps).await?;
    }
    for (class, steps) in classes.iter().skip(1).zip(DOOR.into_iter().cycle()) {
        test(stage, door, *class, steps).await?;
    }
    for class in &classes {
        let first = test(stage, wall, *class, (480, Some(960))).await?;
        if Some(class) == classes.last() {
            let undo = UndoFogTest {
                fog_test_id: first,
                reason: "The screen had dimmed itself half way".to_owned(),
            };
            stage.act(OTTILIE, take_back, undo).await?;
        }
    }
    let nearer = NewLamp {
        id: Some(wall),
        hangs: Hanging {
            distance_tenths_mm: 4_500,
            ..screen.hangs.clone()
        },
        ..screen
    };
    set(stage, nearer).await?;
    Ok(())
}

fn lamp(name: &str, light: &str, distance_tenths_mm: i32) -> NewLamp {
    NewLamp {
        id: None,
        name: name.to_owned(),
        hangs: Hanging {
            kind: LampKind::Safelight,
            light: light.to_owned(),
            distance_tenths_mm,
            space_id: None,
        },
        test_months: TEST_MONTHS,
        is_retired: false,
    }
}

fn screen(distance_tenths_mm: i32) -> NewLamp {
    let lamp = lamp("Wall screen", "Lowest brightness", distance_tenths_mm);
    NewLamp {
        hangs: Hanging {
            kind: LampKind::Screen,
            ..lamp.hangs
        },
        ..lamp
    }
}

async fn set(stage: &mut Stage, new: NewLamp) -> Result<Uuid> {
    stage.act(OTTILIE, set_lamp, new).await?.id("lamp")
}

async fn test(
    stage: &mut Stage,
    lamp_id: Uuid,
    paper_class_id: Uuid,
    (clean_s, fogged_s): Steps,
) -> Result<Uuid> {
    let new = NewFogTest {
        lamp_id,
        paper_class_id,
        clean_s: Some(clean_s),
        fogged_s,
        happened_at_us: None,
    };
    stage.act(OTTILIE, test_lamp, new).await?.id("fog_test")
}
