//! Secrets handed to a browser or a person: 256 bits, kept only as a hash.

use data_encoding::BASE64URL_NOPAD;
use sha2::{Digest, Sha256};

use crate::error::{Error, Result};

/// A secret as its holder has it. It never shows itself in a log.
#[derive(Clone)]
pub struct Secret(String);

impl std::fmt::Debug for Secret {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str("Secret")
    }
}

impl Secret {
    /// A new one.
    ///
    /// # Errors
    /// A machine without randomness.
    pub fn new() -> Result<Self> {
        Ok(Self(BASE64URL_NOPAD.encode(&random::<32>()?)))
    }

    /// One that somebody sent.
    #[must_use]
    pub fn received(text: &str) -> Self {
        Self(text.to_owned())
    }

    /// The text to hand over, once.
    #[must_use]
    pub fn reveal(&self) -> &str {
        &self.0
    }

    /// What is kept: the SHA-256. A secret of 256 random bits needs no slower hash.
    #[must_use]
    pub fn hash(&self) -> Vec<u8> {
        Sha256::digest(self.0.as_bytes()).to_vec()
    }
}

/// So many random bytes.
///
/// # Errors
/// A machine without randomness.
pub fn random<const N: usize>() -> Result<[u8; N]> {
    let mut bytes = [0; N];
    getrandom::fill(&mut bytes).map_err(|cause| Error::fault(cause.to_string()))?;
    Ok(bytes)
}
