//! Books to spoil, and both ways to check them.

use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::{self, Command};
use std::sync::atomic::{AtomicU32, Ordering};

use data_encoding::HEXLOWER;
use uuid::Uuid;
use wetside::logbook::chain::{FIRST_PREV, Head, Link, Stored, VERSION, Walk, hash};
use wetside::logbook::checkpoint::{Checkpoint, Signer};
use wetside::logbook::export::{write_checkpoint, write_entry, write_header};
use wetside::logbook::keys::Key;
use wetside::logbook::seals::{Sealing, Seals};

pub(super) const ROOM: Uuid = Uuid::from_u128(0x0193_a1b2_c3d4_7e5f_8a6b_7c8d_9e0f_1a2b);
pub(super) const SECOND_US: i64 = 1_000_000;
pub(super) const MINUTE_US: i64 = 60 * SECOND_US;
const BEGAN_US: i64 = 1_795_600_800 * SECOND_US;

/// A folder of its own, gone at the end.
pub(super) struct Folder(PathBuf);

impl Folder {
    pub(super) fn new() -> Self {
        static COUNT: AtomicU32 = AtomicU32::new(0);
        let count = COUNT.fetch_add(1, Ordering::Relaxed);
        let name = format!("wetside-book-{}-{count}", process::id());
        let path = std::env::temp_dir().join(name);
        fs::create_dir(&path).unwrap();
        Self(path)
    }

    pub(super) fn path(&self) -> &Path {
        &self.0
    }
}

impl Drop for Folder {
    fn drop(&mut self) {
        let _ = fs::remove_dir_all(&self.0);
    }
}

/// One row that can be spoilt.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Row {
    pub(super) room: Uuid,
    pub(super) seq: i64,
    pub(super) version: i16,
    pub(super) prev: Vec<u8>,
    pub(super) hash: Vec<u8>,
    pub(super) kind: String,
    pub(super) actor: Option<Uuid>,
    pub(super) key: Option<Vec<u8>>,
    pub(super) fingerprint: Vec<u8>,
    pub(super) happened_at_us: i64,
    pub(super) recorded_at_us: i64,
    pub(super) payload: Vec<u8>,
}

impl Row {
    pub(super) fn stored(&self) -> Stored<'_> {
        Stored {
            room: self.room,
            seq: self.seq,
            version: self.version,
            prev: &self.prev,
            hash: &self.hash,
            kind: &self.kind,
            actor: self.actor,
            key: self.key.as_deref(),
            fingerprint: &self.fingerprint,
            happened_at_us: self.happened_at_us,
            recorded_at_us: self.recorded_at_us,
            payload: &self.payload,
        }
    }

    /// Makes the hash anew, as somebody would who wants the row to look whole.
    pub(super) fn rehash(&mut self) {
        self.hash = hash(&Link {
            room: self.room,
            seq: self.seq,
            prev: self.prev.clone().try_into().unwrap(),
            kind: &self.kind,
            actor: self.actor,
            key: self.key.clone().map(|key| key.try_into().unwrap()),
            fingerprint: self.fingerprint.clone().try_into().unwrap(),
            happened_at_us: self.happened_at_us,
            recorded_at_us: self.recorded_at_us,
            payload: &self.payload,
        })
        .to_vec();
    }
}

/// A book and the checkpoints made over it.
#[derive(Clone)]
pub(super) struct Book {
    pub(super) rows: Vec<Row>,
    pub(super) checkpoints: Vec<Checkpoint>,
    pub(super) demo: bool,
}

pub(super) fn signer(byte: u8) -> Signer {
    Signer::new(&Key::from_bytes([byte; 32]))
}

fn row(room: Uuid, seq: i64) -> Row {
    let step = u8::try_from(seq % 251).unwrap();
    let person = Uuid::from_u128(u128::from(step) + 1);
    let recorded_at_us = BEGAN_US + seq * MINUTE_US;
    let payload = match seq % 4 {
        0 => Vec::new(),
        1 => "{\"name\":\"Zoë 調色\"}".into(),
        2 => vec![0xff, 0x00, 0x7b],
        _ => format!("{{\"sheets\":{seq}}}").into_bytes(),
    };
    Row {
        room,
        seq,
        version: i16::from(VERSION),
        prev: FIRST_PREV.to_vec(),
        hash: Vec::new(),
        kind: ["opened", "pass", "a_kind_of_tomorrow"][usize::from(step % 3)].into(),
        actor: (seq % 3 != 0).then_some(person),
        key: (seq % 2 == 0).then(|| vec![step; 16]),
        fingerprint: vec![step; 32],
        happened_at_us: recorded_at_us - SECOND_US,
        recorded_at_us,
        payload,
    }
}

impl Book {
    /// A sound book of `count` entries a minute apart, with checkpoints a second
    /// after each of `sealed`.
    pub(super) fn sound(room: Uuid, count: i64, sealed: &[i64]) -> Self {
        let mut book = Self {
            rows: (1..=count).map(|seq| row(room, seq)).collect(),
            checkpoints: Vec::new(),
            demo: false,
        };
        book.rehash_from(1);
        for seq in sealed {
            book.seal(*seq, SECOND_US, &signer(1));
        }
        book
    }

    pub(super) fn at(&mut self, seq: i64) -> &mut Row {
        self.rows.iter_mut().find(|row| row.seq == seq).unwrap()
    }

    /// Makes every hash from an entry on anew.
    pub(super) fn rehash_from(&mut self, seq: i64) {
        let mut prev = None;
        for row in &mut self.rows {
            if row.seq >= seq {
                if let Some(prev) = prev {
                    row.prev = prev;
                }
                row.rehash();
            }
            prev = Some(row.hash.clone());
        }
    }

    /// Makes a checkpoint over an entry, so long after it was recorded.
    pub(super) fn seal(&mut self, seq: i64, after_us: i64, signer: &Signer) {
        let row = self.at(seq).clone();
        let head = Head {
            seq,
            hash: row.hash.try_into().unwrap(),
        };
        let at_us = row.recorded_at_us + after_us;
        self.checkpoints
            .push(signer.sign(row.room, head, at_us).unwrap());
    }

    pub(super) fn export(&self) -> String {
        let mut out = Vec::new();
        write_header(&mut out, ROOM, self.demo).unwrap();
        for row in &self.rows {
            write_entry(&mut out, &row.stored()).unwrap();
        }
        for checkpoint in &self.checkpoints {
            write_checkpoint(&mut out, checkpoint).unwrap();
        }
        String::from_utf8(out).unwrap()
    }
}

/// What a check found.
#[derive(Debug)]
pub(super) struct Found {
    /// Every number named.
    pub(super) named: BTreeSet<i64>,
    pub(super) sealing: Option<Sealing>,
    pub(super) said: String,
    pub(super) good: bool,
}

/// Checks with the program's own code.
pub(super) fn walk(book: &Book) -> Found {
    let mut walk = Walk::new(ROOM);
    let mut seals = Seals::new(&book.checkpoints);
    let mut named = BTreeSet::new();
    let mut said = String::new();
    for row in &book.rows {
        for broken in walk.feed(&row.stored()) {
            named.insert(broken.seq);
            said += &format!("{broken}\n");
        }
        for breached in seals.feed(&row.stored()) {
            named.insert(breached.seq);
            said += &format!("{breached}\n");
        }
    }
    let (breached, sealing) = seals.finish(&walk);
    for one in breached {
        named.insert(one.seq);
        said += &format!("{one}\n");
    }
    assert_eq!(
        walk.is_demo(),
        book.rows.first().is_some_and(|row| row.kind == "demo")
    );
    Found {
        good: named.is_empty(),
        named,
        sealing: Some(sealing),
        said: format!("{said}{sealing}"),
    }
}

/// Checks a file with the script.
pub(super) fn script(text: &[u8], keys: &[[u8; 32]]) -> Found {
    let folder = Folder::new();
    let file = folder.path().join("book.jsonl");
    fs::write(&file, text).unwrap();
    let mut command = Command::new("python3");
    command
        .arg(Path::new(env!("CARGO_MANIFEST_DIR")).join("deploy/verify-book"))
        .arg(&file);
    for key in keys {
        command.args(["--key", &HEXLOWER.encode(key)]);
    }
    let run = command.output().unwrap();
    let said = String::from_utf8(run.stdout).unwrap();
    let complaint = String::from_utf8_lossy(&run.stderr);
    assert!(complaint.is_empty(), "{complaint}");
    assert!(matches!(run.status.code(), Some(0 | 1)), "{said}");
    let named = said
        .lines()
        .filter_map(|line| line.strip_prefix("Entry ")?.split_once(':')?.0.parse().ok())
        .collect();
    Found {
        named,
        sealing: None,
        good: run.status.success(),
        said,
    }
}

/// Checks a book both ways; both must name exactly these entries.
pub(super) fn both_name(what: &str, book: &Book, expected: &[i64]) -> (Found, Found) {
    let expected: BTreeSet<i64> = expected.iter().copied().collect();
    let ours = walk(book);
    let theirs = script(book.export().as_bytes(), &[signer(1).public_key()]);
    assert_eq!(ours.named, expected, "{what}, the walk:\n{}", ours.said);
    assert_eq!(
        theirs.named, expected,
        "{what}, the script:\n{}",
        theirs.said
    );
    assert_eq!(theirs.good, expected.is_empty(), "{what}:\n{}", theirs.said);
    (ours, theirs)
}
