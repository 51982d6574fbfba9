//! When somebody who does not say that they left is taken for gone.

use time::{Duration, OffsetDateTime};

use crate::error::{Error, Result};
use crate::rooms::Settings;
use crate::web::dates::DateError;

/// So long after closing time people are still cleaning up. From memory.
const CLEANING_UP: Duration = Duration::hours(1);

/// When a presence that begins now is over by itself: a while after the room
/// closes, for whoever comes before that, and at the end of the room's own day at
/// the latest.
///
/// # Errors
/// A fault: a zone that is none, a moment beyond the calendar.
pub fn over_at(settings: &Settings, now: OffsetDateTime) -> Result<OffsetDateTime> {
    let fault = |cause: DateError| Error::Internal(cause.into());
    let zone = settings.time_zone()?;
    let (_, end_of_day) = zone.day_of(now).map_err(fault)?;
    let (_, weekday) = zone.minute_and_weekday(now).map_err(fault)?;
    let hours = settings.hours.get(usize::from(weekday)).copied().flatten();
    let Some(minute) = hours.map(|hours| hours.closes_minute) else {
        return Ok(end_of_day);
    };
    if minute >= 24 * 60 {
        return Ok(end_of_day);
    }
    let clock = format!("{:02}:{:02}", minute / 60, minute % 60);
    let closing = zone.instant_on(&zone.date_value(now), &clock);
    let (closing, _) = closing.map_err(fault)?;
    Ok(match now < closing {
        true => end_of_day.min(closing + CLEANING_UP),
        false => end_of_day,
    })
}

#[cfg(test)]
mod tests {
    use time::format_description::well_known::Rfc3339;

    use super::*;
    use crate::rooms::Hours;

    fn at(text: &str) -> OffsetDateTime {
        OffsetDateTime::parse(text, &Rfc3339).unwrap()
    }

    fn open_until(minute: i32) -> Settings {
        let hours = Hours {
            opens_minute: 0,
            closes_minute: minute,
        };
        let zone = "Europe/Berlin".to_owned();
        Settings {
            hours: [Some(hours); 7],
            ..Settings::starting("Ours".to_owned(), zone, "EUR".to_owned())
        }
    }

    /// Source for the clock changes: IANA time zone database, file europe. The
    /// nights are those of 29 March and 25 October 2026.
    #[test]
    fn the_rooms_own_day_ends_it_on_every_night() {
        for (from, over) in [
            ("2026-11-25T12:00:00Z", "2026-11-25T23:00:00Z"),
            ("2026-11-25T22:59:59Z", "2026-11-25T23:00:00Z"),
            ("2026-11-25T23:00:00Z", "2026-11-26T23:00:00Z"),
            // A day of 23 hours, before and after the hour that is left out.
            ("2026-03-28T22:30:00Z", "2026-03-28T23:00:00Z"),
            ("2026-03-28T23:00:00Z", "2026-03-29T22:00:00Z"),
            ("2026-03-29T01:30:00Z", "2026-03-29T22:00:00Z"),
            // A day of 25 hours, in both of the hours that have one name.
            ("2026-10-24T21:30:00Z", "2026-10-24T22:00:00Z"),
            ("2026-10-25T00:30:00Z", "2026-10-25T23:00:00Z"),
            ("2026-10-25T01:30:00Z", "2026-10-25T23:00:00Z"),
        ] {
            let found = over_at(&open_until(24 * 60), at(from)).unwrap();
            assert_eq!(found, at(over), "from {from}");
        }
    }

    #[test]
    fn closing_time_ends_it_an_hour_later_for_who_came_before() {
        for (closes, from, over) in [
            (22 * 60, "2026-11-25T12:00:00Z", "2026-11-25T22:00:00Z"),
            (22 * 60, "2026-11-25T21:00:00Z", "2026-11-25T23:00:00Z"),
            (23 * 60 + 30, "2026-11-25T12:00:00Z", "2026-11-25T23:00:00Z"),
            // Closing at half past two, which the clock leaves out or strikes twice.
            (150, "2026-03-28T23:30:00Z", "2026-03-29T02:30:00Z"),
            (150, "2026-10-24T22:30:00Z", "2026-10-25T01:30:00Z"),
            (150, "2026-10-25T00:45:00Z", "2026-10-25T23:00:00Z"),
        ] {
            let found = over_at(&open_until(closes), at(from)).unwrap();
            assert_eq!(found, at(over), "closing at {closes}, from {from}");
        }
    }

    #[test]
    fn a_day_on_which_the_room_is_closed_has_an_end_too() {
        let settings = Settings {
            hours: [None; 7],
            ..open_until(60)
        };
        let found = over_at(&settings, at("2026-11-25T12:00:00Z")).unwrap();
        assert_eq!(found, at("2026-11-25T23:00:00Z"));
    }
}
