//! The SQL of what notes did.

use uuid::Uuid;

use crate::database::RoomTx;
use crate::error::Result;

/// A bath that a note went through, as it now is: where it was poured into
/// another since, that one.
pub(super) struct Bath {
    pub(super) tray: String,
    pub(super) product: Option<String>,
    pub(super) spent_nl: i64,
    pub(super) charged_ul: i64,
    pub(super) silver_usual_ug: i64,
}

/// The baths of these mixes in these trays, in their order.
pub(super) async fn baths(tx: &mut RoomTx, mixes: &[Uuid], trays: &[Uuid]) -> Result<Vec<Bath>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        Bath,
        r#"
        select
            t.name as tray,
            p.name as "product?",
            m.spent_nl,
            m.charged_ul,
            m.silver_usual_ug
        from unnest($2::uuid[], $3::uuid[]) with ordinality as w (mix, tray, place)
        join mix o on o.room_id = $1 and o.id = w.mix
        join mix m on m.room_id = $1 and m.id = coalesce(o.poured_into, o.id)
        join tray t on t.room_id = $1 and t.id = w.tray
        left join product p on p.room_id = $1 and p.id = m.product_id
        order by w.place
        "#,
        room,
        mixes,
        trays
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found)
}
