//! Instants in words of the room's zone, and local times back to instants.
//!
//! The database stores instants only; this is the one module that knows zones. A local
//! time that does not exist moves forward by what the clock skipped, one that happens
//! twice is the first, and `Adjusted` tells the page which happened. Zones come from
//! the table bundled with jiff, not from the machine.

use askama::Template;
use askama::filters::HtmlSafe;
use jiff::civil::{Date, DateTime};
use jiff::tz::{AmbiguousOffset, TimeZone};
use jiff::{Timestamp, Zoned};
use time::OffsetDateTime;

/// An instant that the calendar of no zone can hold, or a name of no zone.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum DateError {
    /// Not a name of the IANA table.
    #[error("no such zone in the IANA table")]
    UnknownZone,
    /// The text is not a date or a time of the form asked for.
    #[error("not a date and time")]
    NotATime,
    /// Outside the years a calendar can hold.
    #[error("outside the calendar")]
    OutOfRange,
}

/// What the rule for local times did to one that was typed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Adjusted {
    /// The time existed once.
    No,
    /// The clock skipped it; it was moved forward.
    MovedForward,
    /// It happened twice; the first was taken.
    FirstOfTwo,
}

/// An instant for a page: words for people, RFC 3339 for the script.
#[derive(Debug, Clone, PartialEq, Eq, Template)]
#[template(
    source = "<time datetime=\"{{ machine }}\">{{ words }}</time>",
    ext = "html"
)]
pub struct Moment {
    /// RFC 3339 in UTC.
    pub machine: String,
    /// In the room's zone.
    pub words: String,
}

impl HtmlSafe for Moment {}

/// A room's IANA time zone.
#[derive(Debug, Clone)]
pub struct Zone(TimeZone);

impl Zone {
    /// The zone of that IANA name.
    ///
    /// # Errors
    /// [`DateError::UnknownZone`].
    pub fn named(name: &str) -> Result<Self, DateError> {
        let zone = TimeZone::get(name).map_err(|_| DateError::UnknownZone)?;
        Ok(Self(zone))
    }

    /// UTC, for pages that belong to no room.
    #[must_use]
    pub fn utc() -> Self {
        Self(TimeZone::UTC)
    }

    fn local(&self, at: OffsetDateTime) -> Result<Zoned, DateError> {
        Ok(timestamp(at)?.to_zoned(self.0.clone()))
    }

    fn written(&self, at: OffsetDateTime, pattern: &str) -> String {
        match self.local(at) {
            Ok(local) => local.strftime(pattern).to_string(),
            Err(_) => String::new(),
        }
    }

    fn moment(&self, at: OffsetDateTime, pattern: &str) -> Moment {
        Moment {
            machine: machine(at),
            words: self.written(at, pattern),
        }
    }

    /// `13:10` on the day of `now`, `Thu 26 Nov, 21:10` otherwise, with the year where
    /// it is another.
    #[must_use]
    pub fn words(&self, at: OffsetDateTime, now: OffsetDateTime) -> Moment {
        let (Ok(local), Ok(today)) = (self.local(at), self.local(now)) else {
            return self.moment(at, "");
        };
        if local.date() == today.date() {
            self.moment(at, "%H:%M")
        } else if local.year() == today.year() {
            self.moment(at, "%a %-d %b, %H:%M")
        } else {
            self.moment(at, "%a %-d %b %Y, %H:%M")
        }
    }

    /// `21:10 Thu`: for pages that are kept, such as the board.
    #[must_use]
    pub fn clock_and_weekday(&self, at: OffsetDateTime) -> Moment {
        self.moment(at, "%H:%M %a")
    }

    /// `21:10`.
    #[must_use]
    pub fn clock(&self, at: OffsetDateTime) -> Moment {
        self.moment(at, "%H:%M")
    }

    /// `Thursday 26 November 2026, 21:10:05`.
    #[must_use]
    pub fn in_full(&self, at: OffsetDateTime) -> Moment {
        self.moment(at, "%A %-d %B %Y, %H:%M:%S")
    }

    /// `Thu 26 Nov 2026, 21:10`: for what is read on another day too.
    #[must_use]
    pub fn minute_in_full(&self, at: OffsetDateTime) -> Moment {
        self.moment(at, "%a %-d %b %Y, %H:%M")
    }

    /// `Thu 26 Nov 2026`.
    #[must_use]
    pub fn day(&self, at: OffsetDateTime) -> Moment {
        self.moment(at, "%a %-d %b %Y")
    }

    /// `Thu 26 Nov 2026, 21:10`: for paper, which nobody knows the day of.
    #[must_use]
    pub fn on_paper(&self, at: OffsetDateTime) -> Moment {
        self.moment(at, "%a %-d %b %Y, %H:%M")
    }

    /// `Thu 26`: a day on the axis of a chart.
    #[must_use]
    pub fn weekday_and_day(&self, at: OffsetDateTime) -> String {
        self.written(at, "%a %-d")
    }

    /// `26 Nov`: a day on the axis of a chart of many.
    #[must_use]
    pub fn day_and_month(&self, at: OffsetDateTime) -> String {
        self.written(at, "%-d %b")
    }

    /// `2026-11-26`, the value of a date field.
    #[must_use]
    pub fn date_value(&self, at: OffsetDateTime) -> String {
        self.written(at, "%Y-%m-%d")
    }

    /// The instant of a local `2026-11-26T21:10` (or with seconds).
    ///
    /// # Errors
    /// [`DateError::NotATime`]; [`DateError::OutOfRange`].
    pub fn instant(&self, local: &str) -> Result<(OffsetDateTime, Adjusted), DateError> {
        let local = local.trim().parse::<DateTime>();
        self.instant_of(local.map_err(|_| DateError::NotATime)?)
    }

    /// The instant of a day `2026-11-26` and a clock time as people type it: `21:10`,
    /// `21.10`, `2110` or `9:05`.
    ///
    /// # Errors
    /// [`DateError::NotATime`]; [`DateError::OutOfRange`].
    pub fn instant_on(
        &self,
        day: &str,
        clock: &str,
    ) -> Result<(OffsetDateTime, Adjusted), DateError> {
        let day = day.trim().parse::<Date>();
        let day = day.map_err(|_| DateError::NotATime)?;
        let (hour, minute) = hour_and_minute(clock).ok_or(DateError::NotATime)?;
        self.instant_of(day.at(hour, minute, 0, 0))
    }

    fn instant_of(&self, local: DateTime) -> Result<(OffsetDateTime, Adjusted), DateError> {
        let choices = self.0.to_ambiguous_zoned(local);
        let adjusted = match choices.offset() {
            AmbiguousOffset::Unambiguous { .. } => Adjusted::No,
            AmbiguousOffset::Gap { .. } => Adjusted::MovedForward,
            AmbiguousOffset::Fold { .. } => Adjusted::FirstOfTwo,
        };
        let chosen = choices.compatible().map_err(|_| DateError::OutOfRange)?;
        Ok((instant(chosen.timestamp())?, adjusted))
    }

    /// The first instant of the local day that holds `at`, and the first of the next: 23
    /// or 25 hours apart on the nights the clock changes.
    ///
    /// # Errors
    /// [`DateError::OutOfRange`].
    pub fn day_of(
        &self,
        at: OffsetDateTime,
    ) -> Result<(OffsetDateTime, OffsetDateTime), DateError> {
        let local = self.local(at)?;
        let start = local.start_of_day().map_err(|_| DateError::OutOfRange)?;
        let end = start
            .tomorrow()
            .and_then(|next| next.start_of_day())
            .map_err(|_| DateError::OutOfRange)?;
        Ok((instant(start.timestamp())?, instant(end.timestamp())?))
    }

    /// Minutes after local midnight by the clock on the wall, and days since Monday: what
    /// opening hours are looked up by.
    ///
    /// # Errors
    /// [`DateError::OutOfRange`].
    pub fn minute_and_weekday(&self, at: OffsetDateTime) -> Result<(u16, u8), DateError> {
        let local = self.local(at)?;
        let minute = i32::from(local.hour()) * 60 + i32::from(local.minute());
        let weekday = local.weekday().to_monday_zero_offset();
        let minute = u16::try_from(minute).map_err(|_| DateError::OutOfRange)?;
        let weekday = u8::try_from(weekday).map_err(|_| DateError::OutOfRange)?;
        Ok((minute, weekday))
    }
}

/// The names of the bundled table that people choose from: an area and a place.
#[must_use]
pub fn zone_names() -> Vec<String> {
    jiff::tz::db()
        .available()
        .map(|name| name.to_string())
        .filter(|name| name == "UTC" || is_area_and_place(name))
        .collect()
}

fn is_area_and_place(name: &str) -> bool {
    const AREAS: [&str; 10] = [
        "Africa",
        "America",
        "Antarctica",
        "Arctic",
        "Asia",
        "Atlantic",
        "Australia",
        "Europe",
        "Indian",
        "Pacific",
    ];
    name.split_once('/')
        .is_some_and(|(area, _)| AREAS.contains(&area))
}

fn hour_and_minute(clock: &str) -> Option<(i8, i8)> {
    let clock = clock.trim();
    let (hour, minute) = match clock.split_once([':', '.', 'h']) {
        Some(parts) => parts,
        None if matches!(clock.len(), 3 | 4) && clock.is_ascii() => clock.split_at(clock.len() - 2),
        None => return None,
    };
    let whole = |text: &str, most: i8| {
        let digits = !text.is_empty() && text.bytes().all(|byte| byte.is_ascii_digit());
        let number = text.parse::<i8>().ok().filter(|_| digits);
        number.filter(|number| *number <= most)
    };
    Some((whole(hour, 23)?, whole(minute, 59)?))
}

/// RFC 3339 in UTC, to the second.
#[must_use]
pub fn machine(at: OffsetDateTime) -> String {
    timestamp(at).map_or_else(
        |_| String::new(),
        |at| at.strftime("%Y-%m-%dT%H:%M:%SZ").to_string(),
    )
}

fn timestamp(at: OffsetDateTime) -> Result<Timestamp, DateError> {
    let microseconds = i64::try_from(at.unix_timestamp_nanos().div_euclid(1_000));
    let microseconds = microseconds.map_err(|_| DateError::OutOfRange)?;
    Timestamp::from_microsecond(microseconds).map_err(|_| DateError::OutOfRange)
}

fn instant(at: Timestamp) -> Result<OffsetDateTime, DateError> {
    let nanoseconds = i128::from(at.as_microsecond()) * 1_000;
    OffsetDateTime::from_unix_timestamp_nanos(nanoseconds).map_err(|_| DateError::OutOfRange)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Zone, local time, instant, what the rule did. Source: IANA time zone database,
    /// files europe, northamerica, australasia.
    const TABLE: [(&str, &str, &str, Adjusted); 11] = [
        (
            "Europe/Berlin",
            "2026-03-29T02:30",
            "2026-03-29T01:30:00Z",
            Adjusted::MovedForward,
        ),
        (
            "Europe/Berlin",
            "2026-10-25T02:30",
            "2026-10-25T00:30:00Z",
            Adjusted::FirstOfTwo,
        ),
        (
            "America/St_Johns",
            "2026-03-08T02:30",
            "2026-03-08T06:00:00Z",
            Adjusted::MovedForward,
        ),
        (
            "America/St_Johns",
            "2026-07-01T12:00",
            "2026-07-01T14:30:00Z",
            Adjusted::No,
        ),
        (
            "Australia/Lord_Howe",
            "2026-10-04T02:15",
            "2026-10-03T15:45:00Z",
            Adjusted::MovedForward,
        ),
        (
            "Australia/Lord_Howe",
            "2026-04-05T01:45",
            "2026-04-04T14:45:00Z",
            Adjusted::FirstOfTwo,
        ),
        (
            "Pacific/Apia",
            "2011-12-30T12:00",
            "2011-12-30T22:00:00Z",
            Adjusted::MovedForward,
        ),
        (
            "Europe/Berlin",
            "2028-02-29T12:00",
            "2028-02-29T11:00:00Z",
            Adjusted::No,
        ),
        (
            "Europe/Berlin",
            "2026-03-29T00:00",
            "2026-03-28T23:00:00Z",
            Adjusted::No,
        ),
        (
            "Europe/Berlin",
            "2026-03-30T00:00",
            "2026-03-29T22:00:00Z",
            Adjusted::No,
        ),
        (
            "Europe/Berlin",
            "2026-10-26T00:00",
            "2026-10-25T23:00:00Z",
            Adjusted::No,
        ),
    ];

    fn at(machine: &str) -> OffsetDateTime {
        instant(machine.parse().unwrap()).unwrap()
    }

    #[test]
    fn local_times_become_instants_by_the_rule() {
        for (zone, local, expected, adjusted) in TABLE {
            let (instant, rule) = Zone::named(zone).unwrap().instant(local).unwrap();
            assert_eq!(
                (machine(instant).as_str(), rule),
                (expected, adjusted),
                "{zone} {local}"
            );
        }
    }

    #[test]
    fn a_day_has_23_or_25_hours_when_the_clock_changes() {
        let berlin = Zone::named("Europe/Berlin").unwrap();
        for (noon, hours) in [
            ("2026-03-29T12:00:00Z", 23),
            ("2026-10-25T12:00:00Z", 25),
            ("2026-11-26T12:00:00Z", 24),
        ] {
            let (start, end) = berlin.day_of(at(noon)).unwrap();
            assert_eq!((end - start).whole_hours(), hours, "{noon}");
        }
    }

    #[test]
    fn opening_hours_follow_the_clock_on_the_wall() {
        let berlin = Zone::named("Europe/Berlin").unwrap();
        // The same instant of UTC before and after the change; 29 March 2026 is a Sunday.
        let before = berlin
            .minute_and_weekday(at("2026-03-29T00:30:00Z"))
            .unwrap();
        let after = berlin
            .minute_and_weekday(at("2026-03-29T01:30:00Z"))
            .unwrap();
        assert_eq!(before, (90, 6));
        assert_eq!(after, (210, 6));
    }

    #[test]
    fn instants_become_words_with_the_weekday() {
        let berlin = Zone::named("Europe/Berlin").unwrap();
        let now = at("2026-11-25T18:00:00Z");
        assert_eq!(berlin.words(at("2026-11-25T12:10:00Z"), now).words, "13:10");
        let thursday = at("2026-11-26T20:10:00Z");
        assert_eq!(berlin.words(thursday, now).words, "Thu 26 Nov, 21:10");
        assert_eq!(berlin.clock_and_weekday(thursday).words, "21:10 Thu");
        assert_eq!(
            berlin.in_full(thursday).words,
            "Thursday 26 November 2026, 21:10:00"
        );
        let old = berlin.words(at("2025-11-26T20:10:00Z"), now);
        assert_eq!(old.words, "Wed 26 Nov 2025, 21:10");
        assert_eq!(
            old.to_string(),
            "<time datetime=\"2025-11-26T20:10:00Z\">Wed 26 Nov 2025, 21:10</time>"
        );
    }

    #[test]
    fn midnight_belongs_to_the_day_that_begins() {
        let berlin = Zone::named("Europe/Berlin").unwrap();
        // 23:30 UTC on the 25th is 00:30 on the 26th in Berlin.
        let now = at("2026-11-25T23:30:00Z");
        assert_eq!(
            berlin.words(at("2026-11-25T22:30:00Z"), now).words,
            "Wed 25 Nov, 23:30"
        );
    }

    #[test]
    fn clock_times_are_read_as_people_type_them() {
        for (typed, read) in [
            ("21:10", Some((21, 10))),
            ("21.10", Some((21, 10))),
            ("2110", Some((21, 10))),
            ("905", Some((9, 5))),
            ("9:05", Some((9, 5))),
            ("24:00", None),
            ("21:60", None),
            ("nine", None),
            ("-1:10", None),
            ("", None),
        ] {
            assert_eq!(hour_and_minute(typed), read, "{typed}");
        }
    }

    #[test]
    fn zones_are_chosen_from_the_table() {
        let names = zone_names();
        assert!(names.len() > 300, "{}", names.len());
        assert!(names.iter().any(|name| name == "Europe/Berlin"));
        assert!(names.iter().all(|name| Zone::named(name).is_ok()));
        assert_eq!(
            Zone::named("Nowhere/Land").err(),
            Some(DateError::UnknownZone)
        );
    }
}
