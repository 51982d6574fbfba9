//! What notes write: passes, what they wore, and what comes off again.

use std::collections::BTreeMap;

use time::OffsetDateTime;
use uuid::Uuid;

use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::logbook::Placed;
use crate::sheets::{Brought, FilmNoted, NoteUndone, Noted, Wear};

/// Notes, column by column.
#[derive(Default)]
struct PassRows {
    seq: Vec<i64>,
    id: Vec<Uuid>,
    line: Vec<Uuid>,
    person: Vec<Uuid>,
    class: Vec<Option<Uuid>>,
    size: Vec<Option<Uuid>>,
    count: Vec<i32>,
    is_film: Vec<bool>,
    is_estimated: Vec<bool>,
    workshop: Vec<Option<Uuid>>,
    happened_at: Vec<OffsetDateTime>,
    worn: WearRows,
}

/// What notes used up, column by column, and what all of them made of each mix.
#[derive(Default)]
struct WearRows {
    seq: Vec<i64>,
    mix: Vec<Uuid>,
    nl: Vec<i64>,
    mixes: BTreeMap<Uuid, MixWorn>,
}

/// What notes together made of a mix.
#[derive(Default)]
struct MixWorn {
    /// The last of them.
    seq: i64,
    nl: i64,
    /// When last, of notes whose number nobody counted.
    uncounted_at: Option<OffsetDateTime>,
    brought: Brought,
}

impl PassRows {
    fn of_sheets(placed: &[Placed<Noted>]) -> Result<Self> {
        let mut rows = Self::default();
        for each in placed {
            let noted = &each.entry;
            let ids = (noted.pass_id, noted.line_id, noted.person_id);
            rows.push(each.seq, each.happened_at, ids, noted.sheets)?;
            rows.class.push(Some(noted.paper_class_id));
            rows.size.push(Some(noted.sheet_size_id));
            rows.is_film.push(false);
            rows.is_estimated.push(noted.is_estimated);
            rows.workshop.push(noted.workshop_id);
            let uncounted = noted.is_estimated.then_some(each.happened_at);
            rows.worn.push(each.seq, &noted.wear, uncounted);
        }
        Ok(rows)
    }

    fn of_films(placed: &[Placed<FilmNoted>]) -> Result<Self> {
        let mut rows = Self::default();
        for each in placed {
            let noted = &each.entry;
            let ids = (noted.pass_id, noted.line_id, noted.person_id);
            rows.push(each.seq, each.happened_at, ids, noted.rolls)?;
            rows.class.push(None);
            rows.size.push(None);
            rows.is_film.push(true);
            rows.is_estimated.push(false);
            rows.workshop.push(None);
            rows.worn.push(each.seq, &noted.wear, None);
        }
        Ok(rows)
    }

    fn push(
        &mut self,
        seq: i64,
        happened_at: OffsetDateTime,
        (id, line, person): (Uuid, Uuid, Uuid),
        count: u32,
    ) -> Result<()> {
        self.seq.push(seq);
        self.id.push(id);
        self.line.push(line);
        self.person.push(person);
        self.count.push(i32::try_from(count).map_err(Error::fault)?);
        self.happened_at.push(happened_at);
        Ok(())
    }
}

impl WearRows {
    fn push(&mut self, seq: i64, wear: &[Wear], uncounted_at: Option<OffsetDateTime>) {
        for worn in wear {
            self.seq.push(seq);
            self.mix.push(worn.mix_id);
            self.nl.push(worn.spent_nl);
            let mix = self.mixes.entry(worn.mix_id).or_default();
            mix.seq = seq;
            mix.nl += worn.spent_nl;
            mix.uncounted_at = mix.uncounted_at.max(uncounted_at);
            mix.brought += worn.brought.unwrap_or_default();
        }
    }

    fn of_mixes<T>(&self, pick: impl Fn(&MixWorn) -> T) -> Vec<T> {
        self.mixes.values().map(pick).collect()
    }
}

pub(super) async fn insert_passes(tx: &mut RoomTx, placed: &[Placed<Noted>]) -> Result<()> {
    insert(tx, &PassRows::of_sheets(placed)?).await
}

pub(super) async fn insert_films(tx: &mut RoomTx, placed: &[Placed<FilmNoted>]) -> Result<()> {
    insert(tx, &PassRows::of_films(placed)?).await
}

async fn insert(tx: &mut RoomTx, rows: &PassRows) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        r#"
        insert into pass (
            room_id, seq, id, line_id, person_id, paper_class_id, sheet_size_id, sheets, is_film,
            is_estimated, happened_at, workshop_id, reversed_by
        )
        select $1, t.*, null
        from unnest(
            $2::bigint[], $3::uuid[], $4::uuid[], $5::uuid[], $6::uuid[], $7::uuid[],
            $8::integer[], $9::boolean[], $10::boolean[], $11::timestamptz[], $12::uuid[]
        ) t
        "#,
        room,
        &rows.seq,
        &rows.id,
        &rows.line,
        &rows.person,
        &rows.class as &[Option<Uuid>],
        &rows.size as &[Option<Uuid>],
        &rows.count,
        &rows.is_film,
        &rows.is_estimated,
        &rows.happened_at,
        &rows.workshop as &[Option<Uuid>]
    )
    .execute(tx.db())
    .await?;
    wear(tx, &rows.worn).await
}

/// What notes used up, and what that makes of the mixes.
async fn wear(tx: &mut RoomTx, rows: &WearRows) -> Result<()> {
    if rows.seq.is_empty() {
        return Ok(());
    }
    let room = tx.room();
    let mixes: Vec<Uuid> = rows.mixes.keys().copied().collect();
    sqlx::query!(
        r#"
        with worn as (
            insert into wear (room_id, seq, mix_id, spent_nl)
            select $1, t.* from unnest($2::bigint[], $3::uuid[], $4::bigint[]) t
        )
        update mix set
            spent_nl = mix.spent_nl + t.spent_nl,
            unknown_sheets_at = greatest(mix.unknown_sheets_at, t.uncounted_at),
            silver_least_ug = silver_least_ug + t.least,
            silver_usual_ug = silver_usual_ug + t.usual,
            silver_most_ug = silver_most_ug + t.most,
            bromide_ug = bromide_ug + t.bromide,
            alkali_neq = alkali_neq + t.alkali,
            carried_out_ul = carried_out_ul + t.carried,
            received_ul = received_ul + t.received,
            last_seq = t.seq
        from unnest(
            $5::uuid[], $6::bigint[], $7::bigint[], $8::timestamptz[], $9::bigint[], $10::bigint[],
            $11::bigint[], $12::bigint[], $13::bigint[], $14::bigint[], $15::bigint[]
        ) as t (
            mix, seq, spent_nl, uncounted_at, least, usual, most, bromide, alkali, carried, received
        )
        where mix.room_id = $1 and mix.id = t.mix
        "#,
        room,
        &rows.seq,
        &rows.mix,
        &rows.nl,
        &mixes,
        &rows.of_mixes(|mix| mix.seq),
        &rows.of_mixes(|mix| mix.nl),
        &rows.of_mixes(|mix| mix.uncounted_at) as &[Option<OffsetDateTime>],
        &rows.of_mixes(|mix| mix.brought.silver_ug[0]),
        &rows.of_mixes(|mix| mix.brought.silver_ug[1]),
        &rows.of_mixes(|mix| mix.brought.silver_ug[2]),
        &rows.of_mixes(|mix| mix.brought.bromide_ug),
        &rows.of_mixes(|mix| mix.brought.alkali_neq),
        &rows.of_mixes(|mix| mix.brought.carried_out_ul),
        &rows.of_mixes(|mix| mix.brought.received_ul)
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

pub(super) async fn reverse_pass(tx: &mut RoomTx, placed: &Placed<NoteUndone>) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        "update pass set reversed_by = $3 where room_id = $1 and seq = $2",
        room,
        placed.entry.pass_seq,
        placed.seq
    )
    .execute(tx.db())
    .await?;
    for wear in &placed.entry.wear {
        unwear(tx, wear, placed.seq).await?;
    }
    Ok(())
}

/// Takes the stored wear and what prints brought off again; what nobody counted is
/// in doubt only as long as such a note stands.
async fn unwear(tx: &mut RoomTx, wear: &Wear, seq: i64) -> Result<()> {
    let room = tx.room();
    let brought = wear.brought.unwrap_or_default();
    let [least, usual, most] = brought.silver_ug;
    sqlx::query!(
        r#"
        update mix set
            spent_nl = spent_nl - $3,
            unknown_sheets_at = (
                select max(p.happened_at)
                from wear w
                join pass p on p.room_id = w.room_id and p.seq = w.seq
                where w.room_id = $1
                    and w.mix_id = $2
                    and p.is_estimated
                    and p.reversed_by is null
            ),
            silver_least_ug = silver_least_ug - $4,
            silver_usual_ug = silver_usual_ug - $5,
            silver_most_ug = silver_most_ug - $6,
            bromide_ug = bromide_ug - $7,
            alkali_neq = alkali_neq - $8,
            carried_out_ul = carried_out_ul - $9,
            received_ul = received_ul - $10,
            last_seq = $11
        where room_id = $1 and id = $2
        "#,
        room,
        wear.mix_id,
        wear.spent_nl,
        least,
        usual,
        most,
        brought.bromide_ug,
        brought.alkali_neq,
        brought.carried_out_ul,
        brought.received_ul,
        seq
    )
    .execute(tx.db())
    .await?;
    Ok(())
}
