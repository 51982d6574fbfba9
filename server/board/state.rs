//! What stands in each tray now, and how good it is.

use time::OffsetDateTime;

use crate::bench::{self, Line, Tray};
use crate::clock::micros;
use crate::darkroom::age::Age;
use crate::darkroom::quantities::{Microlitres, Moment, Nanolitres, Ppb, Seconds};
use crate::darkroom::state::{MixState, Thresholds, TrayState};
use crate::darkroom::verdict::{self, Judgement};
use crate::darkroom::wear::Charge;
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::mixes::{self, Mix};

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
    test_first_ppb: i64,
) -> Result<Vec<LineNow>> {
    let lines = bench::lines(tx).await?;
    let trays = bench::trays(tx).await?;
    let mut mixes = mixes::standing(tx).await?;
    let mut standing = Vec::new();
    for tray in trays.into_iter().filter(|tray| !tray.is_retired) {
        let place = mixes.iter().position(|mix| mix.tray_id == Some(tray.id));
        let mix = place.map(|place| mixes.swap_remove(place));
        standing.push(judged(tray, mix, now, test_first_ppb)?);
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

/// Judges what stands in a tray.
///
/// # Errors
/// A fault: figures in the database that no arithmetic holds.
pub fn judged(
    tray: Tray,
    mix: Option<Mix>,
    now: OffsetDateTime,
    test_first_ppb: i64,
) -> Result<TrayNow> {
    let state = match &mix {
        None => TrayState::Empty,
        Some(mix) => TrayState::Mix(Box::new(mix_state(mix, test_first_ppb)?)),
    };
    let judgement = verdict::judge(&state, at(now)).map_err(Error::fault)?;
    Ok(TrayNow {
        tray,
        mix,
        judgement,
    })
}

fn mix_state(mix: &Mix, test_first_ppb: i64) -> Result<MixState> {
    let charge = Charge {
        charged: Microlitres::new(mix.charged_ul).map_err(Error::fault)?,
        spent: Nanolitres::new(mix.spent_nl).map_err(Error::fault)?,
    };
    let used = Ppb::new(mix.age_ppb).map_err(Error::fault)?;
    let life = Seconds::new(mix.life_s).map_err(Error::fault)?;
    Ok(MixState {
        charge: mix.has_capacity.then_some(charge),
        age: Some(Age::new(used, at(mix.age_at), life).map_err(Error::fault)?),
        unknown_sheets: mix.unknown_sheets_at.map(at),
        thresholds: Thresholds {
            test_first_ppb: Ppb::new(test_first_ppb).map_err(Error::fault)?,
            ..Thresholds::default()
        },
        ..MixState::default()
    })
}

fn at(moment: OffsetDateTime) -> Moment {
    Moment::new(micros(moment))
}
