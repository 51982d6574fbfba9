//! The stock solutions' SQL.

use time::OffsetDateTime;
use uuid::Uuid;

use super::{Stock, StockMade};
use crate::database::RoomTx;
use crate::error::Result;
use crate::logbook::Placed;

/// Every stock solution of which something remains, of one product or of all: what
/// was opened first, then what was made first.
///
/// # Errors
/// The database's.
pub async fn stocks(tx: &mut RoomTx, product: Option<Uuid>) -> Result<Vec<Stock>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        Stock,
        r#"
        select
            s.id, s.product_id, p.name as product_name, s.packets_thousandths, s.volume_ul,
            s.drawn_ul, s.full_life_s, s.part_life_s, s.made_at, s.made_by, s.made_seq, s.opened_at
        from stock_solution s
        join product p on p.room_id = s.room_id and p.id = s.product_id
        where s.room_id = $1
            and s.drawn_ul < s.volume_ul
            and ($2::uuid is null or s.product_id = $2)
        order by s.opened_at nulls last, s.made_at, s.id
        limit 500
        "#,
        room,
        product
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found)
}

/// One stock solution, also one of which nothing remains.
///
/// # Errors
/// The database's.
pub async fn stock(tx: &mut RoomTx, id: Uuid) -> Result<Option<Stock>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        Stock,
        r#"
        select
            s.id, s.product_id, p.name as product_name, s.packets_thousandths, s.volume_ul,
            s.drawn_ul, s.full_life_s, s.part_life_s, s.made_at, s.made_by, s.made_seq, s.opened_at
        from stock_solution s
        join product p on p.room_id = s.room_id and p.id = s.product_id
        where s.room_id = $1 and s.id = $2
        "#,
        room,
        id
    )
    .fetch_optional(tx.db())
    .await?;
    Ok(found)
}

pub(super) async fn insert(tx: &mut RoomTx, placed: &Placed<StockMade>) -> Result<()> {
    let room = tx.room();
    let made = &placed.entry;
    sqlx::query!(
        r#"
        insert into stock_solution (
            room_id, id, product_id, product_version, packets_thousandths, volume_ul, full_life_s,
            part_life_s, made_at, made_by, made_seq
        )
        values ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10, $11)
        "#,
        room,
        made.stock_id,
        made.product_id,
        made.product_version,
        made.packets_thousandths,
        made.volume_ul,
        made.full_life_s,
        made.part_life_s,
        placed.happened_at,
        placed.actor,
        placed.seq
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

/// Takes a volume out of a stock solution.
pub(in crate::mixes) async fn draw(
    tx: &mut RoomTx,
    id: Uuid,
    volume_ul: i64,
    at: OffsetDateTime,
) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        r#"
        update stock_solution set
            drawn_ul = drawn_ul + $3,
            opened_at = least(opened_at, $4)
        where room_id = $1 and id = $2
        "#,
        room,
        id,
        volume_ul,
        at
    )
    .execute(tx.db())
    .await?;
    Ok(())
}
