//! Until when somebody stays, as forms ask for it.

use time::OffsetDateTime;

use super::alone::{offered, usual};
use super::rule::over_at;
use super::views::{AsksUntil, UntilForm};
use crate::app::App;
use crate::clock::micros;
use crate::database::Scope;
use crate::error::{Error, Result};
use crate::problem::Problem;
use crate::rooms::{self, Settings};
use crate::web::dates::Zone;
use crate::web::fields::Choice;
use crate::web::messages::arrivals as words;

/// What the form sends where a time is typed.
const TYPED: &str = "typed";

/// Asks until when somebody stays whose presence is over then: with what they typed, or
/// the usual time.
pub(super) fn asks(
    form: UntilForm,
    (now, over_at): (OffsetDateTime, OffsetDateTime),
    zone: &Zone,
) -> AsksUntil {
    let offered = offered(now, over_at);
    let choice = |(hours, at): &(i64, OffsetDateTime)| {
        let label = words::offered(*hours, &zone.clock(*at).words);
        Choice::new(micros(*at).to_string(), label)
    };
    let mut choices: Vec<Choice> = offered.iter().map(choice).collect();
    choices.push(Choice::new(TYPED, words::ANOTHER_TIME));
    let is_offered = choices.iter().any(|choice| choice.value == form.until);
    let until = match is_offered {
        true => form.until,
        false => usual(&offered).map_or_else(String::new, |at| at.to_string()),
    };
    AsksUntil {
        choices,
        until,
        time: form.time,
    }
}

/// Asks whoever comes into an empty room now.
///
/// # Errors
/// A fault: a zone that is none, a moment beyond the calendar.
pub fn asks_of_who_comes(
    form: UntilForm,
    settings: &Settings,
    now: OffsetDateTime,
) -> Result<AsksUntil> {
    let times = (now, over_at(settings, now)?);
    Ok(asks(form, times, &settings.time_zone()?))
}

/// Reads it, in microseconds since 1970: one that was offered, or a time of the room's day
/// as people type it. Nothing where nothing was asked.
///
/// # Errors
/// Neither of these.
pub async fn until_typed(app: &App, scope: Scope, form: &UntilForm) -> Result<Option<i64>> {
    let settings = app
        .database()
        .reading(scope, |tx| Box::pin(rooms::settings(tx)));
    let zone = settings.await?.time_zone()?;
    let now = app.clock().now();
    match form.until.as_str() {
        "" => Ok(None),
        TYPED => {
            let typed = zone.instant_on(&zone.date_value(now), &form.time);
            let (at, _) = typed.map_err(|_| Error::field("time", Problem::NotATime))?;
            Ok(Some(micros(at)))
        }
        offered => {
            let at = offered.parse();
            at.map(Some)
                .map_err(|_| Error::field("until", Problem::NotAChoice))
        }
    }
}
