//! What the folds of mixes write.

use time::OffsetDateTime;
use uuid::Uuid;

use crate::database::RoomTx;
use crate::error::Result;
use crate::logbook::Placed;
use crate::mixes::store::origin_text;
use crate::mixes::{FrozenCapacity, Mix, Mixed, UnknownFound};
use crate::products::Place;

pub(super) async fn insert_mix(tx: &mut RoomTx, placed: &Placed<Mixed>) -> Result<()> {
    let room = tx.room();
    let mixed = &placed.entry;
    let figures = mixed.figures.as_ref().map(serde_json::to_string);
    let figures = figures.transpose()?.unwrap_or_default();
    sqlx::query!(
        r#"
        insert into mix (
            room_id, id, product_id, product_version, parts_thousandths, charged_ul,
            concentrate_ul, spent_nl, age_ppb, age_at, life_s, unknown_sheets_at, mixed_at,
            mixed_by, mixed_seq, tray_id, bottle_id, discarded_at, discarded_into, last_seq,
            origin, storage, figures, oldest_at, shifts, stock_id
        )
        values (
            $1, $2, $3, $4, $5, $6, $7, $8, $9, $10, $11, null, $10, $12, $13, $14, $15, null, null,
            $13, $16, $17, $18, $10, $19, $20
        )
        "#,
        room,
        mixed.mix_id,
        mixed.product_id,
        mixed.product_version,
        mixed.parts_thousandths,
        mixed.charged_ul,
        mixed.concentrate_ul,
        mixed.guessed_spent_nl,
        mixed.guessed_age_ppb,
        placed.happened_at,
        mixed.life_s,
        placed.actor,
        placed.seq,
        mixed.stand.tray_id,
        mixed.stand.bottle_id,
        origin_text(mixed.origin),
        mixed.storage.as_str(),
        figures,
        mixed.shifts,
        mixed.stock_id
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

pub(super) async fn insert_unknown(tx: &mut RoomTx, placed: &Placed<UnknownFound>) -> Result<()> {
    let room = tx.room();
    let found = &placed.entry;
    sqlx::query!(
        r#"
        insert into mix (
            room_id, id, product_id, product_version, parts_thousandths, charged_ul,
            concentrate_ul, spent_nl, age_ppb, age_at, life_s, unknown_sheets_at, mixed_at,
            mixed_by, mixed_seq, tray_id, bottle_id, discarded_at, discarded_into, last_seq,
            origin, storage, figures, oldest_at, shifts
        )
        values (
            $1, $2, null, 0, 0, $3, 0, 0, 0, $4, 0, null, $4, $5, $6, $7, $8, null, null, $6,
            'unknown', $9, '', $4, 0
        )
        "#,
        room,
        found.mix_id,
        found.charged_ul,
        placed.happened_at,
        placed.actor,
        placed.seq,
        found.stand.tray_id,
        found.stand.bottle_id,
        found.storage.as_str()
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

pub(super) async fn insert_capacity(
    tx: &mut RoomTx,
    mix: Uuid,
    capacity: &FrozenCapacity,
) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        r#"
        insert into mix_capacity (
            room_id, mix_id, paper_class_id, sheets_per_litre_thousandths, place
        )
        values ($1, $2, $3, $4, $5)
        "#,
        room,
        mix,
        capacity.paper_class_id,
        capacity.sheets_per_litre_thousandths,
        capacity.place.as_str()
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

/// Writes a mix back as it has become.
pub(super) async fn save(tx: &mut RoomTx, mix: &Mix, seq: i64) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        r#"
        update mix set
            charged_ul = $3,
            concentrate_ul = $4,
            spent_nl = $5,
            age_ppb = $6,
            age_at = $7,
            life_s = $8,
            unknown_sheets_at = $9,
            origin = $10,
            storage = $11,
            oldest_at = $12,
            shifts = $13,
            poured_into = $14,
            tray_id = $15,
            bottle_id = $16,
            discarded_at = $17,
            discarded_into = $18,
            last_seq = $19
        where room_id = $1 and id = $2
        "#,
        room,
        mix.id,
        mix.charged_ul,
        mix.concentrate_ul,
        mix.spent_nl,
        mix.age_ppb,
        mix.age_at,
        mix.life_s,
        mix.unknown_sheets_at,
        origin_text(mix.origin),
        mix.storage.as_str(),
        mix.oldest_at,
        mix.shifts,
        mix.poured_into,
        mix.stand.tray_id,
        mix.stand.bottle_id,
        mix.discarded_at,
        mix.discarded_into,
        seq
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

/// Writes back what is dissolved in a mix, and what prints carried in and out.
pub(super) async fn save_dissolved(tx: &mut RoomTx, mix: &Mix) -> Result<()> {
    let room = tx.room();
    let [least, usual, most] = mix.silver_ug;
    sqlx::query!(
        r#"
        update mix set
            silver_least_ug = $3,
            silver_usual_ug = $4,
            silver_most_ug = $5,
            bromide_ug = $6,
            alkali_neq = $7,
            carried_out_ul = $8,
            received_ul = $9
        where room_id = $1 and id = $2
        "#,
        room,
        mix.id,
        least,
        usual,
        most,
        mix.bromide_ug,
        mix.alkali_neq,
        mix.carried_out_ul,
        mix.received_ul
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

/// A stay that began and ended at this same instant held no print: it gives way.
pub(super) async fn begin_stay(
    tx: &mut RoomTx,
    mix: Uuid,
    (tray, line): (Uuid, Uuid),
    place: Place,
    at: OffsetDateTime,
) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        r#"
        insert into stay (room_id, mix_id, tray_id, line_id, place, from_at, until_at)
        values ($1, $2, $3, $4, $5, $6, null)
        on conflict (room_id, mix_id, from_at) do update set
            tray_id = excluded.tray_id,
            line_id = excluded.line_id,
            place = excluded.place,
            until_at = null
        "#,
        room,
        mix,
        tray,
        line,
        place.as_str(),
        at
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

pub(super) async fn end_stay(tx: &mut RoomTx, mix: Uuid, at: OffsetDateTime) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        r#"
        update stay set until_at = greatest(from_at, $3)
        where room_id = $1 and mix_id = $2 and until_at is null
        "#,
        room,
        mix,
        at
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

/// The last stay of a mix goes on as if it had not ended.
pub(super) async fn reopen_stay(tx: &mut RoomTx, mix: Uuid) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        r#"
        update stay set until_at = null
        where room_id = $1
            and mix_id = $2
            and from_at = (
                select max(from_at) from stay where room_id = $1 and mix_id = $2
            )
        "#,
        room,
        mix
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

/// What was poured into a mix before it was poured on is where that is now.
pub(super) async fn follow(tx: &mut RoomTx, poured: Uuid, into: Uuid) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        "update mix set poured_into = $3 where room_id = $1 and poured_into = $2",
        room,
        poured,
        into
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

/// Of two mixes that are one now, the smaller capacity holds; a class that one
/// of them has no figure for has none.
pub(super) async fn least_capacities(tx: &mut RoomTx, into: Uuid, poured: Uuid) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        r#"
        delete from mix_capacity c
        where c.room_id = $1
            and c.mix_id = $2
            and not exists (
                select from mix_capacity o
                where o.room_id = $1
                    and o.mix_id = $3
                    and o.paper_class_id = c.paper_class_id
                    and o.place = c.place
            )
        "#,
        room,
        into,
        poured
    )
    .execute(tx.db())
    .await?;
    sqlx::query!(
        r#"
        update mix_capacity c
        set sheets_per_litre_thousandths =
            least(c.sheets_per_litre_thousandths, o.sheets_per_litre_thousandths)
        from mix_capacity o
        where c.room_id = $1
            and c.mix_id = $2
            and o.room_id = $1
            and o.mix_id = $3
            and o.paper_class_id = c.paper_class_id
            and o.place = c.place
        "#,
        room,
        into,
        poured
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

/// A vessel whose mix took up household bleach is out of use until it is rinsed.
pub(super) async fn ask_for_rinse(
    tx: &mut RoomTx,
    mix: Uuid,
    vessel: Uuid,
    seq: i64,
) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        r#"
        insert into rinse (room_id, vessel_id, due_seq, rinsed_seq)
        select $1, $3, $4, null
        where exists (
            select
            from reading r
            where r.room_id = $1
                and r.mix_id = $2
                and r.undone_by is null
                and 'hypochlorite' = any(r.contaminants)
        )
        on conflict (room_id, vessel_id) do update set
            due_seq = excluded.due_seq,
            rinsed_seq = null
        "#,
        room,
        mix,
        vessel,
        seq
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

pub(super) async fn rinsed(tx: &mut RoomTx, vessel: Uuid, seq: i64) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        "update rinse set rinsed_seq = $3 where room_id = $1 and vessel_id = $2",
        room,
        vessel,
        seq
    )
    .execute(tx.db())
    .await?;
    Ok(())
}
