//! What notes write: passes, what they wore, and what comes off again.

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
    happened_at: Vec<OffsetDateTime>,
    worn: WearRows,
}

/// What notes used up, column by column.
#[derive(Default)]
struct WearRows {
    seq: Vec<i64>,
    mix: Vec<Uuid>,
    nl: Vec<i64>,
    /// When, of notes whose number nobody counted.
    uncounted_at: Vec<Option<OffsetDateTime>>,
    brought: Vec<(i64, Uuid, Brought)>,
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
            self.uncounted_at.push(uncounted_at);
            let brought = worn.brought.map(|brought| (seq, worn.mix_id, brought));
            self.brought.extend(brought);
        }
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
            is_estimated, happened_at, reversed_by
        )
        select $1, t.*, null
        from unnest(
            $2::bigint[], $3::uuid[], $4::uuid[], $5::uuid[], $6::uuid[], $7::uuid[],
            $8::integer[], $9::boolean[], $10::boolean[], $11::timestamptz[]
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
        &rows.happened_at
    )
    .execute(tx.db())
    .await?;
    if rows.worn.seq.is_empty() {
        return Ok(());
    }
    wear(tx, &rows.worn).await?;
    for (seq, mix, brought) in &rows.worn.brought {
        bring(tx, *mix, brought, 1, *seq).await?;
    }
    Ok(())
}

async fn wear(tx: &mut RoomTx, rows: &WearRows) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        r#"
        insert into wear (room_id, seq, mix_id, spent_nl)
        select $1, t.*
        from unnest($2::bigint[], $3::uuid[], $4::bigint[]) t
        "#,
        room,
        &rows.seq,
        &rows.mix,
        &rows.nl
    )
    .execute(tx.db())
    .await?;
    sqlx::query!(
        r#"
        update mix set
            spent_nl = mix.spent_nl + worn.spent_nl,
            unknown_sheets_at = greatest(mix.unknown_sheets_at, worn.uncounted_at),
            last_seq = worn.seq
        from (
            select
                t.mix,
                sum(t.nl)::bigint as spent_nl,
                max(t.seq) as seq,
                max(t.uncounted_at) as uncounted_at
            from unnest($2::bigint[], $3::uuid[], $4::bigint[], $5::timestamptz[])
                as t (seq, mix, nl, uncounted_at)
            group by t.mix
        ) worn
        where mix.room_id = $1 and mix.id = worn.mix
        "#,
        room,
        &rows.seq,
        &rows.mix,
        &rows.nl,
        &rows.uncounted_at as &[Option<OffsetDateTime>]
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

/// Adds what prints brought, or with −1 takes it off again.
async fn bring(tx: &mut RoomTx, mix: Uuid, brought: &Brought, sign: i64, seq: i64) -> Result<()> {
    let room = tx.room();
    let [least, usual, most] = brought.silver_ug.map(|silver| silver * sign);
    sqlx::query!(
        r#"
        update mix set
            silver_least_ug = silver_least_ug + $3,
            silver_usual_ug = silver_usual_ug + $4,
            silver_most_ug = silver_most_ug + $5,
            bromide_ug = bromide_ug + $6,
            alkali_neq = alkali_neq + $7,
            carried_out_ul = carried_out_ul + $8,
            received_ul = received_ul + $9,
            last_seq = $10
        where room_id = $1 and id = $2
        "#,
        room,
        mix,
        least,
        usual,
        most,
        brought.bromide_ug * sign,
        brought.alkali_neq * sign,
        brought.carried_out_ul * sign,
        brought.received_ul * sign,
        seq
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
        if let Some(brought) = &wear.brought {
            bring(tx, wear.mix_id, brought, -1, placed.seq).await?;
        }
    }
    Ok(())
}

/// Takes the stored wear off again; what nobody counted is in doubt only as long
/// as such a note stands.
async fn unwear(tx: &mut RoomTx, wear: &Wear, seq: i64) -> Result<()> {
    let room = tx.room();
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
            last_seq = $4
        where room_id = $1 and id = $2
        "#,
        room,
        wear.mix_id,
        wear.spent_nl,
        seq
    )
    .execute(tx.db())
    .await?;
    Ok(())
}
