//! Personal text, or a file, beside an entry. The entry holds its salted SHA-256 in the
//! field `beside_sha256` and nothing of it, so it can be erased and the book stands; an
//! entry that says so names the number in `erases_beside_seq`.

use std::collections::BTreeMap;

use data_encoding::HEXLOWER;
use serde::Deserialize;
use sha2::{Digest, Sha256};

use super::reading::EntryRow;
use super::store;
use super::verify_report::Finding;
use crate::database::RoomTx;
use crate::error::Result;

/// Text or a file that is to lie beside an entry.
pub struct Beside {
    salt: [u8; 32],
    what: Content,
}

enum Content {
    Words(String),
    File(Vec<u8>),
}

impl std::fmt::Debug for Beside {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str("Beside")
    }
}

impl Beside {
    /// Text with its salt.
    #[must_use]
    pub(super) const fn words(salt: [u8; 32], words: String) -> Self {
        let what = Content::Words(words);
        Self { salt, what }
    }

    /// A file with its salt.
    #[must_use]
    pub(super) const fn file(salt: [u8; 32], file: Vec<u8>) -> Self {
        let what = Content::File(file);
        Self { salt, what }
    }

    /// What the entry holds of it, in lower-case hexadecimal.
    #[must_use]
    pub fn sha256(&self) -> String {
        let bytes = match &self.what {
            Content::Words(words) => words.as_bytes(),
            Content::File(file) => file,
        };
        let mut hasher = Sha256::new();
        hasher.update(self.salt);
        hasher.update(bytes);
        HEXLOWER.encode(&hasher.finalize())
    }

    /// Lays it beside the entry of this number.
    ///
    /// # Errors
    /// The database's.
    pub async fn lay(&self, tx: &mut RoomTx, seq: i64) -> Result<()> {
        let (words, file) = match &self.what {
            Content::Words(words) => (Some(words.as_str()), None),
            Content::File(file) => (None, Some(file.as_slice())),
        };
        store::lay_beside(tx, seq, &self.salt, (words, file)).await
    }
}

/// The texts beside these entries; those that were erased are not among them.
///
/// # Errors
/// The database's.
pub async fn beside(tx: &mut RoomTx, seqs: &[i64]) -> Result<BTreeMap<i64, String>> {
    let rows = store::beside(tx, seqs).await?;
    let kept = rows.into_iter();
    Ok(kept.filter_map(|row| Some((row.seq, row.words?))).collect())
}

/// The file beside an entry, as long as it was not erased.
///
/// # Errors
/// The database's.
pub async fn file_beside(tx: &mut RoomTx, seq: i64) -> Result<Option<Vec<u8>>> {
    store::file_beside(tx, seq).await
}

/// Erases what lies beside an entry, and its salt: the entry `by` says so.
///
/// # Errors
/// The database's.
pub async fn erase_beside(tx: &mut RoomTx, seq: i64, by: i64) -> Result<()> {
    store::erase_beside(tx, seq, by).await
}

/// What an entry says of text beside entries.
#[derive(Deserialize)]
struct Says {
    beside_sha256: Option<String>,
    erases_beside_seq: Option<i64>,
}

/// What a walk through a book has read of texts beside it.
#[derive(Debug, Default)]
pub(super) struct Texts {
    hashes: BTreeMap<i64, String>,
    /// Which were erased, and by which entry.
    erased: BTreeMap<i64, i64>,
}

impl Texts {
    /// Reads what an entry says of them.
    pub(super) fn feed(&mut self, row: &EntryRow) {
        let Ok(says) = serde_json::from_slice::<Says>(&row.payload) else {
            return;
        };
        if let Some(hash) = says.beside_sha256 {
            self.hashes.insert(row.seq, hash);
        }
        if let Some(seq) = says.erases_beside_seq {
            self.erased.insert(seq, row.seq);
        }
    }

    /// How many were erased.
    pub(super) fn erased(&self) -> usize {
        self.erased.len()
    }

    /// Holds what is kept against it.
    pub(super) async fn compare(&self, tx: &mut RoomTx) -> Result<Vec<Finding>> {
        let kept = store::all_beside(tx).await?;
        let mut findings = Vec::new();
        for (seq, hash) in &self.hashes {
            let row = kept.iter().find(|row| row.seq == *seq);
            let erased_by = self.erased.get(seq).copied();
            let agrees = row.is_some_and(|row| match &row.sha256 {
                Some(kept) => erased_by.is_none() && kept == hash,
                None => erased_by.is_some() && row.erased_seq == erased_by,
            });
            if !agrees {
                findings.push(Finding::Beside { seq: *seq });
            }
        }
        let extra = kept
            .iter()
            .filter(|row| !self.hashes.contains_key(&row.seq));
        findings.extend(extra.map(|row| Finding::Beside { seq: row.seq }));
        Ok(findings)
    }
}
