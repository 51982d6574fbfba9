//! Comparing a chain with its checkpoints.
//!
//! `Seals` reads the same rows as a `Walk`, beside it. The walk finds what
//! does not fit together; the seals find what fits together and is not what was
//! once signed: a tail that was written anew, or an end that was taken away.

use std::fmt;

use super::chain::{CLOCK_ALLOWANCE_US, FIRST_PREV, Stored, Walk};
use super::checkpoint::{Checkpoint, time_text};

/// How a book differs from what was signed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[non_exhaustive]
pub enum Breach {
    /// Another hash was signed for this entry.
    OtherHash {
        /// When it was signed.
        at_us: i64,
        /// The last entry before it that is as signed; 0 where there is none.
        since: i64,
    },
    /// The entry was signed and is not in the book.
    NotInBook {
        /// When it was signed.
        at_us: i64,
    },
    /// The entry comes after a checkpoint and says it was recorded before it.
    RecordedBefore {
        /// When the checkpoint was made.
        at_us: i64,
    },
}

/// A breach and the number of the entry it is about.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Breached {
    /// Number of the entry.
    pub seq: i64,
    /// What is wrong.
    pub breach: Breach,
}

impl fmt::Display for Breached {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let seq = self.seq;
        match self.breach {
            Breach::OtherHash { at_us, since } => write!(
                f,
                "entry {seq}: it is not the entry sealed by the checkpoint of {}; it or one before \
                 it, after entry {since}, was rewritten",
                shown(at_us)
            ),
            Breach::NotInBook { at_us } => write!(
                f,
                "entry {seq}: it was sealed by the checkpoint of {} and is not in the book",
                shown(at_us)
            ),
            Breach::RecordedBefore { at_us } => write!(
                f,
                "entry {seq}: it comes after the checkpoint of {} and says it was recorded before",
                shown(at_us)
            ),
        }
    }
}

impl std::error::Error for Breached {}

fn shown(at_us: i64) -> String {
    time_text(at_us).unwrap_or_else(|_| format!("{at_us} µs"))
}

/// How far checkpoints vouch for a book.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Sealing {
    /// The last entry a checkpoint vouches for and the time of the checkpoint.
    pub sealed: Option<(i64, i64)>,
    /// The last entry of the book.
    pub last: i64,
}

impl fmt::Display for Sealing {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let last = self.last;
        match self.sealed.filter(|(seq, _)| *seq > 0) {
            None if last == 0 => write!(f, "no entries"),
            None => write!(f, "not sealed; 1..{last} rest on this database alone"),
            Some((seq, at_us)) => {
                write!(f, "sealed up to {seq} by checkpoint of {}", shown(at_us))?;
                if seq < last {
                    write!(f, "; {}..{last} rest on this database alone", seq + 1)?;
                }
                Ok(())
            }
        }
    }
}

/// Compares rows with checkpoints whose signatures are already checked.
#[derive(Debug, Clone)]
pub struct Seals {
    /// In the order of the entries they seal.
    signed: Vec<(Checkpoint, State)>,
    /// How many of them seal an entry in front of the last row read.
    passed: usize,
    /// The latest time one of those was made.
    passed_at_us: i64,
    last_seq: i64,
    first_breach: Option<i64>,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum State {
    NotSeen,
    Agrees,
    Differs,
}

impl Seals {
    /// Makes ready to compare; the order of the checkpoints does not matter.
    pub fn new(checkpoints: &[Checkpoint]) -> Self {
        let mut signed: Vec<_> = checkpoints
            .iter()
            .map(|checkpoint| {
                let empty = checkpoint.seq == 0 && checkpoint.hash == FIRST_PREV;
                let state = if empty { State::Agrees } else { State::NotSeen };
                (*checkpoint, state)
            })
            .collect();
        signed.sort_by_key(|(checkpoint, _)| checkpoint.seq);
        Self {
            signed,
            passed: 0,
            passed_at_us: i64::MIN,
            last_seq: 0,
            first_breach: None,
        }
    }

    /// Reads the next row and names how it differs from what was signed.
    pub fn feed(&mut self, row: &Stored<'_>) -> Vec<Breached> {
        let mut found = Vec::new();
        let first = self.signed.partition_point(|(one, _)| one.seq < row.seq);
        let since = self.agreed_before(row.seq).map_or(0, |(seq, _)| seq);
        let same = self.signed[first..].iter_mut();
        for (checkpoint, state) in same.take_while(|(one, _)| one.seq == row.seq) {
            *state = if checkpoint.hash == *row.hash {
                State::Agrees
            } else {
                let at_us = checkpoint.at_us;
                found.push(Breach::OtherHash { at_us, since });
                State::Differs
            };
        }
        if row.seq > self.last_seq {
            self.last_seq = row.seq;
            found.extend(self.recorded_before(row, first));
        }
        self.note(row.seq, found)
    }

    /// Whether a row claims a time before that of a checkpoint in front of it,
    /// the first `passed` ones.
    fn recorded_before(&mut self, row: &Stored<'_>, passed: usize) -> Option<Breach> {
        for (checkpoint, _) in &self.signed[self.passed..passed] {
            self.passed_at_us = self.passed_at_us.max(checkpoint.at_us);
        }
        self.passed = passed;
        let at_us = self.passed_at_us;
        (row.recorded_at_us.saturating_add(CLOCK_ALLOWANCE_US) < at_us)
            .then_some(Breach::RecordedBefore { at_us })
    }

    fn agreed_before(&self, seq: i64) -> Option<(i64, i64)> {
        let before = self.signed.partition_point(|(one, _)| one.seq < seq);
        self.signed[..before]
            .iter()
            .rfind(|(_, state)| *state == State::Agrees)
            .map(|(checkpoint, _)| (checkpoint.seq, checkpoint.at_us))
    }

    fn note(&mut self, seq: i64, breaches: Vec<Breach>) -> Vec<Breached> {
        let lowest = (!breaches.is_empty()).then_some(seq);
        self.first_breach = self.first_breach.into_iter().chain(lowest).min();
        breaches
            .into_iter()
            .map(|breach| Breached { seq, breach })
            .collect()
    }

    /// After the last row: names what was signed and never came, and tells how
    /// far the book is sealed. Nothing at or behind the first fault is, of either kind.
    pub fn finish(mut self, walk: &Walk) -> (Vec<Breached>, Sealing) {
        let signed = std::mem::take(&mut self.signed);
        let mut found = Vec::new();
        for (checkpoint, _) in signed.iter().filter(|(_, state)| *state == State::NotSeen) {
            let at_us = checkpoint.at_us;
            found.extend(self.note(checkpoint.seq, vec![Breach::NotInBook { at_us }]));
        }
        self.signed = signed;
        let first_fault = self
            .first_breach
            .into_iter()
            .chain(walk.first_broken())
            .min();
        let sealing = Sealing {
            sealed: self.agreed_before(first_fault.unwrap_or(i64::MAX)),
            last: walk.head().seq,
        };
        (found, sealing)
    }
}
