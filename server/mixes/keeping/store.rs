//! The SQL of containers and discards.

use time::OffsetDateTime;
use uuid::Uuid;

use crate::database::RoomTx;
use crate::error::Result;
use crate::logbook::Entry;
use crate::mixes::Discarded;
use crate::mixes::store::Poured;

/// A part of what a container holds: mixes of one product with the same in them.
pub(super) struct Part {
    pub(super) container: String,
    pub(super) product_name: Option<String>,
    pub(super) mixes: i64,
    pub(super) last_at: OffsetDateTime,
    pub(super) poured: Poured,
}

/// Every container that something went into, the last used first.
pub(super) async fn containers(tx: &mut RoomTx) -> Result<Vec<Part>> {
    let room = tx.room();
    let rows = sqlx::query!(
        r#"
        select
            min(m.discarded_into) as "container!",
            m.product_id,
            p.name as "product_name?",
            coalesce(p.groups, '{}') as "groups!",
            c.names as "contaminants!",
            count(*) as "mixes!",
            max(m.discarded_at) as "last_at!"
        from mix m
        left join product p on p.room_id = m.room_id and p.id = m.product_id
        cross join lateral (
            select array(
                select distinct c.name
                from reading r
                cross join unnest(r.contaminants) c (name)
                where r.room_id = m.room_id and r.mix_id = m.id and r.undone_by is null
                order by c.name
            ) as names
        ) c
        where m.room_id = $1 and m.discarded_into is not null
        group by lower(m.discarded_into), m.product_id, p.name, p.groups, c.names
        order by max(m.discarded_at) desc
        "#,
        room
    )
    .fetch_all(tx.db())
    .await?;
    let parts = rows.into_iter().map(|row| Part {
        container: row.container,
        product_name: row.product_name,
        mixes: row.mixes,
        last_at: row.last_at,
        poured: Poured {
            product_id: row.product_id,
            groups: row.groups,
            contaminants: row.contaminants,
        },
    });
    Ok(parts.collect())
}

/// The mix that was discarded last from a tray or bottle.
pub(super) async fn last_discarded(tx: &mut RoomTx, vessel: Uuid) -> Result<Option<Uuid>> {
    let room = tx.room();
    let found = sqlx::query_scalar!(
        r#"
        select m.id
        from entry_about v
        join entry e on e.room_id = v.room_id and e.seq = v.seq
        join entry_about m on m.room_id = v.room_id and m.seq = v.seq and m.noun = 'mix'
        where v.room_id = $1
            and v.noun in ('tray', 'bottle')
            and v.id = $2
            and e.kind = $3
        order by v.seq desc
        limit 1
        "#,
        room,
        vessel,
        Discarded::KIND
    )
    .fetch_optional(tx.db())
    .await?;
    Ok(found)
}
