//! What a person should know, kept until read.
//!
//! A notice is a kind and its parameters; the words are put to it when it is
//! shown. It is told inside the transaction that gives the reason for it.

mod pages;
mod store;
/// Its pages, as templates want them.
pub mod views;

pub use pages::pages;

use serde::{Deserialize, Serialize};
use time::OffsetDateTime;
use uuid::Uuid;

use crate::app::App;
use crate::database::{RoomTx, Scope};
use crate::error::Result;
use crate::identity::Permit;
use crate::rights::ReadNotices;

/// Notices on a page.
pub const PAGE: i64 = 50;

/// What there is to tell, each with what its sentence needs.
#[derive(Clone, Debug, Deserialize, Eq, PartialEq, Serialize)]
#[serde(tag = "kind", content = "parameters", rename_all = "snake_case")]
#[non_exhaustive]
pub enum Notice {
    /// Verifying the book found something.
    BookDisagrees {
        /// How much.
        findings: i64,
        /// The lowest number of an entry that was named.
        first: Option<i64>,
    },
    /// A spot test failed: prints that went through since the last good one may
    /// not last.
    PrintsInDoubt {
        /// The number of the test's entry.
        reading: i64,
        /// The numbers of this person's notes.
        notes: Vec<i64>,
    },
    /// A failed spot test was a mistake: those prints are in doubt no more.
    DoubtLifted {
        /// The number of the test's entry.
        reading: i64,
        /// The numbers of this person's notes.
        notes: Vec<i64>,
    },
    /// Somebody hands the room over to the one who is told.
    HandoverWaits {
        /// Which handover.
        handover: Uuid,
        /// Who hands over, by name.
        from: String,
    },
    /// The one who is told has handed over.
    HandoverConfirmed {
        /// Which handover.
        handover: Uuid,
        /// Who took over, by name.
        to: String,
    },
    /// A handover between the one who is told and somebody else was taken back.
    HandoverWithdrawn {
        /// Which handover.
        handover: Uuid,
        /// Who took it back, by name.
        by: String,
    },
    /// A fog test of a lamp is overdue.
    FogTestDue {
        /// Which lamp.
        lamp: Uuid,
        /// What people call it.
        name: String,
        /// The last day on which the test held, as `2027-11-03`.
        again_by: String,
    },
    /// A steward inducted the one who is told, who is to confirm it.
    InductionWaits {
        /// Who inducted, by name.
        by: String,
    },
    /// Inductions of the one who is told end soon.
    InductionEnds {
        /// On which topics, by title.
        topics: Vec<String>,
        /// The first day on which one ends, as `2026-12-24`.
        first: String,
    },
    /// Inductions of somebody end soon.
    InductionOfEnds {
        /// Whose.
        person: Uuid,
        /// By name.
        name: String,
        /// On which topics, by title.
        topics: Vec<String>,
        /// The first day on which one ends, as `2026-12-24`.
        first: String,
    },
    /// A product asks for a topic that inducted people were never told.
    SupplementDue {
        /// Which product.
        product: Uuid,
        /// Its name.
        name: String,
        /// The topic's title.
        topic: String,
        /// How many people.
        people: i64,
    },
    /// A room check is overdue.
    RoomCheckDue {
        /// Which check.
        check: Uuid,
        /// What people call it.
        name: String,
        /// The day by which it was due, as `2026-11-10`.
        due_on: String,
    },
    /// A room check failed.
    RoomCheckFailed {
        /// Which check.
        check: Uuid,
        /// What people call it.
        name: String,
        /// What was found.
        remark: String,
    },
    /// A steward reported an incident of the one who is told.
    IncidentOfYours {
        /// Which.
        incident: Uuid,
        /// Its number.
        number: i64,
        /// Who did, by name.
        by: String,
    },
    /// The skin of the one who is told met a sensitiser again and again.
    SeeADoctor {},
    /// Somebody is to be offered a task away from chemistry; nothing else is said.
    OfferOtherTask {
        /// Who, by name.
        name: String,
    },
    /// The one who is told was to have left by then, and has not said so.
    StillThere {
        /// By when, by the clock of the room.
        expected: String,
    },
    /// Somebody who was alone was to have left by then, and nothing was heard of them.
    NothingHeardOf {
        /// Who, by name.
        name: String,
        /// By when, by the clock of the room.
        expected: String,
    },
    /// A steward set a note of the one who is told right.
    NoteCorrected {
        /// The number of the note's entry.
        note: i64,
        /// The number of the one that holds now.
        corrected: i64,
        /// Who did, by name.
        by: String,
        /// Why.
        reason: String,
    },
    /// A steward took a note of the one who is told back.
    NoteTakenBack {
        /// The number of the note's entry.
        note: i64,
        /// Who did, by name.
        by: String,
        /// Why.
        reason: String,
    },
}

/// A notice as it is kept; one of a kind that a newer program wrote is named only.
#[derive(Clone, Debug, Eq, PartialEq)]
pub enum Told {
    /// One this program knows.
    Known(Notice),
    /// The kind of one it does not.
    Unknown(String),
}

/// A notice of a person.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct Kept {
    /// Which.
    pub id: Uuid,
    /// What it tells.
    pub told: Told,
    /// When it was told.
    pub made_at: OffsetDateTime,
    /// When it was read.
    pub read_at: Option<OffsetDateTime>,
}

/// Tells a person something, in the room of the transaction.
///
/// # Errors
/// The database's.
pub async fn tell(
    tx: &mut RoomTx,
    at: OffsetDateTime,
    person: Uuid,
    notice: &Notice,
) -> Result<()> {
    let value = serde_json::to_value(notice)?;
    let kind = value["kind"].as_str().unwrap_or_default().to_owned();
    let parameters = value["parameters"].to_string();
    store::insert(tx, at, person, &kind, &parameters).await
}

/// Tells every steward of the room.
///
/// # Errors
/// The database's.
pub async fn tell_stewards(tx: &mut RoomTx, at: OffsetDateTime, notice: &Notice) -> Result<()> {
    for person in store::stewards(tx).await? {
        tell(tx, at, person, notice).await?;
    }
    Ok(())
}

/// A person's notices, newest first; `before` leads to older ones.
///
/// # Errors
/// That the database is away.
pub async fn list(
    app: &App,
    permit: &Permit<ReadNotices>,
    before: Option<OffsetDateTime>,
) -> Result<Vec<Kept>> {
    list_for(app, permit.scope(), before).await
}

/// The notices of a scope's person.
///
/// # Errors
/// That the database is away.
pub async fn list_for(
    app: &App,
    scope: Scope,
    before: Option<OffsetDateTime>,
) -> Result<Vec<Kept>> {
    app.database()
        .reading(scope, move |tx| Box::pin(store::list(tx, before, PAGE)))
        .await
}

/// How many the person of a transaction has not read.
///
/// # Errors
/// The database's.
pub async fn count(tx: &mut RoomTx) -> Result<u32> {
    let count = store::unread(tx).await?;
    Ok(u32::try_from(count).unwrap_or(u32::MAX))
}

/// How many a scope's person has not read.
///
/// # Errors
/// That the database is away.
pub async fn unread_for(app: &App, scope: Scope) -> Result<u32> {
    app.database()
        .reading(scope, |tx| Box::pin(count(tx)))
        .await
}

/// Marks a person's notices as read.
///
/// # Errors
/// That the database is away.
pub async fn mark_read(app: &App, permit: &Permit<ReadNotices>) -> Result<()> {
    mark_read_for(app, permit.scope()).await
}

/// Marks the notices of a scope's person as read.
///
/// # Errors
/// That the database is away.
pub async fn mark_read_for(app: &App, scope: Scope) -> Result<()> {
    let now = app.clock().now();
    app.database()
        .in_room(scope, move |tx| Box::pin(store::mark_read(tx, now)))
        .await
}

impl Told {
    fn of(kind: String, parameters: &str) -> Self {
        let whole = serde_json::from_str(parameters)
            .map(|parameters: serde_json::Value| {
                serde_json::json!({"kind": kind, "parameters": parameters})
            })
            .and_then(serde_json::from_value);
        match whole {
            Ok(notice) => Self::Known(notice),
            Err(_) => Self::Unknown(kind),
        }
    }
}
