//! The SQL of scans.

use time::OffsetDateTime;
use uuid::Uuid;

use super::{InductionScanRemoved, InductionScanned, Media};
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::logbook::Placed;

/// A scan of a record's paper.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct Scan {
    /// The number of its entry, beside which the file lies.
    pub seq: i64,
    /// Which.
    pub id: Uuid,
    /// The record it belongs to.
    pub induction_id: Uuid,
    /// Whose record that is.
    pub person_id: Uuid,
    /// What it is.
    pub media: Media,
    /// How large.
    pub bytes: i64,
    /// When it was added.
    pub scanned_at: OffsetDateTime,
    /// Whether it was erased.
    pub is_removed: bool,
}

struct ScanRow {
    seq: i64,
    id: Uuid,
    induction_id: Uuid,
    person_id: Uuid,
    media: String,
    bytes: i64,
    scanned_at: OffsetDateTime,
    removed_seq: Option<i64>,
}

impl ScanRow {
    fn read(self) -> Result<Scan> {
        let unknown = || Error::fault(format!("no scan is {}", self.media));
        Ok(Scan {
            seq: self.seq,
            id: self.id,
            induction_id: self.induction_id,
            person_id: self.person_id,
            media: Media::parse(&self.media).ok_or_else(unknown)?,
            bytes: self.bytes,
            scanned_at: self.scanned_at,
            is_removed: self.removed_seq.is_some(),
        })
    }
}

/// Scans: this one, or those of a record in the order they were added.
async fn scans(tx: &mut RoomTx, asked: (Option<Uuid>, Option<Uuid>)) -> Result<Vec<Scan>> {
    let room = tx.room();
    let rows = sqlx::query_as!(
        ScanRow,
        r#"
        select
            s.seq, s.id, s.induction_id, i.person_id, s.media, s.bytes, s.scanned_at,
            s.removed_seq
        from induction_scan s
        join induction i on i.room_id = s.room_id and i.id = s.induction_id
        where s.room_id = $1
            and ($2::uuid is null or s.id = $2)
            and ($3::uuid is null or s.induction_id = $3)
        order by s.seq
        limit 100
        "#,
        room,
        asked.0,
        asked.1
    )
    .fetch_all(tx.db())
    .await?;
    rows.into_iter().map(ScanRow::read).collect()
}

pub(super) async fn scan(tx: &mut RoomTx, id: Uuid) -> Result<Option<Scan>> {
    Ok(scans(tx, (Some(id), None)).await?.pop())
}

pub(in crate::inductions) async fn of_record(tx: &mut RoomTx, record: Uuid) -> Result<Vec<Scan>> {
    scans(tx, (None, Some(record))).await
}

/// Which of these records have a scan that was not erased.
pub(super) async fn scanned(tx: &mut RoomTx, records: &[Uuid]) -> Result<Vec<Uuid>> {
    let room = tx.room();
    let found = sqlx::query_scalar!(
        r#"
        select distinct induction_id
        from induction_scan
        where room_id = $1 and induction_id = any($2) and removed_seq is null
        "#,
        room,
        records
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found)
}

pub(super) async fn insert(tx: &mut RoomTx, placed: &Placed<InductionScanned>) -> Result<()> {
    let (room, scan) = (tx.room(), &placed.entry);
    sqlx::query!(
        r#"
        insert into induction_scan (
            room_id, id, seq, induction_id, media, bytes, scanned_at, removed_seq
        )
        values ($1, $2, $3, $4, $5, $6, $7, null)
        "#,
        room,
        scan.scan_id,
        placed.seq,
        scan.induction_id,
        scan.media.as_str(),
        scan.bytes,
        placed.recorded_at
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

pub(super) async fn remove(tx: &mut RoomTx, placed: &Placed<InductionScanRemoved>) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        "update induction_scan set removed_seq = $3 where room_id = $1 and id = $2",
        room,
        placed.entry.scan_id,
        placed.seq
    )
    .execute(tx.db())
    .await?;
    Ok(())
}
