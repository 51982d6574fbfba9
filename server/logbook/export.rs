//! The book as a file that anyone outside can check.
//!
//! JSON lines: one object a line, in UTF-8, ended by one line feed. First one
//! header, then every entry in the order of its number, then the checkpoints.
//! `deploy/verify-book` checks such a file and needs nothing of ours.
//!
//! **Header**
//!
//! | field | |
//! |---|---|
//! | `line` | `"header"` |
//! | `format` | `"wetside.book"` |
//! | `version` | 1 |
//! | `room` | the room's UUID |
//! | `demo` | `true` where the book is that of a demo room; its entry 1 is then of kind `demo` |
//!
//! **Entry**: every field the hash covers (see `chain`), and the hash
//!
//! | field | |
//! |---|---|
//! | `line` | `"entry"` |
//! | `room` | UUID |
//! | `seq` | number in the book, from 1 without gaps |
//! | `version` | of the hash: 1 |
//! | `prev` | hash of the entry before, 64 hexadecimal digits, zeros for entry 1 |
//! | `kind` | text |
//! | `actor` | UUID, or `null` |
//! | `key` | 32 hexadecimal digits, or `null` |
//! | `fingerprint` | 64 hexadecimal digits |
//! | `happened_at_us`, `recorded_at_us` | microseconds since 1970-01-01 UTC |
//! | `payload` | the JSON text as a string; its UTF-8 bytes are what was hashed |
//! | `payload_base64` | in its place where the bytes are not UTF-8 (RFC 4648, padded) |
//! | `hash` | 64 hexadecimal digits |
//!
//! **Withheld**: an entry that is not shown to whoever took the file, by its place
//! in the chain alone: `line` is `"withheld"`, then `room`, `seq`, `version`, `prev` and
//! `hash` as above. The chain and the checkpoints hold it where it is; what it says
//! cannot be checked by this file.
//!
//! **Checkpoint**: `line` is `"checkpoint"`, then the fields of
//! `checkpoint`, whose signature covers all of them.
//!
//! There are no other fields. What is written is what is stored, right or wrong:
//! an export never mends a book.

use std::io::{self, Write};

use data_encoding::{BASE64, HEXLOWER};
use serde::Serialize;
use uuid::Uuid;

use super::chain::Stored;
use super::checkpoint::{Checkpoint, Line};

/// The name in the header.
pub const FORMAT: &str = "wetside.book";

/// The version in the header.
pub const FORMAT_VERSION: u8 = 1;

#[derive(Serialize)]
struct HeaderOut {
    line: &'static str,
    format: &'static str,
    version: u8,
    room: Uuid,
    demo: bool,
}

#[derive(Serialize)]
struct EntryOut<'a> {
    line: &'static str,
    room: Uuid,
    seq: i64,
    version: i16,
    prev: String,
    kind: &'a str,
    actor: Option<Uuid>,
    key: Option<String>,
    fingerprint: String,
    happened_at_us: i64,
    recorded_at_us: i64,
    #[serde(flatten)]
    payload: PayloadOut<'a>,
    hash: String,
}

#[derive(Serialize)]
struct WithheldOut {
    line: &'static str,
    room: Uuid,
    seq: i64,
    version: i16,
    prev: String,
    hash: String,
}

#[derive(Serialize)]
enum PayloadOut<'a> {
    #[serde(rename = "payload")]
    Text(&'a str),
    #[serde(rename = "payload_base64")]
    Bytes(String),
}

#[derive(Serialize)]
struct CheckpointOut {
    line: &'static str,
    #[serde(flatten)]
    checkpoint: Line,
}

/// Writes the first line.
///
/// # Errors
/// Where `out` refuses.
pub fn write_header(out: &mut impl Write, room: Uuid, demo: bool) -> io::Result<()> {
    write_line(
        out,
        &HeaderOut {
            line: "header",
            format: FORMAT,
            version: FORMAT_VERSION,
            room,
            demo,
        },
    )
}

/// Writes one entry.
///
/// # Errors
/// Where `out` refuses.
pub fn write_entry(out: &mut impl Write, row: &Stored<'_>) -> io::Result<()> {
    let payload = std::str::from_utf8(row.payload).map_or_else(
        |_| PayloadOut::Bytes(BASE64.encode(row.payload)),
        PayloadOut::Text,
    );
    write_line(
        out,
        &EntryOut {
            line: "entry",
            room: row.room,
            seq: row.seq,
            version: row.version,
            prev: HEXLOWER.encode(row.prev),
            kind: row.kind,
            actor: row.actor,
            key: row.key.map(|key| HEXLOWER.encode(key)),
            fingerprint: HEXLOWER.encode(row.fingerprint),
            happened_at_us: row.happened_at_us,
            recorded_at_us: row.recorded_at_us,
            payload,
            hash: HEXLOWER.encode(row.hash),
        },
    )
}

/// Writes the place of an entry that is not shown.
///
/// # Errors
/// Where `out` refuses.
pub fn write_withheld(out: &mut impl Write, row: &Stored<'_>) -> io::Result<()> {
    write_line(
        out,
        &WithheldOut {
            line: "withheld",
            room: row.room,
            seq: row.seq,
            version: row.version,
            prev: HEXLOWER.encode(row.prev),
            hash: HEXLOWER.encode(row.hash),
        },
    )
}

/// Writes one checkpoint.
///
/// # Errors
/// Where `out` refuses.
pub fn write_checkpoint(out: &mut impl Write, checkpoint: &Checkpoint) -> io::Result<()> {
    let checkpoint = checkpoint.line().map_err(io::Error::other)?;
    write_line(
        out,
        &CheckpointOut {
            line: "checkpoint",
            checkpoint,
        },
    )
}

fn write_line(out: &mut impl Write, line: &impl Serialize) -> io::Result<()> {
    let mut text = serde_json::to_vec(line)?;
    text.push(b'\n');
    out.write_all(&text)
}
