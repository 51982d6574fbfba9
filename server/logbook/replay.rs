//! Doing a book over: its entries feed the same projections once more, into
//! shadows of the tables, and what comes out is compared with what is kept.

use serde::Deserialize;

use super::chain::DEMO_KIND;
use super::entry::{Kind, Kinds, Placed, Written};
use super::reading::EntryRow;
use super::verify_report::{Finding, Findings};
use crate::clock::moment;
use crate::database::RoomTx;
use crate::database::owner::{back_to_mark, differences, drop_mark, mark, seed_name};
use crate::error::Result;

/// The tables that entries make and nothing else changes.
pub const DERIVED: &[&str] = &[
    "room_name",
    "membership",
    "room_setting",
    "sheet_size",
    "paper_class",
    "product",
    "ingredient",
    "dilution",
    "capacity",
    "space",
    "line",
    "tray",
    "bottle",
    "finishing",
    "wash",
    "stock_solution",
    "mix",
    "mix_capacity",
    "reading",
    "extension",
    "rinse",
    "stay",
    "pass",
    "wear",
    "outage",
    "lamp",
    "fog_test",
    "topic",
    "topic_version",
    "topic_product",
    "induction",
    "induction_topic",
    "induction_scan",
    "room_check",
    "room_check_result",
    "place_air",
    "flow_measurement",
    "exhaust_waiver",
    "airing",
    "incident",
    "incident_look",
    "presence",
    "workshop",
    "guest",
    "screen",
    "handover",
];

/// The other tables with a room, and why no entry makes them.
pub const NOT_DERIVED: &[(&str, &str)] = &[
    ("entry", "the book itself: its chain is walked"),
    ("entry_about", "worked out anew from each entry's text"),
    ("head", "compared with the end of the chain"),
    (
        "beside",
        "personal text: each is held against the hash in its entry, and may be erased",
    ),
    (
        "avoid_note",
        "what somebody wants to avoid is theirs alone: an entry would tell that there is one",
    ),
    ("invitation", "a secret; what comes of it is an entry"),
    ("work", "what the program is still to do"),
    ("verification", "what verifying found"),
    ("fog_test_told", "what stewards were told already"),
    ("induction_told", "what people were told already"),
    ("supplement_told", "what stewards were told already"),
    ("room_check_told", "what stewards were told already"),
    (
        "expected_told",
        "who was asked after somebody alone already",
    ),
    ("notice", "what somebody has read is nobody else's business"),
    ("delivery", "what became of a notice"),
    ("pairing", "a secret; that a screen was paired is an entry"),
    ("pin", "a secret; that it was set is an entry"),
    ("token", "a secret; it acts by its person's role"),
];

/// Differences named in one table; more are as telling.
const MOST: i64 = 100;

/// Puts the room's name where the first entry's projection looks for it.
pub(super) async fn begin(tx: &mut RoomTx, first: &EntryRow) -> Result<()> {
    let says: Option<Opening> = serde_json::from_slice(&first.payload).ok();
    let slug = says.as_ref().map(|says| says.slug.as_str());
    seed_name(tx, slug, first.kind == DEMO_KIND).await
}

/// What the entry that opens a room says of its short name.
#[derive(Deserialize)]
struct Opening {
    slug: String,
}

/// Feeds a page of entries to their projections: runs of one kind together.
/// Entries of unknown kinds are passed over.
pub(super) async fn replay(
    tx: &mut RoomTx,
    kinds: Kinds,
    rows: &[EntryRow],
    findings: &mut Findings,
) -> Result<()> {
    let written: Vec<Written> = rows.iter().map(written).collect();
    mark(tx).await?;
    if feed(tx, kinds, &written).await.is_ok() {
        return drop_mark(tx).await;
    }
    back_to_mark(tx).await?;
    for one in &written {
        mark(tx).await?;
        match feed(tx, kinds, std::slice::from_ref(one)).await {
            Ok(()) => drop_mark(tx).await?,
            Err(cause) => {
                back_to_mark(tx).await?;
                findings.push(Finding::NotReplayed {
                    seq: one.placed.seq,
                    cause: cause.to_string(),
                });
            }
        }
    }
    Ok(())
}

async fn feed(tx: &mut RoomTx, kinds: Kinds, written: &[Written]) -> Result<()> {
    for run in written.chunk_by(|one, next| one.kind == next.kind) {
        let kind = run.first().and_then(|first| find(kinds, &first.kind));
        if let Some(kind) = kind {
            (kind.project)(tx, run).await?;
        }
    }
    Ok(())
}

pub(super) fn find(kinds: Kinds, name: &str) -> Option<&'static Kind> {
    kinds.iter().find(|kind| kind.name == name)
}

fn written(row: &EntryRow) -> Written {
    Written {
        kind: row.kind.clone(),
        placed: Placed {
            seq: row.seq,
            actor: row.actor,
            happened_at: moment(row.happened_at_us),
            recorded_at: moment(row.recorded_at_us),
            entry: row.payload.clone(),
        },
    }
}

/// Compares what was replayed with what is kept.
pub(super) async fn compare(tx: &mut RoomTx, findings: &mut Findings) -> Result<()> {
    for table in DERIVED {
        for difference in differences(tx, table, MOST).await? {
            findings.push(Finding::Row(difference));
        }
    }
    Ok(())
}
