//! From what somebody noted to the entry that says what it did.

use std::sync::Arc;

use serde::Serialize;
use sha2::{Digest, Sha256};
use time::{Duration, OffsetDateTime};
use uuid::Uuid;

use super::store::{self, Ground, Stood};
use super::{Noted, Wear, wear};
use crate::clock::micros;
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::logbook::{Asked, Composed, Grouped};
use crate::mixes::RULES;
use crate::problem::Problem;

/// A clock may run ahead by so much.
const AHEAD: Duration = Duration::minutes(2);

/// Sheets as somebody noted them.
#[derive(Clone, Debug, Serialize)]
pub struct NewNote {
    /// The line they went down.
    pub line_id: Uuid,
    /// What class of paper.
    pub paper_class_id: Uuid,
    /// What size.
    pub sheet_size_id: Uuid,
    /// How many.
    pub sheets: u32,
    /// When, where that was not just now: microseconds since 1970.
    pub happened_at_us: Option<i64>,
}

impl NewNote {
    fn happened_at(&self) -> Option<OffsetDateTime> {
        self.happened_at_us.map(crate::clock::moment)
    }
}

impl Grouped for NewNote {
    type Entry = Noted;

    async fn compose(
        tx: &mut RoomTx,
        now: OffsetDateTime,
        items: &[(Asked, Arc<Self>)],
    ) -> Result<Vec<Result<Composed<Noted>>>> {
        let column = |pick: fn(&Self) -> Uuid| -> Vec<Uuid> {
            items.iter().map(|(_, note)| pick(note)).collect()
        };
        let lines = column(|note| note.line_id);
        let sizes = column(|note| note.sheet_size_id);
        let classes = column(|note| note.paper_class_id);
        let times: Vec<OffsetDateTime> = items
            .iter()
            .map(|(_, note)| note.happened_at().unwrap_or(now))
            .collect();
        let grounds = store::grounds(tx, &lines, &sizes, &classes).await?;
        let stood = store::stood(tx, &lines, &classes, &times).await?;
        if grounds.len() != items.len() {
            return Err(Error::fault("the room has no settings"));
        }
        Ok(items
            .iter()
            .zip(&grounds)
            .map(|((asked, note), ground)| {
                let stood = stood.iter().filter(|stood| stood.item == ground.item);
                compose_one(asked, note, ground, &stood.collect::<Vec<_>>(), now)
            })
            .collect())
    }
}

fn compose_one(
    asked: &Asked,
    note: &NewNote,
    ground: &Ground,
    stood: &[&Stood],
    now: OffsetDateTime,
) -> Result<Composed<Noted>> {
    let person_id = asked.actor.ok_or(Error::Unauthenticated)?;
    if let Some(at) = note.happened_at() {
        check_time(at, now, ground.late_note_minutes)?;
    }
    if !ground.has_line {
        return Err(Error::field("line", Problem::NotAChoice));
    }
    if !ground.has_class {
        return Err(Error::field("paper_class", Problem::NotAChoice));
    }
    let (Some(long), Some(short)) = (ground.long_tenths_mm, ground.short_tenths_mm) else {
        return Err(Error::field("sheet_size", Problem::NotAChoice));
    };
    if stood.is_empty() {
        return Err(Error::field("line", Problem::NothingStoodThere));
    }
    Ok(Composed {
        happened_at: note.happened_at(),
        entry: Noted {
            rules: RULES,
            pass_id: pass_id(asked)?,
            line_id: note.line_id,
            person_id,
            paper_class_id: note.paper_class_id,
            sheet_size_id: note.sheet_size_id,
            long_tenths_mm: long,
            short_tenths_mm: short,
            sheets: note.sheets,
            wear: worn(note.sheets, long, short, stood)?,
        },
    })
}

/// The note's id, drawn from its key: the same note sent twice is one note.
fn pass_id(asked: &Asked) -> Result<Uuid> {
    let key = asked
        .key
        .ok_or_else(|| Error::fault("a note without a key"))?;
    let drawn = Sha256::new()
        .chain_update(b"wetside.pass")
        .chain_update(key)
        .finalize();
    let mut bytes = [0; 16];
    bytes.copy_from_slice(&drawn[..16]);
    Ok(uuid::Builder::from_custom_bytes(bytes).into_uuid())
}

fn check_time(at: OffsetDateTime, now: OffsetDateTime, late_minutes: i32) -> Result<()> {
    if micros(at) > micros(now + AHEAD) {
        return Err(Error::field("happened_at", Problem::InTheFuture));
    }
    if at < now - Duration::minutes(late_minutes.into()) {
        return Err(Error::field(
            "happened_at",
            Problem::TooLate {
                minutes: late_minutes,
            },
        ));
    }
    Ok(())
}

/// What the sheets use up of each mix. A bath that no paper class uses up is
/// left alone; one that has figures for other classes only refuses this one.
fn worn(sheets: u32, long: i32, short: i32, stood: &[&Stood]) -> Result<Vec<Wear>> {
    let mut worn = Vec::new();
    for stood in stood.iter().filter(|stood| stood.is_worn) {
        let figure = stood.sheets_per_litre_thousandths.ok_or_else(|| {
            Error::field(
                "paper_class",
                Problem::NoCapacity {
                    product: stood.product.clone(),
                },
            )
        })?;
        worn.push(Wear {
            mix_id: stood.mix_id,
            tray_id: stood.tray_id,
            sheets_per_litre_thousandths: figure,
            spent_nl: wear::spent_nl(sheets, (long, short), figure)?,
        });
    }
    Ok(worn)
}
