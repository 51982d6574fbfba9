//! A room's rules, a person's rooms, a closed room.

use askama::Template;
use serde::Deserialize;

use crate::identity::views::RoleShown;
use crate::web::dates::Moment;
use crate::web::fields::{Choice, Problems};
use crate::web::shell::Shell;

/// A room of the person.
#[derive(Debug, Clone)]
pub struct RoomShown {
    /// Its part of the address.
    pub slug: String,
    /// Its name.
    pub name: String,
    /// The person's role there.
    pub role: RoleShown,
    /// Is it closed?
    pub is_closed: bool,
    /// Is the person suspended there?
    pub is_suspended: bool,
}

/// The person's rooms.
#[derive(Debug, Clone, Template)]
#[template(path = "rooms/rooms.html")]
pub struct RoomsPage {
    /// The frame, without room.
    pub shell: Shell,
    /// The rooms.
    pub rooms: Vec<RoomShown>,
}

/// The room's rules as typed. `opens` and `closes` have seven entries, Monday first,
/// `18:00` or empty.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(default)]
pub struct SettingsForm {
    /// Idempotency key.
    pub key: String,
    /// The room's name.
    pub name: String,
    /// Its IANA zone.
    pub zone: String,
    /// Its ISO 4217 currency.
    pub currency: String,
    /// `metric` or `inch`.
    pub units: String,
    /// `.` or `,`.
    pub decimal_mark: String,
    /// When it opens, by weekday.
    pub opens: Vec<String>,
    /// When it closes, by weekday.
    pub closes: Vec<String>,
    /// The largest number of people.
    pub people_limit: String,
    /// From which share used on a bath is tested first, in per cent.
    pub test_first: String,
    /// How late a note may be, in hours.
    pub late_note_hours: String,
    /// `yes` where a bath's temperature is taken every few hours.
    pub is_unheated: String,
    /// How often a second fixer moves up.
    pub fixer_shifts: String,
    /// What the second of two fixers gains, in per cent.
    pub second_bath: String,
    /// Alkali of the developer carried over, in meq/L; empty: not known.
    pub alkali: String,
    /// Silver of a roll of film, in mg; empty: not known.
    pub silver_per_roll: String,
    /// The share of it that stays in the film, in per cent; empty: not known.
    pub film_kept: String,
    /// `yes` where nobody mixes concentrate alone.
    pub forbids_mixing_alone: String,
    /// For so many days the names of guests are kept.
    pub guest_days: String,
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
    /// Where the data sheets are.
    pub data_sheets: String,
}

/// The room's rules; posts to `/settings`. Problems of a weekday are of `hours-0` to
/// `hours-6`.
#[derive(Debug, Clone, Template)]
#[template(path = "rooms/settings.html")]
pub struct SettingsPage {
    /// The frame.
    pub shell: Shell,
    /// As typed.
    pub form: SettingsForm,
    /// What to mend.
    pub problems: Problems,
    /// The zones.
    pub zones: Vec<Choice>,
    /// Is the currency fixed because something is priced?
    pub currency_is_fixed: bool,
    /// The entry of the last change.
    pub changed_seq: i64,
}

impl SettingsPage {
    /// Whether alkali and film are opened: there is a figure, or something is wrong.
    #[must_use]
    pub fn knows_chemistry(&self) -> bool {
        let fields = ["alkali", "silver_per_roll", "film_kept"];
        let form = &self.form;
        let typed = [&form.alkali, &form.silver_per_roll, &form.film_kept];
        fields.iter().any(|field| self.problems.has(field))
            || typed.iter().any(|typed| !typed.is_empty())
    }

    /// When it opens that day, as typed.
    #[must_use]
    pub fn opens(&self, day: &usize) -> &str {
        self.form.opens.get(*day).map_or("", String::as_str)
    }

    /// When it closes that day, as typed.
    #[must_use]
    pub fn closes(&self, day: &usize) -> &str {
        self.form.closes.get(*day).map_or("", String::as_str)
    }
}

/// A room that is closed.
#[derive(Debug, Clone, Template)]
#[template(path = "rooms/closed.html")]
pub struct ClosedRoomPage {
    /// The frame.
    pub shell: Shell,
    /// Since when.
    pub since: Moment,
    /// Why and until when, where that is told.
    pub sentence: Option<String>,
}
