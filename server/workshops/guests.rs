//! Who is there as a guest, and by which name.

use std::collections::BTreeMap;

use time::OffsetDateTime;
use uuid::Uuid;

use super::Standing;
use super::store::{self, Guest, Workshop};
use crate::arrivals::Presence;
use crate::database::RoomTx;
use crate::error::{Error, Result};
use crate::logbook::beside::beside;
use crate::problem::Problem;
use crate::rights::Role;

/// A guest who is there now, for the roll.
#[derive(Clone, Debug, Eq, PartialEq)]
pub struct GuestHere {
    /// Of which workshop.
    pub workshop_id: Uuid,
    /// Their name.
    pub name: Option<String>,
    /// Since when.
    pub signed_in_at: OffsetDateTime,
}

/// The names of guests by id; of those whose names were erased there is none.
pub(super) async fn names(tx: &mut RoomTx, guests: &[Guest]) -> Result<BTreeMap<Uuid, String>> {
    let seqs: Vec<i64> = guests.iter().map(|guest| guest.signed_in_seq).collect();
    let mut lists: BTreeMap<i64, Vec<String>> = BTreeMap::new();
    for (seq, words) in beside(tx, &seqs).await? {
        lists.insert(seq, serde_json::from_str(&words)?);
    }
    let name = |guest: &Guest| {
        let place = usize::try_from(guest.place).ok()?;
        let name = lists.get(&guest.signed_in_seq)?.get(place)?;
        Some((guest.id, name.clone()))
    };
    Ok(guests.iter().filter_map(name).collect())
}

/// Whether a reader is told the names of a workshop's guests: whoever leads it and stewards
/// are, and while it goes on those who are in the room.
pub(super) fn are_named_to(
    (reader, role): (Uuid, Role),
    workshop: &Workshop,
    present: &[Presence],
    now: OffsetDateTime,
) -> bool {
    let is_there = || present.iter().any(|presence| presence.person_id == reader);
    role == Role::Steward
        || workshop.leader_id == reader
        || (workshop.standing(now) == Standing::Open && is_there())
}

/// Every guest who is there now, in the order they came, by workshop.
///
/// # Errors
/// The database's.
pub async fn guests_here(tx: &mut RoomTx, now: OffsetDateTime) -> Result<Vec<GuestHere>> {
    let mut all = Vec::new();
    for group in store::here(tx, now).await? {
        let mut guests = store::guests(tx, group.workshop_id).await?;
        guests.retain(|guest| guest.left_at.is_none());
        let mut names = names(tx, &guests).await?;
        all.extend(guests.into_iter().map(|guest| GuestHere {
            workshop_id: guest.workshop_id,
            name: names.remove(&guest.id),
            signed_in_at: guest.signed_in_at,
        }));
    }
    Ok(all)
}

/// Lets somebody go who leads no guests that are there still.
///
/// # Errors
/// [`Problem::GuestsAreIn`].
pub async fn check_leaving(tx: &mut RoomTx, person: Uuid, now: OffsetDateTime) -> Result<()> {
    let groups = store::here(tx, now).await?;
    match groups.iter().find(|group| group.leader_id == person) {
        Some(group) => Err(Error::Refused(Problem::GuestsAreIn {
            guests: group.count,
        })),
        None => Ok(()),
    }
}
