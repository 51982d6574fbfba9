//! Lamps, screens and their fog tests as JSON.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;
use uuid::Uuid;

use super::actions::{self, NewFogTest, NewLamp, UndoFogTest};
use super::input::{self, TEST_MONTHS};
use super::standing::{LampNow, PaperNow, Standing, lamps_now};
use super::store::{self, Asked, FogTest};
use super::{Hanging, LampKind};
use crate::api::{By, Input, Made, Page, Paging, Route, Writing, moment_text};
use crate::clock::micros;
use crate::error::{Error, Result};
use crate::input::{moment, name, needed_remark, note};
use crate::problem::Problems;
use crate::rights::{KeepLamps, SeeLamps, TakeBack, TestLamps};
use crate::rooms;

const LAMPS: &str = "/rooms/{room}/lamps";
const LAMP: &str = "/rooms/{room}/lamps/{id}";
const TEST: &str = "/rooms/{room}/lamps/{id}/test";
const TESTS: &str = "/rooms/{room}/fog-tests";
const ONE_TEST: &str = "/rooms/{room}/fog-tests/{id}";
const BACK: &str = "/rooms/{room}/fog-tests/{id}/take-back";

/// The routes.
#[must_use]
pub fn api() -> Vec<Route> {
    vec![
        Route::list(
            LAMPS,
            "Lamps and screens by name, retired ones last, with what their tests say now.",
            list,
        ),
        Route::one(LAMP, "One lamp or screen.", one),
        Route::add(LAMPS, "Add a lamp or a screen.", add),
        Route::change(LAMP, "Set a lamp or a screen.", change),
        Route::act(TEST, "Record a fog test of a lamp as it hangs now.", test),
        Route::list(TESTS, "Fog tests, the latest written first.", tests),
        Route::one(ONE_TEST, "One fog test.", one_test),
        Route::act(BACK, "Take a mistaken fog test back.", take_back),
    ]
}

/// A lamp or a screen, and what its tests say now.
#[derive(Debug, Serialize, ToSchema)]
pub struct LampOut {
    /// Which.
    pub id: Uuid,
    /// What people call it.
    pub name: String,
    /// What shines.
    pub kind: LampKind,
    /// Bulb and filter, or how bright a screen is.
    pub light: String,
    /// From it to the nearest place where paper lies or is carried.
    pub distance_tenths_mm: i32,
    /// The space it hangs in; nothing for the room itself.
    pub space_id: Option<Uuid>,
    /// So many months after a test it is tested again.
    pub test_months: i32,
    /// Whether it is used no more.
    pub is_retired: bool,
    /// What is known of every paper in use.
    pub papers: Vec<LampPaperOut>,
}

/// What is known of one paper under a lamp.
#[derive(Debug, Serialize, ToSchema)]
pub struct LampPaperOut {
    /// The paper.
    pub paper_class_id: Uuid,
    /// What the last test with it says now. Only the time of one that is `tested` holds.
    pub standing: Standing,
    /// The last test with it.
    pub fog_test_id: Option<Uuid>,
    /// How long paper may lie there, by that test.
    pub safe_s: Option<i64>,
    /// The last day on which that test holds.
    #[schema(format = Date)]
    pub again_by: Option<String>,
}

impl From<LampNow> for LampOut {
    fn from(now: LampNow) -> Self {
        let (lamp, hangs) = (now.lamp.id, now.lamp.hangs);
        Self {
            id: lamp,
            name: now.lamp.name,
            kind: hangs.kind,
            light: hangs.light,
            distance_tenths_mm: hangs.distance_tenths_mm,
            space_id: hangs.space_id,
            test_months: now.lamp.test_months,
            is_retired: now.lamp.is_retired,
            papers: now.papers.into_iter().map(LampPaperOut::from).collect(),
        }
    }
}

impl From<PaperNow> for LampPaperOut {
    fn from(paper: PaperNow) -> Self {
        let test = paper.test.as_ref();
        Self {
            paper_class_id: paper.id,
            standing: paper.standing,
            fog_test_id: test.map(|test| test.id),
            safe_s: test.and_then(|test| test.safe_s),
            again_by: test.map(|test| test.again_by.clone()),
        }
    }
}

async fn all(by: &By<SeeLamps>) -> Result<Vec<LampNow>> {
    let (database, now) = (by.app.database(), by.app.clock().now());
    database
        .reading(by.permit.scope(), move |tx| {
            Box::pin(async move {
                let zone = rooms::settings(tx).await?.time_zone()?;
                lamps_now(tx, &zone, now).await
            })
        })
        .await
}

async fn list(by: By<SeeLamps>, paging: Paging) -> Result<Page<LampOut>> {
    let all = all(&by).await?.into_iter().map(LampOut::from).collect();
    paging.cut(all, |lamp: &LampOut| lamp.id.to_string())
}

async fn one(by: By<SeeLamps>, id: Uuid) -> Result<LampOut> {
    let mut all = all(&by).await?.into_iter();
    let found = all.find(|each| each.lamp.id == id);
    found.map(LampOut::from).ok_or(Error::NotFound)
}

/// A lamp or a screen to set.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct LampIn {
    /// What people call it.
    #[schema(max_length = 80)]
    pub name: String,
    /// What shines.
    pub kind: LampKind,
    /// Bulb and filter, or how bright a screen is.
    #[serde(default)]
    #[schema(max_length = 200)]
    pub light: String,
    /// From it to the nearest place where paper lies or is carried.
    #[schema(minimum = 500, maximum = 100_000)]
    pub distance_tenths_mm: i64,
    /// The space it hangs in; nothing for the room itself.
    pub space_id: Option<Uuid>,
    /// So many months after a test it is tested again.
    #[serde(default = "usual_months")]
    #[schema(minimum = 1, maximum = 60)]
    pub test_months: i64,
    /// Whether it is used no more.
    #[serde(default)]
    pub is_retired: bool,
}

fn usual_months() -> i64 {
    TEST_MONTHS.into()
}

impl Input for LampIn {
    const NAMES: &'static [(&'static str, &'static str)] = &[("space", "space_id")];
}

impl LampIn {
    fn read(self, id: Option<Uuid>) -> Result<NewLamp> {
        let mut problems = Problems::default();
        let name = problems.take("name", name(&self.name));
        let light = problems.take("light", note(&self.light));
        let distance = input::distance(self.distance_tenths_mm);
        let distance = problems.take("distance_tenths_mm", distance);
        let months = problems.take("test_months", input::months(self.test_months));
        match (name, light, distance, months) {
            (Some(name), Some(light), Some(distance_tenths_mm), Some(test_months)) => Ok(NewLamp {
                id,
                name,
                hangs: Hanging {
                    kind: self.kind,
                    light,
                    distance_tenths_mm,
                    space_id: self.space_id,
                },
                test_months,
                is_retired: self.is_retired,
            }),
            _ => Err(Error::Invalid(problems)),
        }
    }
}

async fn add(by: Writing<KeepLamps>, lamp: LampIn) -> Result<Made> {
    set(by, lamp.read(None)?).await
}

async fn change(by: Writing<KeepLamps>, id: Uuid, lamp: LampIn) -> Result<Made> {
    set(by, lamp.read(Some(id))?).await
}

async fn set(by: Writing<KeepLamps>, new: NewLamp) -> Result<Made> {
    let done = actions::set_lamp(&by.app, &by.permit, by.key, new).await?;
    by.made(&done, "lamp", "lamps")
}

/// A fog test as it was kept.
#[derive(Debug, Serialize, ToSchema)]
pub struct FogTestOut {
    /// Which.
    pub id: Uuid,
    /// The number of its entry.
    pub seq: i64,
    /// Of which lamp.
    pub lamp_id: Uuid,
    /// With which paper.
    pub paper_class_id: Uuid,
    /// Who tested.
    pub person_id: Option<Uuid>,
    /// What shone.
    pub kind: LampKind,
    /// Bulb and filter, or how bright a screen was.
    pub light: String,
    /// From the lamp to the nearest paper then.
    pub distance_tenths_mm: i32,
    /// The space it hung in; nothing for the room itself.
    pub space_id: Option<Uuid>,
    /// The longest step that showed nothing; nothing where the shortest one fogged.
    pub longest_clean_s: Option<i64>,
    /// The shortest step that showed fog; nothing where none did.
    pub shortest_fogged_s: Option<i64>,
    /// How long paper may lie there; nothing where there is no such time.
    pub safe_s: Option<i64>,
    /// The last day on which it holds.
    #[schema(format = Date)]
    pub again_by: String,
    /// When.
    #[schema(format = DateTime)]
    pub happened_at: String,
    /// The number of the entry that took it back.
    pub undone_by: Option<i64>,
}

impl FogTestOut {
    fn of(test: FogTest) -> Result<Self> {
        Ok(Self {
            id: test.id,
            seq: test.seq,
            lamp_id: test.lamp_id,
            paper_class_id: test.paper_class_id,
            person_id: test.person_id,
            kind: test.hangs.kind,
            light: test.hangs.light,
            distance_tenths_mm: test.hangs.distance_tenths_mm,
            space_id: test.hangs.space_id,
            longest_clean_s: test.clean_s,
            shortest_fogged_s: test.fogged_s,
            safe_s: test.safe_s,
            again_by: test.again_by,
            happened_at: moment_text(test.happened_at)?,
            undone_by: test.undone_by,
        })
    }
}

async fn tests(by: By<SeeLamps>, paging: Paging) -> Result<Page<FogTestOut>> {
    let asked = Asked {
        before: paging.after_seq()?,
        ..Asked::default()
    };
    let most = paging.limit + 1;
    let found = by.app.database().reading(by.permit.scope(), move |tx| {
        Box::pin(store::tests(tx, asked, most))
    });
    let page = paging.first_of(found.await?, |test| test.seq.to_string());
    page.map(FogTestOut::of)
}

async fn one_test(by: By<SeeLamps>, id: Uuid) -> Result<FogTestOut> {
    let database = by.app.database();
    let found = database.reading(by.permit.scope(), move |tx| Box::pin(store::test(tx, id)));
    FogTestOut::of(found.await?.ok_or(Error::NotFound)?)
}

/// What was found on paper that lay in a lamp's light, step by step.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct FogTestIn {
    /// The paper.
    pub paper_class_id: Uuid,
    /// The longest step that shows nothing; nothing where the shortest one fogged.
    #[schema(minimum = 2, maximum = 86_400)]
    pub longest_clean_s: Option<i64>,
    /// The shortest step that shows fog; nothing where none does.
    #[schema(minimum = 2, maximum = 86_400)]
    pub shortest_fogged_s: Option<i64>,
    /// When, where that was not just now.
    #[schema(format = DateTime)]
    pub happened_at: Option<String>,
}

impl Input for FogTestIn {
    const NAMES: &'static [(&'static str, &'static str)] = &[
        ("paper_class", "paper_class_id"),
        ("clean", "longest_clean_s"),
        ("fogged", "shortest_fogged_s"),
    ];
}

impl FogTestIn {
    fn read(self, lamp_id: Uuid) -> Result<NewFogTest> {
        let mut problems = Problems::default();
        let step = |given: Option<i64>| given.map(input::step).transpose();
        let clean = problems.take("clean", step(self.longest_clean_s));
        let fogged = problems.take("fogged", step(self.shortest_fogged_s));
        let at = self.happened_at.as_deref().map(moment).transpose();
        let at = problems.take("happened_at", at);
        match (clean, fogged, at) {
            (Some(clean_s), Some(fogged_s), Some(at)) => Ok(NewFogTest {
                lamp_id,
                paper_class_id: self.paper_class_id,
                clean_s,
                fogged_s,
                happened_at_us: at.map(micros),
            }),
            _ => Err(Error::Invalid(problems)),
        }
    }
}

async fn test(by: Writing<TestLamps>, id: Uuid, test: FogTestIn) -> Result<Made> {
    let done = actions::test_lamp(&by.app, &by.permit, by.key, test.read(id)?).await?;
    by.made(&done, "fog_test", "fog-tests")
}

/// Why a fog test is taken back.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct FogTestBackIn {
    /// Why.
    #[schema(max_length = 300)]
    pub reason: String,
}

impl Input for FogTestBackIn {}

async fn take_back(by: Writing<TakeBack>, id: Uuid, undo: FogTestBackIn) -> Result<Made> {
    let reason = needed_remark(&undo.reason).map_err(|no| Error::field("reason", no))?;
    let undo = UndoFogTest {
        fog_test_id: id,
        reason,
    };
    let done = actions::take_back(&by.app, &by.permit, by.key, undo).await?;
    by.made(&done, "fog_test", "fog-tests")
}
