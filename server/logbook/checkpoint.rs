//! Checkpoints: signed marks of how a book stood, kept outside the database.
//!
//! Whoever owns the database can write a whole new chain; a checkpoint is what
//! they cannot write, because its key is not in the database. It is an Ed25519
//! signature (RFC 8032) over the text `wetside.checkpoint`, one byte with the
//! version (1), and then four fields, each behind its length in bytes as four
//! bytes, the highest first: room (16, the UUID), number of the entry (8, signed,
//! the highest first), its hash (32), and the time the checkpoint was made (8,
//! signed microseconds since 1970-01-01 UTC).
//!
//! They stand in `<data>/checkpoints/<room>.jsonl`, one JSON object a line:
//!
//! ```json
//! {"room":"…","seq":412,"hash":"64 digits","at":"2026-11-25T04:00:00.000000Z","public_key":"64 digits","signature":"128 digits"}
//! ```
//!
//! A line counts when its signature is good *and* made with our own key: anyone
//! can sign with a key of theirs. A last line without its end was cut off while
//! it was written; it was never promised to anyone and is not read.

use std::fs::{DirBuilder, File, OpenOptions};
use std::io::{self, ErrorKind, Read, Seek, SeekFrom, Write};
use std::os::unix::fs::{DirBuilderExt, OpenOptionsExt};
use std::path::{Path, PathBuf};

use data_encoding::HEXLOWER;
use ed25519_dalek::{Signature, Signer as _, SigningKey, VerifyingKey};
use jiff::Timestamp;
use serde::{Deserialize, Serialize};
use uuid::Uuid;

use super::chain::{Head, length};
use super::keys::{Key, Purpose};

const DOMAIN: &[u8] = b"wetside.checkpoint";
const VERSION: u8 = 1;

/// Why a checkpoint cannot be made, written or read.
#[derive(Debug, thiserror::Error)]
#[non_exhaustive]
pub enum CheckpointError {
    /// The year has more than four digits.
    #[error("{0} µs after 1970 is no time a checkpoint can be made at.")]
    NoSuchTime(i64),

    /// It could not be put in JSON.
    #[error("A checkpoint could not be written as JSON: {0}.")]
    Json(#[from] serde_json::Error),

    /// The system refused something.
    #[error("{doing} {} failed: {source}.", path.display())]
    Io {
        /// What was tried.
        doing: &'static str,
        /// On which file or folder.
        path: PathBuf,
        /// The system's answer.
        source: io::Error,
    },
}

impl CheckpointError {
    fn io(doing: &'static str, path: &Path) -> impl FnOnce(io::Error) -> Self {
        let path = path.to_path_buf();
        move |source| Self::Io {
            doing,
            path,
            source,
        }
    }
}

/// One signed mark.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Checkpoint {
    /// Whose book.
    pub room: Uuid,
    /// The last entry at that time; 0 for an empty book.
    pub seq: i64,
    /// Its hash.
    pub hash: [u8; 32],
    /// When, microseconds since 1970-01-01 UTC.
    pub at_us: i64,
    /// The key it claims to be signed with.
    pub public_key: [u8; 32],
    /// The signature.
    pub signature: [u8; 64],
}

/// One line of the file; also what an export writes.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Line {
    room: Uuid,
    seq: i64,
    hash: String,
    at: String,
    public_key: String,
    signature: String,
}

/// The bytes that are signed.
pub fn message(room: Uuid, head: Head, at_us: i64) -> Vec<u8> {
    let mut bytes = Vec::from(DOMAIN);
    bytes.push(VERSION);
    for field in [
        room.as_bytes().as_slice(),
        &head.seq.to_be_bytes(),
        &head.hash,
        &at_us.to_be_bytes(),
    ] {
        bytes.extend(length(field));
        bytes.extend(field);
    }
    bytes
}

/// A time in the one form checkpoints have: RFC 3339 in UTC with six decimals.
///
/// # Errors
/// Where the year would not have four digits.
pub fn time_text(at_us: i64) -> Result<String, CheckpointError> {
    Timestamp::from_microsecond(at_us)
        .ok()
        .map(|time| format!("{time:.6}"))
        .filter(|text| text.len() == "2026-11-25T04:00:00.000000Z".len())
        .ok_or(CheckpointError::NoSuchTime(at_us))
}

fn time_of(text: &str) -> Option<i64> {
    let at_us = text.parse::<Timestamp>().ok()?.as_microsecond();
    (time_text(at_us).ok()? == text).then_some(at_us)
}

/// Signs checkpoints with the key derived for it.
pub struct Signer(SigningKey);

impl Signer {
    /// The signer of this installation.
    pub fn new(key: &Key) -> Self {
        Self(SigningKey::from_bytes(&key.derive(Purpose::Checkpoint)))
    }

    /// What others need to check our checkpoints: the `--key` of the verifier script.
    pub fn public_key(&self) -> [u8; 32] {
        self.0.verifying_key().to_bytes()
    }

    /// Signs how a book stands. Take the time *before* reading the head, so that
    /// an entry behind the checkpoint was never recorded before it.
    ///
    /// # Errors
    /// Where the year of the time does not have four digits.
    pub fn sign(&self, room: Uuid, head: Head, at_us: i64) -> Result<Checkpoint, CheckpointError> {
        time_text(at_us)?;
        Ok(Checkpoint {
            room,
            seq: head.seq,
            hash: head.hash,
            at_us,
            public_key: self.public_key(),
            signature: self.0.sign(&message(room, head, at_us)).to_bytes(),
        })
    }
}

impl Checkpoint {
    /// Whether the signature is that of the key it claims.
    pub fn is_signed(&self) -> bool {
        let head = Head {
            seq: self.seq,
            hash: self.hash,
        };
        VerifyingKey::from_bytes(&self.public_key).is_ok_and(|key| {
            let signature = Signature::from_bytes(&self.signature);
            key.verify_strict(&message(self.room, head, self.at_us), &signature)
                .is_ok()
        })
    }

    pub(super) fn line(&self) -> Result<Line, CheckpointError> {
        Ok(Line {
            room: self.room,
            seq: self.seq,
            hash: HEXLOWER.encode(&self.hash),
            at: time_text(self.at_us)?,
            public_key: HEXLOWER.encode(&self.public_key),
            signature: HEXLOWER.encode(&self.signature),
        })
    }
}

fn parse(text: &[u8]) -> Option<Checkpoint> {
    let line: Line = serde_json::from_slice(text).ok()?;
    Some(Checkpoint {
        room: line.room,
        seq: line.seq,
        hash: digits(&line.hash)?,
        at_us: time_of(&line.at)?,
        public_key: digits(&line.public_key)?,
        signature: digits(&line.signature)?,
    })
}

fn digits<const N: usize>(text: &str) -> Option<[u8; N]> {
    HEXLOWER.decode(text.as_bytes()).ok()?.try_into().ok()
}

/// Where a room's checkpoints are.
pub fn path(data: &Path, room: Uuid) -> PathBuf {
    data.join("checkpoints").join(format!("{room}.jsonl"))
}

/// Adds a checkpoint to its room's file; it is on the disk when this returns.
///
/// # Errors
/// Where the system refuses.
pub fn append(data: &Path, checkpoint: &Checkpoint) -> Result<(), CheckpointError> {
    let path = path(data, checkpoint.room);
    let folder = data.join("checkpoints");
    let mut line = serde_json::to_vec(&checkpoint.line()?)?;
    line.push(b'\n');
    DirBuilder::new()
        .recursive(true)
        .mode(0o700)
        .create(&folder)
        .map_err(CheckpointError::io("Making the folder", &folder))?;
    write_line(&path, &line).map_err(CheckpointError::io("Writing", &path))?;
    for folder in [folder.as_path(), data] {
        File::open(folder)
            .and_then(|folder| folder.sync_all())
            .map_err(CheckpointError::io("Keeping", folder))?;
    }
    Ok(())
}

fn write_line(path: &Path, line: &[u8]) -> io::Result<()> {
    let mut file = OpenOptions::new()
        .read(true)
        .append(true)
        .create(true)
        .mode(0o600)
        .open(path)?;
    file.lock()?;
    drop_torn_line(&mut file)?;
    file.write_all(line)?;
    file.sync_all()
}

/// Cuts off what a crash left of an unfinished line.
fn drop_torn_line(file: &mut File) -> io::Result<()> {
    let mut text = Vec::new();
    file.seek(SeekFrom::Start(0))?;
    file.read_to_end(&mut text)?;
    let whole = text
        .iter()
        .rposition(|byte| *byte == b'\n')
        .map_or(0, |end| end + 1);
    if whole < text.len() {
        file.set_len(u64::try_from(whole).map_err(io::Error::other)?)?;
    }
    Ok(())
}

/// Why a line of the file does not count.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[non_exhaustive]
pub enum Refusal {
    /// It is no checkpoint at all.
    #[error("it is not a checkpoint")]
    Unreadable,
    /// It stands in the wrong file.
    #[error("it is for another room")]
    OtherRoom,
    /// Signed with a key that is not ours.
    #[error("it is signed with a key that is not this installation's")]
    OtherKey,
    /// The signature is not that of these values.
    #[error("its signature is not good")]
    BadSignature,
}

/// A line that does not count.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[error("line {line} of the room's checkpoints does not count: {why}")]
pub struct Refused {
    /// Which line, from 1.
    pub line: usize,
    /// The entry it speaks of, where that can be read.
    pub seq: Option<i64>,
    /// Why.
    pub why: Refusal,
}

/// What stands in a room's file.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Shelf {
    /// The checkpoints that count, in the order they were made.
    pub checkpoints: Vec<Checkpoint>,
    /// The lines that do not.
    pub refused: Vec<Refused>,
}

/// Reads a room's checkpoints and checks each against our own public key. No
/// file is an empty shelf.
///
/// # Errors
/// Where the file is there and the system refuses to read it.
pub fn read(data: &Path, room: Uuid, public_key: &[u8; 32]) -> Result<Shelf, CheckpointError> {
    let path = path(data, room);
    let text = match std::fs::read(&path) {
        Err(error) if error.kind() == ErrorKind::NotFound => return Ok(Shelf::default()),
        answer => answer.map_err(CheckpointError::io("Reading", &path))?,
    };
    let mut shelf = Shelf::default();
    let finished = text.split_inclusive(|byte| *byte == b'\n');
    for (index, line) in finished
        .filter_map(|line| line.strip_suffix(b"\n"))
        .enumerate()
    {
        let found = parse(line);
        match judge(found.as_ref(), room, public_key) {
            Ok(checkpoint) => shelf.checkpoints.push(checkpoint),
            Err(why) => shelf.refused.push(Refused {
                line: index + 1,
                seq: found.map(|one| one.seq),
                why,
            }),
        }
    }
    Ok(shelf)
}

fn judge(
    found: Option<&Checkpoint>,
    room: Uuid,
    public_key: &[u8; 32],
) -> Result<Checkpoint, Refusal> {
    let found = found.ok_or(Refusal::Unreadable)?;
    if found.room != room {
        Err(Refusal::OtherRoom)
    } else if found.public_key != *public_key {
        Err(Refusal::OtherKey)
    } else if !found.is_signed() {
        Err(Refusal::BadSignature)
    } else {
        Ok(*found)
    }
}
