//! The one key file of an installation and what is derived from it.
//!
//! Every secret that must be read back (the key checkpoints are signed with,
//! later those of one-time passwords and of webhooks) is derived from 32 random
//! bytes in one file that is never in the database: `key` in the data folder, or
//! the file named by `WETSIDE_KEY_FILE`. HKDF with SHA-256 gives each use bytes
//! of its own, so that one use that leaks tells nothing about another. Whoever
//! has the file can sign checkpoints: it is readable by its owner alone, and a
//! file others can read is refused instead of quietly mended.

use std::fmt;
use std::fs::{self, DirBuilder, File, OpenOptions};
use std::io::{self, ErrorKind, Read, Write};
use std::os::unix::fs::{DirBuilderExt, OpenOptionsExt, PermissionsExt};
use std::path::{Path, PathBuf};

use data_encoding::HEXLOWER;
use hkdf::Hkdf;
use sha2::Sha256;

/// Why there is no key.
#[derive(Debug, thiserror::Error)]
#[non_exhaustive]
pub enum KeyError {
    /// Others can read the file.
    #[error(
        "{} can be read or written by others than its owner (mode {mode:03o}), so the key in it is \
         no secret. If nobody can have read it, close it with `chmod 600 {}`; otherwise replace it.",
        path.display(), path.display()
    )]
    Open {
        /// The key file.
        path: PathBuf,
        /// Its permissions.
        mode: u32,
    },

    /// Something else is in the file.
    #[error(
        "{} is no key: a key is one line of 64 hexadecimal digits. Restore it from a backup, or \
         move it away to begin with a new key; checkpoints of the old one then count as foreign.",
        path.display()
    )]
    NoKey {
        /// The key file.
        path: PathBuf,
    },

    /// There is no file, and none was to be made.
    #[error(
        "{} does not exist. Without the key no checkpoint can be checked; restore it from a \
         backup, or name it with WETSIDE_KEY_FILE.", path.display()
    )]
    Absent {
        /// Where it was looked for.
        path: PathBuf,
    },

    /// The system gave no random bytes.
    #[error("The system gave no random bytes for a new key: {0}.")]
    NoRandomness(getrandom::Error),

    /// The system refused something.
    #[error("{doing} {} failed: {source}.", path.display())]
    Io {
        /// What was tried.
        doing: &'static str,
        /// On which file.
        path: PathBuf,
        /// The system's answer.
        source: io::Error,
    },
}

impl KeyError {
    fn io(doing: &'static str, path: &Path) -> impl FnOnce(io::Error) -> Self {
        let path = path.to_path_buf();
        move |source| Self::Io {
            doing,
            path,
            source,
        }
    }
}

/// What a derived key is for. Each has its own label, and a label is never reused.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[non_exhaustive]
pub enum Purpose {
    /// Signing checkpoints with Ed25519.
    Checkpoint,
}

impl Purpose {
    fn label(self) -> &'static [u8] {
        match self {
            Self::Checkpoint => b"wetside checkpoint ed25519 1",
        }
    }
}

/// The installation's key. Shows nothing of itself when printed.
pub struct Key([u8; 32]);

impl fmt::Debug for Key {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("Key(not shown)")
    }
}

/// Where the key file is: the one named, else `key` in the data folder.
pub fn path(data: &Path, named: Option<&Path>) -> PathBuf {
    named.map_or_else(|| data.join("key"), Path::to_path_buf)
}

impl Key {
    /// A key of known bytes, for checks against published values.
    pub fn from_bytes(bytes: [u8; 32]) -> Self {
        Self(bytes)
    }

    /// Reads the key file, and makes one first where there is none.
    ///
    /// # Errors
    /// Where the file is open to others, holds something else, or the system refuses.
    pub fn read_or_create(path: &Path) -> Result<Self, KeyError> {
        match Self::read(path) {
            Err(KeyError::Absent { .. }) => create(path).and_then(|()| Self::read(path)),
            answer => answer,
        }
    }

    /// Reads the key file.
    ///
    /// # Errors
    /// Where there is none, it is open to others or holds something else.
    pub fn read(path: &Path) -> Result<Self, KeyError> {
        let file = File::open(path).map_err(|source| match source.kind() {
            ErrorKind::NotFound => KeyError::Absent {
                path: path.to_path_buf(),
            },
            _ => KeyError::io("Opening", path)(source),
        })?;
        let about = file.metadata().map_err(KeyError::io("Reading", path))?;
        let no_key = || KeyError::NoKey {
            path: path.to_path_buf(),
        };
        if !about.is_file() {
            return Err(no_key());
        }
        let mode = about.permissions().mode() & 0o777;
        if mode & 0o077 != 0 {
            return Err(KeyError::Open {
                path: path.to_path_buf(),
                mode,
            });
        }
        let mut line = Vec::new();
        file.take(66)
            .read_to_end(&mut line)
            .map_err(KeyError::io("Reading", path))?;
        let digits = line.strip_suffix(b"\n").unwrap_or(&line);
        HEXLOWER
            .decode(digits)
            .ok()
            .and_then(|bytes| bytes.try_into().ok())
            .map(Self)
            .ok_or_else(no_key)
    }

    /// The 32 bytes for one use: HKDF-SHA256 without salt, the use as info.
    #[expect(
        clippy::expect_used,
        reason = "at start-up; fails only beyond 8160 bytes, and 32 are asked for"
    )]
    pub fn derive(&self, purpose: Purpose) -> [u8; 32] {
        let mut derived = [0; 32];
        Hkdf::<Sha256>::new(None, &self.0)
            .expand(purpose.label(), &mut derived)
            .expect("32 bytes can be derived");
        derived
    }
}

/// Makes a key file, whole or not at all: it is written under a name of its own
/// and then linked to its place, which fails where somebody else was quicker.
fn create(path: &Path) -> Result<(), KeyError> {
    let folder = match path.parent() {
        Some(folder) if !folder.as_os_str().is_empty() => folder,
        _ => Path::new("."),
    };
    DirBuilder::new()
        .recursive(true)
        .mode(0o700)
        .create(folder)
        .map_err(KeyError::io("Making the folder", folder))?;
    let mut bytes = [0; 48];
    getrandom::fill(&mut bytes).map_err(KeyError::NoRandomness)?;
    let (key, name) = bytes.split_at(32);
    let draft = folder.join(format!(".key-{}", HEXLOWER.encode(name)));
    let made = write_draft(&draft, key)
        .map_err(KeyError::io("Writing", &draft))
        .and_then(|()| match fs::hard_link(&draft, path) {
            Err(refused) if refused.kind() != ErrorKind::AlreadyExists => {
                Err(KeyError::io("Making", path)(refused))
            }
            _ => Ok(()),
        });
    let tidied = fs::remove_file(&draft).map_err(KeyError::io("Removing", &draft));
    made.and(tidied)?;
    File::open(folder)
        .and_then(|folder| folder.sync_all())
        .map_err(KeyError::io("Keeping", folder))
}

fn write_draft(draft: &Path, key: &[u8]) -> io::Result<()> {
    let mut file = OpenOptions::new()
        .write(true)
        .create_new(true)
        .mode(0o600)
        .open(draft)?;
    writeln!(file, "{}", HEXLOWER.encode(key))?;
    file.sync_all()
}
