//! Looking at a mix, taking a reading back, and a steward's extension.

use serde::Serialize;
use uuid::Uuid;

use super::{Kept, checks, store};
use crate::app::App;
use crate::clock::micros;
use crate::darkroom::film::{Clearing, clearing_ratio};
use crate::darkroom::finishing::notes_in_doubt;
use crate::darkroom::incompatibility::Group;
use crate::darkroom::quantities::{Moment, Seconds, TenthsCelsius};
use crate::darkroom::state::Origin;
use crate::darkroom::time_temperature::{Coefficient, Timed, emergence_ratio};
use crate::darkroom::verdict::{self, CLEARING_LIMIT, EMERGENCE_LIMIT, ExtensionRefused};
use crate::error::{Error, Result};
use crate::identity::Permit;
use crate::logbook::{Book, Done, Key};
use crate::mixes::actions::{Ground, happened_to};
use crate::mixes::{
    Contaminant, Extended, Figures, Mix, Outcome, RULES, Reading, ReadingKind, ReadingUndone,
};
use crate::notices::{self, Notice};
use crate::problem::Problem;
use crate::products;
use crate::rights::{ExtendMix, TakeBack, TestMix};

/// So many readings of a mix are looked through for one that still stands.
const MOST_LOOKED_AT: i64 = 1_000;

/// The longest extension: 24 hours.
const LONGEST_MINUTES: i64 = 24 * 60;

/// What somebody found of a mix.
#[derive(Clone, Debug, Serialize)]
pub struct NewReading {
    /// The mix.
    pub mix_id: Uuid,
    /// What came of looking.
    pub taken: Taken,
    /// In the finder's words; may be empty.
    pub remark: String,
    /// When, where that was not just now: microseconds since 1970.
    pub happened_at_us: Option<i64>,
}

/// What was looked at and what came of it.
#[derive(Clone, Debug, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Taken {
    /// Tenths of a degree Celsius.
    Temperature(i32),
    /// Good or not, by eye: a test print, an indicator's colour, a spot test.
    ByEye {
        /// Which of those.
        kind: ReadingKind,
        /// Whether it was good.
        passed: bool,
    },
    /// Seconds until the image showed or film was clear, with what and how warm.
    Timed {
        /// Emergence or clearing.
        kind: ReadingKind,
        /// The time.
        seconds: i64,
        /// The bath's temperature.
        tenths_celsius: i32,
        /// The paper or film.
        sample: String,
        /// Whether the mix was fresh: later readings are held against this one.
        is_fresh: bool,
    },
    /// pH in thousandths.
    Ph(i64),
    /// Silver in milligrams a litre.
    Silver(i64),
    /// Something came into it; no groups where nobody can say what.
    Contamination(Vec<Group>),
}

impl Taken {
    const fn kind(&self) -> ReadingKind {
        match self {
            Self::Temperature(_) => ReadingKind::Temperature,
            Self::ByEye { kind, .. } | Self::Timed { kind, .. } => *kind,
            Self::Ph(_) => ReadingKind::Ph,
            Self::Silver(_) => ReadingKind::Silver,
            Self::Contamination(_) => ReadingKind::Contamination,
        }
    }
}

/// A reading to take back.
#[derive(Clone, Debug, Serialize)]
pub struct UndoReading {
    /// Which.
    pub reading_id: Uuid,
    /// Why.
    pub reason: String,
}

/// An extension as a steward wants it.
#[derive(Clone, Debug, Serialize)]
pub struct NewExtension {
    /// The mix.
    pub mix_id: Uuid,
    /// How long, in minutes.
    pub minutes: i64,
    /// Why.
    pub reason: String,
}

/// Records what somebody found of a mix. A failed spot test tells everyone whose
/// prints it puts in doubt.
///
/// # Errors
/// A mix that is gone or that nobody can name; a check that tells nothing of it;
/// a fresh reading of a mix that is none.
pub async fn look(app: &App, permit: &Permit<TestMix>, key: Key, new: NewReading) -> Result<Done> {
    permit
        .write(app, key, &new.clone(), move |book| {
            Box::pin(async move { record(book, new, None).await })
        })
        .await
}

/// Records what somebody found, within a writing of more; `person_id` names who
/// looked, where that is not who writes.
///
/// # Errors
/// As [`look`].
pub(crate) async fn record(
    book: &mut Book<'_>,
    new: NewReading,
    person_id: Option<Uuid>,
) -> Result<()> {
    let ground = Ground::of(book, new.mix_id, new.happened_at_us).await?;
    let mix = &ground.mix;
    if mix.product_id.is_none() && !matches!(new.taken, Taken::Temperature(_)) {
        return Err(Error::Refused(Problem::UnknownLiquid));
    }
    let kind = new.taken.kind();
    must_fit(book, mix, kind).await?;
    if matches!(new.taken, Taken::Timed { is_fresh: true, .. }) {
        must_be_fresh(mix)?;
    }
    let mut entry = Reading {
        rules: RULES,
        reading_id: book.new_id(),
        mix_id: mix.id,
        stand: mix.stand,
        kind,
        outcome: Outcome::Read,
        value: None,
        tenths_celsius: None,
        sample: String::new(),
        is_fresh: false,
        ratio_thousandths: None,
        fresh_reading_id: None,
        spent_nl: mix.spent_nl,
        contaminant: None,
        remark: new.remark,
        person_id,
    };
    fill_in(book, mix, new.taken, &mut entry).await?;
    let seq = book.append_at(ground.at, &entry).await?;
    if is_residual(kind) && entry.outcome == Outcome::Failed {
        tell_doubted(book, &entry, seq).await?;
    }
    Ok(())
}

/// Puts what came of looking into the reading.
async fn fill_in(book: &mut Book<'_>, mix: &Mix, taken: Taken, entry: &mut Reading) -> Result<()> {
    match taken {
        Taken::Temperature(tenths) => entry.value = Some(tenths.into()),
        Taken::ByEye { passed, .. } => entry.outcome = passed_if(passed),
        Taken::Ph(thousandths) => {
            entry.value = Some(thousandths);
            entry.outcome = ph_outcome(mix, thousandths);
        }
        Taken::Silver(milligrams) => {
            entry.value = Some(milligrams);
            entry.outcome = silver_outcome(mix, milligrams);
        }
        Taken::Timed {
            seconds,
            tenths_celsius,
            sample,
            is_fresh,
            ..
        } => {
            entry.value = Some(seconds);
            entry.tenths_celsius = Some(tenths_celsius);
            entry.sample = sample;
            entry.is_fresh = is_fresh;
            hold_against_fresh(book, mix, entry).await?;
        }
        Taken::Contamination(groups) => {
            entry.outcome = Outcome::Failed;
            entry.contaminant = Some(match groups.is_empty() {
                true => Contaminant::Unknown,
                false => Contaminant::Groups(groups),
            });
        }
    }
    Ok(())
}

/// Refuses a check that tells nothing of the bath.
async fn must_fit(book: &mut Book<'_>, mix: &Mix, kind: ReadingKind) -> Result<()> {
    let Some(product) = mix.product_id else {
        return Ok(());
    };
    let product = products::product(book.tx(), product).await?;
    let product = product.ok_or(Error::NotFound)?;
    let fits = checks(product.kind, mix.place()).contains(&kind);
    match fits || kind == ReadingKind::Contamination {
        true => Ok(()),
        false => Err(Error::field("kind", Problem::OtherBath)),
    }
}

/// Refuses a fresh reading of a mix of which a tenth is used (from memory) or
/// whose start or use is a guess: every later reading would be held against it.
fn must_be_fresh(mix: &Mix) -> Result<()> {
    let a_tenth_nl = mix.charged_ul.saturating_mul(100);
    let is_fresh =
        mix.origin == Origin::Mixed && mix.unknown_sheets_at.is_none() && mix.spent_nl < a_tenth_nl;
    match is_fresh {
        true => Ok(()),
        false => Err(Error::field("fresh", Problem::NotFresh)),
    }
}

const fn passed_if(passed: bool) -> Outcome {
    match passed {
        true => Outcome::Passed,
        false => Outcome::Failed,
    }
}

/// The pH of a stop bath passes below its limit; of other baths it says nothing
/// by itself.
fn ph_outcome(mix: &Mix, thousandths: i64) -> Outcome {
    let stop = mix.figures.as_ref().and_then(|figures| figures.stop);
    stop.map_or(Outcome::Read, |stop| {
        passed_if(thousandths < stop.limit_ph_thousandths)
    })
}

/// Measured silver passes below the limit; at or over it the figure itself says Replace.
fn silver_outcome(mix: &Mix, milligrams: i64) -> Outcome {
    let limit = mix
        .figures
        .as_ref()
        .and_then(|figures| figures.silver_limits.at(mix.place()));
    match limit {
        Some(limit) if milligrams < limit => Outcome::Passed,
        _ => Outcome::Read,
    }
}

/// Holds a time against the fresh one of the same paper or film, where the two compare.
async fn hold_against_fresh(book: &mut Book<'_>, mix: &Mix, entry: &mut Reading) -> Result<()> {
    if entry.is_fresh {
        entry.outcome = Outcome::Passed;
        return Ok(());
    }
    let fresh = store::fresh(book.tx(), mix.id, entry.kind, &entry.sample).await?;
    let Some(fresh) = fresh else {
        return Ok(());
    };
    let times = (
        timed(fresh.value, fresh.tenths_celsius)?,
        timed(entry.value, entry.tenths_celsius)?,
    );
    let (ratio, limit) = match entry.kind {
        ReadingKind::Clearing => (clearing(times.0, times.1), CLEARING_LIMIT),
        _ => (
            emergence_ratio(times.0, times.1, coefficient(mix.figures.as_ref())).ok(),
            EMERGENCE_LIMIT,
        ),
    };
    if let Some(ratio) = ratio {
        entry.fresh_reading_id = Some(fresh.id);
        entry.ratio_thousandths = Some(ratio.get());
        // At the limit the ratio itself says Replace.
        entry.outcome = match ratio < limit {
            true => Outcome::Passed,
            false => Outcome::Read,
        };
    }
    Ok(())
}

fn timed(seconds: Option<i64>, tenths: Option<i32>) -> Result<Timed> {
    let missing = || Error::fault("a timed reading without its figures");
    let seconds = seconds.ok_or_else(missing)?;
    let tenths = tenths.ok_or_else(missing)?;
    Ok(Timed {
        time: Seconds::new(seconds).map_err(Error::fault)?,
        temperature: TenthsCelsius::new(tenths.into()).map_err(Error::fault)?,
    })
}

fn clearing(fresh: Timed, now: Timed) -> Option<crate::darkroom::quantities::Thousandths> {
    let of = |timed: Timed| Clearing {
        time: timed.time,
        temperature: timed.temperature,
    };
    clearing_ratio(of(fresh), of(now)).ok()
}

/// Q of the product a mix was made from, where its sheet has two points.
pub(in crate::mixes) fn coefficient(figures: Option<&Figures>) -> Option<Coefficient> {
    let [one, other] = figures?.time_points.as_slice() else {
        return None;
    };
    let one = timed(Some(one.seconds), Some(one.tenths_celsius)).ok()?;
    let other = timed(Some(other.seconds), Some(other.tenths_celsius)).ok()?;
    Coefficient::from_points(one, other).ok()
}

/// Tells everyone whose prints went through since the last passed test, so that
/// they can fix and wash them again.
async fn tell_doubted(book: &mut Book<'_>, entry: &Reading, seq: i64) -> Result<()> {
    for (person, notes) in in_doubt(book, entry.mix_id, entry.kind, seq).await? {
        let notice = Notice::PrintsInDoubt {
            reading: seq,
            notes,
        };
        let now = book.now();
        notices::tell(book.tx(), now, person, &notice).await?;
    }
    Ok(())
}

/// Tells people that a failed test was a mistake, of the notes that no other one
/// keeps in doubt.
async fn tell_undoubted(book: &mut Book<'_>, kept: &Kept) -> Result<()> {
    let mut doubted: Vec<i64> = Vec::new();
    for other in store::of_mix(book.tx(), kept.mix_id, MOST_LOOKED_AT).await? {
        let stands = other.outcome == Outcome::Failed && other.undone_by.is_none();
        if is_residual(other.kind) && stands {
            let notes = in_doubt(book, other.mix_id, other.kind, other.seq).await?;
            doubted.extend(notes.into_iter().flat_map(|(_, notes)| notes));
        }
    }
    for (person, mut notes) in in_doubt(book, kept.mix_id, kept.kind, kept.seq).await? {
        notes.retain(|note| !doubted.contains(note));
        if notes.is_empty() {
            continue;
        }
        let notice = Notice::DoubtLifted {
            reading: kept.seq,
            notes,
        };
        let now = book.now();
        notices::tell(book.tx(), now, person, &notice).await?;
    }
    Ok(())
}

const fn is_residual(kind: ReadingKind) -> bool {
    matches!(
        kind,
        ReadingKind::ResidualSilver | ReadingKind::ResidualThiosulfate
    )
}

/// The notes that a failed spot test of this number puts in doubt, person by person.
async fn in_doubt(
    book: &mut Book<'_>,
    mix: Uuid,
    kind: ReadingKind,
    seq: i64,
) -> Result<Vec<(Uuid, Vec<i64>)>> {
    let passed = store::last_passed(book.tx(), mix, kind, seq).await?;
    let mut notes = store::notes_through(book.tx(), mix).await?;
    notes.retain(|note| note.seq < seq);
    let times: Vec<Moment> = notes
        .iter()
        .map(|note| Moment::new(micros(note.happened_at)))
        .collect();
    let failed = Moment::new(micros(book.now()));
    let passed = passed.map(|at| Moment::new(micros(at)));
    let doubted = notes_in_doubt(&times, passed, failed);
    let mut people: Vec<(Uuid, Vec<i64>)> = Vec::new();
    for note in notes {
        if !doubted.contains(&Moment::new(micros(note.happened_at))) {
            continue;
        }
        match people.iter_mut().find(|(id, _)| *id == note.person_id) {
            Some((_, theirs)) => theirs.push(note.seq),
            None => people.push((note.person_id, vec![note.seq])),
        }
    }
    Ok(people)
}

/// Takes a reading back: it was mistaken. Contamination is undone so and no
/// other way.
///
/// # Errors
/// None of that id; taken back before; no reason.
pub async fn take_back(
    app: &App,
    permit: &Permit<TakeBack>,
    key: Key,
    undo: UndoReading,
) -> Result<Done> {
    permit
        .write(app, key, &undo.clone(), move |book| {
            Box::pin(async move {
                if undo.reason.is_empty() {
                    return Err(Error::field("reason", Problem::Missing));
                }
                let kept = store::one(book.tx(), undo.reading_id).await?;
                let kept = kept.ok_or(Error::NotFound)?;
                if kept.undone_by.is_some() {
                    return Err(Error::Refused(Problem::AlreadyUndone));
                }
                let mix = crate::mixes::mix(book.tx(), kept.mix_id).await?;
                let entry = ReadingUndone {
                    reading_id: kept.id,
                    reading_seq: kept.seq,
                    mix_id: kept.mix_id,
                    stand: mix.ok_or(Error::NotFound)?.stand,
                    reason: undo.reason,
                };
                book.append(&entry).await?;
                if is_residual(kept.kind) && kept.outcome == Outcome::Failed {
                    tell_undoubted(book, &kept).await?;
                }
                Ok(())
            })
        })
        .await
}

/// Lets a mix that would be replaced be tested and used a little longer.
///
/// # Errors
/// A mix that needs none, or that none may cover; more than 24 hours; no reason.
pub async fn extend(
    app: &App,
    permit: &Permit<ExtendMix>,
    key: Key,
    new: NewExtension,
) -> Result<Done> {
    permit
        .write(app, key, &new.clone(), move |book| {
            Box::pin(async move { write_extension(book, new).await })
        })
        .await
}

async fn write_extension(book: &mut Book<'_>, new: NewExtension) -> Result<()> {
    if new.reason.is_empty() {
        return Err(Error::field("reason", Problem::Missing));
    }
    if !(1..=LONGEST_MINUTES).contains(&new.minutes) {
        return Err(Error::field("hours", Problem::ExtensionTooLong));
    }
    let ground = Ground::of(book, new.mix_id, None).await?;
    if ground.mix.product_id.is_none() {
        return Err(Error::Refused(Problem::UnknownLiquid));
    }
    let state = ground.state(book).await?;
    let now = happened_to(book);
    let span = Seconds::new(new.minutes.saturating_mul(60)).map_err(Error::fault)?;
    let given = verdict::extend(&state, now, now.after(span)).map_err(|cause| match cause {
        ExtensionRefused::Length => Error::field("hours", Problem::ExtensionTooLong),
        ExtensionRefused::Unsafe => Error::Refused(Problem::ExtensionUnsafe),
        ExtensionRefused::NotNeeded => Error::Refused(Problem::ExtensionNotNeeded),
        ExtensionRefused::Quantity(fault) => Error::fault(fault),
    })?;
    let entry = Extended {
        rules: RULES,
        extension_id: book.new_id(),
        mix_id: ground.mix.id,
        stand: ground.mix.stand,
        given_us: given.given.get(),
        until_us: given.until.get(),
        clearing_thousandths: given.clearing.map(|ratio| ratio.get()),
        emergence_thousandths: given.emergence.map(|ratio| ratio.get()),
        reason: new.reason,
    };
    book.append(&entry).await?;
    Ok(())
}
