//! What verifying a book found, in sentences.

use std::collections::BTreeMap;
use std::fmt;

use serde::Serialize;
use uuid::Uuid;

use super::chain::Broken;
use super::checkpoint::Refused;
use super::seals::{Breached, Sealing};
use crate::database::owner::{Difference, Differs};

/// Findings kept of one room; the rest is counted.
const MOST: usize = 1_000;

/// One thing that is not as the book says.
#[derive(Clone, Debug)]
#[non_exhaustive]
pub enum Finding {
    /// A row of the chain is broken.
    Broken(Broken),
    /// The chain is not what was sealed.
    Breached(Breached),
    /// A line of the checkpoints does not count.
    Refused(Refused),
    /// The checkpoints could not be checked, and why.
    NotChecked(String),
    /// The database keeps no end of this book.
    NoHead,
    /// The database's note of its end has another time than the last entry.
    OtherHeadTime(i64),
    /// No name leads to this room.
    NoName,
    /// The text of an entry is not what entries of its kind say.
    Unreadable {
        /// Its number.
        seq: i64,
        /// What reading it said.
        cause: String,
    },
    /// What is written beside an entry, to find it again, is not what it says.
    About {
        /// Its number.
        seq: i64,
        /// What sort of thing.
        noun: String,
        /// Which.
        id: Uuid,
        /// Whether it is there and should not be; else it is missing.
        is_extra: bool,
    },
    /// An entry's kept figures come out otherwise.
    Figure {
        /// Its number.
        seq: i64,
        /// What comes out.
        sentence: String,
    },
    /// An entry could not be done over.
    NotReplayed {
        /// Its number.
        seq: i64,
        /// Why.
        cause: String,
    },
    /// What lies beside an entry is not what it holds the hash of.
    Beside {
        /// Its number.
        seq: i64,
    },
    /// A row is not what the entries make of it.
    Row(Difference),
}

impl Finding {
    /// The entry it is about, where it is about one.
    #[must_use]
    pub fn seq(&self) -> Option<i64> {
        match self {
            Self::Broken(found) => Some(found.seq),
            Self::Breached(found) => Some(found.seq),
            Self::Refused(found) => found.seq,
            Self::Unreadable { seq, .. }
            | Self::About { seq, .. }
            | Self::Figure { seq, .. }
            | Self::NotReplayed { seq, .. }
            | Self::Beside { seq }
            | Self::OtherHeadTime(seq) => Some(*seq),
            Self::NotChecked(_) | Self::NoHead | Self::NoName | Self::Row(_) => None,
        }
    }

    /// The table it is about, where it is about a row the entries make.
    #[must_use]
    pub fn table(&self) -> Option<&str> {
        match self {
            Self::Row(difference) => Some(&difference.table),
            _ => None,
        }
    }
}

impl fmt::Display for Finding {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Broken(found) => found.fmt(f),
            Self::Breached(found) => found.fmt(f),
            Self::Refused(found) => found.fmt(f),
            Self::NotChecked(cause) => write!(f, "the checkpoints were not checked: {cause}"),
            Self::NoHead => f.write_str("the database keeps no note of where this book ends"),
            Self::OtherHeadTime(seq) => write!(
                f,
                "entry {seq}: the database's own note of the book's end has another time"
            ),
            Self::NoName => f.write_str("no name leads to this room"),
            Self::Unreadable { seq, cause } => {
                write!(f, "entry {seq}: its text cannot be read: {cause}")
            }
            Self::About {
                seq,
                noun,
                id,
                is_extra,
            } => {
                let says = if *is_extra {
                    "does not say that it is"
                } else {
                    "says that it is, and the index of subjects does not have it"
                };
                write!(f, "entry {seq}: about {noun} {id}: the entry {says}")
            }
            Self::Figure { seq, sentence } => write!(f, "entry {seq}: {sentence}"),
            Self::NotReplayed { seq, cause } => {
                write!(f, "entry {seq}: it could not be done over: {cause}")
            }
            Self::Beside { seq } => write!(
                f,
                "entry {seq}: what lies beside it is not what it holds the hash of"
            ),
            Self::Row(difference) => row(f, difference),
        }
    }
}

fn row(f: &mut fmt::Formatter<'_>, difference: &Difference) -> fmt::Result {
    write!(f, "table {}", difference.table)?;
    for (name, value) in &difference.key {
        write!(f, ", {name} {value}")?;
    }
    match &difference.what {
        Differs::Missing => f.write_str(": the entries make this row and it is missing"),
        Differs::Extra => f.write_str(": no entry made this row"),
        Differs::Columns(names) => {
            write!(f, ": the entries say otherwise about {}", names.join(", "))
        }
    }
}

/// Findings in the order they were made, cut off where there are very many.
#[derive(Clone, Debug, Default)]
pub struct Findings {
    kept: Vec<Finding>,
    more: usize,
}

impl Findings {
    pub(super) fn push(&mut self, finding: Finding) {
        if self.kept.len() < MOST {
            self.kept.push(finding);
        } else {
            self.more += 1;
        }
    }

    pub(super) fn extend(&mut self, findings: impl IntoIterator<Item = Finding>) {
        for finding in findings {
            self.push(finding);
        }
    }

    /// Those that were kept.
    pub fn iter(&self) -> impl Iterator<Item = &Finding> {
        self.kept.iter()
    }

    /// How many there were.
    #[must_use]
    pub fn count(&self) -> usize {
        self.kept.len() + self.more
    }
}

/// What verifying one room's book found.
#[derive(Clone, Debug)]
pub struct Report {
    /// The room.
    pub room: Uuid,
    /// Its short name, where it has one.
    pub slug: Option<String>,
    /// How many entries were read.
    pub entries: i64,
    /// Whether it is a demo room.
    pub is_demo: bool,
    /// How far checkpoints vouch for it.
    pub sealing: Sealing,
    /// How many texts beside entries were erased.
    pub erased: usize,
    /// Kinds this program does not know, with the number of entries of each:
    /// their place in the chain was verified and nothing else about them.
    pub unknown: BTreeMap<String, i64>,
    /// What is wrong.
    pub findings: Findings,
}

impl Report {
    /// Whether nothing is wrong.
    #[must_use]
    pub fn is_clean(&self) -> bool {
        self.findings.count() == 0
    }

    /// The report as one JSON value.
    #[must_use]
    pub fn to_out(&self) -> ReportOut<'_> {
        ReportOut {
            room: self.room,
            slug: self.slug.as_deref(),
            is_clean: self.is_clean(),
            is_demo: self.is_demo,
            entries: self.entries,
            sealed_up_to: self.sealing.sealed.map(|(seq, _)| seq),
            sealing: self.sealing.to_string(),
            erased_texts: self.erased,
            unknown_kinds: &self.unknown,
            finding_count: self.findings.count(),
            findings: self.findings.iter().map(FindingOut::of).collect(),
        }
    }
}

impl fmt::Display for Report {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let room = self.room.to_string();
        write!(f, "Room {}", self.slug.as_deref().unwrap_or(&room))?;
        if self.is_demo {
            f.write_str(", a demo of invented people")?;
        }
        writeln!(f, ": {} entries, {}.", self.entries, self.sealing)?;
        match self.erased {
            0 => {}
            1 => writeln!(f, "  1 text beside it was erased.")?,
            count => writeln!(f, "  {count} texts beside it were erased.")?,
        }
        for (kind, count) in &self.unknown {
            writeln!(
                f,
                "  {count} entries of kind {kind}, which this program does not know: \
                 only their place in the chain was verified."
            )?;
        }
        for finding in self.findings.iter() {
            writeln!(f, "  {finding}.")?;
        }
        if self.findings.more > 0 {
            writeln!(f, "  … and {} more.", self.findings.more)?;
        }
        match self.findings.count() {
            0 => f.write_str("  Everything agrees."),
            count => write!(f, "  Findings: {count}."),
        }
    }
}

/// A report for programs.
#[derive(Debug, Serialize)]
pub struct ReportOut<'r> {
    room: Uuid,
    slug: Option<&'r str>,
    is_clean: bool,
    is_demo: bool,
    entries: i64,
    sealed_up_to: Option<i64>,
    sealing: String,
    erased_texts: usize,
    unknown_kinds: &'r BTreeMap<String, i64>,
    finding_count: usize,
    findings: Vec<FindingOut<'r>>,
}

#[derive(Debug, Serialize)]
struct FindingOut<'r> {
    seq: Option<i64>,
    table: Option<&'r str>,
    sentence: String,
}

impl<'r> FindingOut<'r> {
    fn of(finding: &'r Finding) -> Self {
        Self {
            seq: finding.seq(),
            table: finding.table(),
            sentence: finding.to_string(),
        }
    }
}
