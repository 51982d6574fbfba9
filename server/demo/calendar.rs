//! The days of the demo: the room's opening hours, and how busy each day is.

use time::{Duration, OffsetDateTime};

use super::draw::Draw;
use crate::error::{Error, Result};
use crate::rooms::Hours;
use crate::web::dates::Zone;

/// The zone of the invented room.
pub(super) const ZONE: &str = "Europe/Berlin";

/// The weekday of long evenings, counted from Monday.
pub(super) const THURSDAY: usize = 3;
/// The weekday of workshops.
pub(super) const SATURDAY: usize = 5;

/// Opening hours, in hours after midnight, Monday first.
const OPEN: [(i32, i32); 7] = [
    (17, 22),
    (17, 22),
    (16, 22),
    (16, 23),
    (17, 22),
    (10, 18),
    (14, 19),
];

/// How many come on an ordinary day, Monday first.
const VISITS: [i64; 7] = [3, 4, 5, 11, 4, 7, 2];

/// The opening hours as the room's settings have them.
pub(super) fn hours() -> [Option<Hours>; 7] {
    OPEN.map(|(opens, closes)| {
        Some(Hours {
            opens_minute: opens * 60,
            closes_minute: closes * 60,
        })
    })
}

/// A day by the clock on the room's wall.
#[derive(Clone, Debug)]
pub(super) struct Day {
    zone: Zone,
    date: String,
    next: OffsetDateTime,
    /// Its number, the first being 0.
    pub(super) number: i64,
    /// Its weekday, Monday being 0.
    pub(super) weekday: usize,
}

impl Day {
    /// The day that holds an instant.
    fn of(zone: &Zone, at: OffsetDateTime, number: i64) -> Result<Self> {
        let fault = |cause| Error::fault(cause);
        let (_, next) = zone.day_of(at).map_err(fault)?;
        let (_, weekday) = zone.minute_and_weekday(at).map_err(fault)?;
        Ok(Self {
            date: zone.date_value(at),
            zone: zone.clone(),
            next,
            number,
            weekday: usize::from(weekday),
        })
    }

    /// The instant of a minute after midnight; those past the day's end are the
    /// next night's.
    pub(super) fn at(&self, minute: i64) -> Result<OffsetDateTime> {
        if minute >= 24 * 60 {
            return Ok(self.next + Duration::minutes(minute - 24 * 60));
        }
        let clock = format!("{:02}:{:02}", minute / 60, minute % 60);
        let found = self.zone.instant_on(&self.date, &clock);
        found.map(|(at, _)| at).map_err(Error::fault)
    }

    /// The minute it opens.
    pub(super) fn opens(&self) -> i64 {
        i64::from(OPEN[self.weekday].0) * 60
    }

    /// The minute it closes.
    pub(super) fn closes(&self) -> i64 {
        i64::from(OPEN[self.weekday].1) * 60
    }

    /// When everything is put away.
    pub(super) fn over(&self) -> Result<OffsetDateTime> {
        self.at(self.closes() + 60)
    }

    /// Its number among the weeks.
    pub(super) fn week(&self) -> i64 {
        self.number / 7
    }

    /// Whether a steward teaches a group today.
    pub(super) fn is_workshop(&self) -> bool {
        self.weekday == SATURDAY && self.week() % 4 == 1
    }

    /// `Mar 2026`, for whoever waits.
    pub(super) fn month(&self) -> String {
        let day = self.zone.day(self.next - Duration::hours(6)).words;
        // `Thu 26 Mar 2026`: what follows the day's number.
        day.splitn(3, ' ').last().unwrap_or_default().to_owned()
    }
}

/// The ordinary days of the demo: those that are over before its last evening.
#[derive(Clone, Debug)]
pub(super) struct Calendar {
    seed: i64,
    weeks: i64,
    /// The days.
    pub(super) days: Vec<Day>,
}

impl Calendar {
    /// The days of so many weeks before an instant.
    pub(super) fn before(until: OffsetDateTime, weeks: i64, seed: i64) -> Result<Self> {
        let zone = Zone::named(ZONE).map_err(Error::fault)?;
        let mut days = Vec::new();
        let mut day = Day::of(&zone, until - Duration::weeks(weeks), 0)?;
        while day.over()? <= until {
            let next = Day::of(&zone, day.next, day.number + 1)?;
            days.push(std::mem::replace(&mut day, next));
        }
        Ok(Self { seed, weeks, days })
    }

    /// Whether the room is shut: three days of one week, for cleaning.
    pub(super) fn is_shut(&self, day: &Day) -> bool {
        let first = self.weeks * 7 * SHUT / 1_000;
        (first..first + SHUT_DAYS).contains(&day.number)
    }

    /// The number of the day for what is due when so many thousandths of the time
    /// have passed: the first after that on which the room is open, else the last.
    pub(super) fn due(&self, thousandths: i64) -> i64 {
        let wanted = self.weeks * 7 * thousandths / 1_000;
        let mut open = self.days.iter().filter(|day| !self.is_shut(day));
        let found = open.clone().find(|day| day.number >= wanted);
        found.or(open.next_back()).map_or(0, |day| day.number)
    }

    /// How many days come after this one.
    pub(super) fn after(&self, day: &Day) -> i64 {
        self.days.last().map_or(0, |last| last.number - day.number)
    }

    /// How many people come: more as the room grows, fewer in quiet weeks.
    pub(super) fn visits(&self, day: &Day) -> usize {
        let mut week = Draw::of(self.seed, "week", day.week());
        let is_quiet = week.happens(14) || day.week() == self.weeks * SHUT / 1_000;
        let pace = if is_quiet { 40 } else { week.between(85, 115) };
        let grown = 70 + 30 * day.number / (self.weeks * 7).max(1);
        let mut draw = Draw::of(self.seed, "visits", day.number);
        let usual = VISITS[day.weekday] * pace * grown * draw.between(80, 120);
        let more = if day.is_workshop() { 4 } else { 0 };
        usize::try_from((usual / 1_000_000).max(1) + more).unwrap_or(1)
    }
}

/// When the room is shut, in thousandths of the time, and for how many days.
const SHUT: i64 = 420;
const SHUT_DAYS: i64 = 3;

#[cfg(test)]
mod tests {
    use super::*;
    use time::macros::datetime;

    /// Summer time ends in Berlin on 25 October 2026, at 03:00 by the old clock.
    #[test]
    fn days_go_by_the_clock_on_the_wall() {
        let until = datetime!(2026-10-26 23:30 UTC);
        let calendar = Calendar::before(until, 2, 1).unwrap();
        // Until 00:30 of Tuesday the 27th by the wall: Monday's evening is over.
        assert_eq!(calendar.days.len(), 14);
        let at = |number: usize, minute| calendar.days[number].at(minute).unwrap();
        let (saturday, sunday) = (&calendar.days[11], &calendar.days[12]);
        assert_eq!((saturday.weekday, sunday.weekday), (SATURDAY, 6));
        assert_eq!(at(11, saturday.opens()), datetime!(2026-10-24 08:00 UTC));
        assert_eq!(at(12, sunday.opens()), datetime!(2026-10-25 13:00 UTC));
        // What runs past midnight is still of that night.
        assert_eq!(at(11, 25 * 60), datetime!(2026-10-24 23:00 UTC));
        assert_eq!(sunday.month(), "Oct 2026");
        assert_eq!(calendar.after(sunday), 1);
    }

    #[test]
    fn thursdays_are_busy_and_nothing_is_due_while_the_room_is_shut() {
        let until = datetime!(2026-11-25 12:00 UTC);
        let calendar = Calendar::before(until, 26, 1).unwrap();
        let on = |weekday: usize| -> usize {
            let days = calendar.days.iter().filter(|day| day.weekday == weekday);
            days.map(|day| calendar.visits(day)).sum()
        };
        assert!(on(THURSDAY) > 2 * on(0), "{} {}", on(THURSDAY), on(0));
        let shut: Vec<i64> = calendar
            .days
            .iter()
            .filter(|day| calendar.is_shut(day))
            .map(|day| day.number)
            .collect();
        assert_eq!(shut, [76, 77, 78]);
        assert_eq!(calendar.due(SHUT), 79);
        assert_eq!(calendar.due(0), 0);
        assert_eq!(calendar.due(1_000), 181);
    }
}
