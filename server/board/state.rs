//! What stands in each tray now, and how good it is.

use time::OffsetDateTime;

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

/// Every line in use, with its trays in use.
///
/// # Errors
/// The database's.
pub async fn lines_now(
    tx: &mut RoomTx,
    now: OffsetDateTime,
    settings: &Settings,
) -> Result<Vec<LineNow>> {
    let lines = bench::lines(tx).await?;
    let trays = bench::trays(tx).await?;
    let mut mixes = mixes::standing(tx).await?;
    let findings = Findings::of(tx, &mixes).await?;
    let mut standing = Vec::new();
    for tray in trays.into_iter().filter(|tray| !tray.is_retired) {
        let place = mixes
            .iter()
            .position(|mix| mix.stand.tray_id == Some(tray.id));
        let mix = place.map(|place| mixes.swap_remove(place));
        standing.push(judged(tray, mix, &findings, settings, now)?);
    }
    Ok(lines
        .into_iter()
        .filter(|line| !line.is_retired)
        .map(|line| LineNow {
            trays: standing
                .iter()
                .filter(|each| each.tray.line_id == line.id)
                .cloned()
                .collect(),
            line,
        })
        .collect())
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
