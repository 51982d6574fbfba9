//! What prints bring into the baths and take out of them: silver and bromide,
//! alkali, and the solution that clings to them. Estimates, each where the room
//! and the paper state what it needs, and nothing otherwise.

use std::collections::HashMap;

use uuid::Uuid;

use super::Brought;
use super::compose::store::Stood;
use crate::darkroom::quantities::{Area, Micrograms, Microlitres, Ppb};
use crate::darkroom::replenishment::{bromide_released, silver_developed};
use crate::darkroom::silver::{
    SilverBath, SilverPair, pass_one_bath, pass_two_baths, silver_dissolved, silver_from_rolls,
};
use crate::darkroom::stop_bath::{alkali_carried, carried_over};
use crate::error::{Error, Result};
use crate::mixes::Figures;
use crate::papers::SilverFigures;
use crate::products::{Kind, Place};

/// What a pass is, as far as it brings anything.
pub(super) struct Pass<'p> {
    pub(super) load: Load,
    pub(super) silver: Option<&'p SilverFigures>,
    pub(super) carry_over_ul_per_m2: Option<i64>,
    pub(super) alkali_meq_per_litre: Option<i32>,
    pub(super) second_bath_ppb: i64,
}

/// What goes down the line.
pub(super) enum Load {
    /// So many sheets of this area.
    Sheets(u32, Area),
    /// So many rolls with so much silver each, in milligrams, and the share kept.
    Rolls(u32, Option<(i64, i64)>),
}

/// The silver of the baths as it grows through the notes of one transaction.
#[derive(Default)]
pub(super) struct Running(HashMap<Uuid, [i64; 3]>);

impl Running {
    fn silver(&self, bath: &Stood) -> [i64; 3] {
        self.0.get(&bath.mix_id).copied().unwrap_or(bath.silver_ug)
    }
}

/// What a pass brings into each of the baths it went through, in their order.
///
/// # Errors
/// Figures that no arithmetic holds.
pub(super) fn brought(
    pass: &Pass<'_>,
    baths: &[&Stood],
    running: &mut Running,
) -> Result<Vec<Option<Brought>>> {
    let carried = pass.carried()?;
    let mut all = vec![Brought::default(); baths.len()];
    if let Some(carried) = carried {
        for (place, bath) in all.iter_mut().enumerate() {
            match place {
                0 => bath.carried_out_ul = carried.get(),
                _ => bath.received_ul = carried.get(),
            }
        }
        neutralise(pass, baths, carried, &mut all)?;
    }
    release_bromide(pass, baths, &mut all)?;
    dissolve(
        pass,
        baths,
        carried.unwrap_or(Microlitres::ZERO),
        running,
        &mut all,
    )?;
    let is_something = |each: Brought| (each != Brought::default()).then_some(each);
    Ok(all.into_iter().map(is_something).collect())
}

impl Pass<'_> {
    fn carried(&self) -> Result<Option<Microlitres>> {
        let (Load::Sheets(sheets, area), Some(each)) = (&self.load, self.carry_over_ul_per_m2)
        else {
            return Ok(None);
        };
        let each = Microlitres::new(each).map_err(Error::fault)?;
        let carried = carried_over(*sheets, *area, each).map_err(Error::fault)?;
        Ok(Some(carried))
    }

    /// The silver this pass leaves in the fixer: least, usual, most.
    fn dissolved(&self) -> Result<Option<[Micrograms; 3]>> {
        match (&self.load, self.silver) {
            (Load::Sheets(sheets, area), Some(silver)) => {
                let of = |coating: i64, kept: i64| {
                    let coating = u32::try_from(coating).map_err(Error::fault)?;
                    let kept = Ppb::new(kept).map_err(Error::fault)?;
                    silver_dissolved(*sheets, *area, coating, kept).map_err(Error::fault)
                };
                Ok(Some([
                    of(silver.least_mg_per_m2, silver.most_kept_ppb)?,
                    of(silver.usual_mg_per_m2, silver.usual_kept_ppb)?,
                    of(silver.most_mg_per_m2, silver.least_kept_ppb)?,
                ]))
            }
            (Load::Rolls(rolls, Some((milligrams, kept))), _) => {
                let each =
                    Micrograms::new(milligrams.saturating_mul(1_000)).map_err(Error::fault)?;
                let kept = Ppb::new(*kept).map_err(Error::fault)?;
                let all = silver_from_rolls(*rolls, each, kept).map_err(Error::fault)?;
                Ok(Some([all; 3]))
            }
            _ => Ok(None),
        }
    }
}

/// Developer clings to the prints that reach the stop bath.
fn neutralise(
    pass: &Pass<'_>,
    baths: &[&Stood],
    carried: Microlitres,
    all: &mut [Brought],
) -> Result<()> {
    let Some(alkali) = pass.alkali_meq_per_litre else {
        return Ok(());
    };
    let strength = u32::try_from(alkali).map_err(Error::fault)?;
    for (bath, brought) in baths.iter().zip(all) {
        if bath
            .figures()?
            .is_some_and(|figures| figures.stop.is_some())
        {
            brought.alkali_neq = alkali_carried(carried, strength).map_err(Error::fault)?;
        }
    }
    Ok(())
}

/// Developing releases bromide; counted where the product sets it a limit.
fn release_bromide(pass: &Pass<'_>, baths: &[&Stood], all: &mut [Brought]) -> Result<()> {
    let (Load::Sheets(sheets, area), Some(silver)) = (&pass.load, pass.silver) else {
        return Ok(());
    };
    let has_limit = |figures: Figures| figures.bromide_limit_mg_per_litre.is_some();
    for (bath, brought) in baths.iter().zip(all) {
        if bath.kind == Some(Kind::Developer) && bath.figures()?.is_some_and(has_limit) {
            let coating = u32::try_from(silver.usual_mg_per_m2).map_err(Error::fault)?;
            let kept = Ppb::new(silver.usual_kept_ppb).map_err(Error::fault)?;
            let developed =
                silver_developed(*sheets, *area, coating, kept).map_err(Error::fault)?;
            brought.bromide_ug = bromide_released(developed).map_err(Error::fault)?.get();
        }
    }
    Ok(())
}

/// The fixing baths gain what the image does not keep and lose what prints carry out.
fn dissolve(
    pass: &Pass<'_>,
    baths: &[&Stood],
    carried: Microlitres,
    running: &mut Running,
    all: &mut [Brought],
) -> Result<()> {
    let Some(dissolved) = pass.dissolved()? else {
        return Ok(());
    };
    let is_fixer = |bath: &&Stood| bath.kind == Some(Kind::Fixer);
    let fixers: Vec<usize> = (0..baths.len())
        .filter(|at| is_fixer(&baths[*at]))
        .collect();
    let pair = pair_of(baths);
    for at in fixers {
        let before = running.silver(baths[at]);
        if pair.is_some_and(|(_, second)| second == at) {
            continue;
        }
        if let Some((first, second)) = pair.filter(|(first, _)| *first == at) {
            let others = running.silver(baths[second]);
            let share = Ppb::new(pass.second_bath_ppb).map_err(Error::fault)?;
            for each in 0..3 {
                let two = SilverPair {
                    first: bath(baths[first], before[each])?,
                    second: bath(baths[second], others[each])?,
                };
                let clings = carried.min(two.first.volume).min(two.second.volume);
                let after = pass_two_baths(two, dissolved[each], share, clings);
                let after = after.map_err(Error::fault)?.baths;
                all[first].silver_ug[each] = after.first.silver.get() - before[each];
                all[second].silver_ug[each] = after.second.silver.get() - others[each];
            }
            remember(running, baths[second], others, all[second].silver_ug);
        } else {
            for each in 0..3 {
                let one = bath(baths[at], before[each])?;
                let clings = carried.min(one.volume);
                let after = pass_one_bath(one, dissolved[each], clings).map_err(Error::fault)?;
                all[at].silver_ug[each] = after.bath.silver.get() - before[each];
            }
        }
        remember(running, baths[at], before, all[at].silver_ug);
    }
    Ok(())
}

fn remember(running: &mut Running, bath: &Stood, before: [i64; 3], gained: [i64; 3]) {
    let after = std::array::from_fn(|each| before[each] + gained[each]);
    running.0.insert(bath.mix_id, after);
}

fn bath(stood: &Stood, silver_ug: i64) -> Result<SilverBath> {
    Ok(SilverBath {
        volume: Microlitres::new(stood.charged_ul).map_err(Error::fault)?,
        silver: Micrograms::new(silver_ug.max(0)).map_err(Error::fault)?,
    })
}

/// Where the first and the second of two fixing baths are in a line, where both
/// stand there. A second bath alone is the only one, and counts in full.
pub(super) fn pair_of(baths: &[&Stood]) -> Option<(usize, usize)> {
    let at = |place: Place| {
        baths
            .iter()
            .position(|bath| bath.kind == Some(Kind::Fixer) && bath.place == place)
    };
    at(Place::First).zip(at(Place::Second))
}
