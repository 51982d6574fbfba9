//! Finishing times and the wash as JSON.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;
use uuid::Uuid;

use super::actions::{self, Emptying, Joining, NewFinishing};
use super::{Finishing, Wash, input, store};
use crate::api::{By, Input, Made, Route, Writing, moment_text};
use crate::bench::line;
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::input::needed_note;
use crate::problem::Problems;
use crate::rights::{KeepBench, NoteSheets, SeeBench};

const FINISHING: &str = "/rooms/{room}/bench/lines/{id}/finishing";
const WASH: &str = "/rooms/{room}/bench/lines/{id}/wash";
const EMPTY: &str = "/rooms/{room}/bench/lines/{id}/wash/empty";

/// The routes.
#[must_use]
pub fn api() -> Vec<Route> {
    vec![
        Route::one(FINISHING, "The finishing times of a line.", times),
        Route::change(
            FINISHING,
            "Set the finishing times of one paper class in a line.",
            set_times,
        ),
        Route::one(WASH, "What lies in a line's wash, and until when.", wash),
        Route::act(
            WASH,
            "A print joins a line's wash, which restarts for all in it.",
            join,
        ),
        Route::act(EMPTY, "All prints are out of a line's wash.", empty),
    ]
}

/// The finishing times of a line.
#[derive(Debug, Serialize, ToSchema)]
pub struct LineFinishingOut {
    /// One for each paper class in use that has times.
    pub classes: Vec<FinishingOut>,
}

/// The finishing times of one paper class, in seconds.
#[derive(Debug, Serialize, ToSchema)]
pub struct FinishingOut {
    /// The class.
    pub paper_class_id: Uuid,
    /// In each fixing bath.
    pub fix_s: i64,
    /// The longest in all fixing baths together.
    pub longest_fix_s: i64,
    /// The rinse after the fixer.
    pub rinse_s: i64,
    /// In the wash aid, where one is used.
    pub wash_aid_s: Option<i64>,
    /// The wash after the wash aid.
    pub wash_with_aid_s: Option<i64>,
    /// The wash without it.
    pub wash_without_aid_s: i64,
    /// Where they come from.
    pub basis: String,
}

impl From<Finishing> for FinishingOut {
    fn from(times: Finishing) -> Self {
        Self {
            paper_class_id: times.paper_class_id,
            fix_s: times.fix_s,
            longest_fix_s: times.longest_fix_s,
            rinse_s: times.rinse_s,
            wash_aid_s: times.wash_aid_s,
            wash_with_aid_s: times.wash_with_aid_s,
            wash_without_aid_s: times.wash_without_aid_s,
            basis: times.basis,
        }
    }
}

async fn there(tx: &mut RoomTx, id: Uuid) -> Result<()> {
    line(tx, id).await?.map(drop).ok_or(Error::NotFound)
}

async fn times(by: By<SeeBench>, id: Uuid) -> Result<LineFinishingOut> {
    let database = by.app.database();
    let found = database.reading(by.permit.scope(), move |tx| {
        Box::pin(async move {
            there(tx, id).await?;
            store::finishings(tx, id).await
        })
    });
    let classes = found.await?.into_iter().map(FinishingOut::from).collect();
    Ok(LineFinishingOut { classes })
}

/// Finishing times to set, in seconds.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct FinishingIn {
    /// The class.
    pub paper_class_id: Uuid,
    /// In each fixing bath.
    #[schema(minimum = 5, maximum = 7_200)]
    pub fix_s: i64,
    /// The longest in all fixing baths together.
    #[schema(minimum = 5, maximum = 7_200)]
    pub longest_fix_s: i64,
    /// The rinse after the fixer.
    #[schema(minimum = 0, maximum = 3_600)]
    pub rinse_s: i64,
    /// In the wash aid, where one is used.
    #[schema(minimum = 5, maximum = 7_200)]
    #[serde(default)]
    pub wash_aid_s: Option<i64>,
    /// The wash after the wash aid; given with the time in it.
    #[schema(minimum = 30, maximum = 86_400)]
    #[serde(default)]
    pub wash_with_aid_s: Option<i64>,
    /// The wash without it.
    #[schema(minimum = 30, maximum = 86_400)]
    pub wash_without_aid_s: i64,
    /// Where they come from.
    #[schema(max_length = 200)]
    pub basis: String,
}

impl Input for FinishingIn {
    const NAMES: &'static [(&'static str, &'static str)] = &[
        ("paper_class", "paper_class_id"),
        ("longest_fix", "longest_fix_s"),
        ("wash_aid", "wash_aid_s"),
        ("wash_with_aid", "wash_with_aid_s"),
    ];
}

impl FinishingIn {
    fn read(self, line_id: Uuid) -> Result<NewFinishing> {
        let mut problems = Problems::default();
        problems.take("fix_s", input::fix(self.fix_s));
        problems.take("longest_fix_s", input::fix(self.longest_fix_s));
        problems.take("rinse_s", input::rinse(self.rinse_s));
        problems.take(
            "wash_aid_s",
            self.wash_aid_s.map(input::wash_aid).transpose(),
        );
        problems.take(
            "wash_with_aid_s",
            self.wash_with_aid_s.map(input::wash).transpose(),
        );
        problems.take("wash_without_aid_s", input::wash(self.wash_without_aid_s));
        match problems.take("basis", needed_note(&self.basis)) {
            Some(basis) if problems.is_empty() => Ok(NewFinishing {
                line_id,
                paper_class_id: self.paper_class_id,
                fix_s: self.fix_s,
                longest_fix_s: self.longest_fix_s,
                rinse_s: self.rinse_s,
                wash_aid_s: self.wash_aid_s,
                wash_with_aid_s: self.wash_with_aid_s,
                wash_without_aid_s: self.wash_without_aid_s,
                basis,
            }),
            _ => Err(Error::Invalid(problems)),
        }
    }
}

async fn set_times(by: Writing<KeepBench>, id: Uuid, times: FinishingIn) -> Result<Made> {
    let new = times.read(id)?;
    let done = actions::set_finishing(&by.app, &by.permit, by.key, new).await?;
    Ok(by.made_at(&done, id, &format!("bench/lines/{id}/finishing")))
}

/// A line's wash.
#[derive(Debug, Serialize, ToSchema)]
pub struct WashOut {
    /// What was last noted in it; nothing once all prints were noted out of it.
    pub load: Option<WashLoadOut>,
}

/// What lies in a wash, or lay there until its time was over.
#[derive(Debug, Serialize, ToSchema)]
pub struct WashLoadOut {
    /// When the first print joined.
    #[schema(format = DateTime)]
    pub first_joined_at: String,
    /// When the last one joined.
    #[schema(format = DateTime)]
    pub last_joined_at: String,
    /// When all are washed.
    #[schema(format = DateTime)]
    pub ends_at: String,
    /// The class whose time counts: the longest of those that joined.
    pub paper_class_id: Uuid,
    /// How long all wash from the last one on, in seconds.
    pub wash_s: i64,
}

impl WashLoadOut {
    fn of(wash: &Wash) -> Result<Self> {
        Ok(Self {
            first_joined_at: moment_text(wash.first_joined_at)?,
            last_joined_at: moment_text(wash.last_joined_at)?,
            ends_at: moment_text(wash.ends_at()?)?,
            paper_class_id: wash.paper_class_id,
            wash_s: wash.wash_s,
        })
    }
}

async fn wash(by: By<SeeBench>, id: Uuid) -> Result<WashOut> {
    let database = by.app.database();
    let found = database.reading(by.permit.scope(), move |tx| {
        Box::pin(async move {
            there(tx, id).await?;
            store::wash(tx, id).await
        })
    });
    let load = found.await?.as_ref().map(WashLoadOut::of).transpose()?;
    Ok(WashOut { load })
}

/// A print that joins a wash.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct WashJoinIn {
    /// Of which class it is.
    pub paper_class_id: Uuid,
    /// Whether it was in the wash aid before.
    #[serde(default)]
    pub had_wash_aid: bool,
}

impl Input for WashJoinIn {
    const NAMES: &'static [(&'static str, &'static str)] = &[("paper_class", "paper_class_id")];
}

async fn join(by: Writing<NoteSheets>, id: Uuid, print: WashJoinIn) -> Result<Made> {
    let joining = Joining {
        line_id: id,
        paper_class_id: print.paper_class_id,
        had_wash_aid: print.had_wash_aid,
    };
    let done = actions::join_wash(&by.app, &by.permit, by.key, joining).await?;
    Ok(by.made_at(&done, id, &format!("bench/lines/{id}/wash")))
}

/// A wash that is empty: nothing more to say.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct WashEmptyIn {}

impl Input for WashEmptyIn {}

async fn empty(by: Writing<NoteSheets>, id: Uuid, _: WashEmptyIn) -> Result<Made> {
    let emptying = Emptying {
        emptied_line_id: id,
    };
    let done = actions::empty_wash(&by.app, &by.permit, by.key, emptying).await?;
    Ok(by.made_at(&done, id, &format!("bench/lines/{id}/wash")))
}
