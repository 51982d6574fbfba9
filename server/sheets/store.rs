//! The SQL of notes.

use time::OffsetDateTime;
use uuid::Uuid;

use super::Wear;
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::products::Place;

/// So many notes of one workshop are shown.
const MOST_OF_A_WORKSHOP: i64 = 1_000;

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
    /// The paper class, nothing for film.
    pub paper_class_id: Option<Uuid>,
    /// The paper class's name, nothing for film.
    pub paper_class: Option<String>,
    /// The sheet size, nothing for film.
    pub sheet_size_id: Option<Uuid>,
    /// The sheet size's name, nothing for film.
    pub sheet_size: Option<String>,
    /// How many sheets, or rolls of film.
    pub sheets: i32,
    /// Whether it was film.
    pub is_film: bool,
    /// Whether nobody counted and the number is the usual one.
    pub is_estimated: bool,
    /// When.
    pub happened_at: OffsetDateTime,
    /// When it was written.
    pub recorded_at: OffsetDateTime,
    /// The entry that took it back.
    pub reversed_by: Option<i64>,
    /// For which workshop.
    pub workshop_id: Option<Uuid>,
    /// What that is called.
    pub workshop: Option<String>,
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
            p.seq, p.id, p.line_id, l.name as line_name, p.person_id, p.paper_class_id,
            c.name as "paper_class?", p.sheet_size_id, s.name as "sheet_size?", p.sheets, p.is_film,
            p.is_estimated, p.happened_at, e.recorded_at, p.reversed_by, p.workshop_id,
            w.title as "workshop?"
        from pass p
        join line l on l.room_id = p.room_id and l.id = p.line_id
        left join paper_class c on c.room_id = p.room_id and c.id = p.paper_class_id
        left join sheet_size s on s.room_id = p.room_id and s.id = p.sheet_size_id
        left join workshop w on w.room_id = p.room_id and w.id = p.workshop_id
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
    found(tx, (before, None), most).await
}

/// The notes for a workshop, newest first.
///
/// # Errors
/// The database's.
pub async fn passes_for(tx: &mut RoomTx, workshop: Uuid) -> Result<Vec<Pass>> {
    found(tx, (None, Some(workshop)), MOST_OF_A_WORKSHOP).await
}

async fn found(
    tx: &mut RoomTx,
    (before, workshop): (Option<i64>, Option<Uuid>),
    most: i64,
) -> Result<Vec<Pass>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        Pass,
        r#"
        select
            p.seq, p.id, p.line_id, l.name as line_name, p.person_id, p.paper_class_id,
            c.name as "paper_class?", p.sheet_size_id, s.name as "sheet_size?", p.sheets, p.is_film,
            p.is_estimated, p.happened_at, e.recorded_at, p.reversed_by, p.workshop_id,
            w.title as "workshop?"
        from pass p
        join line l on l.room_id = p.room_id and l.id = p.line_id
        left join paper_class c on c.room_id = p.room_id and c.id = p.paper_class_id
        left join sheet_size s on s.room_id = p.room_id and s.id = p.sheet_size_id
        left join workshop w on w.room_id = p.room_id and w.id = p.workshop_id
        join entry e on e.room_id = p.room_id and e.seq = p.seq
        where p.room_id = $1
            and ($2::bigint is null or p.seq < $2)
            and ($3::uuid is null or p.workshop_id = $3)
        order by p.seq desc
        limit $4
        "#,
        room,
        before,
        workshop,
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

/// What a person chose last.
pub(super) struct LastChoice {
    pub(super) line_id: Uuid,
    pub(super) paper_class_id: Uuid,
    pub(super) sheet_size_id: Uuid,
    pub(super) sheets: i32,
}

pub(super) async fn last_choice(tx: &mut RoomTx, person: Uuid) -> Result<Option<LastChoice>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        LastChoice,
        r#"
        select
            line_id, paper_class_id as "paper_class_id!", sheet_size_id as "sheet_size_id!", sheets
        from pass
        where room_id = $1 and person_id = $2 and not is_film
        order by seq desc
        limit 1
        "#,
        room,
        person
    )
    .fetch_optional(tx.db())
    .await?;
    Ok(found)
}

/// The names of a paper class and a sheet size.
pub(super) async fn paper_names(
    tx: &mut RoomTx,
    class: Uuid,
    size: Uuid,
) -> Result<Option<(String, String)>> {
    let room = tx.room();
    let found = sqlx::query!(
        r#"
        select c.name as class, s.name as size
        from paper_class c
        join sheet_size s on s.room_id = c.room_id and s.id = $3
        where c.room_id = $1 and c.id = $2
        "#,
        room,
        class,
        size
    )
    .fetch_optional(tx.db())
    .await?;
    Ok(found.map(|row| (row.class, row.size)))
}

/// What one paper class, or film, used up of a mix.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct WornByClass {
    /// The class; nothing for film.
    pub paper_class: Option<String>,
    /// The mix's capacity for it where it stands, in thousandths of a sheet a litre.
    pub sheets_per_litre_thousandths: Option<i64>,
    /// Sheets, or rolls of film.
    pub count: i64,
    /// The area of the sheets, in hundredths of a square millimetre.
    pub area: i64,
    /// What that used up, in nanolitres.
    pub spent_nl: i64,
}

/// What used up a mix, class by class, notes that were taken back left out.
///
/// # Errors
/// The database's.
pub async fn worn_by_class(tx: &mut RoomTx, mix: Uuid, place: Place) -> Result<Vec<WornByClass>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        WornByClass,
        r#"
        select
            c.name as "paper_class?",
            k.sheets_per_litre_thousandths as "sheets_per_litre_thousandths?",
            sum(p.sheets)::bigint as "count!",
            coalesce(
                sum(p.sheets::bigint * s.long_tenths_mm::bigint * s.short_tenths_mm::bigint), 0
            )::bigint as "area!",
            sum(w.spent_nl)::bigint as "spent_nl!"
        from wear w
        join pass p on p.room_id = w.room_id and p.seq = w.seq
        left join paper_class c on c.room_id = p.room_id and c.id = p.paper_class_id
        left join sheet_size s on s.room_id = p.room_id and s.id = p.sheet_size_id
        left join mix_capacity k on k.room_id = w.room_id
            and k.mix_id = w.mix_id
            and k.paper_class_id = p.paper_class_id
            and k.place = $3
        where w.room_id = $1 and w.mix_id = $2 and p.reversed_by is null and w.spent_nl > 0
        group by c.id, c.name, c.position, k.sheets_per_litre_thousandths
        order by c.position, c.id
        "#,
        room,
        mix,
        place.as_str()
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found)
}

/// What notes of sheets and of film have in common.
#[derive(serde::Deserialize)]
struct Worn {
    wear: Vec<Wear>,
}

/// What a note used up, as its entry stored it.
pub(super) async fn wear_of(tx: &mut RoomTx, seq: i64) -> Result<Vec<Wear>> {
    let written = written(tx, seq).await?.ok_or(Error::NotFound)?;
    let worn: Worn = serde_json::from_slice(&written.payload)?;
    Ok(worn.wear)
}

/// An entry as it was written.
pub(super) struct Written {
    pub(super) kind: String,
    pub(super) actor: Option<Uuid>,
    pub(super) payload: Vec<u8>,
}

pub(super) async fn written(tx: &mut RoomTx, seq: i64) -> Result<Option<Written>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        Written,
        "select kind, actor, payload from entry where room_id = $1 and seq = $2",
        room,
        seq
    )
    .fetch_optional(tx.db())
    .await?;
    Ok(found)
}

/// Whether anything recorded stood in a line at a time.
pub(super) async fn stood_anything(
    tx: &mut RoomTx,
    line: Uuid,
    at: OffsetDateTime,
) -> Result<bool> {
    let room = tx.room();
    let stood = sqlx::query_scalar!(
        r#"
        select exists (
            select
            from stay
            where room_id = $1
                and line_id = $2
                and from_at <= $3
                and coalesce(until_at, 'infinity') > $3
        ) as "stood!"
        "#,
        room,
        line,
        at
    )
    .fetch_one(tx.db())
    .await?;
    Ok(stood)
}

/// Where the liquid of a mix is now: in itself, or in what it was poured into.
pub(super) async fn present_mix(tx: &mut RoomTx, mix: Uuid) -> Result<Uuid> {
    let room = tx.room();
    let found = sqlx::query_scalar!(
        r#"
        select coalesce(poured_into, id) as "id!"
        from mix
        where room_id = $1 and id = $2
        "#,
        room,
        mix
    )
    .fetch_optional(tx.db())
    .await?;
    found.ok_or(Error::NotFound)
}

/// Whether a note went through a toner.
pub(super) async fn was_toned(tx: &mut RoomTx, seq: i64) -> Result<bool> {
    let room = tx.room();
    let was = sqlx::query_scalar!(
        r#"
        select exists (
            select
            from wear w
            join mix m on m.room_id = w.room_id and m.id = w.mix_id
            join product p on p.room_id = m.room_id and p.id = m.product_id
            where w.room_id = $1 and w.seq = $2 and p.kind = 'toner'
        ) as "was!"
        "#,
        room,
        seq
    )
    .fetch_one(tx.db())
    .await?;
    Ok(was)
}
