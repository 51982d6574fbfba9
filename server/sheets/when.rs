//! When something was printed, as forms ask for it.

use crate::app::App;
use crate::clock::micros;
use crate::error::Result;
use crate::identity::Permit;
use crate::problem::Problem;
use crate::rights::Right;
use crate::rooms;
use crate::web::dates::{Adjusted, Zone};
use crate::web::late;

/// A time as typed, read: nothing for just now, and what the rule for local
/// times did.
pub(super) type When = Result<Option<(i64, Adjusted)>, Problem>;

/// The three fields that say when.
#[derive(Clone, Copy, Debug)]
pub(super) struct Typed<'f> {
    pub(super) when: &'f str,
    pub(super) day: &'f str,
    pub(super) time: &'f str,
}

/// When it happened, where that was not just now. Only then the room's zone is
/// asked for: most notes are of just now, and many come at once.
pub(super) async fn read<R: Right>(
    app: &App,
    permit: &Permit<R>,
    typed: Typed<'_>,
) -> Result<When> {
    if typed.when != late::EARLIER {
        return Ok(Ok(None));
    }
    let settings = app
        .database()
        .reading(permit.scope(), |tx| Box::pin(rooms::settings(tx)))
        .await?;
    Ok(on(&settings.time_zone()?, typed.day, typed.time).map(Some))
}

/// The instant of a day and a clock time as typed, in microseconds since 1970.
///
/// # Errors
/// No such time.
pub(super) fn on(zone: &Zone, day: &str, time: &str) -> Result<(i64, Adjusted), Problem> {
    let at = zone.instant_on(day, time);
    at.map(|(at, adjusted)| (micros(at), adjusted))
        .map_err(|_| Problem::NotATime)
}

/// What the address says of the time after a note.
pub(super) fn query(adjusted: Adjusted) -> &'static str {
    match adjusted {
        Adjusted::No => "",
        Adjusted::MovedForward => "?time=moved",
        Adjusted::FirstOfTwo => "?time=first",
    }
}
