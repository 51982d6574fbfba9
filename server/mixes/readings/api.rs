//! Readings as JSON.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;
use uuid::Uuid;

use super::input::{self, Said};
use super::{Kept, NewExtension, NewReading, Taken, UndoReading, store};
use super::{extend as extend_mix, look, take_back as take_back_reading};
use crate::api::{By, Input, Made, Page, Paging, Route, Writing, moment_text};
use crate::clock::micros;
use crate::error::{Error, Result};
use crate::input::moment;
use crate::mixes::{Outcome, ReadingKind};
use crate::problem::{Problem, Problems};
use crate::products::parse_group;
use crate::rights::{ExtendMix, LookAtBoard, TakeBack, TestMix};

const READINGS: &str = "/rooms/{room}/readings";
const READING: &str = "/rooms/{room}/readings/{id}";
const CHECK: &str = "/rooms/{room}/mixes/{id}/check";
const FLAG: &str = "/rooms/{room}/mixes/{id}/flag";
const EXTEND: &str = "/rooms/{room}/mixes/{id}/extend";
const TAKE_BACK: &str = "/rooms/{room}/readings/{id}/take-back";

/// The routes.
#[must_use]
pub fn api() -> Vec<Route> {
    vec![
        Route::list(READINGS, "What people found of mixes, newest first.", list),
        Route::one(READING, "One reading.", one),
        Route::act(CHECK, "Record a check or a temperature of a mix.", check),
        Route::act(FLAG, "Flag a mix as contaminated.", flag),
        Route::act(
            EXTEND,
            "Let a mix be tested and used a little longer.",
            extend,
        ),
        Route::act(TAKE_BACK, "Take a mistaken reading back.", take_back),
    ]
}

/// A reading as it was kept.
#[derive(Debug, Serialize, ToSchema)]
pub struct ReadingOut {
    /// Which.
    pub id: Uuid,
    /// The number of its entry.
    pub seq: i64,
    /// The mix.
    pub mix_id: Uuid,
    /// Who looked.
    pub person_id: Option<Uuid>,
    /// At what.
    pub kind: ReadingKind,
    /// What came of it.
    pub outcome: Outcome,
    /// The figure: tenths of a degree, seconds, thousandths of pH or mg/L, as the kind says.
    pub value: Option<i64>,
    /// The bath's temperature then, in tenths of a degree Celsius.
    pub tenths_celsius: Option<i32>,
    /// The paper or film it was made with.
    pub sample: String,
    /// Whether later readings are held against it.
    pub is_fresh: bool,
    /// Against the fresh reading, in thousandths; nothing where the two do not compare.
    pub ratio_thousandths: Option<i64>,
    /// What came into the mix, by group; `unknown` where nobody can say.
    pub contaminants: Vec<String>,
    /// In the finder's words.
    pub remark: String,
    /// When.
    #[schema(format = DateTime)]
    pub happened_at: String,
    /// The number of the entry that took it back.
    pub undone_by: Option<i64>,
}

impl ReadingOut {
    fn of(kept: Kept) -> Result<Self> {
        Ok(Self {
            id: kept.id,
            seq: kept.seq,
            mix_id: kept.mix_id,
            person_id: kept.person_id,
            kind: kept.kind,
            outcome: kept.outcome,
            value: kept.value,
            tenths_celsius: kept.tenths_celsius,
            sample: kept.sample,
            is_fresh: kept.is_fresh,
            ratio_thousandths: kept.ratio_thousandths,
            contaminants: kept.contaminants,
            remark: kept.remark,
            happened_at: moment_text(kept.happened_at)?,
            undone_by: kept.undone_by,
        })
    }
}

async fn list(by: By<LookAtBoard>, paging: Paging) -> Result<Page<ReadingOut>> {
    let (before, limit) = (paging.after_seq()?, paging.limit);
    let found = by.app.database().reading(by.permit.scope(), move |tx| {
        Box::pin(store::of_all(tx, before, limit + 1))
    });
    let page = paging.first_of(found.await?, |kept| kept.seq.to_string());
    page.map(ReadingOut::of)
}

async fn one(by: By<LookAtBoard>, id: Uuid) -> Result<ReadingOut> {
    let database = by.app.database();
    let found = database.reading(by.permit.scope(), move |tx| Box::pin(store::one(tx, id)));
    ReadingOut::of(found.await?.ok_or(Error::NotFound)?)
}

/// What somebody found of a mix.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct CheckIn {
    /// What they looked at; contamination is flagged.
    pub kind: ReadingKind,
    /// Of a check by eye: whether it was good.
    pub passed: Option<bool>,
    /// The figure: tenths of a degree, seconds, thousandths of pH or mg/L, as the kind says.
    pub value: Option<i64>,
    /// Of emergence and clearing: the bath's temperature, in tenths of a degree Celsius.
    #[schema(minimum = 0, maximum = 600)]
    pub tenths_celsius: Option<i64>,
    /// Of emergence and clearing: the paper or film.
    #[schema(max_length = 80)]
    #[serde(default)]
    pub sample: String,
    /// Of emergence and clearing: whether the mix was fresh, so that later readings are held
    /// against this one.
    #[serde(default)]
    pub is_fresh: bool,
    /// In the finder's words.
    #[schema(max_length = 300)]
    #[serde(default)]
    pub remark: String,
    /// When, where that was not just now.
    #[schema(format = DateTime)]
    pub happened_at: Option<String>,
}

impl Input for CheckIn {
    const NAMES: &'static [(&'static str, &'static str)] = &[
        ("outcome", "passed"),
        ("temperature", "value"),
        ("seconds", "value"),
        ("ph", "value"),
        ("silver", "value"),
        ("bath_temperature", "tenths_celsius"),
        ("fresh", "is_fresh"),
    ];
}

impl CheckIn {
    fn read(self, mix_id: Uuid) -> Result<NewReading> {
        let mut problems = Problems::default();
        let said = Said {
            kind: self.kind,
            passed: self.passed,
            value: self.value.ok_or(Problem::Missing),
            bath: self.tenths_celsius.ok_or(Problem::Missing),
            sample: self.sample,
            is_fresh: self.is_fresh,
        };
        let taken = input::taken(said, &mut problems);
        let remark = problems.take("remark", input::remark(&self.remark));
        let at = self.happened_at.as_deref().map(moment).transpose();
        let at = problems.take("happened_at", at);
        match (taken, remark, at) {
            (Some(taken), Some(remark), Some(at)) => Ok(NewReading {
                mix_id,
                taken,
                remark,
                happened_at_us: at.map(micros),
            }),
            _ => Err(Error::Invalid(problems)),
        }
    }
}

async fn check(by: Writing<TestMix>, id: Uuid, check: CheckIn) -> Result<Made> {
    let done = look(&by.app, &by.permit, by.key, check.read(id)?).await?;
    by.made(&done, "reading", "readings")
}

/// What came into a mix.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct FlagIn {
    /// By group, as products name them; not needed where nobody can say.
    #[serde(default)]
    pub groups: Vec<String>,
    /// Whether nobody can say.
    #[serde(default)]
    pub is_unknown: bool,
    /// In the finder's words.
    #[schema(max_length = 300)]
    #[serde(default)]
    pub remark: String,
}

impl Input for FlagIn {}

impl FlagIn {
    fn read(self, mix_id: Uuid) -> Result<NewReading> {
        let mut problems = Problems::default();
        let groups: Result<Vec<_>> = self.groups.iter().map(|text| parse_group(text)).collect();
        let groups = groups.map_err(|_| Problem::NotAChoice);
        let groups = groups.and_then(|groups| input::came_in(&groups, self.is_unknown));
        let groups = problems.take("groups", groups);
        let remark = problems.take("remark", input::remark(&self.remark));
        match (groups, remark) {
            (Some(groups), Some(remark)) => Ok(NewReading {
                mix_id,
                taken: Taken::Contamination(groups),
                remark,
                happened_at_us: None,
            }),
            _ => Err(Error::Invalid(problems)),
        }
    }
}

async fn flag(by: Writing<TestMix>, id: Uuid, flag: FlagIn) -> Result<Made> {
    let done = look(&by.app, &by.permit, by.key, flag.read(id)?).await?;
    by.made(&done, "reading", "readings")
}

/// How long a mix may be used, tested, and why.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct ExtendIn {
    /// From now on; a day at most.
    #[schema(minimum = 1, maximum = 1_440)]
    pub minutes: i64,
    /// Why.
    #[schema(max_length = 300)]
    pub reason: String,
}

impl Input for ExtendIn {
    const NAMES: &'static [(&'static str, &'static str)] = &[("hours", "minutes")];
}

async fn extend(by: Writing<ExtendMix>, id: Uuid, extend: ExtendIn) -> Result<Made> {
    let reason = input::reason(&extend.reason).map_err(|no| Error::field("reason", no))?;
    let new = NewExtension {
        mix_id: id,
        minutes: extend.minutes,
        reason,
    };
    let done = extend_mix(&by.app, &by.permit, by.key, new).await?;
    by.made(&done, "mix", "mixes")
}

/// Why a reading is taken back.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct TakeBackIn {
    /// Why.
    #[schema(max_length = 300)]
    pub reason: String,
}

impl Input for TakeBackIn {}

async fn take_back(by: Writing<TakeBack>, id: Uuid, undo: TakeBackIn) -> Result<Made> {
    let reason = input::reason(&undo.reason).map_err(|no| Error::field("reason", no))?;
    let undo = UndoReading {
        reading_id: id,
        reason,
    };
    let done = take_back_reading(&by.app, &by.permit, by.key, undo).await?;
    by.made(&done, "reading", "readings")
}
