//! The rooms' SQL.

use time::OffsetDateTime;
use uuid::Uuid;

use super::settings::{DecimalMark, Emergency, HazardRules, Hours, Settings, Units};
use crate::database::{InstallationTx, RoomTx};
use crate::error::{Error, Result};

/// A room of the installation, as its operator sees it.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct Room {
    /// Which.
    pub id: Uuid,
    /// Its short name in addresses.
    pub slug: String,
    /// What people call it.
    pub name: String,
    /// Whether it is a room of invented people.
    pub is_demo: bool,
    /// When it was closed, if it is.
    pub closed_at: Option<OffsetDateTime>,
}

/// All rooms, by short name.
///
/// # Errors
/// The database's.
pub async fn all(tx: &mut InstallationTx) -> Result<Vec<Room>> {
    let rooms = sqlx::query_as!(
        Room,
        r#"
        select room_id as id, slug, name, is_demo, closed_at
        from room_name
        order by slug
        limit 10000
        "#
    )
    .fetch_all(tx.db())
    .await?;
    Ok(rooms)
}

/// The room of a short name.
///
/// # Errors
/// The database's.
pub async fn by_slug(tx: &mut InstallationTx, slug: &str) -> Result<Option<Room>> {
    let room = sqlx::query_as!(
        Room,
        "select room_id as id, slug, name, is_demo, closed_at from room_name where slug = $1",
        slug
    )
    .fetch_optional(tx.db())
    .await?;
    Ok(room)
}

pub(super) async fn insert_name(
    tx: &mut RoomTx,
    slug: &str,
    name: &str,
    is_demo: bool,
) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        "insert into room_name (room_id, slug, name, is_demo) values ($1, $2, $3, $4)",
        room,
        slug,
        name,
        is_demo
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

/// Whether the room takes no more entries.
///
/// # Errors
/// The database's.
pub async fn is_closed(tx: &mut RoomTx) -> Result<bool> {
    let room = tx.room();
    let is_closed = sqlx::query_scalar!(
        r#"select closed_at is not null as "is_closed!" from room_name where room_id = $1"#,
        room
    )
    .fetch_one(tx.db())
    .await?;
    Ok(is_closed)
}

pub(super) async fn set_closed(tx: &mut RoomTx, at: Option<OffsetDateTime>) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        "update room_name set closed_at = $2 where room_id = $1",
        room,
        at
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

/// The room's settings as they now are.
///
/// # Errors
/// [`Error::NotFound`] where the room has none.
pub async fn settings(tx: &mut RoomTx) -> Result<Settings> {
    Ok(settings_and_seq(tx).await?.0)
}

/// The room's settings, and the number of the entry that last set them.
///
/// # Errors
/// [`Error::NotFound`] where the room has none.
pub async fn settings_and_seq(tx: &mut RoomTx) -> Result<(Settings, i64)> {
    let room = tx.room();
    let row = sqlx::query!(
        r#"
        select
            name, zone, currency, units, decimal_mark,
            opens as "opens: Vec<Option<i32>>", closes as "closes: Vec<Option<i32>>",
            people_limit, test_first_ppb, late_note_minutes, hazard_rules,
            emergency_number, poison_centre, address, contacts, eyewash, data_sheets,
            is_unheated, fixer_shifts, second_bath_ppb, alkali_meq_per_litre,
            silver_mg_per_roll, film_kept_ppb, forbids_mixing_alone, guest_days, seq
        from room_setting
        where room_id = $1
        "#,
        room
    )
    .fetch_optional(tx.db())
    .await?
    .ok_or(Error::NotFound)?;
    let unknown = |what: &str| Error::fault(format!("a room's settings hold an unknown {what}"));
    let settings = Settings {
        units: Units::parse(&row.units).ok_or_else(|| unknown("unit"))?,
        decimal_mark: DecimalMark::parse(&row.decimal_mark).ok_or_else(|| unknown("mark"))?,
        hazard_rules: HazardRules::parse(&row.hazard_rules).ok_or_else(|| unknown("rule set"))?,
        hours: hours(&row.opens, &row.closes),
        name: row.name,
        zone: row.zone,
        currency: row.currency,
        people_limit: row.people_limit,
        test_first_ppb: row.test_first_ppb,
        late_note_minutes: row.late_note_minutes,
        emergency: Emergency {
            number: row.emergency_number,
            poison_centre: row.poison_centre,
            address: row.address,
            contacts: row.contacts,
            eyewash: row.eyewash,
            data_sheets: row.data_sheets,
        },
        is_unheated: row.is_unheated,
        fixer_shifts: row.fixer_shifts,
        second_bath_ppb: row.second_bath_ppb,
        alkali_meq_per_litre: row.alkali_meq_per_litre,
        silver_mg_per_roll: row.silver_mg_per_roll,
        film_kept_ppb: row.film_kept_ppb,
        forbids_mixing_alone: row.forbids_mixing_alone,
        guest_days: row.guest_days,
    };
    Ok((settings, row.seq))
}

fn hours(opens: &[Option<i32>], closes: &[Option<i32>]) -> [Option<Hours>; 7] {
    std::array::from_fn(|day| {
        let opens_minute = opens.get(day).copied().flatten()?;
        let closes_minute = closes.get(day).copied().flatten()?;
        Some(Hours {
            opens_minute,
            closes_minute,
        })
    })
}

fn by_day(settings: &Settings, pick: fn(Hours) -> i32) -> Vec<Option<i32>> {
    settings.hours.iter().map(|hours| hours.map(pick)).collect()
}

/// Writes the settings as an entry says.
pub(super) async fn set_settings(tx: &mut RoomTx, settings: &Settings, seq: i64) -> Result<()> {
    let room = tx.room();
    let opens = by_day(settings, |hours| hours.opens_minute);
    let closes = by_day(settings, |hours| hours.closes_minute);
    let emergency = &settings.emergency;
    sqlx::query!(
        r#"
        insert into room_setting (
            room_id, name, zone, currency, units, decimal_mark, opens, closes, people_limit,
            test_first_ppb, late_note_minutes, hazard_rules, emergency_number, poison_centre,
            address, contacts, eyewash, data_sheets, seq
        )
        values (
            $1, $2, $3, $4, $5, $6, $7, $8, $9, $10, $11, $12, $13, $14, $15, $16, $17, $18, $19
        )
        on conflict (room_id) do update
        set name = excluded.name,
            zone = excluded.zone,
            currency = excluded.currency,
            units = excluded.units,
            decimal_mark = excluded.decimal_mark,
            opens = excluded.opens,
            closes = excluded.closes,
            people_limit = excluded.people_limit,
            test_first_ppb = excluded.test_first_ppb,
            late_note_minutes = excluded.late_note_minutes,
            hazard_rules = excluded.hazard_rules,
            emergency_number = excluded.emergency_number,
            poison_centre = excluded.poison_centre,
            address = excluded.address,
            contacts = excluded.contacts,
            eyewash = excluded.eyewash,
            data_sheets = excluded.data_sheets,
            seq = excluded.seq
        "#,
        room,
        settings.name,
        settings.zone,
        settings.currency,
        settings.units.as_str(),
        settings.decimal_mark.as_str(),
        &opens as &[Option<i32>],
        &closes as &[Option<i32>],
        settings.people_limit,
        settings.test_first_ppb,
        settings.late_note_minutes,
        settings.hazard_rules.as_str(),
        emergency.number,
        emergency.poison_centre,
        emergency.address,
        emergency.contacts,
        emergency.eyewash,
        emergency.data_sheets,
        seq
    )
    .execute(tx.db())
    .await?;
    set_bench_settings(tx, settings).await
}

/// What of the settings the baths are judged by, who may mix them, and how long guests
/// are named.
async fn set_bench_settings(tx: &mut RoomTx, settings: &Settings) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        r#"
        update room_setting
        set is_unheated = $2,
            fixer_shifts = $3,
            second_bath_ppb = $4,
            alkali_meq_per_litre = $5,
            silver_mg_per_roll = $6,
            film_kept_ppb = $7,
            forbids_mixing_alone = $8,
            guest_days = $9
        where room_id = $1
        "#,
        room,
        settings.is_unheated,
        settings.fixer_shifts,
        settings.second_bath_ppb,
        settings.alkali_meq_per_litre,
        settings.silver_mg_per_roll,
        settings.film_kept_ppb,
        settings.forbids_mixing_alone,
        settings.guest_days
    )
    .execute(tx.db())
    .await?;
    Ok(())
}

/// Writes the room's name where installation pages read it.
pub(super) async fn set_name(tx: &mut RoomTx, name: &str) -> Result<()> {
    let room = tx.room();
    sqlx::query!(
        "update room_name set name = $2 where room_id = $1",
        room,
        name
    )
    .execute(tx.db())
    .await?;
    Ok(())
}
