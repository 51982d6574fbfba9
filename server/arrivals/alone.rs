//! Whoever is alone in the room says until when. Once that has passed and nothing was
//! heard of them they are asked themself, then the room's contacts are told, one after
//! the other: its stewards by member number.

use std::iter::once;

use time::{Duration, OffsetDateTime};
use uuid::Uuid;

use super::Expected;
use super::store::{self, Presence};
use crate::clock::{micros, moment};
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::members::{self, Member};
use crate::notices::{self, Notice};
use crate::problem::Problem;
use crate::rights::Role;
use crate::rooms;
use crate::web::dates::Zone;

/// Between asking somebody and telling the first contact, and from each contact to the
/// next. From memory.
pub(super) const STEP: Duration = Duration::minutes(15);

/// Nobody is asked or told of what passed longer ago: the program was not running. From
/// memory.
const TOO_LATE: Duration = Duration::days(1);

/// Until when somebody stays, as their entry keeps it.
///
/// # Errors
/// Nothing given by somebody alone; a time that has passed, or past the end of the presence.
pub(super) fn expected(
    at_us: Option<i64>,
    is_alone: bool,
    times: (OffsetDateTime, OffsetDateTime),
    zone: &Zone,
) -> Result<Option<Expected>> {
    match at_us {
        Some(at_us) => within(at_us, times, zone).map(Some),
        None if is_alone => Err(Error::field("until", Problem::UntilWhen)),
        None => Ok(None),
    }
}

/// A time between now and the end of a presence, as its entry keeps it.
///
/// # Errors
/// It is not.
pub(super) fn within(
    at_us: i64,
    (now, over_at): (OffsetDateTime, OffsetDateTime),
    zone: &Zone,
) -> Result<Expected> {
    let at = moment(at_us);
    if at <= now || at > over_at {
        return Err(Error::field("until", Problem::NotWhileHere));
    }
    let clock = zone.clock(at).words;
    Ok(Expected { at_us, clock })
}

/// Who is told after somebody, in turn.
///
/// # Errors
/// The database's.
pub(super) async fn contacts(tx: &mut RoomTx) -> Result<Vec<Member>> {
    let mut all = members::everyone(tx).await?;
    all.retain(|member| member.is_active() && member.role == Role::Steward);
    Ok(all)
}

/// Whom a time that passes is told to, each with when: the person first.
fn turns(presence: &Presence, contacts: &[Member]) -> impl Iterator<Item = (Uuid, OffsetDateTime)> {
    let from = presence.expected_at.unwrap_or(presence.over_at);
    let person = presence.person_id;
    let contacts = contacts.iter().map(|member| member.person);
    once(person)
        .chain(contacts.filter(move |contact| *contact != person))
        .zip((0..).map(move |step| from + STEP * step))
}

/// When somebody is to be asked or told next, if they leave it at that.
///
/// # Errors
/// The database's.
pub async fn next_turn(tx: &mut RoomTx, now: OffsetDateTime) -> Result<Option<OffsetDateTime>> {
    let unheard_of = store::unheard_of(tx, now - TOO_LATE).await?;
    if unheard_of.is_empty() {
        return Ok(None);
    }
    let contacts = contacts(tx).await?;
    let turns = unheard_of.iter().flat_map(|each| turns(each, &contacts));
    Ok(turns.map(|(_, at)| at).filter(|at| *at > now).min())
}

/// Asks those whose time has passed, and tells the contacts whose turn it is, each once.
/// While others are in the room, no contact is told: they can look.
///
/// # Errors
/// The database's.
pub async fn ask_after(tx: &mut RoomTx, now: OffsetDateTime) -> Result<()> {
    let unheard_of = store::unheard_of(tx, now - TOO_LATE).await?;
    let overdue = unheard_of.iter().filter(|each| each.is_overdue(now));
    let overdue: Vec<&Presence> = overdue.collect();
    if overdue.is_empty() {
        return Ok(());
    }
    let zone = rooms::settings(tx).await?.time_zone()?;
    let present = store::present(tx, now).await?;
    let contacts = contacts(tx).await?;
    for presence in overdue {
        let is_other = |other: &Presence| other.person_id != presence.person_id;
        let are_others = present.iter().any(is_other);
        for (person, at) in turns(presence, &contacts) {
            if at <= now && (person == presence.person_id || !are_others) {
                tell(tx, now, presence, (person, &zone)).await?;
            }
        }
    }
    Ok(())
}

async fn tell(
    tx: &mut RoomTx,
    now: OffsetDateTime,
    presence: &Presence,
    (person, zone): (Uuid, &Zone),
) -> Result<()> {
    let expected_at = presence.expected_at.unwrap_or(presence.over_at);
    if !store::first_told(tx, (presence.id, expected_at), person, now).await? {
        return Ok(());
    }
    let expected = zone.clock(expected_at).words;
    let notice = match person == presence.person_id {
        true => Notice::StillThere { expected },
        false => Notice::NothingHeardOf {
            name: presence.name.clone(),
            expected,
        },
    };
    notices::tell(tx, now, person, &notice).await
}

/// So many hours from now are offered, where the presence lasts that long. From memory.
const OFFERED_HOURS: [i64; 3] = [1, 2, 3];

/// The times to leave that are offered: the end of the presence itself, where it is nearer
/// than an hour.
pub(super) fn offered(now: OffsetDateTime, over_at: OffsetDateTime) -> Vec<(i64, OffsetDateTime)> {
    let hours = OFFERED_HOURS.map(|hours| (hours, now + Duration::hours(hours)));
    let mut offered: Vec<_> = hours.into_iter().filter(|(_, at)| *at <= over_at).collect();
    if offered.is_empty() {
        offered.push((0, over_at));
    }
    offered
}

/// The one of them that is chosen unless somebody says otherwise: two hours. From memory.
pub(super) fn usual(offered: &[(i64, OffsetDateTime)]) -> Option<i64> {
    let usual = offered.get(1).or_else(|| offered.last());
    usual.map(|(_, at)| micros(*at))
}

#[cfg(test)]
mod tests {
    use time::macros::datetime;

    use super::*;

    const NOW: OffsetDateTime = datetime!(2026-11-25 20:00 UTC);

    fn hours(over_at: OffsetDateTime) -> Vec<i64> {
        let offered = offered(NOW, over_at);
        offered.into_iter().map(|(hours, _)| hours).collect()
    }

    #[test]
    fn only_what_a_presence_lasts_is_offered() {
        assert_eq!(hours(NOW + Duration::hours(3)), [1, 2, 3]);
        assert_eq!(hours(NOW + Duration::minutes(179)), [1, 2]);
        let soon = NOW + Duration::minutes(59);
        assert_eq!(offered(NOW, soon), [(0, soon)]);
        assert_eq!(usual(&offered(NOW, soon)), Some(micros(soon)));
        let late = offered(NOW, NOW + Duration::hours(9));
        assert_eq!(usual(&late), Some(micros(NOW + Duration::hours(2))));
    }

    #[test]
    fn a_time_is_asked_of_those_alone_and_lies_within_the_presence() {
        let (zone, over_at) = (Zone::utc(), NOW + Duration::hours(2));
        let read = |at: Option<OffsetDateTime>, is_alone| {
            expected(at.map(micros), is_alone, (NOW, over_at), &zone)
        };
        assert_eq!(read(None, false).unwrap(), None);
        assert!(read(None, true).is_err());
        for wrong in [
            NOW,
            NOW - Duration::hours(1),
            over_at + Duration::seconds(1),
        ] {
            assert!(read(Some(wrong), false).is_err(), "{wrong}");
        }
        let clock = read(Some(over_at), true).unwrap().unwrap().clock;
        assert_eq!(clock, "22:00");
    }
}
