//! The mixes' SQL.

use time::OffsetDateTime;
use uuid::Uuid;

use super::{Discarded, Figures, FrozenCapacity, Mix, Shifted, Stand, Storage};
use crate::darkroom::state::Origin;
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::logbook::Entry;
use crate::products::Place;

/// One mix.
///
/// # Errors
/// The database's.
pub async fn mix(tx: &mut RoomTx, id: Uuid) -> Result<Option<Mix>> {
    Ok(mixes(tx, &[id]).await?.pop())
}

/// Every mix that stands in a tray or a bottle now, oldest first.
///
/// # Errors
/// The database's.
pub async fn standing(tx: &mut RoomTx) -> Result<Vec<Mix>> {
    let room = tx.room();
    let ids = sqlx::query_scalar!(
        r#"
        select id as "id!"
        from mix
        where room_id = $1 and tray_id is not null
        union all
        select id
        from mix
        where room_id = $1 and bottle_id is not null
        "#,
        room
    )
    .fetch_all(tx.db())
    .await?;
    mixes(tx, &ids).await
}

/// What stands in a tray or a bottle now.
///
/// # Errors
/// The database's.
pub async fn in_vessel(tx: &mut RoomTx, vessel: Uuid) -> Result<Option<Mix>> {
    let room = tx.room();
    let id = sqlx::query_scalar!(
        "select id from mix where room_id = $1 and (tray_id = $2 or bottle_id = $2)",
        room,
        vessel
    )
    .fetch_optional(tx.db())
    .await?;
    match id {
        Some(id) => mix(tx, id).await,
        None => Ok(None),
    }
}

/// These mixes, oldest first.
///
/// # Errors
/// The database's.
pub async fn mixes(tx: &mut RoomTx, ids: &[Uuid]) -> Result<Vec<Mix>> {
    let room = tx.room();
    let rows = sqlx::query_as!(
        Row,
        r#"
        select
            m.id, m.product_id, p.name as "product_name?", p.groups as "groups?",
            p.hazard_codes as "hazard_codes?", m.product_version, m.parts_thousandths, m.charged_ul,
            m.concentrate_ul, m.spent_nl, m.age_ppb, m.age_at, m.life_s, m.unknown_sheets_at,
            m.origin, m.storage, m.figures, m.oldest_at, m.silver_least_ug, m.silver_usual_ug,
            m.silver_most_ug, m.bromide_ug, m.alkali_neq, m.carried_out_ul, m.received_ul, m.shifts,
            m.poured_into, m.mixed_at, m.mixed_by, m.mixed_seq, m.tray_id, m.bottle_id,
            m.discarded_at, m.discarded_into, m.last_seq, m.stock_id,
            t.line_id as "line_id?",
            s.place as "place?",
            s.from_at as "stands_since?",
            exists (
                select from mix_capacity c where c.room_id = m.room_id and c.mix_id = m.id
            ) as "has_capacity!"
        from mix m
        left join product p on p.room_id = m.room_id and p.id = m.product_id
        left join tray t on t.room_id = m.room_id and t.id = m.tray_id
        left join lateral (
            select y.place, y.from_at
            from stay y
            where y.room_id = m.room_id and y.mix_id = m.id
            order by y.from_at desc
            limit 1
        ) s on true
        where m.room_id = $1 and m.id = any($2)
        order by m.mixed_seq
        "#,
        room,
        ids
    )
    .fetch_all(tx.db())
    .await?;
    rows.into_iter().map(Row::read).collect()
}

/// A mix as the database keeps it.
struct Row {
    id: Uuid,
    product_id: Option<Uuid>,
    product_name: Option<String>,
    groups: Option<Vec<String>>,
    hazard_codes: Option<Vec<String>>,
    product_version: i32,
    parts_thousandths: i64,
    charged_ul: i64,
    concentrate_ul: i64,
    spent_nl: i64,
    age_ppb: i64,
    age_at: OffsetDateTime,
    life_s: i64,
    unknown_sheets_at: Option<OffsetDateTime>,
    origin: String,
    storage: String,
    figures: String,
    oldest_at: OffsetDateTime,
    silver_least_ug: i64,
    silver_usual_ug: i64,
    silver_most_ug: i64,
    bromide_ug: i64,
    alkali_neq: i64,
    carried_out_ul: i64,
    received_ul: i64,
    shifts: i32,
    poured_into: Option<Uuid>,
    mixed_at: OffsetDateTime,
    mixed_by: Option<Uuid>,
    mixed_seq: i64,
    tray_id: Option<Uuid>,
    bottle_id: Option<Uuid>,
    discarded_at: Option<OffsetDateTime>,
    discarded_into: Option<String>,
    last_seq: i64,
    stock_id: Option<Uuid>,
    line_id: Option<Uuid>,
    place: Option<String>,
    stands_since: Option<OffsetDateTime>,
    has_capacity: bool,
}

impl Row {
    fn read(self) -> Result<Mix> {
        Ok(Mix {
            origin: origin(&self.origin)?,
            storage: Storage::parse(&self.storage).ok_or_else(|| unknown(&self.storage))?,
            figures: figures(&self.figures)?,
            silver_ug: [
                self.silver_least_ug,
                self.silver_usual_ug,
                self.silver_most_ug,
            ],
            stand: Stand {
                tray_id: self.tray_id,
                line_id: self.line_id,
                bottle_id: self.bottle_id,
                place: place(self.place.as_deref())?,
            },
            id: self.id,
            product_id: self.product_id,
            product_name: self.product_name,
            groups: self.groups.unwrap_or_default(),
            hazard_codes: self.hazard_codes.unwrap_or_default(),
            product_version: self.product_version,
            parts_thousandths: self.parts_thousandths,
            charged_ul: self.charged_ul,
            concentrate_ul: self.concentrate_ul,
            spent_nl: self.spent_nl,
            age_ppb: self.age_ppb,
            age_at: self.age_at,
            life_s: self.life_s,
            unknown_sheets_at: self.unknown_sheets_at,
            oldest_at: self.oldest_at,
            bromide_ug: self.bromide_ug,
            alkali_neq: self.alkali_neq,
            carried_out_ul: self.carried_out_ul,
            received_ul: self.received_ul,
            shifts: self.shifts,
            poured_into: self.poured_into,
            mixed_at: self.mixed_at,
            mixed_by: self.mixed_by,
            mixed_seq: self.mixed_seq,
            stands_since: self.stands_since,
            discarded_at: self.discarded_at,
            discarded_into: self.discarded_into,
            last_seq: self.last_seq,
            stock_id: self.stock_id,
            has_capacity: self.has_capacity,
        })
    }
}

/// An origin as the database writes it.
pub(super) const fn origin_text(origin: Origin) -> &'static str {
    match origin {
        Origin::Mixed => "mixed",
        Origin::Guessed => "guessed",
        Origin::Unknown => "unknown",
    }
}

fn origin(text: &str) -> Result<Origin> {
    [Origin::Mixed, Origin::Guessed, Origin::Unknown]
        .into_iter()
        .find(|each| origin_text(*each) == text)
        .ok_or_else(|| unknown(text))
}

fn figures(text: &str) -> Result<Option<Figures>> {
    match text.is_empty() {
        true => Ok(None),
        false => Ok(Some(serde_json::from_str(text)?)),
    }
}

fn place(text: Option<&str>) -> Result<Place> {
    text.map_or(Ok(Place::Single), |text| {
        Place::parse(text).ok_or_else(|| unknown(text))
    })
}

fn unknown(text: &str) -> Error {
    Error::fault(format!("not a word of this column: {text}"))
}

/// What each paper class may use of a mix in the place where it stands: class,
/// and sheets a litre in thousandths.
///
/// # Errors
/// The database's.
pub async fn capacities(tx: &mut RoomTx, mix: &Mix) -> Result<Vec<(Uuid, i64)>> {
    let place = mix.stand.place;
    let all = all_capacities(tx, mix.id).await?;
    Ok(all
        .into_iter()
        .filter(|each| each.place == place)
        .map(|each| (each.paper_class_id, each.sheets_per_litre_thousandths))
        .collect())
}

/// What each paper class may use of a mix, place by place.
///
/// # Errors
/// The database's.
pub async fn all_capacities(tx: &mut RoomTx, mix: Uuid) -> Result<Vec<FrozenCapacity>> {
    let room = tx.room();
    let rows = sqlx::query!(
        r#"
        select c.paper_class_id, c.sheets_per_litre_thousandths, c.place
        from mix_capacity c
        join paper_class p on p.room_id = c.room_id and p.id = c.paper_class_id
        where c.room_id = $1 and c.mix_id = $2
        order by p.position, p.id, c.place
        "#,
        room,
        mix
    )
    .fetch_all(tx.db())
    .await?;
    rows.into_iter()
        .map(|row| {
            Ok(FrozenCapacity {
                paper_class_id: row.paper_class_id,
                sheets_per_litre_thousandths: row.sheets_per_litre_thousandths,
                place: place(Some(&row.place))?,
            })
        })
        .collect()
}

/// What went into a container: a product's groups, and what had come into the
/// mix besides; no product for liquid that nobody could name.
pub(super) struct Poured {
    pub(super) product_id: Option<Uuid>,
    pub(super) groups: Vec<String>,
    pub(super) contaminants: Vec<String>,
}

/// What went into a container so far.
pub(super) async fn container(tx: &mut RoomTx, name: &str) -> Result<Vec<Poured>> {
    let room = tx.room();
    let found = sqlx::query_as!(
        Poured,
        r#"
        select distinct
            m.product_id,
            coalesce(p.groups, '{}') as "groups!",
            array(
                select distinct c.name
                from reading r
                cross join unnest(r.contaminants) c (name)
                where r.room_id = m.room_id and r.mix_id = m.id and r.undone_by is null
                order by c.name
            ) as "contaminants!"
        from mix m
        left join product p on p.room_id = m.room_id and p.id = m.product_id
        where m.room_id = $1 and lower(m.discarded_into) = lower($2)
        "#,
        room,
        name
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found)
}

/// When a tray was last emptied; nothing where nothing recorded ever stood in it.
pub(super) async fn last_emptied(tx: &mut RoomTx, tray: Uuid) -> Result<Option<OffsetDateTime>> {
    let room = tx.room();
    let found = sqlx::query_scalar!(
        "select max(until_at) from stay where room_id = $1 and tray_id = $2",
        room,
        tray
    )
    .fetch_one(tx.db())
    .await?;
    Ok(found)
}

/// Whether a vessel waits to be rinsed.
///
/// # Errors
/// The database's.
pub async fn waits_for_rinse(tx: &mut RoomTx, vessel: Uuid) -> Result<bool> {
    let room = tx.room();
    let waits = sqlx::query_scalar!(
        r#"
        select exists (
            select from rinse where room_id = $1 and vessel_id = $2 and rinsed_seq is null
        ) as "waits!"
        "#,
        room,
        vessel
    )
    .fetch_one(tx.db())
    .await?;
    Ok(waits)
}

/// The entry that discarded a mix by itself: its number and what it says.
/// Nothing where a shift was the last to do so.
pub(super) async fn discard(tx: &mut RoomTx, mix: Uuid) -> Result<Option<(i64, Discarded)>> {
    let room = tx.room();
    let found = sqlx::query!(
        r#"
        select e.seq, e.kind, e.payload
        from entry_about a
        join entry e on e.room_id = a.room_id and e.seq = a.seq
        where a.room_id = $1
            and a.noun = 'mix'
            and a.id = $2
            and (e.kind = $3 or e.kind = $4)
        order by e.seq desc
        limit 1
        "#,
        room,
        mix,
        Discarded::KIND,
        Shifted::KIND
    )
    .fetch_optional(tx.db())
    .await?;
    found
        .filter(|row| row.kind == Discarded::KIND)
        .map(|row| Ok((row.seq, serde_json::from_slice(&row.payload)?)))
        .transpose()
}

/// What came into a mix, by group; `unknown` where nobody can say.
pub(super) async fn contaminants(tx: &mut RoomTx, mix: Uuid) -> Result<Vec<String>> {
    let room = tx.room();
    let found = sqlx::query_scalar!(
        r#"
        select distinct c.name as "name!"
        from reading r
        cross join unnest(r.contaminants) c (name)
        where r.room_id = $1 and r.mix_id = $2 and r.undone_by is null
        order by c.name
        "#,
        room,
        mix
    )
    .fetch_all(tx.db())
    .await?;
    Ok(found)
}

/// Whether anybody but this person was in the room then, as far as it knows.
pub(super) async fn others_present(
    tx: &mut RoomTx,
    person: Option<Uuid>,
    at: OffsetDateTime,
) -> Result<bool> {
    let room = tx.room();
    let are_there = sqlx::query_scalar!(
        r#"
        select exists (
            select from presence
            where room_id = $1
                and person_id is distinct from $2
                and arrived_at <= $3
                and over_at > $3
                and (ended_at is null or ended_at > $3)
        ) as "are_there!"
        "#,
        room,
        person,
        at
    )
    .fetch_one(tx.db())
    .await?;
    Ok(are_there)
}
