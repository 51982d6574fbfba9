//! Days of the calendar as `2026-11-03`: so many days or months later, where one ends, and in
//! words. A day belongs to no zone; where it begins and ends does.

use jiff::ToSpan;
use jiff::civil::Date;
use time::OffsetDateTime;

use super::dates::{DateError, Zone};

fn date(day: &str) -> Result<Date, DateError> {
    day.parse().map_err(|_| DateError::NotATime)
}

/// The day so many months after the local day of an instant: the last one of a month
/// that has no such day.
///
/// # Errors
/// [`DateError::OutOfRange`].
pub fn months_later(zone: &Zone, at: OffsetDateTime, months: i32) -> Result<String, DateError> {
    months_after(&zone.date_value(at), months)
}

/// The day so many days after the local day of an instant, whatever the clock does in
/// between.
///
/// # Errors
/// [`DateError::OutOfRange`].
pub fn days_later(zone: &Zone, at: OffsetDateTime, days: i32) -> Result<String, DateError> {
    later(&zone.date_value(at), days)
}

/// The day so many months after a day: the last one of a month that has no such day.
///
/// # Errors
/// [`DateError::NotATime`]; [`DateError::OutOfRange`].
pub fn months_after(day: &str, months: i32) -> Result<String, DateError> {
    let later = date(day)?.checked_add(months.months());
    let later = later.map_err(|_| DateError::OutOfRange)?;
    Ok(later.to_string())
}

/// The day so many days after a day.
///
/// # Errors
/// [`DateError::NotATime`]; [`DateError::OutOfRange`].
pub fn later(day: &str, days: i32) -> Result<String, DateError> {
    let later = date(day)?.checked_add(days.days());
    let later = later.map_err(|_| DateError::OutOfRange)?;
    Ok(later.to_string())
}

/// The first instant after a day.
///
/// # Errors
/// [`DateError::NotATime`]; [`DateError::OutOfRange`].
pub fn ends(zone: &Zone, day: &str) -> Result<OffsetDateTime, DateError> {
    let next = date(day)?.tomorrow().map_err(|_| DateError::OutOfRange)?;
    let (begins, _) = zone.instant(&format!("{next}T00:00"))?;
    Ok(begins)
}

/// `Wed 3 Nov 2027`; what is no day stays as it is.
#[must_use]
pub fn words(day: &str) -> String {
    date(day).map_or_else(
        |_| day.to_owned(),
        |day| day.strftime("%a %-d %b %Y").to_string(),
    )
}

#[cfg(test)]
mod tests {
    use super::super::dates::machine;
    use super::*;

    fn at(text: &str) -> OffsetDateTime {
        crate::input::moment(text).unwrap()
    }

    #[test]
    fn months_are_those_of_the_calendar_where_the_room_is() {
        let berlin = Zone::named("Europe/Berlin").unwrap();
        for (from, months, day) in [
            ("2026-11-03T12:00:00Z", 12, "2027-11-03"),
            // It is the fourth there already.
            ("2026-11-03T23:30:00Z", 12, "2027-11-04"),
            ("2026-08-31T12:00:00Z", 6, "2027-02-28"),
            ("2027-08-31T12:00:00Z", 6, "2028-02-29"),
        ] {
            assert_eq!(months_later(&berlin, at(from), months).unwrap(), day);
        }
    }

    #[test]
    fn days_are_counted_over_the_ends_of_months() {
        assert_eq!(later("2026-11-26", 30).unwrap(), "2026-12-26");
        assert_eq!(later("2028-02-28", 2).unwrap(), "2028-03-01");
        assert_eq!(months_after("2024-02-29", 24).unwrap(), "2026-02-28");
    }

    /// Source: IANA time zone database, file europe: Berlin changes its clock on 29 March
    /// and on 25 October 2026.
    #[test]
    fn a_week_is_seven_days_of_the_calendar_over_a_change_of_the_clock() {
        let berlin = Zone::named("Europe/Berlin").unwrap();
        for (from, days, day) in [
            // Half an hour before midnight, in the week that is an hour short.
            ("2026-03-27T22:30:00Z", 7, "2026-04-03"),
            // And after it.
            ("2026-03-27T23:30:00Z", 7, "2026-04-04"),
            // In the week that is an hour long.
            ("2026-10-23T21:30:00Z", 7, "2026-10-30"),
            ("2026-10-23T22:30:00Z", 7, "2026-10-31"),
            // The last day of February, in a leap year and in another.
            ("2028-02-22T12:00:00Z", 7, "2028-02-29"),
            ("2027-02-22T12:00:00Z", 7, "2027-03-01"),
            ("2028-02-29T12:00:00Z", 365, "2029-02-28"),
        ] {
            assert_eq!(days_later(&berlin, at(from), days).unwrap(), day);
        }
    }

    /// Source: IANA time zone database, files europe and africa.
    #[test]
    fn a_day_ends_where_the_next_one_begins_by_the_clock_on_the_wall() {
        for (zone, day, end) in [
            ("Europe/Berlin", "2027-11-03", "2027-11-03T23:00:00Z"),
            ("Europe/Berlin", "2027-07-03", "2027-07-03T22:00:00Z"),
            // Midnight of 24 April 2026 does not exist there: the day begins at one.
            ("Africa/Cairo", "2026-04-23", "2026-04-23T22:00:00Z"),
        ] {
            let zone = Zone::named(zone).unwrap();
            assert_eq!(machine(ends(&zone, day).unwrap()), end);
        }
    }

    #[test]
    fn a_day_is_said_with_its_weekday() {
        assert_eq!(words("2027-11-03"), "Wed 3 Nov 2027");
        assert_eq!(words("soon"), "soon");
        assert_eq!(ends(&Zone::utc(), "soon"), Err(DateError::NotATime));
    }
}
