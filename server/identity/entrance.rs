//! What stands at the door: how passwords are hashed, how many tries there are,
//! and whose word about an address is believed.

use super::client::TrustedProxies;
use super::passwords::{Cost, Hasher};
use super::throttle::Limits;
use crate::error::Result;

/// The door's parts.
#[derive(Clone, Debug)]
pub struct Entrance {
    /// Hashes and verifies passwords.
    pub hasher: Hasher,
    /// How many tries there are.
    pub limits: Limits,
    /// Proxies that may say where a request comes from.
    pub proxies: TrustedProxies,
}

impl Entrance {
    /// The usual door, behind these proxies.
    ///
    /// # Errors
    /// A machine without randomness.
    pub fn new(proxies: TrustedProxies) -> Result<Self> {
        Self::at_cost(Cost::OWASP, proxies)
    }

    /// A door whose passwords cost this much.
    ///
    /// # Errors
    /// A cost that Argon2 has no parameters for.
    pub fn at_cost(cost: Cost, proxies: TrustedProxies) -> Result<Self> {
        Ok(Self {
            hasher: Hasher::new(cost)?,
            limits: Limits::USUAL,
            proxies,
        })
    }
}
