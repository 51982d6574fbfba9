//! From mixes and what people found of them to what the verdict needs to know.

use time::OffsetDateTime;
use uuid::Uuid;

use super::readings::{Latest, LatestExtension, store as readings};
use super::{Mix, Outcome, ReadingKind};
use crate::clock::micros;
use crate::darkroom::age::Age;
use crate::darkroom::quantities::{
    Micrograms, Microlitres, Moment, Nanolitres, Ppb, Seconds, TenthsCelsius, Thousandths,
};
use crate::darkroom::replenishment::bromide_used;
use crate::darkroom::silver::SilverBath;
use crate::darkroom::state::{
    Extension, FailedCheck, MixState, PassedCheck, RatioReading, SilverReading, SilverWatch,
    TemperatureReading, TemperatureWatch, Thresholds, TrayState,
};
use crate::darkroom::stop_bath::StopBath;
use crate::darkroom::verdict::{self, Judgement};
use crate::darkroom::wear::Charge;
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::rooms::Settings;

/// What people found of some mixes, as far as a verdict asks for it.
#[derive(Clone, Debug, Default)]
pub struct Findings {
    latest: Vec<Latest>,
    extensions: Vec<LatestExtension>,
}

impl Findings {
    /// Reads what was found of these mixes.
    ///
    /// # Errors
    /// The database's.
    pub async fn of(tx: &mut RoomTx, mixes: &[Mix]) -> Result<Self> {
        let ids: Vec<Uuid> = mixes.iter().map(|mix| mix.id).collect();
        if ids.is_empty() {
            return Ok(Self::default());
        }
        Ok(Self {
            latest: readings::latest(tx, &ids).await?,
            extensions: readings::extensions(tx, &ids).await?,
        })
    }

    fn last(&self, mix: &Mix, is_it: impl Fn(&Latest) -> bool) -> Option<&Latest> {
        let of_mix = self.latest.iter().filter(|each| each.mix_id == mix.id);
        of_mix
            .filter(|each| is_it(each))
            .max_by_key(|each| each.seq)
    }

    /// The last extension of a mix.
    #[must_use]
    pub fn extension(&self, mix: Uuid) -> Option<&LatestExtension> {
        self.extensions.iter().find(|each| each.mix_id == mix)
    }
}

/// Judges what stands in a tray or a bottle at an instant.
///
/// # Errors
/// A fault: figures in the database that no arithmetic holds.
pub fn judge(
    mix: Option<&Mix>,
    findings: &Findings,
    settings: &Settings,
    now: OffsetDateTime,
) -> Result<Judgement> {
    let state = match mix {
        None => TrayState::Empty,
        Some(mix) if mix.product_id.is_none() => TrayState::UnknownLiquid,
        Some(mix) => TrayState::Mix(Box::new(state(mix, findings, settings)?)),
    };
    verdict::judge(&state, at(now)).map_err(Error::fault)
}

/// Every figure a mix's verdict needs.
///
/// # Errors
/// A fault: figures in the database that no arithmetic holds.
pub fn state(mix: &Mix, findings: &Findings, settings: &Settings) -> Result<MixState> {
    let charge = Charge {
        charged: litres(mix.charged_ul)?,
        spent: Nanolitres::new(mix.spent_nl).map_err(Error::fault)?,
    };
    let has_capacity = mix.has_capacity || takes_film(mix);
    let failed = |each: &Latest| each.outcome == Outcome::Failed && each.kind.check().is_some();
    let passed = |each: &Latest| each.outcome == Outcome::Passed;
    let contaminated = |each: &Latest| each.kind == ReadingKind::Contamination;
    Ok(MixState {
        charge: has_capacity.then_some(charge),
        age: mix.age()?,
        total_age: total_age(mix)?,
        acid_used_ppb: acid_used(mix)?,
        bromide_used_ppb: bromide(mix)?,
        origin: mix.origin,
        contaminated: findings
            .last(mix, contaminated)
            .map(|each| at(each.happened_at)),
        failed_check: findings.last(mix, failed).and_then(failed_check),
        passed_check: findings.last(mix, passed).and_then(passed_check),
        unknown_sheets: mix.unknown_sheets_at.map(at),
        clearing: ratio(mix, findings, ReadingKind::Clearing),
        emergence: ratio(mix, findings, ReadingKind::Emergence),
        silver: silver(mix, findings)?,
        temperature: temperature(mix, findings, settings),
        extension: findings.extension(mix.id).map(extension),
        thresholds: Thresholds {
            test_first_ppb: Ppb::new(settings.test_first_ppb).map_err(Error::fault)?,
            ..Thresholds::default()
        },
    })
}

fn takes_film(mix: &Mix) -> bool {
    let figures = mix.figures.as_ref();
    figures.is_some_and(|figures| figures.film_rolls_per_litre_thousandths.is_some())
}

fn failed_check(found: &Latest) -> Option<FailedCheck> {
    Some(FailedCheck {
        kind: found.kind.check()?,
        at: at(found.happened_at),
    })
}

fn passed_check(found: &Latest) -> Option<PassedCheck> {
    Some(PassedCheck {
        kind: found.kind.check()?,
        at: at(found.happened_at),
        spent: Nanolitres::new(found.spent_nl).ok()?,
    })
}

fn total_age(mix: &Mix) -> Result<Option<Age>> {
    let longest = mix
        .figures
        .as_ref()
        .and_then(|figures| figures.longest_life_s);
    longest
        .map(|life| {
            let life = Seconds::new(life).map_err(Error::fault)?;
            Age::fresh(at(mix.oldest_at), life).map_err(Error::fault)
        })
        .transpose()
}

/// What carried-in alkali has used of a stop bath's acid.
fn acid_used(mix: &Mix) -> Result<Option<Ppb>> {
    let Some(stop) = mix.figures.as_ref().and_then(|figures| figures.stop) else {
        return Ok(None);
    };
    let bath =
        StopBath::new(stop.acid, thousandth(stop.acid_mmol_per_litre)).map_err(Error::fault)?;
    let limit = thousandth(stop.limit_ph_thousandths);
    let used = bath.used(litres(mix.charged_ul)?, mix.alkali_neq, limit);
    used.map(Some).map_err(Error::fault)
}

#[expect(
    clippy::cast_precision_loss,
    reason = "pH and acid are approximate far above 2^-53"
)]
fn thousandth(value: i64) -> f64 {
    value as f64 / 1_000.0
}

fn bromide(mix: &Mix) -> Result<Option<Ppb>> {
    let limit = mix
        .figures
        .as_ref()
        .and_then(|figures| figures.bromide_limit_mg_per_litre);
    let Some(limit) = limit else {
        return Ok(None);
    };
    let limit = u32::try_from(limit).map_err(Error::fault)?;
    let bromide = Micrograms::new(mix.bromide_ug).map_err(Error::fault)?;
    let used = bromide_used(bromide, litres(mix.charged_ul)?, limit);
    used.map(Some).map_err(Error::fault)
}

fn ratio(mix: &Mix, findings: &Findings, kind: ReadingKind) -> Option<RatioReading> {
    let last = findings.last(mix, |each| {
        each.kind == kind && each.ratio_thousandths.is_some()
    })?;
    Some(RatioReading {
        ratio: Thousandths::new(last.ratio_thousandths?).ok()?,
        at: at(last.happened_at),
    })
}

/// The silver a mix is believed to hold, in milligrams a litre: least, usual, most.
///
/// # Errors
/// A fault: figures that no arithmetic holds.
pub fn silver_mg_per_litre(mix: &Mix) -> Result<[u32; 3]> {
    let volume = litres(mix.charged_ul)?;
    let mut all = [0; 3];
    for (estimate, silver) in all.iter_mut().zip(mix.silver_ug) {
        let silver = Micrograms::new(silver).map_err(Error::fault)?;
        let bath = SilverBath { volume, silver };
        *estimate = bath.milligrams_per_litre().map_err(Error::fault)?;
    }
    Ok(all)
}

fn silver(mix: &Mix, findings: &Findings) -> Result<Option<SilverWatch>> {
    let limit = mix
        .figures
        .as_ref()
        .and_then(|figures| figures.silver_limits.at(mix.place()));
    let Some(limit) = limit else {
        return Ok(None);
    };
    let [_, usual, _] = silver_mg_per_litre(mix)?;
    let measured = findings.last(mix, |each| each.kind == ReadingKind::Silver);
    let measured = measured.and_then(|found| {
        Some(SilverReading {
            milligrams_per_litre: u32::try_from(found.value?).ok()?,
            at: at(found.happened_at),
            spent: Nanolitres::new(found.spent_nl).ok()?,
        })
    });
    Ok(Some(SilverWatch {
        limit_milligrams_per_litre: u32::try_from(limit).map_err(Error::fault)?,
        estimated_milligrams_per_litre: usual,
        measured,
    }))
}

fn temperature(mix: &Mix, findings: &Findings, settings: &Settings) -> Option<TemperatureWatch> {
    let figures = mix.figures.as_ref()?;
    let last = findings.last(mix, |each| each.kind == ReadingKind::Temperature);
    let last = last.and_then(|found| {
        Some(TemperatureReading {
            temperature: tenths(i32::try_from(found.value?).ok()?)?,
            at: at(found.happened_at),
        })
    });
    let since = mix.stands_since.filter(|_| settings.is_unheated);
    Some(TemperatureWatch {
        lowest: tenths(figures.coldest_tenths_celsius?)?,
        highest: tenths(figures.warmest_tenths_celsius?)?,
        last,
        unheated_since: since.map(at),
    })
}

fn tenths(value: i32) -> Option<TenthsCelsius> {
    TenthsCelsius::new(value.into()).ok()
}

fn extension(found: &LatestExtension) -> Extension {
    let ratio = |value: Option<i64>| value.and_then(|value| Thousandths::new(value).ok());
    Extension {
        given: at(found.given_at),
        until: at(found.until_at),
        clearing: ratio(found.clearing_thousandths),
        emergence: ratio(found.emergence_thousandths),
    }
}

fn litres(microlitres: i64) -> Result<Microlitres> {
    Microlitres::new(microlitres).map_err(Error::fault)
}

fn at(moment: OffsetDateTime) -> Moment {
    Moment::new(micros(moment))
}
