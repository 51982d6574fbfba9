//! The SQL of room air.

use time::{Date, OffsetDateTime};
use uuid::Uuid;

use super::{Air, AirSet, ExhaustRule, ExhaustWaiverSet, FlowMeasured, FlowOf, FlowTakenBack};
use crate::darkroom::air::{NeedsExhaust, needs_exhaust};
use crate::darkroom::incompatibility::Groups;
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::logbook::Placed;
use crate::mixes::Storage;
use crate::products::{self, Kind};

/// A measurement as it was kept.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct Measurement {
    /// The number of its entry.
    pub seq: i64,
    /// Which.
    pub id: Uuid,
    /// In which place.
    pub place_id: Uuid,
    /// Of which flow.
    pub of: FlowOf,
    /// How much.
    pub ul_per_s: i64,
    /// On which day, as `2026-11-25`.
    pub measured_on: String,
    /// Who measured, where that was not whoever wrote it down.
    pub measured_by: String,
    /// With what, and where.
    pub how: String,
    /// Who wrote it down.
    pub person_id: Option<Uuid>,
    /// By name.
    pub person: Option<String>,
    /// The entry that took it back.
    pub undone_by: Option<i64>,
}

struct MeasurementRow {
    seq: i64,
    id: Uuid,
    place_id: Uuid,
    what: String,
    ul_per_s: i64,
    measured_on: Date,
    measured_by: String,
    how: String,
    person_id: Option<Uuid>,
    person: Option<String>,
    undone_by: Option<i64>,
}

impl MeasurementRow {
    fn read(self) -> Result<Measurement> {
        let of = FlowOf::parse(&self.what);
        Ok(Measurement {
            seq: self.seq,
            id: self.id,
            place_id: self.place_id,
            of: of.ok_or_else(|| Error::fault(format!("no flow is called {}", self.what)))?,
            ul_per_s: self.ul_per_s,
            measured_on: self.measured_on.to_string(),
            measured_by: self.measured_by,
            how: self.how,
            person_id: self.person_id,
            person: self.person,
            undone_by: self.undone_by,
        })
    }
}

/// A time that a place was aired.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct Airing {
    /// Which time.
    pub id: Uuid,
    /// Which place.
    pub place_id: Uuid,
    /// When it began.
    pub began_at: OffsetDateTime,
    /// Who said so, by name.
    pub began_by: Option<String>,
    /// The number of the entry that said so.
    pub began_seq: i64,
    /// When it was over.
    pub ended_at: Option<OffsetDateTime>,
}

/// Where a bath may start without measured exhaust.
#[derive(Clone, Debug, Eq, PartialEq)]
pub(super) struct Waiver {
    /// Which place.
    pub(super) place_id: Uuid,
    /// Who agreed.
    pub(super) agreed_by: String,
    /// When that was written down.
    pub(super) set_at: OffsetDateTime,
}

/// What stands in a tray, as far as the air matters.
#[derive(Clone, Debug, Eq, PartialEq)]
pub(super) struct Bath {
    /// The space its line stands in.
    pub(super) space_id: Option<Uuid>,
    /// The line's name.
    pub(super) line: String,
    /// The tray's name.
    pub(super) tray: String,
    /// The product's name; nothing for liquid nobody can name.
    pub(super) product: Option<String>,
    /// Whether air gets at it.
    pub(super) is_open: bool,
    /// What it may not start without exhaust as.
    pub(super) needs: Option<NeedsExhaust>,
}

/// What is known of each place, by its id.
pub(super) async fn airs(tx: &mut RoomTx) -> Result<Vec<(Uuid, Air)>> {
    let room = tx.room();
    let rows = sqlx::query!(
        r#"
        select
            place_id, floor_hundredths_mm2, height_tenths_mm, mixing_tenths, rule, own_ul_per_s,
            basis, has_fan
        from place_air
        where room_id = $1
        limit 500
        "#,
        room
    )
    .fetch_all(tx.db())
    .await?;
    let read = |rule: &str| {
        let found = ExhaustRule::parse(rule);
        found.ok_or_else(|| Error::fault(format!("no rule is called {rule}")))
    };
    rows.into_iter()
        .map(|row| {
            let air = Air {
                floor_hundredths_mm2: row.floor_hundredths_mm2,
                height_tenths_mm: row.height_tenths_mm,
                mixing_tenths: row.mixing_tenths,
                rule: read(&row.rule)?,
                own_ul_per_s: row.own_ul_per_s,
                basis: row.basis,
                has_fan: row.has_fan,
            };
            Ok((row.place_id, air))
        })
        .collect()
}

/// The last measurement of each flow in each place, those taken back left out.
pub(super) async fn latest(tx: &mut RoomTx) -> Result<Vec<Measurement>> {
    let room = tx.room();
    let rows = sqlx::query_as!(
        MeasurementRow,
        r#"
        select distinct on (m.place_id, m.what)
            m.seq, m.id, m.place_id, m.what, m.ul_per_s, m.measured_on, m.measured_by, m.how,
            m.person_id, p.name as "person?", m.undone_by
        from flow_measurement m
        left join person p on p.id = m.person_id
        where m.room_id = $1 and m.undone_by is null
        order by m.place_id, m.what, m.measured_on desc, m.seq desc
        "#,
        room
    )
    .fetch_all(tx.db())
    .await?;
    rows.into_iter().map(MeasurementRow::read).collect()
}

/// Which measurements or airings are asked for; each part that is given narrows it.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Asked {
    /// This one.
    pub(super) id: Option<Uuid>,
    /// Of this place.
    pub(super) place: Option<Uuid>,
    /// Written before the entry of this number.
    pub(super) before: Option<i64>,
}

/// Measurements, the latest written first.
pub(super) async fn measurements(
    tx: &mut RoomTx,
    asked: Asked,
    most: i64,
) -> Result<Vec<Measurement>> {
    let room = tx.room();
    let rows = sqlx::query_as!(
        MeasurementRow,
        r#"
        select
            m.seq, m.id, m.place_id, m.what, m.ul_per_s, m.measured_on, m.measured_by, m.how,
            m.person_id, p.name as "person?", m.undone_by
        from flow_measurement m
        left join person p on p.id = m.person_id
        where m.room_id = $1
            and ($2::uuid is null or m.id = $2)
            and ($3::uuid is null or m.place_id = $3)
            and ($4::bigint is null or m.seq < $4)
        order by m.seq desc
        limit $5
        "#,
        room,
        asked.id,
        asked.place,
        asked.before,
        most
    )
    .fetch_all(tx.db())
    .await?;
    rows.into_iter().map(MeasurementRow::read).collect()
}

pub(super) async fn measurement(tx: &mut RoomTx, id: Uuid) -> Result<Option<Measurement>> {
    let asked = Asked {
        id: Some(id),
        ..Asked::default()
    };
    Ok(measurements(tx, asked, 1).await?.pop())
}

/// Times of airing, the latest written first.
pub(super) async fn airings(tx: &mut RoomTx, asked: Asked, most: i64) -> Result<Vec<Airing>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        Airing,
        r#"
        select
            a.id, a.place_id, a.began_at, p.name as "began_by?", a.began_seq, a.ended_at
        from airing a
        left join person p on p.id = a.began_by
        where a.room_id = $1
            and ($2::uuid is null or a.id = $2)
            and ($3::uuid is null or a.place_id = $3)
            and ($4::bigint is null or a.began_seq < $4)
        order by a.began_seq desc
        limit $5
        "#,
        room,
        asked.id,
        asked.place,
        asked.before,
        most
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found)
}

pub(super) async fn airing(tx: &mut RoomTx, id: Uuid) -> Result<Option<Airing>> {
    let asked = Asked {
        id: Some(id),
        ..Asked::default()
    };
    Ok(airings(tx, asked, 1).await?.pop())
}

/// Airings that are not over, and those that were over no longer ago than this.
pub(super) async fn airings_since(tx: &mut RoomTx, since: OffsetDateTime) -> Result<Vec<Airing>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        Airing,
        r#"
        select
            a.id, a.place_id, a.began_at, p.name as "began_by?", a.began_seq, a.ended_at
        from airing a
        left join person p on p.id = a.began_by
        where a.room_id = $1 and (a.ended_seq is null or a.ended_at > $2)
        order by a.began_at, a.began_seq
        limit 500
        "#,
        room,
        since
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found)
}

/// Where baths may start without measured exhaust.
pub(super) async fn waivers(tx: &mut RoomTx) -> Result<Vec<Waiver>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        Waiver,
        r#"
        select place_id, agreed_by as "agreed_by!", set_at
        from exhaust_waiver
        where room_id = $1 and agreed_by is not null
        limit 500
        "#,
        room
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found)
}

/// Everything that stands in trays, line by line.
pub(super) async fn baths(tx: &mut RoomTx) -> Result<Vec<Bath>> {
    let room = tx.room();
    let rows = sqlx::query!(
        r#"
        select
            l.space_id, l.name as line, t.name as tray, m.storage, p.name as "product?",
            p.kind as "kind?", p.groups as "groups?", p.hazard_codes as "hazard_codes?"
        from mix m
        join tray t on t.room_id = m.room_id and t.id = m.tray_id
        join line l on l.room_id = t.room_id and l.id = t.line_id
        left join product p on p.room_id = m.room_id and p.id = m.product_id
        where m.room_id = $1 and m.tray_id is not null
        order by l.position, l.id, t.position, t.id
        "#,
        room
    )
    .fetch_all(tx.db())
    .await?;
    rows.into_iter()
        .map(|row| {
            let groups = products::groups(&row.groups.unwrap_or_default())?;
            let is_toner = row.kind.as_deref() == Some(Kind::Toner.as_str());
            let codes = row.hazard_codes.unwrap_or_default();
            Ok(Bath {
                space_id: row.space_id,
                line: row.line,
                tray: row.tray,
                product: row.product,
                is_open: row.storage == Storage::OpenTray.as_str(),
                needs: needs_exhaust(is_toner, Groups::from(groups), &codes),
            })
        })
        .collect()
}

pub(super) async fn set_air(tx: &mut RoomTx, entry: &AirSet) -> Result<()> {
    let room = tx.room();
    let air = &entry.air;
    sqlx::query!(
        r#"
        insert into place_air (
            room_id, place_id, floor_hundredths_mm2, height_tenths_mm, mixing_tenths, rule,
            own_ul_per_s, basis, has_fan
        )
        values ($1, $2, $3, $4, $5, $6, $7, $8, $9)
        on conflict (room_id, place_id) do update set
            floor_hundredths_mm2 = excluded.floor_hundredths_mm2,
            height_tenths_mm = excluded.height_tenths_mm,
            mixing_tenths = excluded.mixing_tenths,
            rule = excluded.rule,
            own_ul_per_s = excluded.own_ul_per_s,
            basis = excluded.basis,
            has_fan = excluded.has_fan
        "#,
        room,
        entry.space_id.unwrap_or(room),
        air.floor_hundredths_mm2,
        air.height_tenths_mm,
        air.mixing_tenths,
        air.rule.as_str(),
        air.own_ul_per_s,
        air.basis,
        air.has_fan
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

pub(super) async fn insert_measurement(
    tx: &mut RoomTx,
    placed: &Placed<FlowMeasured>,
) -> Result<()> {
    let room = tx.room();
    let measured = &placed.entry;
    sqlx::query!(
        r#"
        insert into flow_measurement (
            room_id, seq, id, place_id, what, ul_per_s, measured_on, measured_by, how, person_id,
            undone_by
        )
        values ($1, $2, $3, $4, $5, $6, $7::text::date, $8, $9, $10, null)
        "#,
        room,
        placed.seq,
        measured.flow_measurement_id,
        measured.space_id.unwrap_or(room),
        measured.of.as_str(),
        measured.ul_per_s,
        measured.measured_on,
        measured.measured_by,
        measured.how,
        placed.actor
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

pub(super) async fn take_back(tx: &mut RoomTx, placed: &Placed<FlowTakenBack>) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        "update flow_measurement set undone_by = $3 where room_id = $1 and seq = $2",
        room,
        placed.entry.flow_measurement_seq,
        placed.seq
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

pub(super) async fn set_waiver(tx: &mut RoomTx, placed: &Placed<ExhaustWaiverSet>) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        r#"
        insert into exhaust_waiver (room_id, place_id, agreed_by, set_at, set_seq)
        values ($1, $2, $3, $4, $5)
        on conflict (room_id, place_id) do update set
            agreed_by = excluded.agreed_by,
            set_at = excluded.set_at,
            set_seq = excluded.set_seq
        "#,
        room,
        placed.entry.space_id.unwrap_or(room),
        placed.entry.agreed_by,
        placed.recorded_at,
        placed.seq
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

/// Keeps that a place is aired; until when, where that is over.
pub(super) async fn insert_airing<E>(
    tx: &mut RoomTx,
    (id, space): (Uuid, Option<Uuid>),
    over: Option<OffsetDateTime>,
    placed: &Placed<E>,
) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        r#"
        insert into airing (
            room_id, id, place_id, began_at, began_by, began_seq, ended_at, ended_by, ended_seq
        )
        values ($1, $2, $3, $4, $5, $6, $7, $8, $9)
        "#,
        room,
        id,
        space.unwrap_or(room),
        placed.happened_at,
        placed.actor,
        placed.seq,
        over,
        over.and(placed.actor),
        over.map(|_| placed.seq)
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

pub(super) async fn end_airing<E>(
    tx: &mut RoomTx,
    (id, at): (Uuid, OffsetDateTime),
    placed: &Placed<E>,
) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        r#"
        update airing
        set ended_at = $3, ended_by = $4, ended_seq = $5
        where room_id = $1 and id = $2
        "#,
        room,
        id,
        at,
        placed.actor,
        placed.seq
    )
    .execute(tx.db())
    .await?;
    Ok(())
}
