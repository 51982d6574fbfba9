//! Six digits by which a person acts at a room's door, beside their number there.
//!
//! A PIN is kept like a password, and tried like one: an unknown number and a wrong
//! PIN read alike and cost one verification each. Five wrong ones at a number, known
//! or not, let that number sleep for a quarter of an hour, at that screen alone.

use time::OffsetDateTime;
use uuid::Uuid;

use super::devices::Device;
use super::memberships;
use super::passwords::Hasher;
use super::permit::{Permit, Person, Visitor};
use super::throttle::Tries;
use crate::app::App;
use crate::database::{RoomTx, Scope};
use crate::error::{Error, Result};
use crate::problem::Problem;
use crate::rights::Right;

mod store;

/// So many digits.
pub const DIGITS: usize = 6;

/// A PIN that may be chosen.
#[derive(Clone)]
pub struct Pin(String);

impl std::fmt::Debug for Pin {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str("Pin")
    }
}

impl Pin {
    /// Accepts a PIN as typed.
    ///
    /// # Errors
    /// Not six digits; one of the first that anyone tries.
    pub fn choose(typed: &str) -> Result<Self, Problem> {
        let digits: Vec<u8> = typed.trim().bytes().collect();
        if digits.is_empty() {
            return Err(Problem::Missing);
        }
        if digits.len() != DIGITS || !digits.iter().all(u8::is_ascii_digit) {
            return Err(Problem::NotAPin);
        }
        match is_easy(&digits) {
            true => Err(Problem::PinEasy),
            false => Ok(Self(typed.trim().to_owned())),
        }
    }

    /// What is kept of it.
    ///
    /// # Errors
    /// [`Error::Unavailable`] where too many wait.
    pub async fn hash(&self, app: &App) -> Result<String> {
        app.entrance().hasher.hash(&Hasher::retyped(&self.0)).await
    }
}

/// One, two or three digits over and over, or a run up or down.
fn is_easy(digits: &[u8]) -> bool {
    let repeats = |unit: usize| {
        digits
            .iter()
            .zip(&digits[unit..])
            .all(|(one, next)| one == next)
    };
    let runs = |by: i16| {
        let steps = digits.windows(2);
        steps
            .map(|pair| i16::from(pair[1]) - i16::from(pair[0]))
            .all(|step| step == by)
    };
    (1..=3).any(repeats) || runs(1) || runs(-1)
}

/// Keeps a person's PIN in the transaction's room, in the place of another.
///
/// # Errors
/// The database's.
pub async fn set(tx: &mut RoomTx, person: Uuid, hash: &str, now: OffsetDateTime) -> Result<()> {
    store::set(tx, person, hash, now).await
}

/// Takes a person's PIN away; whether there was one.
///
/// # Errors
/// The database's.
pub async fn remove(tx: &mut RoomTx, person: Uuid) -> Result<bool> {
    store::remove(tx, person).await
}

/// Since when a person has a PIN in the transaction's room, if they have.
///
/// # Errors
/// The database's.
pub async fn set_at(tx: &mut RoomTx, person: Uuid) -> Result<Option<OffsetDateTime>> {
    store::set_at(tx, person).await
}

/// What somebody types at a door.
#[derive(Clone, Default)]
pub struct Typed {
    /// Their number in the room.
    pub number: String,
    /// Their PIN.
    pub pin: String,
}

impl Typed {
    fn read_number(&self) -> Option<i32> {
        self.number.trim().parse().ok()
    }

    /// What tries are counted by: the number, or what was typed in its place.
    fn counted(&self) -> String {
        let number = self.read_number();
        number.map_or_else(|| self.number.clone(), |number| number.to_string())
    }
}

/// Lets somebody act at a door, once: by number, PIN and the door's own proof.
///
/// # Errors
/// [`Problem::DoorFailed`], whatever is wrong; [`Problem::DoorSleeps`];
/// [`Error::Unavailable`] where too many wait.
pub async fn admit(app: &App, device: &Device, typed: Typed) -> Result<Visitor> {
    let tries = Tries::at_door(&app.entrance().limits, device.id(), &typed.counted());
    let person = verified(app, device.scope(), tries, &typed).await?;
    let membership = memberships::find(app, person.id, &device.room().slug).await?;
    let membership = membership.ok_or(Error::field("", Problem::DoorFailed))?;
    Ok(Visitor::new(person, membership, device.id()))
}

/// Who typed their number and PIN beside somebody who is logged in. A number sleeps
/// beside that person alone, as at a door.
///
/// # Errors
/// As [`admit`].
pub async fn beside<R: Right>(app: &App, permit: &Permit<R>, typed: Typed) -> Result<Person> {
    let place = (permit.room(), permit.person().id);
    let tries = Tries::beside(&app.entrance().limits, place, &typed.counted());
    verified(app, permit.scope(), tries, &typed).await
}

/// The person whose number and PIN these are, in the scope's room: counted as a try
/// before anything is looked at.
async fn verified(app: &App, scope: Scope, tries: Tries, typed: &Typed) -> Result<Person> {
    let (count, now) = (tries.clone(), app.clock().now());
    let counted = app
        .database()
        .installation(move |tx| Box::pin(async move { count.count(tx, now).await }))
        .await;
    match counted {
        Err(Error::TooMany(_)) => return Err(Error::Refused(Problem::DoorSleeps)),
        other => other?,
    }
    let number = typed.read_number();
    let found = app
        .database()
        .reading(scope, move |tx| {
            Box::pin(async move {
                match number {
                    Some(number) => store::at_number(tx, number).await,
                    None => Ok(None),
                }
            })
        })
        .await?;
    let hash = found.as_ref().and_then(|found| found.hash.as_deref());
    let verified = app.entrance().hasher.verify(typed.pin.trim(), hash).await;
    if !matches!(verified, Ok(false)) {
        // Right, or never looked at.
        app.database()
            .installation(move |tx| Box::pin(async move { tries.give_back(tx, now).await }))
            .await?;
    }
    match (verified?, found) {
        (true, Some(found)) => Ok(found.person),
        _ => {
            tracing::warn!(room = %scope.room, "a number and a PIN were refused");
            Err(Error::field("", Problem::DoorFailed))
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn six_digits_that_are_not_the_first_tried() {
        for fine in ["482915", " 730264 ", "110923"] {
            assert!(Pin::choose(fine).is_ok(), "{fine}");
        }
        for (typed, problem) in [
            ("", Problem::Missing),
            ("12345", Problem::NotAPin),
            ("1234567", Problem::NotAPin),
            ("48291x", Problem::NotAPin),
            ("٤٨٢٩١٥", Problem::NotAPin),
            ("000000", Problem::PinEasy),
            ("121212", Problem::PinEasy),
            ("123123", Problem::PinEasy),
            ("345678", Problem::PinEasy),
            ("987654", Problem::PinEasy),
        ] {
            assert_eq!(Pin::choose(typed).err(), Some(problem), "{typed}");
        }
    }
}
