//! The demo's room checks: the starters, done by whoever opens on the day they are due.
//! One week nobody thought of the eyewash, once it only dripped, and lately gloves ran
//! out. The figures are invented.

use uuid::Uuid;

use super::calendar::{Calendar, Day};
use super::draw::Draw;
use super::missing;
use super::people::{CASIMIR, OTTILIE, Someone, Who};
use super::stage::Stage;
use crate::checks::actions::{
    CopyStarters, NewCheck, NewResult, UndoResult, copy_starters, record, set_check, take_back,
};
use crate::checks::{self, CheckNow, Measure, RoomCheck};
use crate::error::Result;
use crate::rooms;

const EYEWASH: &str = "Eyewash";
const FAN: &str = "Fan flow";
const GLOVES: &str = "Gloves, goggles and tongs";
const EXTINGUISHER: &str = "Fire extinguisher";

/// The steward copies them in and sets what the fan is to move; one result is of the
/// neighbours' extinguisher.
pub(super) async fn enter(stage: &mut Stage) -> Result<()> {
    stage.act(OTTILIE, copy_starters, CopyStarters {}).await?;
    let checks = stage.reads(|tx| Box::pin(checks::room_checks(tx))).await?;
    let named = |name: &str| {
        let found = checks.iter().find(|check| check.name == name);
        found.ok_or_else(|| missing("check"))
    };
    let fan = NewCheck {
        measure: Some(Measure {
            unit: "L/s".to_owned(),
            least_thousandths: Some(110_000),
            most_thousandths: None,
        }),
        ..NewCheck::like(named(FAN)?, false)
    };
    stage.act(OTTILIE, set_check, fan).await?;
    let failed = failed(named(EXTINGUISHER)?.id, "Its pointer stands in the red.");
    let done = stage.act(OTTILIE, record, failed).await?;
    let undo = UndoResult {
        result_id: done.id("room_check_result")?,
        reason: "That was the neighbours’ one".to_owned(),
    };
    stage.act(OTTILIE, take_back, undo).await?;
    Ok(())
}

/// Whoever opens does what is due, and does again what failed.
pub(super) async fn look_round(stage: &mut Stage, calendar: &Calendar, day: &Day) -> Result<()> {
    let mut draw = Draw::of(stage.seed, "checks", day.number);
    let who = draw.one_of(&stage.those(Someone::mixes)).unwrap_or(CASIMIR);
    for now in due(stage).await? {
        if let Some(found) = finds(&now, calendar, day, &mut draw) {
            does(stage, who, found).await?;
        }
    }
    Ok(())
}

async fn due(stage: &Stage) -> Result<Vec<CheckNow>> {
    let now = stage.now();
    let all = stage.reads(move |tx| {
        Box::pin(async move {
            let zone = rooms::settings(tx).await?.time_zone()?;
            checks::checks_now(tx, &zone, now).await
        })
    });
    let mut all = all.await?;
    all.retain(CheckNow::is_to_do);
    Ok(all)
}

async fn does(stage: &mut Stage, who: Who, found: NewResult) -> Result<()> {
    stage.act(who, record, found).await?;
    Ok(())
}

/// What is found on a day; nothing where nobody does the check.
fn finds(now: &CheckNow, calendar: &Calendar, day: &Day, draw: &mut Draw) -> Option<NewResult> {
    let is_within_a_week_of = |thousandths: i64| {
        let first = calendar.due(thousandths);
        (first..first + 7).contains(&day.number)
    };
    let (check, is_mended) = (&now.check, now.has_failed());
    match check.name.as_str() {
        EYEWASH if is_within_a_week_of(400) => None,
        EYEWASH if is_within_a_week_of(800) && !is_mended => {
            Some(failed(check.id, "The left stream only drips."))
        }
        // They are ordered, and have not come yet.
        GLOVES if is_mended => None,
        GLOVES if calendar.after(day) < 14 => {
            Some(failed(check.id, "No gloves of the small size are left."))
        }
        _ => Some(passed(check, is_mended, draw)),
    }
}

fn passed(check: &RoomCheck, is_mended: bool, draw: &mut Draw) -> NewResult {
    let measured = check
        .measure
        .as_ref()
        .map(|_| draw.between(118, 131) * 1_000);
    let remark = if is_mended {
        "The valve was descaled"
    } else {
        ""
    };
    NewResult {
        room_check_id: check.id,
        has_passed: true,
        measured_thousandths: measured,
        remark: remark.to_owned(),
        happened_at_us: None,
    }
}

fn failed(room_check_id: Uuid, remark: &str) -> NewResult {
    NewResult {
        room_check_id,
        has_passed: false,
        measured_thousandths: None,
        remark: remark.to_owned(),
        happened_at_us: None,
    }
}
