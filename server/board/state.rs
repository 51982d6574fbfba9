//! What stands in each tray now, and how good it is.

use time::OffsetDateTime;

use crate::bench::bottles::{self, Bottle};
use crate::bench::spaces::{self, Space};
use crate::bench::{self, Line, Tray};
use crate::darkroom::verdict::Judgement;
use crate::database::RoomTx;
use crate::error::Result;
use crate::mixes::{self, Findings, Mix};
use crate::rooms::Settings;

/// A line and its trays in the order prints travel.
#[derive(Clone, Debug)]
pub struct LineNow {
    /// The line.
    pub line: Line,
    /// The space it stands in; nothing where the room has one only.
    pub space: Option<String>,
    /// Its trays.
    pub trays: Vec<TrayNow>,
}

/// A tray, what stands in it and how good that is.
#[derive(Clone, Debug)]
pub struct TrayNow {
    /// The tray.
    pub tray: Tray,
    /// The mix in it.
    pub mix: Option<Mix>,
    /// The verdict.
    pub judgement: Judgement,
}

/// A bottle that holds something, and how good that is.
#[derive(Clone, Debug)]
pub struct BottleNow {
    /// The bottle.
    pub bottle: Bottle,
    /// The mix in it.
    pub mix: Mix,
    /// The verdict.
    pub judgement: Judgement,
}

/// All that stands anywhere in the room.
#[derive(Clone, Debug)]
pub struct BenchNow {
    /// Every line in use, with its trays in use.
    pub lines: Vec<LineNow>,
    /// Every bottle that holds something, by its name.
    pub bottles: Vec<BottleNow>,
}

/// Every line in use, with its trays in use.
///
/// # Errors
/// The database's.
pub async fn lines_now(
    tx: &mut RoomTx,
    now: OffsetDateTime,
    settings: &Settings,
) -> Result<Vec<LineNow>> {
    Ok(bench_now(tx, now, settings).await?.lines)
}

/// Lines with their trays, and the bottles that hold something.
///
/// # Errors
/// The database's.
pub async fn bench_now(
    tx: &mut RoomTx,
    now: OffsetDateTime,
    settings: &Settings,
) -> Result<BenchNow> {
    let lines = bench::lines(tx).await?;
    let trays = bench::trays(tx).await?;
    let mut found = mixes::standing(tx).await?;
    let findings = Findings::of(tx, &found).await?;
    let mut standing = Vec::new();
    for tray in trays.into_iter().filter(|tray| !tray.is_retired) {
        let place = found
            .iter()
            .position(|mix| mix.stand.tray_id == Some(tray.id));
        let mix = place.map(|place| found.swap_remove(place));
        standing.push(judged(tray, mix, &findings, settings, now)?);
    }
    let mut in_bottles = Vec::new();
    if found.iter().any(|mix| mix.stand.bottle_id.is_some()) {
        for bottle in bottles::bottles(tx).await? {
            let holds = |mix: &&Mix| mix.stand.bottle_id == Some(bottle.id);
            if let Some(mix) = found.iter().find(holds) {
                in_bottles.push(BottleNow {
                    judgement: mixes::judge(Some(mix), &findings, settings, now)?,
                    mix: mix.clone(),
                    bottle,
                });
            }
        }
    }
    Ok(BenchNow {
        lines: by_line(lines, &standing, &spaces::spaces(tx).await?),
        bottles: in_bottles,
    })
}

/// The lines in use, space by space: first those of the room itself.
fn by_line(lines: Vec<Line>, standing: &[TrayNow], spaces: &[Space]) -> Vec<LineNow> {
    let place = |line: &Line| {
        spaces
            .iter()
            .position(|space| Some(space.id) == line.space_id)
    };
    let space = |line: &Line| spaces.iter().find(|space| Some(space.id) == line.space_id);
    let mut in_use: Vec<Line> = lines.into_iter().filter(|line| !line.is_retired).collect();
    in_use.sort_by_key(place);
    in_use
        .into_iter()
        .map(|line| LineNow {
            space: space(&line).map(|space| space.name.clone()),
            trays: standing
                .iter()
                .filter(|each| each.tray.line_id == line.id)
                .cloned()
                .collect(),
            line,
        })
        .collect()
}

/// One tray, what stands in it, and how good that is.
///
/// # Errors
/// The database's.
pub async fn tray_now(
    tx: &mut RoomTx,
    tray: Tray,
    settings: &Settings,
    now: OffsetDateTime,
) -> Result<TrayNow> {
    let mix = mixes::in_vessel(tx, tray.id).await?;
    let findings = Findings::of(tx, mix.as_slice()).await?;
    judged(tray, mix, &findings, settings, now)
}

fn judged(
    tray: Tray,
    mix: Option<Mix>,
    findings: &Findings,
    settings: &Settings,
    now: OffsetDateTime,
) -> Result<TrayNow> {
    Ok(TrayNow {
        judgement: mixes::judge(mix.as_ref(), findings, settings, now)?,
        tray,
        mix,
    })
}
