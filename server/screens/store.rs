//! The screens' SQL.

use time::OffsetDateTime;
use uuid::Uuid;

use super::ScreenPaired;
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::identity::devices::DeviceKind;
use crate::logbook::Placed;

/// A screen that is paired, or was.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct Screen {
    /// Which.
    pub id: Uuid,
    /// What it is for.
    pub kind: DeviceKind,
    /// What people call it.
    pub name: String,
    /// The display it was paired with.
    pub display: String,
    /// When it was paired.
    pub paired_at: OffsetDateTime,
    /// By whom.
    pub paired_by: Option<String>,
    /// When its pairing ended, if it did.
    pub ended_at: Option<OffsetDateTime>,
    /// When it was last seen, to the minute, while it is paired.
    pub last_seen_at: Option<OffsetDateTime>,
}

struct ScreenRow {
    id: Uuid,
    kind: String,
    name: String,
    display: String,
    paired_at: OffsetDateTime,
    paired_by: Option<String>,
    ended_at: Option<OffsetDateTime>,
    last_seen_at: Option<OffsetDateTime>,
}

impl ScreenRow {
    fn read(self) -> Result<Screen> {
        let kind = DeviceKind::parse(&self.kind);
        let unknown = || Error::fault(format!("no such kind of screen: {}", self.kind));
        Ok(Screen {
            id: self.id,
            kind: kind.ok_or_else(unknown)?,
            name: self.name,
            display: self.display,
            paired_at: self.paired_at,
            paired_by: self.paired_by,
            ended_at: self.ended_at,
            last_seen_at: self.last_seen_at,
        })
    }
}

/// The screens that are paired now, by name.
///
/// # Errors
/// The database's.
pub async fn paired(tx: &mut RoomTx) -> Result<Vec<Screen>> {
    let room = tx.room();
    let rows = sqlx::query_as!(
        ScreenRow,
        r#"
        select
            s.id, s.kind, s.name, s.display, s.paired_at, p.name as "paired_by?", s.ended_at,
            g.last_seen_at as "last_seen_at?"
        from screen s
        left join person p on p.id = s.paired_by
        left join pairing g on g.room_id = s.room_id and g.screen_id = s.id
        where s.room_id = $1 and s.ended_seq is null
        order by lower(s.name), s.id
        limit 200
        "#,
        room
    )
    .fetch_all(tx.db())
    .await?;
    rows.into_iter().map(ScreenRow::read).collect()
}

pub(super) async fn screen(tx: &mut RoomTx, id: Uuid) -> Result<Option<Screen>> {
    let room = tx.room();
    let row = sqlx::query_as!(
        ScreenRow,
        r#"
        select
            s.id, s.kind, s.name, s.display, s.paired_at, p.name as "paired_by?", s.ended_at,
            g.last_seen_at as "last_seen_at?"
        from screen s
        left join person p on p.id = s.paired_by
        left join pairing g on g.room_id = s.room_id and g.screen_id = s.id
        where s.room_id = $1 and s.id = $2
        "#,
        room,
        id
    )
    .fetch_optional(tx.db())
    .await?;
    row.map(ScreenRow::read).transpose()
}

/// A member's number in the room.
pub async fn member_number(tx: &mut RoomTx, person: Uuid) -> Result<Option<i32>> {
    let room = tx.room();
    let number = sqlx::query_scalar!(
        "select member_number from membership where room_id = $1 and person_id = $2",
        room,
        person
    )
    .fetch_optional(tx.db())
    .await?;
    Ok(number)
}

pub(super) async fn pair(tx: &mut RoomTx, placed: &Placed<ScreenPaired>) -> Result<()> {
    let room = tx.room();
    let entry = &placed.entry;
    sqlx::query!(
        r#"
        insert into screen (
            room_id, id, kind, name, display, paired_at, paired_by, paired_seq, ended_at, ended_seq
        )
        values ($1, $2, $3, $4, $5, $6, $7, $8, null, null)
        "#,
        room,
        entry.screen_id,
        entry.kind,
        entry.name,
        entry.display,
        placed.recorded_at,
        placed.actor,
        placed.seq
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

pub(super) async fn rename(tx: &mut RoomTx, id: Uuid, name: &str) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        "update screen set name = $3 where room_id = $1 and id = $2",
        room,
        id,
        name
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

pub(super) async fn end(tx: &mut RoomTx, id: Uuid, (at, seq): (OffsetDateTime, i64)) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        "update screen set ended_at = $3, ended_seq = $4 where room_id = $1 and id = $2",
        room,
        id,
        at,
        seq
    )
    .execute(tx.db())
    .await?;
    Ok(())
}
