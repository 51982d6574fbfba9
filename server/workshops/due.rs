//! Workshops on the board and in a handover.

use time::OffsetDateTime;

use super::store::{self, Workshop};
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::lamps::Due;
use crate::web::dates::Zone;
use crate::web::messages::workshops as words;

/// What everyone should know today: which workshops take the bench, and when.
///
/// # Errors
/// The database's; a fault for a day beyond the calendar.
pub async fn due(tx: &mut RoomTx, zone: &Zone, now: OffsetDateTime) -> Result<Due> {
    let coming = store::coming(tx, now).await?;
    let fault = |cause: crate::web::dates::DateError| Error::Internal(cause.into());
    let (_, tomorrow) = zone.day_of(now).map_err(fault)?;
    let is_later = |workshop: &&Workshop| workshop.begins_at >= tomorrow;
    let today = coming.iter().filter(|workshop| !is_later(workshop));
    let ends = today
        .clone()
        .map(|each| each.over_at.unwrap_or(each.ends_at));
    let begins = coming
        .iter()
        .any(|each| is_later(&each))
        .then_some(tomorrow);
    Ok(Due {
        changes_at: ends.chain(begins).min(),
        sentences: today.map(|workshop| on_the_day(workshop, zone)).collect(),
    })
}

fn on_the_day(workshop: &Workshop, zone: &Zone) -> String {
    let hours = words::hours(
        &clock(zone, workshop.begins_at),
        &clock(zone, workshop.ends_at),
    );
    words::on_the_day(workshop, &hours)
}

fn clock(zone: &Zone, at: OffsetDateTime) -> String {
    zone.clock(at).words
}

/// What a steward who takes the room over should know of workshops to come.
#[must_use]
pub fn handed_over(coming: &[Workshop], zone: &Zone) -> Vec<String> {
    let line = |workshop: &Workshop| {
        let begins = zone.minute_in_full(workshop.begins_at).words;
        words::handed_over(workshop, &begins)
    };
    coming.iter().map(line).collect()
}
