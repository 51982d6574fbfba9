//! The Emergency page's SQL.

use crate::database::RoomTx;
use crate::error::Result;

/// The P codes of what stands on the bench now, product by product.
pub(super) async fn precautions(tx: &mut RoomTx) -> Result<Vec<(String, Vec<String>)>> {
    let room = tx.room();
    let found = sqlx::query!(
        r#"
        select distinct p.name, p.precaution_codes
        from mix m
        join product p on p.room_id = m.room_id and p.id = m.product_id
        where m.room_id = $1 and m.tray_id is not null
        order by p.name
        "#,
        room
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found
        .into_iter()
        .map(|row| (row.name, row.precaution_codes))
        .collect())
}
