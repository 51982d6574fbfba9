//! The chain: one hash an entry, over the bytes as first written.
//!
//! The hash of an entry is SHA-256 of the text `wetside.entry`, one byte with
//! the version (1), and then ten fields, each behind its length in bytes as
//! four bytes, the highest first:
//!
//! | field | bytes |
//! |---|---|
//! | room | 16, the UUID |
//! | number in the book | 8, signed, the highest first |
//! | hash of the entry before | 32; zeros for entry 1 |
//! | kind | UTF-8 |
//! | actor | 16, or length 0 where nobody acted |
//! | key of the request | 16, or length 0 where there was none |
//! | fingerprint of the request | 32 |
//! | time it happened | 8, signed microseconds since 1970-01-01 UTC |
//! | time it was recorded | 8, the same |
//! | payload | the JSON text |
//!
//! The lengths keep two different entries from ever having the same bytes. No
//! rule here looks at the kind, so entries of a kind this program does not know
//! are checked like all others.
//!
//! `Walk` reads stored rows in the order of their numbers and names each one
//! that is not as it was written. It goes on after a fault: a row that continues
//! an altered one is not blamed for it, so one altered row is one name and not
//! one for each row behind it.

use sha2::{Digest, Sha256};
use uuid::Uuid;

/// What entry 1 has for the hash of the entry before.
pub const FIRST_PREV: [u8; 32] = [0; 32];

/// The version of the hash, the only one there is.
pub const VERSION: u8 = 1;

/// How far ahead of our clock another clock may be, in microseconds: two minutes.
pub const CLOCK_ALLOWANCE_US: i64 = 120_000_000;

/// The kind of the first entry of a demo room.
pub const DEMO_KIND: &str = "demo";

const DOMAIN: &[u8] = b"wetside.entry";

/// One entry as it is hashed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Link<'a> {
    /// Whose book.
    pub room: Uuid,
    /// Number in the book, from 1 without gaps.
    pub seq: i64,
    /// Hash of the entry before, [`FIRST_PREV`] for entry 1.
    pub prev: [u8; 32],
    /// What kind of entry.
    pub kind: &'a str,
    /// Who acted, where somebody did.
    pub actor: Option<Uuid>,
    /// The request's idempotency key.
    pub key: Option<[u8; 16]>,
    /// SHA-256 of the request as parsed.
    pub fingerprint: [u8; 32],
    /// When it happened, microseconds since 1970-01-01 UTC.
    pub happened_at_us: i64,
    /// When it was written down, microseconds since 1970-01-01 UTC.
    pub recorded_at_us: i64,
    /// The JSON text.
    pub payload: &'a [u8],
}

/// One entry as it is stored: nothing about it is believed yet, not even the
/// lengths of its columns.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Stored<'a> {
    /// Whose book.
    pub room: Uuid,
    /// Number in the book.
    pub seq: i64,
    /// Version of the hash.
    pub version: i16,
    /// Hash of the entry before.
    pub prev: &'a [u8],
    /// Hash of this one.
    pub hash: &'a [u8],
    /// What kind of entry.
    pub kind: &'a str,
    /// Who acted.
    pub actor: Option<Uuid>,
    /// The request's idempotency key.
    pub key: Option<&'a [u8]>,
    /// SHA-256 of the request as parsed.
    pub fingerprint: &'a [u8],
    /// When it happened, microseconds since 1970-01-01 UTC.
    pub happened_at_us: i64,
    /// When it was written down, microseconds since 1970-01-01 UTC.
    pub recorded_at_us: i64,
    /// The JSON text.
    pub payload: &'a [u8],
}

impl<'a> Stored<'a> {
    /// The row of an entry that has just been hashed.
    pub fn of(link: &'a Link<'a>, hash: &'a [u8; 32]) -> Self {
        Self {
            room: link.room,
            seq: link.seq,
            version: i16::from(VERSION),
            prev: &link.prev,
            hash,
            kind: link.kind,
            actor: link.actor,
            key: link.key.as_ref().map(<[u8; 16]>::as_slice),
            fingerprint: &link.fingerprint,
            happened_at_us: link.happened_at_us,
            recorded_at_us: link.recorded_at_us,
            payload: link.payload,
        }
    }

    /// The entry to hash, where its columns have the lengths of one.
    fn link(&self) -> Result<Link<'a>, Fault> {
        if self.version != i16::from(VERSION) {
            return Err(Fault::UnknownVersion(self.version));
        }
        Ok(Link {
            room: self.room,
            seq: self.seq,
            prev: sized("hash of the entry before", self.prev)?,
            kind: self.kind,
            actor: self.actor,
            key: self.key.map(|key| sized("key", key)).transpose()?,
            fingerprint: sized("fingerprint", self.fingerprint)?,
            happened_at_us: self.happened_at_us,
            recorded_at_us: self.recorded_at_us,
            payload: self.payload,
        })
    }
}

fn sized<const N: usize>(field: &'static str, bytes: &[u8]) -> Result<[u8; N], Fault> {
    bytes.try_into().map_err(|_| Fault::WrongLength {
        field,
        found: bytes.len(),
        wanted: N,
    })
}

/// The hash of an entry.
pub fn hash(link: &Link<'_>) -> [u8; 32] {
    let mut digest = Sha256::new();
    digest.update(DOMAIN);
    digest.update([VERSION]);
    for field in [
        link.room.as_bytes().as_slice(),
        &link.seq.to_be_bytes(),
        &link.prev,
        link.kind.as_bytes(),
        link.actor
            .as_ref()
            .map_or(&[], |id| id.as_bytes().as_slice()),
        link.key.as_ref().map_or(&[], <[u8; 16]>::as_slice),
        &link.fingerprint,
        &link.happened_at_us.to_be_bytes(),
        &link.recorded_at_us.to_be_bytes(),
        link.payload,
    ] {
        digest.update(length(field));
        digest.update(field);
    }
    digest.finalize().into()
}

/// The length in front of a field. No column can hold 4 GiB, so the largest
/// number never stands for a longer one.
pub(super) fn length(field: &[u8]) -> [u8; 4] {
    u32::try_from(field.len()).unwrap_or(u32::MAX).to_be_bytes()
}

/// The last entry of a book, or of the part read so far.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Head {
    /// Its number; 0 for an empty book.
    pub seq: i64,
    /// Its hash; [`FIRST_PREV`] for an empty book.
    pub hash: [u8; 32],
}

impl Head {
    /// The head of a book without entries.
    pub const EMPTY: Self = Self {
        seq: 0,
        hash: FIRST_PREV,
    };
}

/// What is wrong with a row.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[non_exhaustive]
pub enum Fault {
    /// Its content does not give its hash.
    #[error("its content is not what its hash was made from")]
    Altered,
    /// A column holds bytes no entry was ever written with.
    #[error("its {field} has {found} bytes instead of {wanted}")]
    WrongLength {
        /// Which column, in words.
        field: &'static str,
        /// Bytes in it.
        found: usize,
        /// Bytes it should have.
        wanted: usize,
    },
    /// Written by a later program, or altered.
    #[error("its hash is of version {0}, which this program does not know")]
    UnknownVersion(i16),
    /// It does not continue the entry before.
    #[error("it does not continue the entry before it; one of the two was rewritten")]
    Detached,
    /// Numbers are missing from this one on.
    #[error("{}", missing(*first, *last))]
    Missing {
        /// The first number that is missing: the one named.
        first: i64,
        /// The last.
        last: i64,
    },
    /// The number was there before.
    #[error("its number is there twice")]
    Repeated,
    /// It stands behind a higher number.
    #[error("it stands behind a higher number")]
    OutOfPlace,
    /// It belongs to another room's book.
    #[error("it belongs to room {0}")]
    OtherRoom(Uuid),
    /// The clock ran backwards.
    #[error("it was recorded {by_us} µs before the entry in front of it")]
    RecordedBackwards {
        /// By how many microseconds.
        by_us: u64,
    },
    /// It was recorded before it happened.
    #[error(
        "it happened {by_us} µs after it was recorded, more than the two minutes clocks may differ"
    )]
    HappenedLater {
        /// By how many microseconds.
        by_us: u64,
    },
    /// The database keeps another head than the rows give.
    #[error(
        "the book ends with entry {found}, and the database's own note of its end is another: entry {noted}"
    )]
    OtherHead {
        /// The last number read.
        found: i64,
        /// The number the database keeps.
        noted: i64,
    },
}

fn missing(first: i64, last: i64) -> String {
    if first == last {
        "it is missing".to_owned()
    } else {
        format!("it is missing, and so are all up to entry {last}")
    }
}

/// A fault and the number of the entry it is about.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("entry {seq}: {fault}")]
pub struct Broken {
    /// Number of the entry.
    pub seq: i64,
    /// What is wrong.
    pub fault: Fault,
}

/// Reads one room's rows in the order of their numbers.
#[derive(Debug, Clone)]
pub struct Walk {
    room: Uuid,
    head: Head,
    /// Whether the last row is as it was written; if not, nothing can be told
    /// from its hash about the next.
    head_whole: bool,
    recorded_at_us: i64,
    first_broken: Option<i64>,
    demo: bool,
}

impl Walk {
    /// A walk through the book of `room`, from entry 1.
    pub fn new(room: Uuid) -> Self {
        Self {
            room,
            head: Head::EMPTY,
            head_whole: true,
            recorded_at_us: i64::MIN,
            first_broken: None,
            demo: false,
        }
    }

    /// Reads the next row and names what is wrong with it or in front of it.
    pub fn feed(&mut self, row: &Stored<'_>) -> Vec<Broken> {
        let mut faults = self.inspect(row);
        // A number or a time that does not follow is believed only of a whole row.
        let whole = faults.is_empty();
        let expected = self.head.seq.saturating_add(1);
        if row.seq == expected {
            faults.extend(self.follow(row));
            self.advance(row, whole);
        } else if row.seq == self.head.seq {
            faults.push(Fault::Repeated);
        } else if row.seq < self.head.seq {
            faults.push(Fault::OutOfPlace);
        } else if whole {
            faults.push(Fault::Missing {
                first: expected,
                last: row.seq - 1,
            });
            self.advance(row, whole);
        }
        if row.happened_at_us > row.recorded_at_us.saturating_add(CLOCK_ALLOWANCE_US) {
            faults.push(Fault::HappenedLater {
                by_us: row.happened_at_us.abs_diff(row.recorded_at_us),
            });
        }
        self.note(row.seq, faults)
    }

    /// What is wrong with a row by itself.
    fn inspect(&self, row: &Stored<'_>) -> Vec<Fault> {
        let mut faults = Vec::new();
        let sound = sized::<32>("hash", row.hash).and_then(|hash| Ok((hash, row.link()?)));
        match sound {
            Ok((written, link)) if written != hash(&link) => faults.push(Fault::Altered),
            Ok(_) => {}
            Err(fault) => faults.push(fault),
        }
        if row.room != self.room {
            faults.push(Fault::OtherRoom(row.room));
        }
        faults
    }

    /// What is wrong between a row and the one in front of it.
    fn follow(&self, row: &Stored<'_>) -> Vec<Fault> {
        let mut faults = Vec::new();
        if self.head_whole && self.head.hash != *row.prev {
            faults.push(Fault::Detached);
        }
        if row.recorded_at_us < self.recorded_at_us {
            faults.push(Fault::RecordedBackwards {
                by_us: self.recorded_at_us.abs_diff(row.recorded_at_us),
            });
        }
        faults
    }

    fn advance(&mut self, row: &Stored<'_>, whole: bool) {
        self.demo |= row.seq == 1 && row.kind == DEMO_KIND;
        if whole {
            self.recorded_at_us = self.recorded_at_us.max(row.recorded_at_us);
        }
        self.head_whole = whole;
        self.head = Head {
            seq: row.seq,
            hash: row.hash.try_into().unwrap_or(FIRST_PREV),
        };
    }

    fn note(&mut self, seq: i64, faults: Vec<Fault>) -> Vec<Broken> {
        let broken: Vec<_> = faults
            .into_iter()
            .map(|fault| Broken {
                seq: if let Fault::Missing { first, .. } = fault {
                    first
                } else {
                    seq
                },
                fault,
            })
            .collect();
        let lowest = broken.iter().map(|one| one.seq).min();
        self.first_broken = self.first_broken.into_iter().chain(lowest).min();
        broken
    }

    /// Compares the end of the rows with what the database keeps as the head;
    /// names the first entry that is missing or too many.
    pub fn compare(&mut self, noted: Head) -> Option<Broken> {
        if noted == self.head {
            return None;
        }
        let fault = Fault::OtherHead {
            found: self.head.seq,
            noted: noted.seq,
        };
        let seq = if noted.seq == self.head.seq {
            noted.seq
        } else {
            noted.seq.min(self.head.seq).saturating_add(1)
        };
        self.note(seq, vec![fault]).pop()
    }

    /// The last entry read.
    pub fn head(&self) -> Head {
        self.head
    }

    /// The lowest number named as broken so far.
    pub fn first_broken(&self) -> Option<i64> {
        self.first_broken
    }

    /// Whether entry 1 says that this is a demo room.
    pub fn is_demo(&self) -> bool {
        self.demo
    }
}
