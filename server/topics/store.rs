//! The SQL of topics and their versions.

use time::OffsetDateTime;
use uuid::Uuid;

use super::{Required, TopicSet, Trait};
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::logbook::Placed;

/// A topic of the room, with the text of its last version.
pub type Topic = TopicSet;

/// A text as it was at some time.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct TopicVersion {
    /// Which version.
    pub version: i32,
    /// Its title then.
    pub title: String,
    /// Its text then.
    pub body: String,
    /// The number of the entry that set it.
    pub set_seq: i64,
    /// When that was.
    pub set_at: OffsetDateTime,
}

/// Every topic by its title, retired ones last.
///
/// # Errors
/// The database's.
pub async fn topics(tx: &mut RoomTx) -> Result<Vec<Topic>> {
    let room = tx.room();
    let rows = sqlx::query!(
        r#"
        select
            t.id, t.version, t.counts_from_version, v.title, v.body, t.required, t.traits,
            t.good_months, t.retired_at is not null as "is_retired!",
            array(
                select p.product_id
                from topic_product p
                where p.room_id = t.room_id and p.topic_id = t.id
                order by p.product_id
            ) as "product_ids!"
        from topic t
        join topic_version v
            on v.room_id = t.room_id and v.topic_id = t.id and v.version = t.version
        where t.room_id = $1
        order by t.retired_at is not null, v.title, t.id
        limit 500
        "#,
        room
    )
    .fetch_all(tx.db())
    .await?;
    rows.into_iter()
        .map(|row| {
            Ok(Topic {
                id: row.id,
                version: row.version,
                counts_from_version: row.counts_from_version,
                title: row.title,
                body: row.body,
                required: required(&row.required, &row.traits, row.product_ids)?,
                good_months: row.good_months,
                is_retired: row.is_retired,
            })
        })
        .collect()
}

fn required(kind: &str, traits: &[String], product_ids: Vec<Uuid>) -> Result<Required> {
    let unknown = |word: &str| Error::fault(format!("no topic is required {word}"));
    match kind {
        "always" => Ok(Required::Always),
        "by_trait" => {
            let traits = traits.iter();
            let read = traits.map(|text| Trait::parse(text).ok_or_else(|| unknown(text)));
            Ok(Required::ByTrait(read.collect::<Result<_>>()?))
        }
        "by_product" => Ok(Required::ByProduct(product_ids)),
        "offered" => Ok(Required::Offered),
        other => Err(unknown(other)),
    }
}

/// Every version of a topic's text, the last first.
///
/// # Errors
/// The database's.
pub async fn versions(tx: &mut RoomTx, topic: Uuid) -> Result<Vec<TopicVersion>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        TopicVersion,
        r#"
        select version, title, body, set_seq, set_at
        from topic_version
        where room_id = $1 and topic_id = $2
        order by version desc
        limit 500
        "#,
        room,
        topic
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found)
}

pub(super) async fn set_topic(tx: &mut RoomTx, placed: &Placed<TopicSet>) -> Result<()> {
    upsert(tx, placed).await?;
    keep_version(tx, placed).await?;
    clear_products(tx, placed.entry.id).await?;
    if let Required::ByProduct(products) = &placed.entry.required {
        insert_products(tx, placed.entry.id, products).await?;
    }
    Ok(())
}

async fn upsert(tx: &mut RoomTx, placed: &Placed<TopicSet>) -> Result<()> {
    let room = tx.room();
    let topic = &placed.entry;
    let traits: Vec<String> = match &topic.required {
        Required::ByTrait(traits) => traits.iter().map(|each| each.as_str().to_owned()).collect(),
        _ => Vec::new(),
    };
    sqlx::query!(
        r#"
        insert into topic (
            room_id, id, version, counts_from_version, required, traits, good_months, retired_at
        )
        values ($1, $2, $3, $4, $5, $6, $7, $8)
        on conflict (room_id, id) do update set
            version = excluded.version,
            counts_from_version = excluded.counts_from_version,
            required = excluded.required,
            traits = excluded.traits,
            good_months = excluded.good_months,
            retired_at = excluded.retired_at
        "#,
        room,
        topic.id,
        topic.version,
        topic.counts_from_version,
        topic.required.as_str(),
        &traits,
        topic.good_months,
        topic.is_retired.then_some(placed.recorded_at)
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

/// Keeps the text where the entry brings a new one.
async fn keep_version(tx: &mut RoomTx, placed: &Placed<TopicSet>) -> Result<()> {
    let room = tx.room();
    let topic = &placed.entry;
    sqlx::query!(
        r#"
        insert into topic_version (room_id, topic_id, version, title, body, set_seq, set_at)
        values ($1, $2, $3, $4, $5, $6, $7)
        on conflict (room_id, topic_id, version) do nothing
        "#,
        room,
        topic.id,
        topic.version,
        topic.title,
        topic.body,
        placed.seq,
        placed.recorded_at
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

async fn clear_products(tx: &mut RoomTx, topic: Uuid) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        "delete from topic_product where room_id = $1 and topic_id = $2",
        room,
        topic
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

async fn insert_products(tx: &mut RoomTx, topic: Uuid, products: &[Uuid]) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        r#"
        insert into topic_product (room_id, topic_id, product_id)
        select $1, $2, p.id
        from unnest($3::uuid[]) p (id)
        "#,
        room,
        topic,
        products
    )
    .execute(tx.db())
    .await?;
    Ok(())
}
