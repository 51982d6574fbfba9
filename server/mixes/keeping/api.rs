//! Keeping, joining, moving up and discarding as JSON.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;
use utoipa::openapi::{RefOr, Schema};
use uuid::Uuid;

use super::containers::offered;
use super::pour_pages::partners;
use crate::api::{By, Input, Made, Route, Writing};
use crate::board::api::{ChangeOut, verdict_schema};
use crate::clock::micros;
use crate::darkroom::verdict::Verdict;
use crate::error::{Error, Result};
use crate::input::{moment, needed_note};
use crate::mixes::actions::{
    self, Ground, Move, NewDiscard, NewJoin, NewMove, NewRinse, NewShift, UndoDiscard, Vessel,
    VesselId,
};
use crate::mixes::{Findings, Why, input, judge, store};
use crate::problem::{Problem, Problems};
use crate::rights::{self, Discard, KeepMix, LookAtBoard, TakeBack};
use crate::rooms;
use crate::web::messages::verdicts;

const KEEP: &str = "/rooms/{room}/mixes/{id}/keep";
const POUR: &str = "/rooms/{room}/mixes/{id}/pour";
const SHIFT: &str = "/rooms/{room}/mixes/{id}/shift";
const DISCARD: &str = "/rooms/{room}/mixes/{id}/discard";
const UNDO: &str = "/rooms/{room}/mixes/{id}/undo-discard";
const BOTTLE: &str = "/rooms/{room}/bottles/{id}";
const RINSE_BOTTLE: &str = "/rooms/{room}/bottles/{id}/rinse";
const RINSE_TRAY: &str = "/rooms/{room}/trays/{id}/rinse";

/// The routes.
#[must_use]
pub fn api() -> Vec<Route> {
    vec![
        Route::act(KEEP, "Cover, uncover, bottle or pour back a mix.", keep),
        Route::one(
            POUR,
            "Which mixes a mix may be poured into, and why not into the others.",
            joinable,
        ),
        Route::act(
            POUR,
            "Pour a mix into another of the same product and dilution.",
            pour,
        ),
        Route::act(
            SHIFT,
            "Discard the first of two fixing baths and move the second up.",
            shift,
        ),
        Route::one(
            DISCARD,
            "Which known containers a mix may go into, and why not into the others.",
            containers,
        ),
        Route::act(DISCARD, "Discard a mix into a named container.", discard),
        Route::act(
            UNDO,
            "Take a discard back that was logged by mistake.",
            undo_discard,
        ),
        Route::one(
            BOTTLE,
            "A bottle, what stands in it and how good that is.",
            bottle,
        ),
        Route::act(
            RINSE_BOTTLE,
            "Record that a bottle was rinsed.",
            rinse_bottle,
        ),
        Route::act(RINSE_TRAY, "Record that a tray was rinsed.", rinse_tray),
    ]
}

/// A moment somebody names; nothing for just now.
fn at(text: Option<&str>, problems: &mut Problems) -> Option<Option<i64>> {
    let read = text.map(moment).transpose();
    let read = problems.take("happened_at", read);
    read.map(|at| at.map(micros))
}

/// What to do with a mix.
#[derive(Clone, Copy, Debug, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Way {
    /// Cover its tray.
    Cover,
    /// Take the cover off.
    Uncover,
    /// Pour it into the bottle that `vessel_id` names.
    Bottle,
    /// Pour it back into the tray that `vessel_id` names.
    Return,
}

/// A mix to keep otherwise.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct KeepIn {
    /// What to do with it.
    pub to: Way,
    /// The bottle or the tray it goes into.
    #[serde(default)]
    pub vessel_id: Option<Uuid>,
    /// When, where that was not just now.
    #[serde(default)]
    #[schema(format = DateTime)]
    pub happened_at: Option<String>,
}

impl Input for KeepIn {}

impl KeepIn {
    fn read(&self, mix_id: Uuid) -> Result<NewMove> {
        let mut problems = Problems::default();
        let happened_at_us = at(self.happened_at.as_deref(), &mut problems);
        let vessel = self.vessel_id.ok_or(Problem::Missing);
        let to = match self.to {
            Way::Cover => Ok(Move::Cover),
            Way::Uncover => Ok(Move::Uncover),
            Way::Bottle => vessel.map(Move::Bottle),
            Way::Return => vessel.map(Move::Return),
        };
        match (problems.take("vessel_id", to), happened_at_us) {
            (Some(to), Some(happened_at_us)) => Ok(NewMove {
                mix_id,
                to,
                happened_at_us,
            }),
            _ => Err(Error::Invalid(problems)),
        }
    }
}

async fn keep(by: Writing<KeepMix>, id: Uuid, keep: KeepIn) -> Result<Made> {
    let done = actions::keep(&by.app, &by.permit, by.key, keep.read(id)?).await?;
    by.made(&done, "mix", "mixes")
}

/// What a mix may be poured into.
#[derive(Debug, Serialize, ToSchema)]
pub struct JoinableOut {
    /// Every other mix that stands.
    pub mixes: Vec<PartnerOut>,
}

/// A mix that another would be poured into.
#[derive(Debug, Serialize, ToSchema)]
pub struct PartnerOut {
    /// Which.
    pub mix_id: Uuid,
    /// What it is and where it stands, for people.
    pub name: String,
    /// What would come of it, for people; nothing where it may not be.
    pub outlook: Option<String>,
    /// Why it may not be, for people.
    pub why_not: Option<String>,
}

async fn joinable(by: By<LookAtBoard>, id: Uuid) -> Result<JoinableOut> {
    let now = by.app.clock().now();
    let found = by.app.database().reading(by.permit.scope(), move |tx| {
        Box::pin(async move {
            let poured = Ground::seen(tx, id).await?;
            partners(tx, &poured, now).await
        })
    });
    let mixes = found.await?.into_iter().map(|partner| PartnerOut {
        mix_id: partner.mix_id,
        name: partner.name,
        outlook: partner.asked.clone().ok(),
        why_not: partner.asked.err(),
    });
    Ok(JoinableOut {
        mixes: mixes.collect(),
    })
}

/// A mix to pour into another.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct PourIn {
    /// The mix it is poured into.
    pub into_mix_id: Uuid,
    /// When, where that was not just now.
    #[serde(default)]
    #[schema(format = DateTime)]
    pub happened_at: Option<String>,
}

impl Input for PourIn {
    const NAMES: &'static [(&'static str, &'static str)] = &[("into", "into_mix_id")];
}

async fn pour(by: Writing<rights::Mix>, id: Uuid, pour: PourIn) -> Result<Made> {
    let mut problems = Problems::default();
    let happened_at_us = at(pour.happened_at.as_deref(), &mut problems);
    let new = NewJoin {
        poured_mix_id: id,
        into_mix_id: pour.into_mix_id,
        happened_at_us: happened_at_us.ok_or(Error::Invalid(problems))?,
    };
    let done = actions::pour_together(&by.app, &by.permit, by.key, new).await?;
    let into = new.into_mix_id;
    Ok(by.made_at(&done, into, &format!("mixes/{into}")))
}

/// Where the first of two fixing baths goes when the second moves up.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct ShiftIn {
    /// How much of it is poured off, in microlitres.
    #[schema(minimum = 0, maximum = 1_000_000_000)]
    pub volume_ul: i64,
    /// The container, as the steward named it.
    #[schema(max_length = 60)]
    pub container: String,
    /// When, where that was not just now.
    #[serde(default)]
    #[schema(format = DateTime)]
    pub happened_at: Option<String>,
}

impl Input for ShiftIn {
    const NAMES: &'static [(&'static str, &'static str)] = &[("volume", "volume_ul")];
}

/// What both ways of pouring off say: volume, container, when.
fn poured_off(
    volume_ul: i64,
    container: &str,
    happened_at: Option<&str>,
) -> Result<(i64, String, Option<i64>)> {
    let mut problems = Problems::default();
    let volume = problems.take("volume", input::poured_off(volume_ul));
    let container = problems.take("container", input::container(container));
    let at = at(happened_at, &mut problems);
    match (volume, container, at) {
        (Some(volume_ul), Some(container), Some(at)) => Ok((volume_ul, container, at)),
        _ => Err(Error::Invalid(problems)),
    }
}

async fn shift(by: Writing<rights::Mix>, id: Uuid, shift: ShiftIn) -> Result<Made> {
    let happened_at = shift.happened_at.as_deref();
    let read = poured_off(shift.volume_ul, &shift.container, happened_at)?;
    let (volume_ul, container, happened_at_us) = read;
    let new = NewShift {
        first_mix_id: id,
        volume_ul,
        container,
        happened_at_us,
    };
    let done = actions::shift(&by.app, &by.permit, by.key, new).await?;
    let second = done.other_id("mix", id)?;
    Ok(by.made_at(&done, second, &format!("mixes/{second}")))
}

/// The containers that the book knows.
#[derive(Debug, Serialize, ToSchema)]
pub struct ContainersOut {
    /// The last used first.
    pub containers: Vec<ContainerOut>,
}

/// A container, as far as one mix goes.
#[derive(Debug, Serialize, ToSchema)]
pub struct ContainerOut {
    /// Its name.
    pub name: String,
    /// What went into it, for people.
    pub holds: String,
    /// Why the mix must not go into it, for people. Nothing means that no rule here
    /// keeps it out; its label and the safety data sheets come first.
    pub why_not: Option<String>,
}

async fn containers(by: By<LookAtBoard>, id: Uuid) -> Result<ContainersOut> {
    let found = by.app.database().reading(by.permit.scope(), move |tx| {
        Box::pin(async move {
            let ground = Ground::seen(tx, id).await?;
            offered(tx, &ground.mix, &ground.settings).await
        })
    });
    let containers = found.await?.into_iter().map(|each| ContainerOut {
        name: each.name,
        holds: each.holds,
        why_not: each.why_not,
    });
    Ok(ContainersOut {
        containers: containers.collect(),
    })
}

/// How a mix is discarded.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct DiscardIn {
    /// How much is poured off, in microlitres.
    #[schema(minimum = 0, maximum = 1_000_000_000)]
    pub volume_ul: i64,
    /// The container, as the steward named it.
    #[schema(max_length = 60)]
    pub container: String,
    /// Why; `spent` where nothing is said.
    #[serde(default)]
    pub why: Why,
    /// When, where that was not just now.
    #[serde(default)]
    #[schema(format = DateTime)]
    pub happened_at: Option<String>,
}

impl Input for DiscardIn {
    const NAMES: &'static [(&'static str, &'static str)] = &[("volume", "volume_ul")];
}

async fn discard(by: Writing<Discard>, id: Uuid, discard: DiscardIn) -> Result<Made> {
    let happened_at = discard.happened_at.as_deref();
    let read = poured_off(discard.volume_ul, &discard.container, happened_at)?;
    let (volume_ul, container, happened_at_us) = read;
    let new = NewDiscard {
        mix_id: id,
        volume_ul,
        container,
        why: discard.why,
        happened_at_us,
    };
    let done = actions::discard(&by.app, &by.permit, by.key, new).await?;
    by.made(&done, "mix", "mixes")
}

/// Why a discard was a mistake.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct UndoDiscardIn {
    /// How the mistake came about.
    #[schema(max_length = 200)]
    pub reason: String,
}

impl Input for UndoDiscardIn {}

async fn undo_discard(by: Writing<TakeBack>, id: Uuid, undo: UndoDiscardIn) -> Result<Made> {
    let reason = needed_note(&undo.reason).map_err(|no| Error::field("reason", no))?;
    let undo = UndoDiscard { mix_id: id, reason };
    let done = actions::undo_discard(&by.app, &by.permit, by.key, undo).await?;
    by.made(&done, "mix", "mixes")
}

/// A bottle and what stands in it.
#[derive(Debug, Serialize, ToSchema)]
pub struct BottleNowOut {
    /// Which.
    pub id: Uuid,
    /// What people call it.
    pub name: String,
    /// What it holds up to the stopper, in microlitres.
    pub holds_ul: i64,
    /// The mix in it.
    pub mix_id: Option<Uuid>,
    /// Whether it held household bleach and waits to be rinsed.
    pub waits_for_rinse: bool,
    /// The verdict.
    #[schema(schema_with = word_of_verdict)]
    pub verdict: Verdict,
    /// Why, in numbers, for people.
    pub reason: String,
    /// When the verdict changes if nobody does anything.
    pub changes: Option<ChangeOut>,
}

fn word_of_verdict() -> RefOr<Schema> {
    verdict_schema()
}

async fn bottle(by: By<LookAtBoard>, id: Uuid) -> Result<BottleNowOut> {
    let now = by.app.clock().now();
    let found = by.app.database().reading(by.permit.scope(), move |tx| {
        Box::pin(async move {
            let settings = rooms::settings(tx).await?;
            let vessel = Vessel::find(tx, VesselId::Bottle(id)).await?;
            let mix = store::in_vessel(tx, id).await?;
            let findings = Findings::of(tx, mix.as_slice()).await?;
            let judgement = judge(mix.as_ref(), &findings, &settings, now)?;
            let waits_for_rinse = store::waits_for_rinse(tx, id).await?;
            Ok((settings, vessel, mix, judgement, waits_for_rinse))
        })
    });
    let (settings, vessel, mix, judgement, waits_for_rinse) = found.await?;
    let zone = settings.time_zone()?;
    Ok(BottleNowOut {
        id,
        name: vessel.name().to_owned(),
        holds_ul: vessel.holds_ul(),
        mix_id: mix.map(|mix| mix.id),
        waits_for_rinse,
        verdict: judgement.verdict,
        reason: verdicts::reason(&judgement, settings.numbers(), &zone),
        changes: ChangeOut::of(&judgement)?,
    })
}

/// A rinse: there is nothing more to say of it.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct RinseIn {}

impl Input for RinseIn {}

async fn rinse_bottle(by: Writing<Discard>, id: Uuid, _: RinseIn) -> Result<Made> {
    let rinsed = VesselId::Bottle(id);
    let done = actions::rinse(&by.app, &by.permit, by.key, NewRinse { rinsed }).await?;
    by.made(&done, "bottle", "bottles")
}

async fn rinse_tray(by: Writing<Discard>, id: Uuid, _: RinseIn) -> Result<Made> {
    let rinsed = VesselId::Tray(id);
    let done = actions::rinse(&by.app, &by.permit, by.key, NewRinse { rinsed }).await?;
    by.made(&done, "tray", "bench/trays")
}
