//! The SQL of notes.

use time::OffsetDateTime;
use uuid::Uuid;

use super::{NoteUndone, Noted, Wear};
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::logbook::Placed;

/// A note as it now is.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct Pass {
    /// The number of its entry.
    pub seq: i64,
    /// The note.
    pub id: Uuid,
    /// The line.
    pub line_id: Uuid,
    /// The line's name.
    pub line_name: String,
    /// Who printed.
    pub person_id: Uuid,
    /// The paper class's name.
    pub paper_class: String,
    /// The sheet size's name.
    pub sheet_size: String,
    /// How many.
    pub sheets: i32,
    /// When.
    pub happened_at: OffsetDateTime,
    /// When it was written.
    pub recorded_at: OffsetDateTime,
    /// The entry that took it back.
    pub reversed_by: Option<i64>,
}

/// One note.
///
/// # Errors
/// The database's.
pub async fn pass(tx: &mut RoomTx, id: Uuid) -> Result<Option<Pass>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        Pass,
        r#"
        select
            p.seq, p.id, p.line_id, l.name as line_name, p.person_id, c.name as paper_class,
            s.name as sheet_size, p.sheets, p.happened_at, e.recorded_at, p.reversed_by
        from pass p
        join line l on l.room_id = p.room_id and l.id = p.line_id
        join paper_class c on c.room_id = p.room_id and c.id = p.paper_class_id
        join sheet_size s on s.room_id = p.room_id and s.id = p.sheet_size_id
        join entry e on e.room_id = p.room_id and e.seq = p.seq
        where p.room_id = $1 and p.id = $2
        "#,
        room,
        id
    )
    .fetch_optional(tx.db())
    .await?;
    Ok(found)
}

/// The notes before one entry, or all, newest first and at most `most`.
///
/// # Errors
/// The database's.
pub async fn passes(tx: &mut RoomTx, before: Option<i64>, most: i64) -> Result<Vec<Pass>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        Pass,
        r#"
        select
            p.seq, p.id, p.line_id, l.name as line_name, p.person_id, c.name as paper_class,
            s.name as sheet_size, p.sheets, p.happened_at, e.recorded_at, p.reversed_by
        from pass p
        join line l on l.room_id = p.room_id and l.id = p.line_id
        join paper_class c on c.room_id = p.room_id and c.id = p.paper_class_id
        join sheet_size s on s.room_id = p.room_id and s.id = p.sheet_size_id
        join entry e on e.room_id = p.room_id and e.seq = p.seq
        where p.room_id = $1 and ($2::bigint is null or p.seq < $2)
        order by p.seq desc
        limit $3
        "#,
        room,
        before,
        most
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found)
}

/// One note by the number of its entry.
///
/// # Errors
/// The database's.
pub async fn pass_at(tx: &mut RoomTx, seq: i64) -> Result<Option<Pass>> {
    let room = tx.room();
    let id = sqlx::query_scalar!(
        "select id from pass where room_id = $1 and seq = $2",
        room,
        seq
    )
    .fetch_optional(tx.db())
    .await?;
    match id {
        Some(id) => pass(tx, id).await,
        None => Ok(None),
    }
}

/// What a person chose last: line, paper class, sheet size, count.
pub(super) async fn last_choice(
    tx: &mut RoomTx,
    person: Uuid,
) -> Result<Option<(Uuid, Uuid, Uuid, i32)>> {
    let room = tx.room();
    let found = sqlx::query!(
        r#"
        select line_id, paper_class_id, sheet_size_id, sheets
        from pass
        where room_id = $1 and person_id = $2
        order by seq desc
        limit 1
        "#,
        room,
        person
    )
    .fetch_optional(tx.db())
    .await?;
    Ok(found.map(|row| {
        (
            row.line_id,
            row.paper_class_id,
            row.sheet_size_id,
            row.sheets,
        )
    }))
}

/// What a note used up of one mix, and how that mix stands now.
pub(super) struct Effect {
    pub(super) product: String,
    pub(super) spent_nl: i64,
    pub(super) mix_spent_nl: i64,
    pub(super) charged_ul: i64,
}

/// What a note did, mix by mix.
pub(super) async fn effects(tx: &mut RoomTx, seq: i64) -> Result<Vec<Effect>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        Effect,
        r#"
        select p.name as product, w.spent_nl, m.spent_nl as mix_spent_nl, m.charged_ul
        from wear w
        join mix m on m.room_id = w.room_id and m.id = w.mix_id
        join product p on p.room_id = m.room_id and p.id = m.product_id
        where w.room_id = $1 and w.seq = $2
        order by m.mixed_seq
        "#,
        room,
        seq
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found)
}

/// What one paper class used up of a mix.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct WornByClass {
    /// The class.
    pub paper_class: String,
    /// The mix's capacity for it, in thousandths of a sheet a litre.
    pub sheets_per_litre_thousandths: i64,
    /// The area, in hundredths of a square millimetre.
    pub area: i64,
    /// What that used up, in nanolitres.
    pub spent_nl: i64,
}

/// What used up a mix, class by class, notes that were taken back left out.
///
/// # Errors
/// The database's.
pub async fn worn_by_class(tx: &mut RoomTx, mix: Uuid) -> Result<Vec<WornByClass>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        WornByClass,
        r#"
        select
            c.name as paper_class,
            k.sheets_per_litre_thousandths,
            sum(
                p.sheets::bigint * s.long_tenths_mm::bigint * s.short_tenths_mm::bigint
            )::bigint as "area!",
            sum(w.spent_nl)::bigint as "spent_nl!"
        from wear w
        join pass p on p.room_id = w.room_id and p.seq = w.seq
        join paper_class c on c.room_id = p.room_id and c.id = p.paper_class_id
        join sheet_size s on s.room_id = p.room_id and s.id = p.sheet_size_id
        join mix_capacity k on k.room_id = w.room_id
            and k.mix_id = w.mix_id
            and k.paper_class_id = p.paper_class_id
        where w.room_id = $1 and w.mix_id = $2 and p.reversed_by is null
        group by c.id, c.name, c.position, k.sheets_per_litre_thousandths
        order by c.position, c.id
        "#,
        room,
        mix
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found)
}

/// What a note used up, as its entry stored it.
pub(super) async fn wear_of(tx: &mut RoomTx, seq: i64) -> Result<Vec<Wear>> {
    let room = tx.room();
    let payload = sqlx::query_scalar!(
        "select payload from entry where room_id = $1 and seq = $2",
        room,
        seq
    )
    .fetch_optional(tx.db())
    .await?
    .ok_or(Error::NotFound)?;
    let noted: Noted = serde_json::from_slice(&payload)?;
    Ok(noted.wear)
}

/// What the note of one item stands on: paper, and how late the room takes notes.
pub(super) struct Ground {
    pub(super) item: i64,
    pub(super) long_tenths_mm: Option<i32>,
    pub(super) short_tenths_mm: Option<i32>,
    pub(super) has_class: bool,
    pub(super) has_line: bool,
    pub(super) late_note_minutes: i32,
}

/// One query for all notes of a group: item by item, in their order.
pub(super) async fn grounds(
    tx: &mut RoomTx,
    lines: &[Uuid],
    sizes: &[Uuid],
    classes: &[Uuid],
) -> Result<Vec<Ground>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        Ground,
        r#"
        select
            i.item as "item!",
            s.long_tenths_mm as "long_tenths_mm?",
            s.short_tenths_mm as "short_tenths_mm?",
            exists (
                select from paper_class c
                where c.room_id = $1 and c.id = i.class and c.retired_at is null
            ) as "has_class!",
            exists (
                select from line l
                where l.room_id = $1 and l.id = i.line and l.retired_at is null
            ) as "has_line!",
            r.late_note_minutes
        from unnest($2::uuid[], $3::uuid[], $4::uuid[])
            with ordinality as i (line, size, class, item)
        join room_setting r on r.room_id = $1
        left join sheet_size s on s.room_id = $1 and s.id = i.size and s.retired_at is null
        order by i.item
        "#,
        room,
        lines,
        sizes,
        classes
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found)
}

/// A mix that stood in an item's line at its time.
pub(super) struct Stood {
    pub(super) item: i64,
    pub(super) mix_id: Uuid,
    pub(super) tray_id: Uuid,
    pub(super) product: String,
    /// The mix's capacity for the item's class, where it has one.
    pub(super) sheets_per_litre_thousandths: Option<i64>,
    /// Whether the mix has a capacity for any class.
    pub(super) is_worn: bool,
}

/// One query for all notes of a group: what stood in each one's line at its
/// time. A stay begins with its first moment and ends before its last.
pub(super) async fn stood(
    tx: &mut RoomTx,
    lines: &[Uuid],
    classes: &[Uuid],
    times: &[OffsetDateTime],
) -> Result<Vec<Stood>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        Stood,
        r#"
        select
            i.item as "item!",
            s.mix_id,
            s.tray_id,
            p.name as product,
            c.sheets_per_litre_thousandths as "sheets_per_litre_thousandths?",
            exists (
                select from mix_capacity a where a.room_id = $1 and a.mix_id = s.mix_id
            ) as "is_worn!"
        from unnest($2::uuid[], $3::uuid[], $4::timestamptz[])
            with ordinality as i (line, class, at, item)
        join stay s on s.room_id = $1
            and s.line_id = i.line
            and s.from_at <= i.at
            and (s.until_at is null or s.until_at > i.at)
        join mix m on m.room_id = $1 and m.id = s.mix_id
        join product p on p.room_id = $1 and p.id = m.product_id
        left join mix_capacity c on c.room_id = $1
            and c.mix_id = s.mix_id
            and c.paper_class_id = i.class
        order by i.item, m.mixed_seq
        "#,
        room,
        lines,
        classes,
        times
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found)
}

/// Notes, column by column.
#[derive(Default)]
struct PassRows {
    seq: Vec<i64>,
    id: Vec<Uuid>,
    line: Vec<Uuid>,
    person: Vec<Uuid>,
    class: Vec<Uuid>,
    size: Vec<Uuid>,
    sheets: Vec<i32>,
    happened_at: Vec<OffsetDateTime>,
    worn_seq: Vec<i64>,
    worn_mix: Vec<Uuid>,
    worn_nl: Vec<i64>,
}

impl PassRows {
    fn of(placed: &[Placed<Noted>]) -> Result<Self> {
        let mut rows = Self::default();
        for each in placed {
            let noted = &each.entry;
            rows.seq.push(each.seq);
            rows.id.push(noted.pass_id);
            rows.line.push(noted.line_id);
            rows.person.push(noted.person_id);
            rows.class.push(noted.paper_class_id);
            rows.size.push(noted.sheet_size_id);
            let sheets = i32::try_from(noted.sheets);
            rows.sheets
                .push(sheets.map_err(|_| Error::fault("too many sheets"))?);
            rows.happened_at.push(each.happened_at);
            for wear in &noted.wear {
                rows.worn_seq.push(each.seq);
                rows.worn_mix.push(wear.mix_id);
                rows.worn_nl.push(wear.spent_nl);
            }
        }
        Ok(rows)
    }
}

pub(super) async fn insert_passes(tx: &mut RoomTx, placed: &[Placed<Noted>]) -> Result<()> {
    let room = tx.room();
    let rows = PassRows::of(placed)?;
    sqlx::query!(
        r#"
        insert into pass (
            room_id, seq, id, line_id, person_id, paper_class_id, sheet_size_id, sheets,
            happened_at, reversed_by
        )
        select $1, t.*, null
        from unnest(
            $2::bigint[], $3::uuid[], $4::uuid[], $5::uuid[], $6::uuid[], $7::uuid[],
            $8::integer[], $9::timestamptz[]
        ) t
        "#,
        room,
        &rows.seq,
        &rows.id,
        &rows.line,
        &rows.person,
        &rows.class,
        &rows.size,
        &rows.sheets,
        &rows.happened_at
    )
    .execute(tx.db())
    .await?;
    wear(tx, &rows).await
}

async fn wear(tx: &mut RoomTx, rows: &PassRows) -> Result<()> {
    if rows.worn_seq.is_empty() {
        return Ok(());
    }
    let room = tx.room();
    sqlx::query!(
        r#"
        insert into wear (room_id, seq, mix_id, spent_nl)
        select $1, t.*
        from unnest($2::bigint[], $3::uuid[], $4::bigint[]) t
        "#,
        room,
        &rows.worn_seq,
        &rows.worn_mix,
        &rows.worn_nl
    )
    .execute(tx.db())
    .await?;
    sqlx::query!(
        r#"
        update mix set
            spent_nl = mix.spent_nl + worn.spent_nl,
            last_seq = worn.seq
        from (
            select t.mix, sum(t.nl)::bigint as spent_nl, max(t.seq) as seq
            from unnest($2::bigint[], $3::uuid[], $4::bigint[]) as t (seq, mix, nl)
            group by t.mix
        ) worn
        where mix.room_id = $1 and mix.id = worn.mix
        "#,
        room,
        &rows.worn_seq,
        &rows.worn_mix,
        &rows.worn_nl
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
        sqlx::query!(
            r#"
            update mix set spent_nl = spent_nl - $3, last_seq = $4
            where room_id = $1 and id = $2
            "#,
            room,
            wear.mix_id,
            wear.spent_nl,
            placed.seq
        )
        .execute(tx.db())
        .await?;
    }
    Ok(())
}
