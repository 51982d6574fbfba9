//! The handovers' SQL.

use time::OffsetDateTime;
use uuid::Uuid;

use super::{HandedOver, HandoverOpened, HandoverWithdrawn, Part};
use crate::database::RoomTx;
use crate::error::Result;
use crate::logbook::Placed;

/// A handover as it now is.
#[derive(Clone, Debug, Eq, PartialEq)]
pub(super) struct Handover {
    /// Which.
    pub id: Uuid,
    /// Who hands over.
    pub from_person_id: Uuid,
    /// That person's name.
    pub from_name: String,
    /// Who takes over.
    pub to_person_id: Uuid,
    /// That person's name.
    pub to_name: String,
    /// What is open in the room, as it was opened with.
    pub parts: Vec<Part>,
    /// When it was opened.
    pub opened_at: OffsetDateTime,
    /// The number of the entry that opened it.
    pub opened_seq: i64,
    /// When it was confirmed.
    pub confirmed_at: Option<OffsetDateTime>,
    /// The number of the entry that confirmed it.
    pub confirmed_seq: Option<i64>,
    /// When it was taken back.
    pub withdrawn_at: Option<OffsetDateTime>,
}

impl Handover {
    /// Whether it waits to be confirmed.
    #[must_use]
    pub(super) fn is_open(&self) -> bool {
        self.confirmed_at.is_none() && self.withdrawn_at.is_none()
    }
}

struct HandoverRow {
    id: Uuid,
    from_person_id: Uuid,
    from_name: String,
    to_person_id: Uuid,
    to_name: String,
    sheet: String,
    opened_at: OffsetDateTime,
    opened_seq: i64,
    confirmed_at: Option<OffsetDateTime>,
    confirmed_seq: Option<i64>,
    withdrawn_at: Option<OffsetDateTime>,
}

impl HandoverRow {
    fn read(self) -> Result<Handover> {
        Ok(Handover {
            parts: serde_json::from_str(&self.sheet)?,
            id: self.id,
            from_person_id: self.from_person_id,
            from_name: self.from_name,
            to_person_id: self.to_person_id,
            to_name: self.to_name,
            opened_at: self.opened_at,
            opened_seq: self.opened_seq,
            confirmed_at: self.confirmed_at,
            confirmed_seq: self.confirmed_seq,
            withdrawn_at: self.withdrawn_at,
        })
    }
}

/// The handovers, the latest first, before the entry of this number.
pub(super) async fn list(tx: &mut RoomTx, before: Option<i64>, most: i64) -> Result<Vec<Handover>> {
    let room = tx.room();
    let rows = sqlx::query_as!(
        HandoverRow,
        r#"
        select
            h.id, h.from_person_id, f.name as from_name, h.to_person_id, t.name as to_name,
            h.sheet, h.opened_at, h.opened_seq, h.confirmed_at, h.confirmed_seq, h.withdrawn_at
        from handover h
        join person f on f.id = h.from_person_id
        join person t on t.id = h.to_person_id
        where h.room_id = $1 and ($2::bigint is null or h.opened_seq < $2)
        order by h.opened_seq desc
        limit $3
        "#,
        room,
        before,
        most
    )
    .fetch_all(tx.db())
    .await?;
    rows.into_iter().map(HandoverRow::read).collect()
}

pub(super) async fn handover(tx: &mut RoomTx, id: Uuid) -> Result<Option<Handover>> {
    let room = tx.room();
    let row = sqlx::query_as!(
        HandoverRow,
        r#"
        select
            h.id, h.from_person_id, f.name as from_name, h.to_person_id, t.name as to_name,
            h.sheet, h.opened_at, h.opened_seq, h.confirmed_at, h.confirmed_seq, h.withdrawn_at
        from handover h
        join person f on f.id = h.from_person_id
        join person t on t.id = h.to_person_id
        where h.room_id = $1 and h.id = $2
        "#,
        room,
        id
    )
    .fetch_optional(tx.db())
    .await?;
    row.map(HandoverRow::read).transpose()
}

/// Whether this person's handover waits to be confirmed.
pub(super) async fn waits(tx: &mut RoomTx, from: Uuid) -> Result<bool> {
    let room = tx.room();
    let waits = sqlx::query_scalar!(
        r#"
        select exists (
            select from handover
            where room_id = $1
                and from_person_id = $2
                and confirmed_seq is null
                and withdrawn_seq is null
        ) as "waits!"
        "#,
        room,
        from
    )
    .fetch_one(tx.db())
    .await?;
    Ok(waits)
}

pub(super) async fn open(tx: &mut RoomTx, placed: &Placed<HandoverOpened>) -> Result<()> {
    let room = tx.room();
    let entry = &placed.entry;
    sqlx::query!(
        r#"
        insert into handover (
            room_id, id, from_person_id, to_person_id, sheet, opened_at, opened_seq,
            confirmed_at, confirmed_seq, withdrawn_at, withdrawn_seq
        )
        values ($1, $2, $3, $4, $5, $6, $7, null, null, null, null)
        "#,
        room,
        entry.handover_id,
        entry.from_person_id,
        entry.to_person_id,
        serde_json::to_string(&entry.parts)?,
        placed.recorded_at,
        placed.seq
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

pub(super) async fn confirm(tx: &mut RoomTx, placed: &Placed<HandedOver>) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        r#"
        update handover
        set confirmed_at = $3, confirmed_seq = $4
        where room_id = $1 and id = $2
        "#,
        room,
        placed.entry.handover_id,
        placed.recorded_at,
        placed.seq
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

pub(super) async fn withdraw(tx: &mut RoomTx, placed: &Placed<HandoverWithdrawn>) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        r#"
        update handover
        set withdrawn_at = $3, withdrawn_seq = $4
        where room_id = $1 and id = $2
        "#,
        room,
        placed.entry.handover_id,
        placed.recorded_at,
        placed.seq
    )
    .execute(tx.db())
    .await?;
    Ok(())
}
