//! Passwords: what is accepted, and how they are kept.
//!
//! Kept as Argon2id with the least cost OWASP's Password Storage Cheat Sheet
//! names (19 MiB, two passes, one lane), raised by [`Cost`] where the machine
//! can bear it; a hash of another cost is made anew at the next log-in. Each
//! computation holds its memory, so only so many run at once and only so many
//! wait: the next is told to come again.

use std::sync::Arc;
use std::sync::atomic::{AtomicU64, Ordering};

use argon2::password_hash::{PasswordHasher, PasswordVerifier};
use argon2::{Algorithm, Argon2, Params, PasswordHash, Version};
use data_encoding::BASE64_NOPAD;
use tokio::sync::Semaphore;
use unicode_normalization::UnicodeNormalization;

use super::secret::random;
use crate::error::{Error, Result};
use crate::problem::Problem;

/// The fewest characters of a password.
pub const LEAST: usize = 10;
/// The most characters of a password.
pub const MOST: usize = 128;
/// Those who wait while others compute; more are told to come again.
const WAITERS: usize = 16;

/// A password that may be chosen.
#[derive(Clone)]
pub struct Password(String);

impl std::fmt::Debug for Password {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str("Password")
    }
}

impl Password {
    /// Accepts a password as typed. It may not hold any of `names`: the log-in
    /// name, the room's name. There is no rule of composition.
    ///
    /// # Errors
    /// What is wrong with it.
    pub fn choose(typed: &str, names: &[&str]) -> Result<Self, Problem> {
        let password = normal(typed);
        let length = password.chars().count();
        if length == 0 {
            return Err(Problem::Missing);
        }
        if length < LEAST {
            return Err(Problem::TooShort(LEAST));
        }
        if length > MOST {
            return Err(Problem::TooLong(MOST));
        }
        if super::easy::is_easy(&password, names) {
            return Err(Problem::PasswordEasy);
        }
        Ok(Self(password))
    }
}

/// One spelling for what looks alike: two keyboards may send one letter in two ways.
fn normal(typed: &str) -> String {
    typed.nfkc().collect()
}

/// What a hash costs to compute.
#[derive(Clone, Copy, Debug, Eq, PartialEq)]
pub struct Cost {
    /// Memory in KiB.
    pub memory_kib: u32,
    /// Passes over it.
    pub passes: u32,
}

impl Cost {
    /// OWASP's first choice for Argon2id.
    pub const OWASP: Self = Self {
        memory_kib: 19_456,
        passes: 2,
    };
}

/// Computes hashes and verifies passwords, a few at a time.
#[derive(Clone, Debug)]
pub struct Hasher {
    desk: Arc<Desk>,
}

#[derive(Debug)]
struct Desk {
    argon2: Argon2<'static>,
    /// A hash of no password: what an unknown name is verified against.
    nobody: String,
    cost: Cost,
    places: Semaphore,
    seats: Semaphore,
    verifications: AtomicU64,
}

impl Hasher {
    /// One that works at this cost.
    ///
    /// # Errors
    /// A cost that Argon2 has no parameters for; a machine without randomness.
    pub fn new(cost: Cost) -> Result<Self> {
        let params = Params::new(cost.memory_kib, cost.passes, 1, None)
            .map_err(|cause| Error::fault(format!("the cost of passwords: {cause}")))?;
        let at_once = std::thread::available_parallelism().map_or(1, usize::from);
        Ok(Self {
            desk: Arc::new(Desk {
                argon2: Argon2::new(Algorithm::Argon2id, Version::V0x13, params),
                nobody: of_no_password(cost)?,
                cost,
                places: Semaphore::new(at_once + WAITERS),
                seats: Semaphore::new(at_once),
                verifications: AtomicU64::new(0),
            }),
        })
    }

    /// The hash to keep of a password.
    ///
    /// # Errors
    /// [`Error::Unavailable`] where too many wait.
    pub async fn hash(&self, password: &Password) -> Result<String> {
        let text = password.0.clone();
        self.compute(move |desk| {
            let salt = random::<16>()?;
            let hash: PasswordHash = desk
                .argon2
                .hash_password_with_salt(text.as_bytes(), &salt)
                .map_err(|cause| Error::fault(format!("a password was not hashed: {cause}")))?;
            Ok(hash.to_string())
        })
        .await
    }

    /// A hash of no password: nobody logs in with it, and trying costs as much as
    /// with any other.
    ///
    /// # Errors
    /// A machine without randomness.
    pub fn of_no_password(&self) -> Result<String> {
        of_no_password(self.desk.cost)
    }

    /// Whether what was typed is the password of this hash. Where there is no
    /// hash the answer is no, at the same cost.
    ///
    /// # Errors
    /// [`Error::Unavailable`] where too many wait; a hash that is none.
    pub async fn verify(&self, typed: &str, hash: Option<&str>) -> Result<bool> {
        let typed = normal(typed);
        let (known, hash) = match hash {
            Some(hash) => (true, hash.to_owned()),
            None => (false, self.desk.nobody.clone()),
        };
        let is_right = self
            .compute(move |desk| {
                desk.verifications.fetch_add(1, Ordering::Relaxed);
                let hash = PasswordHash::new(&hash)
                    .map_err(|cause| Error::fault(format!("a kept hash is none: {cause}")))?;
                Ok(desk.argon2.verify_password(typed.as_bytes(), &hash).is_ok())
            })
            .await?;
        Ok(known && is_right)
    }

    /// Whether a right password should be hashed anew, because its hash has
    /// another cost than today's.
    #[must_use]
    pub fn is_outdated(&self, hash: &str) -> bool {
        let Ok(hash) = PasswordHash::new(hash) else {
            return true;
        };
        let params = Params::try_from(&hash).ok();
        let ours = self.desk.argon2.params();
        params.is_none_or(|its| its.m_cost() != ours.m_cost() || its.t_cost() != ours.t_cost())
    }

    /// A typed password that was right, to be hashed anew.
    pub(super) fn retyped(typed: &str) -> Password {
        Password(normal(typed))
    }

    /// How many verifications were computed since the start.
    #[must_use]
    pub fn verifications(&self) -> u64 {
        self.desk.verifications.load(Ordering::Relaxed)
    }

    async fn compute<T: Send + 'static>(
        &self,
        work: impl FnOnce(&Desk) -> Result<T> + Send + 'static,
    ) -> Result<T> {
        let busy = || Error::Unavailable("too many passwords are being checked");
        let _place = self.desk.places.try_acquire().map_err(|_| busy())?;
        let _seat = self.desk.seats.acquire().await.map_err(|_| busy())?;
        let desk = self.desk.clone();
        tokio::task::spawn_blocking(move || work(&desk))
            .await
            .map_err(|ended| Error::fault(format!("a password's task ended: {ended}")))?
    }
}

/// Salt and hash are random: no password that anybody could find gives them.
fn of_no_password(cost: Cost) -> Result<String> {
    Ok(format!(
        "$argon2id$v=19$m={},t={},p=1${}${}",
        cost.memory_kib,
        cost.passes,
        BASE64_NOPAD.encode(&random::<16>()?),
        BASE64_NOPAD.encode(&random::<32>()?),
    ))
}
