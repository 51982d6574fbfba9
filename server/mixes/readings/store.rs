//! The SQL of what people found of mixes.

use time::OffsetDateTime;
use uuid::Uuid;

use super::{Kept, Latest, LatestExtension};
use crate::clock::moment;
use crate::darkroom::incompatibility::Group;
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::logbook::Placed;
use crate::mixes::{Contaminant, Extended, Outcome, Reading, ReadingKind, ReadingUndone};
use crate::products;

pub(in crate::mixes) async fn insert(tx: &mut RoomTx, placed: &Placed<Reading>) -> Result<()> {
    let room = tx.room();
    let reading = &placed.entry;
    let contaminants = match &reading.contaminant {
        None => Vec::new(),
        Some(Contaminant::Unknown) => vec!["unknown".to_owned()],
        Some(Contaminant::Groups(groups)) => names(groups)?,
    };
    sqlx::query!(
        r#"
        insert into reading (
            room_id, seq, id, mix_id, person_id, kind, outcome, value, tenths_celsius, sample,
            is_fresh, ratio_thousandths, spent_nl, contaminants, remark, happened_at, undone_by
        )
        values ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10, $11, $12, $13, $14, $15, $16, null)
        "#,
        room,
        placed.seq,
        reading.reading_id,
        reading.mix_id,
        reading.person_id.or(placed.actor),
        reading.kind.as_str(),
        reading.outcome.as_str(),
        reading.value,
        reading.tenths_celsius,
        reading.sample,
        reading.is_fresh,
        reading.ratio_thousandths,
        reading.spent_nl,
        &contaminants,
        reading.remark,
        placed.happened_at
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

fn names(groups: &[Group]) -> Result<Vec<String>> {
    groups
        .iter()
        .map(|group| products::group_text(*group))
        .collect()
}

pub(in crate::mixes) async fn undo(tx: &mut RoomTx, placed: &Placed<ReadingUndone>) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        "update reading set undone_by = $3 where room_id = $1 and seq = $2",
        room,
        placed.entry.reading_seq,
        placed.seq
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

pub(in crate::mixes) async fn extend(tx: &mut RoomTx, placed: &Placed<Extended>) -> Result<()> {
    let room = tx.room();
    let extended = &placed.entry;
    sqlx::query!(
        r#"
        insert into extension (
            room_id, seq, id, mix_id, person_id, given_at, until_at, clearing_thousandths,
            emergence_thousandths, reason
        )
        values ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10)
        "#,
        room,
        placed.seq,
        extended.extension_id,
        extended.mix_id,
        placed.actor,
        moment(extended.given_us),
        moment(extended.until_us),
        extended.clearing_thousandths,
        extended.emergence_thousandths,
        extended.reason
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

/// The last reading of each kind and outcome of these mixes, with a ratio and
/// without, those taken back left out: one that compares with nothing hides none
/// that does.
pub(in crate::mixes) async fn latest(tx: &mut RoomTx, mixes: &[Uuid]) -> Result<Vec<Latest>> {
    let room = tx.room();
    let rows = sqlx::query!(
        r#"
        select distinct on (mix_id, kind, outcome, ratio_thousandths is null)
            seq, mix_id, kind, outcome, value, ratio_thousandths, spent_nl, happened_at
        from reading
        where room_id = $1 and mix_id = any($2) and undone_by is null
        order by mix_id, kind, outcome, ratio_thousandths is null, seq desc
        "#,
        room,
        mixes
    )
    .fetch_all(tx.db())
    .await?;
    rows.into_iter()
        .map(|row| {
            Ok(Latest {
                seq: row.seq,
                mix_id: row.mix_id,
                kind: kind(&row.kind)?,
                outcome: outcome(&row.outcome)?,
                value: row.value,
                ratio_thousandths: row.ratio_thousandths,
                spent_nl: row.spent_nl,
                happened_at: row.happened_at,
            })
        })
        .collect()
}

/// The last extension of each of these mixes.
pub(in crate::mixes) async fn extensions(
    tx: &mut RoomTx,
    mixes: &[Uuid],
) -> Result<Vec<LatestExtension>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        LatestExtension,
        r#"
        select distinct on (mix_id)
            mix_id, person_id, given_at, until_at, clearing_thousandths, emergence_thousandths,
            reason
        from extension
        where room_id = $1 and mix_id = any($2)
        order by mix_id, seq desc
        "#,
        room,
        mixes
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found)
}

/// What people found of a mix, newest first.
///
/// # Errors
/// The database's.
pub async fn of_mix(tx: &mut RoomTx, mix: Uuid, most: i64) -> Result<Vec<Kept>> {
    some(tx, (Some(mix), None), None, most).await
}

/// What people found of all mixes, newest first; `before` leads to older ones.
pub(in crate::mixes) async fn of_all(
    tx: &mut RoomTx,
    before: Option<i64>,
    most: i64,
) -> Result<Vec<Kept>> {
    some(tx, (None, None), before, most).await
}

/// One reading.
pub(in crate::mixes) async fn one(tx: &mut RoomTx, id: Uuid) -> Result<Option<Kept>> {
    Ok(some(tx, (None, Some(id)), None, 1).await?.pop())
}

async fn some(
    tx: &mut RoomTx,
    (mix, id): (Option<Uuid>, Option<Uuid>),
    before: Option<i64>,
    most: i64,
) -> Result<Vec<Kept>> {
    let room = tx.room();
    let rows = sqlx::query!(
        r#"
        select
            seq, id, mix_id, person_id, kind, outcome, value, tenths_celsius, sample, is_fresh,
            ratio_thousandths, contaminants, remark, happened_at, undone_by
        from reading
        where room_id = $1
            and ($2::uuid is null or mix_id = $2)
            and ($3::uuid is null or id = $3)
            and ($4::bigint is null or seq < $4)
        order by seq desc
        limit $5
        "#,
        room,
        mix,
        id,
        before,
        most
    )
    .fetch_all(tx.db())
    .await?;
    rows.into_iter()
        .map(|row| {
            Ok(Kept {
                seq: row.seq,
                id: row.id,
                mix_id: row.mix_id,
                person_id: row.person_id,
                kind: kind(&row.kind)?,
                outcome: outcome(&row.outcome)?,
                value: row.value,
                tenths_celsius: row.tenths_celsius,
                sample: row.sample,
                is_fresh: row.is_fresh,
                ratio_thousandths: row.ratio_thousandths,
                contaminants: row.contaminants,
                remark: row.remark,
                happened_at: row.happened_at,
                undone_by: row.undone_by,
            })
        })
        .collect()
}

/// The last fresh reading of a kind with one paper or film: of this mix, else
/// of the last mix of its product and dilution.
///
/// # Errors
/// The database's.
pub async fn fresh(
    tx: &mut RoomTx,
    mix: Uuid,
    of: ReadingKind,
    sample: &str,
) -> Result<Option<Kept>> {
    let room = tx.room();
    let id = sqlx::query_scalar!(
        r#"
        select f.id as "id!"
        from (
            (
                select id, 1 as rank
                from reading
                where room_id = $1
                    and mix_id = $2
                    and kind = $3
                    and lower(sample) = lower($4)
                    and is_fresh
                    and undone_by is null
                order by seq desc
                limit 1
            )
            union all
            (
                select r.id, 2
                from reading r
                join mix o on o.room_id = r.room_id and o.id = r.mix_id
                join mix m on m.room_id = o.room_id
                    and m.id = $2
                    and m.product_id = o.product_id
                    and m.parts_thousandths = o.parts_thousandths
                where r.room_id = $1
                    and r.kind = $3
                    and lower(r.sample) = lower($4)
                    and r.is_fresh
                    and r.undone_by is null
                order by r.seq desc
                limit 1
            )
        ) f
        order by f.rank
        limit 1
        "#,
        room,
        mix,
        of.as_str(),
        sample
    )
    .fetch_optional(tx.db())
    .await?;
    match id {
        Some(id) => one(tx, id).await,
        None => Ok(None),
    }
}

/// The papers or films that fresh readings of a kind were made with, for the
/// product and dilution of a mix; the last one first.
pub(in crate::mixes) async fn samples(
    tx: &mut RoomTx,
    mix: Uuid,
    of: ReadingKind,
) -> Result<Vec<String>> {
    let room = tx.room();
    let found = sqlx::query_scalar!(
        r#"
        select r.sample
        from mix m
        join mix o on o.room_id = m.room_id
            and o.product_id = m.product_id
            and o.parts_thousandths = m.parts_thousandths
        join reading r on r.room_id = o.room_id and r.mix_id = o.id
        where m.room_id = $1
            and m.id = $2
            and r.kind = $3
            and r.is_fresh
            and r.undone_by is null
        group by r.sample
        order by max(r.seq) desc
        limit 5
        "#,
        room,
        mix,
        of.as_str()
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found)
}

/// When a check of a kind last passed for a mix before a reading.
pub(in crate::mixes) async fn last_passed(
    tx: &mut RoomTx,
    mix: Uuid,
    of: ReadingKind,
    before: i64,
) -> Result<Option<OffsetDateTime>> {
    let room = tx.room();
    let found = sqlx::query_scalar!(
        r#"
        select max(happened_at)
        from reading
        where room_id = $1
            and mix_id = $2
            and kind = $3
            and outcome = 'passed'
            and undone_by is null
            and seq < $4
        "#,
        room,
        mix,
        of.as_str(),
        before
    )
    .fetch_one(tx.db())
    .await?;
    Ok(found)
}

fn kind(text: &str) -> Result<ReadingKind> {
    ReadingKind::parse(text).ok_or_else(|| Error::fault(format!("no such reading: {text}")))
}

fn outcome(text: &str) -> Result<Outcome> {
    Outcome::parse(text).ok_or_else(|| Error::fault(format!("no such outcome: {text}")))
}

/// A note that went through a mix.
pub(in crate::mixes) struct NoteThrough {
    pub(in crate::mixes) seq: i64,
    pub(in crate::mixes) person_id: Uuid,
    pub(in crate::mixes) happened_at: OffsetDateTime,
}

/// The notes that went through a mix, those taken back left out.
pub(in crate::mixes) async fn notes_through(
    tx: &mut RoomTx,
    mix: Uuid,
) -> Result<Vec<NoteThrough>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        NoteThrough,
        r#"
        select p.seq, p.person_id, p.happened_at
        from wear w
        join pass p on p.room_id = w.room_id and p.seq = w.seq
        where w.room_id = $1 and w.mix_id = $2 and p.reversed_by is null
        order by p.seq
        "#,
        room,
        mix
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found)
}
