//! Verifying a book: its chain, its checkpoints, and everything that was made
//! of its entries.
//!
//! One transaction of the tables' owner reads it all as it is at one moment.
//! The chain is walked and compared with the checkpoints outside the database;
//! what stands beside each entry to find it again is worked out anew from its
//! text; every entry is done over by its own projection, and the rows that come
//! out are compared with the rows that are kept, both ways.

use std::collections::BTreeMap;

use uuid::Uuid;

use super::beside::Texts;
use super::chain::{Head, Walk};
use super::checkpoint::Checkpoint;
use super::entry::Kinds;
use super::reading::store::{self, HeadRow};
use super::reading::{EntryRow, PAGE};
use super::replay::{self, DERIVED};
use super::seals::Seals;
use super::vault::Vault;
use super::verify_report::{Finding, Findings, Report};
use crate::database::{Owner, RoomTx};
use crate::error::{Error, Result};

/// Verifies every room that has a trace anywhere.
///
/// # Errors
/// That the database is away. What is wrong with a book is in its report.
pub async fn verify_all(owner: &Owner, kinds: Kinds, vault: &Vault) -> Result<Vec<Report>> {
    let mut tables = vec!["head", "entry", "entry_about"];
    tables.extend(DERIVED);
    let mut reports = Vec::new();
    for room in owner.rooms_in(&tables).await? {
        reports.push(verify(owner, kinds, vault, room).await?);
    }
    Ok(reports)
}

/// Verifies one room.
///
/// # Errors
/// That the database is away. What is wrong with the book is in the report.
pub async fn verify(owner: &Owner, kinds: Kinds, vault: &Vault, room: Uuid) -> Result<Report> {
    let (checkpoints, findings) = shelf(vault.clone(), room).await?;
    let examiner = Examiner {
        kinds,
        walk: Walk::new(room),
        seals: Seals::new(&checkpoints),
        findings,
        texts: Texts::default(),
        unknown: BTreeMap::new(),
        entries: 0,
        last_us: None,
    };
    owner
        .rehearse(room, DERIVED, |tx| {
            Box::pin(async move { examiner.examine(tx).await })
        })
        .await
}

/// The checkpoints that count; what is wrong with the others is a finding.
async fn shelf(vault: Vault, room: Uuid) -> Result<(Vec<Checkpoint>, Findings)> {
    let mut findings = Findings::default();
    let read = tokio::task::spawn_blocking(move || vault.shelf(room));
    match read
        .await
        .map_err(|ended| Error::fault(ended.to_string()))?
    {
        Ok(shelf) => {
            findings.extend(shelf.refused.into_iter().map(Finding::Refused));
            Ok((shelf.checkpoints, findings))
        }
        Err(cause) => {
            findings.push(Finding::NotChecked(cause.to_string()));
            Ok((Vec::new(), findings))
        }
    }
}

struct Examiner {
    kinds: Kinds,
    walk: Walk,
    seals: Seals,
    findings: Findings,
    texts: Texts,
    unknown: BTreeMap<String, i64>,
    entries: i64,
    last_us: Option<i64>,
}

impl Examiner {
    async fn examine(mut self, tx: &mut RoomTx) -> Result<Report> {
        let mut after = i64::MIN;
        loop {
            let rows = store::rows_after(tx, after, PAGE).await?;
            let Some(last) = rows.last().map(|row| row.seq) else {
                break;
            };
            if let Some(first) = rows.first().filter(|_| self.entries == 0) {
                replay::begin(tx, first).await?;
            }
            for row in &rows {
                self.walk_on(row);
            }
            let beside = store::about_between(tx, after, last).await?;
            self.check_texts(&rows, beside);
            replay::replay(tx, self.kinds, &rows, &mut self.findings).await?;
            after = last;
        }
        let beside = store::about_between(tx, after, i64::MAX).await?;
        self.check_texts(&[], beside);
        let head = store::head(tx).await?;
        self.check_head(head);
        replay::compare(tx, &mut self.findings).await?;
        self.findings.extend(self.texts.compare(tx).await?);
        let slug = store::slug(tx).await?;
        if slug.is_none() {
            self.findings.push(Finding::NoName);
        }
        let (breached, sealing) = self.seals.finish(&self.walk);
        self.findings
            .extend(breached.into_iter().map(Finding::Breached));
        Ok(Report {
            room: tx.room(),
            slug,
            entries: self.entries,
            is_demo: self.walk.is_demo(),
            sealing,
            erased: self.texts.erased(),
            unknown: self.unknown,
            findings: self.findings,
        })
    }

    fn walk_on(&mut self, row: &EntryRow) {
        let stored = row.stored();
        self.texts.feed(row);
        let broken = self.walk.feed(&stored);
        self.findings
            .extend(broken.into_iter().map(Finding::Broken));
        let breached = self.seals.feed(&stored);
        self.findings
            .extend(breached.into_iter().map(Finding::Breached));
        self.entries += 1;
        self.last_us = Some(row.recorded_at_us);
    }

    /// Reads each entry's text again: what it is about against what stands
    /// beside it, and the figures it keeps.
    fn check_texts(&mut self, rows: &[EntryRow], mut beside: Vec<(i64, String, Uuid)>) {
        for row in rows {
            let Some(kind) = replay::find(self.kinds, &row.kind) else {
                *self.unknown.entry(row.kind.clone()).or_default() += 1;
                beside.retain(|(seq, _, _)| *seq != row.seq);
                continue;
            };
            let seq = row.seq;
            match (kind.about)(&row.payload) {
                Err(cause) => {
                    let cause = cause.to_string();
                    self.findings.push(Finding::Unreadable { seq, cause });
                    beside.retain(|(other, _, _)| *other != seq);
                    continue;
                }
                Ok(mut about) => {
                    about.sort_unstable();
                    about.dedup();
                    for thing in about {
                        let (noun, id) = (thing.noun.to_owned(), thing.id);
                        self.cross_off(&mut beside, (seq, noun, id));
                    }
                }
            }
            match (kind.recheck)(&row.payload) {
                Ok(None) => {}
                Ok(Some(sentence)) => self.findings.push(Finding::Figure { seq, sentence }),
                Err(cause) => self.findings.push(Finding::Figure {
                    seq,
                    sentence: cause.to_string(),
                }),
            }
        }
        let extra = beside.into_iter().map(|(seq, noun, id)| Finding::About {
            seq,
            noun,
            id,
            is_extra: true,
        });
        self.findings.extend(extra);
    }

    fn cross_off(&mut self, beside: &mut Vec<(i64, String, Uuid)>, thing: (i64, String, Uuid)) {
        match beside.iter().position(|other| *other == thing) {
            Some(place) => {
                beside.remove(place);
            }
            None => self.findings.push(Finding::About {
                seq: thing.0,
                noun: thing.1,
                id: thing.2,
                is_extra: false,
            }),
        }
    }

    fn check_head(&mut self, noted: Option<HeadRow>) {
        let Some(noted) = noted else {
            if self.entries > 0 {
                self.findings.push(Finding::NoHead);
            }
            return;
        };
        let head = Head {
            seq: noted.seq,
            // One of another length agrees with no entry.
            hash: noted.hash.try_into().unwrap_or([0xff; 32]),
        };
        let broken = self.walk.compare(head);
        self.findings.extend(broken.map(Finding::Broken));
        if self
            .last_us
            .is_some_and(|last| last != noted.recorded_at_us)
        {
            self.findings.push(Finding::OtherHeadTime(noted.seq));
        }
    }
}
