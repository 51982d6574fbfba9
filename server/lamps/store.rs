//! The SQL of lamps and their fog tests.

use time::{Date, OffsetDateTime};
use uuid::Uuid;

use super::{FogTestTakenBack, FogTested, Hanging, LampKind, LampSet};
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::logbook::Placed;

/// A lamp or a screen of the room.
pub type Lamp = LampSet;

/// A fog test as it was kept.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct FogTest {
    /// The number of its entry.
    pub seq: i64,
    /// Which.
    pub id: Uuid,
    /// Of which lamp.
    pub lamp_id: Uuid,
    /// With which paper.
    pub paper_class_id: Uuid,
    /// That paper's name now.
    pub paper_class: String,
    /// Who tested.
    pub person_id: Option<Uuid>,
    /// By name.
    pub person: Option<String>,
    /// How the lamp hung then.
    pub hangs: Hanging,
    /// The longest step that showed nothing.
    pub clean_s: Option<i64>,
    /// The shortest step that showed fog.
    pub fogged_s: Option<i64>,
    /// How long paper may lie there.
    pub safe_s: Option<i64>,
    /// The last day on which it holds, as `2027-11-03`.
    pub again_by: String,
    /// When.
    pub happened_at: OffsetDateTime,
    /// The entry that took it back.
    pub undone_by: Option<i64>,
}

struct LampRow {
    id: Uuid,
    name: String,
    kind: String,
    light: String,
    distance_tenths_mm: i32,
    space_id: Option<Uuid>,
    test_months: i32,
    is_retired: bool,
}

impl LampRow {
    fn read(self) -> Result<Lamp> {
        Ok(Lamp {
            id: self.id,
            name: self.name,
            hangs: Hanging {
                kind: kind(&self.kind)?,
                light: self.light,
                distance_tenths_mm: self.distance_tenths_mm,
                space_id: self.space_id,
            },
            test_months: self.test_months,
            is_retired: self.is_retired,
        })
    }
}

fn kind(text: &str) -> Result<LampKind> {
    LampKind::parse(text).ok_or_else(|| Error::fault(format!("no kind of lamp is called {text}")))
}

struct TestRow {
    seq: i64,
    id: Uuid,
    lamp_id: Uuid,
    paper_class_id: Uuid,
    paper_class: String,
    person_id: Option<Uuid>,
    person: Option<String>,
    kind: String,
    light: String,
    distance_tenths_mm: i32,
    space_id: Option<Uuid>,
    clean_s: Option<i64>,
    fogged_s: Option<i64>,
    safe_s: Option<i64>,
    again_by: Date,
    happened_at: OffsetDateTime,
    undone_by: Option<i64>,
}

impl TestRow {
    fn read(self) -> Result<FogTest> {
        Ok(FogTest {
            seq: self.seq,
            id: self.id,
            lamp_id: self.lamp_id,
            paper_class_id: self.paper_class_id,
            paper_class: self.paper_class,
            person_id: self.person_id,
            person: self.person,
            hangs: Hanging {
                kind: kind(&self.kind)?,
                light: self.light,
                distance_tenths_mm: self.distance_tenths_mm,
                space_id: self.space_id,
            },
            clean_s: self.clean_s,
            fogged_s: self.fogged_s,
            safe_s: self.safe_s,
            again_by: self.again_by.to_string(),
            happened_at: self.happened_at,
            undone_by: self.undone_by,
        })
    }
}

/// Every lamp by its name, retired ones last.
///
/// # Errors
/// The database's.
pub async fn lamps(tx: &mut RoomTx) -> Result<Vec<Lamp>> {
    let room = tx.room();
    let rows = sqlx::query_as!(
        LampRow,
        r#"
        select
            id, name, kind, light, distance_tenths_mm, space_id, test_months,
            retired_at is not null as "is_retired!"
        from lamp
        where room_id = $1
        order by retired_at is not null, name, id
        limit 500
        "#,
        room
    )
    .fetch_all(tx.db())
    .await?;
    rows.into_iter().map(LampRow::read).collect()
}

/// One lamp.
///
/// # Errors
/// The database's.
pub async fn lamp(tx: &mut RoomTx, id: Uuid) -> Result<Option<Lamp>> {
    let all = lamps(tx).await?;
    Ok(all.into_iter().find(|lamp| lamp.id == id))
}

/// The last test of each lamp with each paper, those taken back left out.
pub(super) async fn latest(tx: &mut RoomTx) -> Result<Vec<FogTest>> {
    let room = tx.room();
    let rows = sqlx::query_as!(
        TestRow,
        r#"
        select distinct on (t.lamp_id, t.paper_class_id)
            t.seq, t.id, t.lamp_id, t.paper_class_id, c.name as paper_class, t.person_id,
            p.name as "person?", t.kind, t.light, t.distance_tenths_mm, t.space_id, t.clean_s,
            t.fogged_s, t.safe_s, t.again_by, t.happened_at, t.undone_by
        from fog_test t
        join paper_class c on c.room_id = t.room_id and c.id = t.paper_class_id
        left join person p on p.id = t.person_id
        where t.room_id = $1 and t.undone_by is null
        order by t.lamp_id, t.paper_class_id, t.happened_at desc, t.seq desc
        "#,
        room
    )
    .fetch_all(tx.db())
    .await?;
    rows.into_iter().map(TestRow::read).collect()
}

/// Which tests are asked for; each part that is given narrows it.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Asked {
    /// This one.
    pub(super) id: Option<Uuid>,
    /// Of this lamp.
    pub(super) lamp: Option<Uuid>,
    /// Written before the entry of this number.
    pub(super) before: Option<i64>,
}

/// Tests, the latest written first.
pub(super) async fn tests(tx: &mut RoomTx, asked: Asked, most: i64) -> Result<Vec<FogTest>> {
    let room = tx.room();
    let rows = sqlx::query_as!(
        TestRow,
        r#"
        select
            t.seq, t.id, t.lamp_id, t.paper_class_id, c.name as paper_class, t.person_id,
            p.name as "person?", t.kind, t.light, t.distance_tenths_mm, t.space_id, t.clean_s,
            t.fogged_s, t.safe_s, t.again_by, t.happened_at, t.undone_by
        from fog_test t
        join paper_class c on c.room_id = t.room_id and c.id = t.paper_class_id
        left join person p on p.id = t.person_id
        where t.room_id = $1
            and ($2::uuid is null or t.id = $2)
            and ($3::uuid is null or t.lamp_id = $3)
            and ($4::bigint is null or t.seq < $4)
        order by t.seq desc
        limit $5
        "#,
        room,
        asked.id,
        asked.lamp,
        asked.before,
        most
    )
    .fetch_all(tx.db())
    .await?;
    rows.into_iter().map(TestRow::read).collect()
}

pub(super) async fn test(tx: &mut RoomTx, id: Uuid) -> Result<Option<FogTest>> {
    let asked = Asked {
        id: Some(id),
        ..Asked::default()
    };
    Ok(tests(tx, asked, 1).await?.pop())
}

pub(super) async fn set_lamp(tx: &mut RoomTx, placed: &Placed<LampSet>) -> Result<()> {
    let room = tx.room();
    let lamp = &placed.entry;
    sqlx::query!(
        r#"
        insert into lamp (
            room_id, id, name, kind, light, distance_tenths_mm, space_id, test_months, retired_at
        )
        values ($1, $2, $3, $4, $5, $6, $7, $8, $9)
        on conflict (room_id, id) do update set
            name = excluded.name,
            kind = excluded.kind,
            light = excluded.light,
            distance_tenths_mm = excluded.distance_tenths_mm,
            space_id = excluded.space_id,
            test_months = excluded.test_months,
            retired_at = excluded.retired_at
        "#,
        room,
        lamp.id,
        lamp.name,
        lamp.hangs.kind.as_str(),
        lamp.hangs.light,
        lamp.hangs.distance_tenths_mm,
        lamp.hangs.space_id,
        lamp.test_months,
        lamp.is_retired.then_some(placed.recorded_at)
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

pub(super) async fn insert_test(tx: &mut RoomTx, placed: &Placed<FogTested>) -> Result<()> {
    let room = tx.room();
    let test = &placed.entry;
    sqlx::query!(
        r#"
        insert into fog_test (
            room_id, seq, id, lamp_id, paper_class_id, person_id, kind, light,
            distance_tenths_mm, space_id, clean_s, fogged_s, safe_s, again_by, happened_at,
            undone_by
        )
        values (
            $1, $2, $3, $4, $5, $6, $7, $8, $9, $10, $11, $12, $13, $14::text::date, $15, null
        )
        "#,
        room,
        placed.seq,
        test.fog_test_id,
        test.lamp_id,
        test.paper_class_id,
        placed.actor,
        test.hangs.kind.as_str(),
        test.hangs.light,
        test.hangs.distance_tenths_mm,
        test.hangs.space_id,
        test.clean_s,
        test.fogged_s,
        test.safe_s,
        test.again_by,
        placed.happened_at
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

pub(super) async fn take_back(tx: &mut RoomTx, placed: &Placed<FogTestTakenBack>) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        "update fog_test set undone_by = $3 where room_id = $1 and seq = $2",
        room,
        placed.entry.fog_test_seq,
        placed.seq
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

/// Keeps that stewards are told of a lamp whose test is overdue since a day; whether
/// they were not told before.
pub(super) async fn first_told(
    tx: &mut RoomTx,
    lamp: Uuid,
    again_by: &str,
    now: OffsetDateTime,
) -> Result<bool> {
    let room = tx.room();
    let done = sqlx::query!(
        r#"
        insert into fog_test_told (room_id, lamp_id, again_by, told_at)
        values ($1, $2, $3::text::date, $4)
        on conflict do nothing
        "#,
        room,
        lamp,
        again_by,
        now
    )
    .execute(tx.db())
    .await?;
    Ok(done.rows_affected() == 1)
}
