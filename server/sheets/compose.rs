//! From what somebody noted to the entry that says what it did.

pub(super) mod store;

use std::collections::{BTreeSet, HashMap};
use std::sync::Arc;

use serde::Serialize;
use sha2::{Digest, Sha256};
use time::OffsetDateTime;
use uuid::Uuid;

use self::store::{Ground, Stood};
use super::brought::{Load, Pass, Running, brought, pair_of};
use super::{Noted, Wear, wear};
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::input;
use crate::logbook::{Asked, Composed, Grouped};
use crate::mixes::RULES;
use crate::problem::Problem;
use crate::products::Kind;
use crate::workshops::{self, Workshop};

/// Sheets as somebody noted them.
#[derive(Clone, Debug, Serialize)]
pub struct NewNote {
    /// The line they went down.
    pub line_id: Uuid,
    /// What class of paper.
    pub paper_class_id: Uuid,
    /// What size.
    pub sheet_size_id: Uuid,
    /// How many; nothing where nobody counted.
    pub sheets: Option<u32>,
    /// Whether they were toned, where the line has a toner.
    pub is_toned: bool,
    /// Whether it is noted even where nothing recorded stood in the line then.
    pub is_without_tray: bool,
    /// When, where that was not just now: microseconds since 1970.
    pub happened_at_us: Option<i64>,
    /// For which workshop. A note without one has the fingerprint it always had.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub workshop_id: Option<Uuid>,
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
        let mut asked = Vec::new();
        for (asking, note) in items {
            let person_id = asking.actor.ok_or(Error::Unauthenticated)?;
            let sheets = match note.sheets {
                Some(sheets) => sheets,
                None => store::usual_sheets(tx, person_id).await?,
            };
            asked.push(Item {
                note,
                person_id,
                pass_id: pass_id(asking)?,
                sheets,
                corrects_seq: None,
            });
        }
        compose(tx, now, &asked).await
    }
}

/// A note with what its asking adds.
pub(super) struct Item<'n> {
    pub(super) note: &'n NewNote,
    pub(super) person_id: Uuid,
    pub(super) pass_id: Uuid,
    pub(super) sheets: u32,
    /// The entry that a steward sets right: this one may be as old as that is.
    pub(super) corrects_seq: Option<i64>,
}

/// The entries of some notes, in their order, each as if those before it were written.
pub(super) async fn compose(
    tx: &mut RoomTx,
    now: OffsetDateTime,
    items: &[Item<'_>],
) -> Result<Vec<Result<Composed<Noted>>>> {
    let places = Places::of(items, now);
    let grounds = store::grounds(tx, &places.lines, &places.sizes, &places.classes).await?;
    let stood = store::stood(tx, &places.lines, &places.classes, &places.times).await?;
    if grounds.len() != places.lines.len() {
        return Err(Error::fault("the room has no settings"));
    }
    let workshops = workshops_of(tx, items).await?;
    let mut running = Running::default();
    Ok(items
        .iter()
        .zip(&places.of_item)
        .map(|(item, place)| {
            is_theirs(item, &workshops, now)?;
            let ground = &grounds[*place];
            let stood = stood.iter().filter(|stood| stood.item == ground.item);
            compose_one(item, ground, &stood.collect::<Vec<_>>(), now, &mut running)
        })
        .collect())
}

/// The workshops that notes are for.
async fn workshops_of(tx: &mut RoomTx, items: &[Item<'_>]) -> Result<HashMap<Uuid, Workshop>> {
    let mut found = HashMap::new();
    let wanted: BTreeSet<Uuid> = items
        .iter()
        .filter_map(|item| item.note.workshop_id)
        .collect();
    for id in wanted {
        found.extend(workshops::workshop(tx, id).await?.map(|it| (id, it)));
    }
    Ok(found)
}

/// A note is for a workshop that its person leads and that was going on then.
fn is_theirs(
    item: &Item<'_>,
    workshops: &HashMap<Uuid, Workshop>,
    now: OffsetDateTime,
) -> Result<()> {
    let Some(id) = item
        .note
        .workshop_id
        .filter(|_| item.corrects_seq.is_none())
    else {
        return Ok(());
    };
    let at = item.note.happened_at().unwrap_or(now);
    let is_theirs = |it: &&Workshop| it.leader_id == item.person_id && it.was_open(at);
    match workshops.get(&id).filter(is_theirs) {
        Some(_) => Ok(()),
        None => Err(Error::field("workshop", Problem::NotTheirWorkshop)),
    }
}

/// What the notes of a group ask about, each once: most are of just now, and many
/// of the same paper in the same line.
#[derive(Default)]
struct Places {
    lines: Vec<Uuid>,
    sizes: Vec<Uuid>,
    classes: Vec<Uuid>,
    times: Vec<OffsetDateTime>,
    /// For each note which of them is its own.
    of_item: Vec<usize>,
}

impl Places {
    fn of(items: &[Item<'_>], now: OffsetDateTime) -> Self {
        let mut places = Self::default();
        let mut known = HashMap::new();
        for Item { note, .. } in items {
            let at = note.happened_at().unwrap_or(now);
            let place = (note.line_id, note.sheet_size_id, note.paper_class_id, at);
            let of_item = *known.entry(place).or_insert_with(|| {
                places.lines.push(note.line_id);
                places.sizes.push(note.sheet_size_id);
                places.classes.push(note.paper_class_id);
                places.times.push(at);
                places.lines.len() - 1
            });
            places.of_item.push(of_item);
        }
        places
    }
}

fn compose_one(
    item: &Item<'_>,
    ground: &Ground,
    stood: &[&Stood],
    now: OffsetDateTime,
    running: &mut Running,
) -> Result<Composed<Noted>> {
    let note = item.note;
    if let Some(at) = note.happened_at().filter(|_| item.corrects_seq.is_none()) {
        input::happened(at, now, ground.late_note_minutes)
            .map_err(|problem| Error::field("happened_at", problem))?;
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
    if stood.is_empty() && !note.is_without_tray {
        return Err(Error::field("line", Problem::NothingStoodThere));
    }
    let is_toner = |bath: &&&Stood| bath.kind == Some(Kind::Toner);
    if note.is_toned && !stood.iter().any(|bath| is_toner(&bath)) {
        return Err(Error::field("toned", Problem::NoTonerStood));
    }
    let met = |bath: &&&Stood| note.is_toned || !is_toner(bath);
    let baths: Vec<&Stood> = stood.iter().filter(met).copied().collect();
    let pass = Pass {
        load: Load::Sheets(item.sheets, wear::area((long, short))?),
        silver: ground.silver.as_ref(),
        carry_over_ul_per_m2: ground.carry_over_ul_per_m2,
        alkali_meq_per_litre: ground.alkali_meq_per_litre,
        second_bath_ppb: ground.second_bath_ppb,
    };
    let worn = worn(&pass, &baths, running, false, |bath| {
        let figure = bath
            .sheets_per_litre_thousandths
            .ok_or_else(|| no_figure(bath))?;
        Ok((figure, wear::of_sheets(item.sheets, (long, short), figure)?))
    })?;
    Ok(Composed {
        happened_at: note.happened_at(),
        entry: Noted {
            rules: RULES,
            pass_id: item.pass_id,
            line_id: note.line_id,
            person_id: item.person_id,
            paper_class_id: note.paper_class_id,
            sheet_size_id: note.sheet_size_id,
            long_tenths_mm: long,
            short_tenths_mm: short,
            sheets: item.sheets,
            is_estimated: note.sheets.is_none(),
            corrects_seq: item.corrects_seq,
            workshop_id: note.workshop_id,
            wear: worn,
        },
    })
}

fn no_figure(bath: &Stood) -> Error {
    let product = bath.product.clone().unwrap_or_default();
    Error::field("paper_class", Problem::NoCapacity { product })
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

/// What a pass does to each bath it went through. A bath that no paper uses up is
/// worn by nothing, but may still take something up; one that has figures for
/// other classes only refuses this one. `full` is the capacity, and what the pass
/// spends of the bath where it counts in full.
pub(super) fn worn(
    pass: &Pass<'_>,
    baths: &[&Stood],
    running: &mut Running,
    is_film: bool,
    full: impl Fn(&Stood) -> Result<(i64, i64)>,
) -> Result<Vec<Wear>> {
    let second = pair_of(baths).map(|(_, second)| second);
    let brought = brought(pass, baths, running)?;
    let mut worn = Vec::new();
    for (at, (bath, brought)) in baths.iter().zip(brought).enumerate() {
        let is_worn = is_film || (bath.is_worn && !bath.is_passed_by());
        if !is_worn && brought.is_none() {
            continue;
        }
        let (capacity, spent_nl) = match is_worn {
            true => full(bath)?,
            false => (0, 0),
        };
        let share_ppb = (second == Some(at)).then_some(pass.second_bath_ppb);
        worn.push(Wear {
            mix_id: bath.mix_id,
            tray_id: bath.tray_id,
            sheets_per_litre_thousandths: capacity,
            spent_nl: wear::share(spent_nl, share_ppb)?,
            share_ppb,
            brought,
        });
    }
    Ok(worn)
}
