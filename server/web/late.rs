//! When something happened that is written down later: just now, or a day and a
//! time by the clock on the wall.

use time::{Duration, OffsetDateTime};

use super::dates::Zone;
use super::fields::Choice;
use crate::clock::micros;
use crate::problem::Problem;

/// What a form sends for something that happened earlier.
pub const EARLIER: &str = "earlier";

/// What a form sends for something that happened just now.
pub const NOW: &str = "now";

/// The instant as typed, in microseconds since 1970; nothing for just now.
///
/// # Errors
/// [`Problem::NotATime`].
pub fn read(zone: &Zone, when: &str, day: &str, time: &str) -> Result<Option<i64>, Problem> {
    if when != EARLIER {
        return Ok(None);
    }
    let local = format!("{}T{}", day.trim(), time.trim());
    let at = zone.instant(&local).map_err(|_| Problem::NotATime)?;
    Ok(Some(micros(at.0)))
}

/// The days that may be named, today first: as far back as the room takes notes.
#[must_use]
pub fn days(zone: &Zone, late_minutes: i32, now: OffsetDateTime) -> Vec<Choice> {
    let back = i64::from(late_minutes) / (24 * 60);
    let days = (0..=back.clamp(0, 31)).map(|back| {
        let day = now - Duration::days(back);
        Choice::new(zone.date_value(day), zone.day(day).words)
    });
    days.collect()
}
