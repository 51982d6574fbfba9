//! The SQL of finishing times and of the wash.

use time::OffsetDateTime;
use uuid::Uuid;

use super::{FinishingSet, WashEmptied, WashJoined};
use crate::database::RoomTx;
use crate::error::Result;
use crate::logbook::Placed;

/// The times of one paper class in one line.
pub type Finishing = FinishingSet;

/// What lies in a line's wash.
#[derive(Clone, Debug)]
pub struct Wash {
    /// The line.
    pub line_id: Uuid,
    /// When the first print joined since it was last empty.
    pub first_joined_at: OffsetDateTime,
    /// When the last one joined.
    pub last_joined_at: OffsetDateTime,
    /// The class whose time counts: the longest.
    pub paper_class_id: Uuid,
    /// How long all wash from the last one on, in seconds.
    pub wash_s: i64,
}

/// The times of a line, by the order of paper classes in use.
///
/// # Errors
/// The database's.
pub async fn finishings(tx: &mut RoomTx, line: Uuid) -> Result<Vec<Finishing>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        Finishing,
        r#"
        select
            f.line_id, f.paper_class_id, f.fix_s, f.longest_fix_s, f.rinse_s, f.wash_aid_s,
            f.wash_with_aid_s, f.wash_without_aid_s, f.basis
        from finishing f
        join paper_class p on p.room_id = f.room_id and p.id = f.paper_class_id
        where f.room_id = $1 and f.line_id = $2 and p.retired_at is null
        order by p.position, p.id
        "#,
        room,
        line
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found)
}

/// What lies in the wash of a line, or lay there last; nothing where all prints
/// were taken out of it.
///
/// # Errors
/// The database's.
pub async fn wash(tx: &mut RoomTx, line: Uuid) -> Result<Option<Wash>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        Wash,
        r#"
        select line_id, first_joined_at, last_joined_at, paper_class_id, wash_s
        from wash
        where room_id = $1 and line_id = $2
        "#,
        room,
        line
    )
    .fetch_optional(tx.db())
    .await?;
    Ok(found)
}

pub(super) async fn set_finishing(tx: &mut RoomTx, placed: &Placed<FinishingSet>) -> Result<()> {
    let room = tx.room();
    let times = &placed.entry;
    sqlx::query!(
        r#"
        insert into finishing (
            room_id, line_id, paper_class_id, fix_s, longest_fix_s, rinse_s, wash_aid_s,
            wash_with_aid_s, wash_without_aid_s, basis
        )
        values ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10)
        on conflict (room_id, line_id, paper_class_id) do update set
            fix_s = excluded.fix_s,
            longest_fix_s = excluded.longest_fix_s,
            rinse_s = excluded.rinse_s,
            wash_aid_s = excluded.wash_aid_s,
            wash_with_aid_s = excluded.wash_with_aid_s,
            wash_without_aid_s = excluded.wash_without_aid_s,
            basis = excluded.basis
        "#,
        room,
        times.line_id,
        times.paper_class_id,
        times.fix_s,
        times.longest_fix_s,
        times.rinse_s,
        times.wash_aid_s,
        times.wash_with_aid_s,
        times.wash_without_aid_s,
        times.basis
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

/// A wash whose time was over when the print joined was empty, and begins anew.
pub(super) async fn join_wash(tx: &mut RoomTx, placed: &Placed<WashJoined>) -> Result<()> {
    let room = tx.room();
    let joined = &placed.entry;
    sqlx::query!(
        r#"
        insert into wash as there (
            room_id, line_id, first_joined_at, last_joined_at, paper_class_id, wash_s, last_seq
        )
        values ($1, $2, $3, $3, $4, $5, $6)
        on conflict (room_id, line_id) do update set
            first_joined_at = case
                when there.last_joined_at + make_interval(secs => there.wash_s)
                    <= excluded.last_joined_at then excluded.first_joined_at
                else there.first_joined_at
            end,
            last_joined_at = excluded.last_joined_at,
            paper_class_id = case
                when there.last_joined_at + make_interval(secs => there.wash_s)
                    <= excluded.last_joined_at then excluded.paper_class_id
                when there.wash_s > excluded.wash_s then there.paper_class_id
                else excluded.paper_class_id
            end,
            wash_s = case
                when there.last_joined_at + make_interval(secs => there.wash_s)
                    <= excluded.last_joined_at then excluded.wash_s
                else greatest(there.wash_s, excluded.wash_s)
            end,
            last_seq = excluded.last_seq
        "#,
        room,
        joined.line_id,
        placed.happened_at,
        joined.paper_class_id,
        joined.wash_s,
        placed.seq
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

pub(super) async fn empty_wash(tx: &mut RoomTx, placed: &Placed<WashEmptied>) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        r#"
        delete from wash
        where room_id = $1 and line_id = $2
        "#,
        room,
        placed.entry.line_id
    )
    .execute(tx.db())
    .await?;
    Ok(())
}
