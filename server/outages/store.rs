//! The outages' SQL.

use time::OffsetDateTime;
use uuid::Uuid;

use super::{OutageBegan, OutageEnded, What};
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::logbook::Placed;

/// Something that is off, or was.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct Outage {
    /// Which time.
    pub id: Uuid,
    /// What.
    pub what: What,
    /// The part of the room it is about; nothing for the whole room.
    pub space_id: Option<Uuid>,
    /// When it went off.
    pub began_at: OffsetDateTime,
    /// Who said so, by name.
    pub began_by: Option<String>,
    /// The number of the entry that said so.
    pub began_seq: i64,
    /// When it was on again.
    pub ended_at: Option<OffsetDateTime>,
    /// Who said so, by name.
    pub ended_by: Option<String>,
}

struct OutageRow {
    id: Uuid,
    what: String,
    space_id: Option<Uuid>,
    began_at: OffsetDateTime,
    began_by: Option<String>,
    began_seq: i64,
    ended_at: Option<OffsetDateTime>,
    ended_by: Option<String>,
}

impl OutageRow {
    fn read(self) -> Result<Outage> {
        let what = What::parse(&self.what);
        Ok(Outage {
            id: self.id,
            what: what.ok_or_else(|| Error::fault(format!("nothing is called {}", self.what)))?,
            space_id: self.space_id,
            began_at: self.began_at,
            began_by: self.began_by,
            began_seq: self.began_seq,
            ended_at: self.ended_at,
            ended_by: self.ended_by,
        })
    }
}

/// What is off now, the longest first.
///
/// # Errors
/// The database's.
pub async fn open(tx: &mut RoomTx) -> Result<Vec<Outage>> {
    let room = tx.room();
    let rows = sqlx::query_as!(
        OutageRow,
        r#"
        select
            o.id, o.what, o.space_id, o.began_at, b.name as "began_by?", o.began_seq,
            o.ended_at, null::text as ended_by
        from outage o
        left join person b on b.id = o.began_by
        where o.room_id = $1 and o.ended_seq is null
        order by o.began_at, o.began_seq
        "#,
        room
    )
    .fetch_all(tx.db())
    .await?;
    rows.into_iter().map(OutageRow::read).collect()
}

/// What is and was off, the latest said first, before the entry of this number.
pub(super) async fn list(tx: &mut RoomTx, before: Option<i64>, most: i64) -> Result<Vec<Outage>> {
    let room = tx.room();
    let rows = sqlx::query_as!(
        OutageRow,
        r#"
        select
            o.id, o.what, o.space_id, o.began_at, b.name as "began_by?", o.began_seq,
            o.ended_at, e.name as "ended_by?"
        from outage o
        left join person b on b.id = o.began_by
        left join person e on e.id = o.ended_by
        where o.room_id = $1 and ($2::bigint is null or o.began_seq < $2)
        order by o.began_seq desc
        limit $3
        "#,
        room,
        before,
        most
    )
    .fetch_all(tx.db())
    .await?;
    rows.into_iter().map(OutageRow::read).collect()
}

pub(super) async fn outage(tx: &mut RoomTx, id: Uuid) -> Result<Option<Outage>> {
    let room = tx.room();
    let row = sqlx::query_as!(
        OutageRow,
        r#"
        select
            o.id, o.what, o.space_id, o.began_at, b.name as "began_by?", o.began_seq,
            o.ended_at, e.name as "ended_by?"
        from outage o
        left join person b on b.id = o.began_by
        left join person e on e.id = o.ended_by
        where o.room_id = $1 and o.id = $2
        "#,
        room,
        id
    )
    .fetch_optional(tx.db())
    .await?;
    row.map(OutageRow::read).transpose()
}

pub(super) async fn begin(tx: &mut RoomTx, placed: &Placed<OutageBegan>) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        r#"
        insert into outage (
            room_id, id, what, space_id, began_at, began_by, began_seq, ended_at, ended_by,
            ended_seq
        )
        values ($1, $2, $3, $4, $5, $6, $7, null, null, null)
        "#,
        room,
        placed.entry.outage_id,
        placed.entry.what.as_str(),
        placed.entry.space_id,
        placed.happened_at,
        placed.actor,
        placed.seq
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

pub(super) async fn end(tx: &mut RoomTx, placed: &Placed<OutageEnded>) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        r#"
        update outage
        set ended_at = $3, ended_by = $4, ended_seq = $5
        where room_id = $1 and id = $2
        "#,
        room,
        placed.entry.outage_id,
        placed.happened_at,
        placed.actor,
        placed.seq
    )
    .execute(tx.db())
    .await?;
    Ok(())
}
