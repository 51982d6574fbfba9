//! The mixes' SQL.

use time::OffsetDateTime;
use uuid::Uuid;

use super::{Discarded, Mixed};
use crate::database::RoomTx;
use crate::error::Result;
use crate::logbook::Placed;

/// A mix as it now is.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct Mix {
    /// Which.
    pub id: Uuid,
    /// What it was mixed from.
    pub product_id: Uuid,
    /// The product's name.
    pub product_name: String,
    /// The groups that decide what it may be poured with.
    pub groups: Vec<String>,
    /// N of 1+N, in thousandths.
    pub parts_thousandths: i64,
    /// All that was poured in, in microlitres.
    pub charged_ul: i64,
    /// The concentrate in it, in microlitres.
    pub concentrate_ul: i64,
    /// What paper has used up of it, in nanolitres.
    pub spent_nl: i64,
    /// The fraction of its life used at `age_at`, in parts per billion.
    pub age_ppb: i64,
    /// When that was.
    pub age_at: OffsetDateTime,
    /// How long it lives where it stands, in seconds.
    pub life_s: i64,
    /// When somebody last noted sheets of unknown number.
    pub unknown_sheets_at: Option<OffsetDateTime>,
    /// H codes of the product as supplied.
    pub hazard_codes: Vec<String>,
    /// The number of the entry it began with.
    pub mixed_seq: i64,
    /// When it was mixed.
    pub mixed_at: OffsetDateTime,
    /// Who mixed it.
    pub mixed_by: Option<Uuid>,
    /// Where it stands; nothing once it is gone.
    pub tray_id: Option<Uuid>,
    /// When it was discarded.
    pub discarded_at: Option<OffsetDateTime>,
    /// Whether paper uses it up: some class has a capacity.
    pub has_capacity: bool,
}

/// One mix.
///
/// # Errors
/// The database's.
pub async fn mix(tx: &mut RoomTx, id: Uuid) -> Result<Option<Mix>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        Mix,
        r#"
        select
            m.id, m.product_id, p.name as product_name, p.groups, p.hazard_codes, m.mixed_seq, m.parts_thousandths,
            m.charged_ul, m.concentrate_ul, m.spent_nl, m.age_ppb, m.age_at, m.life_s,
            m.unknown_sheets_at, m.mixed_at, m.mixed_by, m.tray_id, m.discarded_at,
            exists (
                select from mix_capacity c where c.room_id = m.room_id and c.mix_id = m.id
            ) as "has_capacity!"
        from mix m
        join product p on p.room_id = m.room_id and p.id = m.product_id
        where m.room_id = $1 and m.id = $2
        "#,
        room,
        id
    )
    .fetch_optional(tx.db())
    .await?;
    Ok(found)
}

/// Every mix that stands in a tray now.
///
/// # Errors
/// The database's.
pub async fn standing(tx: &mut RoomTx) -> Result<Vec<Mix>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        Mix,
        r#"
        select
            m.id, m.product_id, p.name as product_name, p.groups, p.hazard_codes, m.mixed_seq, m.parts_thousandths,
            m.charged_ul, m.concentrate_ul, m.spent_nl, m.age_ppb, m.age_at, m.life_s,
            m.unknown_sheets_at, m.mixed_at, m.mixed_by, m.tray_id, m.discarded_at,
            exists (
                select from mix_capacity c where c.room_id = m.room_id and c.mix_id = m.id
            ) as "has_capacity!"
        from mix m
        join product p on p.room_id = m.room_id and p.id = m.product_id
        where m.room_id = $1 and m.tray_id is not null
        order by m.mixed_seq
        "#,
        room
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found)
}

/// What each paper class may use of a mix: class, and sheets a litre in thousandths.
///
/// # Errors
/// The database's.
pub async fn capacities(tx: &mut RoomTx, mix: Uuid) -> Result<Vec<(Uuid, i64)>> {
    let room = tx.room();
    let found = sqlx::query!(
        r#"
        select c.paper_class_id, c.sheets_per_litre_thousandths
        from mix_capacity c
        join paper_class p on p.room_id = c.room_id and p.id = c.paper_class_id
        where c.room_id = $1 and c.mix_id = $2
        order by p.position, p.id
        "#,
        room,
        mix
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found
        .into_iter()
        .map(|row| (row.paper_class_id, row.sheets_per_litre_thousandths))
        .collect())
}

/// What went into a container so far: product, and its groups then and now.
pub(super) async fn container(tx: &mut RoomTx, name: &str) -> Result<Vec<(Uuid, Vec<String>)>> {
    let room = tx.room();
    let found = sqlx::query!(
        r#"
        select distinct p.id, p.groups
        from mix m
        join product p on p.room_id = m.room_id and p.id = m.product_id
        where m.room_id = $1 and lower(m.discarded_into) = lower($2)
        "#,
        room,
        name
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found.into_iter().map(|row| (row.id, row.groups)).collect())
}

pub(super) async fn insert_mix(tx: &mut RoomTx, placed: &Placed<Mixed>) -> Result<()> {
    let room = tx.room();
    let mixed = &placed.entry;
    sqlx::query!(
        r#"
        insert into mix (
            room_id, id, product_id, product_version, parts_thousandths, charged_ul,
            concentrate_ul, spent_nl, age_ppb, age_at, life_s, unknown_sheets_at, mixed_at,
            mixed_by, mixed_seq, tray_id, discarded_at, discarded_into, last_seq
        )
        values ($1, $2, $3, $4, $5, $6, $7, 0, 0, $8, $9, null, $8, $10, $11, $12, null, null, $11)
        "#,
        room,
        mixed.mix_id,
        mixed.product_id,
        mixed.product_version,
        mixed.parts_thousandths,
        mixed.charged_ul,
        mixed.concentrate_ul,
        placed.happened_at,
        mixed.life_s,
        placed.actor,
        placed.seq,
        mixed.tray_id
    )
    .execute(tx.db())
    .await?;
    for capacity in &mixed.capacities {
        sqlx::query!(
            r#"
            insert into mix_capacity (
                room_id, mix_id, paper_class_id, sheets_per_litre_thousandths
            )
            values ($1, $2, $3, $4)
            "#,
            room,
            mixed.mix_id,
            capacity.paper_class_id,
            capacity.sheets_per_litre_thousandths
        )
        .execute(tx.db())
        .await?;
    }
    sqlx::query!(
        r#"
        insert into stay (room_id, mix_id, tray_id, line_id, from_at, until_at)
        values ($1, $2, $3, $4, $5, null)
        "#,
        room,
        mixed.mix_id,
        mixed.tray_id,
        mixed.line_id,
        placed.happened_at
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

pub(super) async fn end_mix(tx: &mut RoomTx, placed: &Placed<Discarded>) -> Result<()> {
    let room = tx.room();
    let mix = placed.entry.mix_id;
    sqlx::query!(
        r#"
        update mix set tray_id = null, discarded_at = $3, discarded_into = $4, last_seq = $5
        where room_id = $1 and id = $2
        "#,
        room,
        mix,
        placed.happened_at,
        placed.entry.container,
        placed.seq
    )
    .execute(tx.db())
    .await?;
    sqlx::query!(
        r#"
        update stay set until_at = $3
        where room_id = $1 and mix_id = $2 and until_at is null
        "#,
        room,
        mix,
        placed.happened_at
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

/// A note as it wore one mix.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct WornAt {
    /// When the sheets went through.
    pub happened_at: OffsetDateTime,
    /// How many.
    pub sheets: i32,
    /// The paper class's name.
    pub paper_class: String,
    /// The sheet size's name.
    pub sheet_size: String,
    /// What that used up, in nanolitres.
    pub spent_nl: i64,
    /// When the note was taken back.
    pub undone_at: Option<OffsetDateTime>,
}

/// The newest notes that wore a mix, those that were taken back too, oldest first and
/// at most `most`.
///
/// # Errors
/// The database's.
pub async fn wear_history(tx: &mut RoomTx, mix: Uuid, most: i64) -> Result<Vec<WornAt>> {
    let room = tx.room();
    let mut found = sqlx::query_as!(
        WornAt,
        r#"
        select
            p.happened_at, p.sheets, c.name as paper_class, s.name as sheet_size, w.spent_nl,
            u.happened_at as "undone_at?"
        from wear w
        join pass p on p.room_id = w.room_id and p.seq = w.seq
        join paper_class c on c.room_id = p.room_id and c.id = p.paper_class_id
        join sheet_size s on s.room_id = p.room_id and s.id = p.sheet_size_id
        left join entry u on u.room_id = p.room_id and u.seq = p.reversed_by
        where w.room_id = $1 and w.mix_id = $2
        order by p.seq desc
        limit $3
        "#,
        room,
        mix,
        most
    )
    .fetch_all(tx.db())
    .await?;
    found.reverse();
    Ok(found)
}
