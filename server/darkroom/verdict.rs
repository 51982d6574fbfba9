//! May I print in this tray? One of five verdicts, the reasons in numbers with
//! the deciding one first, and the moment the verdict changes if nobody does anything.
//!
//! Worst first: nothing recorded, unknown, replace, test first, ready. A passed
//! check lifts the doubts a check can answer (a high fraction, sheets of unknown
//! number, a guessed start) while it is good: 1 h or 10 % of capacity by default,
//! and never past 1. A limit is met from 1 − 10⁻⁶. The fractions and
//! spans are common practice, no source, and the steward's to change; clearing 2×
//! is common practice too, emergence 1.5× from memory.

use serde::{Deserialize, Serialize};

use super::quantities::{
    Moment, Nanolitres, Ppb, QuantityError, Seconds, TenthsCelsius, Thousandths,
};
use super::state::{
    CheckKind, Extension, FailedCheck, MixState, Origin, PassedCheck, RatioReading, SilverReading,
    SilverWatch, TemperatureWatch, TrayState,
};

/// Clearing this many times the fresh time means exhausted, in thousandths. Common practice.
pub const CLEARING_LIMIT: Thousandths = Thousandths::of(2_000);
/// Emergence this many times the fresh time means Replace, in thousandths. From memory.
pub const EMERGENCE_LIMIT: Thousandths = Thousandths::of(1_500);
/// The longest an extension lasts: 24 h.
pub const LONGEST_EXTENSION: Seconds = Seconds::from_hours(24);

/// What a person in front of the tray may do; the later, the worse.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Verdict {
    /// Print.
    Ready,
    /// Make the bath's test before printing.
    TestFirst,
    /// Do not print; have it replaced.
    Replace,
    /// Do not use or pour away; call a steward.
    Unknown,
    /// Look before you pour.
    NothingRecorded,
}

/// What a fraction is a fraction of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Measure {
    /// The capacity of the mix.
    Capacity,
    /// The life in its present storage.
    Life,
    /// The longest total age.
    TotalAge,
    /// The acid of a stop bath.
    Acid,
    /// A bromide limit.
    Bromide,
}

/// Why, in numbers.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Reason {
    /// The book knows of nothing in this tray.
    NothingRecorded,
    /// Liquid of unknown origin or age.
    UnknownStart,
    /// Flagged as contaminated at this time.
    Contaminated(Moment),
    /// This check failed.
    CheckFailed(FailedCheck),
    /// Measured silver is at or over the limit in mg/l.
    SilverMeasured(SilverReading, u32),
    /// Film takes this many thousandths of the fresh time to clear.
    ClearingSlow(Thousandths),
    /// The image takes this many thousandths of the fresh time to show.
    EmergenceSlow(Thousandths),
    /// This fraction is used; whether it decides shows in [`Judgement::verdict`].
    Used(Measure, Ppb),
    /// An extension runs to this time.
    ExtendedUntil(Moment),
    /// Estimated silver is at or over the limit in mg/l (estimate, limit): measure it.
    SilverEstimated(u32, u32),
    /// The last temperature is outside the product's range.
    TemperatureOut(TenthsCelsius),
    /// Nobody took the temperature since then in an unheated room.
    TemperatureNotTaken(Moment),
    /// Sheets of unknown number went through at this time.
    SheetsUnknown(Moment),
    /// Its fractions were guessed on the first day.
    GuessedStart,
    /// Tested: what, when, and until when at most that is good.
    Tested(CheckKind, Moment, Moment),
}

/// A verdict with its reasons.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Judgement {
    /// The verdict.
    pub verdict: Verdict,
    /// The deciding reason first, then what else calls for a verdict, then the plain figures.
    pub reasons: Vec<Reason>,
    /// When the verdict changes if nobody does anything, and to which.
    #[serde(rename = "changes_at_us")]
    pub changes_at: Option<(Moment, Verdict)>,
}

/// Judges a tray at an instant.
///
/// # Errors
/// [`QuantityError`] where a fraction lies beyond 64 bits.
pub fn judge(tray: &TrayState, now: Moment) -> Result<Judgement, QuantityError> {
    match tray {
        TrayState::Empty => Ok(lone(Verdict::NothingRecorded, Reason::NothingRecorded)),
        TrayState::UnknownLiquid => Ok(lone(Verdict::Unknown, Reason::UnknownStart)),
        TrayState::Mix(mix) => {
            let (verdict, reasons) = weigh(mix, now)?;
            Ok(Judgement {
                verdict,
                reasons,
                changes_at: next_change(mix, now, verdict)?,
            })
        }
    }
}

fn lone(verdict: Verdict, reason: Reason) -> Judgement {
    Judgement {
        verdict,
        reasons: vec![reason],
        changes_at: None,
    }
}

/// Reasons found, each with the verdict it calls for.
struct Findings(Vec<(Verdict, Reason)>);

impl Findings {
    fn add(&mut self, verdict: Verdict, reason: Reason) {
        self.0.push((verdict, reason));
    }
}

/// The used fractions of a mix at an instant, the fullest first.
///
/// # Errors
/// [`QuantityError`] where one lies beyond 64 bits.
pub fn fractions(mix: &MixState, now: Moment) -> Result<Vec<(Measure, Ppb)>, QuantityError> {
    let mut all = Vec::new();
    if let Some(charge) = mix.charge {
        // A mix without volume has nothing left to use.
        all.push((Measure::Capacity, charge.used().unwrap_or(Ppb::ONE)));
    }
    if let Some(age) = mix.age {
        all.push((
            Measure::Life,
            age.used_at(now).map_err(|_| QuantityError::TooLarge)?,
        ));
    }
    if let Some(age) = mix.total_age {
        all.push((
            Measure::TotalAge,
            age.used_at(now).map_err(|_| QuantityError::TooLarge)?,
        ));
    }
    all.extend(mix.acid_used_ppb.map(|used| (Measure::Acid, used)));
    all.extend(mix.bromide_used_ppb.map(|used| (Measure::Bromide, used)));
    all.sort_by_key(|(_, used)| std::cmp::Reverse(*used));
    Ok(all)
}

fn weigh(mix: &MixState, now: Moment) -> Result<(Verdict, Vec<Reason>), QuantityError> {
    let mut found = Findings(Vec::new());
    refuse_unsafe(mix, &mut found);
    let beyond_extension = !found.0.is_empty();
    let fractions = fractions(mix, now)?;
    for (measure, used) in &fractions {
        if *used >= Ppb::LIMIT {
            found.add(Verdict::Replace, Reason::Used(*measure, *used));
        }
    }
    refuse_slow(mix, &mut found);
    let extension = mix
        .extension
        .filter(|extension| !beyond_extension && holds(extension, mix, now));
    if let Some(extension) = extension {
        for finding in &mut found.0 {
            finding.0 = Verdict::TestFirst;
        }
        found.0.insert(
            0,
            (Verdict::TestFirst, Reason::ExtendedUntil(extension.until)),
        );
    }
    doubt(mix, now, &fractions, &mut found);
    if let Some((passed, until)) = good_pass(mix, now) {
        found.add(
            Verdict::Ready,
            Reason::Tested(passed.kind, passed.at, until),
        );
    }
    for (measure, used) in fractions {
        let figure = Reason::Used(measure, used);
        if found.0.iter().all(|(_, reason)| *reason != figure) {
            found.add(Verdict::Ready, figure);
        }
    }
    found
        .0
        .sort_by_key(|(verdict, _)| std::cmp::Reverse(*verdict));
    let verdict = found
        .0
        .first()
        .map_or(Verdict::Ready, |(verdict, _)| *verdict);
    Ok((
        verdict,
        found.0.into_iter().map(|(_, reason)| reason).collect(),
    ))
}

/// What no extension can cover.
fn refuse_unsafe(mix: &MixState, found: &mut Findings) {
    if mix.origin == Origin::Unknown {
        found.add(Verdict::Unknown, Reason::UnknownStart);
    }
    if let Some(at) = mix.contaminated {
        found.add(Verdict::Replace, Reason::Contaminated(at));
    }
    if let Some(failed) = mix.failed_check {
        found.add(Verdict::Replace, Reason::CheckFailed(failed));
    }
    if let Some((measured, limit)) = silver_over(mix.silver) {
        found.add(Verdict::Replace, Reason::SilverMeasured(measured, limit));
    }
}

/// Whether clearing, emergence or measured silver alone calls for Replace.
pub(crate) fn readings_say_replace(mix: &MixState) -> bool {
    let mut found = Findings(Vec::new());
    refuse_slow(mix, &mut found);
    !found.0.is_empty() || silver_over(mix.silver).is_some()
}

fn silver_over(silver: Option<SilverWatch>) -> Option<(SilverReading, u32)> {
    let watch = silver?;
    let measured = watch.measured?;
    let limit = watch.limit_milligrams_per_litre;
    (measured.milligrams_per_litre >= limit).then_some((measured, limit))
}

fn refuse_slow(mix: &MixState, found: &mut Findings) {
    if let Some(clearing) = mix
        .clearing
        .filter(|reading| reading.ratio >= CLEARING_LIMIT)
    {
        found.add(Verdict::Replace, Reason::ClearingSlow(clearing.ratio));
    }
    if let Some(emergence) = mix
        .emergence
        .filter(|reading| reading.ratio >= EMERGENCE_LIMIT)
    {
        found.add(Verdict::Replace, Reason::EmergenceSlow(emergence.ratio));
    }
}

/// An extension ends at its time, after 24 h, or with a reading worse than the one it was given on.
fn holds(extension: &Extension, mix: &MixState, now: Moment) -> bool {
    let end = extension
        .until
        .min(extension.given.after(LONGEST_EXTENSION));
    let worse = |reading: Option<RatioReading>, given: Option<Thousandths>, limit| {
        let is_worse = |ratio| given.map_or(ratio >= limit, |given| ratio > given);
        reading.is_some_and(|reading| is_worse(reading.ratio))
    };
    now >= extension.given
        && now < end
        && !worse(mix.clearing, extension.clearing, CLEARING_LIMIT)
        && !worse(mix.emergence, extension.emergence, EMERGENCE_LIMIT)
}

/// What a check, a measurement or a thermometer can answer.
fn doubt(mix: &MixState, now: Moment, fractions: &[(Measure, Ppb)], found: &mut Findings) {
    let passed = good_pass(mix, now).map(|(passed, _)| passed);
    if passed.is_none() {
        for (measure, used) in fractions {
            if *used >= mix.thresholds.test_first_ppb && *used < Ppb::LIMIT {
                found.add(Verdict::TestFirst, Reason::Used(*measure, *used));
            }
        }
        if mix.origin == Origin::Guessed {
            found.add(Verdict::TestFirst, Reason::GuessedStart);
        }
    }
    if let Some(silver) = mix
        .silver
        .filter(|silver| silver_is_doubtful(silver, mix, now))
    {
        let estimated = silver.estimated_milligrams_per_litre;
        let limit = silver.limit_milligrams_per_litre;
        found.add(
            Verdict::TestFirst,
            Reason::SilverEstimated(estimated, limit),
        );
    }
    if let Some(at) = mix.unknown_sheets
        && passed.is_none_or(|passed| passed.at < at)
    {
        found.add(Verdict::TestFirst, Reason::SheetsUnknown(at));
    }
    if let Some(reason) = mix
        .temperature
        .and_then(|watch| cold_or_hot(&watch, mix, now))
    {
        found.add(Verdict::TestFirst, reason);
    }
}

fn silver_is_doubtful(silver: &SilverWatch, mix: &MixState, now: Moment) -> bool {
    let measured_lately = silver
        .measured
        .is_some_and(|measured| is_good(mix, measured.at, measured.spent, now));
    silver.estimated_milligrams_per_litre >= silver.limit_milligrams_per_litre && !measured_lately
}

fn cold_or_hot(watch: &TemperatureWatch, mix: &MixState, now: Moment) -> Option<Reason> {
    if let Some(last) = watch.last
        && (last.temperature < watch.lowest || last.temperature > watch.highest)
    {
        return Some(Reason::TemperatureOut(last.temperature));
    }
    let since = temperature_since(watch)?;
    (now >= since.after(mix.thresholds.temperature_seconds))
        .then_some(Reason::TemperatureNotTaken(since))
}

/// In an unheated room: since when no temperature was taken.
fn temperature_since(watch: &TemperatureWatch) -> Option<Moment> {
    let since = watch.unheated_since?;
    Some(watch.last.map_or(since, |last| last.at.max(since)))
}

/// The last passed check while it is good, and when that ends at the latest.
fn good_pass(mix: &MixState, now: Moment) -> Option<(PassedCheck, Moment)> {
    let passed = mix.passed_check?;
    is_good(mix, passed.at, passed.spent, now)
        .then(|| (passed, passed.at.after(mix.thresholds.passed_check_seconds)))
}

/// Whether what was found at that time and W still says something.
fn is_good(mix: &MixState, at: Moment, spent: Nanolitres, now: Moment) -> bool {
    let recent = now >= at && now < at.after(mix.thresholds.passed_check_seconds);
    let worn = mix.charge.map(|charge| {
        let since = charge.spent.minus(spent).unwrap_or(Nanolitres::ZERO);
        super::wear::used_fraction(since, charge.charged).unwrap_or(Ppb::ONE)
    });
    recent && worn.is_none_or(|worn| worn < mix.thresholds.passed_check_ppb)
}

/// The first instant after `now` at which the verdict is another one. Only time
/// moves between two entries, so it can change at these instants alone.
fn next_change(
    mix: &MixState,
    now: Moment,
    present: Verdict,
) -> Result<Option<(Moment, Verdict)>, QuantityError> {
    let limits = [mix.thresholds.test_first_ppb, Ppb::LIMIT];
    let ages = [mix.age, mix.total_age].into_iter().flatten();
    let mut instants: Vec<Moment> = ages
        .flat_map(|age| limits.map(|limit| age.reaches(limit)))
        .flatten()
        .collect();
    instants.extend(good_pass(mix, now).map(|(_, until)| until));
    let measured = mix.silver.and_then(|silver| silver.measured);
    instants.extend(measured.map(|m| m.at.after(mix.thresholds.passed_check_seconds)));
    instants.extend(
        mix.extension
            .map(|e| e.until.min(e.given.after(LONGEST_EXTENSION))),
    );
    let taken = mix.temperature.as_ref().and_then(temperature_since);
    instants.extend(taken.map(|since| since.after(mix.thresholds.temperature_seconds)));
    instants.sort_unstable();
    for instant in instants.into_iter().filter(|instant| *instant > now) {
        let (verdict, _) = weigh(mix, instant)?;
        if verdict != present {
            return Ok(Some((instant, verdict)));
        }
    }
    Ok(None)
}

/// Why an extension is not given.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum ExtensionRefused {
    /// It would last no time, or more than 24 h.
    #[error("an extension lasts at most 24 hours")]
    Length,
    /// Contamination, a failed check, measured silver over the limit, or an unknown mix.
    #[error(
        "no extension covers contamination, a failed check, measured silver over the limit or an unknown mix"
    )]
    Unsafe,
    /// The mix would not be replaced now, so there is nothing to extend.
    #[error("this mix needs no extension")]
    NotNeeded,
    /// A fraction lies beyond 64 bits.
    #[error(transparent)]
    Quantity(#[from] QuantityError),
}

/// The extension a steward may give a mix at an instant.
///
/// # Errors
/// [`ExtensionRefused`] says why there is none.
pub fn extend(mix: &MixState, now: Moment, until: Moment) -> Result<Extension, ExtensionRefused> {
    if until <= now || until > now.after(LONGEST_EXTENSION) {
        return Err(ExtensionRefused::Length);
    }
    let mut found = Findings(Vec::new());
    refuse_unsafe(mix, &mut found);
    if !found.0.is_empty() {
        return Err(ExtensionRefused::Unsafe);
    }
    if weigh(mix, now)?.0 != Verdict::Replace {
        return Err(ExtensionRefused::NotNeeded);
    }
    Ok(Extension {
        given: now,
        until,
        clearing: mix.clearing.map(|reading| reading.ratio),
        emergence: mix.emergence.map(|reading| reading.ratio),
    })
}
