//! When each job falls due.

use time::{Duration, OffsetDateTime};
use uuid::Uuid;

use super::store;
use crate::app::App;
use crate::arrivals;
use crate::database::Scope;
use crate::error::{Error, Result};
use crate::rooms::{self, Settings};
use crate::web::dates::Zone;

/// Who says until when they stay is heard of so much later at most. From memory.
const LOOKS_EVERY: Duration = Duration::minutes(5);

/// What the program does by itself.
#[derive(Clone, Copy, Debug, Eq, PartialEq)]
pub enum Job {
    /// Verifies a room's book, each night.
    VerifyBook,
    /// Seals a room's book, each night.
    SealBook,
    /// Tells stewards of fog tests that are overdue, each night.
    FogTestsDue,
    /// Tells people and stewards of inductions that end soon, each night.
    InductionsDue,
    /// Tells stewards of room checks that are overdue, each night.
    RoomChecksDue,
    /// Erases the names of guests that are kept no longer, each night.
    EraseGuestNames,
    /// Asks those who were to have left, and tells of them, when that is due.
    AskAfter,
    /// Writes down who did not say that they left, when that is due.
    ClosePresences,
    /// Takes away what is no longer good, each hour.
    Expire,
}

impl Job {
    /// Every job.
    pub const ALL: [Self; 9] = [
        Self::VerifyBook,
        Self::SealBook,
        Self::FogTestsDue,
        Self::InductionsDue,
        Self::RoomChecksDue,
        Self::EraseGuestNames,
        Self::AskAfter,
        Self::ClosePresences,
        Self::Expire,
    ];

    /// Its name in the table of work.
    #[must_use]
    pub const fn kind(self) -> &'static str {
        match self {
            Self::VerifyBook => "verify_book",
            Self::SealBook => "seal_book",
            Self::FogTestsDue => "fog_tests_due",
            Self::InductionsDue => "inductions_due",
            Self::RoomChecksDue => "room_checks_due",
            Self::EraseGuestNames => "erase_guest_names",
            Self::AskAfter => "ask_after",
            Self::ClosePresences => "close_presences",
            Self::Expire => "expire",
        }
    }

    /// Reads what [`Job::kind`] writes.
    #[must_use]
    pub fn parse(kind: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|job| job.kind() == kind)
    }

    /// Whether each room has its own.
    #[must_use]
    pub const fn is_of_a_room(self) -> bool {
        match self {
            Self::VerifyBook
            | Self::SealBook
            | Self::FogTestsDue
            | Self::InductionsDue
            | Self::RoomChecksDue
            | Self::EraseGuestNames
            | Self::AskAfter
            | Self::ClosePresences => true,
            Self::Expire => false,
        }
    }

    /// The first time after `now`: at night by the room's own clock, when few
    /// work in a darkroom; or when somebody who came now would be taken for gone.
    fn after(self, now: OffsetDateTime, settings: &Settings) -> Result<OffsetDateTime> {
        match self {
            Self::VerifyBook => next_at(now, &settings.time_zone()?, "03:10"),
            Self::SealBook => next_at(now, &settings.time_zone()?, "03:40"),
            Self::FogTestsDue => next_at(now, &settings.time_zone()?, "04:10"),
            Self::InductionsDue => next_at(now, &settings.time_zone()?, "04:20"),
            Self::RoomChecksDue => next_at(now, &settings.time_zone()?, "04:15"),
            Self::EraseGuestNames => next_at(now, &settings.time_zone()?, "04:30"),
            Self::AskAfter => Ok(now + LOOKS_EVERY),
            Self::ClosePresences => arrivals::over_at(settings, now),
            Self::Expire => Ok(next_hour(now)),
        }
    }
}

fn next_hour(now: OffsetDateTime) -> OffsetDateTime {
    let into = now.unix_timestamp().rem_euclid(3_600);
    let whole = now - Duration::seconds(into) - Duration::nanoseconds(now.nanosecond().into());
    whole + Duration::hours(1)
}

fn next_at(now: OffsetDateTime, zone: &Zone, clock: &str) -> Result<OffsetDateTime> {
    let fault = |cause| Error::Internal(anyhow::Error::new(cause));
    let on = |day: OffsetDateTime| zone.instant_on(&zone.date_value(day), clock).map_err(fault);
    let (today, _) = on(now)?;
    if today > now {
        return Ok(today);
    }
    let (_, tomorrow) = zone.day_of(now).map_err(fault)?;
    Ok(on(tomorrow)?.0)
}

/// When a job of a room falls due next.
pub(super) async fn next(app: &App, job: Job, room: Uuid) -> Result<OffsetDateTime> {
    let settings = match job.is_of_a_room() {
        true => settings_of(app, room).await?,
        false => nobodys(),
    };
    let now = app.clock().now();
    let due_at = job.after(now, &settings)?;
    match job {
        Job::AskAfter => Ok(next_turn(app, room, now)
            .await?
            .map_or(due_at, |at| at.min(due_at))),
        _ => Ok(due_at),
    }
}

/// When somebody is to be asked or told next.
async fn next_turn(app: &App, room: Uuid, now: OffsetDateTime) -> Result<Option<OffsetDateTime>> {
    let scope = Scope { room, person: None };
    app.database()
        .reading(scope, move |tx| Box::pin(arrivals::next_turn(tx, now)))
        .await
}

/// What holds where no room says otherwise: UTC, around the clock.
fn nobodys() -> Settings {
    Settings::starting(String::new(), "UTC".to_owned(), String::new())
}

/// The room's settings; nobody's before it has some.
async fn settings_of(app: &App, room: Uuid) -> Result<Settings> {
    let scope = Scope { room, person: None };
    let settings = app
        .database()
        .reading(scope, |tx| Box::pin(rooms::settings(tx)))
        .await;
    match settings {
        Err(Error::NotFound) => Ok(nobodys()),
        answer => answer,
    }
}

/// Plans every job that is not on the list.
pub(super) async fn plan(app: &App) -> Result<()> {
    let missing = app
        .database()
        .installation(|tx| Box::pin(store::missing(tx)))
        .await?;
    for (job, room) in missing {
        let due_at = next(app, job, room).await?;
        let scope = Scope { room, person: None };
        app.database()
            .in_room(scope, move |tx| {
                Box::pin(async move { store::plan(tx, job, due_at).await })
            })
            .await?;
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use time::format_description::well_known::Rfc3339;

    use super::*;

    fn at(text: &str) -> OffsetDateTime {
        OffsetDateTime::parse(text, &Rfc3339).unwrap()
    }

    /// Source for the clock changes: IANA time zone database, file europe.
    #[test]
    fn a_night_job_comes_once_a_night_by_the_rooms_own_clock() {
        let berlin = Settings {
            zone: "Europe/Berlin".to_owned(),
            ..nobodys()
        };
        for (now, due) in [
            ("2026-11-25T12:00:00Z", "2026-11-26T02:10:00Z"),
            ("2026-11-26T02:09:59Z", "2026-11-26T02:10:00Z"),
            ("2026-11-26T02:10:00Z", "2026-11-27T02:10:00Z"),
            // The clocks go forward and back in these two nights.
            ("2026-03-28T12:00:00Z", "2026-03-29T01:10:00Z"),
            ("2026-10-24T12:00:00Z", "2026-10-25T02:10:00Z"),
            ("2026-10-25T02:10:00Z", "2026-10-26T02:10:00Z"),
        ] {
            let next = Job::VerifyBook.after(at(now), &berlin).unwrap();
            assert_eq!(next, at(due), "after {now}");
        }
    }

    #[test]
    fn an_hourly_job_comes_at_the_full_hour() {
        let settings = nobodys();
        for (now, due) in [
            ("2026-11-25T12:00:00Z", "2026-11-25T13:00:00Z"),
            ("2026-11-25T12:59:59.999999Z", "2026-11-25T13:00:00Z"),
        ] {
            assert_eq!(Job::Expire.after(at(now), &settings).unwrap(), at(due));
        }
    }
}
