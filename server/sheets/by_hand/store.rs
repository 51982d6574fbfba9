//! The SQL of sheets kept on paper.

use time::OffsetDateTime;
use uuid::Uuid;

use crate::database::RoomTx;
use crate::error::Result;

/// Everyone of the room who prints, by name: members of every role that notes
/// sheets, whose access has not ended.
pub(super) async fn printers(tx: &mut RoomTx) -> Result<Vec<(Uuid, String)>> {
    let room = tx.room();
    let found = sqlx::query!(
        r#"
        select m.person_id, p.name
        from membership m
        join person p on p.id = m.person_id
        where m.room_id = $1
            and m.ended_at is null
            and m.role in ('member', 'trained', 'steward')
        order by p.name, m.member_number
        "#,
        room
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found
        .into_iter()
        .map(|row| (row.person_id, row.name))
        .collect())
}

/// The mix that stood in a tray at a time.
pub(super) async fn stood_in(
    tx: &mut RoomTx,
    tray: Uuid,
    at: OffsetDateTime,
) -> Result<Option<Uuid>> {
    let room = tx.room();
    let found = sqlx::query_scalar!(
        r#"
        select mix_id
        from stay
        where room_id = $1
            and tray_id = $2
            and from_at <= $3
            and coalesce(until_at, 'infinity') > $3
        order by from_at desc
        limit 1
        "#,
        room,
        tray,
        at
    )
    .fetch_optional(tx.db())
    .await?;
    Ok(found)
}

/// The last entry that was written together with this one; nothing where that is
/// no note and no reading.
pub(super) async fn last_of_sheet(tx: &mut RoomTx, seq: i64) -> Result<Option<i64>> {
    let room = tx.room();
    let last = sqlx::query_scalar!(
        r#"
        select max(e.seq)
        from entry f
        join entry e on e.room_id = f.room_id
            and e.seq >= f.seq
            and e.recorded_at = f.recorded_at
            and e.fingerprint = f.fingerprint
            and e.actor = f.actor
        where f.room_id = $1 and f.seq = $2 and f.kind in ('noted', 'reading')
        "#,
        room,
        seq
    )
    .fetch_one(tx.db())
    .await?;
    Ok(last)
}
