//! How many tries at a password there are, without leaks and without lock-out.
//!
//! A try is counted before the password is looked at and given back where it was
//! right, so tries at once cannot slip through together. Counters are kept by
//! what was typed, known or not, so that an unknown name sleeps exactly like a
//! known one. Three windows count together: one name from one network, one name
//! from everywhere, one network for all names. A try that any of them refuses
//! counts in none, so hammering from one network uses up that network's tries at
//! that name and nothing of anyone else's. A browser that logged in before has
//! its own allowance instead of the three.
//!
//! Windows are fixed, so an hour can touch two of them: whoever has no known
//! device gets at most 2 × 50 = 100 verifications an hour at one account, the
//! most that NIST SP 800-63B leaves to failures in a row.

use sha2::{Digest, Sha256};
use time::{Duration, OffsetDateTime};
use uuid::Uuid;

use crate::database::InstallationTx;
use crate::error::{Error, Result};

mod store;

/// So many tries in so long a time.
#[derive(Clone, Copy, Debug, Eq, PartialEq)]
pub struct Window {
    /// The tries.
    pub tries: i32,
    /// The time.
    pub length: Duration,
}

/// The windows.
#[derive(Clone, Copy, Debug, Eq, PartialEq)]
pub struct Limits {
    /// One name from one network.
    pub pair: Window,
    /// One name from everywhere.
    pub account: Window,
    /// One network, all names.
    pub network: Window,
    /// One person from a browser of theirs.
    pub device: Window,
    /// The present password, typed again by somebody who is logged in.
    pub again: Window,
    /// Codes that one network's screens ask to show.
    pub codes: Window,
    /// Codes that one person types.
    pub typing: Window,
    /// One member number at one door or beside one steward, from its last wrong PIN on.
    pub number: Window,
    /// One door or one steward, all numbers, from the last wrong PIN on.
    pub door: Window,
}

impl Limits {
    /// What is used. At most three windows of a pair meet one of an account:
    /// 3 × 10 < 50, so one network never uses up an account's tries.
    pub const USUAL: Self = Self {
        pair: Window {
            tries: 10,
            length: Duration::minutes(30),
        },
        account: Window {
            tries: 50,
            length: Duration::hours(1),
        },
        network: Window {
            tries: 150,
            length: Duration::minutes(15),
        },
        device: Window {
            tries: 20,
            length: Duration::minutes(30),
        },
        again: Window {
            tries: 10,
            length: Duration::minutes(30),
        },
        codes: Window {
            tries: 60,
            length: Duration::minutes(10),
        },
        typing: Window {
            tries: 10,
            length: Duration::minutes(30),
        },
        number: Window {
            tries: 5,
            length: Duration::minutes(15),
        },
        door: Window {
            tries: 60,
            length: Duration::minutes(15),
        },
    };
}

/// One counter and its window.
#[derive(Clone, Debug)]
struct Counter {
    scope: &'static str,
    subject: Vec<u8>,
    window: Window,
    /// Whether the time runs from the last try, not from the first.
    slides: bool,
}

/// The counters that one try moves.
#[derive(Clone, Debug)]
pub struct Tries(Vec<Counter>);

impl Tries {
    /// A try at a name, from a network.
    pub(super) fn at_name(limits: &Limits, name: &str, network: &[u8; 16]) -> Self {
        Self(vec![
            counter("pair", limits.pair, &[name.as_bytes(), network]),
            counter("account", limits.account, &[name.as_bytes()]),
            counter("network", limits.network, &[network]),
        ])
    }

    /// A try from a browser that the person logged in with before.
    pub(super) fn from_device(limits: &Limits, device: &[u8], person: Uuid) -> Self {
        Self(vec![counter(
            "device",
            limits.device,
            &[device, person.as_bytes()],
        )])
    }

    /// A try of somebody who is logged in.
    pub(super) fn again(limits: &Limits, person: Uuid) -> Self {
        Self(vec![counter("again", limits.again, &[person.as_bytes()])])
    }

    /// A code that a network's screen asks to show.
    pub(super) fn at_codes(limits: &Limits, network: &[u8; 16]) -> Self {
        Self(vec![counter("codes", limits.codes, &[network])])
    }

    /// A code that somebody types.
    pub(super) fn at_typing(limits: &Limits, person: Uuid) -> Self {
        Self(vec![counter("typing", limits.typing, &[person.as_bytes()])])
    }

    /// A PIN at a door.
    pub(super) fn at_door(limits: &Limits, screen: Uuid, number: &str) -> Self {
        Self::of_pin(limits, &[screen.as_bytes()], number)
    }

    /// A PIN in a room beside somebody who is logged in.
    pub(super) fn beside(limits: &Limits, (room, person): (Uuid, Uuid), number: &str) -> Self {
        Self::of_pin(limits, &[room.as_bytes(), person.as_bytes()], number)
    }

    /// A PIN that somebody types at a place.
    fn of_pin(limits: &Limits, place: &[&[u8]], number: &str) -> Self {
        let at_number = [place, &[number.as_bytes()]].concat();
        let number = counter("number", limits.number, &at_number);
        let door = counter("door", limits.door, place);
        let sliding = |counter| Counter {
            slides: true,
            ..counter
        };
        Self(vec![sliding(number), sliding(door)])
    }

    /// Counts the try, or refuses it: then the transaction must not be committed.
    pub(super) async fn count(&self, tx: &mut InstallationTx, now: OffsetDateTime) -> Result<()> {
        for counter in &self.0 {
            let Counter {
                scope,
                subject,
                window,
                slides,
            } = counter;
            if !store::count(tx, (scope, subject), (*window, *slides), now).await? {
                return Err(Error::TooMany(window.length.unsigned_abs()));
            }
        }
        Ok(())
    }

    /// Gives the try back: the password was right, or was never looked at.
    pub(super) async fn give_back(
        &self,
        tx: &mut InstallationTx,
        now: OffsetDateTime,
    ) -> Result<()> {
        for counter in &self.0 {
            store::give_back(tx, counter.scope, &counter.subject, now).await?;
        }
        Ok(())
    }
}

/// What is counted stands in the table as a hash: nobody reads there who tried what.
fn counter(scope: &'static str, window: Window, parts: &[&[u8]]) -> Counter {
    let mut hasher = Sha256::new();
    hasher.update(scope.as_bytes());
    for part in parts {
        hasher.update(u64::try_from(part.len()).unwrap_or(u64::MAX).to_be_bytes());
        hasher.update(part);
    }
    Counter {
        scope,
        subject: hasher.finalize().to_vec(),
        window,
        slides: false,
    }
}
