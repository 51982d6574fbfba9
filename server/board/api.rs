//! The board as JSON.

use serde::Serialize;
use utoipa::ToSchema;
use utoipa::openapi::{ObjectBuilder, RefOr, Schema, Type};
use uuid::Uuid;

use super::{BottleNow, LineNow, TrayNow, bench_now};
use crate::api::{By, Route, moment_text};
use crate::arrivals;
use crate::arrivals::api::PresenceOut;
use crate::clock::moment;
use crate::darkroom::verdict::{Judgement, Verdict};
use crate::error::Result;
use crate::outages;
use crate::outages::api::OutageOut;
use crate::rights::LookAtBoard;
use crate::rooms::{self, Settings};
use crate::web::dates::Zone;
use crate::web::messages::verdicts;
use crate::workshops::{self, Group};

const BOARD: &str = "/rooms/{room}/board";

/// The routes.
#[must_use]
pub fn api() -> Vec<Route> {
    vec![Route::read(
        BOARD,
        "Every tray's verdict, why, and when it changes.",
        read,
    )]
}

/// The board as it is at one moment.
#[derive(Debug, Serialize, ToSchema)]
pub struct BoardOut {
    /// The moment.
    #[schema(format = DateTime)]
    pub as_of: String,
    /// What is off now: while anything is, nobody should be at the trays.
    pub off: Vec<OutageOut>,
    /// Who is there, the longest first.
    pub present: Vec<PresenceOut>,
    /// Guests who are there, by workshop.
    pub guests: Vec<GuestsOnBoardOut>,
    /// How many may be there.
    pub people_limit: i32,
    /// The lines in use, in their order.
    pub lines: Vec<LineOnBoardOut>,
    /// The bottles that hold something, by name.
    pub bottles: Vec<BottleOnBoardOut>,
}

/// Guests of a workshop who are there.
#[derive(Debug, Serialize, ToSchema)]
pub struct GuestsOnBoardOut {
    /// Which workshop.
    pub workshop_id: Uuid,
    /// Who leads it, by name.
    pub leader: String,
    /// How many.
    pub guests: i64,
}

impl From<Group> for GuestsOnBoardOut {
    fn from(group: Group) -> Self {
        Self {
            workshop_id: group.workshop_id,
            leader: group.leader,
            guests: group.count,
        }
    }
}

/// A bottle that holds something.
#[derive(Debug, Serialize, ToSchema)]
pub struct BottleOnBoardOut {
    /// Which.
    pub id: Uuid,
    /// What people call it.
    pub name: String,
    /// The mix in it.
    pub mix_id: Uuid,
    /// The verdict.
    #[schema(schema_with = verdict_schema)]
    pub verdict: Verdict,
    /// Why, in numbers, for people.
    pub reason: String,
    /// When the verdict changes if nobody does anything.
    pub changes: Option<ChangeOut>,
}

/// A line on the board.
#[derive(Debug, Serialize, ToSchema)]
pub struct LineOnBoardOut {
    /// Which.
    pub id: Uuid,
    /// What people call it.
    pub name: String,
    /// Its trays in the order prints travel.
    pub trays: Vec<TrayOnBoardOut>,
}

/// A tray on the board.
#[derive(Debug, Serialize, ToSchema)]
pub struct TrayOnBoardOut {
    /// Which.
    pub id: Uuid,
    /// What people call it.
    pub name: String,
    /// The mix in it.
    pub mix_id: Option<Uuid>,
    /// The verdict.
    #[schema(schema_with = verdict_schema)]
    pub verdict: Verdict,
    /// Why, in numbers, for people.
    pub reason: String,
    /// When the verdict changes if nobody does anything.
    pub changes: Option<ChangeOut>,
}

/// A verdict to come.
#[derive(Debug, Serialize, ToSchema)]
pub struct ChangeOut {
    /// When.
    #[schema(format = DateTime)]
    pub at: String,
    /// To which.
    #[schema(schema_with = verdict_schema)]
    pub to: Verdict,
}

async fn read(by: By<LookAtBoard>) -> Result<BoardOut> {
    let now = by.app.clock().now();
    let (settings, bench, off, (present, guests)) = by
        .app
        .database()
        .reading(by.permit.scope(), move |tx| {
            Box::pin(async move {
                let settings = rooms::settings(tx).await?;
                let bench = bench_now(tx, now, &settings).await?;
                let off = outages::open(tx).await?;
                let people = (
                    arrivals::present(tx, now).await?,
                    workshops::here(tx, now).await?,
                );
                Ok((settings, bench, off, people))
            })
        })
        .await?;
    let zone = settings.time_zone()?;
    let lines = bench.lines.into_iter();
    let lines = lines.map(|line| on_board(line, &settings, &zone));
    let bottles = bench.bottles.into_iter();
    let bottles = bottles.map(|each| bottle_on_board(each, &settings, &zone));
    Ok(BoardOut {
        as_of: moment_text(now)?,
        off: off.into_iter().map(OutageOut::of).collect::<Result<_>>()?,
        present: present
            .into_iter()
            .map(PresenceOut::of)
            .collect::<Result<_>>()?,
        guests: guests.into_iter().map(GuestsOnBoardOut::from).collect(),
        people_limit: settings.people_limit,
        lines: lines.collect::<Result<_>>()?,
        bottles: bottles.collect::<Result<_>>()?,
    })
}

fn on_board(line: LineNow, settings: &Settings, zone: &Zone) -> Result<LineOnBoardOut> {
    let trays = line.trays.into_iter();
    Ok(LineOnBoardOut {
        id: line.line.id,
        name: line.line.name,
        trays: trays
            .map(|tray| tray_on_board(tray, settings, zone))
            .collect::<Result<_>>()?,
    })
}

impl ChangeOut {
    /// When a verdict changes, where it does.
    ///
    /// # Errors
    /// A fault for a moment beyond the calendar.
    pub fn of(judgement: &Judgement) -> Result<Option<Self>> {
        let changes = judgement.changes_at.map(|(at, to)| {
            let at = moment_text(moment(at.get()))?;
            Ok(Self { at, to })
        });
        changes.transpose()
    }
}

fn tray_on_board(now: TrayNow, settings: &Settings, zone: &Zone) -> Result<TrayOnBoardOut> {
    Ok(TrayOnBoardOut {
        id: now.tray.id,
        name: now.tray.name,
        mix_id: now.mix.map(|mix| mix.id),
        verdict: now.judgement.verdict,
        reason: verdicts::reason(&now.judgement, settings.numbers(), zone),
        changes: ChangeOut::of(&now.judgement)?,
    })
}

fn bottle_on_board(now: BottleNow, settings: &Settings, zone: &Zone) -> Result<BottleOnBoardOut> {
    Ok(BottleOnBoardOut {
        id: now.bottle.id,
        name: now.bottle.name,
        mix_id: now.mix.id,
        verdict: now.judgement.verdict,
        reason: verdicts::reason(&now.judgement, settings.numbers(), zone),
        changes: ChangeOut::of(&now.judgement)?,
    })
}

/// The verdicts as JSON writes them, best first.
pub(crate) fn verdict_schema() -> RefOr<Schema> {
    let all = [
        Verdict::Ready,
        Verdict::TestFirst,
        Verdict::Replace,
        Verdict::Unknown,
        Verdict::NothingRecorded,
    ];
    let names = all
        .into_iter()
        .filter_map(|each| serde_json::to_value(each).ok());
    ObjectBuilder::new()
        .schema_type(Type::String)
        .enum_values(Some(names.collect::<Vec<_>>()))
        .into()
}
