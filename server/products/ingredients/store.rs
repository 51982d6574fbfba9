//! The ingredients' SQL.

use std::collections::BTreeMap;

use uuid::Uuid;

use crate::database::RoomTx;
use crate::error::Result;
use crate::products::{Ingredient, ProductSet};

/// The ingredients of every product that has any, in the order of its sheet.
pub(in crate::products) async fn by_product(
    tx: &mut RoomTx,
) -> Result<BTreeMap<Uuid, Vec<Ingredient>>> {
    let room = tx.room();
    let rows = sqlx::query!(
        r#"
        select product_id, name, cas, least_millionths, most_millionths, hazard_codes
        from ingredient
        where room_id = $1
        order by product_id, position
        "#,
        room
    )
    .fetch_all(tx.db())
    .await?;
    let mut by_product: BTreeMap<Uuid, Vec<Ingredient>> = BTreeMap::new();
    for row in rows {
        by_product
            .entry(row.product_id)
            .or_default()
            .push(Ingredient {
                name: row.name,
                cas: row.cas,
                least_millionths: row.least_millionths,
                most_millionths: row.most_millionths,
                hazard_codes: row.hazard_codes,
            });
    }
    Ok(by_product)
}

/// The list is replaced as a whole.
pub(in crate::products) async fn replace(tx: &mut RoomTx, product: &ProductSet) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        "delete from ingredient where room_id = $1 and product_id = $2",
        room,
        product.id
    )
    .execute(tx.db())
    .await?;
    for (position, ingredient) in (1..).zip(&product.ingredients) {
        insert(tx, product.id, position, ingredient).await?;
    }
    Ok(())
}

async fn insert(
    tx: &mut RoomTx,
    product: Uuid,
    position: i32,
    ingredient: &Ingredient,
) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        r#"
        insert into ingredient (
            room_id, product_id, position, name, cas, least_millionths, most_millionths,
            hazard_codes
        )
        values ($1, $2, $3, $4, $5, $6, $7, $8)
        "#,
        room,
        product,
        position,
        ingredient.name,
        ingredient.cas,
        ingredient.least_millionths,
        ingredient.most_millionths,
        &ingredient.hazard_codes
    )
    .execute(tx.db())
    .await?;
    Ok(())
}
