//! The rooms' SQL.

use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::web::dates::Zone;
use crate::web::numbers::Numbers;

/// A room's settings.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct Settings {
    /// What people call the room.
    pub name: String,
    /// Its IANA time zone.
    pub zone: String,
    /// ISO 4217.
    pub currency: String,
    /// `metric` or `inch`.
    pub units: String,
    /// `.` or `,`.
    pub decimal_mark: String,
    /// Minutes after midnight, Monday first; nothing is closed that day.
    pub opens: Vec<Option<i32>>,
    /// The same for closing.
    pub closes: Vec<Option<i32>>,
    /// So many people at once.
    pub people_limit: i32,
    /// From this used fraction on the verdict is Test first, in parts per billion.
    pub test_first_ppb: i64,
    /// So late a note may come.
    pub late_note_minutes: i32,
    /// `clp` or `north_american`.
    pub hazard_rules: String,
    /// The number of the emergency services.
    pub emergency_number: String,
    /// Name and number of the poison centre.
    pub poison_centre: String,
    /// The address to give.
    pub address: String,
    /// The room's own people.
    pub contacts: String,
    /// Where the eyewash is.
    pub eyewash: String,
    /// Where the safety data sheets are.
    pub data_sheets: String,
    /// The entry that set them.
    pub seq: i64,
}

impl Settings {
    /// How this room writes times.
    ///
    /// # Errors
    /// A fault: the zone was checked when it was set.
    pub fn time_zone(&self) -> Result<Zone> {
        Zone::named(&self.zone).map_err(|cause| Error::Internal(cause.into()))
    }

    /// How this room writes numbers.
    #[must_use]
    pub fn numbers(&self) -> Numbers {
        Numbers::with_mark(&self.decimal_mark)
    }
}

/// The room's settings.
///
/// # Errors
/// [`Error::NotFound`] for a room that was never opened.
pub async fn settings(tx: &mut RoomTx) -> Result<Settings> {
    let room = tx.room();
    let found = sqlx::query_as!(
        Settings,
        r#"
        select
            name, zone, currency, units, decimal_mark,
            opens as "opens: Vec<Option<i32>>",
            closes as "closes: Vec<Option<i32>>",
            people_limit, test_first_ppb, late_note_minutes, hazard_rules, emergency_number,
            poison_centre, address, contacts, eyewash, data_sheets, seq
        from room_setting
        where room_id = $1
        "#,
        room
    )
    .fetch_optional(tx.db())
    .await?;
    found.ok_or(Error::NotFound)
}
