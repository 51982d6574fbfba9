//! What is kept of the books outside the database: the checkpoints and the key
//! they are signed with.

use std::path::PathBuf;

use uuid::Uuid;

use super::chain::Head;
use super::checkpoint::{self, Checkpoint, CheckpointError, Shelf, Signer};
use super::keys::{self, Key, KeyError};

/// Where it is.
#[derive(Clone, Debug)]
pub struct Vault {
    /// The data folder.
    pub data: PathBuf,
    /// The key file, where it is not in the data folder.
    pub key_file: Option<PathBuf>,
}

/// Why nothing can be sealed or no seal can be checked.
#[derive(Debug, thiserror::Error)]
pub enum VaultError {
    /// The key's fault.
    #[error(transparent)]
    Key(#[from] KeyError),
    /// The checkpoints' fault.
    #[error(transparent)]
    Checkpoint(#[from] CheckpointError),
}

impl Vault {
    /// The key file.
    #[must_use]
    pub fn key_path(&self) -> PathBuf {
        keys::path(&self.data, self.key_file.as_deref())
    }

    /// A room's checkpoints; none where nothing was ever sealed.
    ///
    /// # Errors
    /// A key or a file that cannot be read.
    pub fn shelf(&self, room: Uuid) -> Result<Shelf, VaultError> {
        let key = match Key::read(&self.key_path()) {
            Err(KeyError::Absent { .. }) if !checkpoint::path(&self.data, room).exists() => {
                return Ok(Shelf::default());
            }
            answer => answer?,
        };
        let public_key = Signer::new(&key).public_key();
        Ok(checkpoint::read(&self.data, room, &public_key)?)
    }

    /// The key checkpoints are signed with, where there is one yet.
    ///
    /// # Errors
    /// A key that cannot be read.
    pub fn public_key(&self) -> Result<Option<[u8; 32]>, VaultError> {
        match Key::read(&self.key_path()) {
            Err(KeyError::Absent { .. }) => Ok(None),
            answer => Ok(Some(Signer::new(&answer?).public_key())),
        }
    }

    /// Signs how a book stood at `at_us` and keeps that; makes the key first
    /// where there is none.
    ///
    /// # Errors
    /// A key or a file that cannot be used.
    pub fn seal(&self, room: Uuid, head: Head, at_us: i64) -> Result<Checkpoint, VaultError> {
        let key = Key::read_or_create(&self.key_path())?;
        let signed = Signer::new(&key).sign(room, head, at_us)?;
        checkpoint::append(&self.data, &signed)?;
        Ok(signed)
    }
}
